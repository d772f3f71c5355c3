import type { Block } from '../../block/block.ts';
import type { Picture } from '../../block/publication.ts';

/** Pixels along a side: a swatch on a fine screen. */
const SIDE = 96;

const made = new WeakMap<Picture, Promise<string | null>>();

/** @returns the photos of those fabrics that show one, small, as background pictures by the fabrics' ids */
export async function smallPhotos({ fabrics, photos = [] }: Pick<Block, 'fabrics' | 'photos'>): Promise<ReadonlyMap<string, string>> {
  const found = await Promise.all(
    fabrics.map(async ({ id, photo }) => {
      const picture = photos.find((each) => each.id === photo?.picture);
      const small = picture && (await smallOf(picture));
      return small ? ([[id, small]] as const) : [];
    }),
  );
  return new Map(found.flat());
}

function smallOf(picture: Picture): Promise<string | null> {
  let known = made.get(picture);
  if (!known) made.set(picture, (known = shrunk(picture).catch(() => null)));
  return known;
}

/** The middle of the photo, a square. */
async function shrunk({ jpeg }: Picture): Promise<string> {
  const drawn = new Image();
  drawn.src = `data:image/jpeg;base64,${jpeg}`;
  await drawn.decode();
  const canvas = document.createElement('canvas');
  canvas.width = canvas.height = SIDE;
  const side = Math.min(drawn.naturalWidth, drawn.naturalHeight);
  const pen = canvas.getContext('2d')!;
  pen.imageSmoothingQuality = 'high';
  pen.drawImage(drawn, (drawn.naturalWidth - side) / 2, (drawn.naturalHeight - side) / 2, side, side, 0, 0, SIDE, SIDE);
  return `url(${canvas.toDataURL('image/jpeg', 0.8)}) center / cover`;
}

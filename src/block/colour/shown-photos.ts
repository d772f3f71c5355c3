import type { Block, ClothPhoto, Fabric, Look } from '../block.ts';
import type { Picture } from '../publication.ts';

/** @returns the ids of the photos that fabrics and colourways show */
export function shownIn({ fabrics, colourways = [] }: Pick<Block, 'fabrics' | 'colourways'>): ReadonlySet<string> {
  const looks: readonly Pick<Look, 'photo'>[] = [...fabrics, ...colourways.flatMap((each) => Object.values(each.looks))];
  return new Set(looks.flatMap(({ photo }) => (photo ? [photo.picture] : [])));
}

/** @returns the block without photos that nothing shows; the very same block where there are none */
export function withoutStrays(block: Block): Block {
  const { photos = [], ...rest } = block;
  const shown = shownIn(block);
  const kept = photos.filter(({ id }) => shown.has(id));
  return kept.length === photos.length ? block : { ...rest, ...(kept.length > 0 && { photos: kept }) };
}

/** @returns a look without a photo that a block does not have */
export function inPhotos<L extends { readonly photo?: ClothPhoto }>(photos: readonly Picture[], look: L): L {
  if (!look.photo || photos.some(({ id }) => id === look.photo!.picture)) return look;
  const { photo: _, ...rest } = look;
  return rest as L;
}

/**
 * @param fabric one of another block
 * @returns the photos of a block with that of the fabric, each once, and the fabric as it shows it there
 */
export function broughtPhoto(photos: readonly Picture[], fabric: Fabric, others: readonly Picture[]): { readonly photos: readonly Picture[]; readonly fabric: Fabric } {
  const picture = others.find(({ id }) => id === fabric.photo?.picture);
  if (!picture || !fabric.photo) return { photos, fabric: inPhotos([], fabric) };
  const own = photos.find(({ jpeg }) => jpeg === picture.jpeg);
  const id = own?.id ?? freshPhotoId(photos);
  return { photos: own ? photos : [...photos, { ...picture, id }], fabric: { ...fabric, photo: { ...fabric.photo, picture: id } } };
}

/** @returns an id that none of some photos has */
export function freshPhotoId(photos: readonly Picture[]): string {
  let number = 1;
  while (photos.some(({ id }) => id === `photo-${number}`)) number++;
  return `photo-${number}`;
}

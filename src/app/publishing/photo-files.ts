import { MAX_JPEG, MAX_JPEGS } from '../../block/limits.ts';
import type { Picture } from '../../block/publication.ts';
import { bad, good, type Result } from '../../measure/problem.ts';
import { kindOf } from '../views/picture-files.ts';
import { leanJpeg } from './lean-jpeg.ts';
import { pixelsIn } from './picture-pixels.ts';

/** Bytes a chosen file may have. */
const MOST_BYTES = 30 * 1024 * 1024;
/** Pixels in all: more than cameras have; each takes four bytes once it is unpacked, however small the file. */
const MOST_IN_ALL = 150_000_000;
/** Pixels of the longer side: cloth that is repeated; a photo over the whole width of a page at 200 dots per inch; a logo two inches wide at 300. */
const MOST_PIXELS = { photo: 1600, logo: 600, cloth: 1000 } as const;
/** Signs in base 64: of cloth so few that a block may have twenty photos of it. */
const MOST_SIGNS = { photo: MAX_JPEG, logo: MAX_JPEG, cloth: MAX_JPEGS / 20 } as const;
/** The first is taken unless the file is too long by then. */
const QUALITIES = [0.85, 0.75, 0.6, 0.45, 0.25];
/** How wide a drawing is made that does not say how large it is. */
const DRAWING = 1000;

/**
 * @param use what it is for
 * @returns the picture in a file as a JPEG on white: upright, no larger than is useful, without what cameras add; or a sentence about why
 * there is none
 */
export async function photoFrom(file: File, use: keyof typeof MOST_PIXELS): Promise<Result<Omit<Picture, 'id'>>> {
  const name = `“${file.name.slice(0, 60)}”`;
  if (file.size > MOST_BYTES) {
    const megabytes = Math.ceil(file.size / 2 ** 20);
    return bad('picture-too-large', `${name} has ${megabytes} MB, and a picture may have 30: save it smaller and choose it again.`);
  }
  const source = await pictureIn(file).catch(() => null);
  if (source === 'no picture') {
    return bad('picture-kind', `${name} is no picture that can be read here: choose a PNG, JPEG, WebP or SVG file.`);
  }
  if (source === 'too many pixels') {
    return bad('picture-too-large', `${name} has more than ${MOST_IN_ALL / 1_000_000} million pixels: save it smaller and choose it again.`);
  }
  const broken = `${name} cannot be read as a picture: it may be damaged, or larger than this device can hold; save it anew and smaller.`;
  if (source === null) return bad('picture-broken', broken);
  try {
    const share = Math.min(1, MOST_PIXELS[use] / Math.max(source.width, source.height));
    const [width, height] = [source.width, source.height].map((side) => Math.max(1, Math.round(side * share))) as [number, number];
    const canvas = new OffscreenCanvas(width, height);
    const pen = canvas.getContext('2d')!;
    pen.fillStyle = '#ffffff';
    pen.fillRect(0, 0, width, height);
    pen.imageSmoothingQuality = 'high';
    pen.drawImage(source.drawn, 0, 0, width, height);
    for (const quality of QUALITIES) {
      const jpeg = base64(leanJpeg(new Uint8Array(await (await canvas.convertToBlob({ type: 'image/jpeg', quality })).arrayBuffer())));
      if (jpeg.length <= MOST_SIGNS[use]) return good({ width, height, jpeg });
    }
    return bad('picture-broken', broken);
  } catch {
    return bad('picture-broken', broken);
  } finally {
    source.close();
  }
}

interface Source {
  readonly drawn: CanvasImageSource;
  readonly width: number;
  readonly height: number;
  readonly close: () => void;
}

/** @returns the picture in a file, the way up its camera meant it; rejects where it is broken */
async function pictureIn(file: File): Promise<Source | 'no picture' | 'too many pixels'> {
  const kind = kindOf(new Uint8Array(await file.slice(0, 12).arrayBuffer()));
  if (kind !== null) {
    const begin = new Uint8Array(await file.slice(0, 2 ** 18).arrayBuffer());
    if ((pixelsIn(begin, kind) ?? 0) > MOST_IN_ALL) return 'too many pixels';
    const drawn = await createImageBitmap(file, { imageOrientation: 'from-image' });
    return { drawn, width: drawn.width, height: drawn.height, close: () => drawn.close() };
  }
  const head = await file.slice(0, 2_000).text();
  if (!/<svg[\s>]/.test(head)) return 'no picture';
  // As the picture of an element, a drawing runs no script and fetches nothing.
  const address = URL.createObjectURL(new Blob([file], { type: 'image/svg+xml' }));
  const close = (): void => URL.revokeObjectURL(address);
  const drawn = new Image(DRAWING);
  drawn.src = address;
  try {
    await drawn.decode();
  } catch (error) {
    close();
    throw error;
  }
  const [width, height] = [drawn.naturalWidth || DRAWING, drawn.naturalHeight || DRAWING];
  // Lines are as sharp at any size.
  const more = Math.max(1, DRAWING / Math.max(width, height));
  return { drawn, width: width * more, height: height * more, close };
}

/** @returns bytes in base 64 */
function base64(bytes: Uint8Array): string {
  let text = '';
  for (let at = 0; at < bytes.length; at += 8_192) text += String.fromCharCode(...bytes.subarray(at, at + 8_192));
  return btoa(text);
}

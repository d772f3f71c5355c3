import { bad, good, type Result } from '../../measure/problem.ts';

/** Bytes a picture file may have. */
const MOST_BYTES = 30 * 1024 * 1024;
/** Pixels that the longer side of a kept picture has at most. */
const MOST_PIXELS = 2000;
const QUALITY = 0.86;

/** @returns the kind of a picture by the first bytes of its file, null for what is none of these three */
export function kindOf(head: Uint8Array): 'png' | 'jpeg' | 'webp' | null {
  const begins = (at: number, ...bytes: number[]): boolean => bytes.every((byte, i) => head[at + i] === byte);
  if (begins(0, 0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a)) return 'png';
  if (begins(0, 0xff, 0xd8, 0xff)) return 'jpeg';
  return begins(0, 0x52, 0x49, 0x46, 0x46) && begins(8, 0x57, 0x45, 0x42, 0x50) ? 'webp' : null;
}

/** A picture, no larger than it is useful, and the file of it that is kept. */
export interface Picture {
  readonly picture: ImageBitmap;
  readonly kept: Blob;
}

/** @returns the picture in a file, or a sentence about why there is none */
export async function readPicture(file: File): Promise<Result<Picture>> {
  const name = `“${file.name.slice(0, 60)}”`;
  if (file.size > MOST_BYTES) {
    return bad('picture-too-large', `${name} has ${Math.ceil(file.size / 2 ** 20)} MB, and a picture to trace may have 30: save it smaller.`);
  }
  const kind = kindOf(new Uint8Array(await file.slice(0, 12).arrayBuffer()));
  if (kind === null) return bad('picture-kind', `${name} is no picture that can be traced: choose a PNG, JPEG or WebP file.`);
  try {
    const whole = await createImageBitmap(file);
    const share = Math.min(1, MOST_PIXELS / Math.max(whole.width, whole.height));
    const canvas = new OffscreenCanvas(Math.max(1, Math.round(whole.width * share)), Math.max(1, Math.round(whole.height * share)));
    const pen = canvas.getContext('2d')!;
    pen.imageSmoothingQuality = 'high';
    pen.drawImage(whole, 0, 0, canvas.width, canvas.height);
    whole.close();
    // What may be transparent stays so.
    const kept = await canvas.convertToBlob({ type: kind === 'jpeg' ? 'image/jpeg' : 'image/webp', quality: QUALITY });
    return good({ picture: await createImageBitmap(kept), kept });
  } catch {
    return bad('picture-broken', `${name} cannot be read as a picture: it may be damaged, or larger than this device can hold; save it anew and smaller.`);
  }
}

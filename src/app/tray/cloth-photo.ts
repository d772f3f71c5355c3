import type { NewPhoto } from '../../block/colour/photos.ts';
import { bad, type Result } from '../../measure/problem.ts';
import { jpegBitmap } from '../jpeg-bitmap.ts';
import { photoFrom } from '../publishing/photo-files.ts';

/** What is cut off a photo, in hundredths of its sides. */
export interface Crop {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

export const WHOLE: Crop = { left: 0, top: 0, right: 0, bottom: 0 };

/** @returns the photo in a file, or a sentence about why there is none; drawings, which may hold programs, are none */
export async function clothFrom(file: File): Promise<Result<NewPhoto>> {
  if (!/^\s*(<\?xml[^]*)?<svg[\s>]/.test(await file.slice(0, 2_000).text())) return photoFrom(file, 'photo');
  return bad('picture-kind', `“${file.name.slice(0, 60)}” is a drawing, and cloth is shown by a photo: choose a PNG, JPEG or WebP file.`);
}

/** @returns a photo without what is cut off, as large as a photo of cloth need be */
export async function cropped(photo: NewPhoto, crop: Crop): Promise<Result<NewPhoto>> {
  try {
    const whole = await jpegBitmap(photo.jpeg);
    const [left, top] = [Math.round((crop.left / 100) * whole.width), Math.round((crop.top / 100) * whole.height)];
    const wide = Math.max(1, whole.width - left - Math.round((crop.right / 100) * whole.width));
    const high = Math.max(1, whole.height - top - Math.round((crop.bottom / 100) * whole.height));
    const canvas = new OffscreenCanvas(wide, high);
    canvas.getContext('2d')!.drawImage(whole, left, top, wide, high, 0, 0, wide, high);
    whole.close();
    return await photoFrom(new File([await canvas.convertToBlob({ type: 'image/png' })], 'photo.png'), 'cloth');
  } catch {
    return bad('picture-broken', 'The photo cannot be cut to size here: choose it anew, smaller.');
  }
}

/** @returns the mean colour of a photo, or the one at a place of it (shares of its sides), as #rrggbb; null where it cannot be read */
export async function colourIn(photo: NewPhoto, at: readonly [number, number] | null): Promise<string | null> {
  try {
    const drawn = await jpegBitmap(photo.jpeg);
    const pen = new OffscreenCanvas(1, 1).getContext('2d', { willReadFrequently: true })!;
    pen.imageSmoothingQuality = 'high';
    // A thread is not the colour of the cloth: a dropper takes a fiftieth of the photo.
    const [wide, high] = at ? [Math.max(1, drawn.width / 50), Math.max(1, drawn.height / 50)] : [drawn.width, drawn.height];
    const [left, top] = at ? [at[0] * drawn.width - wide / 2, at[1] * drawn.height - high / 2] : [0, 0];
    const small = new OffscreenCanvas(16, 16);
    const smaller = small.getContext('2d', { willReadFrequently: true })!;
    smaller.drawImage(drawn, left, top, wide, high, 0, 0, 16, 16);
    drawn.close();
    const { data } = smaller.getImageData(0, 0, 16, 16);
    const mean = [0, 1, 2].map((part) => Math.round(data.reduce((sum, value, i) => (i % 4 === part ? sum + value : sum), 0) / (data.length / 4)));
    return `#${mean.map((part) => part.toString(16).padStart(2, '0')).join('')}`;
  } catch {
    return null;
  }
}

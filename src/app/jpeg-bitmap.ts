import { bytesOf } from '../measure/bytes.ts';

/** @returns a JPEG, in base 64, as it can be drawn; rejects where the browser cannot read it */
export const jpegBitmap = async (jpeg: string): Promise<ImageBitmap> => createImageBitmap(new Blob([bytesOf(jpeg)], { type: 'image/jpeg' }));

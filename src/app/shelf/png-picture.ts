import { withDensity } from '../../files/png-density.ts';
import type { Dots } from '../../pattern/block-svg.ts';

/**
 * Draws an SVG as a PNG that knows how large it is on paper.
 * @returns null where the browser cannot draw a picture of this size
 */
export async function pngPicture(svg: string, { width, height, perInch }: Dots): Promise<Blob | null> {
  const address = URL.createObjectURL(new Blob([svg], { type: 'image/svg+xml' }));
  try {
    const image = new Image(width, height);
    image.src = address;
    await image.decode();
    const canvas = document.createElement('canvas');
    canvas.width = width;
    canvas.height = height;
    const ink = canvas.getContext('2d');
    if (!ink) return null;
    ink.drawImage(image, 0, 0, width, height);
    const png = await new Promise<Blob | null>((done) => canvas.toBlob(done, 'image/png'));
    if (!png) return null;
    const bytes = withDensity(new Uint8Array(await png.arrayBuffer()), perInch);
    return new Blob([bytes.buffer as ArrayBuffer], { type: 'image/png' });
  } catch {
    return null;
  } finally {
    URL.revokeObjectURL(address);
  }
}

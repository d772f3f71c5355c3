import { withDensity } from '../../files/png-density.ts';
import type { DiagramPicture } from '../../pattern/pages/figure-svg.ts';
import { FAMILIES, svgPath, WEIGHTS } from '../../pattern/pages/page-svg.ts';
import { POINTS } from '../../pattern/pages/paper.ts';

/** Dots to an inch, as printers ask for. */
const PER_INCH = 300;

/** @returns a diagram in dots on a clear ground, as a PNG that knows how large it is on paper */
export async function pngOf({ width, height, items }: DiagramPicture): Promise<Uint8Array> {
  const scale = PER_INCH / POINTS.in;
  const canvas = new OffscreenCanvas(Math.ceil(width * scale), Math.ceil(height * scale));
  const pen = canvas.getContext('2d')!;
  pen.scale(scale, scale);
  for (const item of items) {
    if (item.kind === 'path') {
      const path = new Path2D(svgPath(item.steps));
      if (item.fill) {
        pen.fillStyle = item.fill;
        pen.fill(path);
      }
      if (item.stroke) {
        pen.strokeStyle = item.stroke.color;
        pen.lineWidth = item.stroke.width;
        pen.setLineDash([...(item.stroke.dash ?? [])]);
        pen.stroke(path);
      }
    } else if (item.kind === 'text') {
      pen.save();
      pen.translate(item.x, item.y);
      pen.rotate(((item.turn ?? 0) * Math.PI) / 2);
      pen.fillStyle = item.color;
      pen.font = `${WEIGHTS[item.weight]} ${item.size}px ${FAMILIES}`;
      pen.fillText(item.text, 0, 0, item.width);
      pen.restore();
    }
  }
  const png = await canvas.convertToBlob({ type: 'image/png' });
  return withDensity(new Uint8Array(await png.arrayBuffer()), PER_INCH);
}

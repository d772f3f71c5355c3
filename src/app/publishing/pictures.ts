import { withDensity } from '../../files/png-density.ts';
import type { FaceFiles } from '../../pattern/pages/face.ts';
import { diagramSvg, type DiagramPicture } from '../../pattern/pages/figure-svg.ts';
import type { PathItem, TextItem } from '../../pattern/pages/page.ts';
import { FAMILIES, FAMILY, svgPath, WEIGHTS } from '../../pattern/pages/page-svg.ts';
import { zipOf, type Packed } from '../../pattern/pictures-zip.ts';

/** What printers ask of a picture. */
const PER_INCH = 300;

/**
 * Draws every diagram of a pattern by itself; in a worker.
 * @returns an archive (ZIP) with each as SVG and as PNG of 300 dots per inch, on a clear ground, named for its step
 */
export async function picturesZip(diagrams: readonly DiagramPicture[], language: string, faces: FaceFiles): Promise<Uint8Array> {
  await ownFace(faces);
  const files: Packed[] = [];
  for (const diagram of diagrams) {
    files.push({ name: `${diagram.name}.svg`, content: diagramSvg(diagram, language) }, { name: `${diagram.name}.png`, content: await diagramPng(diagram) });
  }
  return zipOf(files);
}

/** Lets a worker's canvases write in the face that pages are set in; where the browser refuses it, its own stands in, as wide. */
async function ownFace(faces: FaceFiles): Promise<void> {
  const { fonts } = self as unknown as { readonly fonts: FontFaceSet };
  for (const weight of ['regular', 'strong'] as const) {
    if ([...fonts].some((face) => face.family.includes(FAMILY) && face.weight === `${WEIGHTS[weight]}`)) continue;
    await new FontFace(FAMILY, faces[weight].slice().buffer, { weight: `${WEIGHTS[weight]}` }).load().then(
      (face) => fonts.add(face),
      () => undefined,
    );
  }
}

/** @returns a diagram as PNG, its dots per inch written in it */
async function diagramPng({ width, height, items }: DiagramPicture): Promise<Uint8Array> {
  const scale = PER_INCH / 72;
  const canvas = new OffscreenCanvas(Math.ceil(width * scale), Math.ceil(height * scale));
  const context = canvas.getContext('2d')!;
  context.scale(scale, scale);
  for (const item of items) {
    if (item.kind === 'path') drawPath(context, item);
    else if (item.kind === 'text') drawText(context, item);
  }
  const blob = await canvas.convertToBlob({ type: 'image/png' });
  return withDensity(new Uint8Array(await blob.arrayBuffer()), PER_INCH);
}

function drawPath(context: OffscreenCanvasRenderingContext2D, { steps, fill, stroke }: PathItem): void {
  const path = new Path2D(svgPath(steps));
  if (fill !== undefined) {
    context.fillStyle = fill;
    context.fill(path);
  }
  if (!stroke) return;
  context.strokeStyle = stroke.color;
  context.lineWidth = stroke.width;
  context.setLineDash([...(stroke.dash ?? [])]);
  context.stroke(path);
}

function drawText(context: OffscreenCanvasRenderingContext2D, { text, x, y, size, weight, color, width, turn }: TextItem): void {
  context.save();
  context.translate(x, y);
  context.rotate(((turn ?? 0) * Math.PI) / 2);
  context.font = `${WEIGHTS[weight]} ${size}px ${FAMILIES}`;
  context.fontKerning = 'none';
  context.fillStyle = color;
  // As wide as it was measured, whatever face stands in.
  const set = context.measureText(text).width;
  if (set > 0) context.scale(width / set, 1);
  context.fillText(text, 0, 0);
  context.restore();
}

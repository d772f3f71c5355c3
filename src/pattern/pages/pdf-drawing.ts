import type { ImageItem, PathItem, TextItem } from './page.ts';

/** Nothing that would set letters otherwise than they were measured. */
const AS_MEASURED = { kern: false, liga: false, clig: false, calt: false } as unknown as PDFKit.Mixins.TextOptions['features'];

/** Draws a line of text. */
export function drawText(pdf: PDFKit.PDFDocument, { text, x, y, size, weight, color, turn }: TextItem): void {
  if (turn) {
    const [cos, sin] = TURNS[turn];
    pdf.save().transform(cos, sin, -sin, cos, x - x * cos + y * sin, y - x * sin - y * cos);
  }
  pdf.font(weight).fontSize(size).fillColor(color);
  pdf.text(text, x, y, { lineBreak: false, baseline: 'alphabetic', features: AS_MEASURED });
  if (turn) pdf.restore();
}

/** Cosine and sine of quarter turns, which are whole. */
const TURNS = { 1: [0, 1], 2: [-1, 0], 3: [0, -1] } as const;

/** Draws lines or areas. */
export function drawPath(pdf: PDFKit.PDFDocument, { steps, stroke, fill }: PathItem): void {
  for (const step of steps) {
    if (step[0] === 'M') pdf.moveTo(step[1], step[2]);
    else if (step[0] === 'L') pdf.lineTo(step[1], step[2]);
    else if (step[0] === 'C') pdf.bezierCurveTo(step[1], step[2], step[3], step[4], step[5], step[6]);
    else pdf.closePath();
  }
  if (stroke) {
    pdf.lineWidth(stroke.width).lineJoin('miter').strokeColor(stroke.color);
    // pdfkit takes any number of lengths, its typings two.
    if (stroke.dash) pdf.dash(stroke.dash as unknown as number, {});
    else pdf.undash();
  }
  if (stroke && fill !== undefined) pdf.fillAndStroke(fill, stroke.color);
  else if (fill !== undefined) pdf.fill(fill);
  else pdf.stroke();
}

/** @returns what draws photos into a document, each picture of which is held in it once */
export function imagesOf(pdf: PDFKit.PDFDocument): (item: ImageItem) => void {
  const { openImage } = pdf as unknown as { readonly openImage: (file: Uint8Array) => PDFKit.Mixins.ImageSrc };
  const opened = new Map<string, PDFKit.Mixins.ImageSrc>();
  return ({ picture, area: { left, top, width, height } }) => {
    const image = opened.get(picture.jpeg) ?? openImage.call(pdf, bytesOf(picture.jpeg));
    opened.set(picture.jpeg, image);
    pdf.image(image, left, top, { width, height });
  };
}

const bytesOf = (base64: string): Uint8Array => Uint8Array.from(atob(base64), (sign) => sign.charCodeAt(0));

import { bytesOf } from '../../measure/bytes.ts';
import type { Picture } from '../../block/publication.ts';
import type { Area, PathItem, PathStep, PhotoFill, TextItem } from './page.ts';

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

/** Draws lines or areas, and what photos fill them. */
export function drawPath(pdf: PDFKit.PDFDocument, item: PathItem, image: Images): void {
  if (!item.photo) return drawInk(pdf, item);
  const { stroke: _, ...area } = item;
  drawInk(pdf, area);
  drawPhotos(pdf, item.steps, item.photo, image);
  if (item.stroke) drawInk(pdf, { steps: item.steps, stroke: item.stroke });
}

function trace(pdf: PDFKit.PDFDocument, steps: readonly PathStep[]): void {
  for (const step of steps) {
    if (step[0] === 'M') pdf.moveTo(step[1], step[2]);
    else if (step[0] === 'L') pdf.lineTo(step[1], step[2]);
    else if (step[0] === 'C') pdf.bezierCurveTo(step[1], step[2], step[3], step[4], step[5], step[6]);
    else pdf.closePath();
  }
}

function drawInk(pdf: PDFKit.PDFDocument, { steps, stroke, fill }: Pick<PathItem, 'steps' | 'stroke' | 'fill'>): void {
  if (!stroke && fill === undefined) return;
  trace(pdf, steps);
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

/** Photos that fill one area: of more, each a speck, the plain colour under them says as much. */
const MOST_PHOTOS = 400;

/** Draws a photo again and again, as far as an area goes. */
function drawPhotos(pdf: PDFKit.PDFDocument, steps: readonly PathStep[], { picture, at: [x, y], width, turn }: PhotoFill, image: Images): void {
  const height = (width * picture.height) / picture.width;
  const [cos, sin] = [Math.cos((turn * Math.PI) / 180), Math.sin((turn * Math.PI) / 180)];
  const corners = steps.flatMap((step) => {
    if (step[0] === 'Z') return [];
    const [px, py] = step.slice(-2) as [number, number];
    const [dx, dy] = [px - x, py - y];
    return [[(dx * cos + dy * sin) / width, (dy * cos - dx * sin) / height] as const];
  });
  const [us, vs] = [corners.map(([u]) => u), corners.map(([, v]) => v)];
  const [left, top] = [Math.floor(Math.min(...us)), Math.floor(Math.min(...vs))];
  const [across, down] = [Math.ceil(Math.max(...us)) - left, Math.ceil(Math.max(...vs)) - top];
  if (!(across * down <= MOST_PHOTOS)) return;
  pdf.save();
  trace(pdf, steps);
  pdf.clip().transform(cos, sin, -sin, cos, x, y);
  for (let j = top; j < top + down; j++) for (let i = left; i < left + across; i++) image(picture, { left: i * width, top: j * height, width, height });
  pdf.restore();
}

/** Draws a picture into an area. */
export type Images = (picture: Picture, area: Area) => void;

/** @returns what draws photos into a document, each picture of which is held in it once */
export function imagesOf(pdf: PDFKit.PDFDocument): Images {
  const { openImage } = pdf as unknown as { readonly openImage: (file: Uint8Array) => PDFKit.Mixins.ImageSrc };
  const opened = new Map<string, PDFKit.Mixins.ImageSrc>();
  return (picture, { left, top, width, height }) => {
    const image = opened.get(picture.jpeg) ?? openImage.call(pdf, bytesOf(picture.jpeg));
    opened.set(picture.jpeg, image);
    pdf.image(image, left, top, { width, height });
  };
}

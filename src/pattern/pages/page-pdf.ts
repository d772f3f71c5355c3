import PDFDocument from 'pdfkit';
import type { FaceFiles } from './face.ts';
import type { Document, PathItem, TextItem } from './page.ts';

/** Nothing that would set letters otherwise than they were measured. */
const AS_MEASURED = { kern: false, liga: false, clig: false, calt: false } as unknown as PDFKit.Mixins.TextOptions['features'];

/**
 * Writes pages as PDF 1.7: vectors, the letters that are used of our own face, text in reading order, tagged, lines as decoration.
 * Nothing is packed, since browsers and terminals pack differently, and it is always written at the beginning of 1970, as reproducible
 * builds are: the same pages give the same bytes.
 */
export function pagesPdf({ title, language, pages }: Document, faces: FaceFiles): Promise<Uint8Array> {
  const pdf = new PDFDocument({
    autoFirstPage: false,
    compress: false,
    pdfVersion: '1.7',
    lang: language,
    tagged: true,
    displayTitle: true,
    // No other face than our own.
    font: '',
    info: { Title: title, Creator: 'Piecewright', CreationDate: new Date(0) },
  });
  const chunks: Uint8Array[] = [];
  const written = new Promise<Uint8Array>((resolve, reject) => {
    pdf.on('data', (chunk: Uint8Array) => chunks.push(chunk));
    pdf.on('error', reject);
    pdf.on('end', () => resolve(joined(chunks)));
  });
  pdf.registerFont('regular', faces.regular as unknown as PDFKit.Mixins.PDFFontSource);
  pdf.registerFont('strong', faces.strong as unknown as PDFKit.Mixins.PDFFontSource);
  const whole = pdf.struct('Document');
  pdf.addStructure(whole);
  for (const { width, height, items } of pages) {
    pdf.addPage({ size: [width, height], margin: 0 });
    const section = pdf.struct('Sect');
    whole.add(section);
    for (const item of items) {
      if (item.kind === 'text') section.add(pdf.struct(item.role === 'heading' ? 'H1' : 'P', {}, () => drawText(pdf, item)));
      else if (item.kind === 'path') drawPath(pdf, item);
    }
    section.end();
  }
  whole.end();
  pdf.end();
  return written;
}

function drawText(pdf: PDFKit.PDFDocument, { text, x, y, size, weight, color, turn }: TextItem): void {
  if (turn) pdf.save().rotate(turn * 90, { origin: [x, y] });
  pdf.font(weight).fontSize(size).fillColor(color);
  pdf.text(text, x, y, { lineBreak: false, baseline: 'alphabetic', features: AS_MEASURED });
  if (turn) pdf.restore();
}

function drawPath(pdf: PDFKit.PDFDocument, { steps, stroke, fill }: PathItem): void {
  pdf.markContent('Artifact', { type: 'Layout' });
  for (const step of steps) {
    if (step[0] === 'M') pdf.moveTo(step[1], step[2]);
    else if (step[0] === 'L') pdf.lineTo(step[1], step[2]);
    else if (step[0] === 'C') pdf.bezierCurveTo(step[1], step[2], step[3], step[4], step[5], step[6]);
    else pdf.closePath();
  }
  if (stroke) {
    pdf.lineWidth(stroke.width).lineJoin('miter').strokeColor(stroke.color);
    if (stroke.dash) pdf.dash(stroke.dash[0]!, { space: stroke.dash[1] ?? stroke.dash[0]! });
    else pdf.undash();
  }
  if (stroke && fill !== undefined) pdf.fillAndStroke(fill, stroke.color);
  else if (fill !== undefined) pdf.fill(fill);
  else pdf.stroke();
  pdf.endMarkedContent();
}

function joined(chunks: readonly Uint8Array[]): Uint8Array {
  const all = new Uint8Array(chunks.reduce((length, chunk) => length + chunk.length, 0));
  let at = 0;
  for (const chunk of chunks) {
    all.set(chunk, at);
    at += chunk.length;
  }
  return all;
}

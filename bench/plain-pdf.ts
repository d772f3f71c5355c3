import PDFDocument from 'pdfkit';
import type { FaceFiles } from '../src/pattern/pages/face.ts';
import type { Document } from '../src/pattern/pages/page.ts';
import { drawPath, drawText } from '../src/pattern/pages/pdf-drawing.ts';

/** Draws the lines and letters of a document by pdfkit and nothing else: no tags, links, bookmarks. @returns the file, all of it drawn */
export function plainlyDrawn({ pages }: Document, faces: FaceFiles): PDFKit.PDFDocument {
  const pdf = new PDFDocument({ autoFirstPage: false, font: '' });
  pdf.registerFont('regular', faces.regular as unknown as PDFKit.Mixins.PDFFontSource);
  pdf.registerFont('strong', faces.strong as unknown as PDFKit.Mixins.PDFFontSource);
  for (const { width, height, items } of pages) {
    pdf.addPage({ size: [width, height], margin: 0 });
    for (const item of items) {
      if (item.kind === 'text') drawText(pdf, item);
      else if (item.kind === 'path') drawPath(pdf, item, () => undefined);
    }
  }
  pdf.end();
  return pdf;
}

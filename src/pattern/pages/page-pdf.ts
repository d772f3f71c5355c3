import PDFDocument from 'pdfkit';
import { joinedBytes } from '../../measure/bytes.ts';
import type { FaceFiles } from './face.ts';
import { boxOf } from './ink-box.ts';
import { escaped } from './page-svg.ts';
import type { Area, Document, Item, LinkItem, PathItem, PlaceItem, TextItem } from './page.ts';
import { drawPath, drawText, imagesOf, type Images } from './pdf-drawing.ts';
import { packedPdf } from './pdf-packing.ts';
import { tagsOf, type Tags } from './pdf-tags.ts';

/**
 * Writes pages as PDF 1.7: vectors, the letters that are used of our own face, text in reading order, tagged, lines as decoration where
 * they are no picture, links, bookmarks. It carries no date, and is packed by code of our own in any place: the same pages give the same
 * bytes, in browser and terminal. A link to a place that the document does not have is left out.
 */
export async function pagesPdf(document: Document, faces: FaceFiles): Promise<Uint8Array> {
  return packedPdf(await plainPdf(document, faces));
}

/** @returns the PDF before it is packed */
export function plainPdf({ title, language, pages }: Document, faces: FaceFiles): Promise<Uint8Array> {
  const pdf = new PDFDocument({
    autoFirstPage: false,
    compress: false,
    pdfVersion: '1.7',
    lang: language,
    tagged: true,
    displayTitle: true,
    // No other face than our own.
    font: '',
    // Of the date pdfkit makes the file's id.
    info: { Title: title, Creator: 'Piecewright', Producer: 'Piecewright', CreationDate: new Date(0) },
  });
  delete pdf.info.CreationDate;
  describe(pdf, title, language);
  const chunks: Uint8Array[] = [];
  const written = new Promise<Uint8Array>((resolve, reject) => {
    pdf.on('data', (chunk: Uint8Array) => chunks.push(chunk));
    pdf.on('error', reject);
    pdf.on('end', () => resolve(joinedBytes(chunks)));
  });
  pdf.registerFont('regular', faces.regular as unknown as PDFKit.Mixins.PDFFontSource);
  pdf.registerFont('strong', faces.strong as unknown as PDFKit.Mixins.PDFFontSource);
  const tags = tagsOf(pdf);
  const pen: Pen = {
    pdf,
    tags,
    image: imagesOf(pdf),
    bookmark: bookmarksOf(pdf),
    places: new Set(pages.flatMap(({ items }) => items.flatMap((item) => (item.kind === 'place' ? [item.name] : [])))),
  };
  for (const { width, height, items } of pages) {
    pdf.addPage({ size: [width, height], margin: 0 });
    drawItems(items, width, pen);
  }
  tags.end();
  pdf.end();
  return written;
}

/** Writes the metadata (XMP, ISO 16684-1) ourselves: pdfkit's would be no XML where a title has signs such as & or <. */
function describe(pdf: PDFKit.PDFDocument, title: string, language: string): void {
  const about = (prefix: string, space: string, content: string): string =>
    `<rdf:Description rdf:about="" xmlns:${prefix}="${space}">${content}</rdf:Description>\n`;
  Object.assign(pdf, {
    _addInfo: () =>
      pdf.appendXML(
        about(
          'dc',
          'http://purl.org/dc/elements/1.1/',
          `<dc:title><rdf:Alt><rdf:li xml:lang="x-default">${escaped(title)}</rdf:li></rdf:Alt></dc:title>` +
            `<dc:language><rdf:Bag><rdf:li>${escaped(language)}</rdf:li></rdf:Bag></dc:language>`,
        ) +
          about('xmp', 'http://ns.adobe.com/xap/1.0/', '<xmp:CreatorTool>Piecewright</xmp:CreatorTool>') +
          about('pdf', 'http://ns.adobe.com/pdf/1.3/', '<pdf:Producer>Piecewright</pdf:Producer>'),
      ),
  });
}

/** What the items of all pages are drawn with. */
interface Pen {
  readonly pdf: PDFKit.PDFDocument;
  readonly tags: Tags;
  readonly image: Images;
  readonly bookmark: ReturnType<typeof bookmarksOf>;
  /** Names of all places of the document. */
  readonly places: ReadonlySet<string>;
}

function drawItems(items: readonly Item[], width: number, pen: Pen): void {
  const { pdf, tags, image, bookmark, places } = pen;
  const links = linksOn(items, places);
  for (let i = 0; i < items.length; ) {
    const run = runAt(items, i);
    i += run.length;
    const [item] = run as readonly [Item];
    if (item.kind === 'image') {
      const { left, top, width: wide, height } = item.area;
      tags.forFigure(`image ${item.picture.id} ${left} ${top}`, item.what, [left, top, left + wide, top + height]).add(() => image(item.picture, item.area));
    } else if (item.kind === 'place') {
      pdf.addNamedDestination(nameOf(item.name), 'XYZ', 0, item.y, null as unknown as number);
      bookmark(item, width);
    } else if (item.kind === 'link') {
      if (links.loose.has(item)) linkIn(tags.inSection(), item, '', pen);
    } else if (item.figure) {
      const parts = run as readonly (PathItem | TextItem)[];
      tags.forFigure(item.figure.name, item.figure.says, boxOf(parts)).add(() => parts.forEach((part) => drawPart(pdf, part, image)));
    } else if (item.kind === 'path') {
      asDecoration(pdf, 'Layout', () => drawPath(pdf, item, image));
    } else {
      drawWords(item, links.of.get(item) ?? [], pen);
    }
  }
}

function drawWords(item: TextItem, links: readonly LinkItem[], pen: Pen): void {
  const { pdf, tags } = pen;
  const element = tags.forText(item);
  if (element === null) {
    asDecoration(pdf, 'Pagination', () => drawText(pdf, item));
    return;
  }
  const [whole] = links;
  if (whole && holds(whole.area, item)) linkIn(element, whole, item.text, pen, () => drawText(pdf, item));
  else element.add(() => drawText(pdf, item));
  for (const link of links) if (link !== whole || !holds(link.area, item)) linkIn(element, link, item.text, pen);
}

const drawPart = (pdf: PDFKit.PDFDocument, item: PathItem | TextItem, image: Images): void =>
  item.kind === 'text' ? drawText(pdf, item) : drawPath(pdf, item, image);

function asDecoration(pdf: PDFKit.PDFDocument, type: 'Layout' | 'Pagination', draw: () => void): void {
  pdf.markContent('Artifact', { type });
  draw();
  pdf.endMarkedContent();
}

/** @returns the items from here on that are drawn at once: all that follow one another in one picture, else one */
function runAt(items: readonly Item[], from: number): readonly Item[] {
  const figure = figureOf(items[from]!);
  let end = from + 1;
  while (figure !== undefined && end < items.length && figureOf(items[end]!) === figure) end++;
  return items.slice(from, end);
}

const figureOf = (item: Item): string | undefined => (item.kind === 'path' || item.kind === 'text' ? item.figure?.name : undefined);

/** A link is told where its words are: with the line it covers, or lies in. */
function linksOn(items: readonly Item[], places: ReadonlySet<string>) {
  const texts = items.filter((item) => item.kind === 'text').filter(({ figure, role }) => !figure && role !== 'of the page');
  const of = new Map<TextItem, LinkItem[]>();
  const loose = new Set<LinkItem>();
  for (const item of items) {
    if (item.kind !== 'link' || !places.has(item.to)) continue;
    const words = texts.find((text) => holds(item.area, text)) ?? texts.find((text) => liesIn(item.area, text));
    if (words) of.set(words, [...(of.get(words) ?? []), item]);
    else loose.add(item);
  }
  return { of, loose };
}

/** Half a point more or less is no matter. */
const SLACK = 0.5;

/** Whether a link covers a whole line of text, but for a blank at its end. */
function holds({ left, top, width, height }: Area, text: TextItem): boolean {
  const inked = (text.width * text.text.trimEnd().length) / text.text.length;
  return left <= text.x + SLACK && text.x + inked <= left + width + SLACK && top <= text.y - SLACK && text.y - SLACK <= top + height;
}

/** Whether a link lies within a line of text. */
const liesIn = ({ left, top, width, height }: Area, text: TextItem): boolean =>
  text.x <= left + SLACK && left + width <= text.x + text.width + SLACK && top <= text.y - SLACK && text.y - SLACK <= top + height;

function linkIn(parent: PDFKit.PDFStructureElement, { area, to }: LinkItem, says: string, { pdf }: Pen, draw?: () => void): void {
  const link = pdf.struct('Link');
  parent.add(link);
  if (draw) link.add(draw);
  const { left, top, width, height } = area;
  pdf.goTo(left, top, width, height, nameOf(to), { structParent: link, Contents: new String(says) } as unknown as PDFKit.Mixins.AnnotationOption);
  // Here and now: pdfkit writes the page that it is on when the element ends.
  link.end();
}

/** Names are sorted by their signs in the file: plain ones only. */
const nameOf = (place: string): string => encodeURIComponent(place);

/** @returns what adds bookmarks, each under the last one of a higher level */
function bookmarksOf(pdf: PDFKit.PDFDocument): (place: PlaceItem, pageWidth: number) => void {
  let above: readonly { readonly level: number; readonly entry: PDFKit.PDFOutline }[] = [];
  return ({ y, bookmark }, pageWidth) => {
    if (!bookmark) return;
    above = above.filter(({ level }) => level < bookmark.level);
    // pdfkit counts `left` from the right edge.
    const options = { top: y, left: pageWidth, expanded: bookmark.level === 1 };
    const entry = (above.at(-1)?.entry ?? pdf.outline).addItem(bookmark.title, options);
    above = [...above, { level: bookmark.level, entry }];
  };
}

import type { Item, Page, PathStep, PhotoFill } from './page.ts';

/** The family that pages are set in, for whoever has it; the size of a line is the same in any. */
export const FAMILY = 'Source Sans 3';
/** As `font-family` names it, with what stands in for it. */
export const FAMILIES = `'${FAMILY}', sans-serif`;
export const WEIGHTS = { regular: 400, strong: 600 } as const;

/** @returns a path as SVG writes one, to a hundred thousandth of a point */
export const svgPath = (steps: readonly PathStep[]): string =>
  steps.map(([kind, ...numbers]) => `${kind}${numbers.map(svgNumber).join(' ')}`).join('');

/** @returns a number as SVG writes one, to a hundred thousandth */
export const svgNumber = (value: number): string => String(Math.round(value * 100_000) / 100_000 + 0);

/** @returns a page as an SVG document of its true size, whose lines are named by what they show */
export function pageSvg(page: Page, title: string, language: string): string {
  const [width, height] = [svgNumber(page.width), svgNumber(page.height)];
  return [
    '<?xml version="1.0" encoding="UTF-8"?>',
    `<svg xmlns="http://www.w3.org/2000/svg" version="1.1" xml:lang="${escaped(language)}" ` +
      `width="${width}pt" height="${height}pt" viewBox="0 0 ${width} ${height}">`,
    `<title>${escaped(title)}</title>`,
    ...photosSvg(page.items),
    ...page.items.map(itemSvg).filter((line) => line !== ''),
    '</svg>',
    '',
  ].join('\n');
}

/** @returns the photos that fill areas, each picture once */
function photosSvg(items: readonly Item[]): readonly string[] {
  const filled = items.flatMap((item, i) => (item.kind === 'path' && item.photo ? [{ i, photo: item.photo }] : []));
  const pictures = [...new Map(filled.map(({ photo: { picture } }) => [picture.jpeg, picture])).values()];
  if (pictures.length === 0) return [];
  const nameOf = (jpeg: string): string => `cloth-${pictures.findIndex((each) => each.jpeg === jpeg) + 1}`;
  const images = pictures.map(({ width, height, jpeg }) => `<image id="${nameOf(jpeg)}" width="${width}" height="${height}" href="data:image/jpeg;base64,${jpeg}"/>`);
  const fills = filled.map(({ i, photo }) => {
    const { width, height, jpeg } = photo.picture;
    const size = `patternUnits="userSpaceOnUse" width="${width}" height="${height}" patternTransform="${photoPlace(photo)}"`;
    return `<pattern id="${fillName(i)}" ${size}><use href="#${nameOf(jpeg)}"/></pattern>`;
  });
  return ['<defs>', ...images, ...fills, '</defs>'];
}

const fillName = (item: number): string => `photo-${item + 1}`;

/** @returns where a photo of as many units as it has pixels lies, as SVG writes it */
export const photoPlace = ({ picture, at: [x, y], width, turn }: PhotoFill): string =>
  `translate(${svgNumber(x)} ${svgNumber(y)}) rotate(${svgNumber(turn)}) scale(${Number((width / picture.width).toPrecision(8))})`;

function itemSvg(item: Item, index: number): string {
  if (item.kind === 'text') {
    const { text, x, y, size, weight, color, width, turn } = item;
    const turned = turn ? ` transform="rotate(${turn * 90} ${svgNumber(x)} ${svgNumber(y)})"` : '';
    return (
      `<text x="${svgNumber(x)}" y="${svgNumber(y)}" font-family="${FAMILIES}" font-size="${svgNumber(size)}" ` +
      `xml:space="preserve" font-weight="${WEIGHTS[weight]}" fill="${color}" textLength="${svgNumber(width)}" lengthAdjust="spacingAndGlyphs"${turned}>${escaped(text)}</text>`
    );
  }
  if (item.kind === 'link' || item.kind === 'place') return '';
  if (item.kind === 'image') {
    const { left, top, width, height } = item.area;
    const place = `x="${svgNumber(left)}" y="${svgNumber(top)}" width="${svgNumber(width)}" height="${svgNumber(height)}"`;
    return `<image ${place} href="data:image/jpeg;base64,${item.picture.jpeg}"><title>${escaped(item.what)}</title></image>`;
  }
  const { what, steps, stroke, fill, photo } = item;
  const dash = stroke?.dash ? ` stroke-dasharray="${stroke.dash.map(svgNumber).join(' ')}"` : '';
  const lines = stroke ? ` stroke="${stroke.color}" stroke-width="${svgNumber(stroke.width)}"${dash}` : '';
  const inside = photo ? `url(#${fillName(index)}) ${fill ?? 'none'}` : (fill ?? 'none');
  return `<path d="${svgPath(steps)}" fill="${inside}"${lines}><title>${escaped(what)}</title></path>`;
}

/** @returns text for XML, without the few signs that XML 1.0 cannot hold */
export function escaped(text: string): string {
  const names: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' };
  return text.replace(/[&<>"]/g, (sign) => names[sign]!).replace(/[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]/g, '');
}

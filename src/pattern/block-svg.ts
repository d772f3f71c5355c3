import type { Block, Patch } from '../block/block.ts';
import { toDrawing } from '../block/drawing.ts';
import { boundsOf, boundsOverlap } from '../block/outline.ts';
import { good, type Result } from '../measure/problem.ts';
import { divide, toNumber, type Rational } from '../measure/rational.ts';
import type { Pattern } from './pattern.ts';

/** What a picture of a block shows beside its patches. */
export interface PictureChoices {
  /** The ground where nothing is laid; else the picture is clear there. */
  readonly ground: boolean;
  readonly lines: 'none' | 'grid' | 'seams';
}

/** Ink of lines, dark enough on light cloth and seen on dark cloth by the light beside it. */
const INK = '#1a2730';
const LIGHT = '#ffffff';

/**
 * Draws a block as SVG of its true finished size. The picture is measured in steps of the drawing's own lattice, so that every corner
 * of a patch stands in it as a whole number.
 * @param pattern the pattern of this very drawing, whose pieces give the seams; null draws none
 * @returns the text of an SVG 1.1 document; a problem where the block has no lattice in true proportion
 */
export function blockSvg(block: Block, { ground, lines }: PictureChoices, pattern: Pick<Pattern, 'pieces' | 'lattice'> | null): Result<string> {
  const drawn = toDrawing(block);
  if (!drawn.ok) return drawn;
  const { drawing } = drawn.value;
  const { width, height } = drawing;
  const { unit } = block.finished;
  const colors = new Map(block.fabrics.map(({ id, color }) => [id, color]));
  const long = Math.max(width, height);
  const cloth = runsOf(ground ? drawing.patches : withoutGround(drawing.patches, block.ground)).map(({ fabric, patches }) => {
    const polygons = patches.map(({ points }) => `<polygon points="${points.map(([x, y]) => `${x},${y}`).join(' ')}"/>`);
    return `<g fill="${colors.get(fabric)}" stroke="${colors.get(fabric)}">\n${polygons.join('\n')}\n</g>`;
  });
  return good(
    [
      '<?xml version="1.0" encoding="UTF-8"?>',
      `<svg xmlns="http://www.w3.org/2000/svg" version="1.1" width="${decimal(block.finished.width)}${unit}" ` +
        `height="${decimal(block.finished.height)}${unit}" viewBox="0 0 ${width} ${height}">`,
      `<title>${escaped(block.name)}</title>`,
      ...(ground ? [`<rect width="${width}" height="${height}" fill="${colors.get(block.ground)}"/>`] : []),
      // A hair of each patch's own colour, so that nothing shines through between neighbours.
      `<g stroke-width="${ink(long / 2000)}" stroke-linejoin="round">`,
      ...cloth,
      '</g>',
      ...lineMarks(lines === 'grid' ? gridPath(drawing) : lines === 'seams' && pattern ? seamPath(pattern, width, height) : '', long),
      '</svg>',
      '',
    ].join('\n'),
  );
}

/** @returns neighbours of one fabric together, in the order they lie */
function runsOf(patches: readonly Patch[]): readonly { readonly fabric: string; readonly patches: readonly Patch[] }[] {
  const runs: { fabric: string; patches: Patch[] }[] = [];
  for (const patch of patches) {
    const last = runs.at(-1);
    if (last?.fabric === patch.fabric) last.patches.push(patch);
    else runs.push({ fabric: patch.fabric, patches: [patch] });
  }
  return runs;
}

/** @returns the patches without those of the ground's fabric that cover nothing, which are clear like the ground itself */
function withoutGround(patches: readonly Patch[], ground: string): readonly Patch[] {
  return patches.filter(({ fabric, points }, i) => {
    if (fabric !== ground) return true;
    const bounds = boundsOf(points);
    return patches.slice(0, i).some((below) => below.fabric !== ground && boundsOverlap(boundsOf(below.points), bounds));
  });
}

/** @returns the lines between the cells, the edges of the block included, as an SVG path */
function gridPath({ columns, rows, width, height }: Grid): string {
  return [...columns.map((x) => `M${x} 0V${height}`), ...rows.map((y) => `M0 ${y}H${width}`)].join('');
}

interface Grid {
  readonly columns: readonly number[];
  readonly rows: readonly number[];
  readonly width: number;
  readonly height: number;
}

/** @returns the outlines of the pieces as an SVG path */
function seamPath({ pieces, lattice }: Pick<Pattern, 'pieces' | 'lattice'>, width: number, height: number): string {
  const [across, down] = [width / lattice.width, height / lattice.height];
  return pieces
    .map(({ outline }) => `M${outline.map(({ x, y, w }) => `${ink((x / w) * across)} ${ink((y / w) * down)}`).join('L')}Z`)
    .join('');
}

function lineMarks(path: string, long: number): string[] {
  if (path === '') return [];
  const mark = (color: string, width: number, opacity: number): string =>
    `<path d="${path}" fill="none" stroke="${color}" stroke-width="${ink(width)}" stroke-opacity="${opacity}" stroke-linejoin="round"/>`;
  return [mark(LIGHT, long / 400, 0.5), mark(INK, long / 800, 0.85)];
}

/** @returns a number for ink, to a thousandth */
const ink = (value: number): string => String(Math.round(value * 1000) / 1000);

/** @returns a length as SVG writes one, to a hundred thousandth: "8.33333" */
const decimal = (length: Rational): string => String(Math.round(toNumber(length) * 100_000) / 100_000);

/** @returns text for XML, without the few signs that XML 1.0 cannot hold */
function escaped(text: string): string {
  const names: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' };
  return text.replace(/[&<>"]/g, (sign) => names[sign]!).replace(/[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]/g, '');
}

/** Longest side of a picture in dots: what browsers and printers still take. */
export const MAX_DOTS = 8_000;

/** How many dots a picture has. */
export interface Dots {
  readonly width: number;
  readonly height: number;
  /** Of both sides, as an image file states it. */
  readonly perInch: number;
}

/**
 * @param asked dots per inch, more than 0
 * @returns the size of a picture of a block at its finished size; fewer dots per inch where it would be larger than MAX_DOTS
 */
export function dotsOf({ width, height, unit }: Block['finished'], asked: number): Dots {
  const inches = (side: Rational): number => toNumber(unit === 'cm' ? divide(side, { n: 127, d: 50 }) : side);
  const [wide, high] = [inches(width), inches(height)];
  const perInch = Math.min(asked, MAX_DOTS / Math.max(wide, high));
  const whole = (side: number): number => Math.max(1, Math.round(side * perInch));
  return { width: whole(wide), height: whole(high), perInch };
}

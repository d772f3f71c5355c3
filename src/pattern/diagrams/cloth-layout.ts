import type { ClothTiles, LaidTiles, StripTiles, Tiles } from '../../cutting/laid.ts';
import type { Rational } from '../../measure/rational.ts';
import { rational } from '../../measure/rational.ts';
import type { Spot } from '../polygons.ts';
import { ink, rectangle, type Frame, type Mark } from './diagram.ts';
import { headToTail } from './head-to-tail.ts';
import type { SheetMark } from './sheet-marks.ts';

/** What is written in the picture of a cloth, values kept. */
export interface LayoutWords {
  /** Which line of the cutting list. */
  readonly cut: (id: string) => string;
  /** A size without its unit: of a square one side. */
  readonly size: (width: Rational, height: Rational) => string;
  /** How wide so many strips are. */
  readonly strip: (times: number, width: Rational) => string;
  /** So many more strips are left out of the picture. */
  readonly more: (strips: number) => string;
}

/** Strips that come more often than this are drawn once. */
const DRAWN = 3;
/** Shares of the cloth's width: the margin for the widths of strips, a line of letters, and letters across. */
const MARGIN = 0.1;
const LINE = 0.021;
const LETTER = 0.0085;

/** @returns one cloth with everything that is cut from it, in the block's unit, from its upper left corner; widths of strips to its left */
export function clothLayout(
  tiles: ClothTiles,
  fabric: string,
  words: LayoutWords,
): { readonly frame: Frame; readonly marks: readonly (Mark | SheetMark)[] } {
  const scale = ink(tiles.step);
  const width = tiles.width * scale;
  const pen: Pen = { scale, width, fabric, words, step: tiles.step, cloth: [], left: [], cuts: [], labels: [] };
  let y = 0;
  for (const strip of tiles.strips) {
    const drawn = strip.times > DRAWN ? 1 : strip.times;
    const begins = y;
    for (let i = 0; i < drawn; i++) {
      drawStrip(strip, y, pen, i === 0);
      y += strip.height * scale;
      pen.cuts.push({ mark: 'cut', cut: 'strip', from: [0, y], to: [width, y] });
    }
    const wide = words.strip(drawn, rational(strip.height * tiles.step.n, tiles.step.d));
    pen.labels.push({
      mark: 'label',
      told: wide,
      at: [-width * MARGIN * 0.5, (begins + y) / 2],
      width: width * MARGIN * 0.96,
      height: y - begins,
      upright: false,
    });
    if (strip.times > drawn) {
      const band = 2 * width * LINE;
      pen.left.push({ mark: 'outline', outline: rectangle(0, y, width, band) });
      pen.labels.push({
        mark: 'label',
        told: words.more(strip.times - drawn),
        at: [width / 2, y + band / 2],
        width,
        height: band,
        upright: false,
      });
      y += band;
      pen.cuts.push({ mark: 'cut', cut: 'strip', from: [0, y], to: [width, y] });
    }
  }
  if (tiles.end) {
    drawLeftover({ ...tiles.end, top: 0 }, y, pen, true);
    y += tiles.end.height * scale;
  }
  const marks = [...pen.left, ...pen.cloth, ...pen.cuts, { mark: 'edge', outline: rectangle(0, 0, width, y) } as const, ...pen.labels];
  return { frame: { left: -width * MARGIN, top: 0, width: width * (1 + MARGIN), height: y }, marks };
}

interface Pen {
  readonly scale: number;
  /** Of the cloth. */
  readonly width: number;
  readonly fabric: string;
  readonly words: LayoutWords;
  readonly step: Rational;
  readonly cloth: Mark[];
  readonly left: SheetMark[];
  readonly cuts: SheetMark[];
  readonly labels: SheetMark[];
}

interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** Draws a strip with its upper edge at y; sizes are written on the first of equal strips. */
function drawStrip(strip: StripTiles, y: number, pen: Pen, first: boolean): void {
  const { scale, fabric, cloth, cuts } = pen;
  for (const at of strip.crosscuts)
    cuts.push({ mark: 'cut', cut: 'across', from: [at * scale, y], to: [at * scale, y + strip.height * scale] });
  for (const tile of strip.pieces) {
    placesOf(tile, y, scale).forEach((at, i) => {
      cloth.push({ mark: 'cloth', fabric, side: 'right', outline: rectangle(at.x, at.y, at.width, at.height) });
      cuts.push(...diagonalsOf(tile, i, at, scale).map(([from, to]): SheetMark => ({ mark: 'cut', cut: 'diagonal', from, to })));
      label(tile, at, first && i === 0, pen);
    });
  }
  for (const tile of strip.left) drawLeftover(tile, y, pen, first);
}

/** Every rectangle of a tile, column by column. */
const placesOf = ({ left, top, width, height, across, down }: Tiles, y: number, scale: number): readonly Box[] =>
  Array.from({ length: across * down }, (_, i) => ({
    x: (left + Math.floor(i / down) * width) * scale,
    y: y + (top + (i % down) * height) * scale,
    width: width * scale,
    height: height * scale,
  }));

function diagonalsOf({ subcut, falling, nested }: LaidTiles, drawn: number, at: Box, scale: number): readonly (readonly [Spot, Spot])[] {
  const { x, y, width, height } = at;
  if (nested) {
    const along = width >= height;
    const take = ([u, v]: Spot): Spot => (along ? [x + u, y + v] : [x + v, y + u]);
    const high = along ? height : width;
    return headToTail(nested.form, nested.triangles, nested.measure * scale, high).map(([from, to]) => [take(from), take(to)] as const);
  }
  const fall = [
    [x, y],
    [x + width, y + height],
  ] as const;
  const rise = [
    [x, y + height],
    [x + width, y],
  ] as const;
  if (subcut === 'twice') return [fall, rise];
  return subcut === 'once' && falling !== null ? [drawn < falling ? fall : rise] : [];
}

/** Writes the number of its line into a piece, and under it on the first of equal ones their size, where there is room for both. */
function label(tile: LaidTiles, { x, y, width, height }: Box, sized: boolean, { words, labels, step, width: cloth }: Pen): void {
  const number = { mark: 'label', told: words.cut(tile.cut) } as const;
  const [line, letter] = [cloth * LINE, cloth * LETTER];
  const middle = x + width / 2;
  const size = words.size(rational(tile.width * step.n, step.d), rational(tile.height * step.n, step.d));
  if (sized && height > 2.2 * line && width > letter * (tile.width === tile.height ? 5 : 11)) {
    labels.push({ ...number, at: [middle, y + height / 2 - 0.55 * line], width, height: line, upright: false });
    labels.push({ mark: 'label', told: size, at: [middle, y + height / 2 + 0.55 * line], width, height: line, upright: false });
  } else labels.push({ ...number, at: [middle, y + height / 2], width, height, upright: false });
}

function drawLeftover(tile: Tiles, y: number, { scale, left, labels, words, step, width: cloth }: Pen, named: boolean): void {
  placesOf(tile, y, scale).forEach((at, i) => {
    left.push({ mark: 'leftover', outline: rectangle(at.x, at.y, at.width, at.height) });
    if (!named || i > 0 || Math.min(at.width, at.height) < cloth * LINE) return;
    const told = words.size(rational(tile.width * step.n, step.d), rational(tile.height * step.n, step.d));
    labels.push({
      mark: 'label',
      told,
      at: [at.x + at.width / 2, at.y + at.height / 2],
      width: at.width,
      height: at.height,
      upright: at.height > at.width,
    });
  });
}

import type { LengthUnit } from '../../../block/block.ts';
import type { ClothTiles, LaidTiles, StripTiles, Tiles } from '../../../cutting/laid.ts';
import { printLength } from '../../../measure/lengths.ts';
import { rational } from '../../../measure/rational.ts';

/** A rectangle in CSS pixels. */
export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** Words on the picture, by their middle; turned by a quarter where there is only room that way. */
export interface Label {
  readonly x: number;
  readonly y: number;
  readonly text: string;
  readonly upright: boolean;
  /** Height of the letters. */
  readonly high: number;
}

/** What the margin says of one row: strips that are cut alike. */
export interface RowInk {
  readonly number: number;
  readonly times: number;
  /** Of the strips that are drawn. */
  readonly top: number;
  readonly bottom: number;
  /** Where the words stand; further down than the strips where those before leave no room. */
  readonly at: number;
  /** "2 × 4 1/2"; null where there is no room for it. */
  readonly length: string | null;
  /** Where more such strips are left out of the picture: how many, and in which band that is said. */
  readonly more: { readonly count: number; readonly band: Box } | null;
}

/** One cloth as it is drawn: everything in CSS pixels from the upper left corner of the picture. */
export interface ClothInk {
  readonly width: number;
  readonly height: number;
  readonly cloth: Box;
  readonly rows: readonly RowInk[];
  /** By line of the cutting list: one path of all its pieces. */
  readonly pieces: ReadonlyMap<string, string>;
  readonly leftovers: string;
  /** Cuts right across the cloth, cuts across a strip, diagonals: made in this order. */
  readonly stripCuts: string;
  readonly crosscuts: string;
  readonly diagonals: string;
  /** Numbers of lines, and sizes, in pieces with room for them. */
  readonly numbers: readonly Label[];
  readonly sizes: readonly Label[];
  /** Sizes of what is left over. */
  readonly lefts: readonly Label[];
}

/** What a picture has to go by, in CSS pixels: how wide it may be, and how high its letters are. */
export interface PictureRoom {
  readonly width: number;
  readonly text: number;
}

/** Strips that come more often than this are drawn once. */
const DRAWN = 3;
/** The largest scale: CSS pixels to an inch. */
const LARGEST: Readonly<Record<LengthUnit, number>> = { in: 20, cm: 20 / 2.54 };
/** Of the letters, in their height. */
const WIDE = 0.56;
/** Letters in the picture, and where there is no room for these, smaller ones; from one line of them to the next. */
const SMALL = 0.85;
const SMALLEST = 0.66;
const LINE = 1.15;
/** What a line of them needs beside its own height. */
const ROOMY = 1.06;
/** Margins in letters: for the numbers of the strips, with their widths where the picture is wide enough; for selvages; for the width. */
const MARGIN = { number: 2, lengths: 5.2, wide: 30, side: 1.1, top: 1.9 } as const;

const px = (value: number): string => String(Math.round(value * 100) / 100);
const boxPath = (x: number, y: number, width: number, height: number): string => `M${px(x)} ${px(y)}h${px(width)}v${px(height)}h${px(-width)}Z`;

/** @returns the drawing of a cloth, as large as there is room for it */
export function clothInk(tiles: ClothTiles, unit: LengthUnit, { width: room, text: em }: PictureRoom): ClothInk {
  const lengths = room > MARGIN.wide * em;
  const [left, top] = [(MARGIN.number + (lengths ? MARGIN.lengths : 0)) * em, MARGIN.top * em];
  const perUnit = Math.min(LARGEST[unit], (room - left - 2 * MARGIN.side * em) / (tiles.width * stepOf(tiles)));
  const scale = perUnit * stepOf(tiles);
  const origin = left + MARGIN.side * em;
  const said = (steps: number): string => printLength(rational(steps * tiles.step.n, tiles.step.d), unit, 'bare');
  const sizeSaid = ({ width, height }: Tiles): string => (width === height ? said(width) : `${said(width)} × ${said(height)}`);
  const pen: Pen = { scale, em, origin, pieces: new Map(), leftovers: [], stripCuts: [], crosscuts: [], diagonals: [], numbers: [], sizes: [], lefts: [], sizeSaid };
  const rows: RowInk[] = [];
  let y = top;
  for (const strip of tiles.strips) {
    const drawn = strip.times > DRAWN ? 1 : strip.times;
    const begins = y;
    for (let i = 0; i < drawn; i++) {
      drawStrip(strip, y, pen, i === 0);
      y += strip.height * scale;
      pen.stripCuts.push(`M${px(origin)} ${px(y)}h${px(tiles.width * scale)}`);
    }
    const ends = y;
    const band: Box = { x: origin, y, width: tiles.width * scale, height: 1.5 * em };
    if (strip.times > drawn) y += band.height;
    const at = Math.max((begins + ends) / 2, (rows.at(-1)?.at ?? -Infinity) + 1.5 * em);
    rows.push({
      number: strip.number,
      times: strip.times,
      top: begins,
      bottom: ends,
      at,
      length: lengths ? `${strip.times === 1 ? '' : `${strip.times} × `}${said(strip.height)}` : null,
      more: strip.times > drawn ? { count: strip.times - drawn, band } : null,
    });
  }
  if (tiles.end) {
    drawLeftover({ ...tiles.end, top: 0 }, y, pen);
    y += tiles.end.height * scale;
  }
  const { numbers, sizes, lefts } = pen;
  const cloth: Box = { x: origin, y: top, width: tiles.width * scale, height: y - top };
  return {
    width: origin + cloth.width + MARGIN.side * em,
    height: Math.max(y, (rows.at(-1)?.at ?? 0) + 0.75 * em) + 0.25 * em,
    cloth,
    rows,
    pieces: new Map([...pen.pieces].map(([cut, paths]) => [cut, paths.join('')])),
    leftovers: pen.leftovers.join(''),
    stripCuts: pen.stripCuts.join(''),
    crosscuts: pen.crosscuts.join(''),
    diagonals: pen.diagonals.join(''),
    numbers,
    sizes,
    lefts,
  };
}

const stepOf = ({ step }: ClothTiles): number => step.n / step.d;

interface Pen {
  readonly scale: number;
  readonly em: number;
  readonly origin: number;
  readonly pieces: Map<string, string[]>;
  readonly leftovers: string[];
  readonly stripCuts: string[];
  readonly crosscuts: string[];
  readonly diagonals: string[];
  readonly numbers: Label[];
  readonly sizes: Label[];
  readonly lefts: Label[];
  readonly sizeSaid: (tile: Tiles) => string;
}

/** Draws a strip with its upper edge at y; sizes are written on the first of equal strips. */
function drawStrip(strip: StripTiles, y: number, pen: Pen, first: boolean): void {
  const { scale, origin } = pen;
  for (const x of strip.crosscuts) pen.crosscuts.push(`M${px(origin + x * scale)} ${px(y)}v${px(strip.height * scale)}`);
  for (const tile of strip.pieces) {
    const paths = pen.pieces.get(tile.cut) ?? [];
    pen.pieces.set(tile.cut, paths);
    let drawn = 0;
    for (const at of placesOf(tile, y, pen)) {
      paths.push(boxPath(at.x, at.y, at.width, at.height));
      drawDiagonals(tile, drawn, at, pen);
      label(tile.cut, at, first ? pen.sizeSaid(tile) : null, drawn === 0, pen);
      drawn += 1;
    }
  }
  for (const tile of strip.left) drawLeftover(tile, y, pen, first);
}

/** Every rectangle of a tile, column by column. */
function* placesOf({ left, top, width, height, across, down }: Tiles, y: number, { scale, origin }: Pen): Generator<Box> {
  for (let i = 0; i < across; i++) {
    for (let j = 0; j < down; j++) {
      yield { x: origin + (left + i * width) * scale, y: y + (top + j * height) * scale, width: width * scale, height: height * scale };
    }
  }
}

function drawDiagonals({ subcut, falling, nested }: LaidTiles, drawn: number, at: Box, pen: Pen): void {
  const { x, y, width, height } = at;
  const fall = `M${px(x)} ${px(y)}l${px(width)} ${px(height)}`;
  const rise = `M${px(x)} ${px(y + height)}l${px(width)} ${px(-height)}`;
  if (nested) pen.diagonals.push(...headToTail(nested, at, pen.scale));
  else if (subcut === 'twice') pen.diagonals.push(fall, rise);
  else if (subcut === 'once' && falling !== null) pen.diagonals.push(drawn < falling ? fall : rise);
}

/** The cuts between triangles that lie head to tail along a strip, in order: see `cutting/from-strips.ts`. */
function headToTail({ form, triangles, measure }: NonNullable<LaidTiles['nested']>, { x, y, width, height }: Box, scale: number): string[] {
  const along = width >= height;
  const [m, h] = [measure * scale, along ? height : width];
  const place = (u: number, v: number): string => (along ? `${px(x + u)} ${px(y + v)}` : `${px(x + v)} ${px(y + u)}`);
  const cut = (near: number, far: number): string => `M${place(far, 0)}L${place(near, h)}`;
  return Array.from({ length: triangles + (form === 'quarter' ? 1 : 0) }, (_, i) => {
    if (form === 'half') {
      const pair = Math.floor(i / 2) * (2 * m - h);
      return i % 2 === 0 ? cut(pair + m, pair + m - h) : cut(pair + 2 * m - h, pair + 2 * m - h);
    }
    if (i === 0) return cut(0, h);
    const end = i * m - (i - 1) * h;
    return i % 2 === 1 ? cut(end, end - h) : cut(end - h, end);
  });
}

function drawLeftover(tile: Tiles, y: number, pen: Pen, named = true): void {
  let written = !named;
  for (const at of placesOf(tile, y, pen)) {
    pen.leftovers.push(boxPath(at.x, at.y, at.width, at.height));
    const place = written ? null : fitting(pen.sizeSaid(tile), at, pen.em);
    if (place) pen.lefts.push(place);
    written = true;
  }
}

/** Writes the number of its line into a piece, and into the first of equal ones their size below where there is room for both. */
function label(cut: string, at: Box, size: string | null, first: boolean, pen: Pen): void {
  const line = LINE * SMALL * pen.em;
  const below = size === null || !first ? null : fitting(size, { ...at, height: at.height - line }, pen.em);
  if (below && !below.upright) {
    pen.numbers.push({ ...below, text: cut });
    pen.sizes.push({ ...below, y: below.y + line });
    return;
  }
  const place = fitting(cut, at, pen.em);
  if (place && (first || roomy(place, at))) pen.numbers.push(place);
}

/** Whether the cloth is still seen beside the words: where it is not, they stand on the first of equal pieces only. */
const roomy = ({ text, high, upright }: Label, { width, height }: Box): boolean => (text.length * WIDE + 1) * high <= (upright ? height : width);

/** @returns where words stand in a rectangle, and how high, for letters of this height at most; null where they do not fit */
function fitting(text: string, { x, y, width, height }: Box, em: number): Label | null {
  const middle = { text, x: x + width / 2, y: y + height / 2 };
  for (const high of [SMALL * em, SMALLEST * em]) {
    const long = (text.length * WIDE + 0.3) * high;
    if (long <= width && ROOMY * high <= height) return { ...middle, upright: false, high };
    if (long <= height && ROOMY * high <= width) return { ...middle, upright: true, high };
  }
  return null;
}

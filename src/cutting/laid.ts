import { rational, ZERO, type Rational } from '../measure/rational.ts';
import type { Cut, NestedTriangles } from './cut.ts';
import type { ClothSource, LaidCloth, LaidColumn, LaidStrip } from './layout.ts';

/*
 * Where on the cloth everything lies that a layout names: all in whole steps, from the corner of the cloth or of its strip, x across
 * the cloth, y along it. Outputs draw these figures and compute no place of their own.
 */

/** Equal rectangles, so many side by side and so many one below another, without a gap. */
export interface Tiles {
  readonly left: number;
  readonly top: number;
  /** Of one of them. */
  readonly width: number;
  readonly height: number;
  readonly across: number;
  readonly down: number;
}

/** Pieces of one line of the cutting list. */
export interface LaidTiles extends Tiles {
  /** Id of the line. */
  readonly cut: string;
  readonly subcut: Cut['subcut'];
  /**
   * How the diagonal runs as the pieces lie here, where they are cut once: so many from the top left to the bottom right, column by
   * column, and then the others from the bottom left to the top right; null where that changes from one of equal cloths to the next.
   */
  readonly falling: number | null;
  /** How triangles lie head to tail along each of these, on strips cut so: see `from-strips.ts`; else null. */
  readonly nested: { readonly form: NestedTriangles['form']; readonly triangles: number; readonly measure: number } | null;
}

/** Equal parts of a strip, side by side, as it is cut across. */
export interface Sections {
  /** Of one of them. */
  readonly width: number;
  readonly times: number;
  /** What all of them hold together. */
  readonly pieces: readonly LaidTiles[];
}

/** A strip, its tiles counted from its own upper left corner. */
export interface StripTiles {
  /** Its place in cutting order, from 1. */
  readonly number: number;
  /** How far from the upper edge of the cloth the first of these strips begins. */
  readonly top: number;
  readonly height: number;
  /** How many such strips follow one another. */
  readonly times: number;
  /** Where the strip is cut across, from its left end; at the right end only where something is left over there. */
  readonly crosscuts: readonly number[];
  /** From its left end on. */
  readonly sections: readonly Sections[];
  /** All pieces in it. */
  readonly pieces: readonly LaidTiles[];
  readonly left: readonly Tiles[];
}

/** One piece of cloth with everything that is cut from it. */
export interface ClothTiles {
  readonly source: ClothSource;
  /** How long one step is, in the block's unit. */
  readonly step: Rational;
  readonly width: number;
  /** Of cloth bought by the length as much as the strips take, and what is bought beyond. */
  readonly height: number;
  readonly strips: readonly StripTiles[];
  /** What is left of the cloth below the last strip; null where nothing is. */
  readonly end: Tiles | null;
  /** How many pieces of cloth are cut alike. */
  readonly times: number;
}

/** A leftover rectangle and how many there are of it, in the block's unit; across and along the cloth. */
export interface Leftover {
  readonly width: Rational;
  readonly length: Rational;
  readonly count: number;
}

/** How many rectangles of each line that is cut along both diagonals are still to be cut along the falling one. */
type Hands = Map<string, number>;

/**
 * @param cloths the cloths of one fabric, in the order of the layout
 * @param cuts the lines of the cutting list
 * @param beyond of cloth bought by the length, how much more of it is bought than the strips take
 * @returns where on each cloth everything lies; pieces and leftovers cover every cloth exactly
 */
export function clothTiles(cloths: readonly LaidCloth[], cuts: readonly Cut[], beyond = ZERO): readonly ClothTiles[] {
  const lines = new Map(cuts.map((cut) => [cut.id, cut]));
  const hands: Hands = new Map(cuts.flatMap(({ id, diagonals }) => (diagonals ? [[id, diagonals.falling]] : [])));
  return cloths.map((cloth) => tilesOf(cloth, beyond, lines, hands));
}

/** @returns what is left of all cloths together, equal ones counted, the largest first */
export function leftovers(cloths: readonly ClothTiles[]): readonly Leftover[] {
  const found = new Map<string, Leftover>();
  for (const { step, strips, end, times } of cloths) {
    const count = ({ width, height, across, down }: Tiles, each: number): void => {
      const [wide, long] = [rational(width * step.n, step.d), rational(height * step.n, step.d)];
      const key = `${wide.n}/${wide.d} ${long.n}/${long.d}`;
      const more = across * down * each * times;
      found.set(key, { width: wide, length: long, count: (found.get(key)?.count ?? 0) + more });
    };
    if (end) count(end, 1);
    for (const strip of strips) for (const tile of strip.left) count(tile, strip.times);
  }
  // Doubles are near enough to say which of two leftovers is named first.
  const area = ({ width, length }: Leftover): number => (width.n / width.d) * (length.n / length.d);
  return [...found.values()].sort((a, b) => area(b) - area(a));
}

function tilesOf({ source, strips, times }: LaidCloth, beyond: Rational, lines: ReadonlyMap<string, Cut>, hands: Hands): ClothTiles {
  const perUnit = denominatorOf([source.width, source.length ?? beyond, ...sizesIn(strips, lines)]);
  const steps = ({ n, d }: Rational): number => n * (perUnit / d);
  const width = steps(source.width);
  const laid: StripTiles[] = [];
  let top = 0;
  for (const strip of strips) {
    for (let left = strip.times; left > 0; ) {
      const alike = Math.min(left, stripsAlike(strip, times, hands));
      laid.push({ number: laid.length + 1, top, ...stripTiles({ ...strip, times: alike }, width, steps, lines, hands, times) });
      top += steps(strip.length) * alike;
      left -= alike;
    }
  }
  const height = source.length === null ? top + steps(beyond) : steps(source.length);
  const end = height === top ? null : { left: 0, top, width, height: height - top, across: 1, down: 1 };
  return { source, step: rational(1, perUnit), width, height, strips: laid, end, times };
}

/** Every length that strips are cut by. */
function* sizesIn(strips: readonly LaidStrip[], lines: ReadonlyMap<string, Cut>): Generator<Rational> {
  for (const { length, columns } of strips) {
    yield length;
    for (const column of columns) {
      yield column.width;
      for (const { cut, width, length: along } of column.pieces) {
        yield width;
        yield along;
        const nested = lines.get(cut)?.nested;
        if (nested) yield nested.measure;
      }
    }
  }
}

/** The smallest number of equal steps to a unit of length by which every length is whole. */
function denominatorOf(lengths: Iterable<Rational>): number {
  let common = 1;
  for (const { d } of lengths) common *= d / divisorOf(common, d);
  if (!Number.isSafeInteger(common)) throw new RangeError('sizes on one cloth that have no common step');
  return common;
}

function divisorOf(a: number, b: number): number {
  let [x, y] = [a, b];
  while (y !== 0) [x, y] = [y, x % y];
  return x;
}

/** How many of equal strips on equal cloths have all their diagonals the same way; 1 where they change within a strip. */
function stripsAlike({ columns }: LaidStrip, cloths: number, hands: Hands): number {
  const counts = new Map<string, number>();
  for (const { pieces, times } of columns) for (const { cut, count } of pieces) counts.set(cut, (counts.get(cut) ?? 0) + count * times * cloths);
  const alike = [...counts].map(([cut, count]) => {
    const falling = hands.get(cut) ?? 0;
    return falling === 0 ? Infinity : Math.max(1, Math.floor(falling / count));
  });
  return Math.min(...alike);
}

function stripTiles(
  strip: LaidStrip,
  clothWidth: number,
  steps: (length: Rational) => number,
  lines: ReadonlyMap<string, Cut>,
  hands: Hands,
  cloths: number,
): Omit<StripTiles, 'number' | 'top'> {
  const height = steps(strip.length);
  const sections: Sections[] = [];
  const left: Tiles[] = [];
  const crosscuts: number[] = [];
  let x = 0;
  for (const column of strip.columns) {
    const width = steps(column.width);
    for (let i = 1; i <= column.times; i++) if (x + width * i < clothWidth) crosscuts.push(x + width * i);
    const pieces: LaidTiles[] = [];
    let y = 0;
    for (const { cut, width: across, length, count } of column.pieces) {
      const size = { width: steps(across), height: steps(length) };
      // Pieces as wide as their column lie side by side from one column to the next; narrower ones are trimmed one by one.
      const spans = size.width === width ? [{ at: x, across: column.times }] : columnsFrom(x, width, column);
      for (const span of spans) {
        const tile: Tiles = { left: span.at, top: y, ...size, across: span.across, down: count };
        const line = lines.get(cut);
        const nested = line?.nested ? { ...line.nested, measure: steps(line.nested.measure) } : null;
        pieces.push({ ...tile, cut, nested, ...diagonals(line, tile, strip.times, hands, cloths) });
        const trimmed = width - size.width;
        if (trimmed > 0) left.push({ left: span.at + size.width, top: y, width: trimmed, height: size.height * count, across: 1, down: 1 });
      }
      y += size.height * count;
    }
    if (y < height) left.push({ left: x, top: y, width, height: height - y, across: column.times, down: 1 });
    sections.push({ width, times: column.times, pieces });
    x += width * column.times;
  }
  if (x < clothWidth) left.push({ left: x, top: 0, width: clothWidth - x, height, across: 1, down: 1 });
  return { height, times: strip.times, crosscuts, sections, pieces: sections.flatMap(({ pieces }) => pieces), left };
}

const columnsFrom = (x: number, width: number, { times }: LaidColumn): readonly { readonly at: number; readonly across: number }[] =>
  Array.from({ length: times }, (_, i) => ({ at: x + i * width, across: 1 }));

function diagonals(cut: Cut | undefined, tile: Tiles, strips: number, hands: Hands, cloths: number): Pick<LaidTiles, 'subcut' | 'falling'> {
  const subcut = cut?.subcut ?? 'none';
  const here = tile.across * tile.down;
  const wanted = cut && hands.get(cut.id);
  if (wanted === undefined) return { subcut, falling: here };
  const all = here * strips * cloths;
  const falling = Math.min(wanted, all);
  hands.set(cut!.id, wanted - falling);
  // A rectangle that lies on its long side is turned by a quarter against the list, where it stands: what falls there rises here.
  const lying = tile.width > tile.height;
  if (falling === all) return { subcut, falling: lying ? 0 : here };
  if (falling === 0) return { subcut, falling: lying ? here : 0 };
  return { subcut, falling: cloths > 1 ? null : lying ? here - falling : falling };
}

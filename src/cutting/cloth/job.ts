import { commonMeasure, multiply, rational, timesInto, type Rational } from '../../measure/rational.ts';
import type { ClothSource } from '../layout.ts';
import type { ClothOrder } from './order.ts';

/*
 * An order in whole marks: every piece measures whole marks, and of cloth only whole marks can be used, since cuts lie at sums of
 * pieces. What is decided about a layout is decided in these numbers.
 */

/** Equal pieces, from whichever lines of the list. */
export interface Kind {
  readonly width: number;
  readonly height: number;
  readonly turn: boolean;
  readonly count: number;
  /** Its place in the order. */
  readonly listed: number;
  readonly lines: readonly { readonly cut: string; readonly count: number }[];
}

/** A kind as it lies: its sides across and along the cloth. */
export interface Lie {
  readonly kind: number;
  readonly width: number;
  readonly height: number;
}

/** Cloth to cut from; length and count are Infinity where there is no end to it. */
export interface Sheet {
  readonly source: ClothSource;
  readonly width: number;
  readonly length: number;
  readonly count: number;
}

export interface Job {
  /** Length of one mark in the block's unit. */
  readonly mark: Rational;
  readonly kinds: readonly Kind[];
  /** What the maker has, then what is bought. */
  readonly sheets: readonly Sheet[];
  /** What no cloth there is can hold. */
  readonly tooLarge: readonly { readonly cut: string; readonly count: number }[];
  /** No strip is longer: as far as a ruler reaches, or the longest side of a piece. */
  readonly reach: number;
}

/** Equal pieces one below another. */
export interface Run extends Lie {
  readonly count: number;
}

export interface Column {
  readonly width: number;
  readonly runs: readonly Run[];
  readonly times: number;
}

export interface Strip {
  readonly height: number;
  readonly columns: readonly Column[];
  readonly times: number;
}

/** One piece of cloth, cut up: `sheet` is its place in the job. */
export interface CutSheet {
  readonly sheet: number;
  readonly strips: readonly Strip[];
  readonly times: number;
}

/** @returns marks along the cloth that strips take together */
export const heightOf = (strips: readonly Strip[]): number => strips.reduce((sum, { height, times }) => sum + height * times, 0);

/** @returns how many pieces of each kind are in strips, by kind; those that are in none are not in it */
export function piecesIn(strips: readonly Strip[]): ReadonlyMap<number, number> {
  const counts = new Map<number, number>();
  for (const { columns, times } of strips) {
    for (const column of columns) {
      for (const { kind, count } of column.runs) counts.set(kind, (counts.get(kind) ?? 0) + count * column.times * times);
    }
  }
  return counts;
}

/** @returns the two ways a kind can lie, as given first, or the one it must */
export const liesOf = ({ width, height, turn }: Kind, kind: number): readonly Lie[] =>
  turn && width !== height
    ? [
        { kind, width, height },
        { kind, width: height, height: width },
      ]
    : [{ kind, width, height }];

/** @returns whether a piece lies within a sheet so */
export const fitsIn = (lie: Lie, sheet: Sheet): boolean => lie.width <= sheet.width && lie.height <= sheet.length;

/** @returns an order in whole marks; kinds of the same size are one, the largest first */
export function jobOf({ wanted, own, bought, reach }: ClothOrder): Job {
  const asked = wanted.filter(({ count }) => count > 0);
  const mark = asked.length === 0 ? rational(1) : asked.flatMap(({ width, height }) => [width, height]).reduce(commonMeasure);
  const sheet = (source: ClothSource): Sheet => ({
    source,
    width: timesInto(source.width, mark),
    length: source.length === null ? Infinity : timesInto(source.length, mark),
    count: source.count ?? Infinity,
  });
  const sheets = [...own.map(sheet), sheet(bought)];
  const gathered = new Map<string, Kind>();
  const tooLarge: { cut: string; count: number }[] = [];
  for (const [listed, { cut, width, height, count, turn }] of asked.entries()) {
    const [across, along] = [timesInto(width, mark), timesInto(height, mark)];
    const free = turn || across === along;
    const kind: Kind = { width: across, height: along, turn: free, count, listed, lines: [{ cut, count }] };
    if (!liesOf(kind, 0).some((lie) => sheets.some((one) => fitsIn(lie, one)))) {
      tooLarge.push({ cut, count });
      continue;
    }
    const key = `${across} ${along} ${free}`;
    const same = gathered.get(key);
    gathered.set(key, same === undefined ? kind : { ...same, count: same.count + count, lines: [...same.lines, ...kind.lines] });
  }
  const kinds = [...gathered.values()].sort((a, b) => b.height - a.height || b.width - a.width || Number(a.turn) - Number(b.turn));
  const longest = Math.max(0, ...kinds.flatMap((kind, at) => liesOf(kind, at).map(({ height }) => height)));
  return { mark, kinds, sheets, tooLarge, reach: Math.max(timesInto(reach, mark), longest) };
}

/** @returns marks as a length */
export const lengthOf = (marks: number, { mark }: Job): Rational => multiply(mark, rational(marks));

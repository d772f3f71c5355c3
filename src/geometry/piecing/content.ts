import { clothsIn, type Field } from './field.ts';

/**
 * Which rectangles of cells have the same seams drawn in them: those with equal numbers do. Unequal
 * ones get unequal numbers but for a chance in 2^50; a wrong guess would only make a plan less natural, never wrong.
 */
export type ContentOf = (i0: number, j0: number, i1: number, j1: number) => number;

/** 32-bit mixing; equal input, equal output. */
function mixed(seed: number, values: readonly number[]): number {
  let h = seed;
  for (const v of values) {
    h = Math.imul(h ^ v, 0x9e3779b1);
    h = Math.imul(h ^ (h >>> 15), 0x85ebca6b);
  }
  return (h ^ (h >>> 13)) | 0;
}

/** A slanted part in its cell: its ends relative to the cell's top-left corner as [x, y, w]. */
interface Mark {
  readonly from: readonly [number, number, number];
  readonly to: readonly [number, number, number];
}

/** The number of one cell's picture after `turn` quarter turns clockwise. */
function cellNumber(marks: readonly Mark[], cloths: readonly number[], width: number, height: number, turn: number, seed: number): number {
  let sum = mixed(seed, [...cloths, ...(turn % 2 === 0 ? [width, height] : [height, width])]);
  for (const { from, to } of marks) {
    const [p, q] = [spin(from, width, height, turn), spin(to, width, height, turn)];
    // Either way round is the same mark: both directions are added.
    sum = (sum + mixed(seed, [...p, ...q]) + mixed(seed, [...q, ...p])) | 0;
  }
  return sum;
}

function spin([x, y, w]: readonly [number, number, number], width: number, height: number, turn: number): readonly [number, number, number] {
  if (turn === 0) return [x, y, w];
  if (turn === 1) return [height * w - y, x, w];
  if (turn === 2) return [width * w - x, height * w - y, w];
  return [y, width * w - x, w];
}

/** The slanted marks of every cell. */
function marksOf(field: Field): readonly (readonly Mark[])[] {
  const m = field.xs.length - 1;
  return field.slants.map((slants, cell) => {
    const [x0, y0] = [field.xs[cell % m]!, field.ys[(cell - (cell % m)) / m]!];
    return slants.map(({ from, to }) => ({
      from: [from.x - x0 * from.w, from.y - y0 * from.w, from.w],
      to: [to.x - x0 * to.w, to.y - y0 * to.w, to.w],
    }));
  });
}

/** The fabrics that show in every cell, as numbers in order. */
function clothsOf(field: Field): readonly (readonly number[])[] {
  const numbers = new Map<string, number>();
  const [m, n] = [field.xs.length - 1, field.ys.length - 1];
  return Array.from({ length: m * n }, (_, cell) => {
    const [i, j] = [cell % m, (cell - (cell % m)) / m];
    const shown = clothsIn(field, i, j).map((fabric) => {
      if (!numbers.has(fabric)) numbers.set(fabric, numbers.size + 1);
      return numbers.get(fabric)!;
    });
    return [...new Set(shown)].sort((a, b) => a - b);
  });
}

/** Running sums of position-weighted numbers, for one turn of the block. */
class Weighted {
  private readonly table: Int32Array;
  private readonly stride: number;
  constructor(columns: number, rows: number, term: (i: number, j: number) => number) {
    this.stride = columns + 1;
    this.table = new Int32Array((columns + 1) * (rows + 1));
    const t = this.table;
    for (let j = 0; j < rows; j++) {
      for (let i = 0; i < columns; i++) {
        const at = (j + 1) * this.stride + i + 1;
        t[at] = (term(i, j) + t[at - 1]! + t[at - this.stride]! - t[at - this.stride - 1]!) | 0;
      }
    }
  }
  over(i0: number, j0: number, i1: number, j1: number): number {
    if (i1 <= i0 || j1 <= j0) return 0;
    const [t, s] = [this.table, this.stride];
    return (t[j1 * s + i1]! - t[j0 * s + i1]! - t[j1 * s + i0]! + t[j0 * s + i0]!) | 0;
  }
}

/**
 * @param cloth whether the same seams in other cloth count as another picture
 * @returns numberings of a field's rectangles by what is drawn in them: up to quarter turns, and the same way up
 */
export function contentOf(field: Field, cloth: boolean): { readonly content: ContentOf; readonly upright: ContentOf } {
  const { xs, ys } = field;
  const [m, n] = [xs.length - 1, ys.length - 1];
  const [width, height] = [xs[m]!, ys[n]!];
  const marks = marksOf(field);
  const cloths = cloth ? clothsOf(field) : marks.map(() => []);
  const far = Math.max(width, height);
  /** Where the top-left corner of a box lies after quarter turns clockwise of the block. */
  const corner = (x0: number, y0: number, x1: number, y1: number, turn: number): readonly [number, number] =>
    turn === 0 ? [x0, y0] : turn === 1 ? [height - y1, x0] : turn === 2 ? [width - x1, height - y1] : [y0, width - x1];
  const halves = [
    { p: 0x01000193, q: 0x27d4eb2f, seed: 17 },
    { p: 0x165667b1, q: 0x3c6ef35f, seed: 91 },
  ].map(({ p, q, seed }) => {
    const [px, qy] = [powers(p, far), powers(q, far)];
    const tables = [0, 1, 2, 3].map((turn) => {
      const at = (own: number, x0: number, y0: number, x1: number, y1: number): number => {
        const [u, v] = corner(x0, y0, x1, y1, turn);
        return Math.imul(own, Math.imul(px[u]!, qy[v]!));
      };
      const cells = new Weighted(m, n, (i, j) => {
        const [x0, y0, x1, y1] = [xs[i]!, ys[j]!, xs[i + 1]!, ys[j + 1]!];
        return at(cellNumber(marks[i + j * m]!, cloths[i + j * m]!, x1 - x0, y1 - y0, turn, seed), x0, y0, x1, y1);
      });
      // A drawn edge is a box without width: upright ones become level by an odd turn.
      const edge = (length: number, upright: boolean): number => mixed(seed + 5, [length, upright === (turn % 2 === 0) ? 1 : 2]);
      const upright = new Weighted(m + 1, n, (i, j) =>
        field.uprightDrawn(i, j, j + 1) ? at(edge(ys[j + 1]! - ys[j]!, true), xs[i]!, ys[j]!, xs[i]!, ys[j + 1]!) : 0,
      );
      const level = new Weighted(m, n + 1, (i, j) =>
        field.levelDrawn(j, i, i + 1) ? at(edge(xs[i + 1]! - xs[i]!, false), xs[i]!, ys[j]!, xs[i + 1]!, ys[j]!) : 0,
      );
      return { cells, upright, level };
    });
    return (i0: number, j0: number, i1: number, j1: number, turn: number): number => {
      const { cells, upright, level } = tables[turn]!;
      const sum = (cells.over(i0, j0, i1, j1) + upright.over(i0 + 1, j0, i1, j1) + level.over(i0, j0 + 1, i1, j1)) | 0;
      const [u, v] = corner(xs[i0]!, ys[j0]!, xs[i1]!, ys[j1]!, turn);
      return Math.imul(sum, Math.imul(px[far - u]!, qy[far - v]!));
    };
  });
  const number = (i0: number, j0: number, i1: number, j1: number, turn: number): number =>
    (halves[0]!(i0, j0, i1, j1, turn) >>> 0) * 0x200000 + (halves[1]!(i0, j0, i1, j1, turn) & 0x1fffff);
  return {
    content: (i0, j0, i1, j1) => Math.min(...[0, 1, 2, 3].map((turn) => number(i0, j0, i1, j1, turn))),
    upright: (i0, j0, i1, j1) => number(i0, j0, i1, j1, 0),
  };
}

function powers(base: number, most: number): Int32Array {
  const table = new Int32Array(most + 1);
  table[0] = 1;
  for (let i = 1; i <= most; i++) table[i] = Math.imul(table[i - 1]!, base);
  return table;
}

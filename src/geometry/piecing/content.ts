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

/** One of two independent numberings, from which a number of twice the width is made. */
const HALVES = [
  { across: 0x01000193, down: 0x27d4eb2f, seed: 17 },
  { across: 0x165667b1, down: 0x3c6ef35f, seed: 91 },
] as const;

/** The numbers of a field's rectangles as they look after quarter turns clockwise of the block. */
class Turned {
  private readonly cells: Weighted;
  private readonly upright: Weighted;
  private readonly level: Weighted;
  /** What moves a rectangle's sum to where it would lie in the corner of the block, by the edge that lies nearest to it. */
  private readonly columnBack: Int32Array;
  private readonly rowBack: Int32Array;
  private readonly fromRight: boolean;
  private readonly fromBottom: boolean;

  constructor(field: Field, marks: readonly (readonly Mark[])[], cloths: readonly (readonly number[])[], turn: number, half: (typeof HALVES)[number]) {
    const { xs, ys } = field;
    const { seed } = half;
    const [m, n] = [xs.length - 1, ys.length - 1];
    const [width, height] = [xs[m]!, ys[n]!];
    const far = Math.max(width, height);
    this.fromRight = turn >= 2;
    this.fromBottom = turn === 1 || turn === 2;
    const columns = xs.map((x) => (this.fromRight ? width - x : x));
    const rows = ys.map((y) => (this.fromBottom ? height - y : y));
    const [column, row] = turn % 2 === 0 ? [half.across, half.down] : [half.down, half.across];
    const [columnPlace, rowPlace] = [columns.map((x) => power(column, x)), rows.map((y) => power(row, y))];
    this.columnBack = Int32Array.from(columns, (x) => power(column, far - x));
    this.rowBack = Int32Array.from(rows, (y) => power(row, far - y));
    const at = (own: number, i0: number, j0: number, i1: number, j1: number): number =>
      Math.imul(own, Math.imul(columnPlace[this.fromRight ? i1 : i0]!, rowPlace[this.fromBottom ? j1 : j0]!));
    this.cells = new Weighted(m, n, (i, j) => {
      const number = cellNumber(marks[i + j * m]!, cloths[i + j * m]!, xs[i + 1]! - xs[i]!, ys[j + 1]! - ys[j]!, turn, seed);
      return at(number, i, j, i + 1, j + 1);
    });
    // A drawn edge is a box without width: upright ones become level by an odd turn.
    const edge = (length: number, upright: boolean): number => mixed(seed + 5, [length, upright === (turn % 2 === 0) ? 1 : 2]);
    this.upright = new Weighted(m + 1, n, (i, j) =>
      field.uprightDrawn(i, j, j + 1) ? at(edge(ys[j + 1]! - ys[j]!, true), i, j, i, j + 1) : 0,
    );
    this.level = new Weighted(m, n + 1, (i, j) => (field.levelDrawn(j, i, i + 1) ? at(edge(xs[i + 1]! - xs[i]!, false), i, j, i + 1, j) : 0));
  }

  /** @returns equal numbers for rectangles of cells that look alike */
  number(i0: number, j0: number, i1: number, j1: number): number {
    const sum = this.cells.over(i0, j0, i1, j1) + this.upright.over(i0 + 1, j0, i1, j1) + this.level.over(i0, j0 + 1, i1, j1);
    return Math.imul(sum | 0, Math.imul(this.columnBack[this.fromRight ? i1 : i0]!, this.rowBack[this.fromBottom ? j1 : j0]!));
  }
}

/**
 * @param cloth whether the same seams in other cloth count as another picture
 * @returns numberings of a field's rectangles by what is drawn in them: up to quarter turns, and the same way up
 */
export function contentOf(field: Field, cloth: boolean): { readonly content: ContentOf; readonly upright: ContentOf } {
  const marks = marksOf(field);
  const cloths = cloth ? clothsOf(field) : marks.map(() => []);
  const turns = [0, 1, 2, 3].map((turn) => HALVES.map((half) => new Turned(field, marks, cloths, turn, half)));
  const number = (turn: number, i0: number, j0: number, i1: number, j1: number): number => {
    const [first, second] = turns[turn]!;
    return (first!.number(i0, j0, i1, j1) >>> 0) * 0x200000 + (second!.number(i0, j0, i1, j1) & 0x1fffff);
  };
  return {
    content: (i0, j0, i1, j1) =>
      Math.min(number(0, i0, j0, i1, j1), number(1, i0, j0, i1, j1), number(2, i0, j0, i1, j1), number(3, i0, j0, i1, j1)),
    upright: (i0, j0, i1, j1) => number(0, i0, j0, i1, j1),
  };
}

/** @returns a whole power of a number in 32 bits */
function power(base: number, exponent: number): number {
  let [result, square] = [1, base];
  for (let rest = exponent; rest > 0; rest = (rest - (rest % 2)) / 2) {
    if (rest % 2 === 1) result = Math.imul(result, square);
    square = Math.imul(square, square);
  }
  return result;
}

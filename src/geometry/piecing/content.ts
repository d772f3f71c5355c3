import { clothsIn, type Field } from './field.ts';

/**
 * Which rectangles of cells have the same seams drawn in them: those with equal numbers do. Unequal
 * ones get unequal numbers but for a chance in 2^50; a wrong guess would only make a plan less natural, never wrong.
 */
export type ContentOf = (i0: number, j0: number, i1: number, j1: number) => number;

/** Numberings of a field's rectangles by what is drawn in them: up to quarter turns, and the same way up. */
export interface Looks {
  readonly content: ContentOf;
  readonly upright: ContentOf;
}

/** One step of 32-bit mixing; equal input, equal output. */
function mix(h: number, v: number): number {
  const k = Math.imul(h ^ v, 0x9e3779b1);
  return Math.imul(k ^ (k >>> 15), 0x85ebca6b);
}

/** Two independent numberings, from which a number of twice the width is made: by seed, and by what a step across and down counts. */
const HALVES = [
  { seed: 17, across: 0x01000193, down: 0x27d4eb2f },
  { seed: 91, across: 0x165667b1, down: 0x3c6ef35f },
] as const;

/** How a slanted stretch lies in its cell after quarter turns clockwise of a cell of this size; the same whichever way round it is given. */
function markNumber(seed: number, x: number, y: number, w: number, u: number, v: number, q: number, width: number, height: number, turn: number): number {
  const from = endNumber(seed, x, y, w, width, height, turn);
  const to = endNumber(seed, u, v, q, width, height, turn);
  return (mix(from, to) + mix(to, from)) | 0;
}

function endNumber(seed: number, x: number, y: number, w: number, width: number, height: number, turn: number): number {
  const across = turn === 0 ? x : turn === 1 ? height * w - y : turn === 2 ? width * w - x : y;
  const down = turn === 0 ? y : turn === 1 ? x : turn === 2 ? height * w - y : width * w - x;
  return mix(mix(mix(seed, across), down), w);
}

/** Each half of each of the four views after quarter turns clockwise. */
const VIEWS = 8;

/** By cell and view: the sum of what its slanted stretches look like, and the size of the cell. */
function marksIn({ xs, ys, slants }: Field): readonly number[] {
  const m = xs.length - 1;
  const result: number[] = [];
  slants.forEach((inside, cell) => {
    const i = cell % m;
    const j = (cell - i) / m;
    const [x0, y0] = [xs[i]!, ys[j]!];
    const [width, height] = [xs[i + 1]! - x0, ys[j + 1]! - y0];
    for (let view = 0; view < VIEWS; view++) {
      const turn = view >> 1;
      const { seed } = HALVES[view & 1]!;
      let sum = turn % 2 === 0 ? mix(mix(seed, width), height) : mix(mix(seed, height), width);
      for (const { from, to } of inside) {
        const number = markNumber(seed, from.x - x0 * from.w, from.y - y0 * from.w, from.w, to.x - x0 * to.w, to.y - y0 * to.w, to.w, width, height, turn);
        sum = (sum + number) | 0;
      }
      result.push(sum);
    }
  });
  return result;
}

/** By cell: a number for the fabrics that show in it. */
function clothNumbers(field: Field): Int32Array {
  const numbers = new Map<string, number>();
  const [m, n] = [field.xs.length - 1, field.ys.length - 1];
  const result = new Int32Array(m * n);
  for (let cell = 0; cell < result.length; cell++) {
    const shown = clothsIn(field, cell % m, (cell - (cell % m)) / m).map((fabric) => {
      if (!numbers.has(fabric)) numbers.set(fabric, numbers.size + 1);
      return numbers.get(fabric)!;
    });
    result[cell] = shown.every((number) => number === shown[0]) ? shown[0]! : [...new Set(shown)].sort((a, b) => a - b).reduce(mix, 5);
  }
  return result;
}

/** Where things lie after quarter turns clockwise, in one of the two numberings. */
interface View {
  readonly turn: number;
  /** What a thing counts in the column, or the row, of cells that its edge begins. */
  readonly column: readonly number[];
  readonly row: readonly number[];
  /** What moves a rectangle's sum to where it would lie in the corner of the block. */
  readonly columnBack: readonly number[];
  readonly rowBack: readonly number[];
  /** 1 where the right edge, or the lower one, is the one that comes to lie first. */
  readonly fromRight: number;
  readonly fromBottom: number;
}

function viewsOf(m: number, n: number): readonly View[] {
  const far = Math.max(m, n);
  const steps = HALVES.map(({ across, down }) => [powers(across, far), powers(down, far)] as const);
  return Array.from({ length: VIEWS }, (_, view) => {
    const turn = view >> 1;
    const [across, down] = steps[view & 1]!;
    const [column, row] = turn % 2 === 0 ? [across, down] : [down, across];
    const [fromRight, fromBottom] = [turn >= 2 ? 1 : 0, turn === 1 || turn === 2 ? 1 : 0];
    return {
      turn,
      column: fromRight ? column.slice(0, m + 1).reverse() : column,
      row: fromBottom ? row.slice(0, n + 1).reverse() : row,
      columnBack: fromRight ? column.slice(far - m) : column.slice().reverse(),
      rowBack: fromBottom ? row.slice(far - n) : row.slice().reverse(),
      fromRight,
      fromBottom,
    };
  });
}

/** @returns running sums over a field's cells, view by view, of numbers weighed by where they lie */
function summed(m: number, n: number, views: readonly View[], number: (i: number, j: number, view: number, at: View) => number): Int32Array {
  const s = m + 2;
  const plane = s * (n + 2);
  const sums = new Int32Array(VIEWS * plane);
  for (let view = 0; view < VIEWS; view++) {
    for (let j = 0; j <= n; j++) {
      for (let i = 0; i <= m; i++) {
        const here = view * plane + (j + 1) * s + i + 1;
        sums[here] = number(i, j, view, views[view]!) + sums[here - 1]! + sums[here - s]! - sums[here - s - 1]!;
      }
    }
  }
  return sums;
}

/** @returns what gives the looks of a field's rectangles; asked whether the same seams in other cloth are another picture */
export function looksOf(field: Field): (cloth: boolean) => Looks {
  const { xs, ys } = field;
  const [m, n] = [xs.length - 1, ys.length - 1];
  const s = m + 2;
  const plane = s * (n + 2);
  const views = viewsOf(m, n);
  const marks = marksIn(field);
  // A drawn edge is a box without width: upright ones become level by an odd turn.
  const edge = (length: number, view: number, turned: number): number => mix(mix(HALVES[view & 1]!.seed + 5, length), turned);
  const upright = summed(m, n, views, (i, j, view, { turn, column, row, fromBottom }) =>
    j < n && field.uprightDrawn(i, j, j + 1) ? Math.imul(edge(ys[j + 1]! - ys[j]!, view, turn % 2), Math.imul(column[i]!, row[j + fromBottom]!)) : 0,
  );
  const level = summed(m, n, views, (i, j, view, { turn, column, row, fromRight }) =>
    i < m && field.levelDrawn(j, i, i + 1) ? Math.imul(edge(xs[i + 1]! - xs[i]!, view, 1 - (turn % 2)), Math.imul(column[i + fromRight]!, row[j]!)) : 0,
  );
  return (cloth) => {
    const cloths = cloth ? clothNumbers(field) : null;
    const cells = summed(m, n, views, (i, j, view, { column, row, fromRight, fromBottom }) => {
      if (i === m || j === n) return 0;
      const own = marks[(i + j * m) * VIEWS + view]!;
      return Math.imul(cloths === null ? own : mix(own, cloths[i + j * m]!), Math.imul(column[i + fromRight]!, row[j + fromBottom]!));
    });
    const half = (view: number, i0: number, j0: number, i1: number, j1: number): number => {
      const { columnBack, rowBack, fromRight, fromBottom } = views[view]!;
      const [top, bottom] = [view * plane + j0 * s, view * plane + j1 * s];
      const below = top + s;
      const sum =
        cells[bottom + i1]! - cells[top + i1]! - cells[bottom + i0]! + cells[top + i0]! +
        (upright[bottom + i1]! - upright[top + i1]! - upright[bottom + i0 + 1]! + upright[top + i0 + 1]!) +
        (level[bottom + i1]! - level[below + i1]! - level[bottom + i0]! + level[below + i0]!);
      return Math.imul(sum | 0, Math.imul(columnBack[fromRight ? i1 : i0]!, rowBack[fromBottom ? j1 : j0]!));
    };
    const upper = (turn: number, i0: number, j0: number, i1: number, j1: number): number => half(2 * turn, i0, j0, i1, j1) >>> 0;
    const lower = (turn: number, i0: number, j0: number, i1: number, j1: number): number => half(2 * turn + 1, i0, j0, i1, j1) & 0x1fffff;
    const content: ContentOf = (i0, j0, i1, j1) => {
      const [first, second, third, fourth] = [upper(0, i0, j0, i1, j1), upper(1, i0, j0, i1, j1), upper(2, i0, j0, i1, j1), upper(3, i0, j0, i1, j1)];
      const least = Math.min(first, second, third, fourth);
      // Lower halves count only between equal upper ones.
      const rest = Math.min(
        first === least ? lower(0, i0, j0, i1, j1) : Infinity,
        second === least ? lower(1, i0, j0, i1, j1) : Infinity,
        third === least ? lower(2, i0, j0, i1, j1) : Infinity,
        fourth === least ? lower(3, i0, j0, i1, j1) : Infinity,
      );
      return least * 0x200000 + rest;
    };
    return { content, upright: (i0, j0, i1, j1) => upper(0, i0, j0, i1, j1) * 0x200000 + lower(0, i0, j0, i1, j1) };
  };
}

function powers(base: number, most: number): number[] {
  const table = [1];
  for (let i = 1; i <= most; i++) table.push(Math.imul(table[i - 1]!, base));
  return table;
}

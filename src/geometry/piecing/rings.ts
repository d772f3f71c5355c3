import type { Cells } from './clusters.ts';
import type { Field } from './field.ts';
import type { Leaves } from './leaves.ts';
import { rectCount, rectId } from './rect-id.ts';

/** Four arms that turn round a centre; each arm lies along the centre and the arm before it (the first along the last). */
export interface Ring {
  readonly centre: Cells;
  readonly arms: readonly [Cells, Cells, Cells, Cells];
}

/** Rings by the rectId of the rectangle they fill. */
export type RingsAt = ReadonlyMap<number, readonly Ring[]>;

export const NO_RINGS: RingsAt = new Map();

/** Lengths, in cells, of the drawn edges that run on without a break from each corner of the cells, in four directions. */
interface Runs {
  right(i: number, j: number): number;
  left(i: number, j: number): number;
  down(i: number, j: number): number;
  up(i: number, j: number): number;
}

function runsOf(field: Field): Runs {
  const [m, n] = [field.xs.length - 1, field.ys.length - 1];
  const table = (): Int32Array => new Int32Array((m + 1) * (n + 1));
  const [right, left, down, up] = [table(), table(), table(), table()];
  const at = (i: number, j: number): number => i + j * (m + 1);
  for (let j = 0; j <= n; j++) {
    for (let i = m - 1; i >= 0; i--) right[at(i, j)] = field.levelDrawn(j, i, i + 1) ? right[at(i + 1, j)]! + 1 : 0;
    for (let i = 1; i <= m; i++) left[at(i, j)] = field.levelDrawn(j, i - 1, i) ? left[at(i - 1, j)]! + 1 : 0;
  }
  for (let i = 0; i <= m; i++) {
    for (let j = n - 1; j >= 0; j--) down[at(i, j)] = field.uprightDrawn(i, j, j + 1) ? down[at(i, j + 1)]! + 1 : 0;
    for (let j = 1; j <= n; j++) up[at(i, j)] = field.uprightDrawn(i, j - 1, j) ? up[at(i, j - 1)]! + 1 : 0;
  }
  return {
    right: (i, j) => right[at(i, j)]!,
    left: (i, j) => left[at(i, j)]!,
    down: (i, j) => down[at(i, j)]!,
    up: (i, j) => up[at(i, j)]!,
  };
}

/**
 * @returns a function that lists the partial-seam rings filling a rectangle of cells: all four seams are drawn, and no
 * seam is drawn right across (a through-seam is always easier)
 */
function ringFinder(field: Field): (cells: Cells) => readonly Ring[] {
  const runs = runsOf(field);
  return ({ i0, j0, i1, j1 }) => {
    const rings: Ring[] = [];
    for (let c = j0 + 1; c < j1; c++) {
      if (runs.right(i0, c) >= i1 - i0) return [];
    }
    for (let b = i0 + 1; b < i1; b++) {
      if (runs.down(b, j0) >= j1 - j0) return [];
    }
    for (let c = j0 + 1; c < j1; c++) {
      // Clockwise: the top arm's seam starts at the left edge.
      for (let b = i0 + 2; b <= i0 + runs.right(i0, c) && b < i1; b++) {
        for (let d = c + 1; d <= j0 + runs.down(b, j0) && d < j1; d++) {
          for (let a = Math.max(i0 + 1, i1 - runs.left(i1, d)); a < b; a++) {
            if (runs.up(a, j1) < j1 - c) continue;
            rings.push({
              centre: { i0: a, j0: c, i1: b, j1: d },
              arms: [
                { i0, j0, i1: b, j1: c },
                { i0: b, j0, i1, j1: d },
                { i0: a, j0: d, i1, j1 },
                { i0, j0: c, i1: a, j1 },
              ],
            });
          }
        }
      }
      // Counter-clockwise: the top arm's seam starts at the right edge.
      for (let a = i1 - 2; a >= i1 - runs.left(i1, c) && a > i0; a--) {
        for (let d = c + 1; d <= j0 + runs.down(a, j0) && d < j1; d++) {
          for (let b = Math.min(i1 - 1, i0 + runs.right(i0, d)); b > a; b--) {
            if (runs.up(b, j1) < j1 - c) continue;
            rings.push({
              centre: { i0: a, j0: c, i1: b, j1: d },
              arms: [
                { i0: a, j0, i1, j1: c },
                { i0, j0, i1: a, j1: d },
                { i0, j0: d, i1: b, j1 },
                { i0: b, j0: c, i1, j1 },
              ],
            });
          }
        }
      }
    }
    return rings;
  };
}

/** Rings are looked for in rectangles of at most this many cells a side. */
const RING_CELLS = 16;

/**
 * @returns the rings that take fewer pieces of cloth than any way with through-seams: only there is a seam
 * sewn in two goes worth its trouble
 */
export function ringsWorthwhile(leaves: Leaves): RingsAt {
  const { field } = leaves;
  const [m, n] = [field.xs.length - 1, field.ys.length - 1];
  const find = ringFinder(field);
  const found = new Map<number, readonly Ring[]>();
  const most = RING_CELLS;
  for (let j0 = 0; j0 < n; j0++) {
    for (let i0 = 0; i0 < m; i0++) {
      for (let j1 = j0 + 3; j1 <= Math.min(n, j0 + most); j1++) {
        for (let i1 = i0 + 3; i1 <= Math.min(m, i0 + most); i1++) {
          const rings = find({ i0, j0, i1, j1 });
          if (rings.length > 0) found.set(rectId(n, i0, j0, i1, j1), rings);
        }
      }
    }
  }
  if (found.size === 0) return found;
  leaves.settle(leaves.classes.keys());
  const pieces = fewestByThroughSeams(leaves);
  const worthwhile = new Map<number, readonly Ring[]>();
  for (const [at, rings] of found) {
    const fewer = rings.filter(({ centre, arms }) => {
      const needed = [centre, ...arms].reduce((sum, c) => sum + pieces[rectId(n, c.i0, c.j0, c.i1, c.j1)]!, 0);
      return needed < pieces[at]!;
    });
    if (fewer.length > 0) worthwhile.set(at, fewer);
  }
  return worthwhile;
}

/** @returns by rectId, the fewest pieces of cloth that rows, columns and leaves can do with */
function fewestByThroughSeams({ field, classes, classOf }: Leaves): Float64Array {
  const [m, n] = [field.xs.length - 1, field.ys.length - 1];
  const pieces = new Float64Array(rectCount(field)).fill(Infinity);
  for (let w = 1; w <= m; w++) {
    for (let i0 = 0; i0 + w <= m; i0++) {
      for (let h = 1; h <= n; h++) {
        for (let j0 = 0; j0 + h <= n; j0++) {
          const [i1, j1] = [i0 + w, j0 + h];
          const at = rectId(n, i0, j0, i1, j1);
          let least = classOf[at]! >= 0 ? classes[classOf[at]!]!.pieces : Infinity;
          for (let i = i0 + 1; i < i1; i++) {
            if (!field.uprightLocked(i, j0, j1)) least = Math.min(least, pieces[rectId(n, i0, j0, i, j1)]! + pieces[rectId(n, i, j0, i1, j1)]!);
          }
          for (let j = j0 + 1; j < j1; j++) {
            if (!field.levelLocked(j, i0, i1)) least = Math.min(least, pieces[rectId(n, i0, j0, i1, j)]! + pieces[rectId(n, i0, j, i1, j1)]!);
          }
          pieces[at] = least;
        }
      }
    }
  }
  return pieces;
}

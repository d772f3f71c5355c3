import type { Field } from './field.ts';
import type { Cells } from './clusters.ts';

/** Four arms that turn round a centre; each arm lies along the centre and the arm before it (the first along the last). */
export interface Ring {
  readonly centre: Cells;
  readonly arms: readonly [Cells, Cells, Cells, Cells];
}

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
export function ringFinder(field: Field): (cells: Cells) => readonly Ring[] {
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

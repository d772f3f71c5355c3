import decompose from 'rectangle-decomposition';
import type { Drawing } from '../../src/geometry/patchwork/drawing.ts';
import { exactly } from './exact.ts';
import { topPatch } from './sewn.ts';

/*
 * Drawings of whole cells, and the outside opinion on them: the fewest rectangles that each cloth area can be divided
 * into, whether seams can run so or not (Lipski, Lodi, Luccio, Mugnai and Pagli, On two-dimensional data organization II,
 * Fundamenta Informaticae 2, 1979; Ohtsuki 1982), as the library rectangle-decomposition works it out.
 */

type Cell = readonly [number, number];
type Has = (x: number, y: number) => boolean;

/** @returns the cells of each cloth area of a drawing whose patches are whole cells: those of one fabric that share an edge */
export function clothAreas({ columns, rows, ...drawing }: Drawing): readonly (readonly Cell[])[] {
  const [m, n] = [columns.length - 1, rows.length - 1];
  const cloths = Array.from({ length: m * n }, (_, at) => {
    const [i, j] = [at % m, Math.floor(at / m)];
    const middle = { ...exactly([columns[i]! + columns[i + 1]!, rows[j]! + rows[j + 1]!]), w: 2n };
    return drawing.patches[topPatch({ columns, rows, ...drawing }, middle)]?.fabric ?? drawing.ground;
  });
  const seen = new Set<number>();
  return cloths.flatMap((cloth, first) => {
    if (seen.has(first)) return [];
    seen.add(first);
    const area = [first];
    for (const at of area) {
      const [i, j] = [at % m, Math.floor(at / m)];
      const beside = [i > 0 && at - 1, i + 1 < m && at + 1, j > 0 && at - m, j + 1 < n && at + m];
      for (const next of beside) {
        if (next === false || seen.has(next) || cloths[next] !== cloth) continue;
        seen.add(next);
        area.push(next);
      }
    }
    return [area.map((at): Cell => [at % m, Math.floor(at / m)])];
  });
}

/** @returns the loops round an area of cells, with the area to the left where y runs up */
function loopsRound(area: readonly Cell[]): readonly (readonly Cell[])[] {
  const held = new Set(area.map(String));
  const has: Has = (x, y) => held.has(String([x, y]));
  const ways = new Map<string, Cell[]>();
  const edge = ([x, y]: Cell, to: Cell): void => void ways.set(`${x},${y}`, [...(ways.get(`${x},${y}`) ?? []), to]);
  for (const [x, y] of area) {
    if (!has(x, y - 1)) edge([x, y], [x + 1, y]);
    if (!has(x + 1, y)) edge([x + 1, y], [x + 1, y + 1]);
    if (!has(x, y + 1)) edge([x + 1, y + 1], [x, y + 1]);
    if (!has(x - 1, y)) edge([x, y + 1], [x, y]);
  }
  const loops: Cell[][] = [];
  for (const start of ways.keys()) {
    while (ways.get(start)!.length > 0) {
      const loop: Cell[] = [];
      let [before, at] = [start.split(',').map(Number) as unknown as Cell, ways.get(start)!.pop()!];
      loop.push(before, at);
      while (String(at) !== start) {
        const [dx, dy] = [at[0] - before[0], at[1] - before[1]];
        // Where the area touches itself at a corner the loop stays with the same cell: it turns left.
        const open: Cell[] = ways.get(String(at))!;
        const left = open.findIndex(([x, y]) => dx * (y - at[1]) - dy * (x - at[0]) > 0);
        [before, at] = [at, open.splice(Math.max(0, left), 1)[0]!];
        loop.push(at);
      }
      loops.push(corners(loop.slice(0, -1)));
    }
  }
  return loops;
}

/** @returns a loop without the points on its straight edges */
const corners = (loop: readonly Cell[]): Cell[] =>
  loop.filter(([x, y], i) => {
    const [u, v] = loop[(i + loop.length - 1) % loop.length]!;
    const [s, t] = loop[(i + 1) % loop.length]!;
    return (x - u) * (t - y) !== (y - v) * (s - x);
  });

/** @returns the fewest rectangles that an area of cells can be divided into, as the library says */
export const fewestRectangles = (area: readonly Cell[]): number => decompose(loopsRound(area)).length;

/** @returns the same by trying every rectangle over the first cell that is left; small areas only */
export function fewestRectanglesTried(area: readonly Cell[]): number {
  const known = new Map<string, number>();
  const least = (left: readonly Cell[]): number => {
    if (left.length === 0) return 0;
    const key = left.join(' ');
    const before = known.get(key);
    if (before !== undefined) return before;
    const held = new Set(left.map(String));
    const [x, y] = left.reduce((a, b) => (b[1] < a[1] || (b[1] === a[1] && b[0] < a[0]) ? b : a));
    let [best, widest] = [Infinity, Infinity];
    for (let high = 1; widest > 0; high++) {
      let wide = 0;
      while (wide < widest && held.has(`${x + wide},${y + high - 1}`)) wide++;
      widest = wide;
      for (let w = 1; w <= widest; w++) {
        best = Math.min(best, 1 + least(left.filter(([u, v]) => u >= x + w || u < x || v >= y + high)));
      }
    }
    known.set(key, best);
    return best;
  };
  return least(area);
}

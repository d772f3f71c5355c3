import { movedItem, type Item, type PathStep } from './page.ts';
import { extentOf, type Spot } from '../polygons.ts';

/*
 * What is larger than a page is printed in parts that overlap: a part shows everything within its window, so that the lines in the overlap
 * are on both sheets and can be laid on each other.
 */

export interface Tile {
  readonly row: number;
  readonly column: number;
  /** The upper left corner of its window. */
  readonly left: number;
  readonly top: number;
}

export interface Tiling {
  readonly rows: number;
  readonly columns: number;
  /** How far the windows are apart. */
  readonly across: number;
  readonly down: number;
  readonly tiles: readonly Tile[];
}

/** @returns windows of this size over some spots, each overlapping the next; those spread evenly */
export function tilingOver(spots: readonly Spot[], width: number, height: number, overlap: number): Tiling {
  const { left, top, right, bottom } = extentOf(spots);
  const count = (length: number, window: number): number => Math.max(1, Math.ceil((length - overlap) / (window - overlap) - 1e-9));
  const [columns, rows] = [count(right - left, width), count(bottom - top, height)];
  const [across, down] = [width - overlap, height - overlap];
  const spare = (n: number, step: number, window: number, length: number): number => ((n - 1) * step + window - length) / 2;
  const [startX, startY] = [left - spare(columns, across, width, right - left), top - spare(rows, down, height, bottom - top)];
  const tiles = Array.from({ length: rows * columns }, (_, i): Tile => {
    const [row, column] = [Math.floor(i / columns), i % columns];
    return { row, column, left: startX + column * across, top: startY + row * down };
  });
  return { rows, columns, across, down, tiles };
}

/** @returns what of an item shows in a window, from the window's corner on; straight paths are cut off at its edge, others shown whole or not */
export function within(item: Item, { left, top }: Tile, width: number, height: number): readonly Item[] {
  const here = movedItem(item, -left, -top);
  if (here.kind === 'text') {
    return here.x >= 0 && here.x + here.width <= width && here.y - here.size >= 0 && here.y + here.size / 4 <= height ? [here] : [];
  }
  if (here.kind !== 'path') return [];
  const spots = here.steps.flatMap((step): Spot[] => (step[0] === 'Z' ? [] : [[step[step.length - 2] as number, step[step.length - 1] as number]]));
  const { left: l, top: t, right: r, bottom: b } = extentOf(spots);
  if (l >= 0 && t >= 0 && r <= width && b <= height) return [here];
  if (here.fill !== undefined || here.steps.some(([kind]) => kind === 'C')) return [];
  const steps = linesOf(here.steps).flatMap((line): readonly PathStep[] => {
    const kept = clipped(line, width, height);
    return kept === null ? [] : [['M', ...kept[0]], ['L', ...kept[1]]];
  });
  return steps.length === 0 ? [] : [{ ...here, steps }];
}

function linesOf(steps: readonly PathStep[]): readonly (readonly [Spot, Spot])[] {
  const lines: (readonly [Spot, Spot])[] = [];
  let [start, here]: [Spot, Spot] = [[0, 0], [0, 0]];
  for (const step of steps) {
    if (step[0] === 'M') start = here = [step[1], step[2]];
    else {
      const next: Spot = step[0] === 'L' ? [step[1], step[2]] : start;
      lines.push([here, next]);
      here = next;
    }
  }
  return lines;
}

/** A new concept and method for line clipping, ACM Trans. Graph. 3, 1984. */
function clipped([[x1, y1], [x2, y2]]: readonly [Spot, Spot], width: number, height: number): readonly [Spot, Spot] | null {
  let [from, to] = [0, 1];
  const [dx, dy] = [x2 - x1, y2 - y1];
  for (const [p, q] of [[-dx, x1], [dx, width - x1], [-dy, y1], [dy, height - y1]] as const) {
    if (p === 0 && q < 0) return null;
    if (p < 0) from = Math.max(from, q / p);
    if (p > 0) to = Math.min(to, q / p);
  }
  return from < to
    ? [
        [x1 + from * dx, y1 + from * dy],
        [x1 + to * dx, y1 + to * dy],
      ]
    : null;
}

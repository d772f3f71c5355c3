import { indexOf, type Cells } from '../block/cells.ts';
import { leastCommonMultiple } from '../block/lattice.ts';
import type { Shift } from '../block/lifted.ts';
import type { Bounds } from '../block/outline.ts';
import type { GridPoint } from './gesture.ts';

/** A box around patches, in steps of 1/denominator of a grid unit. */
export type Box = Bounds & { readonly denominator: number };

/**
 * How far patches come when a hand carries them about so far: where an edge of their box lies on a line of the grid or half way between
 * two, or where they lay.
 * @param by grid units across and down, a pointer's way
 * @returns the nearest such distance across, and the nearest down
 */
export function snapShift(cells: Cells, box: Box, [x, y]: GridPoint): Shift {
  const common = leastCommonMultiple(2 * cells.denominator, box.denominator);
  const snap = (lines: readonly number[], low: number, high: number, way: number): number => {
    const places = halfLines(lines).map((line) => (line * common) / (2 * cells.denominator));
    const times = common / box.denominator;
    let best = 0;
    for (const place of places) {
      for (const distance of [place - low * times, place - high * times]) {
        if (Math.abs(distance - way * common) < Math.abs(best - way * common)) best = distance;
      }
    }
    return best;
  };
  return { dx: snap(cells.across, box.left, box.right, x), dy: snap(cells.down, box.top, box.bottom, y), denominator: common };
}

/** @returns the lines of a grid and the places half way between them, in half steps */
const halfLines = (lines: readonly number[]): number[] =>
  lines.flatMap((line, i) => (i === 0 ? [2 * line] : [lines[i - 1]! + line, 2 * line]));

/**
 * How far a key carries patches: by the cell that the left or top edge of their box is in, or by half of it; by more than one cell to the
 * edge of the block. They stop at the edge.
 * @param dx, dy −1, 0 or 1 for the next cell, more for the edge
 * @returns the distance; none where they lie at the edge already
 */
export function keyShift(cells: Cells, box: Box, dx: number, dy: number, half: boolean): Shift {
  const common = leastCommonMultiple(2 * cells.denominator, box.denominator);
  const step = (lines: readonly number[], low: number, high: number, way: number): number => {
    if (way === 0) return 0;
    const [from, to] = [(low * common) / box.denominator, (high * common) / box.denominator];
    const scale = common / cells.denominator;
    const room = way > 0 ? lines.at(-1)! * scale - to : 0 - from;
    if (Math.abs(way) > 1) return room;
    const inside = indexOf(lines, 1, from / scale);
    const at = way < 0 && lines[inside]! * scale === from ? inside - 1 : inside;
    const cell = Math.min(lines.length - 2, Math.max(0, at));
    const wide = (lines[cell + 1]! - lines[cell]!) * scale;
    const by = half ? wide / 2 : wide;
    return way > 0 ? Math.max(0, Math.min(by, room)) : Math.min(0, Math.max(-by, room));
  };
  return { dx: step(cells.across, box.left, box.right, dx), dy: step(cells.down, box.top, box.bottom, dy), denominator: common };
}

import type { Block, LatticePoint } from '../block/block.ts';
import { toDrawing } from '../block/drawing.ts';
import { boundsOf } from '../block/outline.ts';
import type { Stroke } from '../block/painting.ts';
import type { Pin } from '../geometry/patchwork/drawing.ts';
import { good, type Result } from '../measure/problem.ts';
import { listed } from '../measure/words.ts';

/*
 * Things done in several places at once: in all of them, or, where one is refused, in none.
 */

/** @returns what does something to a block in one place after another */
export const everywhere =
  <Place>(places: readonly Place[], verb: (block: Block, place: Place) => Result<Block>) =>
  (block: Block): Result<Block> =>
    places.reduce((now: Result<Block>, place) => (now.ok ? verb(now.value, place) : now), good(block));

/** @returns a changed drawing, unless it came to points finer than a drawing in true proportion holds: no file could be made of it */
export function drawable(before: Block, changed: Result<Block>): Result<Block> {
  if (!changed.ok || changed.value.denominator === before.denominator) return changed;
  const drawn = toDrawing(changed.value);
  return drawn.ok ? changed : drawn;
}

/** @returns the two ends of a line */
export const endsOf = ({ points }: Stroke): readonly [LatticePoint, LatticePoint] => [points[0]!, points[1]!];

/** @returns a pin along a line, or over a rectangle */
export function pinOn(pin: Pin['pin'], place: Stroke): Pin {
  if (pin === 'sewn last') return { pin, from: endsOf(place)[0], to: endsOf(place)[1] };
  const { left, top, right, bottom } = boundsOf(place.points);
  return { pin, from: [left, top], to: [right, bottom] };
}

/** @returns "a seam", "3 seams" */
export const counted = (count: number, one: string, many: string): string => (count === 1 ? one : `${count} ${many}`);

/** @returns "patch 3", "patches 3, 4 and 7", by indices */
export function patchesInWords(indices: readonly number[]): string {
  return `${indices.length === 1 ? 'patch' : 'patches'} ${listed(indices.map((index) => String(index + 1)))}`;
}

import { gcd } from '../geometry/point.ts';
import type { DrawnSeam, Grid, LatticePoint, Patch } from './block.ts';
import { leastCommonMultiple } from './lattice.ts';
import { boundsOf, type Bounds } from './outline.ts';
import type { Exchange } from './turning.ts';

/** Patches in the hand, each as it was seen, with the seams drawn inside them: a value that can be moved, turned, mirrored and laid. */
export interface Lifted {
  /** Steps to a grid unit. */
  readonly denominator: number;
  /** No two of them share area. They may reach beyond the block. */
  readonly patches: readonly Patch[];
  readonly seams: readonly DrawnSeam[];
  /** The point they turn about, once they have been turned: so that the fourth quarter turn brings them back. */
  readonly pivot?: Pivot;
}

/** A point in whole steps of 1/denominator of a grid unit. */
export interface Pivot {
  readonly at: LatticePoint;
  readonly denominator: number;
}

type Units = Pick<Grid, 'columns' | 'rows'>;

/** A distance across and down, in whole steps of 1/denominator of a grid unit. */
export interface Shift {
  readonly dx: number;
  readonly dy: number;
  readonly denominator: number;
}

/** @returns the box around patches in the hand, in their steps */
export const liftedBox = ({ patches }: Pick<Lifted, 'patches'>): Bounds => boundsOf(patches.flatMap(({ points }) => points));

/** @returns the patches moved by a distance */
export function moved(lifted: Lifted, { dx, dy, denominator }: Shift): Lifted {
  const by = ({ at: [x, y], denominator: steps }: Pivot): Pivot => {
    const common = leastCommonMultiple(steps, denominator);
    const [own, other] = [common / steps, common / denominator];
    return { at: [x * own + dx * other, y * own + dy * other], denominator: common };
  };
  const fine = refined(lifted, denominator);
  const times = fine.denominator / denominator;
  return coarsened({
    ...changed(fine, ([x, y]) => [x + dx * times, y + dy * times]),
    ...(fine.pivot && { pivot: by(fine.pivot) }),
  });
}

/** @returns the patches as a mirror shows them, in the box they take */
export function mirrored(lifted: Lifted, exchange: Exchange): Lifted {
  const { left, top, right, bottom } = liftedBox(lifted);
  const { pivot, denominator } = lifted;
  const other = ([x, y]: LatticePoint, times: number): LatticePoint =>
    exchange === 'left and right' ? [(left + right) * times - x, y] : [x, (top + bottom) * times - y];
  const fine = pivot && pivotIn(pivot, leastCommonMultiple(pivot.denominator, denominator));
  return {
    ...changed(lifted, (point) => other(point, 1)),
    ...(fine && { pivot: { ...fine, at: other(fine.at, fine.denominator / denominator) } }),
  };
}

/**
 * Turns the patches a quarter turn, in grid units, about the middle of their box; or, where what lies on lines of the grid would then
 * not lie on lines again, about a point a quarter or half a unit beside it.
 */
export function turned(lifted: Lifted, grid: Units, way: 'right' | 'left' = 'right'): Lifted {
  const pivot = lifted.pivot ?? pivotOf(lifted, grid);
  const fine = refined(lifted, pivot.denominator);
  const [px, py] = pivotIn(pivot, fine.denominator).at;
  return coarsened({
    ...changed(fine, ([x, y]) => (way === 'right' ? [px + py - y, py - px + x] : [px - py + y, py + px - x])),
    pivot,
  });
}

/** @returns the patches moved onto the block, across and down as far as they fit there; the same value where they lie on it already */
export function fitted(lifted: Lifted, { columns, rows }: Units): Lifted {
  const { left, top, right, bottom } = liftedBox(lifted);
  const { denominator } = lifted;
  const by = (from: number, to: number, units: number): number => {
    if (to - from > units * denominator) return 0;
    return from < 0 ? -from : Math.min(0, units * denominator - to);
  };
  const [dx, dy] = [by(left, right, columns), by(top, bottom, rows)];
  return dx === 0 && dy === 0 ? lifted : moved(lifted, { dx, dy, denominator });
}

/** @returns whether all of the patches lie on a block of so many grid units */
export function liesOn(lifted: Lifted, { columns, rows }: Units): boolean {
  const { left, top, right, bottom } = liftedBox(lifted);
  return left >= 0 && top >= 0 && right <= columns * lifted.denominator && bottom <= rows * lifted.denominator;
}

/** @returns the same patches, in steps of 1/denominator of a grid unit or finer */
export function refined(lifted: Lifted, denominator: number): Lifted {
  const common = leastCommonMultiple(lifted.denominator, denominator);
  const times = common / lifted.denominator;
  return times === 1 ? lifted : { ...changed(lifted, ([x, y]) => [x * times, y * times]), denominator: common };
}

/** @returns the same patches in the coarsest steps that hold them */
export function coarsened(lifted: Lifted): Lifted {
  let common = lifted.denominator;
  const take = ([x, y]: LatticePoint): void => {
    common = gcd(gcd(common, Math.abs(x)), Math.abs(y));
  };
  for (const { points } of lifted.patches) points.forEach(take);
  for (const seam of lifted.seams) seam.forEach(take);
  if (common === 1) return lifted;
  return { ...changed(lifted, ([x, y]) => [x / common, y / common]), denominator: lifted.denominator / common };
}

function changed(lifted: Lifted, move: (point: LatticePoint) => LatticePoint): Lifted {
  return {
    ...lifted,
    patches: lifted.patches.map((patch) => ({ ...patch, points: patch.points.map(move) })),
    seams: lifted.seams.map(([from, to]): DrawnSeam => [move(from), move(to)]),
  };
}

/** @returns a pivot in other steps, of which one of its own is a whole number */
const pivotIn = ({ at: [x, y], denominator }: Pivot, steps: number): Pivot => ({
  at: [(x * steps) / denominator, (y * steps) / denominator],
  denominator: steps,
});

/**
 * A quarter turn about the middle of a box w × h moves its left edge by (w − h) / 2 and its top by the same the other way. Where that is
 * no whole number of units (of half units, where w − h is none), the pivot lies half of one beside the middle, so that both are.
 */
function pivotOf(lifted: Lifted, { columns, rows }: Units): Pivot {
  const { left, top, right, bottom } = liftedBox(lifted);
  const unit = 4 * lifted.denominator;
  const [width, height] = [4 * (right - left), 4 * (bottom - top)];
  const middle: LatticePoint = [2 * (left + right), 2 * (top + bottom)];
  const quantum = [unit, unit / 2].find((step) => (width - height) % step === 0);
  const apart = quantum === undefined || ((width - height) / 2) % quantum === 0 ? 0 : quantum / 2;
  const beside: readonly LatticePoint[] = [[0, apart], [0, -apart], [apart, 0], [-apart, 0]];
  const onBlock = ([a, b]: LatticePoint): boolean => {
    const [x, y] = [middle[0] + a + b - height / 2, middle[1] + b - a - width / 2];
    return x >= 0 && y >= 0 && x + height <= columns * unit && y + width <= rows * unit;
  };
  const [a, b] = beside.find(onBlock) ?? beside[0]!;
  return { at: [middle[0] + a, middle[1] + b], denominator: unit };
}

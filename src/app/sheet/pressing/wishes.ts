import type { Block, LatticePoint, PressedSeam } from '../../../block/block.ts';
import { leastCommonMultiple } from '../../../block/lattice.ts';
import { pressSeams, type SeamEnds } from '../../../block/pressing.ts';
import type { Point } from '../../../geometry/point.ts';
import type { Result } from '../../../measure/problem.ts';
import { ratio, type Rational } from '../../../measure/rational.ts';
import { inkAt } from '../../../pattern/diagrams/diagram.ts';
import { isMeant, sideOfWay, type PressedSeamClass } from '../../../pattern/diagrams/back.ts';
import type { Pattern } from '../../../pattern/pattern.ts';
import type { Spot } from '../../../pattern/polygons.ts';

/** What of a block tells which seams its maker wants pressed otherwise. */
export type Wished = Pick<Block, 'pressedSeams' | 'grid' | 'denominator'>;

/** How a seam may be wished for: as the plan has it, against it, or open. */
export type Wish = 'as solved' | 'the other way' | 'open';

/** @returns the wishes of a block that are meant for a seam, in any of its places */
export function wishesFor({ pressedSeams = [], grid, denominator }: Wished, pattern: Pattern, { places }: PressedSeamClass): readonly PressedSeam[] {
  const { width, height } = pattern.block.finished;
  const [across, down] = [width.n / width.d / (grid.columns * denominator), height.n / height.d / (grid.rows * denominator)];
  const spot = ([x, y]: LatticePoint): Spot => [x * across, y * down];
  return pressedSeams.filter(({ from, to }) => places.some((place) => isMeant(spot(from), spot(to), place)));
}

/**
 * Has a seam pressed otherwise than it is, or open, or as the plan would have it.
 * @returns the block with that wish for the seam's first place and no other
 */
export function wished(block: Block, pattern: Pattern, seam: PressedSeamClass, wish: Wish): Result<Block> {
  const before = wishesFor(block, pattern, seam);
  const free = before.length > 0 ? pressSeams(block, before, null, block.denominator) : { ok: true as const, value: block };
  if (!free.ok || wish === 'as solved') return free;
  const [place] = seam.places as readonly [PressedSeamClass['places'][number]];
  const { ends, denominator } = onGrid(place.ends, block, pattern);
  const scale = pattern.lattice.step.n / pattern.lattice.step.d;
  const [from, to] = place.ends.map((end) => inkAt(end, scale)) as [Spot, Spot];
  // An open seam has no other way; it is turned to its right.
  const lies = wish === 'open' ? 'open' : place.toward && sideOfWay(from, to, place.toward) === 'right' ? 'left' : 'right';
  return pressSeams(free.value, [ends], lies, denominator);
}

/** @returns points of the drawing's lattice in whole steps of the block's grid units */
function onGrid(points: readonly [Point, Point], { grid }: Block, { lattice }: Pattern): { readonly ends: SeamEnds; readonly denominator: number } {
  const placed = points.map(({ x, y, w }): readonly [Rational, Rational] => [
    ratio(BigInt(x) * BigInt(grid.columns), BigInt(w) * BigInt(lattice.width)),
    ratio(BigInt(y) * BigInt(grid.rows), BigInt(w) * BigInt(lattice.height)),
  ]);
  const denominator = placed.flat().reduce((all, { d }) => leastCommonMultiple(all, d), 1);
  const [from, to] = placed.map(([x, y]): LatticePoint => [x.n * (denominator / x.d), y.n * (denominator / y.d)]) as [LatticePoint, LatticePoint];
  return { ends: { from, to }, denominator };
}

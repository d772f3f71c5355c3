import { gcd } from '../geometry/point.ts';
import { good, type Result } from '../measure/problem.ts';
import type { Block, DrawnSeam, LatticePoint } from './block.ts';
import { MAX_STEPS } from './limits.ts';
import { refused, tooFine } from './problems.ts';

/** @returns the least whole number that both a and b divide; a, b ≥ 1 and small enough for their product to be safe */
export const leastCommonMultiple = (a: number, b: number): number => (a / gcd(a, b)) * b;

/** @returns the block with every point changed by `move`; the same lists where nothing changes */
export function withPoints(block: Block, move: (point: LatticePoint) => LatticePoint): Pick<Block, 'patches' | 'seams' | 'pins' | 'unitMethods' | 'pressedSeams'> {
  return {
    patches: block.patches.map((patch) => ({ ...patch, points: patch.points.map(move) })),
    seams: block.seams.map(([from, to]): DrawnSeam => [move(from), move(to)]),
    ...(block.pins && { pins: block.pins.map((pin) => ({ ...pin, from: move(pin.from), to: move(pin.to) })) }),
    ...(block.unitMethods && { unitMethods: block.unitMethods.map((unit) => ({ ...unit, from: move(unit.from), to: move(unit.to) })) }),
    ...(block.pressedSeams && { pressedSeams: block.pressedSeams.map((seam) => ({ ...seam, from: move(seam.from), to: move(seam.to) })) }),
  };
}

/**
 * The same drawing on a lattice fine enough for other points too.
 * @param denominator steps to a grid unit that the other points need
 * @returns the block on the coarsest lattice that divides its own and the other; a problem beyond MAX_STEPS
 */
export function onLattice(block: Block, denominator: number): Result<Block> {
  const cells = Math.max(block.grid.columns, block.grid.rows);
  const common = leastCommonMultiple(block.denominator, denominator);
  if (cells * common > MAX_STEPS) {
    const least = coarsest(block);
    return least.denominator < block.denominator ? onLattice(least, denominator) : refused(tooFine(cells * common));
  }
  const times = common / block.denominator;
  if (times === 1) return good(block);
  return good({ ...block, denominator: common, ...withPoints(block, ([x, y]) => [x * times, y * times]) });
}

/** @returns the same drawing with the smallest denominator that holds all its points */
export function coarsest(block: Block): Block {
  let common = block.denominator;
  const take = ([x, y]: LatticePoint): void => {
    if (common > 1) common = gcd(gcd(common, x), y);
  };
  for (const patch of block.patches) patch.points.forEach(take);
  for (const seam of block.seams) seam.forEach(take);
  for (const { from, to } of [...(block.pins ?? []), ...(block.unitMethods ?? []), ...(block.pressedSeams ?? [])]) [from, to].forEach(take);
  if (common === 1) return block;
  return { ...block, denominator: block.denominator / common, ...withPoints(block, ([x, y]) => [x / common, y / common]) };
}

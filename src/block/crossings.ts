import { gcd } from '../geometry/point.ts';
import type { Block } from './block.ts';
import { leastCommonMultiple } from './lattice.ts';
import { MAX_STEPS } from './limits.ts';
import { boundsOf, boundsOverlap, turn, type Outline } from './outline.ts';

/**
 * Finds how much finer the lattice must be for the outlines of all patches to cross on lattice points.
 * @returns the factor, 1 where they cross on lattice points already; null where it would take more than MAX_STEPS steps
 */
export function crossingFactor(block: Pick<Block, 'grid' | 'denominator' | 'patches'>): number | null {
  const steps = Math.max(block.grid.columns, block.grid.rows) * block.denominator;
  const boxed = block.patches.map(({ points }) => ({ points, bounds: boundsOf(points) }));
  boxed.sort((a, b) => a.bounds.left - b.bounds.left);
  let factor = 1;
  for (const [i, one] of boxed.entries()) {
    for (let j = i + 1; j < boxed.length && boxed[j]!.bounds.left < one.bounds.right; j++) {
      const other = boxed[j]!;
      if (!boundsOverlap(one.bounds, other.bounds)) continue;
      for (const denominator of crossingDenominators(one.points, other.points)) {
        factor = leastCommonMultiple(factor, denominator);
        if (factor * steps > MAX_STEPS) return null;
      }
    }
  }
  return factor;
}

/** @returns the denominators of the places where two outlines cross in the middle of an edge of each */
export function crossingDenominators(first: Outline, second: Outline): readonly number[] {
  const found: number[] = [];
  const edges = (outline: Outline) => outline.map((p, i) => [p, outline[(i + 1) % outline.length]!] as const);
  const others = edges(second);
  for (const [p, q] of edges(first)) {
    for (const [r, s] of others) {
      const from = turn(r, s, p);
      const to = turn(r, s, q);
      if (from * to >= 0 || turn(p, q, r) * turn(p, q, s) >= 0) continue;
      // The crossing is p + (q − p) · from / (from − to).
      const [n, d] = [Math.abs(from), Math.abs(from - to)];
      for (const axis of [0, 1] as const) {
        const along = Math.abs(q[axis] - p[axis]) * n;
        found.push(d / gcd(along, d));
      }
    }
  }
  return found;
}

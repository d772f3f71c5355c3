import type { Rational } from '../measure/rational.ts';
import { gcd, multiply, ratio } from '../measure/rational.ts';
import type { Surd } from '../measure/surd.ts';
import { compareSurds, rootOf, times } from '../measure/surd.ts';
import type { Point } from '../geometry/point.ts';
import { shapeOf } from '../geometry/shape.ts';

/** Which diagonal of a rectangle standing on its short side gives a triangle, right side up: falling from the top left, or rising. */
export type Hand = 'falling' | 'rising';

/** What a finished outline is to somebody with a ruler; lengths in the block's unit. */
export type CutShape =
  | { readonly form: 'rectangle'; readonly sides: readonly [Surd, Surd]; readonly level: boolean }
  /** A right triangle of two equal legs; `corner` is its square one, `grain` what of it lies along the block's sides. */
  | {
      readonly form: 'isosceles';
      readonly corner: Point;
      readonly leg: Surd;
      readonly longSide: Surd;
      readonly grain: 'legs' | 'long side' | 'nothing';
    }
  /** Any other right triangle with its legs along the block's sides, the shorter one first. */
  | { readonly form: 'right'; readonly legs: readonly [Rational, Rational]; readonly hand: Hand }
  | { readonly form: 'other' };

/** @returns how a finished outline (convex, clockwise, lattice steps) can be cut; step: length of a lattice step in the block's unit */
export function cutShape(outline: readonly Point[], step: Rational): CutShape {
  const shape = shapeOf(outline);
  const at = (i: number): Point => outline[i % outline.length]!;
  if (shape.shape === 'rectangle') {
    return { form: 'rectangle', sides: [distance(at(0), at(1), step), distance(at(1), at(2), step)], level: shape.level };
  }
  if (shape.shape === 'other') return { form: 'other' };
  const [corner, next, last] = [at(shape.corner), at(shape.corner + 1), at(shape.corner + 2)];
  const [leaving, arriving] = [distance(corner, next, step), distance(corner, last, step)];
  if (shape.isosceles) {
    const grain = shape.level ? 'legs' : shape.longLevel ? 'long side' : 'nothing';
    return { form: 'isosceles', corner, leg: leaving, longSide: distance(next, last, step), grain };
  }
  if (!shape.level) return { form: 'other' };
  // Going clockwise from the square corner along the short leg first, the triangle lies under a falling diagonal's left end.
  return compareSurds(leaving, arriving) < 0
    ? { form: 'right', legs: [leaving.p, arriving.p], hand: 'rising' }
    : { form: 'right', legs: [arriving.p, leaving.p], hand: 'falling' };
}

/** @returns the exact distance between two points in the block's unit */
export function distance(from: Point, to: Point, step: Rational): Surd {
  const [w, v] = [BigInt(from.w), BigInt(to.w)];
  const dx = BigInt(to.x) * w - BigInt(from.x) * v;
  const dy = BigInt(to.y) * w - BigInt(from.y) * v;
  // Only the small whole numbers of the direction go under the root.
  const common = gcd(dx, dy);
  const [a, b] = [dx / common, dy / common];
  return times(rootOf(ratio(a * a + b * b, 1n)), multiply(step, ratio(common, w * v)));
}

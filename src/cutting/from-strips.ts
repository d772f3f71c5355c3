import type { Rational } from '../measure/rational.ts';
import { add, compare, divide, multiply, rational, subtract, timesInto } from '../measure/rational.ts';
import type { Surd } from '../measure/surd.ts';
import { ceilToStep, plus, surd } from '../measure/surd.ts';
import type { NestedTriangles } from './cut.ts';
import type { Finished } from './formulas.ts';
import { halfSquare, plainSide, quarterSquare } from './formulas.ts';
import type { CutSize } from './needs.ts';

/*
 * Triangles that lie head to tail along a strip. s is the seam allowance; a finished triangle of 45° tips has the allowance all round.
 *
 * Half-square triangle of leg f, its right angle at 0, 0 with the allowance: inside x ≥ 0, y ≥ 0, x + y ≤ m, m = f + (2 + √2)s. The
 * tip at the end of each leg is cut straight across it an allowance beyond the finished tip, at f + 2s: so the piece is as high as a
 * square that finishes to f, its long side runs from (√2·s, f + 2s) to (f + 2s, √2·s), and it lies edge to edge on every neighbour: the
 * other half of its square, whose tips are cut across the other leg, is its image in the seam. A strip h = f + 2s high cuts one tip off;
 * the other is trimmed. Measured m along the lower edge from a straight end, a slanted cut arrives at m − h on the upper edge;
 * m from there on that edge, straight across, is a second triangle, turned half round. Two take 2m − h = f + 2(1 + √2)s.
 *
 * Quarter-square triangle of long side w: m = w + 2(1 + √2)s along that side, the slants meet at height m/2. Its apex is cut across an
 * allowance beyond the finished one, which lies w/2 above the finished long side: h = w/2 + 2s, and what is left of the apex is
 * m − 2h = 2(√2 − 1)s wide. Each further triangle, turned half round, takes m − h. Its other two tips are trimmed straight across the
 * long side, so that that measures w + 2s. These tips too are the images of the neighbours': a goose and its wings, four quarters.
 *
 * Why cut so, and not from squares: the strip is as wide as the plain pieces beside the triangles, which come from what is left of it;
 * and h is f + 1/2, w/2 + 1/2 at s = 1/4 in., on the ruler where f and w are.
 */

/** A triangle as it comes from a strip. */
export interface StripTriangle {
  readonly form: NestedTriangles['form'];
  /** How high the strip is, exactly and rounded up to the ruler. */
  readonly exact: Surd;
  readonly height: Rational;
  /** What is measured along its edges for each triangle, rounded up to the ruler. */
  readonly measure: Rational;
}

/** @returns half-square triangles of leg f from a strip, cut larger by the trim */
export function halvesFromStrip(leg: Finished, seam: Rational, ruler: Rational, trim: Rational): StripTriangle {
  return stripTriangle('half', plus(plainSide(leg, seam), trim), plus(halfSquare(leg, seam), trim), ruler);
}

/** @returns quarter-square triangles of a long side from a strip, cut larger by the trim on the long side, half of it on the height */
export function quartersFromStrip(longSide: Finished, seam: Rational, ruler: Rational, trim: Rational): StripTriangle {
  const half = rational(1, 2);
  const finished = 'p' in longSide ? longSide : surd(longSide);
  const height = plainSide({ p: multiply(finished.p, half), q: multiply(finished.q, half), r: finished.r }, seam);
  return stripTriangle('quarter', plus(height, multiply(trim, half)), plus(quarterSquare(longSide, seam), trim), ruler);
}

const stripTriangle = (form: NestedTriangles['form'], exact: Surd, measure: Surd, ruler: Rational): StripTriangle => ({
  form,
  exact,
  height: ceilToStep(exact, ruler),
  measure: ceilToStep(measure, ruler),
});

/** @returns how long a strip of so many triangles is; the tips at its ends are whole */
export function stripLength({ form, height, measure }: StripTriangle, triangles: number): Rational {
  const times = (length: Rational, count: number): Rational => multiply(length, rational(count));
  const slant = subtract(measure, height);
  if (form === 'quarter') return add(measure, times(slant, triangles - 1));
  const pairs = Math.floor(triangles / 2);
  return add(times(add(measure, slant), pairs), times(measure, triangles % 2));
}

/** @returns how many triangles come out of a length of strip, at least one */
export function trianglesIn(triangle: StripTriangle, length: Rational): number {
  const { height, measure } = triangle;
  if (compare(measure, length) > 0) return 1;
  const each = triangle.form === 'quarter' ? subtract(measure, height) : divide(subtract(add(measure, measure), height), rational(2));
  // No triangle takes less than `each`, and the first no more than `measure`.
  let count = timesInto(subtract(length, measure), each) + 1;
  while (compare(stripLength(triangle, count + 1), length) <= 0) count += 1;
  while (count > 1 && compare(stripLength(triangle, count), length) > 0) count -= 1;
  return count;
}

/** What so many triangles take: strips that are all alike, as few as the length of cloth allows, no longer than they must be. */
export interface Strips {
  readonly strips: number;
  readonly size: CutSize;
  readonly nested: NestedTriangles;
}

/**
 * @param wanted at least 1
 * @param room the longest strip that the cloth gives; null where that does not matter
 */
export function stripsFor(triangle: StripTriangle, wanted: number, room: Rational | null): Strips {
  const strips = room === null ? 1 : Math.ceil(wanted / trianglesIn(triangle, room));
  const triangles = Math.ceil(wanted / strips);
  const { form, exact, height: width, measure } = triangle;
  const height = stripLength(triangle, triangles);
  const shape = compare(width, height) === 0 ? 'square' : 'rectangle';
  const key = `strip ${form} ${width.n}/${width.d} ${measure.n}/${measure.d}`;
  return {
    strips,
    size: { shape, width, height, exact: { width: exact, height: surd(height) }, template: null, key },
    nested: { form, triangles, measure },
  };
}

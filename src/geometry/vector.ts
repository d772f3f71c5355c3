import type { Point } from './point.ts';
import { gcd } from '../measure/rational.ts';

/** A direction, or a place over a common denominator, in whole numbers of any size; x right, y down. */
export type Vector = readonly [bigint, bigint];

/** @returns the scalar product: above 0 where the two lie within 90° of each other */
export const dot = (a: Vector, b: Vector): bigint => a[0] * b[0] + a[1] * b[1];

/** @returns the cross product: above 0 where b lies clockwise of a (as seen on screen) by less than 180° */
export const cross = (a: Vector, b: Vector): bigint => a[0] * b[1] - a[1] * b[0];

/** @returns the direction the other way */
export const opposite = (a: Vector): Vector => [-a[0], -a[1]];

/** @returns the direction to the left of this one as seen on screen: out of an outline that runs clockwise */
export const outward = (a: Vector): Vector => [a[1], -a[0]];

/** @returns the same direction in lowest terms */
export function inLowestTerms([x, y]: Vector): Vector {
  const common = gcd(x, y);
  return common === 0n ? [x, y] : [x / common, y / common];
}

/** @returns the direction from one point to another, in lowest terms */
export const directionFrom = (p: Point, q: Point): Vector =>
  inLowestTerms([BigInt(q.x) * BigInt(p.w) - BigInt(p.x) * BigInt(q.w), BigInt(q.y) * BigInt(p.w) - BigInt(p.y) * BigInt(q.w)]);

/** @returns the mirror image of a direction in a line of that direction, in lowest terms */
export function mirroredIn(line: Vector, a: Vector): Vector {
  const [twice, size] = [2n * dot(a, line), dot(line, line)];
  return inLowestTerms([twice * line[0] - size * a[0], twice * line[1] - size * a[1]]);
}

/** @returns a direction turned a quarter turn clockwise as seen on screen */
export const quarterTurned = ([x, y]: Vector): Vector => [-y, x];

import type { Point } from '../geometry/point.ts';
import { commonDivisor, fraction, NOTHING, over, plus, sign } from './proof-number.ts';
import type { Fraction } from './proof-number.ts';

/** An exact point (x/w, y/w) of the proof, w > 0, lowest terms; x right, y down. */
export interface Spot {
  readonly x: bigint;
  readonly y: bigint;
  readonly w: bigint;
}

/** Corners of a convex outline, clockwise as seen on screen, no three neighbours on a line. */
export type Outline = readonly Spot[];

/** A quarter-turn about the origin (clockwise as seen on screen) and then a shift. */
export interface Move {
  readonly turn: number;
  readonly by: Spot;
}

/** @returns the point (x/w, y/w) in lowest terms; w ≠ 0 */
export function spot(x: bigint, y: bigint, w = 1n): Spot {
  if (w === 1n) return { x, y, w };
  const common = commonDivisor(commonDivisor(x, y), w) * (w < 0n ? -1n : 1n);
  return { x: x / common, y: y / common, w: w / common };
}

/** @returns the same point in the proof's own form; RangeError when w is 0 */
export function spotOf(p: Point): Spot {
  if (p.w === 0) throw new RangeError('a point with denominator 0');
  return spot(BigInt(p.x), BigInt(p.y), BigInt(p.w));
}

/** @returns whether two points are one */
export const same = (p: Spot, q: Spot): boolean => p.x === q.x && p.y === q.y && p.w === q.w;
/** @returns a name that only equal points share */
export const nameOf = (p: Spot): string => `${p.x},${p.y},${p.w}`;
/** @returns p + q as vectors */
export const shifted = (p: Spot, q: Spot): Spot => spot(p.x * q.w + q.x * p.w, p.y * q.w + q.y * p.w, p.w * q.w);
/** @returns the vector from p to q */
export const vector = (p: Spot, q: Spot): Spot => spot(q.x * p.w - p.x * q.w, q.y * p.w - p.y * q.w, p.w * q.w);

/** @returns p turned clockwise about the origin by so many quarter turns */
export function turnedBy(p: Spot, turn: number): Spot {
  if (turn === 0) return p;
  if (turn === 1) return { x: -p.y, y: p.x, w: p.w };
  if (turn === 2) return { x: -p.x, y: -p.y, w: p.w };
  return { x: p.y, y: -p.x, w: p.w };
}

/** @returns p after the move */
export const after = (move: Move, p: Spot): Spot => shifted(turnedBy(p, move.turn), move.by);
/** @returns the move that makes `inner` first and `outer` then */
export const compose = (outer: Move, inner: Move): Move => ({ turn: (outer.turn + inner.turn) % 4, by: after(outer, inner.by) });

/** @returns 1 when r lies to the right of p → q as seen on screen, −1 to the left, 0 on the line */
export function side(p: Spot, q: Spot, r: Spot): number {
  return sign(sideTimes(p, q, r));
}

/** Twice the area of p, q, r times the product of their denominators; clockwise on screen is positive. */
function sideTimes(p: Spot, q: Spot, r: Spot): bigint {
  if (p.w === 1n && q.w === 1n && r.w === 1n) return (q.x - p.x) * (r.y - p.y) - (q.y - p.y) * (r.x - p.x);
  return p.x * (q.y * r.w - r.y * q.w) - p.y * (q.x * r.w - r.x * q.w) + p.w * (q.x * r.y - r.x * q.y);
}

/** @returns −1, 0 or 1 as p lies left of, above or below, or right of q */
export const compareX = (p: Spot, q: Spot): number => sign(p.x * q.w - q.x * p.w);
/** @returns −1, 0 or 1 as p lies above, level with or below q */
export const compareY = (p: Spot, q: Spot): number => sign(p.y * q.w - q.y * p.w);
/** @returns the order of two points of one line */
export const compareAlong = (p: Spot, q: Spot): number => compareX(p, q) || compareY(p, q);

/** @returns the square of the distance of p and q, in steps squared */
export function squaredDistance(p: Spot, q: Spot): Fraction {
  const v = vector(p, q);
  return fraction(v.x * v.x + v.y * v.y, v.w * v.w);
}

/** @returns the scalar product of the vectors p → q and p → r, in steps squared */
export function dot(p: Spot, q: Spot, r: Spot): Fraction {
  const [u, v] = [vector(p, q), vector(p, r)];
  return fraction(u.x * v.x + u.y * v.y, u.w * v.w);
}

/** @returns the corners without those on a straight line between their neighbours or equal to one */
export function corners(points: readonly Spot[]): Spot[] {
  const kept = points.filter((p, i) => !same(p, points[(i + 1) % points.length]));
  return kept.filter((p, i) => side(kept[(i + kept.length - 1) % kept.length], p, kept[(i + 1) % kept.length]) !== 0);
}

/** @returns whether the corners run clockwise on screen, turn right at every corner and go round once */
export function isConvex(points: readonly Spot[]): boolean {
  if (points.length < 3) return false;
  let descents = 0;
  for (let i = 0; i < points.length; i++) {
    const [p, q, r] = [points[i], points[(i + 1) % points.length], points[(i + 2) % points.length]];
    if (side(p, q, r) <= 0) return false;
    // Going round once, the order along a line changes from rising to falling once.
    if (compareAlong(p, q) < 0 && compareAlong(q, r) > 0) descents++;
  }
  return descents === 1;
}

/** @returns the area in steps squared; positive when the corners run clockwise on screen */
export function area(points: readonly Spot[]): Fraction {
  let whole = 0n;
  let rest = NOTHING;
  for (let i = 0; i < points.length; i++) {
    const [p, q] = [points[i], points[(i + 1) % points.length]];
    const twice = p.x * q.y - q.x * p.y;
    if (p.w === 1n && q.w === 1n) whole += twice;
    else rest = plus(rest, fraction(twice, p.w * q.w));
  }
  return over(plus(rest, fraction(whole)), fraction(2n));
}

/** @returns the smallest convex outline that holds all the points */
export function hull(points: readonly Spot[]): Spot[] {
  const sorted = [...points].sort(compareAlong);
  const chain = (order: readonly Spot[]): Spot[] => {
    const kept: Spot[] = [];
    for (const p of order) {
      while (kept.length >= 2 && side(kept[kept.length - 2], kept[kept.length - 1], p) <= 0) kept.pop();
      if (kept.length === 0 || !same(kept[kept.length - 1], p)) kept.push(p);
    }
    return kept.slice(0, -1);
  };
  // With y down, left to right along the top is clockwise.
  return [...chain(sorted), ...chain(sorted.toReversed())];
}

/** @returns whether two convex outlines have no inner point in common: an edge of one has the other wholly behind it */
export function apart(a: Outline, b: Outline): boolean {
  const behindAnEdge = (one: Outline, other: Outline): boolean =>
    one.some((p, i) => other.every((r) => side(p, one[(i + 1) % one.length], r) <= 0));
  return behindAnEdge(a, b) || behindAnEdge(b, a);
}

/** @returns whether two outlines are the same, whichever corner they begin with */
export function sameOutline(a: Outline, b: Outline): boolean {
  if (a.length !== b.length) return false;
  const start = b.findIndex((p) => same(p, a[0]));
  return start >= 0 && a.every((p, i) => same(p, b[(start + i) % b.length]));
}

/** The upright rectangle that holds some points. */
export interface Bounds {
  readonly left: Fraction;
  readonly top: Fraction;
  readonly right: Fraction;
  readonly bottom: Fraction;
}

/** @returns the upright rectangle that holds the points; at least one point */
export function bounds(points: readonly Spot[]): Bounds {
  let [left, top, right, bottom] = [points[0], points[0], points[0], points[0]];
  for (const p of points) {
    if (compareX(p, left) < 0) left = p;
    if (compareX(p, right) > 0) right = p;
    if (compareY(p, top) < 0) top = p;
    if (compareY(p, bottom) > 0) bottom = p;
  }
  return {
    left: fraction(left.x, left.w),
    top: fraction(top.y, top.w),
    right: fraction(right.x, right.w),
    bottom: fraction(bottom.y, bottom.w),
  };
}

/**
 * @returns what lies to the right of the line p → q (as seen on screen) and what lies to its left;
 * null where nothing does
 */
export function split(region: Outline, p: Spot, q: Spot): { readonly right: Spot[] | null; readonly left: Spot[] | null } {
  const at = region.map((r) => sideTimes(p, q, r));
  if (at.every((s) => s >= 0n)) return { right: [...region], left: null };
  if (at.every((s) => s <= 0n)) return { right: null, left: [...region] };
  const right: Spot[] = [];
  const left: Spot[] = [];
  for (let i = 0; i < region.length; i++) {
    const j = (i + 1) % region.length;
    if (at[i] >= 0n) right.push(region[i]);
    if (at[i] <= 0n) left.push(region[i]);
    if ((at[i] > 0n && at[j] < 0n) || (at[i] < 0n && at[j] > 0n)) {
      // Homogeneous points mix in proportion to their (homogeneous) distances from the line.
      const [a, b, s, t] = [region[i], region[j], at[j], -at[i]];
      const crossing = spot(a.x * s + b.x * t, a.y * s + b.y * t, a.w * s + b.w * t);
      right.push(crossing);
      left.push(crossing);
    }
  }
  return { right, left };
}

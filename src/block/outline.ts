import { twiceArea } from '../geometry/patchwork/twice-area.ts';
import type { Point } from '../geometry/point.ts';
import type { LatticePoint } from './block.ts';

/** Corners in order, either way round, closed by itself. Lattice steps. */
export type Outline = readonly LatticePoint[];

/** Why corners make no outline; `points` are indices of the corners meant. */
export interface OutlineFault {
  readonly kind: 'few' | 'repeated' | 'on-one-line' | 'crossing';
  readonly points: readonly number[];
}

/** @returns twice the area of the triangle p q r: positive for a turn to the right as seen on screen, 0 on one line */
export const turn = (p: LatticePoint, q: LatticePoint, r: LatticePoint): number => (q[0] - p[0]) * (r[1] - p[1]) - (q[1] - p[1]) * (r[0] - p[0]);

const same = (p: LatticePoint, q: LatticePoint): boolean => p[0] === q[0] && p[1] === q[1];

/** @returns twice the area inside an outline, in square steps, > 0 */
export const doubleArea = (outline: Outline): number => Math.abs(twiceArea(outline));

/** @returns the outline without repeated points and without points between two others on one line; may be left with fewer than 3 */
export function tidyOutline(points: Outline): Outline {
  let rest: LatticePoint[] = [...points];
  for (;;) {
    const kept = rest.filter((p, i) => !same(p, rest[(i + 1) % rest.length]!));
    // One spike at a time: dropping its tip can make its two neighbours equal.
    const tip = kept.findIndex((p, i) => turn(kept[(i + kept.length - 1) % kept.length]!, p, kept[(i + 1) % kept.length]!) === 0);
    if (tip >= 0) kept.splice(tip, 1);
    if (kept.length === rest.length) return kept.length === points.length ? points : kept;
    rest = kept;
  }
}

/**
 * Tests exactly that corners make a simple outline: at least three, all different, no three neighbours on a line,
 * no two edges that meet except neighbours in their common corner.
 * @returns the first fault, null when there is none
 */
export function outlineFault(points: Outline): OutlineFault | null {
  const n = points.length;
  if (n < 3) return { kind: 'few', points: [] };
  const seen = new Map<string, number>();
  for (let i = 0; i < n; i++) {
    const name = `${points[i]![0]},${points[i]![1]}`;
    const before = seen.get(name);
    if (before !== undefined) return { kind: 'repeated', points: [before, i] };
    seen.set(name, i);
  }
  for (let i = 0; i < n; i++) {
    const three = [i, (i + 1) % n, (i + 2) % n] as const;
    if (turn(points[three[0]]!, points[three[1]]!, points[three[2]]!) === 0) return { kind: 'on-one-line', points: three };
  }
  const meeting = firstMeeting(points);
  return meeting === null ? null : { kind: 'crossing', points: meeting };
}

/** @returns the indices of two edges, not neighbours, that share a point; sweeps from left to right */
function firstMeeting(points: Outline): readonly [number, number] | null {
  const n = points.length;
  const edges = points.map((p, i) => {
    const q = points[(i + 1) % n]!;
    return { i, p, q, left: Math.min(p[0], q[0]), right: Math.max(p[0], q[0]), top: Math.min(p[1], q[1]), bottom: Math.max(p[1], q[1]) };
  });
  edges.sort((a, b) => a.left - b.left);
  for (let a = 0; a < n; a++) {
    const e = edges[a]!;
    for (let b = a + 1; b < n && edges[b]!.left <= e.right; b++) {
      const f = edges[b]!;
      if (f.top > e.bottom || f.bottom < e.top) continue;
      if ((e.i + 1) % n === f.i || (f.i + 1) % n === e.i) continue;
      if (edgesMeet(e.p, e.q, f.p, f.q)) return e.i < f.i ? [e.i, f.i] : [f.i, e.i];
    }
  }
  return null;
}

/** @returns whether two edges whose boxes overlap share a point */
function edgesMeet(p: LatticePoint, q: LatticePoint, r: LatticePoint, s: LatticePoint): boolean {
  const acrossFirst = Math.sign(turn(p, q, r)) * Math.sign(turn(p, q, s));
  const acrossSecond = Math.sign(turn(r, s, p)) * Math.sign(turn(r, s, q));
  return acrossFirst <= 0 && acrossSecond <= 0;
}

/**
 * Finds exactly where a point lies.
 * @param at in lattice steps, x/w and y/w
 */
export function whereIs(at: Point, outline: Outline): 'inside' | 'edge' | 'outside' {
  let inside = false;
  for (let i = 0; i < outline.length; i++) {
    const [ax, ay] = outline[i]!;
    const [bx, by] = outline[(i + 1) % outline.length]!;
    const above = ay * at.w > at.y;
    const nextAbove = by * at.w > at.y;
    const turned = (bx - ax) * (at.y - ay * at.w) - (by - ay) * (at.x - ax * at.w);
    if (turned === 0 && between(ax * at.w, at.x, bx * at.w) && between(ay * at.w, at.y, by * at.w)) return 'edge';
    if (above !== nextAbove && (turned > 0) === (by > ay)) inside = !inside;
  }
  return inside ? 'inside' : 'outside';
}

const between = (a: number, v: number, b: number): boolean => (a <= v && v <= b) || (b <= v && v <= a);

/** The box around an outline, in steps. */
export interface Bounds {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** @returns the box around an outline */
export function boundsOf(outline: Outline): Bounds {
  let [left, top, right, bottom] = [Infinity, Infinity, -Infinity, -Infinity];
  // Painting asks this of every patch for every stroke: no calls, nothing made on the way.
  for (let i = 0; i < outline.length; i++) {
    const point = outline[i]!;
    const x = point[0];
    const y = point[1];
    if (x < left) left = x;
    if (x > right) right = x;
    if (y < top) top = y;
    if (y > bottom) bottom = y;
  }
  return { left, top, right, bottom };
}

/** @returns whether two boxes share area */
export const boundsOverlap = (a: Bounds, b: Bounds): boolean =>
  a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;

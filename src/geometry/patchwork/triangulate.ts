import { latticePoint, signOfProducts, type Point } from '../point.ts';
import { convexFrom, type Convex } from '../convex.ts';
import type { Lattice } from './drawing.ts';
import { twiceArea } from './twice-area.ts';

/** @returns 1 where three lattice points turn clockwise on screen, −1 the other way, 0 straight on */
const turn = (p: Point, q: Point, r: Point): number => signOfProducts(q.x - p.x, r.y - p.y, p.y - q.y, r.x - p.x, 0, 0);

/** @returns whether p lies in the closed triangle a b c (clockwise on screen) */
const holds = (a: Point, b: Point, c: Point, p: Point): boolean => turn(a, b, p) >= 0 && turn(b, c, p) >= 0 && turn(c, a, p) >= 0;

/**
 * Divides a simple outline into convex parts, exactly: itself when it is convex, otherwise triangles by cutting ears.
 * @param outline at least three corners, no crossing; either way round; corners on a straight edge are dropped
 */
export function convexParts(outline: readonly Lattice[]): readonly Convex[] {
  const clockwise = twiceArea(outline) > 0 ? outline : [...outline].reverse();
  let ring = clockwise.map(([x, y]) => latticePoint(x, y));
  ring = ring.filter((p, i) => turn(ring[(i + ring.length - 1) % ring.length]!, p, ring[(i + 1) % ring.length]!) !== 0);
  const at = (i: number): Point => ring[(i + ring.length) % ring.length]!;
  if (ring.every((_, i) => turn(at(i - 1), at(i), at(i + 1)) > 0)) return [convexFrom(ring)];
  const parts: Convex[] = [];
  while (ring.length > 3) {
    const ear = ring.findIndex((p, i) => {
      const [before, after] = [at(i - 1), at(i + 1)];
      if (turn(before, p, after) <= 0) return false;
      return ring.every((q) => q === before || q === p || q === after || !holds(before, p, after, q));
    });
    if (ear < 0) break;
    parts.push(convexFrom([at(ear - 1), at(ear), at(ear + 1)]));
    ring.splice(ear, 1);
    ring = ring.filter((p, i) => ring.length <= 3 || turn(at(i - 1), p, at(i + 1)) !== 0);
  }
  if (ring.length === 3 && turn(at(0), at(1), at(2)) > 0) parts.push(convexFrom(ring));
  return parts;
}

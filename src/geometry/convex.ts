import { compareX, compareY, lineThrough, meet, reversed, samePoint, side, type Line, type Point } from './point.ts';

/**
 * A convex polygon. points run clockwise as seen on screen (y down), no three on a line;
 * lines[i] carries the edge from points[i] to the next point, its front inside.
 * The lines are kept so that every new corner is the crossing of two original lines and numbers stay small.
 */
export interface Convex {
  readonly points: readonly Point[];
  readonly lines: readonly Line[];
}

/** @returns the polygon through these corners; they must be convex, clockwise on screen, no three on a line */
export function convexFrom(points: readonly Point[]): Convex {
  return { points, lines: points.map((p, i) => lineThrough(p, points[(i + 1) % points.length]!)) };
}

/** @returns the rectangle x0 … x1 by y0 … y1 in lattice steps */
export function rectangle(x0: number, y0: number, x1: number, y1: number): Convex {
  return {
    points: [
      { x: x0, y: y0, w: 1 },
      { x: x1, y: y0, w: 1 },
      { x: x1, y: y1, w: 1 },
      { x: x0, y: y1, w: 1 },
    ],
    lines: [
      { a: 0, b: 1, c: y0 },
      { a: -1, b: 0, c: -x1 },
      { a: 0, b: -1, c: -y1 },
      { a: 1, b: 0, c: x0 },
    ],
  };
}

/**
 * Cuts a convex polygon by a line.
 * @returns the part in front of and the part behind the line; null for a part without area
 */
export function split(region: Convex, cut: Line): { readonly front: Convex | null; readonly back: Convex | null } {
  const sides = region.points.map((p) => side(cut, p));
  const anyFront = sides.includes(1);
  const anyBack = sides.includes(-1);
  if (!anyBack) return { front: region, back: null };
  if (!anyFront) return { front: null, back: region };
  return { front: clip(region, sides, cut, 1), back: clip(region, sides, reversed(cut), -1) };
}

/** Keeps the part on the wanted side; `cut` has that side as its front. */
function clip(region: Convex, sides: readonly number[], cut: Line, wanted: number): Convex {
  const points: Point[] = [];
  const lines: Line[] = [];
  const n = region.points.length;
  for (let i = 0; i < n; i++) {
    const here = sides[i]!;
    const next = sides[(i + 1) % n]!;
    const line = region.lines[i]!;
    if (here === wanted) {
      points.push(region.points[i]!);
      lines.push(line);
      if (next === -wanted) {
        points.push(meet(line, cut));
        lines.push(cut);
      }
    } else if (here === 0) {
      // Leaving the kept side through a corner, the cut is the next edge; entering through one, the old edge is.
      points.push(region.points[i]!);
      lines.push(next === wanted ? line : cut);
    } else if (next === wanted) {
      points.push(meet(line, cut));
      lines.push(line);
    }
  }
  return { points, lines };
}

/** @returns the part of a region in front of all the given lines, null when it has no area */
export function clipAll(region: Convex, fronts: readonly Line[]): Convex | null {
  let rest: Convex | null = region;
  for (const line of fronts) {
    if (rest === null) return null;
    rest = split(rest, line).front;
  }
  return rest;
}

/** @returns the chord that a line cuts from a convex polygon, ends in the order of compareAlong; null when it only touches */
export function chord(region: Convex, cut: Line): readonly [Point, Point] | null {
  const ends: Point[] = [];
  const n = region.points.length;
  const sides = region.points.map((p) => side(cut, p));
  if (!sides.includes(1) || !sides.includes(-1)) return null;
  for (let i = 0; i < n; i++) {
    if (sides[i] === 0) ends.push(region.points[i]!);
    else if (sides[i]! * sides[(i + 1) % n]! < 0) ends.push(meet(region.lines[i]!, cut));
  }
  const [p, q] = ends as [Point, Point];
  return (compareX(p, q) || compareY(p, q)) <= 0 ? [p, q] : [q, p];
}

/** The smallest axis-parallel box around points; each side is the coordinate of some point, kept exact as that point. */
export interface Box {
  readonly left: Point;
  readonly right: Point;
  readonly top: Point;
  readonly bottom: Point;
}

/** @returns the box around a polygon's corners */
export function box(points: readonly Point[]): Box {
  let [left, right, top, bottom] = [points[0]!, points[0]!, points[0]!, points[0]!];
  for (const p of points) {
    if (compareX(p, left) < 0) left = p;
    if (compareX(p, right) > 0) right = p;
    if (compareY(p, top) < 0) top = p;
    if (compareY(p, bottom) > 0) bottom = p;
  }
  return { left, right, top, bottom };
}

/** @returns which corner is a polygon's least one: top-left-most by x, then y */
export function leastCorner(points: readonly Point[]): number {
  let least = 0;
  for (let i = 1; i < points.length; i++) {
    const order = compareX(points[i]!, points[least]!) || compareY(points[i]!, points[least]!);
    if (order < 0) least = i;
  }
  return least;
}

/** @returns the polygon's corners starting from its least corner, for comparing outlines */
export function fromLeastCorner(points: readonly Point[]): readonly Point[] {
  const least = leastCorner(points);
  return least === 0 ? points : [...points.slice(least), ...points.slice(0, least)];
}

/** @returns whether two outlines are the same polygon */
export function sameOutline(p: readonly Point[], q: readonly Point[]): boolean {
  const n = p.length;
  if (n !== q.length) return false;
  const [a, b] = [leastCorner(p), leastCorner(q)];
  for (let i = 0; i < n; i++) if (!samePoint(p[(a + i) % n]!, q[(b + i) % n]!)) return false;
  return true;
}

import { twiceArea } from '../geometry/patchwork/twice-area.ts';
import type { DrawnSeam, LatticePoint } from './block.ts';
import { crossingDenominators } from './crossings.ts';
import { leastCommonMultiple } from './lattice.ts';
import { MAX_STEPS } from './limits.ts';
import { boundsOf, boundsOverlap, doubleArea, tidyOutline, turn, whereIs, type Outline } from './outline.ts';
import type { Region } from './overlay.ts';

/*
 * Areas divided by drawn seams. A seam divides only what it passes right through, alone or together with others; where it ends
 * inside an area, the cloth hangs together round its end.
 */

/**
 * @returns how much finer the lattice must be for seams to cross each other and the outlines of a region on lattice points;
 * null where that is more than MAX_STEPS times
 */
export function divisionFactor({ outer, holes }: Region, seams: readonly DrawnSeam[]): number | null {
  const near = seamsNear(outer, seams);
  let factor = 1;
  for (const [i, seam] of near.entries()) {
    for (const outline of [outer, ...holes, ...near.slice(i + 1)]) {
      for (const denominator of crossingDenominators(seam, outline)) {
        factor = leastCommonMultiple(factor, denominator);
        if (factor > MAX_STEPS) return null;
      }
    }
  }
  return factor;
}

/**
 * Divides a region along seams. All must cross on lattice points: see `divisionFactor`.
 * @returns the parts, the region itself where no seam divides it
 */
export function dividedBy(region: Region, seams: readonly DrawnSeam[]): readonly Region[] {
  const boundary = [region.outer, ...region.holes];
  let pieces = piecesInside(region, seamsNear(region.outer, seams));
  for (;;) {
    if (pieces.length === 0) return [region];
    const loops = facesOf(boundary, pieces);
    // A piece with the same area on both sides divides nothing.
    const sides = new Map<string, number>();
    loops.forEach((loop, i) => loop.forEach((from, at) => sides.set(edgeName(from, loop[(at + 1) % loop.length]!), i)));
    const dividing = pieces.filter(([from, to]) => sides.get(edgeName(from, to)) !== sides.get(edgeName(to, from)));
    if (dividing.length === pieces.length) return regionsOf(loops.flatMap(simpleLoops));
    pieces = dividing;
  }
}

type Piece = readonly [LatticePoint, LatticePoint];

const nameOf = ([x, y]: LatticePoint): string => `${x},${y}`;
const edgeName = (from: LatticePoint, to: LatticePoint): string => `${nameOf(from)} ${nameOf(to)}`;
const edgesOf = (outline: Outline): readonly Piece[] => outline.map((from, i) => [from, outline[(i + 1) % outline.length]!] as const);

/** @returns the seams whose box shares area with that of an outline, or crosses it */
function seamsNear(outline: Outline, seams: readonly DrawnSeam[]): readonly DrawnSeam[] {
  const bounds = boundsOf(outline);
  return seams.filter((seam) => boundsOverlap(boundsOf(seam), bounds));
}

/** @returns the seams cut up where they meet each other or an outline, each piece inside the region once */
function piecesInside({ outer, holes }: Region, seams: readonly DrawnSeam[]): readonly Piece[] {
  const others: readonly Piece[] = [...[outer, ...holes].flatMap(edgesOf), ...seams];
  const found = new Map<string, Piece>();
  for (const seam of seams) {
    const places = pointsAlong(seam, others);
    for (let i = 1; i < places.length; i++) {
      const [from, to] = [places[i - 1]!, places[i]!];
      const middle = { x: from[0] + to[0], y: from[1] + to[1], w: 2 };
      const inside = whereIs(middle, outer) === 'inside' && holes.every((hole) => whereIs(middle, hole) === 'outside');
      if (inside && !found.has(edgeName(to, from))) found.set(edgeName(from, to), [from, to]);
    }
  }
  return [...found.values()];
}

/** @returns the ends of a stretch and the places where others meet it, in order along it */
function pointsAlong([from, to]: Piece, others: readonly Piece[]): readonly LatticePoint[] {
  const found = new Map<string, LatticePoint>();
  const along = ([x, y]: LatticePoint): number => (x - from[0]) * (to[0] - from[0]) + (y - from[1]) * (to[1] - from[1]);
  const length = along(to);
  const take = (point: LatticePoint): void => {
    const at = along(point);
    if (at >= 0 && at <= length) found.set(nameOf(point), point);
  };
  take(from);
  take(to);
  for (const [p, q] of others) {
    const [a, b] = [turn(from, to, p), turn(from, to, q)];
    if (a === 0) take(p);
    if (b === 0) take(q);
    if (a * b >= 0) continue;
    const [c, d] = [turn(p, q, from), turn(p, q, to)];
    // Crossing at an end of this stretch, or beyond it.
    if (c * d >= 0) continue;
    const share = (axis: 0 | 1): number => p[axis] + exactShare(q[axis] - p[axis], Math.abs(a), Math.abs(a) + Math.abs(b));
    take([share(0), share(1)]);
  }
  return [...found.values()].sort((p, q) => along(p) - along(q));
}

/** @returns value · n / d, a whole number; n and d up to 2^34 */
const exactShare = (value: number, n: number, d: number): number => Number((BigInt(value) * BigInt(n)) / BigInt(d));

/**
 * Walks round every area between the outlines of a region and pieces of seams.
 * @returns one closed walk for each edge of an area: clockwise as seen on screen round it, the other way round what it surrounds
 */
function facesOf(boundary: readonly Outline[], pieces: readonly Piece[]): readonly Outline[] {
  const [outer, ...holes] = boundary;
  // A hole may touch another outline in the middle of an edge.
  const corners = [...boundary.flat(), ...pieces.flat()];
  const edges: Piece[] = [
    ...[clockwise(outer!, true), ...holes.map((hole) => clockwise(hole, false))].flatMap((outline) => edgesOf(withPoints(outline, corners))),
    ...pieces,
    ...pieces.map(([from, to]): Piece => [to, from]),
  ];
  const leaving = new Map<string, Piece[]>();
  for (const edge of edges) {
    const name = nameOf(edge[0]);
    const known = leaving.get(name);
    if (known) known.push(edge);
    else leaving.set(name, [edge]);
  }
  const walked = new Set<Piece>();
  const loops: Outline[] = [];
  for (const first of edges) {
    if (walked.has(first)) continue;
    const loop: LatticePoint[] = [];
    for (let edge = first; !walked.has(edge); edge = sharpestRight(edge, leaving.get(nameOf(edge[1]))!)) {
      walked.add(edge);
      loop.push(edge[0]);
    }
    loops.push(loop);
  }
  return loops;
}

const clockwise = (outline: Outline, wanted: boolean): Outline => (twiceArea(outline) > 0 === wanted ? outline : outline.toReversed());

/** @returns an outline with those of the points that lie on its edges as corners of their own */
function withPoints(outline: Outline, points: readonly LatticePoint[]): Outline {
  return edgesOf(outline).flatMap(([from, to]) => {
    const along = ([x, y]: LatticePoint): number => (x - from[0]) * (to[0] - from[0]) + (y - from[1]) * (to[1] - from[1]);
    const on = new Map<string, LatticePoint>();
    for (const point of points) if (turn(from, to, point) === 0 && along(point) > 0 && along(point) < along(to)) on.set(nameOf(point), point);
    return [from, ...[...on.values()].sort((p, q) => along(p) - along(q))];
  });
}

/** @returns of the edges that leave where one arrives the first one met turning from its way back with the area between them: the one that keeps the area to its right */
function sharpestRight([from, at]: Piece, leaving: readonly Piece[]): Piece {
  const back: LatticePoint = [from[0] - at[0], from[1] - at[1]];
  const ways = leaving.map((edge) => ({ edge, way: [edge[1][0] - at[0], edge[1][1] - at[1]] as const }));
  return ways.reduce((best, next) => (compareTurns(back, next.way, best.way) < 0 ? next : best)).edge;
}

/** @returns whether turning from `back`, anticlockwise as seen on screen, p is met before q (< 0) or after it (> 0); `back` itself comes last */
function compareTurns(back: LatticePoint, p: LatticePoint, q: LatticePoint): number {
  const half = (v: LatticePoint): number => {
    const cross = v[0] * back[1] - v[1] * back[0];
    const dot = v[0] * back[0] + v[1] * back[1];
    if (cross > 0) return 0;
    if (cross < 0) return 2;
    return dot < 0 ? 1 : 3;
  };
  return half(p) - half(q) || p[0] * q[1] - p[1] * q[0];
}

/** @returns a closed walk taken apart where it comes to a place again */
function simpleLoops(walk: Outline): readonly Outline[] {
  const loops: Outline[] = [];
  const open: LatticePoint[] = [];
  for (const point of walk) {
    const at = open.findIndex((each) => each[0] === point[0] && each[1] === point[1]);
    if (at >= 0) loops.push(open.splice(at));
    open.push(point);
  }
  loops.push(open);
  return loops.map(tidyOutline).filter((loop) => loop.length > 2);
}

/** @returns regions of clockwise outlines, with the others as holes of the least one that holds them */
function regionsOf(loops: readonly Outline[]): readonly Region[] {
  const regions = loops.filter((loop) => twiceArea(loop) > 0).map((outer) => ({ outer, holes: [] as Outline[], area: doubleArea(outer) }));
  regions.sort((a, b) => a.area - b.area);
  for (const hole of loops) {
    if (twiceArea(hole) >= 0) continue;
    const area = doubleArea(hole);
    regions.find((region) => region.area > area && holdsOutline(region.outer, hole))?.holes.push(hole);
  }
  return regions.map(({ outer, holes }) => ({ outer, holes }));
}

/** @returns whether an outline that crosses no edge of another lies inside it */
const holdsOutline = (outer: Outline, inner: Outline): boolean =>
  edgesOf(inner).every(
    ([p, q]) => whereIs({ x: p[0], y: p[1], w: 1 }, outer) !== 'outside' && whereIs({ x: p[0] + q[0], y: p[1] + q[1], w: 2 }, outer) !== 'outside',
  );

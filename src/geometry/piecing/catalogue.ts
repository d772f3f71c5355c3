import { lineThrough, samePoint, type Line, type Point } from '../point.ts';
import type { Stretch } from '../patchwork/stretches.ts';
import type { UnitKind } from './assembly.ts';

/** A rectangle on the lattice, in steps. */
export interface Rect {
  readonly x0: number;
  readonly y0: number;
  readonly x1: number;
  readonly y1: number;
}

/** A unit of the trade recognised in a rectangle: its kind and its seams' lines, the seam that is sewn last first. */
export interface Recognised {
  readonly kind: UnitKind;
  readonly lines: readonly Line[];
  /** How many corners a corner-triangle unit has; 0 for other kinds. */
  readonly corners: number;
}

/** No unit of the catalogue has more. */
const MOST_STRETCHES = 4;

/** @returns the exact point (x/2, y/2) for whole x and y */
function half(x: number, y: number): Point {
  return x % 2 === 0 && y % 2 === 0 ? { x: x / 2, y: y / 2, w: 1 } : { x, y, w: 2 };
}

const at = (x: number, y: number): Point => ({ x, y, w: 1 });

/** The same stretch whichever way round it is given. */
const isStretch = (s: Stretch, p: Point, q: Point): boolean =>
  (samePoint(s.from, p) && samePoint(s.to, q)) || (samePoint(s.from, q) && samePoint(s.to, p));

/**
 * Recognises the trade's units from what is drawn inside a rectangle.
 * @param rect the rectangle; inside: the maximal slanted stretches in it (nothing level or upright is drawn inside)
 * @returns null when it is no unit of the catalogue
 */
export function recognise(rect: Rect, inside: readonly Stretch[]): Recognised | null {
  if (inside.length === 0 || inside.length > MOST_STRETCHES) return null;
  const { x0, y0, x1, y1 } = rect;
  const [w, h] = [x1 - x0, y1 - y0];
  const [tl, tr, br, bl] = [at(x0, y0), at(x1, y0), at(x1, y1), at(x0, y1)];
  const middle = half(x0 + x1, y0 + y1);
  const has = (p: Point, q: Point): boolean => inside.some((s) => isStretch(s, p, q));
  const diagonals: readonly (readonly [Point, Point])[] = [
    [tl, br],
    [tr, bl],
  ];
  const full = diagonals.filter(([p, q]) => has(p, q));

  if (full.length === 1 && inside.length === 1) {
    return { kind: w === h ? 'half-square triangle' : 'half-rectangle triangle', lines: [lineThrough(...full[0]!)], corners: 0 };
  }
  if (w === h) {
    if (full.length === 2 && inside.length === 2) {
      return { kind: 'quarter-square triangle', lines: [lineThrough(tl, br), lineThrough(tr, bl)], corners: 0 };
    }
    if (full.length === 1 && inside.length === 2) {
      const other = full[0] === diagonals[0] ? diagonals[1]! : diagonals[0]!;
      if (other.some((corner) => has(corner, middle))) {
        return { kind: 'split quarter-square triangle', lines: [lineThrough(...full[0]!), lineThrough(...other)], corners: 0 };
      }
    }
    if (inside.length === 4) {
      const mids = [half(x0 + x1, 2 * y0), half(2 * x1, y0 + y1), half(x0 + x1, 2 * y1), half(2 * x0, y0 + y1)];
      if (mids.every((p, i) => has(p, mids[(i + 1) % 4]!))) {
        const [top, right, bottom, left] = mids as [Point, Point, Point, Point];
        const lines = [lineThrough(left, top), lineThrough(right, bottom), lineThrough(top, right), lineThrough(bottom, left)];
        return { kind: 'square in a square', lines, corners: 0 };
      }
    }
  }
  if (inside.length === 2) {
    const apexes: readonly (readonly [Point, Point, Point])[] = [
      [half(x0 + x1, 2 * y0), bl, br],
      [half(2 * x1, y0 + y1), tl, bl],
      [half(x0 + x1, 2 * y1), tr, tl],
      [half(2 * x0, y0 + y1), br, tr],
    ];
    for (const [apex, p, q] of apexes) {
      if (!has(apex, p) || !has(apex, q)) continue;
      const upright = apex === apexes[0]![0] || apex === apexes[2]![0];
      const geese = upright ? w === 2 * h : h === 2 * w;
      return { kind: geese ? 'flying geese' : 'peak', lines: [lineThrough(apex, p), lineThrough(apex, q)], corners: 0 };
    }
  }
  const corners = inside.map((s) => cornerOf(rect, s));
  if (corners.every((c) => c >= 0) && apart(rect, inside, corners)) {
    return { kind: 'corner-triangle unit', lines: inside.map((s) => lineThrough(s.from, s.to)), corners: inside.length };
  }
  return null;
}

/** @returns whether the cut-off corners are all different ones and none reaches into its neighbour */
function apart({ x0, y0, x1, y1 }: Rect, inside: readonly Stretch[], corners: readonly number[]): boolean {
  if (new Set(corners).size < corners.length) return false;
  const legs = [0, 1, 2, 3].map((corner) => {
    const cut = inside[corners.indexOf(corner)];
    return cut ? { n: cut.to.x * cut.from.w - cut.from.x * cut.to.w, d: cut.from.w * cut.to.w } : { n: 0, d: 1 };
  });
  // Sides in the order top, right, bottom, left, each between two corners.
  return legs.every((leg, i) => {
    const next = legs[(i + 1) % 4]!;
    const side = i % 2 === 0 ? x1 - x0 : y1 - y0;
    return leg.n * next.d + next.n * leg.d <= side * leg.d * next.d;
  });
}

/** @returns which corner (0 top left, clockwise) the stretch cuts off at 45°, −1 when it does not */
function cornerOf({ x0, y0, x1, y1 }: Rect, { from, to }: Stretch): number {
  const corners: readonly (readonly [number, number])[] = [
    [x0, y0],
    [x1, y0],
    [x1, y1],
    [x0, y1],
  ];
  // A square's own diagonal leaves a triangle, not a base with a corner.
  const square = x1 - x0 === y1 - y0;
  if (square && [from, to].every((p) => (isUpright(p, x0) || isUpright(p, x1)) && (isLevel(p, y0) || isLevel(p, y1)))) return -1;
  return corners.findIndex(([x, y]) => cutsOff(x, y, from, to) || cutsOff(x, y, to, from));
}

const isLevel = (p: Point, y: number): boolean => p.y === y * p.w;
const isUpright = (p: Point, x: number): boolean => p.x === x * p.w;

/** @returns whether two points, one level with a corner and one above or below it, are equally far from it */
const cutsOff = (x: number, y: number, level: Point, upright: Point): boolean =>
  isLevel(level, y) && isUpright(upright, x) && Math.abs(level.x - x * level.w) * upright.w === Math.abs(upright.y - y * upright.w) * level.w;

import { compareAlong, gcd, type Line, type Point } from '../point.ts';
import type { Boundary } from './boundaries.ts';
import type { Drawing, Lattice } from './drawing.ts';

/** One of the eight symmetries of the square as x' = a·x + b·y + dx, y' = c·x + d·y + dy, for a block of a given size. */
export interface Symmetry {
  readonly a: number;
  readonly b: number;
  readonly c: number;
  readonly d: number;
  readonly dx: number;
  readonly dy: number;
}

/** @returns the eight symmetries for a block of this size, each moving it back to start at 0, 0; doing nothing comes first */
export function symmetriesOf(width: number, height: number): readonly Symmetry[] {
  const found: Symmetry[] = [];
  for (const [a, d] of [[1, 1], [-1, 1], [1, -1], [-1, -1]] as const) {
    found.push({ a, b: 0, c: 0, d, dx: a < 0 ? width : 0, dy: d < 0 ? height : 0 });
  }
  for (const [b, c] of [[1, 1], [-1, 1], [1, -1], [-1, -1]] as const) {
    found.push({ a: 0, b, c, d: 0, dx: b < 0 ? height : 0, dy: c < 0 ? width : 0 });
  }
  return found;
}

/** @returns whether a symmetry turns the plane over */
export const mirrors = ({ a, b, c, d }: Symmetry): boolean => a * d - b * c < 0;

/** @returns where a symmetry takes a point */
export const taken = (s: Symmetry, p: Point): Point => ({
  x: s.a * p.x + s.b * p.y + s.dx * p.w,
  y: s.c * p.x + s.d * p.y + s.dy * p.w,
  w: p.w,
});

/** @returns the symmetry that undoes another */
export function inverse(s: Symmetry): Symmetry {
  // The linear part is orthogonal: its inverse is its transpose.
  const [a, b, c, d] = [s.a, s.c, s.b, s.d];
  return { a, b, c, d, dx: -(a * s.dx + b * s.dy) + 0, dy: -(c * s.dx + d * s.dy) + 0 };
}

/** @returns an outline after a symmetry, clockwise again */
export function takenOutline(s: Symmetry, outline: readonly Point[]): readonly Point[] {
  const points = outline.map((p) => taken(s, p));
  return mirrors(s) ? points.reverse() : points;
}

/** @returns the drawing after a symmetry */
export function takenDrawing(s: Symmetry, drawing: Drawing): Drawing {
  const at = ([x, y]: Lattice): Lattice => {
    const p = taken(s, { x, y, w: 1 });
    return [p.x, p.y];
  };
  const swapped = s.a === 0;
  const levels = (values: readonly number[], sign: number, far: number): readonly number[] =>
    values.map((v) => (sign < 0 ? far - v : v)).sort((p, q) => p - q);
  const { width, height, columns, rows } = drawing;
  return {
    width: swapped ? height : width,
    height: swapped ? width : height,
    columns: swapped ? levels(rows, s.b, height) : levels(columns, s.a, width),
    rows: swapped ? levels(columns, s.c, width) : levels(rows, s.d, height),
    ground: drawing.ground,
    patches: drawing.patches.map((patch) => ({ ...patch, points: patch.points.map(at) })),
    seams: drawing.seams.map(([p, q]) => [at(p), at(q)] as const),
    ...(drawing.pins ? { pins: drawing.pins.map((pin) => ({ ...pin, from: at(pin.from), to: at(pin.to) })) } : {}),
  };
}

/** Mixes whole numbers into a 32-bit number; equal input, equal output. */
function mixed(seed: number, ...values: readonly number[]): number {
  let h = seed | 0;
  for (const v of values) {
    h = Math.imul(h ^ (v | 0), 0x9e3779b1);
    h = Math.imul(h ^ ((v / 0x100000000) | 0) ^ (h >>> 15), 0x85ebca6b);
  }
  return (h ^ (h >>> 13)) | 0;
}

/** A number for x/w as a part of the whole extent: the same on any lattice. */
function partOf(n: number, d: number, whole: number): readonly [number, number] {
  const [a, b] = [n, d * whole];
  const common = gcd(a, b) || 1;
  return [a / common, b / common];
}

/**
 * Numbers for the fabrics that do not depend on what they are called: from where each one's edges lie, seen from all sides.
 * Two fabrics get the same number only when no view tells them apart by that.
 */
function fabricNumbers(width: number, height: number, marks: readonly Mark[]): ReadonlyMap<string, number> {
  const numbers = new Map<string, number>();
  for (const s of symmetriesOf(width, height)) {
    const far = Math.max(width, height);
    for (const { from, to, front, back } of marks) {
      const place = mixed(5, ...[from, to].flatMap((p) => at(taken(s, p), far)).sort((p, q) => p - q));
      for (const fabric of [front, back]) if (fabric !== '') numbers.set(fabric, ((numbers.get(fabric) ?? 0) + Math.imul(place, place | 1)) | 0);
    }
  }
  return numbers;
}

const at = (p: Point, far: number): readonly number[] => [...partOf(p.x, p.w, far), ...partOf(p.y, p.w, far)];

/** One drawn stretch; fabrics are empty for a seam inside one cloth. */
interface Mark {
  readonly from: Point;
  readonly to: Point;
  readonly line: Line;
  readonly front: string;
  readonly back: string;
}

/**
 * Chooses the one among the eight views of a picture that does not depend on which of them was given, nor on the lattice
 * or on what the fabrics are called, so that turning, mirroring or renaming can change nothing in how it is pieced.
 * @returns the symmetry that leads to the chosen view; the one that does nothing when it is among the equally good
 */
export function canonicalView(width: number, height: number, boundaries: Iterable<Boundary>): Symmetry {
  const marks: Mark[] = [];
  for (const { line, drawn, between } of boundaries) {
    for (const s of between) marks.push({ ...s, line });
    for (const s of drawn) marks.push({ ...s, line, front: '', back: '' });
  }
  const numbers = fabricNumbers(width, height, marks);
  const far = Math.max(width, height);
  let [best, bestHigh, bestLow] = [symmetriesOf(width, height)[0]!, Infinity, Infinity];
  for (const s of symmetriesOf(width, height)) {
    let [high, low] = [width === height ? 0 : s.a === 0 === height > width ? 1 : 2, 0];
    for (const mark of marks) {
      const [p, q] = [taken(s, mark.from), taken(s, mark.to)];
      const [from, to] = compareAlong(p, q) < 0 ? [p, q] : [q, p];
      // Where the line's front comes to lie, in the undirected form of the new line.
      const [a, b] = [s.a * mark.line.a + s.b * mark.line.b, s.c * mark.line.a + s.d * mark.line.b];
      const kept = a > 0 || (a === 0 && b > 0);
      const [front, back] = (kept ? [mark.front, mark.back] : [mark.back, mark.front]).map((fabric) => numbers.get(fabric!) ?? 0);
      const h = mixed(3, ...at(from, far), ...at(to, far), front!, back!);
      high = (high + h) | 0;
      low = (low + Math.imul(h, h | 1)) | 0;
    }
    if (high < bestHigh || (high === bestHigh && low < bestLow)) [best, bestHigh, bestLow] = [s, high, low];
  }
  return best;
}

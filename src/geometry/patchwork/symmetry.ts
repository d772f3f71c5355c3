import { compareX, compareY, gcd, type Line, type Point } from '../point.ts';
import type { Boundary } from './boundaries.ts';
import type { Convex } from '../convex.ts';
import type { Drawing, Lattice } from './drawing.ts';
import type { Atom, Patchwork } from './patchwork.ts';

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

/** @returns whether a symmetry leaves everything where it is */
export const isStill = ({ a, d }: Symmetry): boolean => a === 1 && d === 1;

/** @returns whether a symmetry turns the plane over */
export const mirrors = ({ a, b, c, d }: Symmetry): boolean => a * d - b * c < 0;

/** @returns by how many quarter turns clockwise a symmetry that does not mirror turns the plane */
export const turnOf = ({ a, c }: Symmetry): 0 | 1 | 2 | 3 => (a === 1 ? 0 : c === 1 ? 1 : a === -1 ? 2 : 3);

/** @returns where a symmetry takes a point */
export const taken = (s: Symmetry, p: Point): Point => ({
  x: s.a * p.x + s.b * p.y + s.dx * p.w,
  y: s.c * p.x + s.d * p.y + s.dy * p.w,
  w: p.w,
});

/** @returns where a symmetry takes a line: its front lies where the front comes to lie */
export function takenLine(s: Symmetry, line: Line): Line {
  const [a, b] = [s.a * line.a + s.b * line.b + 0, s.c * line.a + s.d * line.b + 0];
  return { a, b, c: line.c + a * s.dx + b * s.dy };
}

/** @returns a convex polygon after a symmetry, clockwise again */
function takenConvex(s: Symmetry, { points, lines }: Convex): Convex {
  const moved = lines.map((line) => takenLine(s, line));
  // Read backwards, every edge begins where it ended.
  return { points: takenOutline(s, points), lines: mirrors(s) ? [...moved.slice(0, -1).reverse(), moved.at(-1)!] : moved };
}

/** @returns the patchwork after a symmetry */
export function takenPatchwork(s: Symmetry, patchwork: Patchwork): Patchwork {
  if (isStill(s)) return patchwork;
  const drawing = takenDrawing(s, patchwork.drawing);
  const { width, height } = drawing;
  const [columns, rows] = takenLevels(s, patchwork.columns, patchwork.rows, width, height);
  const [across, down, oldAcross] = [columns.length - 1, rows.length - 1, patchwork.columns.length - 1];
  const panes: (readonly Atom[])[] = [];
  for (let j = 0; j < down; j++) {
    for (let i = 0; i < across; i++) {
      const [left, top] = [s.a + s.b < 0 ? across - 1 - i : i, s.c + s.d < 0 ? down - 1 - j : j];
      const pane = s.a === 0 ? patchwork.panes[top + left * oldAcross]! : patchwork.panes[left + top * oldAcross]!;
      panes.push(pane.map(({ shape, label }) => ({ shape: takenConvex(s, shape), label })));
    }
  }
  return { ...patchwork, width, height, columns, rows, panes, drawing };
}

function takenLevels(
  s: Symmetry,
  columns: readonly number[],
  rows: readonly number[],
  width: number,
  height: number,
): readonly [readonly number[], readonly number[]] {
  const levels = (values: readonly number[], sign: number, far: number): readonly number[] =>
    sign < 0 ? values.map((v) => far - v).sort((p, q) => p - q) : values;
  return s.a === 0 ? [levels(rows, s.b, width), levels(columns, s.c, height)] : [levels(columns, s.a, width), levels(rows, s.d, height)];
}

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
  const [width, height] = swapped ? [drawing.height, drawing.width] : [drawing.width, drawing.height];
  const [columns, rows] = takenLevels(s, drawing.columns, drawing.rows, width, height);
  return {
    width,
    height,
    columns,
    rows,
    ground: drawing.ground,
    ...(drawing.groundRole !== undefined && { groundRole: drawing.groundRole }),
    patches: drawing.patches.map((patch) => ({ ...patch, points: patch.points.map(at) })),
    seams: drawing.seams.map(([p, q]) => [at(p), at(q)] as const),
    ...(drawing.pins ? { pins: drawing.pins.map((pin) => ({ ...pin, from: at(pin.from), to: at(pin.to) })) } : {}),
  };
}

/** Mixes the first whole numbers of a list into a 32-bit number; equal input, equal output. */
function mixed(seed: number, values: Float64Array, count: number): number {
  let h = seed | 0;
  for (let i = 0; i < count; i++) {
    const v = values[i]!;
    h = Math.imul(h ^ (v | 0), 0x9e3779b1);
    h = Math.imul(h ^ ((v / 0x100000000) | 0) ^ (h >>> 15), 0x85ebca6b);
  }
  return (h ^ (h >>> 13)) | 0;
}

/** Where the distances of a point from the sides of the block stand among its eight numbers: each a part n/d of the whole extent. */
const [LEFT, RIGHT, TOP, BOTTOM] = [0, 2, 4, 6];
/** Where the second point of a mark begins, and the next mark. */
const [SECOND, NEXT] = [8, 16];

/** One drawn stretch; fabrics are empty for a seam inside one cloth. */
interface Mark {
  /** The order of its ends from left to right, and from top to bottom. */
  readonly across: number;
  readonly down: number;
  readonly line: Line;
  readonly front: string;
  readonly back: string;
}

/**
 * How far the ends of marks lie from each side of the block, as parts of its whole extent in lowest terms: the same on any lattice.
 * One list holds them all, the numbers of one mark after those of another.
 */
type Reach = readonly number[];

function addReach(reach: number[], { x, y, w }: Point, width: number, height: number): void {
  const whole = w * Math.max(width, height);
  addPart(reach, x, whole);
  addPart(reach, width * w - x, whole);
  addPart(reach, y, whole);
  addPart(reach, height * w - y, whole);
}

function addPart(reach: number[], n: number, whole: number): void {
  const common = gcd(n, whole) || 1;
  reach.push(n / common, whole / common);
}

/** @returns where how far across, and how far down, a point lies after a symmetry stands among its numbers */
function places(s: Symmetry): readonly [number, number] {
  if (s.a === 0) return [s.b > 0 ? TOP : BOTTOM, s.c > 0 ? LEFT : RIGHT];
  return [s.a > 0 ? LEFT : RIGHT, s.d > 0 ? TOP : BOTTOM];
}

const scratch = new Float64Array(10);

function take(reach: Reach, from: number, to: number): void {
  scratch[to] = reach[from]!;
  scratch[to + 1] = reach[from + 1]!;
}

/**
 * Numbers for the fabrics that do not depend on what they are called: from where each one's edges lie, seen from all sides.
 * Two fabrics get the same number only when no view tells them apart by that.
 */
function fabricNumbers(marks: readonly Mark[], reach: Reach): ReadonlyMap<string, number> {
  const numbers = new Map<string, number>();
  for (let mark = 0; mark < marks.length; mark++) {
    const { front, back } = marks[mark]!;
    if (front === '' && back === '') continue;
    const at = mark * NEXT;
    let sum = 0;
    // Of the eight views those that only exchange across and down put the same distances in order.
    for (const x of [LEFT, RIGHT]) {
      for (const y of [TOP, BOTTOM]) {
        take(reach, at + x, 0);
        take(reach, at + y, 2);
        take(reach, at + SECOND + x, 4);
        take(reach, at + SECOND + y, 6);
        for (let i = 1; i < 8; i++) {
          const v = scratch[i]!;
          let k = i;
          for (; k > 0 && scratch[k - 1]! > v; k--) scratch[k] = scratch[k - 1]!;
          scratch[k] = v;
        }
        const place = mixed(5, scratch, 8);
        sum = (sum + 2 * Math.imul(place, place | 1)) | 0;
      }
    }
    numbers.set(front, ((numbers.get(front) ?? 0) + sum) | 0);
    numbers.set(back, ((numbers.get(back) ?? 0) + sum) | 0);
  }
  return numbers;
}

/**
 * Chooses the one among the eight views of a picture that does not depend on which of them was given, nor on the lattice
 * or on what the fabrics are called, so that turning, mirroring or renaming can change nothing in how it is pieced.
 * @returns the symmetry that leads to the chosen view; the one that does nothing when it is among the equally good
 */
export function canonicalView(width: number, height: number, boundaries: Iterable<Boundary>): Symmetry {
  const marks: Mark[] = [];
  const reach: number[] = [];
  const mark = (from: Point, to: Point, line: Line, front: string, back: string): void => {
    marks.push({ across: compareX(from, to), down: compareY(from, to), line, front, back });
    addReach(reach, from, width, height);
    addReach(reach, to, width, height);
  };
  for (const { line, drawn, between } of boundaries) {
    for (const { from, to, front, back } of between) mark(from, to, line, front, back);
    for (const { from, to } of drawn) mark(from, to, line, '', '');
  }
  const numbers = fabricNumbers(marks, reach);
  const views = symmetriesOf(width, height);
  let [best, bestHigh, bestLow] = [views[0]!, Infinity, Infinity];
  for (const s of views) {
    let [high, low] = [width === height ? 0 : s.a === 0 === height > width ? 1 : 2, 0];
    const [x, y] = places(s);
    for (let i = 0; i < marks.length; i++) {
      const { across, down, line, front, back } = marks[i]!;
      const order = s.a === 0 ? s.b * down || s.c * across : s.a * across || s.d * down;
      const [first, second] = order < 0 ? [i * NEXT, i * NEXT + SECOND] : [i * NEXT + SECOND, i * NEXT];
      take(reach, first + x, 0);
      take(reach, first + y, 2);
      take(reach, second + x, 4);
      take(reach, second + y, 6);
      // Where the line's front comes to lie, in the undirected form of the new line.
      const [a, b] = [s.a * line.a + s.b * line.b, s.c * line.a + s.d * line.b];
      const kept = a > 0 || (a === 0 && b > 0);
      scratch[8] = numbers.get(kept ? front : back) ?? 0;
      scratch[9] = numbers.get(kept ? back : front) ?? 0;
      const h = mixed(3, scratch, 10);
      high = (high + h) | 0;
      low = (low + Math.imul(h, h | 1)) | 0;
    }
    if (high < bestHigh || (high === bestHigh && low < bestLow)) [best, bestHigh, bestLow] = [s, high, low];
  }
  return best;
}

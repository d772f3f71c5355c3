import { gcd } from '../geometry/point.ts';
import { good, type Result } from '../measure/problem.ts';
import type { Rational } from '../measure/rational.ts';
import type { Block, DrawnSeam, LatticePoint, Patch, UnitMethod } from './block.ts';
import { leastCommonMultiple, onLattice } from './lattice.ts';
import { MAX_PATCHES, MAX_STEPS } from './limits.ts';
import { boundsOf, boundsOverlap, type Bounds, type Outline } from './outline.ts';
import { doubleAreaOf, regionOf, without, type Region } from './overlay.ts';
import { refused, tooManyPatches } from './problems.ts';

/** A part of a block: its sides, in grid units from the block's top-left corner. They may lie beyond the block. */
export type Window = Readonly<Record<keyof Bounds, Rational>>;

/** What did not fit, by its index in the block before. */
export interface Lost {
  readonly patches: readonly number[];
  readonly seams: readonly number[];
  readonly pins: readonly number[];
  readonly unitMethods: readonly number[];
  readonly pressedSeams: readonly number[];
}

/** What is left of a drawing inside a window; everything keeps its place. */
export interface Cropped {
  readonly block: Block;
  /** What lay outside, or could not be cut off exactly, and is left out. */
  readonly lost: Lost;
  /** Patches and seams cut off at the window's sides. */
  readonly cut: Pick<Lost, 'patches' | 'seams'>;
}

/**
 * Leaves out what lies outside a window and cuts off, exactly, what lies across its sides. A pin, the rectangle of a unit, and
 * how a seam is pressed, is kept whole or left out.
 * @returns the drawing that is left, on its own grid; a problem where the window's sides are too fine to be held
 */
export function cropped(block: Block, window: Window): Result<Cropped> {
  const sides = [window.left, window.top, window.right, window.bottom];
  const held = onLattice(block, sides.reduce((common, { d }) => leastCommonMultiple(common, d), 1));
  if (!held.ok) return held;
  const coarse = boundsIn(window, held.value.denominator);
  // Where slanted edges are cut, corners appear between the lattice's steps: it becomes as fine as they need, while it can be held.
  let factor = 1;
  const unholdable = new Set<Outline | DrawnSeam>();
  const steps = Math.max(block.grid.columns, block.grid.rows) * held.value.denominator;
  for (const outline of [...held.value.patches.map(({ points }) => points), ...held.value.seams]) {
    const needed = cutDenominators(outline, coarse).reduce((common, d) => Math.min(leastCommonMultiple(common, d), MAX_STEPS + 1), factor);
    if (needed * steps <= MAX_STEPS) factor = needed;
    else unholdable.add(outline);
  }
  const fine = onLattice(held.value, factor * held.value.denominator);
  if (!fine.ok) return fine;
  const times = fine.value.denominator / held.value.denominator;
  const bounds = boundsIn(window, fine.value.denominator);
  const { grid, denominator, pins = [], unitMethods = [], pressedSeams = [] } = fine.value;
  const outside = around(bounds, grid.columns * denominator, grid.rows * denominator);

  const patches: Patch[] = [];
  const seams: DrawnSeam[] = [];
  const lost = { patches: [] as number[], seams: [] as number[], pins: [] as number[], unitMethods: [] as number[], pressedSeams: [] as number[] };
  const cut = { patches: [] as number[], seams: [] as number[] };
  fine.value.patches.forEach((patch, i) => {
    const rest = unholdable.has(held.value.patches[i]!.points) ? [] : partsOf(patch.points, bounds, outside);
    if (rest.length === 0) lost.patches.push(i);
    else if (rest.length > 1 || rest[0] !== patch.points) cut.patches.push(i);
    patches.push(...rest.map((points) => (points === patch.points ? patch : { ...patch, points })));
  });
  fine.value.seams.forEach((seam, i) => {
    const rest = unholdable.has(held.value.seams[i]!) ? null : partOf(seam, bounds);
    if (rest === null) lost.seams.push(i);
    else if (rest !== seam) cut.seams.push(i);
    if (rest !== null) seams.push(rest);
  });
  if (patches.length > MAX_PATCHES) return refused(tooManyPatches(patches.length));
  const inside = ({ from, to }: Pick<UnitMethod, 'from' | 'to'>): boolean => holds(bounds, from) && holds(bounds, to);
  const [keptPins, keptUnits, keptSeams] = [pins.filter(inside), unitMethods.filter(inside), pressedSeams.filter(inside)];
  pins.forEach((pin, i) => inside(pin) || lost.pins.push(i));
  unitMethods.forEach((unit, i) => inside(unit) || lost.unitMethods.push(i));
  pressedSeams.forEach((seam, i) => inside(seam) || lost.pressedSeams.push(i));
  const { pins: _, unitMethods: __, pressedSeams: ___, ...rest } = fine.value;
  const untouched = [...Object.values(lost), ...Object.values(cut)].every((indices) => indices.length === 0);
  if (untouched) return good({ block: times === 1 ? held.value : fine.value, lost, cut });
  const kept = {
    ...(keptPins.length > 0 && { pins: keptPins }),
    ...(keptUnits.length > 0 && { unitMethods: keptUnits }),
    ...(keptSeams.length > 0 && { pressedSeams: keptSeams }),
  };
  return good({ block: { ...rest, patches, seams, ...kept }, lost, cut });
}

const boundsIn = ({ left, top, right, bottom }: Window, denominator: number): Bounds => {
  const steps = ({ n, d }: Rational): number => n * (denominator / d);
  return { left: steps(left), top: steps(top), right: steps(right), bottom: steps(bottom) };
};

const holds = ({ left, top, right, bottom }: Bounds, [x, y]: LatticePoint): boolean => x >= left && x <= right && y >= top && y <= bottom;

/** @returns the denominators of the places where slanted edges cross the window's sides */
function cutDenominators(outline: Outline | DrawnSeam, bounds: Bounds): readonly number[] {
  const found: number[] = [];
  outline.forEach((p, i) => {
    const q = outline[(i + 1) % outline.length]!;
    for (const [axis, sides] of [[0, [bounds.left, bounds.right]], [1, [bounds.top, bounds.bottom]]] as const) {
      const run = q[axis] - p[axis];
      const rise = q[1 - axis]! - p[1 - axis]!;
      for (const side of sides) {
        if ((p[axis] - side) * (q[axis] - side) < 0) found.push(Math.abs(run) / gcd(rise * (side - p[axis]), run));
      }
    }
  });
  return found;
}

/** @returns the regions of a block that lie outside a window, none of them sharing area */
function around({ left, top, right, bottom }: Bounds, width: number, height: number): readonly Region[] {
  const box = (x0: number, y0: number, x1: number, y1: number): readonly Region[] =>
    x0 < x1 && y0 < y1 ? [regionOf([[x0, y0], [x1, y0], [x1, y1], [x0, y1]])] : [];
  const [x0, x1] = [Math.max(0, left), Math.min(width, right)];
  return [...box(0, 0, left, height), ...box(right, 0, width, height), ...box(x0, 0, x1, top), ...box(x0, bottom, x1, height)];
}

/** @returns what of an outline lies inside: the outline itself where all of it does */
function partsOf(points: Outline, bounds: Bounds, outside: readonly Region[]): readonly Outline[] {
  if (points.every((point) => holds(bounds, point))) return [points];
  if (!boundsOverlap(boundsOf(points), bounds)) return [];
  const whole = [regionOf(points)];
  const rest = without(whole, outside);
  if (rest === null) return [];
  return doubleAreaOf(rest) === doubleAreaOf(whole) ? [points] : rest.map(({ outer }) => outer);
}

/** @returns what of a seam lies inside: the seam itself where all of it does; null where nothing of any length does */
function partOf(seam: DrawnSeam, bounds: Bounds): DrawnSeam | null {
  let [from, to] = seam;
  for (const [axis, low, high] of [[0, bounds.left, bounds.right], [1, bounds.top, bounds.bottom]] as const) {
    const forward = from[axis] <= to[axis];
    let [first, last] = forward ? [from, to] : [to, from];
    if (last[axis] < low || first[axis] > high) return null;
    if (first[axis] < low) first = onSide(first, last, axis, low);
    if (last[axis] > high) last = onSide(first, last, axis, high);
    [from, to] = forward ? [first, last] : [last, first];
  }
  if (from[0] === to[0] && from[1] === to[1]) return null;
  return from === seam[0] && to === seam[1] ? seam : [from, to];
}

/** @returns where the line through two points has this coordinate; a lattice point, for the lattice was made fine enough */
function onSide(p: LatticePoint, q: LatticePoint, axis: 0 | 1, side: number): LatticePoint {
  const across = p[1 - axis]! + ((q[1 - axis]! - p[1 - axis]!) * (side - p[axis])) / (q[axis] - p[axis]);
  return axis === 0 ? [side, across] : [across, side];
}

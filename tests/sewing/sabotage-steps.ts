import type { Point } from '../../src/geometry/point.ts';
import { add, compare, multiply, ratio, rational, subtract, type Rational } from '../../src/measure/rational.ts';
import type { Plan } from '../../src/sewing/proof-table.ts';
import type { Join, Step, StepPart } from '../../src/sewing/step.ts';

/** Steps taken apart and put together again, exactly, so that a plan can be spoilt without leaving other traces. */

export const across = ({ x, w }: Point): Rational => ratio(BigInt(x), BigInt(w));
export const down = ({ y, w }: Point): Rational => ratio(BigInt(y), BigInt(w));

/** @returns the point so far across and down */
export function pointAt(x: Rational, y: Rational): Point {
  const w = x.d * y.d;
  return { x: x.n * y.d, y: y.n * x.d, w };
}

export const samePlace = (p: Point, q: Point): boolean => p.x * q.w === q.x * p.w && p.y * q.w === q.y * p.w;

export interface Extent {
  readonly left: Rational;
  readonly top: Rational;
  readonly right: Rational;
  readonly bottom: Rational;
}

/** @returns the upright rectangle that holds the points */
export function extentOf(points: readonly Point[]): Extent {
  const [xs, ys] = [points.map(across), points.map(down)];
  const least = (all: readonly Rational[]): Rational => all.reduce((a, b) => (compare(b, a) < 0 ? b : a));
  const most = (all: readonly Rational[]): Rational => all.reduce((a, b) => (compare(b, a) > 0 ? b : a));
  return { left: least(xs), top: least(ys), right: most(xs), bottom: most(ys) };
}

export const widthOf = ({ left, right }: Extent): Rational => subtract(right, left);
export const heightOf = ({ top, bottom }: Extent): Rational => subtract(bottom, top);
export const extentOfStep = ({ parts }: Pick<Step, 'parts'>): Extent => extentOf(parts.flatMap(({ outline }) => outline));

export const shiftedBy = (p: Point, x: Rational, y: Rational): Point => pointAt(add(across(p), x), add(down(p), y));
const less = ({ n, d }: Rational): Rational => ({ n: 0 - n, d });

/** Clockwise on screen about the origin. */
export const quarterTurns = (p: Point, turns: number): Point => (turns === 0 ? p : quarterTurns({ x: -p.y, y: p.x, w: p.w }, turns - 1));

/** @returns the step with all its points carried */
export const carried = <T extends Pick<Step, 'parts' | 'joins'>>(step: T, carry: (p: Point) => Point): T => ({
  ...step,
  parts: step.parts.map((part) => ({ ...part, outline: part.outline.map(carry) })),
  joins: step.joins.map((join) => ({ ...join, from: carry(join.from), to: carry(join.to) })),
});

/** @returns the step moved to its own top left corner, its sizes as it now measures */
export function restated(step: Step, { step: unit, seam }: Plan): Step {
  const extent = extentOfStep(step);
  const finished = { width: multiply(widthOf(extent), unit), height: multiply(heightOf(extent), unit) };
  const both = multiply(seam, rational(2));
  const unfinished = { width: add(finished.width, both), height: add(finished.height, both) };
  return { ...carried(step, (p) => shiftedBy(p, less(extent.left), less(extent.top))), finished, unfinished };
}

/** @returns the plan with other steps, numbered in their order */
export const withSteps = (plan: Plan, steps: readonly Step[]): Plan => ({
  ...plan,
  steps: steps.map((step, i) => ({ ...step, number: i + 1 })),
});

/** @returns the plan with one step told otherwise */
export const restepped = (plan: Plan, step: Step, change: Partial<Step>): Plan => ({
  ...plan,
  steps: plan.steps.map((one) => (one === step ? { ...one, ...change } : one)),
});

export interface At {
  readonly step: Step;
  readonly k: number;
  readonly part: StepPart;
}

/** @returns every part of every step */
export const partsOf = ({ steps }: Plan): readonly At[] => steps.flatMap((step) => step.parts.map((part, k) => ({ step, k, part })));

/** @returns the joins with their things numbered anew */
export const renumbered = (joins: readonly Join[], to: (thing: number) => number): readonly Join[] =>
  joins.map((join) => ({ ...join, first: to(join.first), second: to(join.second) }));

/** @returns the parts that went into a thing of a step */
export function partsIn(step: Pick<Step, 'parts' | 'joins'>, thing: number): readonly StepPart[] {
  if (thing < step.parts.length) return [step.parts[thing]!];
  const { first, second } = step.joins[thing - step.parts.length]!;
  return [...partsIn(step, first), ...partsIn(step, second)];
}

/** @returns the step with one of its units laid down in pieces and sewn within it, as if the two steps were one; null where it is a ring */
export function unitSewnWithin(step: Step, k: number, unit: Step): Step | null {
  if (unit.joins.length === 0 || [...unit.joins, ...step.joins].some(({ sew }) => sew !== 'through')) return null;
  const { turn, outline } = step.parts[k]!;
  const there = extentOf(outline);
  const turned = carried(unit, (p) => quarterTurns(p, turn));
  const here = extentOfStep(turned);
  const inside = carried(turned, (p) => shiftedBy(p, subtract(there.left, here.left), subtract(there.top, here.top)));
  const turnOf = (part: StepPart): StepPart['turn'] => ('unit' in part.from ? ((part.turn + turn) % 4) as StepPart['turn'] : part.turn);
  const pieces = inside.parts.map((part): StepPart => ({ ...part, turn: turnOf(part) }));
  const [own, more, all] = [step.parts.length, pieces.length, step.parts.length + pieces.length - 1];
  const whole = all + unit.joins.length - 1;
  return {
    ...step,
    parts: [...step.parts.slice(0, k), ...pieces, ...step.parts.slice(k + 1)],
    joins: [
      ...renumbered(inside.joins, (r) => (r < more ? k + r : all + r - more)),
      ...renumbered(step.joins, (r) => (r === k ? whole : r >= own ? r - own + all + unit.joins.length : r < k ? r : r + more - 1)),
    ],
  };
}

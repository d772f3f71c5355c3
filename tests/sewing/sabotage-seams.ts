import type { Cut, CutUse } from '../../src/cutting/cut.ts';
import type { Point } from '../../src/geometry/point.ts';
import { add, compare, equals, multiply, rational, ZERO, type Rational } from '../../src/measure/rational.ts';
import type { Plan } from '../../src/sewing/proof-table.ts';
import type { Join, Step } from '../../src/sewing/step.ts';
import { without } from './proof-mutants.ts';
import {
  across, down, extentOfStep, partsIn, partsOf, pointAt, renumbered, restepped, samePlace, unitSewnWithin, withSteps,
} from './sabotage-steps.ts';
import type { Choose, Sabotage } from './sabotage.ts';

/** What can be wrong with seams, and with the sizes that come of them. */

const HALF = rational(1, 2);
const middle = (p: Point, q: Point): Point => pointAt(multiply(add(across(p), across(q)), HALF), multiply(add(down(p), down(q)), HALF));

interface SeamAt {
  readonly step: Step;
  readonly j: number;
  readonly join: Join;
}

const seamsOf = ({ steps }: Plan): readonly SeamAt[] => steps.flatMap((step) => step.joins.map((join, j) => ({ step, j, join })));
/** Seams sewn right through, in steps that are no ring. */
const throughSeams = (plan: Plan): readonly SeamAt[] =>
  seamsOf(plan).filter(({ step }) => step.joins.every(({ sew }) => sew === 'through'));
const resewn = (plan: Plan, { step, j }: SeamAt, change: Partial<Join>): Plan =>
  restepped(plan, step, { joins: step.joins.map((join, i) => (i === j ? { ...join, ...change } : join)) });

/** @returns whether p lies on the stretch q … r, not at its ends */
function isInside(p: Point, q: Point, r: Point): boolean {
  const [px, py, qx, qy, rx, ry] = [p.x / p.w, p.y / p.w, q.x / q.w, q.y / q.w, r.x / r.w, r.y / r.w];
  const along = ((px - qx) * (rx - qx) + (py - qy) * (ry - qy)) / ((rx - qx) ** 2 + (ry - qy) ** 2);
  const off = Math.abs((px - qx) * (ry - qy) - (py - qy) * (rx - qx));
  return off < 1e-9 && along > 1e-9 && along < 1 - 1e-9;
}

/**
 * Two halves that were sewn to each other and then to a third thing, right along: now the first half goes to the third by itself, and
 * the other is set into the corner. Where the seam between the halves ends at the middle of the other seam, that is a corner.
 */
interface Corner {
  readonly step: Step;
  /** The seam between the halves, and the one it ends at. */
  readonly i: number;
  readonly j: number;
  readonly at: Point;
}

function cornersIn(step: Step): readonly Corner[] {
  if (step.joins.some(({ sew }) => sew !== 'through')) return [];
  return step.joins.flatMap(({ first, second, from, to }, j) =>
    [first, second].flatMap((thing): Corner[] => {
      const i = thing - step.parts.length;
      if (i < 0) return [];
      const at = [step.joins[i]!.from, step.joins[i]!.to].find((p) => isInside(p, from, to));
      return at ? [{ step, i, j, at }] : [];
    }),
  );
}

function setIn({ step, i, j, at }: Corner): Step {
  const [halves, seam, n] = [step.joins[i]!, step.joins[j]!, step.parts.length];
  const other = seam.first === n + i ? seam.second : seam.first;
  const reaches = partsIn(step, halves.first).some(({ outline }) => outline.some((p) => samePlace(p, seam.from)));
  const [near, far] = reaches ? [seam.from, seam.to] : [seam.to, seam.from];
  // Without seam i all between the two come one earlier, and in place of seam j come two.
  const now = (thing: number): number => (thing - n > i && thing - n < j ? thing - 1 : thing);
  const joins = renumbered(step.joins, now).flatMap((join, k): Join[] => {
    if (k === i) return [];
    if (k !== j) return [join];
    return [
      { sew: 'through', first: now(halves.first), second: now(other), from: near, to: at },
      { sew: 'through', first: n + j - 1, second: now(halves.second), from: at, to: far },
    ];
  });
  return { ...step, joins };
}

/** @returns the lines with what was cut for one unit cut for another, one use for each role */
const recutFor = (cuts: readonly Cut[], unit: string, whole: string): readonly Cut[] =>
  cuts.map((cut) => {
    const uses = new Map<string, CutUse>();
    for (const use of cut.uses) {
      const name = use.unit === unit ? whole : use.unit;
      const known = uses.get(`${name} ${use.role}`)?.quantity ?? 0;
      uses.set(`${name} ${use.role}`, { ...use, unit: name, quantity: known + use.quantity });
    }
    return { ...cut, uses: [...uses.values()] };
  });

/** @returns every plan in which one of the units is sewn within the step that takes it, wherever it is used there alone */
export function withUnitsWithin(plan: Plan): readonly { readonly plan: Plan; readonly step: Step; readonly unit: Step }[] {
  return partsOf(plan).flatMap(({ step, k, part: { from } }) => {
    const unit = 'unit' in from ? plan.steps.find(({ makes }) => makes === from.unit) : undefined;
    // A method's own instructions are about one unit, so only steps that just join can be made one.
    if (!unit || unit.count !== step.count || unit.method !== null || step.method !== null) return [];
    const within = unitSewnWithin(step, k, unit);
    if (!within) return [];
    const steps = plan.steps.flatMap((one) => (one === unit ? [] : [one === step ? within : one]));
    const whole = withSteps({ ...plan, cuts: recutFor(plan.cuts, unit.makes, step.makes) }, steps);
    return [{ plan: whole, step: whole.steps.find(({ makes }) => makes === step.makes)!, unit }];
  });
}

function spoiltBySetIn(plan: Plan, choose: Choose): Plan | null {
  const within = withUnitsWithin(plan).flatMap(({ plan: whole, step }) => cornersIn(step).map((corner) => ({ whole, corner })));
  const own = plan.steps.flatMap(cornersIn).map((corner) => ({ whole: plan, corner }));
  const chosen = choose([...within, ...own]);
  return chosen ? restepped(chosen.whole, chosen.corner.step, setIn(chosen.corner)) : null;
}

/** A seam that ends at the edge of its unit between two pieces of cloth, and where its end may slide to. */
interface Slide {
  readonly step: Step;
  readonly from: Point;
  readonly to: Point;
}

function slidesIn(step: Step): readonly Slide[] {
  const { right, bottom } = extentOfStep(step);
  const edges = (p: Point): number =>
    [ZERO, right].filter((x) => equals(across(p), x)).length + [ZERO, bottom].filter((y) => equals(down(p), y)).length;
  return step.joins.flatMap((join) =>
    [join.from, join.to].flatMap((end): Slide[] => {
      const there = step.parts.filter(({ outline }) => outline.some((p) => samePlace(p, end)));
      if (edges(end) !== 1 || there.length !== 2 || there.some((part) => !('cut' in part.from))) return [];
      const beyond = there[0]!.outline.filter((p) => !samePlace(p, end) && onOneEdge(p, end, right, bottom));
      return beyond.map((p) => ({ step, from: end, to: middle(end, p) }));
    }),
  );
}

const onOneEdge = (p: Point, q: Point, right: Rational, bottom: Rational): boolean =>
  [ZERO, right].some((x) => [p, q].every((one) => equals(across(one), x))) ||
  [ZERO, bottom].some((y) => [p, q].every((one) => equals(down(one), y)));

function slid(plan: Plan, { step, from, to }: Slide): Plan {
  const carry = (p: Point): Point => (samePlace(p, from) ? to : p);
  const parts = step.parts.map((part) => ({ ...part, outline: part.outline.map(carry) }));
  const joins = step.joins.map((join) => ({ ...join, from: carry(join.from), to: carry(join.to) }));
  // Templates that are for this unit alone are drawn as the pieces now are.
  const cuts = plan.cuts.map((cut) => {
    const part = parts.find(({ from: source }) => 'cut' in source && source.cut === cut.id);
    return cut.template && part && cut.uses.every(({ unit }) => unit === step.makes) ? { ...cut, template: part.outline } : cut;
  });
  return { ...restepped(plan, step, { parts, joins }), cuts };
}

export const SEAMS: readonly Sabotage[] = [
  {
    says: 'a unit must be set into a corner',
    found: /do not match in length and place|inner corner|is not the whole of the edge/,
    spoil: spoiltBySetIn,
  },
  {
    says: 'a seam is forgotten',
    found: /(is|are) never sewn on|leave more than one thing/,
    spoil: (plan, choose) => {
      const at = choose(throughSeams(plan));
      if (!at) return null;
      const [gone, first] = [at.step.parts.length + at.j, at.join.first];
      const joins = renumbered(without(at.step.joins, at.j), (r) => (r === gone ? first : r > gone ? r - 1 : r));
      return restepped(plan, at.step, { joins });
    },
  },
  {
    says: 'a seam stops half way',
    found: /is not the whole of the edge/,
    spoil: (plan, choose) => {
      const at = choose(throughSeams(plan));
      return at ? resewn(plan, at, { to: middle(at.join.from, at.join.to) }) : null;
    },
  },
  {
    says: 'a seam is left open that could be sewn right through',
    found: /part of the way although its edges match|cannot be begun|only touch at a corner/,
    spoil: (plan, choose) => {
      const at = choose(throughSeams(plan));
      return at ? resewn(plan, at, { sew: 'part-way', to: middle(at.join.from, at.join.to) }) : null;
    },
  },
  {
    says: 'a partial seam is never closed',
    found: /is sewn only part of the way and never finished/,
    spoil: (plan, choose) => {
      const at = choose(seamsOf(plan).filter(({ join, step, j }) => join.sew === 'finish' && j === step.joins.length - 1));
      return at ? restepped(plan, at.step, { joins: at.step.joins.slice(0, -1) }) : null;
    },
  },
  {
    says: 'the first seam round a centre is sewn to its end',
    found: /do not match in length and place|is not the whole of the edge|inner corner/,
    spoil: (plan, choose) => {
      const at = choose(seamsOf(plan).filter(({ join }) => join.sew === 'part-way'));
      const end = at?.step.joins.find(({ sew }) => sew === 'finish');
      return at && end ? resewn(plan, at, { sew: 'through', to: end.to }) : null;
    },
  },
  {
    says: "two parts are sewn on in each other's place",
    found: /does not lie along an edge of both|do not match in length and place|lie on the same side of it/,
    spoil: (plan, choose) => {
      // In place of its neighbour a part is given one that it does not even touch.
      const at = choose(throughSeams(plan).filter(({ step, join }) => Math.max(join.first, join.second) < step.parts.length));
      if (!at) return null;
      const spots = (k: number): readonly Point[] => at.step.parts[k]!.outline;
      const touches = (k: number): boolean => spots(k).some((p) => spots(at.join.first).some((q) => samePlace(p, q)));
      const second = choose([...at.step.parts.keys()].filter((k) => k !== at.join.first && !touches(k)));
      if (second === undefined) return null;
      // Each is then sewn where the other belongs, so that every part is sewn on once.
      const swapped = (r: number): number => (r === second ? at.join.second : r === at.join.second ? second : r);
      return restepped(plan, at.step, { joins: renumbered(at.step.joins, swapped) });
    },
  },
  {
    says: 'a seam runs aslant between two pieces that are cut to fit it',
    // Where another seam ends on it, or the edge it ends at bends, the pieces no longer fit.
    found: /where the drawing shows|do not (fill|fit into) the block/,
    mayShowTheSame: true,
    spoil: (plan, choose) => {
      const slide = choose(plan.steps.flatMap(slidesIn));
      return slide ? slid(plan, slide) : null;
    },
  },
  {
    says: 'a unit is said to finish larger than it does',
    found: /says finished/,
    spoil: (plan, choose) => {
      const step = choose(plan.steps);
      return step ? restepped(plan, step, { finished: { ...step.finished, width: add(step.finished.width, plan.ruler) } }) : null;
    },
  },
  {
    says: 'an unfinished size has one allowance in place of two',
    found: /says unfinished/,
    spoil: (plan, choose) => {
      const step = choose(plan.steps);
      if (!step) return null;
      const { width, height } = step.finished;
      return restepped(plan, step, { unfinished: { width: add(width, plan.seam), height: add(height, plan.seam) } });
    },
  },
  {
    says: "a unit's width and height are exchanged",
    found: /says (finished|unfinished)/,
    spoil: (plan, choose) => {
      const step = choose(plan.steps.filter(({ finished }) => compare(finished.width, finished.height) !== 0));
      if (!step) return null;
      const turned = ({ width, height }: Step['finished']): Step['finished'] => ({ width: height, height: width });
      return restepped(plan, step, { finished: turned(step.finished), unfinished: turned(step.unfinished) });
    },
  },
];

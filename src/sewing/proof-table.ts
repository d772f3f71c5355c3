import type { Rational } from '../measure/rational.ts';
import type { Cut } from '../cutting/cut.ts';
import type { Drawing } from '../geometry/patchwork/drawing.ts';
import { exactly, minus, order, plus, say, scaled, times } from './proof-number.ts';
import type { Fraction } from './proof-number.ts';
import { bounds, corners, isConvex, sameOutline, shifted, spot, spotOf, turnedBy } from './proof-outline.ts';
import type { Bounds, Outline } from './proof-outline.ts';
import { sewn } from './proof-seams.ts';
import type { Step, StepPart } from './step.ts';

/** All that a proof is told. */
export interface Plan {
  readonly drawing: Drawing;
  /** Length of one lattice step, like every length here in the block's unit. */
  readonly step: Rational;
  readonly seam: Rational;
  readonly ruler: Rational;
  readonly trim: Rational;
  /** What straightening the ends of a strip set takes; nothing where absent. */
  readonly straighten?: Rational;
  readonly blocks: number;
  readonly cuts: readonly Cut[];
  readonly steps: readonly Step[];
}

/** One step after it has been sewn on the table. */
export interface SewnStep {
  readonly step: Step;
  /** "Step 2 (unit B)". */
  readonly name: string;
  /** Outlines of the parts; null where the outline is not convex. */
  readonly parts: readonly (Outline | null)[];
  /** The outline of what the step makes; null where it could not be sewn. */
  readonly result: Outline | null;
}

export type Tell = (fault: string) => void;

/** @returns a unit's id as it is said: "unit B", "the block" */
export const unitName = (id: string): string => (id === 'block' ? 'the block' : `unit ${id}`);

/** @returns the outline turned by quarter turns and moved so that it begins at the left and the top */
export function turnedToOrigin(outline: Outline, turn: number): Outline {
  const turned = outline.map((p) => turnedBy(p, turn));
  const { left, top } = bounds(turned);
  const back = spot(-left.n * top.d, -top.n * left.d, left.d * top.d);
  return turned.map((p) => shifted(p, back));
}

/**
 * Sews every step in order: parts must be there, seams must match, sizes must be as stated.
 * @returns the steps as sewn, in order; every fault is told
 */
export function sewSteps(plan: Plan, tell: Tell): SewnStep[] {
  const made = new Map<string, SewnStep>();
  return plan.steps.map((step, i) => {
    const name = `Step ${step.number} (${unitName(step.makes)})`;
    if (step.number !== i + 1) tell(`${name} stands in place ${i + 1} of the sewing order.`);
    const parts = step.parts.map((part, k) => partOutline(part, made, `${name}, part ${k + 1}`, tell));
    const whole = parts.filter((part): part is Outline => part !== null);
    const result = whole.length === parts.length ? sewn(whole, step.joins, (fault) => tell(`${name}: ${fault}.`)) : null;
    if (result) checkSize(plan, step, result, name, tell);
    const table: SewnStep = { step, name, parts, result };
    if (made.has(step.makes)) tell(`${name} makes ${unitName(step.makes)} a second time.`);
    made.set(step.makes, table);
    return table;
  });
}

/** @returns the outline of a part as it lies in its step; null (and told) when it cannot be what it says it is */
function partOutline(part: StepPart, made: ReadonlyMap<string, SewnStep>, name: string, tell: Tell): Outline | null {
  const outline = corners(part.outline.map(spotOf));
  if (!isConvex(outline)) {
    tell(`${name} is not a convex outline running clockwise.`);
    return null;
  }
  if ('unit' in part.from) {
    const unit = made.get(part.from.unit);
    if (!unit) tell(`${name} is unit ${part.from.unit}, which no earlier step makes.`);
    else if (unit.result && !sameOutline(turnedToOrigin(unit.result, part.turn), turnedToOrigin(outline, 0))) {
      const turned = part.turn === 0 ? '' : ` turned ${part.turn} quarter turn${part.turn === 1 ? '' : 's'}`;
      tell(`${name} is unit ${part.from.unit}${turned}, but its outline there is a different one.`);
    }
  }
  return outline;
}

/** Compares the bounding size of what was sewn with the sizes printed. */
function checkSize(plan: Plan, step: Step, result: Outline, name: string, tell: Tell): void {
  const unit = exactly(plan.step);
  const held: Bounds = bounds(result);
  if (held.left.n !== 0n || held.top.n !== 0n) tell(`${name} does not begin at its own top left corner.`);
  const allowance = scaled(2, exactly(plan.seam));
  const width = times(minus(held.right, held.left), unit);
  const height = times(minus(held.bottom, held.top), unit);
  const compare = (word: string, stated: Step['finished'], across: Fraction, down: Fraction): void => {
    if (order(exactly(stated.width), across) === 0 && order(exactly(stated.height), down) === 0) return;
    const size = `${say(exactly(stated.width))} by ${say(exactly(stated.height))}`;
    tell(`${name} says ${word} ${size}, but it measures ${say(across)} by ${say(down)}.`);
  };
  compare('finished', step.finished, width, height);
  compare('unfinished', step.unfinished, plus(width, allowance), plus(height, allowance));
}

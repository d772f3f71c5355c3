import type { Cut } from '../cutting/cut.ts';
import { compareWith, plus, times, type Surd } from '../measure/surd.ts';
import { equals, rational, ZERO, type Rational } from '../measure/rational.ts';
import type { Step } from './step.ts';

/*
 * Where a size is not on the ruler it is cut up to the next mark. What that is too much comes off where a unit with a diagonal seam is
 * trimmed to its size; pieces that meet no such unit keep it (common practice: + 7/8 is 0.02 in. more than a half-square triangle needs).
 */

/** How much larger than need be one line of the list is cut, trim left aside; lengths in the block's unit. */
export interface CutLarge {
  readonly cut: string;
  readonly by: { readonly width: Surd; readonly height: Surd };
  /** The steps in which that is trimmed away, by number; what each makes then measures its unfinished size. */
  readonly trimmed: readonly number[];
  /** Whether some of its pieces, or all, come into the block untrimmed. */
  readonly kept: boolean;
}

/** @returns the lines that are rounded up to the ruler, in their order; templates are cut as they are */
export function cutLarge(cuts: readonly Cut[], steps: readonly Step[]): readonly CutLarge[] {
  const makes = new Map(steps.map((step) => [step.makes, step]));
  return cuts.flatMap((cut): readonly CutLarge[] => {
    const { id, exact, width, height, uses } = cut;
    if (exact === null) return [];
    const over = (needed: Surd, side: Rational): Surd => plus(times(needed, MINUS), side);
    const by = cut.set ? setLarge(exact, cut.set) : { width: over(exact.width, width), height: over(exact.height, height) };
    if ([by.width, by.height].every((more) => compareWith(more, ZERO) === 0)) return [];
    const where = uses.map(({ unit }) => makes.get(unit));
    const trimmed = where.flatMap((step) => (step && isTrimmed(step) ? [step.number] : []));
    return [{ cut: id, by, trimmed: [...new Set(trimmed)], kept: trimmed.length < where.length }];
  });
}

const MINUS = rational(-1);

/** Of a strip set the strips may be too wide, and its segments; how long the strips are is no size of anything. */
function setLarge(exact: NonNullable<Cut['exact']>, { across, segment, length, exact: needed }: NonNullable<Cut['set']>): CutLarge['by'] {
  const strip = equals(exact.width.p, length) && exact.width.r === 0 ? exact.height : exact.width;
  return { width: plus(times(strip, MINUS), across), height: plus(times(needed, MINUS), segment) };
}

/** @returns whether what a step makes can be trimmed to its size: it has a seam that runs along neither side of the block */
export const isTrimmed = ({ joins }: Pick<Step, 'joins'>): boolean =>
  joins.some(({ from, to }) => from.x * to.w !== to.x * from.w && from.y * to.w !== to.y * from.w);

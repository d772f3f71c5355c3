import type { Fabric, LengthUnit } from '../block/block.ts';
import { checkSide } from '../block/file-checks.ts';
import type { Cut } from '../cutting/cut.ts';
import { cutList, type CutList } from '../cutting/cutting.ts';
import { finishedWidths, narrower } from '../cutting/narrowest.ts';
import { eachOnce, onMark, ruledSides } from '../cutting/ruler.ts';
import { printLength } from '../measure/lengths.ts';
import { bad, good, type Result } from '../measure/problem.ts';
import { add, compare, divide, equals, multiply, rational, subtract, timesInto, upToStep, ZERO, type Rational } from '../measure/rational.ts';
import { compareWith, times, type Surd } from '../measure/surd.ts';
import { sentence } from '../sewing/sentences.ts';
import { clothOf } from './cloths.ts';
import { cuttingChoices } from './cutting-choices.ts';
import { inEnglish } from './english.ts';
import type { Speech } from './language.ts';
import type { Cloth, Pattern, Size } from './pattern.ts';
import { aboutSaid } from './saying.ts';

/*
 * A block at other finished sizes. Drawing and piecing stay as they are, only the length of a lattice step changes, so nothing is
 * searched again: what falls on the ruler grows in proportion, and a cutting list takes about a millisecond where it is asked for.
 */

/** Finished widths from one to another, a step apart; in the block's unit. */
export interface SizeRange {
  readonly from: Rational;
  readonly to: Rational;
  readonly step: Rational;
}

/** A block at one finished size. */
export interface OtherSize {
  readonly finished: Size;
  readonly unfinished: Size;
  /** Whether the pattern is for this size. */
  readonly asItIs: boolean;
  /** Why there is no such block, in one sentence; null where there is. */
  readonly cannot: string | null;
  /**
   * Unfinished sides of pieces and units that fall between two marks of the ruler, the shortest first. None: every plain cut and every
   * unit falls on a mark; what is cut for a diagonal seam is rounded up at any size, by the nature of its rule (cutting/ruler.ts).
   */
  readonly off: readonly Rational[];
  /** How narrow the narrowest piece finishes. */
  readonly narrowest: Surd;
}

/** Most sizes of one table. */
export const MOST_SIZES = 400;

const USUAL_STEP: Readonly<Record<LengthUnit, Rational>> = { in: rational(1, 4), cm: rational(1, 2) };

/** @returns every quarter inch or half centimetre from half the block's width to one and a half of it, or what is given instead */
export function usualRange({ block: { finished, unit } }: Pick<Pattern, 'block'>, given: Partial<SizeRange> = {}): SizeRange {
  const step = given.step ?? USUAL_STEP[unit];
  const part = (share: Rational): Rational => upToStep(multiply(finished.width, share), USUAL_STEP[unit]);
  return { from: given.from ?? part(rational(1, 2)), to: given.to ?? part(rational(3, 2)), step };
}

/** @returns the finished widths of a range, or in one sentence what is wrong with it */
export function widthsIn({ from, to, step }: SizeRange, unit: LengthUnit): Result<readonly Rational[]> {
  const [first, last, by] = [from, to, step].map((length) => printLength(length, unit)) as [string, string, string];
  if (compare(step, ZERO) <= 0) return bad('no-step', sentence(`A step of ${by} leads nowhere: choose one above 0, like ${printLength(USUAL_STEP[unit], unit)}`));
  if (compare(from, to) > 0) return bad('no-sizes', `From ${first} to ${last} there are no sizes: begin with the smaller one.`);
  const fault = checkSide('width', from, unit) ?? checkSide('width', to, unit);
  if (fault) return { ok: false, problem: fault };
  const more = timesInto(subtract(to, from), step);
  if (more >= MOST_SIZES) {
    return bad('too-many-sizes', `From ${first} to ${last} in steps of ${by} there are more than ${MOST_SIZES} sizes: take larger steps or fewer sizes.`);
  }
  return good(Array.from({ length: more + 1 }, (_, i) => add(from, multiply(step, rational(i)))));
}

/**
 * @param pattern of the block at the size it is drawn at
 * @returns the block at every finished width of the range, in its own proportion, and at its own size where that lies between; a problem
 * where the range is none
 */
export function otherSizes(pattern: Pattern, range: SizeRange, speech: Speech = inEnglish(pattern)): Result<readonly OtherSize[]> {
  const { block, choices, lattice, pieces, units } = pattern;
  const { finished, unit } = block;
  const widths = widthsIn(range, unit);
  if (!widths.ok) return widths;
  const own = finished.width;
  const between = compare(own, range.from) > 0 && compare(own, range.to) < 0;
  const all = eachOnce(between ? [...widths.value, own] : widths.value);
  const sides = ruledSides(pieces, lattice.step, units.map((line) => line.finished));
  const narrowest = finishedWidths(pieces.map(({ outline }) => outline), lattice.step).reduce(narrower);
  const allowances = multiply(choices.seam, rational(2));
  return good(
    all.map((width): OtherSize => {
      const by = divide(width, own);
      const size = { width, height: multiply(finished.height, by) };
      const here = times(narrowest, by);
      return {
        finished: size,
        unfinished: { width: add(size.width, allowances), height: add(size.height, allowances) },
        asItIs: equals(width, own),
        cannot: whyNot(size, here, choices.seam, unit, speech),
        off: sides.map((side) => add(multiply(side, by), allowances)).filter((side) => !onMark(side, choices.ruler)),
        narrowest: here,
      };
    }),
  );
}

/** Why a block cannot be sewn at a size; null where it can. */
function whyNot(size: Size, narrowest: Surd, seam: Rational, unit: LengthUnit, speech: Speech): string | null {
  const fault = checkSide('width', size.width, unit) ?? checkSide('height', size.height, unit);
  if (fault) return fault.sentence;
  if (compareWith(narrowest, seam) >= 0) return null;
  return speech.language.pattern.tooNarrow(aboutSaid(narrowest, unit, speech), speech.telling.length(seam, unit));
}

/**
 * @param width finished, in the block's unit, one at which the block can be
 * @returns the cutting list at that size, by the same choices: that of the pattern of the block drawn at that size
 * @throws RangeError when a size leaves what can be held exactly
 */
export function cutListAt({ block, choices, lattice, plan, scraps, chosenUnits, cuts }: Pattern, width: Rational): CutList {
  const step = multiply(lattice.step, divide(width, block.finished.width));
  // The list goes fabric by fabric in the drawing's order.
  const fabrics = [...new Set(cuts.map(({ fabric }) => fabric))];
  const rules = cuttingChoices(choices, { step, unit: block.unit, fabrics, scraps: scraps.map(({ id }) => id), units: chosenUnits });
  let known = lists.get(plan);
  if (!known || known.size >= MOST_LISTS) lists.set(plan, (known = new Map()));
  const key = JSON.stringify([rules.step, block.unit, fabrics, scraps.map(({ id }) => id), chosenUnits, choices]);
  const list = known.get(key) ?? cutList(plan, rules);
  known.set(key, list);
  return list;
}

/** The lists of a plan that were asked for: pages are laid out again with every word that is changed on them. */
const lists = new WeakMap<Pattern['plan'], Map<string, CutList>>();
const MOST_LISTS = 12;

/** @returns its lines, see `cutListAt` */
export const cutsAt = (pattern: Pattern, width: Rational): readonly Cut[] => cutListAt(pattern, width).cuts;

/** @returns how each fabric is cut and bought at another size, laid out at once; those of scraps are not bought */
export function clothsAt(pattern: Pattern, cuts: readonly Cut[], speech: Speech = inEnglish(pattern)): readonly Cloth[] {
  const { block, choices, fabrics, pieces } = pattern;
  return fabrics.map(({ fabric }) => clothOf(fabric, cuts.filter((cut) => cut.fabric === fabric.id), pieces, choices, block.unit, speech));
}

/** What is cut of one fabric at another size, and what is bought for it. */
export interface FabricAt {
  readonly fabric: Fabric;
  readonly buy: string;
  readonly cuts: readonly Cut[];
}

/** @returns what is cut of each fabric, and what is bought for it; "from scraps" where nothing is */
export function listAt(pattern: Pattern, cuts: readonly Cut[], speech: Speech = inEnglish(pattern)): readonly FabricAt[] {
  const bought = clothsAt(pattern, cuts, speech).map(({ fabric, buy }) => ({ fabric, buy }));
  const all = [...bought, ...pattern.scraps.map((fabric) => ({ fabric, buy: speech.language.pattern.fromScraps }))];
  return all.map((one) => ({ ...one, cuts: cuts.filter((cut) => cut.fabric === one.fabric.id) }));
}

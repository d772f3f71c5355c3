import type { LengthUnit } from '../block/block.ts';
import type { Stretch } from '../geometry/patchwork/stretches.ts';
import type { Point } from '../geometry/point.ts';
import { gcd, ratio, type Rational } from '../measure/rational.ts';
import type { Speech, Wording } from './language.ts';

/** How a block's lattice is measured for people, and how that is said. */
export interface Measure {
  /** Length of one lattice step. */
  readonly step: Rational;
  readonly unit: LengthUnit;
  readonly speech: Speech<Wording>;
}

/** Fractions finer than this are told to the nearest sixteenth of an inch or millimetre: nobody finds a place by 231ths. */
const FINEST = 64n;
const NEAREST: Readonly<Record<LengthUnit, bigint>> = { in: 16n, cm: 10n };

/** @returns n/w lattice steps as a length for people: "3 1/2 in.", or "about 3 9/16 in." where it is no fraction of a ruler */
function lengthText(n: number, w: number, { step, unit, speech: { language, telling } }: Measure, style?: 'bare'): string {
  const [above, below] = [BigInt(n) * BigInt(step.n), BigInt(w) * BigInt(step.d)];
  if (below / gcd(above, below) <= FINEST) return telling.length(ratio(above, below), unit, style);
  const parts = NEAREST[unit];
  return language.pattern.near(telling.length(ratio((2n * above * parts + below) / (2n * below), parts), unit, style));
}

/** @returns where a point of the block lies, from its top-left corner: "3 in. across, 4 in. down" */
export const pointText = ({ x, y, w }: Point, measure: Measure): string =>
  measure.speech.language.pattern.point(lengthText(x, w, measure), lengthText(y, w, measure));

/** @returns where a stretch of a seam lies: "at 3 in. across, from 0 to 4 in. down"; a slanted one by both its ends */
export function stretchText(stretch: Stretch, measure: Measure): string {
  const { at, runs } = seamText([stretch], measure);
  return at === '' ? runs : `${at}, ${runs}`;
}

/**
 * @param stretches of one line
 * @returns where they lie: the line ("at 3 in. across"; nothing for a slanted one), and how far each runs ("from 0 to 4 in. down")
 */
export function seamText(stretches: readonly Stretch[], measure: Measure): { readonly at: string; readonly runs: string } {
  const { pattern: phrases } = measure.speech.language;
  const length = (n: number, w: number, style?: 'bare'): string => lengthText(n, w, measure, style);
  const { from, to } = stretches[0]!;
  if (from.x * to.w === to.x * from.w) {
    const ends = stretches.map((s) => [length(s.from.y, s.from.w, 'bare'), length(s.to.y, s.to.w)] as const);
    return { at: phrases.at(length(from.x, from.w), 'across'), runs: phrases.runs(ends, 'down') };
  }
  if (from.y * to.w === to.y * from.w) {
    const ends = stretches.map((s) => [length(s.from.x, s.from.w, 'bare'), length(s.to.x, s.to.w)] as const);
    return { at: phrases.at(length(from.y, from.w), 'down'), runs: phrases.runs(ends, 'across') };
  }
  return { at: '', runs: phrases.slanted(stretches.map((s) => [pointText(s.from, measure), pointText(s.to, measure)] as const)) };
}

import type { LengthUnit } from '../../../block/block.ts';
import { checkChoices } from '../../../block/choice-checks.ts';
import type { Choices, ClothChoice, Margin } from '../../../block/choices.ts';
import { typedLength } from '../../../block/typed-size.ts';
import { formatLength, printLength } from '../../../measure/lengths.ts';
import { bad, good, type Result } from '../../../measure/problem.ts';
import type { Rational } from '../../../measure/rational.ts';

/*
 * What is typed about cloth, on its way into the choices: read, checked, and either taken or answered with one sentence.
 */

export type Choose = (some: Choices) => void;

/** @returns null where choices hold and were chosen, else what is wrong with them; then nothing is changed */
export function chosen(some: Choices, unit: LengthUnit, choose: Choose): string | null {
  const fault = checkChoices(some, unit);
  if (fault) return fault.sentence;
  choose(some);
  return null;
}

/** @returns what takes a typed length and makes choices of it */
export const takingLength =
  (unit: LengthUnit, choose: Choose, into: (length: Rational) => Choices) =>
  (text: string): string | null => {
    const read = typedLength(text, unit);
    return read.ok ? chosen(into(read.value), unit, choose) : read.problem.sentence;
  };

/** What is chosen otherwise about one fabric; undefined: as usual. */
export type ClothChange = { readonly [K in keyof ClothChoice]: ClothChoice[K] | undefined };

/** @returns the choices in which one fabric is cut from other cloth; what is left at its usual value is left out */
export function withCloth(cloths: Choices['cloths'], fabric: string, cloth: ClothChange): Choices {
  const { [fabric]: _, ...others } = cloths ?? {};
  const said = Object.fromEntries(Object.entries(cloth).filter(([, value]) => value !== undefined));
  return { cloths: Object.keys(said).length === 0 ? others : { ...others, [fabric]: said } };
}

/** @returns what is bought to spare, as typed: "10 %", "1/4 yd" or a length */
export function typedMargin(text: string, unit: LengthUnit): Result<Margin> {
  const percent = /^(.*?)\s*(?:%|per ?cent)$/i.exec(text.trim());
  if (percent === null) {
    const length = typedLength(text, unit);
    return length.ok ? good({ length: length.value }) : length;
  }
  const read = typedLength(percent[1]!, unit);
  return read.ok ? good({ percent: read.value }) : bad('no-margin', `“${text.trim()}” is not a margin: write it like 10 % or ${unit === 'in' ? '4 1/2 in.' : '10 cm'}.`);
}

/** @returns a margin as it is typed */
export const marginWords = (margin: Margin, unit: LengthUnit): string =>
  'percent' in margin ? `${formatLength(margin.percent)} %` : printLength(margin.length, unit);

import { printLength } from './lengths.ts';
import { compare, rational, ZERO, type Rational } from './rational.ts';
import { ceilToStep, plus, type Surd } from './surd.ts';

const HUNDREDTH = rational(1, 100);
const HALF_OF_IT = rational(-1, 200);

/** Fractions of an inch that a ruler may show. */
const FINEST = 64;

/** How much a length is, for people who want to know it, not to measure it. */
export interface Nearly {
  /** exact: a ruler has fractions for it. near: to the nearest hundredth. under: less than a hundredth. */
  readonly is: 'exact' | 'near' | 'under';
  /** The length itself, its nearest hundredth, or a hundredth. */
  readonly length: Rational;
}

/** @returns a length (≥ 0) exactly where a ruler has fractions for it (in centimetres: three decimals), else to the hundredth */
export function nearly(value: Surd, unit: 'in' | 'cm'): Nearly {
  if (value.r === 0 && (unit === 'in' ? FINEST : 1000) % value.p.d === 0) return { is: 'exact', length: value.p };
  const near = ceilToStep(plus(value, HALF_OF_IT), HUNDREDTH);
  return compare(near, ZERO) > 0 ? { is: 'near', length: near } : { is: 'under', length: HUNDREDTH };
}

/**
 * @returns a length (≥ 0) for people who want to know how much it is, not to measure it: exactly where a ruler has fractions for it
 * ("1/16 in.", "0,5 cm"), else to the nearest hundredth ("0.02 in.", "0,02 cm"), "less than 0.01 in." where that is nothing
 */
export function aboutLength(value: Surd, unit: 'in' | 'cm'): string {
  const { is, length } = nearly(value, unit);
  if (is === 'exact') return printLength(length, unit);
  return `${is === 'under' ? 'less than ' : ''}${printHundredths(length, unit)}`;
}

/** @returns a whole number of hundredths with its unit: "0.02 in."; in centimetres with a comma: "0,02 cm" */
export function printHundredths({ n, d }: Rational, unit: 'in' | 'cm'): string {
  const hundredths = n * (100 / d);
  const [whole, rest] = [Math.floor(hundredths / 100), `${hundredths % 100}`.padStart(2, '0')];
  return unit === 'in' ? `${whole}.${rest} in.` : `${whole},${rest} cm`;
}

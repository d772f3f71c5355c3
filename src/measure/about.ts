import { printLength } from './lengths.ts';
import { compare, rational, ZERO, type Rational } from './rational.ts';
import { ceilToStep, plus, type Surd } from './surd.ts';

const HUNDREDTH = rational(1, 100);
const HALF_OF_IT = rational(-1, 200);

/** Fractions of an inch that a ruler may show. */
const FINEST = 64;

/**
 * @returns a length (≥ 0) for people who want to know how much it is, not to measure it: exactly where a ruler has fractions for it
 * ("1/16 in.", "0,5 cm"), else to the nearest hundredth ("0.02 in.", "0,02 cm"), "less than 0.01 in." where that is nothing
 */
export function aboutLength(value: Surd, unit: 'in' | 'cm'): string {
  if (value.r === 0 && (unit === 'in' ? FINEST : 1000) % value.p.d === 0) return printLength(value.p, unit);
  const near = ceilToStep(plus(value, HALF_OF_IT), HUNDREDTH);
  return compare(near, ZERO) > 0 ? decimal(near, unit) : `less than ${decimal(HUNDREDTH, unit)}`;
}

/** A number of hundredths with a point, in centimetres with a comma. */
function decimal({ n, d }: Rational, unit: 'in' | 'cm'): string {
  const hundredths = n * (100 / d);
  const [whole, rest] = [Math.floor(hundredths / 100), `${hundredths % 100}`.padStart(2, '0')];
  return unit === 'in' ? `${whole}.${rest} in.` : `${whole},${rest} cm`;
}

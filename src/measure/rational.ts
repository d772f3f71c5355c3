import Fraction from 'fraction.js';

/**
 * An exact number n/d as plain data: d > 0, lowest terms, both safe integers.
 * It survives JSON and structuredClone, which an instance of a number class does not.
 */
export interface Rational {
  readonly n: number;
  readonly d: number;
}

/**
 * @returns n/d in lowest terms with a positive denominator
 * @throws RangeError when d is 0 or when a part is not a safe integer
 */
export function rational(n: number, d = 1): Rational {
  if (!Number.isSafeInteger(n) || !Number.isSafeInteger(d)) throw new RangeError(`not an exact fraction: ${n}/${d}`);
  if (d === 0) throw new RangeError('a fraction with denominator 0');
  return fromFraction(new Fraction(n, d));
}

export const ZERO: Rational = { n: 0, d: 1 };
export const ONE: Rational = { n: 1, d: 1 };

/** @returns the plain form of a fraction.js value; RangeError when it leaves the safe integers */
function fromFraction(value: Fraction): Rational {
  const n = Number(value.s * value.n);
  const d = Number(value.d);
  if (!Number.isSafeInteger(n) || !Number.isSafeInteger(d)) throw new RangeError('a length that is too fine or too large to hold exactly');
  return { n: n === 0 ? 0 : n, d };
}

const fraction = (a: Rational): Fraction => new Fraction(a.n, a.d);

/** @returns a + b, exactly */
export const add = (a: Rational, b: Rational): Rational => fromFraction(fraction(a).add(fraction(b)));
/** @returns a − b, exactly */
export const subtract = (a: Rational, b: Rational): Rational => fromFraction(fraction(a).sub(fraction(b)));
/** @returns a · b, exactly */
export const multiply = (a: Rational, b: Rational): Rational => fromFraction(fraction(a).mul(fraction(b)));
/** @returns a / b, exactly; RangeError when b is 0 */
export function divide(a: Rational, b: Rational): Rational {
  if (b.n === 0) throw new RangeError('a division by 0');
  return fromFraction(fraction(a).div(fraction(b)));
}
/** @returns −1, 0 or 1 as a is less than, equal to or greater than b */
export const compare = (a: Rational, b: Rational): number => fraction(a).compare(fraction(b));
/** @returns whether a and b are the same number */
export const equals = (a: Rational, b: Rational): boolean => a.n === b.n && a.d === b.d;
/** @returns the largest number of which both a and b are whole multiples; both must be positive */
export const commonMeasure = (a: Rational, b: Rational): Rational => fromFraction(fraction(a).gcd(fraction(b)));
/** @returns the nearest double, for ink and for estimates only */
export const toNumber = (a: Rational): number => a.n / a.d;

/** @returns n/d in lowest terms, from whole numbers of any size; RangeError when d is 0 or the lowest terms leave the safe integers */
export function ratio(n: bigint, d: bigint): Rational {
  if (d === 0n) throw new RangeError('a fraction with denominator 0');
  return fromFraction(new Fraction(n, d));
}
/** @returns how many whole times b goes into a, exactly; RangeError when b is 0 */
export const timesInto = (a: Rational, b: Rational): number => wholePart(divide(a, b));
/** @returns the smallest whole multiple of step (positive) that is at least value, exactly */
export function upToStep(value: Rational, step: Rational): Rational {
  const steps = divide(value, step);
  const whole = wholePart(steps);
  return multiply(step, rational(steps.d === 1 ? whole : whole + 1));
}
/** @returns the smaller of a and b */
export const lesser = (a: Rational, b: Rational): Rational => (compare(a, b) <= 0 ? a : b);

const wholePart = (a: Rational): number => Number(fraction(a).floor().valueOf());

/** @returns the greatest common divisor of two whole numbers of any size, ≥ 0 */
export function gcd(a: bigint, b: bigint): bigint {
  let [x, y] = [a < 0n ? -a : a, b < 0n ? -b : b];
  while (y !== 0n) [x, y] = [y, x % y];
  return x;
}

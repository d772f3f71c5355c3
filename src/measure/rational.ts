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
  return lowest(n, d);
}

export const ZERO: Rational = { n: 0, d: 1 };
export const ONE: Rational = { n: 1, d: 1 };

/** @returns n/d in lowest terms, of two safe integers, d not 0 */
function lowest(n: number, d: number): Rational {
  let [x, y] = [n, d];
  while (y !== 0) [x, y] = [y, x % y];
  // Over what divides both, with its sign, the denominator is positive; a zero has no sign of its own.
  const common = x < 0 === d < 0 ? x : -x;
  return { n: n / common + 0, d: d / common };
}

/*
 * A product or a sum of safe integers that is itself a safe integer was not rounded; any other is worked out again in whole numbers of
 * any size, whose lowest terms may still be safe.
 */

/** @returns a + b, exactly */
export function add(a: Rational, b: Rational): Rational {
  const [one, other, d] = [a.n * b.d, b.n * a.d, a.d * b.d];
  const n = one + other;
  if (Number.isSafeInteger(one) && Number.isSafeInteger(other) && Number.isSafeInteger(n) && Number.isSafeInteger(d)) return lowest(n, d);
  return ratio(BigInt(a.n) * BigInt(b.d) + BigInt(b.n) * BigInt(a.d), BigInt(a.d) * BigInt(b.d));
}
/** @returns a − b, exactly */
export const subtract = (a: Rational, b: Rational): Rational => add(a, { n: -b.n, d: b.d });
/** @returns a · b, exactly */
export function multiply(a: Rational, b: Rational): Rational {
  const [n, d] = [a.n * b.n, a.d * b.d];
  return Number.isSafeInteger(n) && Number.isSafeInteger(d) ? lowest(n, d) : ratio(BigInt(a.n) * BigInt(b.n), BigInt(a.d) * BigInt(b.d));
}
/** @returns a / b, exactly; RangeError when b is 0 */
export function divide(a: Rational, b: Rational): Rational {
  if (b.n === 0) throw new RangeError('a division by 0');
  const [n, d] = [a.n * b.d, a.d * b.n];
  return Number.isSafeInteger(n) && Number.isSafeInteger(d) ? lowest(n, d) : ratio(BigInt(a.n) * BigInt(b.d), BigInt(a.d) * BigInt(b.n));
}
/** @returns −1, 0 or 1 as a is less than, equal to or greater than b */
export function compare(a: Rational, b: Rational): number {
  const [one, other] = [a.n * b.d, b.n * a.d];
  if (Number.isSafeInteger(one) && Number.isSafeInteger(other)) return one < other ? -1 : one > other ? 1 : 0;
  const [left, right] = [BigInt(a.n) * BigInt(b.d), BigInt(b.n) * BigInt(a.d)];
  return left < right ? -1 : left > right ? 1 : 0;
}
/** @returns whether a and b are the same number */
export const equals = (a: Rational, b: Rational): boolean => a.n === b.n && a.d === b.d;
/** @returns the largest number of which both a and b are whole multiples; both must be positive */
export const commonMeasure = (a: Rational, b: Rational): Rational =>
  ratio(gcd(BigInt(a.n) * BigInt(b.d), BigInt(b.n) * BigInt(a.d)), BigInt(a.d) * BigInt(b.d));
/** @returns the nearest double, for ink and for estimates only */
export const toNumber = (a: Rational): number => a.n / a.d;

/** @returns n/d in lowest terms, from whole numbers of any size; RangeError when d is 0 or the lowest terms leave the safe integers */
export function ratio(n: bigint, d: bigint): Rational {
  if (d === 0n) throw new RangeError('a fraction with denominator 0');
  const common = d < 0n ? -gcd(n, d) : gcd(n, d);
  const lowestTerms = { n: Number(n / common), d: Number(d / common) };
  if (!Number.isSafeInteger(lowestTerms.n) || !Number.isSafeInteger(lowestTerms.d))
    throw new RangeError('a length that is too fine or too large to hold exactly');
  return lowestTerms;
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

const wholePart = ({ n, d }: Rational): number => (n - (((n % d) + d) % d)) / d;

/** @returns the greatest common divisor of two whole numbers of any size, ≥ 0 */
export function gcd(a: bigint, b: bigint): bigint {
  let [x, y] = [a < 0n ? -a : a, b < 0n ? -b : b];
  while (y !== 0n) [x, y] = [y, x % y];
  return x;
}

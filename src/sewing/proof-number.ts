import type { Rational } from '../measure/rational.ts';

/**
 * The proof's own numbers. It shares no arithmetic with the stages it judges, and its numbers have no bounds,
 * so that nothing can be too fine to be checked.
 */
export interface Fraction {
  readonly n: bigint;
  /** > 0, no common divisor with n. */
  readonly d: bigint;
}

const absolute = (a: bigint): bigint => (a < 0n ? -a : a);

/** @returns the greatest common divisor, ≥ 0 */
export function commonDivisor(a: bigint, b: bigint): bigint {
  let x = absolute(a);
  let y = absolute(b);
  while (y !== 0n) [x, y] = [y, x % y];
  return x;
}

/** @returns n/d in lowest terms; RangeError when d is 0 */
export function fraction(n: bigint, d = 1n): Fraction {
  if (d === 0n) throw new RangeError('a fraction with denominator 0');
  if (d === 1n) return { n, d };
  const common = d < 0n ? -commonDivisor(n, d) : commonDivisor(n, d);
  return { n: n / common, d: d / common };
}

/** @returns the same number in the proof's own form */
export const exactly = (a: Rational): Fraction => fraction(BigInt(a.n), BigInt(a.d));

export const NOTHING: Fraction = { n: 0n, d: 1n };
/** @returns a + b */
export const plus = (a: Fraction, b: Fraction): Fraction => fraction(a.n * b.d + b.n * a.d, a.d * b.d);
/** @returns a − b */
export const minus = (a: Fraction, b: Fraction): Fraction => fraction(a.n * b.d - b.n * a.d, a.d * b.d);
/** @returns a · b */
export const times = (a: Fraction, b: Fraction): Fraction => fraction(a.n * b.n, a.d * b.d);
/** @returns a / b; RangeError when b is 0 */
export const over = (a: Fraction, b: Fraction): Fraction => fraction(a.n * b.d, a.d * b.n);
/** @returns k · a */
export const scaled = (k: number, a: Fraction): Fraction => fraction(BigInt(k) * a.n, a.d);
/** @returns −1, 0 or 1 */
export const sign = (a: bigint): number => (a > 0n ? 1 : a < 0n ? -1 : 0);
/** @returns −1, 0 or 1 as a is less than, equal to or greater than b */
export const order = (a: Fraction, b: Fraction): number => sign(a.n * b.d - b.n * a.d);

/** @returns the largest whole number whose square is at most a; a ≥ 0 */
export function wholeRoot(a: bigint): bigint {
  if (a < 2n) return a;
  let root = 1n << BigInt((a.toString(2).length + 1) >> 1);
  for (;;) {
    const next = (root + a / root) >> 1n;
    if (next >= root) return root;
    root = next;
  }
}

/** One term k·√of of a length; of ≥ 0. */
export interface Root {
  readonly k: Fraction;
  readonly of: Fraction;
}

/** A length as a sum of square roots: what diagonal seams and slanted edges make of whole steps. */
export type Roots = readonly Root[];

/** @returns the length a, without roots */
export const straight = (a: Fraction): Roots => [{ k: a, of: fraction(1n) }];
/** @returns k·√of */
export const root = (k: Fraction, of: Fraction): Roots => [{ k, of }];
/** @returns −a */
export const opposite = (a: Roots): Roots => a.map((term) => ({ k: fraction(-term.k.n, term.k.d), of: term.of }));

/** Terms k·√m with whole m, no two of them multiples of one another, so that only all k = 0 make the sum 0. */
function independent(sum: Roots): { k: Fraction; m: bigint }[] {
  const terms: { k: Fraction; m: bigint }[] = [];
  for (const { k, of } of sum) {
    // √(n/d) = √(n·d) / d
    let m = of.n * of.d;
    let factor = over(k, fraction(of.d));
    if (m === 0n || factor.n === 0n) continue;
    const whole = wholeRoot(m);
    if (whole * whole === m) {
      factor = times(factor, fraction(whole));
      m = 1n;
    }
    const alike = terms.find((term) => {
      const product = wholeRoot(term.m * m);
      return product * product === term.m * m;
    });
    // √m = √(m·m′) / m′ · √m′
    if (alike) alike.k = plus(alike.k, times(factor, fraction(wholeRoot(alike.m * m), alike.m)));
    else terms.push({ k: factor, m });
  }
  return terms.filter((term) => term.k.n !== 0n);
}

/**
 * @returns −1, 0 or 1: the sign of a sum of square roots, exactly. Roots of whole numbers that are not square multiples of
 * one another are linearly independent over the fractions (Besicovitch, J. London Math. Soc. 15, 1940, from memory), so a sum
 * that does not cancel term by term is not 0 and some number of binary places tells its sign.
 */
export function signOf(sum: Roots): number {
  const terms = independent(sum);
  if (terms.length === 0) return 0;
  if (terms.length === 1) return sign(terms[0].k.n);
  const common = terms.reduce((d, term) => d * term.k.d, 1n);
  const whole = terms.map((term) => ({ k: (term.k.n * common) / term.k.d, m: term.m }));
  for (let places = 32n; ; places *= 2n) {
    let least = 0n;
    let most = 0n;
    for (const { k, m } of whole) {
      const below = wholeRoot(m << (2n * places));
      const above = below * below === m << (2n * places) ? below : below + 1n;
      least += k > 0n ? k * below : k * above;
      most += k > 0n ? k * above : k * below;
    }
    if (least > 0n) return 1;
    if (most < 0n) return -1;
  }
}

/** @returns −1, 0 or 1 as a is less than, equal to or greater than b */
export const compareRoots = (a: Roots, b: Roots): number => signOf([...a, ...opposite(b)]);

/** @returns a number as it is said in the trade: "4", "4 1/2", "1/8" */
export function say(a: Fraction): string {
  const positive = absolute(a.n);
  const whole = positive / a.d;
  const rest = positive % a.d;
  const words = rest === 0n ? `${whole}` : whole === 0n ? `${rest}/${a.d}` : `${whole} ${rest}/${a.d}`;
  return a.n < 0n ? `−${words}` : words;
}

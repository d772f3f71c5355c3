import type { Rational } from './rational.ts';
import { ZERO, add, multiply, ratio, rational, subtract } from './rational.ts';

/** An exact length p + q·√r, r a whole number ≥ 0 (1 or 0 root: q = 0). */
export interface Surd {
  readonly p: Rational;
  readonly q: Rational;
  readonly r: number;
}

/**
 * @returns p + q·√r with every square factor taken out of r, so that equal values look equal
 * and a value is rational exactly when its r is 0
 * @throws RangeError when r is negative, not whole or not a safe integer
 */
export function surd(p: Rational, q: Rational = ZERO, r = 0): Surd {
  if (!Number.isSafeInteger(r) || r < 0) throw new RangeError(`not a whole number under a root: ${r}`);
  if (q.n === 0 || r === 0) return { p, q: ZERO, r: 0 };
  const { outside, inside } = takeSquaresOut(r);
  const factor = multiply(q, rational(outside));
  return inside === 1 ? { p: add(p, factor), q: ZERO, r: 0 } : { p, q: factor, r: inside };
}

/** @returns the square root of a rational ≥ 0, exactly: √(n/d) = √(n·d)/d; RangeError when it is negative or leaves the safe integers */
export function rootOf(square: Rational): Surd {
  if (square.n < 0) throw new RangeError('the square root of a negative number');
  const [n, d] = [takeSquaresOut(square.n), takeSquaresOut(square.d)];
  return surd(ZERO, rational(n.outside, d.outside * d.inside), n.inside * d.inside);
}

/** @returns a + x */
export const plus = (a: Surd, x: Rational): Surd => ({ ...a, p: add(a.p, x) });

/** @returns a · k */
export const times = (a: Surd, k: Rational): Surd => surd(multiply(a.p, k), multiply(a.q, k), a.r);

/** @returns whether a + b is again of the form p + q·√r */
export const fitTogether = (a: Surd, b: Surd): boolean => a.r === 0 || b.r === 0 || a.r === b.r;

/** @returns a + b; RangeError when they have different roots, for the sum is then no longer p + q·√r */
export function addSurds(a: Surd, b: Surd): Surd {
  if (!fitTogether(a, b)) throw new RangeError(`√${a.r} and √${b.r} do not add up to one root`);
  return surd(add(a.p, b.p), add(a.q, b.q), a.r === 0 ? b.r : a.r);
}

/** @returns −1, 0 or 1 as a is less than, equal to or greater than x; decided in whole numbers */
export const compareWith = (a: Surd, x: Rational): number => signOf(subtract(a.p, x), a.q, a.r);

/** @returns −1, 0 or 1 as a is less than, equal to or greater than b, whatever their roots; decided in whole numbers */
export function compareSurds(a: Surd, b: Surd): number {
  const over = BigInt(a.p.d) * BigInt(a.q.d) * BigInt(b.p.d) * BigInt(b.q.d);
  const whole = (x: Rational): bigint => (BigInt(x.n) * over) / BigInt(x.d);
  // The sign of (A + B·√r) − C·√s: when the two sides have the same sign, their squares decide.
  const [A, B, C] = [whole(a.p) - whole(b.p), whole(a.q), whole(b.q)];
  const [r, s] = [BigInt(a.r), BigInt(b.r)];
  const left = signOfWhole(A, B, r);
  const right = s === 0n ? 0 : signOfBig(C);
  if (left !== right) return left < right ? -1 : 1;
  return left < 0 ? signOfWhole(C * C * s - A * A - B * B * r, -2n * A * B, r) : signOfWhole(A * A + B * B * r - C * C * s, 2n * A * B, r);
}

/**
 * @returns the smallest whole multiple of step (positive, same unit) that is at least the value, decided in whole numbers;
 * equal to the value only when that is itself a multiple, which no irrational value is
 */
export function ceilToStep(value: Surd, step: Rational): Rational {
  // value / step = (P ± √N) / D, and the ceiling of x/D is the ceiling of ⌈x⌉/D.
  const D = BigInt(value.p.d) * BigInt(value.q.d) * BigInt(step.n);
  const P = BigInt(value.p.n) * BigInt(value.q.d) * BigInt(step.d);
  const Q = BigInt(value.q.n) * BigInt(value.p.d) * BigInt(step.d);
  const N = Q * Q * BigInt(value.r);
  const root = wholeRoot(N);
  const ceiling = Q < 0n ? P - root : P + (root * root === N ? root : root + 1n);
  const steps = ceiling >= 0n ? (ceiling + D - 1n) / D : -(-ceiling / D);
  return ratio(steps * BigInt(step.n), BigInt(step.d));
}

/** The sign of p + q·√r. */
function signOf(p: Rational, q: Rational, r: number): number {
  return signOfWhole(BigInt(p.n) * BigInt(q.d), BigInt(q.n) * BigInt(p.d), BigInt(r));
}

const signOfBig = (a: bigint): number => (a > 0n ? 1 : a < 0n ? -1 : 0);

/** The sign of a + b·√r in whole numbers: where a and b pull different ways, the larger square wins. */
function signOfWhole(a: bigint, b: bigint, r: bigint): number {
  const [first, second] = [signOfBig(a), r === 0n ? 0 : signOfBig(b)];
  if (first === 0 || second === 0 || first === second) return first === 0 ? second : first;
  return signOfBig(first < 0 ? b * b * r - a * a : a * a - b * b * r);
}

/** The largest whole number whose square is at most n (n ≥ 0), by Newton's iteration from above. */
function wholeRoot(n: bigint): bigint {
  if (n < 2n) return n;
  let guess = 1n << BigInt((n.toString(2).length + 1) >> 1);
  for (;;) {
    const next = (guess + n / guess) >> 1n;
    if (next >= guess) return guess;
    guess = next;
  }
}

/** r = outside² · inside, inside without square factors. What is left after dividing up to the cube root has at most two prime factors. */
function takeSquaresOut(r: number): { outside: number; inside: number } {
  if (r === 0) return { outside: 0, inside: 1 };
  let [outside, inside, rest] = [1, 1, r];
  for (let d = 2; d * d * d <= rest; d += 1) {
    while (rest % (d * d) === 0) {
      outside *= d;
      rest /= d * d;
    }
    if (rest % d === 0) {
      inside *= d;
      rest /= d;
    }
  }
  const root = Number(wholeRoot(BigInt(rest)));
  return root * root === rest ? { outside: outside * root, inside } : { outside, inside: inside * rest };
}

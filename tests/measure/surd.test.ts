import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Rational } from '../../src/measure/rational.ts';
import { ZERO, compare, divide, multiply, rational, subtract, timesInto, upToStep } from '../../src/measure/rational.ts';
import type { Surd } from '../../src/measure/surd.ts';
import { addSurds, ceilToStep, compareSurds, compareWith, fitTogether, plus, rootOf, surd, times } from '../../src/measure/surd.ts';

const laws = { seed: 20260711, numRuns: 400 };
const anyRational = fc.tuple(fc.integer({ min: -4000, max: 4000 }), fc.integer({ min: 1, max: 96 })).map(([n, d]) => rational(n, d));
const anyStep = fc.constantFrom(rational(1, 8), rational(1, 16), rational(1, 10), rational(3, 7), rational(2));
const anySurd = fc.tuple(anyRational, anyRational, fc.integer({ min: 0, max: 500 })).map(([p, q, r]) => surd(p, q, r));

/** An independent reading: the value to 60 decimal places, from the decimal digits of the root found digit by digit. */
function decimals(value: Surd): bigint {
  const unit = 10n ** 60n;
  const part = (x: Rational): bigint => (BigInt(x.n) * unit) / BigInt(x.d);
  let root = 0n;
  for (let place = 10n ** 63n; place > 0n; place /= 10n) {
    while ((root + place) * (root + place) <= BigInt(value.r) * unit * unit) root += place;
  }
  return part(value.p) + (BigInt(value.q.n) * root) / BigInt(value.q.d);
}

/** Values whose 60 decimals differ by more than the last few digits are different numbers. */
const sign = (difference: bigint): number => (difference > 10_000n ? 1 : difference < -10_000n ? -1 : 0);

describe('a length with a root in it', () => {
  test('√8 is 2√2, √(1/2) is half of √2, √(9/4) is 3/2', () => {
    expect(surd(ZERO, rational(1), 8)).toEqual({ p: ZERO, q: rational(2), r: 2 });
    expect(rootOf(rational(1, 2))).toEqual({ p: ZERO, q: rational(1, 2), r: 2 });
    expect(rootOf(rational(9, 4))).toEqual({ p: rational(3, 2), q: ZERO, r: 0 });
    expect(rootOf(ZERO)).toEqual({ p: ZERO, q: ZERO, r: 0 });
  });

  test('takes every square factor out of a root, also of a large prime', () => {
    expect(surd(ZERO, rational(1), 10007 * 10007 * 3)).toEqual({ p: ZERO, q: rational(10007), r: 3 });
    expect(surd(ZERO, rational(1), 10007 * 10009)).toEqual({ p: ZERO, q: rational(1), r: 10007 * 10009 });
  });

  test('is refused under a negative or broken root', () => {
    expect(() => surd(ZERO, rational(1), -2)).toThrow(RangeError);
    expect(() => surd(ZERO, rational(1), 1.5)).toThrow(RangeError);
    expect(() => rootOf(rational(-1))).toThrow(RangeError);
    expect(() => addSurds(rootOf(rational(2)), rootOf(rational(3)))).toThrow(RangeError);
  });

  test('the root of a square is the number', () => {
    fc.assert(
      fc.property(anyRational, (x) => {
        const size = x.n < 0 ? multiply(x, rational(-1)) : x;
        expect(rootOf(multiply(x, x))).toEqual({ p: size, q: ZERO, r: 0 });
      }),
      laws,
    );
  });

  test('compares with a ruler mark as its 60 decimals do', () => {
    fc.assert(
      fc.property(anySurd, anyRational, (a, x) => {
        expect(compareWith(a, x)).toBe(sign(decimals(a) - decimals(surd(x))));
      }),
      laws,
    );
  });

  test('compares with another as their 60 decimals do', () => {
    fc.assert(
      fc.property(anySurd, anySurd, (a, b) => {
        expect(compareSurds(a, b)).toBe(sign(decimals(a) - decimals(b)));
      }),
      laws,
    );
    fc.assert(
      fc.property(anySurd, (a) => {
        expect(compareSurds(a, a)).toBe(0);
      }),
      laws,
    );
  });

  test('tells √50 − 7 from 1/14 and from √2 · 5 − 7', () => {
    const near = plus(rootOf(rational(50)), rational(-7));
    expect(compareWith(near, rational(1, 14))).toBe(-1);
    expect(compareSurds(near, plus(times(rootOf(rational(2)), rational(5)), rational(-7)))).toBe(0);
  });

  test('adds and scales as its decimals do', () => {
    fc.assert(
      fc.property(anySurd, anySurd, anyRational, (a, b, k) => {
        expect(sign(decimals(plus(a, k)) - decimals(a) - decimals(surd(k)))).toBe(0);
        expect(sign(decimals(times(a, k)) - (decimals(a) * BigInt(k.n)) / BigInt(k.d))).toBe(0);
        if (fitTogether(a, b)) expect(sign(decimals(addSurds(a, b)) - decimals(a) - decimals(b))).toBe(0);
      }),
      laws,
    );
  });

  test('rounds up to the next ruler mark and never past it', () => {
    fc.assert(
      fc.property(anySurd, anyStep, (a, step) => {
        const up = ceilToStep(a, step);
        expect(divide(up, step).d).toBe(1);
        expect(compareWith(a, up)).toBeLessThanOrEqual(0);
        expect(compareWith(a, subtract(up, step))).toBe(1);
      }),
      laws,
    );
  });

  test('a length on the mark stays on it; a length with a root never is', () => {
    fc.assert(
      fc.property(fc.integer({ min: -500, max: 500 }), anyStep, (k, step) => {
        const mark = multiply(step, rational(k));
        expect(ceilToStep(surd(mark), step)).toEqual(mark);
        expect(compare(ceilToStep(surd(mark, rational(1, 1_000_000_000), 2), step), mark)).toBe(1);
      }),
      laws,
    );
  });
});

describe('a plain length', () => {
  test('goes up to the ruler mark', () => {
    expect(upToStep(rational(53, 100), rational(1, 8))).toEqual(rational(5, 8));
    expect(upToStep(rational(5, 8), rational(1, 8))).toEqual(rational(5, 8));
    fc.assert(
      fc.property(anyRational, anyStep, (x, step) => {
        expect(upToStep(x, step)).toEqual(ceilToStep(surd(x), step));
      }),
      laws,
    );
  });

  test('fits into another a whole number of times', () => {
    expect(timesInto(rational(42), rational(13, 2))).toBe(6);
    expect(timesInto(rational(42), rational(14))).toBe(3);
    expect(timesInto(rational(5), rational(6))).toBe(0);
  });
});

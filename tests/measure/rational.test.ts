import fc from 'fast-check';
import Fraction from 'fraction.js';
import { describe, expect, it } from 'vitest';
import { add, commonMeasure, compare, divide, multiply, ratio, rational, subtract, timesInto, upToStep, type Rational } from '../../src/measure/rational.ts';

/** Small ones as lengths are, and such whose products leave what a double holds. */
const whole = fc.oneof(fc.integer({ min: -200, max: 200 }), fc.maxSafeInteger(), fc.integer());
const under = fc.oneof(fc.integer({ min: 1, max: 64 }), fc.integer({ min: 1, max: 2 ** 40 }));
const number = fc.tuple(whole, under).map(([n, d]) => rational(n, d));

/** What fraction.js makes of it, or 'too large' where its lowest terms are no safe integers. */
const other = (value: Fraction): Rational | 'too large' => {
  const [n, d] = [Number(value.s * value.n), Number(value.d)];
  return Number.isSafeInteger(n) && Number.isSafeInteger(d) ? { n: n + 0, d } : 'too large';
};
const ours = (work: () => Rational): Rational | 'too large' => {
  try {
    return work();
  } catch (error) {
    if (error instanceof RangeError) return 'too large';
    throw error;
  }
};
const of = ({ n, d }: Rational): Fraction => new Fraction(n, d);

describe('sums of exact lengths', () => {
  it('are those of fraction.js, and refused where they cannot be held', () => {
    fc.assert(
      fc.property(number, number, (a, b) => {
        expect(ours(() => add(a, b))).toEqual(other(of(a).add(of(b))));
        expect(ours(() => subtract(a, b))).toEqual(other(of(a).sub(of(b))));
        expect(ours(() => multiply(a, b))).toEqual(other(of(a).mul(of(b))));
        if (b.n !== 0) expect(ours(() => divide(a, b))).toEqual(other(of(a).div(of(b))));
        expect(compare(a, b)).toBe(of(a).compare(of(b)));
        if (a.n > 0 && b.n > 0) expect(ours(() => commonMeasure(a, b))).toEqual(other(of(a).gcd(of(b))));
      }),
      { seed: 20261125, numRuns: 5_000 },
    );
  });

  it('are in lowest terms over a positive denominator, whatever they are made of', () => {
    fc.assert(
      fc.property(fc.bigInt({ min: -(2n ** 80n), max: 2n ** 80n }), fc.bigInt({ min: -(2n ** 60n), max: 2n ** 60n }), (n, d) => {
        fc.pre(d !== 0n);
        expect(ours(() => ratio(n, d))).toEqual(other(new Fraction(n, d)));
      }),
      { seed: 20261125, numRuns: 2_000 },
    );
    expect(rational(-0, -4)).toEqual({ n: 0, d: 1 });
    expect(rational(6, -4)).toEqual({ n: -3, d: 2 });
    expect(() => rational(1, 0)).toThrow(RangeError);
    expect(() => rational(0.5)).toThrow(RangeError);
  });

  it('tell how often a step goes into a length, and the next multiple of it', () => {
    fc.assert(
      fc.property(fc.tuple(fc.integer({ min: -5_000, max: 5_000 }), fc.integer({ min: 1, max: 64 })), fc.integer({ min: 1, max: 64 }), ([n, d], step) => {
        const [value, by] = [rational(n, d), rational(1, step)];
        expect(timesInto(value, by)).toBe(Number(of(value).div(of(by)).floor().valueOf()) + 0);
        expect(upToStep(value, by)).toEqual(other(of(value).div(of(by)).ceil().mul(of(by))));
      }),
      { seed: 20261125, numRuns: 2_000 },
    );
  });
});

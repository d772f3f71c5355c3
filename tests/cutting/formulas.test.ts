import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { formatLength } from '../../src/measure/lengths.ts';
import { multiply, rational, toNumber } from '../../src/measure/rational.ts';
import { ceilToStep, plus, rootOf, times, type Surd } from '../../src/measure/surd.ts';
import {
  centreOnPoint,
  cornerTriangleSquare,
  eightSquare,
  halfRectangle,
  halfSquare,
  plainSide,
  quarterSquare,
  sideTriangleSquare,
} from '../../src/cutting/formulas.ts';
import { extent, offset } from './buffer.ts';

const laws = { seed: 20260713, numRuns: 120 };
const sizes = fc.tuple(fc.integer({ min: 1, max: 400 }), fc.constantFrom(1, 2, 3, 7, 8, 16)).map(([n, d]) => rational(n, d));
const seams = fc.constantFrom(rational(1, 4), rational(3, 4), rational(3, 5), rational(3, 16), rational(127, 200));

const toFloat = ({ p, q, r }: Surd): number => toNumber(p) + toNumber(q) * Math.sqrt(r);
const close = (surd: Surd, size: number): void => {
  expect(toFloat(surd)).toBeCloseTo(size, 8);
};

describe('every triangle formula is the triangle offset by the seam allowance, measured with another library', () => {
  test('half-square: the legs of the offset triangle', () => {
    fc.assert(
      fc.property(sizes, seams, (leg, seam) => {
        const f = toNumber(leg);
        close(
          halfSquare(leg, seam),
          extent(
            offset(
              [
                [0, 0],
                [f, 0],
                [0, f],
              ],
              toNumber(seam),
              'whole',
            ),
            [1, 0],
          ),
        );
      }),
      laws,
    );
  });

  test('quarter-square: the long side of the offset triangle', () => {
    fc.assert(
      fc.property(sizes, seams, (side, seam) => {
        const f = toNumber(side);
        close(
          quarterSquare(side, seam),
          extent(
            offset(
              [
                [0, 0],
                [f, 0],
                [f / 2, f / 2],
              ],
              toNumber(seam),
              'whole',
            ),
            [1, 0],
          ),
        );
      }),
      laws,
    );
  });

  test('half-rectangle: both legs of the offset triangle', () => {
    fc.assert(
      fc.property(sizes, sizes, seams, (w, h, seam) => {
        const points = offset(
          [
            [0, 0],
            [toNumber(w), 0],
            [0, toNumber(h)],
          ],
          toNumber(seam),
          'whole',
        );
        const { width, height } = halfRectangle(w, h, seam);
        expect(toFloat(width) / extent(points, [1, 0])).toBeCloseTo(1, 8);
        expect(toFloat(height) / extent(points, [0, 1])).toBeCloseTo(1, 8);
      }),
      laws,
    );
  });

  test('square on point: the side of the offset square', () => {
    fc.assert(
      fc.property(sizes, seams, (side, seam) => {
        const f = toNumber(side);
        const points = offset(
          [
            [f / 2, 0],
            [f, f / 2],
            [f / 2, f],
            [0, f / 2],
          ],
          toNumber(seam),
          'whole',
        );
        close(centreOnPoint(side, seam), extent(points, [Math.SQRT1_2, Math.SQRT1_2]));
      }),
      laws,
    );
  });
});

describe('the formulas agree with one another', () => {
  test('a half-square triangle is a half-rectangle triangle of equal legs', () => {
    fc.assert(
      fc.property(sizes, seams, (f, seam) => {
        expect(halfRectangle(f, f, seam)).toEqual({ width: halfSquare(f, seam), height: halfSquare(f, seam) });
      }),
      laws,
    );
  });

  test('the long side of a cut half-square triangle is the cut quarter-square triangle of that long side', () => {
    fc.assert(
      fc.property(sizes, seams, (f, seam) => {
        const root2 = rootOf(rational(2));
        const half = halfSquare(f, seam);
        const longSide = plus(times(root2, half.p), multiply(rational(2), half.q));
        expect(quarterSquare(times(root2, f), seam)).toEqual(longSide);
      }),
      laws,
    );
  });

  test('setting triangles are quarter and half squares on the diagonal of the block', () => {
    const diagonal = times(rootOf(rational(2)), rational(12));
    expect(sideTriangleSquare(rational(12), rational(1, 4))).toEqual(quarterSquare(diagonal, rational(1, 4)));
    expect(cornerTriangleSquare(rational(12), rational(1, 4))).toEqual(halfSquare(times(diagonal, rational(1, 2)), rational(1, 4)));
  });

  test('a 3 by 4 half-rectangle needs exactly 3 3/4 by 5, for its diagonal is 5', () => {
    const { width, height } = halfRectangle(rational(3), rational(4), rational(1, 4));
    expect([width, height]).toEqual([plus(rootOf(rational(0)), rational(15, 4)), plus(rootOf(rational(0)), rational(5))]);
  });

  test('a length off the 45° and 90° directions has no square that gives its triangle', () => {
    expect(() => halfSquare(rootOf(rational(5)), rational(1, 4))).toThrow(RangeError);
  });
});

describe('sizes derived by geometry, rounded up to the eighth', () => {
  const up = (exact: Surd): string => formatLength(ceilToStep(exact, rational(1, 8)));
  const quarter = rational(1, 4);
  test.each([
    [2, '2', '1 7/8'],
    [3, '2 5/8', '2 3/8'],
    [4, '3 3/8', '2 7/8'],
    [6, '4 3/4', '3 7/8'],
    [8, '6 1/4', '4 7/8'],
    [12, '9', '6 7/8'],
  ])('square in a square of %i: centre %s and corner squares %s', (f, centre, corner) => {
    expect(up(centreOnPoint(rational(f), quarter))).toBe(centre);
    expect(up(halfSquare(rational(f, 2), quarter))).toBe(corner);
  });

  // Economy block: the first round's triangles lie with their long side on the centre square.
  test.each([
    [4, '2 1/2', '2 3/8', '2 7/8'],
    [6, '3 1/2', '3', '3 7/8'],
    [8, '4 1/2', '3 3/4', '4 7/8'],
    [10, '5 1/2', '4 1/2', '5 7/8'],
    [12, '6 1/2', '5 1/8', '6 7/8'],
  ])('economy block of %i: centre %s, inner squares %s, outer squares %s', (f, middle, inner, outer) => {
    const centre = rational(f, 2);
    expect(up(plainSide(centre, quarter))).toBe(middle);
    expect(up(halfSquare(times(rootOf(rational(1, 2)), centre), quarter))).toBe(inner);
    expect(up(halfSquare(centre, quarter))).toBe(outer);
  });

  test('eight at a time is twice the square for two, trim and all', () => {
    expect(up(eightSquare(rational(4), quarter, rational(1, 8)))).toBe('10');
  });
});

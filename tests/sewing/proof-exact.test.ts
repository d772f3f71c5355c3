import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { compareRoots, fraction, plus, root, say, scaled, signOf, straight, times, wholeRoot } from '../../src/sewing/proof-number.ts';
import type { Roots } from '../../src/sewing/proof-number.ts';
import { area, bounds, hull, isConvex, split, spot, turnedBy } from '../../src/sewing/proof-outline.ts';
import type { Spot } from '../../src/sewing/proof-outline.ts';

const sq = (n: number, d = 1): Roots => root(fraction(1n), fraction(BigInt(n), BigInt(d)));
const SEEDED = { seed: 20262, numRuns: 500 };

describe('sums of square roots', () => {
  test('√2 + √8 is √18, and √2 + √3 is not √10', () => {
    expect(compareRoots([...sq(2), ...sq(8)], sq(18))).toBe(0);
    expect(compareRoots([...sq(2), ...sq(3)], sq(10))).toBe(-1);
    expect(compareRoots([...sq(1, 2), ...sq(1, 8)], sq(9, 8))).toBe(0);
  });

  test('a sum that doubles cannot tell from another is told apart', () => {
    // √n + √(n+2) < 2√(n+1), by about n^(−3/2)/4: here 2.5e-19 of 2e6 (concavity of the root).
    const n = 10 ** 12;
    expect(Math.sqrt(n) + Math.sqrt(n + 2) < 2 * Math.sqrt(n + 1)).toBe(false);
    expect(compareRoots([...sq(n), ...sq(n + 2)], root(fraction(2n), fraction(BigInt(n + 1))))).toBe(-1);
  });

  test('the trade adds 7/8 and 1 1/4 because 2 + √2 and 2 + 2√2 quarters are just under them', () => {
    const quarter = fraction(1n, 4n);
    const half: Roots = [...straight(scaled(2, quarter)), ...root(quarter, fraction(2n))];
    expect(compareRoots(half, straight(fraction(7n, 8n)))).toBe(-1);
    expect(compareRoots(half, straight(fraction(13n, 16n)))).toBe(1);
    expect(compareRoots([...half, ...root(quarter, fraction(2n))], straight(fraction(5n, 4n)))).toBe(-1);
  });

  test('agrees with doubles wherever doubles can tell', () => {
    const term = fc.tuple(
      fc.integer({ min: -50, max: 50 }),
      fc.integer({ min: 1, max: 20 }),
      fc.integer({ min: 0, max: 60 }),
      fc.integer({ min: 1, max: 9 }),
    );
    fc.assert(
      fc.property(fc.array(term, { minLength: 1, maxLength: 5 }), (terms) => {
        const near = terms.reduce((sum, [k, d, n, e]) => sum + (k / d) * Math.sqrt(n / e), 0);
        const exact = signOf(terms.map(([k, d, n, e]) => ({ k: fraction(BigInt(k), BigInt(d)), of: fraction(BigInt(n), BigInt(e)) })));
        fc.pre(Math.abs(near) > 1e-9);
        expect(exact).toBe(Math.sign(near));
      }),
      SEEDED,
    );
  });

  test('a whole root is the greatest whose square fits', () => {
    fc.assert(
      fc.property(fc.bigInt({ min: 0n, max: 1n << 200n }), (a) => {
        const r = wholeRoot(a);
        return r * r <= a && (r + 1n) * (r + 1n) > a;
      }),
      SEEDED,
    );
  });

  test('sizes are said as in the trade', () => {
    expect([fraction(4n), fraction(9n, 2n), fraction(-1n, 8n), fraction(0n)].map(say)).toEqual(['4', '4 1/2', '−1/8', '0']);
  });
});

describe('outlines', () => {
  const corner = fc
    .tuple(fc.integer({ min: -40, max: 40 }), fc.integer({ min: -40, max: 40 }), fc.integer({ min: 1, max: 6 }))
    .map(([x, y, w]) => spot(BigInt(x), BigInt(y), BigInt(w)));
  const convex = fc
    .array(corner, { minLength: 3, maxLength: 9 })
    .map(hull)
    .filter((outline) => outline.length >= 3);

  test('a hull is convex and runs clockwise', () => {
    fc.assert(
      fc.property(convex, (outline) => isConvex(outline) && area(outline).n > 0n && !isConvex(outline.toReversed())),
      SEEDED,
    );
  });

  test('a star that goes round twice is not convex, though it turns right at every corner', () => {
    const pentagon: Spot[] = [spot(0n, -10n), spot(10n, -3n), spot(6n, 8n), spot(-6n, 8n), spot(-10n, -3n)];
    expect(isConvex(pentagon)).toBe(true);
    expect(isConvex([0, 2, 4, 1, 3].map((i) => pentagon[i]))).toBe(false);
  });

  test('a cut divides an outline into two convex ones of the same area together', () => {
    fc.assert(
      fc.property(convex, corner, corner, (outline, p, q) => {
        fc.pre(p.x !== q.x || p.y !== q.y || p.w !== q.w);
        const { right, left } = split(outline, p, q);
        const parts = [right, left].filter((part): part is Spot[] => part !== null);
        const sum = parts.map(area).reduce(plus);
        expect(parts.every(isConvex)).toBe(true);
        expect(sum).toEqual(area(outline));
      }),
      SEEDED,
    );
  });

  test('a quarter turn changes no area and turns width into height', () => {
    fc.assert(
      fc.property(convex, (outline) => {
        const turned = outline.map((p) => turnedBy(p, 1));
        const [a, b] = [bounds(outline), bounds(turned)];
        expect(isConvex(turned)).toBe(true);
        expect(area(turned)).toEqual(area(outline));
        expect(plus(b.right, times(fraction(-1n), b.left))).toEqual(plus(a.bottom, times(fraction(-1n), a.top)));
      }),
      SEEDED,
    );
  });
});

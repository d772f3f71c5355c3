import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  compareX,
  compareY,
  gcd,
  latticePoint,
  lineKey,
  lineThrough,
  meet,
  parallel,
  reversed,
  side,
  signOfProducts,
  undirected,
  type Line,
  type Point,
} from '../../src/geometry/point.ts';
import { tries } from './drawings.ts';

/* Everything that decides must decide as whole numbers without limit (BigInt) do. */

const SAFE = Number.MAX_SAFE_INTEGER;
const sign = (v: bigint): number => (v > 0n ? 1 : v < 0n ? -1 : 0);
const big = BigInt;

/** Whole numbers of all magnitudes up to the last safe one. */
const anyNumber = fc.oneof(fc.integer({ min: -9, max: 9 }), fc.integer(), fc.maxSafeInteger());
const positive = fc.oneof(fc.integer({ min: 1, max: 9 }), fc.integer({ min: 1, max: SAFE }));
const anyPoint = fc.record({ x: anyNumber, y: anyNumber, w: positive });
const anyLine = fc.record({ a: anyNumber, b: anyNumber, c: anyNumber }).filter(({ a, b }) => a !== 0 || b !== 0);

/** Lattices of sixty thousand steps a side: finer than any block that the door lets in by much. */
const STEPS = 60_000;
const step = fc.oneof(fc.integer({ min: 0, max: 12 }), fc.integer({ min: 0, max: STEPS }), fc.integer({ min: STEPS - 12, max: STEPS }));
const lattice = fc.tuple(step, step).map(([x, y]) => latticePoint(x, y));
const twoPoints = fc.tuple(lattice, lattice).filter(([p, r]) => p.x !== r.x || p.y !== r.y);

/** @returns three minors of the two rows, lowest terms, in BigInt */
function minorsOf(u: readonly number[], v: readonly number[]): readonly [bigint, bigint, bigint] {
  const [a, b, c] = u.map(big) as [bigint, bigint, bigint];
  const [d, e, f] = v.map(big) as [bigint, bigint, bigint];
  const all = [b * f - c * e, c * d - a * f, a * e - b * d] as const;
  let common = 0n;
  for (const one of all) {
    let [m, n] = [common, one < 0n ? -one : one];
    while (n !== 0n) [m, n] = [n, m % n];
    common = m;
  }
  return common === 0n ? all : [all[0] / common, all[1] / common, all[2] / common];
}

const fits = (values: readonly bigint[]): boolean => values.every((v) => v <= big(SAFE) && v >= -big(SAFE));
const whole = ({ a, b, c }: Line): boolean => [a, b, c].every(Number.isSafeInteger) && gcd(gcd(a, b), c) === 1;

describe('deciding beyond doubles', () => {
  it('gives the sign of a sum of products at every magnitude', () => {
    fc.assert(
      fc.property(fc.tuple(anyNumber, anyNumber, anyNumber, anyNumber, anyNumber, anyNumber), ([a, b, c, d, e, f]) => {
        expect(signOfProducts(a, b, c, d, e, f)).toBe(sign(big(a) * big(b) + big(c) * big(d) + big(e) * big(f)));
      }),
      tries(2000),
    );
  });

  it('sees a difference of one between products of thirty digits', () => {
    // (n + 1)(n − 1) = n² − 1: doubles see no difference.
    const n = 94_906_267 * 1000;
    expect((n + 1) * (n - 1) - n * n).not.toBe(-1);
    expect(signOfProducts(n + 1, n - 1, -n, n, 0, 0)).toBe(-1);
    expect(signOfProducts(n + 1, n - 1, -n, n, 1, 1)).toBe(0);
    expect(signOfProducts(n + 1, n - 1, -n, n, 2, 1)).toBe(1);
  });

  it('tells front from back of any line for any point', () => {
    fc.assert(
      fc.property(anyLine, anyPoint, (l, p) => {
        expect(side(l, p)).toBe(sign(big(l.a) * big(p.x) + big(l.b) * big(p.y) - big(l.c) * big(p.w)));
        expect(side(reversed(l), p)).toBe(-side(l, p) + 0);
      }),
      tries(1000),
    );
  });

  it('puts points in order across and down', () => {
    fc.assert(
      fc.property(anyPoint, anyPoint, (p, r) => {
        expect(compareX(p, r)).toBe(sign(big(p.x) * big(r.w) - big(r.x) * big(p.w)));
        expect(compareY(p, r)).toBe(sign(big(p.y) * big(r.w) - big(r.y) * big(p.w)));
      }),
      tries(1000),
    );
  });

  it('knows which lines are parallel', () => {
    fc.assert(
      fc.property(
        anyLine,
        anyLine,
        fc.integer({ min: -9, max: 9 }).filter((k) => k !== 0),
        (l, m, k) => {
          expect(parallel(l, m)).toBe(big(l.a) * big(m.b) === big(l.b) * big(m.a));
          if ([l.a * k, l.b * k].every(Number.isSafeInteger)) expect(parallel(l, { a: l.a * k, b: l.b * k, c: m.c })).toBe(true);
        },
      ),
      tries(500),
    );
  });
});

describe('a lattice of 60,000 steps', () => {
  it('carries lines through any two of its points', () => {
    fc.assert(
      fc.property(twoPoints, lattice, ([p, r], other) => {
        const l = lineThrough(p, r);
        expect(whole(l)).toBe(true);
        expect([side(l, p), side(l, r)]).toEqual([0, 0]);
        // On screen y runs down: a right turn has a positive cross product.
        const turn = (big(r.x) - big(p.x)) * (big(other.y) - big(p.y)) - (big(r.y) - big(p.y)) * (big(other.x) - big(p.x));
        expect(side(l, other)).toBe(sign(turn));
        expect(lineKey(l)).toBe(lineKey(lineThrough(r, p)));
        expect(undirected(l)).toEqual(undirected(reversed(l)));
      }),
      tries(1000),
    );
  });

  it('holds every crossing of two lines that meet on the block, exactly', () => {
    fc.assert(
      fc.property(twoPoints, twoPoints, ([p, r], [s, t]) => {
        const [l, m] = [lineThrough(p, r), lineThrough(s, t)];
        fc.pre(!parallel(l, m));
        const [x, y, w] = minorsOf([l.a, l.b, -l.c], [m.a, m.b, -m.c]);
        const turned = w < 0n ? [-x, -y, -w] : [x, y, w];
        if (!fits(turned)) {
          expect(() => meet(l, m)).toThrow(RangeError);
          return;
        }
        const crossing = meet(l, m);
        expect([crossing.x, crossing.y, crossing.w].map(big)).toEqual(turned);
        expect([side(l, crossing), side(m, crossing)]).toEqual([0, 0]);
        const onBlock = crossing.x >= 0 && crossing.x <= STEPS * crossing.w && crossing.y >= 0 && crossing.y <= STEPS * crossing.w;
        if (onBlock) expect(Math.max(crossing.x, crossing.y, crossing.w)).toBeLessThanOrEqual(2 * STEPS ** 3);
      }),
      tries(2000),
    );
  });

  it('tells on which side of a line a crossing of two others lies', () => {
    fc.assert(
      fc.property(twoPoints, twoPoints, twoPoints, ([p, r], [s, t], [u, v]) => {
        const [l, m, n] = [lineThrough(p, r), lineThrough(s, t), lineThrough(u, v)];
        const [x, y, w] = minorsOf([l.a, l.b, -l.c], [m.a, m.b, -m.c]);
        fc.pre(w !== 0n && fits([x, y, w]));
        const wanted = sign((big(n.a) * x + big(n.b) * y - big(n.c) * w) * (w < 0n ? -1n : 1n));
        expect(side(n, meet(l, m))).toBe(wanted);
      }),
      tries(1000),
    );
  });
});

describe('what cannot be held exactly', () => {
  const far = (x: number, y: number): Point => ({ x, y, w: 1 });

  it('is refused, never rounded', () => {
    expect(() => lineThrough(far(SAFE, 1), far(1, SAFE - 1))).toThrow(RangeError);
    const [l, m] = [
      { a: SAFE, b: SAFE - 1, c: 1 },
      { a: SAFE - 2, b: SAFE - 4, c: 3 },
    ];
    expect(() => meet(l, m)).toThrow(/finer than can be held exactly/);
  });

  it('is either exact or refused, for lines of every magnitude', () => {
    let refused = 0;
    fc.assert(
      fc.property(anyLine, anyLine, (l, m) => {
        const [x, y, w] = minorsOf([l.a, l.b, -l.c], [m.a, m.b, -m.c]);
        const held = w < 0n ? [-x, -y, -w] : [x, y, w];
        if (w === 0n || !fits(held)) {
          refused++;
          expect(() => meet(l, m)).toThrow(RangeError);
        } else {
          const p = meet(l, m);
          expect([p.x, p.y, p.w].map(big)).toEqual(held);
        }
      }),
      tries(1000),
    );
    expect(refused).toBeGreaterThan(50);
    expect(refused).toBeLessThan(950);
  });

  it('includes the meeting of parallel lines', () => {
    expect(() => meet({ a: 1, b: 2, c: 3 }, { a: 2, b: 4, c: 7 })).toThrow(/parallel lines do not meet/);
    expect(() => meet({ a: 1, b: 2, c: 3 }, { a: 1, b: 2, c: 3 })).toThrow(RangeError);
  });
});

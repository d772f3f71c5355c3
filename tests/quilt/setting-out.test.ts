import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { add, compare, multiply, rational, subtract, toNumber, type Rational } from '../../src/measure/rational.ts';
import { setOut, sizeSet, type Setting, type SetPlace } from '../../src/quilt/setting-out.ts';

const length = fc.tuple(fc.integer({ min: 1, max: 40 }), fc.integer({ min: 1, max: 8 })).map(([n, d]) => rational(n, d));
const size = fc.record({ width: length, height: length });
const setting: fc.Arbitrary<Setting> = fc.record({
  across: fc.integer({ min: 1, max: 8 }),
  down: fc.integer({ min: 1, max: 8 }),
  lie: fc.constantFrom('straight', 'turned', 'mirrored'),
  alternate: fc.constantFrom('the same', 'another block', 'plain cloth'),
  sashing: fc.oneof(fc.constant(rational(0)), length),
});

const area = ({ width, height }: { readonly width: Rational; readonly height: Rational }): Rational => multiply(width, height);
const far = ({ left, top, width, height }: SetPlace): readonly [Rational, Rational] => [add(left, width), add(top, height)];

/** Where a place of the block, as shares of its width and height, comes to lie in the quilt. */
function lain({ left, top, width, height, turn, mirrored }: SetPlace, u: number, v: number): readonly [number, number] {
  let [x, y] = [mirrored ? 1 - u : u, v];
  for (let i = 0; i < turn; i++) [x, y] = [1 - y, x];
  return [toNumber(left) + x * toNumber(width), toNumber(top) + y * toNumber(height)];
}

describe('blocks set side by side', () => {
  it('cover the whole once', () => {
    fc.assert(
      fc.property(setting, size, (set, block) => {
        const places = setOut(set, block);
        const whole = sizeSet(set, block);
        const sum = places.map(area).reduce(add, rational(0));
        expect(compare(sum, area(whole))).toBe(0);
        for (const [i, one] of places.entries()) {
          const [right, bottom] = far(one);
          expect(compare(right, whole.width) <= 0 && compare(bottom, whole.height) <= 0).toBe(true);
          for (const other of places.slice(i + 1)) {
            const [r, b] = far(other);
            const meet = compare(one.left, r) < 0 && compare(other.left, right) < 0 && compare(one.top, b) < 0 && compare(other.top, bottom) < 0;
            expect(meet).toBe(false);
          }
        }
      }),
      { seed: 4, numRuns: 60 },
    );
  });

  it('mirrored ones meet in equal edges: the same point of the block lies on both sides of every line', () => {
    const places = setOut({ across: 4, down: 4, lie: 'mirrored', alternate: 'the same', sashing: rational(0) }, { width: rational(8), height: rational(6) });
    for (const share of [0.1, 0.35, 0.8]) {
      const upright = places.flatMap((place) => [lain(place, 0, share), lain(place, 1, share)].map(([x, y]) => `${x.toFixed(6)} ${y.toFixed(6)}`));
      // Every place on an inner line comes from two blocks, and from the same height in both.
      const counts = new Map<string, number>();
      for (const spot of upright) counts.set(spot, (counts.get(spot) ?? 0) + 1);
      const inner = [...counts].filter(([spot]) => !spot.startsWith('0.000000 ') && !spot.startsWith('32.000000 '));
      expect(inner).toHaveLength(3 * 4);
      expect(inner.every(([, n]) => n === 2)).toBe(true);
    }
  });

  it('turned ones go round in every four, so that one corner of the block meets in the middle', () => {
    const places = setOut({ across: 2, down: 2, lie: 'turned', alternate: 'the same', sashing: rational(0) }, { width: rational(5), height: rational(5) });
    expect(places.map((place) => lain(place, 1, 1).map((at) => Math.round(at * 1e6) / 1e6))).toEqual(Array(4).fill([5, 5]));
  });

  it('strips lie between blocks and not round them', () => {
    const set: Setting = { across: 3, down: 2, lie: 'straight', alternate: 'the same', sashing: rational(1) };
    const places = setOut(set, { width: rational(6), height: rational(6) });
    const many = (what: SetPlace['what']): number => places.filter((place) => place.what === what).length;
    expect([many('block'), many('sashing'), many('post')]).toEqual([6, 4 + 3, 2]);
    expect(toNumber(subtract(sizeSet(set, { width: rational(6), height: rational(6) }).width, rational(18)))).toBe(2);
  });
});

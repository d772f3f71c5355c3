import { describe, expect, it } from 'vitest';
import type { Point } from '../../src/geometry/point.ts';
import { add, multiply, rational, toNumber, ZERO, type Rational } from '../../src/measure/rational.ts';
import { comesOut, type SeamError } from '../../src/sewing/errors/comes-out.ts';
import { near, type Roots } from '../../src/sewing/errors/roots.ts';
import { allowanceOff, measured } from '../../src/sewing/errors/strips.ts';
import { box, patternDrawn, patternOf } from './told.ts';
import { sewnByHand } from './errors-by-hand.ts';

const seam = rational(1, 4);
const none: SeamError = { allowance: ZERO, cutting: ZERO };
const value = (roots: Roots): number => toNumber(near(roots));

const point = (x: number, y: number): Point => ({ x, y, w: 1 });
const rectangle = (x: number, y: number, w: number, h: number): readonly Point[] => [point(x, y), point(x + w, y), point(x + w, y + h), point(x, y + h)];

/** A row of so many squares of an inch, two cloths in turn. */
const row = (count: number): ReturnType<typeof patternDrawn> =>
  patternDrawn({
    finished: `${count} by 1`,
    grid: [count, 1],
    ground: 'oat',
    patches: Array.from({ length: Math.floor(count / 2) }, (_, i) => box('ink', 2 * i + 1, 0, 1, 1)),
  });

const widerBy = (count: number, error: SeamError): Rational => near(comesOut(row(count).steps, error).at(-1)!.wider.top);

describe('strips sewn to test an allowance', () => {
  it.each([
    // quiltcentric.com, 2012-09-16; sewitbetter.com.
    ['three of 1 1/2 in.', 3, rational(3, 2), { whole: rational(7, 2), inner: rational(1) }],
    // quilting.about.com.
    ['three of 2 in.', 3, rational(2), { inner: rational(3, 2), outer: rational(7, 4) }],
    // quiltingfocus.com, 2016-04.
    ['three squares of 2 in.', 3, rational(2), { whole: rational(5) }],
    // Debbie Caffrey, Cut to It, 2014, p. 1.
    ['four of 1 1/2 in.', 4, rational(3, 2), { whole: rational(9, 2) }],
    // traceypereira, three squares of 5 in.
    ['three squares of 5 in.', 3, rational(5), { inner: rational(9, 2) }],
    // onwilliamsstreet.
    ['two squares of 3 in.', 2, rational(3), { whole: rational(11, 2), inner: null }],
  ] as const)('%s measure as published', (_, count, cut, found) => {
    expect(measured({ count, cut, seam }, none)).toMatchObject(found);
  });

  it('tell how far the allowance is off: five strips of 2 in. finished that come out at 9 3/4 in. have it 3/32 in. too wide', () => {
    // cleverquiltstudio.com: 9 3/4 in. instead of 10 1/2.
    const strips = { count: 5, cut: rational(5, 2), seam };
    expect(measured(strips, none).whole).toEqual(rational(21, 2));
    expect(allowanceOff(strips, rational(39, 4))).toEqual(rational(3, 32));
    expect(measured(strips, { allowance: rational(3, 32), cutting: ZERO }).whole).toEqual(rational(39, 4));
  });
});

describe('a row in which every seam is a little off', () => {
  it('of nine is 1/2 in. too narrow at 1/32 in.: 8 seams, each on two cloths', () => {
    expect(widerBy(9, { allowance: rational(1, 32), cutting: ZERO })).toEqual(rational(-1, 2));
  });

  it('of five is 1/2 in. too narrow when each of its 4 seams takes 1/8 in. in all', () => {
    // quilted-connections: 1/8 in. over 4 seams is 1/2 in.
    expect(widerBy(5, { allowance: rational(1, 16), cutting: ZERO })).toEqual(rational(-1, 2));
  });

  it('of five is 3/4 in. too narrow at 3/32 in.', () => {
    // cleverquiltstudio.com, as above.
    expect(widerBy(5, { allowance: rational(3, 32), cutting: ZERO })).toEqual(rational(-3, 4));
  });

  it('is as wide as its strips measure, whatever is off', () => {
    for (const [allowance, cutting] of [[rational(-1, 32), rational(1, 16)], [rational(1, 24), rational(-1, 20)]] as const) {
      const error = { allowance, cutting };
      const strips = { count: 7, cut: rational(3, 2), seam };
      expect(add(widerBy(7, error), measured(strips, none).whole)).toEqual(measured(strips, error).whole);
    }
  });
});

describe('rows of different numbers of seams', () => {
  it('drift from one another by two allowances for each seam that one has more', () => {
    // Two squares over a row of a square and two half as wide, all sewn in rows: the second row has a seam more before the last one.
    const strip = (widths: readonly number[], makes: string): Parameters<typeof comesOut>[0][number] => {
      const ends = widths.map((_, i) => widths.slice(0, i + 1).reduce((a, b) => a + b));
      return {
        makes,
        trimmed: false,
        parts: widths.map((width, i) => ({ from: { cut: '1', role: 'plain', fabric: 'oat' }, turn: 0, outline: rectangle(ends[i]! - width, 0, width, 2) })),
        joins: ends.slice(0, -1).map((x, i) => ({ sew: 'through', first: i === 0 ? 0 : widths.length + i - 1, second: i + 1, from: point(x, 0), to: point(x, 2) })),
      };
    };
    const block: Parameters<typeof comesOut>[0][number] = {
      makes: 'block',
      trimmed: false,
      parts: ['A', 'B'].map((unit, i) => ({ from: { unit }, turn: 0, outline: rectangle(0, 2 * i, 4, 2) })),
      joins: [{ sew: 'through', first: 0, second: 1, from: point(0, 2), to: point(4, 2) }],
    };
    const allowance = rational(1, 16);
    const made = comesOut([strip([2, 2], 'A'), strip([1, 1, 2], 'B'), block], { allowance, cutting: ZERO });
    const miss = made.at(-1)!.misses;
    expect(miss).toHaveLength(1);
    expect(near(miss[0]!.by.x)).toEqual(multiply(allowance, rational(-2)));
    expect(made.at(-1)!.wider.top).not.toEqual(made.at(-1)!.wider.bottom);
  });

  it('with equal numbers still meet', () => {
    const error = { allowance: rational(1, 16), cutting: rational(1, 32) };
    for (const { misses } of comesOut(patternOf('tests/gallery/nine-patch-9').steps, error)) {
      expect(misses.map(({ by }) => [value(by.x), value(by.y)])).toEqual(misses.map(() => [0, 0]));
    }
  });
});

describe('what comes out', () => {
  const FILES = [
    'tests/cases/shoo-fly-12',
    'tests/cases/ohio-star-12-triangles',
    'tests/cases/sawtooth-star-12',
    'tests/gallery/churn-dash-12',
    'tests/gallery/peaked-star-12',
    'tests/gallery/double-irish-chain-12-1-2',
    'tests/cases/bears-paw-14',
    'demo-blocks/06-kittiwake',
  ];

  it.each(FILES)('of %s is what comes of cutting every piece as an outline, and of sewing along lines beside its raw edges', (file) => {
    const pattern = patternOf(file);
    const step = toNumber(pattern.lattice.step);
    for (const [allowance, cutting] of [[rational(1, 32), ZERO], [rational(-1, 24), rational(1, 16)]] as const) {
      const error = { allowance, cutting };
      const byHand = sewnByHand(pattern.steps, step, { seam: 0.25, allowance: toNumber(allowance), cutting: toNumber(cutting) });
      comesOut(pattern.steps, error).forEach(({ pieces, misses, wider }, i) => {
        const hand = byHand[i]!;
        pieces.forEach(({ shift }, p) => {
          expect(value(shift.x)).toBeCloseTo(hand.shifts[p]![0], 4);
          expect(value(shift.y)).toBeCloseTo(hand.shifts[p]![1], 4);
        });
        expect(misses.map(({ by }) => [value(by.x), value(by.y)]).length).toBe(hand.misses.length);
        misses.forEach(({ by }, m) => {
          expect(value(by.x)).toBeCloseTo(hand.misses[m]![0], 4);
          expect(value(by.y)).toBeCloseTo(hand.misses[m]![1], 4);
        });
        expect(value(wider.top)).toBeCloseTo(hand.wider, 4);
      });
    }
  });

  it('without error is the block itself', () => {
    for (const { pieces, misses, wider, higher } of comesOut(patternOf('tests/cases/ohio-star-12-triangles').steps, none)) {
      const all = [...pieces.map(({ shift }) => shift), ...misses.map(({ by }) => by)].flatMap(({ x, y }) => [x, y]);
      expect([...all, ...Object.values(wider), ...Object.values(higher)].every((roots) => roots.size === 0)).toBe(true);
    }
  });

  it('of a unit that is trimmed is as it should be on the outside', () => {
    const error = { allowance: rational(1, 16), cutting: rational(1, 8) };
    const wide = (trim: Rational): readonly number[] => {
      const { steps } = patternOf('tests/cases/friendship-star-6', { trim });
      return comesOut(steps, error).map(({ wider }) => value(wider.top));
    };
    const [plain, trimmed] = [wide(ZERO), wide(rational(1, 8))];
    // Of the row of a trimmed triangle-square between two squares: half the cutting error for each plain side at a seam.
    expect(plain.at(-1)).not.toBeCloseTo(trimmed.at(-1)!, 4);
  });
});

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Cut } from '../../src/cutting/cut.ts';
import { stripPlan, toBuy, type StripPlan } from '../../src/cutting/strips.ts';
import { formatLength, parseLength } from '../../src/measure/lengths.ts';
import { add, compare, divide, multiply, rational, subtract, timesInto, type Rational } from '../../src/measure/rational.ts';

const laws = { seed: 20260716, numRuns: 300 };

const size = (text: string): Rational => {
  const read = parseLength(text);
  if (!read.ok) throw new Error(read.problem.sentence);
  return read.value.value;
};

const cut = (id: string, quantity: number, a: Rational, b: Rational): Cut => {
  const [width, height] = compare(a, b) <= 0 ? [a, b] : [b, a];
  const shape = compare(a, b) === 0 ? 'square' : 'rectangle';
  return { id, fabric: 'oat', quantity, shape, width, height, exact: null, subcut: 'none', uses: [], spare: 0, template: null, pieces: [] };
};

const plan = (quantity: number, a: string, b: string, width: string): StripPlan =>
  stripPlan([cut('1', quantity, size(a), size(b))], size(width), 'in');
const told = ({ strips, length, buy }: StripPlan): string =>
  `${strips.map(({ width, count }) => `${count} × ${formatLength(width)}`).join(', ')}; ${formatLength(length)}; ${buy}`;

describe('published strip examples', () => {
  test.each([
    // K. Childress, Cortez Quilt Co.: 6 to a strip, 10 strips, 65 in.; 1 7/8 yd is enough.
    [56, '6 1/2', '6 1/2', '42', '10 × 6 1/2; 65; 1 7/8 yd'],
    // craftcore.ca, 2017-03-20: 2 to a strip, 10 strips, 150 in., 4 1/4 yd.
    [20, '15', '16 1/2', '44', '10 × 15; 150; 4 1/4 yd'],
    // bobbininquilts.com: 13 to a strip, 24 strips, 48 in.; the source says 1 1/3 yd, which is 1 3/8 in eighths.
    [300, '3', '2', '40', '24 × 2; 48; 1 3/8 yd'],
    // judysquiltsandthings, 2011: 8 to a strip, 11 strips, 49 1/2 in.; it names no yards, 49 1/2 in. are 1 3/8.
    [88, '4 1/2', '4 1/2', '40', '11 × 4 1/2; 49 1/2; 1 3/8 yd'],
    // slideblast.com, Lesson 11: 3 to a strip, 11 strips, 38 1/2 in., 1 1/8 yd.
    [31, '12 1/2', '3 1/2', '42', '11 × 3 1/2; 38 1/2; 1 1/8 yd'],
  ])('%i pieces %s × %s from %s in.: %s', (quantity, a, b, width, result) => {
    expect(told(plan(quantity, a, b, width))).toBe(result);
  });

  // Fat quarter 18 × 22: quilterscache.com/M/MathChartsPage.html and docsbay.net, which agree.
  test.each([
    ['2', 99],
    ['2 1/2', 56],
    ['3', 42],
    ['3 1/2', 30],
    ['4', 20],
    ['4 1/2', 16],
    ['5', 12],
    ['5 1/2', 12],
    ['6', 9],
    ['6 1/2', 6],
  ])('a fat quarter gives squares of %s: %i, and not one more', (side, count) => {
    expect(compare(plan(count, side, side, '22').length, rational(18))).toBeLessThanOrEqual(0);
    expect(compare(plan(count + 1, side, side, '22').length, rational(18))).toBe(1);
  });

  // quilterscache.com/M/MathChartsPage.html, June 2002: headed 42 × 36, but computed for a width of 44.
  test.each([
    ['2 1/2', 238],
    ['3', 168],
    ['3 1/2', 120],
    ['4', 99],
    ['4 1/2', 72],
    ['5', 56],
    ['5 1/2', 48],
    ['6', 42],
    ['6 1/2', 30],
    ['8', 20],
    ['9', 16],
    ['12 1/2', 6],
  ])('a yard of 44 in. gives squares of %s: %i, and not one more', (side, count) => {
    expect(compare(plan(count, side, side, '44').length, rational(36))).toBeLessThanOrEqual(0);
    expect(compare(plan(count + 1, side, side, '44').length, rational(36))).toBe(1);
  });

  test('the same chart’s 35 squares of 7 in. need more than a yard: it gives 30', () => {
    expect(compare(plan(35, '7', '7', '44').length, rational(36))).toBe(1);
    expect(compare(plan(30, '7', '7', '44').length, rational(36))).toBeLessThanOrEqual(0);
  });

  // ebookreading.net, Quilting (ISBN 978-1-61564-614-2), p. 36, and The Spruce Crafts, Decimals to fractions.
  test.each([
    ['4 1/2', '1/8 yd'],
    ['9', '1/4 yd'],
    ['13 1/2', '3/8 yd'],
    ['18', '1/2 yd'],
    ['22 1/2', '5/8 yd'],
    ['27', '3/4 yd'],
    ['31 1/2', '7/8 yd'],
    ['36', '1 yd'],
  ])('%s in. are %s', (inches, yards) => {
    expect(toBuy(size(inches), 'in')).toBe(yards);
  });

  test('a length over an eighth buys the next; centimetres go by tens', () => {
    expect(toBuy(size('4 7/8'), 'in')).toBe('1/4 yd');
    expect(toBuy(size('24.8'), 'cm')).toBe('30 cm');
    expect(toBuy(size('30'), 'cm')).toBe('30 cm');
    expect(toBuy(size('0'), 'in')).toBe('0 yd');
  });
});

describe('what is left of a strip', () => {
  test('serves a narrower line before a new strip is begun', () => {
    const both = stripPlan([cut('1', 2, size('4 7/8'), size('4 7/8')), cut('2', 4, size('4 1/2'), size('4 1/2'))], rational(42), 'in');
    expect(told(both)).toBe('1 × 4 7/8; 4 7/8; 1/4 yd');
    expect(both.layout[0]!.rows.map(({ cut: line, pieces, stacked }) => [line, pieces, stacked])).toEqual([
      ['1', 2, 1],
      ['2', 4, 1],
    ]);
  });

  test('takes small pieces one above another', () => {
    const both = stripPlan([cut('1', 4, rational(9), rational(9)), cut('2', 6, rational(3), rational(3))], rational(42), 'in');
    expect(told(both)).toBe('1 × 9; 9; 1/4 yd');
    expect(both.layout[0]!.rows[1]).toMatchObject({ cut: '2', pieces: 6, stacked: 3 });
  });

  test('turns a piece where more fit that way', () => {
    const both = stripPlan([cut('1', 3, rational(12), rational(12)), cut('2', 3, rational(2), rational(12))], rational(42), 'in');
    expect(told(both)).toBe('1 × 12; 12; 3/8 yd');
  });
});

describe('a piece longer than the cloth is wide', () => {
  test('lies along the length of the cloth, and the plan says so', () => {
    const border = plan(4, '3 1/2', '60', '42');
    expect(told(border)).toBe('1 × 60; 60; 1 3/4 yd');
    expect(border.notes).toEqual([
      'Cut 1 (3 1/2 × 60 in.) is longer than the usable width of 42 in.: cut it along the length of the cloth.',
    ]);
  });

  test('both ways needs joined widths', () => {
    const back = stripPlan([cut('1', 1, rational(150), rational(200))], rational(107), 'cm');
    expect(told(back)).toBe('2 × 200; 400; 400 cm');
    expect(back.notes).toEqual([
      'Cut 1 (150 × 200 cm) exceeds the usable width of 107 cm both ways: sew widths of cloth together before cutting it.',
    ]);
  });
});

const lists = fc
  .array(fc.tuple(fc.integer({ min: 1, max: 40 }), fc.integer({ min: 4, max: 200 }), fc.integer({ min: 4, max: 200 })), {
    minLength: 1,
    maxLength: 6,
  })
  .map((all) => all.map(([quantity, a, b], i) => cut(`${i + 1}`, quantity, rational(a, 8), rational(b, 8))));

describe('any list of cuts', () => {
  test('is all laid, inside its strips, in through-cut rows', () => {
    fc.assert(
      fc.property(lists, fc.constantFrom(rational(42), rational(40), rational(25)), (cuts, width) => {
        const { layout } = stripPlan(cuts, width, 'in');
        const laid = new Map<string, number>();
        for (const strip of layout) {
          let used = rational(0);
          for (const { cut: line, pieces, stacked, along, across } of strip.rows) {
            laid.set(line, (laid.get(line) ?? 0) + pieces);
            const of = cuts.find(({ id }) => id === line)!;
            expect([
              [along, across],
              [across, along],
            ]).toContainEqual([of.width, of.height]);
            expect(compare(multiply(across, rational(stacked)), strip.width)).toBeLessThanOrEqual(0);
            used = add(used, multiply(along, rational(Math.ceil(pieces / stacked))));
          }
          expect(compare(used, width)).toBeLessThanOrEqual(0);
        }
        expect(cuts.map(({ id, quantity }) => [id, quantity])).toEqual(cuts.map(({ id }) => [id, laid.get(id)]));
      }),
      laws,
    );
  });

  test('takes no more cloth than each line in strips of its own, and the cloth bought holds it', () => {
    fc.assert(
      fc.property(lists, (cuts) => {
        const { length, strips, buy } = stripPlan(cuts, rational(42), 'in');
        const alone = cuts.map(({ quantity, width, height }) =>
          multiply(width, rational(Math.ceil(quantity / timesInto(rational(42), height)))),
        );
        expect(compare(length, alone.reduce(add))).toBeLessThanOrEqual(0);
        expect(strips.map(({ width, count }) => multiply(width, rational(count))).reduce(add)).toEqual(length);
        const area = cuts.map(({ quantity, width, height }) => multiply(rational(quantity), multiply(width, height))).reduce(add);
        expect(compare(divide(area, rational(42)), length)).toBeLessThanOrEqual(0);
        const bought = multiply(size(buy.replace(' yd', '')), rational(36));
        expect(compare(bought, length)).toBeGreaterThanOrEqual(0);
        expect(compare(subtract(bought, length), rational(9, 2))).toBe(-1);
      }),
      laws,
    );
  });
});

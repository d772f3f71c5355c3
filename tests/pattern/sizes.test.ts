import { describe, expect, it } from 'vitest';
import { resize } from '../../src/block/sizing.ts';
import type { Block } from '../../src/block/block.ts';
import type { Choices } from '../../src/block/choices.ts';
import type { Cut } from '../../src/cutting/cut.ts';
import { formatLength } from '../../src/measure/lengths.ts';
import { compare, divide, equals, multiply, rational, type Rational } from '../../src/measure/rational.ts';
import type { Pattern } from '../../src/pattern/pattern.ts';
import { sizesText } from '../../src/pattern/sizes-text.ts';
import { clothsAt, cutsAt, listAt, MOST_SIZES, otherSizes, usualRange, widthsIn, type OtherSize, type SizeRange } from '../../src/pattern/sizes.ts';
import { must } from '../block/drawn.ts';
import { makePattern } from '../../src/pattern/make-pattern.ts';
import { blockNamed, namesIn } from './made.ts';

const of = rational;
const range = (from: Rational, to: Rational, step: Rational): SizeRange => ({ from, to, step });
const wide = ({ finished }: OtherSize): string => formatLength(finished.width);

const patternOf = (block: Block, choices: Choices = {}): Pattern => must(makePattern(block, choices, 'chosen way'));

/** A block, made at another width from the start. */
const drawnAt = (block: Block, width: Rational): Block => {
  const { finished } = block;
  return must(resize(block, { width, height: multiply(finished.height, divide(width, finished.width)), unit: finished.unit }));
};

/** What is bought of each cut, in the words of a published list: "4 Print 2 1/2 x 4 1/2". */
const listOf = (cuts: readonly Cut[]): readonly string[] =>
  cuts.map(({ quantity, fabric, width, height }) => `${quantity} ${fabric} ${formatLength(width)} x ${formatLength(height)}`).sort();

const squares = (quantity: number, fabric: string, side: string): string => `${quantity} ${fabric} ${side} x ${side}`;

describe('a block at other sizes', () => {
  it('is cut as published: a Sawtooth Star of 6, 8 and 12 in. by stitch-and-flip', () => {
    // Elizabeth Hartman for Sew Mama Sew, 2009, studylib.net/doc/18178267/sawtooth-star-block: one list for each size.
    const published: Readonly<Record<number, readonly [string, string, string]>> = {
      6: ['2', '3 1/2', '2 x 3 1/2'],
      8: ['2 1/2', '4 1/2', '2 1/2 x 4 1/2'],
      12: ['3 1/2', '6 1/2', '3 1/2 x 6 1/2'],
    };
    const pattern = patternOf(blockNamed('cases', 'sawtooth-star-12'));
    const sizes = must(otherSizes(pattern, range(of(6), of(12), of(2))));
    expect(sizes.map(wide)).toEqual(['6', '8', '10', '12']);
    expect(sizes.every(({ off, cannot }) => off.length === 0 && cannot === null)).toBe(true);
    for (const [size, [small, centre, goose]] of Object.entries(published)) {
      expect(listOf(cutsAt(pattern, of(Number(size))))).toEqual(
        [squares(8, 'print', small), squares(1, 'print', centre), squares(4, 'solid', small), `4 solid ${goose}`].sort(),
      );
    }
  });

  it('is cut as published: a Friendship Star of 3, 4 1/2 and 6 in.', () => {
    // Delaware Quilts, Friendship Star, delawarequilts.com/BOMs/FriendshipStar: square and triangle cut for each block.
    const pattern = patternOf(blockNamed('cases', 'friendship-star-6'));
    const published = [
      [of(3), '1 1/2', '1 7/8'],
      [of(9, 2), '2', '2 3/8'],
      [of(6), '2 1/2', '2 7/8'],
    ] as const;
    for (const [size, square, triangle] of published) {
      const sides = cutsAt(pattern, size).map((cut) => [formatLength(cut.width), cut.uses.every(({ role }) => role === 'plain')] as const);
      expect(new Set(sides.filter(([, plain]) => plain).map(([side]) => side))).toEqual(new Set([square]));
      expect(new Set(sides.filter(([, plain]) => !plain).map(([side]) => side))).toEqual(new Set([triangle]));
    }
  });

  it('is cut as published: four geese at a time of a Sawtooth Star from 4 to 16 in.', () => {
    // Beverly's Quilting Page, members.shaw.ca/beverlysquiltingpage/ffg.htm: finished goose, large square, small squares.
    const table = [
      ['2', '3 1/4', '1 7/8'],
      ['5/2', '3 3/4', '2 1/8'],
      ['3', '4 1/4', '2 3/8'],
      ['7/2', '4 3/4', '2 5/8'],
      ['4', '5 1/4', '2 7/8'],
      ['9/2', '5 3/4', '3 1/8'],
      ['5', '6 1/4', '3 3/8'],
      ['11/2', '6 3/4', '3 5/8'],
      ['6', '7 1/4', '3 7/8'],
      ['7', '8 1/4', '4 3/8'],
      ['8', '9 1/4', '4 7/8'],
    ] as const;
    const pattern = patternOf(blockNamed('cases', 'sawtooth-star-6-four-at-a-time'), { methods: { 'flying geese': 'four-at-a-time' } });
    for (const [goose, large, small] of table) {
      const [n, d = 1] = goose.split('/').map(Number) as [number, number?];
      const cuts = cutsAt(pattern, of(2 * n, d));
      const sideOf = (role: string): string => formatLength(cuts.find(({ uses }) => uses.some((use) => use.role === role))!.width);
      expect([sideOf('large'), sideOf('small')]).toEqual([large, small]);
    }
  });

  it('is cut as published: the logs of a Log Cabin of 11 in., drawn at half the size', () => {
    // APQ, allpeoplequilt.com, Log Cabin quilt block option 1, 2013-12-18: 1 1/2 in. strips, 1 1/2 to 11 1/2 in. long.
    const eleven = blockNamed('cases', 'log-cabin-11');
    const pattern = patternOf(drawnAt(eleven, of(11, 2)));
    const lengths = cutsAt(pattern, of(11)).flatMap(({ height, width, quantity }) => (formatLength(width) === '1 1/2' ? Array<string>(quantity).fill(formatLength(height)) : []));
    const logs = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10].map((whole) => `${whole} 1/2`);
    expect(lengths.sort()).toEqual([...logs, ...logs.slice(1), '11 1/2', '1 1/2'].sort());
    // Logs of 1/2 in. are on the marks, of 7/16 not.
    expect(must(otherSizes(pattern, range(of(77, 16), of(88, 16), of(11, 16)))).map(({ off }) => off.length > 0)).toEqual([true, false]);
  });

  it('has the list of the pattern that is drawn at that size, in the gallery, whatever the methods', () => {
    const choices: readonly Choices[] = [
      {},
      { trim: of(1, 8), blocks: 7, method: 'triangles' },
      { method: 'triangles-from-strips', blocks: 30 },
      { ruler: of(1, 16), seam: of(3, 8), method: 'eight-at-a-time' },
    ];
    const factors = [of(1, 2), of(7, 9), of(13, 8), of(2)];
    const some = namesIn('gallery').filter((_, i) => i % 3 === 0);
    some.forEach((name, i) => {
      const block = blockNamed('gallery', name);
      const made = patternOf(block, choices[i % choices.length]!);
      const width = multiply(block.finished.width, factors[(i + Math.floor(i / 4)) % factors.length]!);
      const there = patternOf(drawnAt(block, width), choices[i % choices.length]!);
      const cuts = cutsAt(made, width);
      expect([name, cuts]).toEqual([name, there.cuts]);
      expect(clothsAt(made, cuts).map(({ buy }) => buy)).toEqual(there.fabrics.map(({ buy }) => buy));
    });
  }, 60_000);

  it('has the same list where a fabric stands for scraps, which are cut and not bought', () => {
    const star = blockNamed('cases', 'sawtooth-star-12');
    const block: Block = { ...star, fabrics: star.fabrics.map((fabric, i) => (i === 0 ? { ...fabric, scraps: { prints: 4, seed: 1 } } : fabric)) };
    const pattern = patternOf(block);
    const cuts = cutsAt(pattern, of(9));
    expect(cuts).toEqual(patternOf(drawnAt(block, of(9))).cuts);
    const lists = listAt(pattern, cuts);
    expect(lists.flatMap((list) => list.cuts).map(({ id }) => id).sort()).toEqual(cuts.map(({ id }) => id).sort());
    expect(lists.map(({ fabric, buy }) => [fabric.id, buy === 'from scraps'])).toContainEqual([block.fabrics[0]!.id, true]);
  });

  it('is on the ruler exactly where no plain cut and no unit is rounded', () => {
    for (const name of ['churn-dash-12', 'lady-of-the-lake-10', 'economy-patch-8', 'half-rectangle-darts-12x9', 'trip-around-the-world-9']) {
      const pattern = patternOf(blockNamed('gallery', name));
      const { ruler } = pattern.choices;
      const whole = (length: Rational): boolean => divide(length, ruler).d === 1;
      for (const { finished, off, cannot } of must(otherSizes(pattern, usualRange(pattern)))) {
        if (cannot !== null) continue;
        const plain = cutsAt(pattern, finished.width).filter(({ exact, uses }) => exact?.width.r === 0 && exact.height.r === 0 && uses.every(({ role }) => role === 'plain'));
        const rounded = plain.some(({ exact, width, height }) => !equals(exact!.width.p, width) || !equals(exact!.height.p, height));
        const by = divide(finished.width, pattern.block.finished.width);
        // Two allowances of 1/4 in. are four marks, so an unfinished side is on one where the finished side is.
        const offUnit = pattern.units.some((line) => !whole(multiply(line.finished.width, by)) || !whole(multiply(line.finished.height, by)));
        if (rounded || offUnit) expect(off).not.toEqual([]);
        if (off.length === 0) expect([rounded, offUnit]).toEqual([false, false]);
      }
    }
  });

  it('keeps its proportion, and lists its own size between the others', () => {
    const pattern = patternOf(blockNamed('gallery', 'half-rectangle-darts-12x9'));
    const sizes = must(otherSizes(pattern, range(of(11), of(13), of(4, 3))));
    expect(sizes.map(wide)).toEqual(['11', '12', '12 1/3']);
    expect(sizes.map(({ asItIs }) => asItIs)).toEqual([false, true, false]);
    for (const { finished } of sizes) expect(divide(finished.height, finished.width)).toEqual(of(3, 4));
  });

  it('takes every quarter inch from half to one and a half of the block, every half centimetre in metric', () => {
    const pattern = patternOf(blockNamed('cases', 'shoo-fly-12'));
    expect(usualRange(pattern)).toEqual(range(of(6), of(18), of(1, 4)));
    const metric = patternOf(must(resize(blockNamed('cases', 'shoo-fly-12'), { width: of(61, 2), height: of(61, 2), unit: 'cm' })));
    expect(usualRange(metric)).toEqual(range(of(31, 2), of(46), of(1, 2)));
  });

  it('cannot be where a piece is narrower than the allowances behind it, or longer than any block', () => {
    const pattern = patternOf(blockNamed('cases', 'bears-paw-14'));
    // Seven cells across: at 1 3/4 in. they are 1/4 in. each.
    const sizes = must(otherSizes(pattern, range(of(3, 2), of(2), of(1, 4))));
    expect(sizes.map(({ cannot }) => cannot)).toEqual(['Its narrowest piece would finish at 0.21 in., less than the 1/4 in. allowances behind it.', null, null]);
    const tall = patternOf(must(resize(blockNamed('gallery', 'wild-geese-strip-8x12'), { width: of(8), height: of(12), unit: 'in' })));
    expect(must(otherSizes(tall, range(of(100), of(200), of(50)))).map(({ cannot }) => cannot)).toEqual([
      null,
      'The finished height must be more than 0 and at most 200 in.; this one is 225.',
      'The finished height must be more than 0 and at most 200 in.; this one is 300.',
    ]);
  });

  it.each([
    [range(of(12), of(6), of(1, 4)), 'From 12 in. to 6 in. there are no sizes: begin with the smaller one.'],
    [range(of(6), of(12), of(0)), 'A step of 0 in. leads nowhere: choose one above 0, like 1/4 in.'],
    [range(of(1), of(200), of(1, 8)), `From 1 in. to 200 in. in steps of 1/8 in. there are more than ${MOST_SIZES} sizes: take larger steps or fewer sizes.`],
    [range(of(0), of(12), of(1)), 'The finished width must be more than 0 and at most 200 in.; this one is 0.'],
  ])('says in one sentence what is wrong with a range', (asked, sentence) => {
    expect(widthsIn(asked, 'in')).toMatchObject({ ok: false, problem: { sentence } });
  });

  it('is told within 80 columns, for every block of the gallery', () => {
    for (const name of namesIn('gallery').slice(0, 12)) {
      const pattern: Pattern = patternOf(blockNamed('gallery', name));
      const { width } = pattern.block.finished;
      const text = sizesText(pattern, must(otherSizes(pattern, range(multiply(width, of(1, 10)), width, multiply(width, of(1, 7))))));
      expect(Math.max(...text.split('\n').map((line) => line.length))).toBeLessThanOrEqual(80);
      expect(text).not.toMatch(/undefined|NaN|\.\./);
      expect(compare(width, of(0))).toBe(1);
    }
  });
});

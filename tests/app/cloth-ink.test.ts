import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { clothInk, type ClothInk } from '../../src/app/sheet/cloth/cloth-ink.ts';
import { leftoverWords } from '../../src/app/sheet/cloth/cloth-words.ts';
import { clothTiles, leftovers, type ClothTiles } from '../../src/cutting/laid.ts';
import type { LaidCloth } from '../../src/cutting/layout.ts';
import { rational } from '../../src/measure/rational.ts';
import { anyCloth, bolt, cloth, column, fatQuarter, line, pieces, strip } from '../cutting/any-cloth.ts';

const laws = { seed: 20261125, numRuns: 200 };
const room = { width: 500, text: 16 };

const tilesOf = (any: LaidCloth, cuts = [line('1')]): ClothTiles => clothTiles([any], cuts)[0]!;

/** The rectangles of a path, as it writes them: M left top h width v height. */
const boxesIn = (path: string): number[][] => [...path.matchAll(/M([\d.-]+) ([\d.-]+)h([\d.-]+)v([\d.-]+)/g)].map((found) => found.slice(1).map(Number));

describe('the picture of a cloth', () => {
  test('has as much cloth in it as is cut and left over, every rectangle within its edges', () => {
    fc.assert(
      fc.property(fc.gen(), (gen) => {
        const ink = clothInk(tilesOf(anyCloth(gen)), 'in', room);
        const { x, y, width, height } = ink.cloth;
        const boxes = boxesIn([...ink.pieces.values()].join('') + ink.leftovers) as [number, number, number, number][];
        const bands = ink.rows.reduce((sum, { more }) => sum + (more ? more.band.width * more.band.height : 0), 0);
        const area = boxes.reduce((sum, [, , wide, high]) => sum + wide * high, bands);
        // Paths are written to the hundredth of a pixel.
        expect(Math.abs(area / (width * height || 1) - (width * height > 0 ? 1 : 0))).toBeLessThan(0.01);
        for (const [left, top, wide, high] of boxes) {
          expect(left).toBeGreaterThan(x - 0.02);
          expect(top).toBeGreaterThan(y - 0.02);
          expect(left + wide).toBeLessThan(x + width + 0.02);
          expect(top + high).toBeLessThan(y + height + 0.02);
        }
      }),
      laws,
    );
  });

  test('is no wider than its room, and larger than 20 pixels to an inch nowhere', () => {
    for (const width of [280, 500, 1400]) {
      const ink = clothInk(tilesOf(cloth(bolt(42), strip(rational(4), 1, column(rational(4), 10, pieces('1', rational(4), rational(4)))))), 'in', { width, text: 16 });
      expect(ink.width).toBeLessThanOrEqual(width + 1);
      expect(ink.cloth.width / 42).toBeLessThanOrEqual(20);
    }
  });

  test('keeps the numbers of the strips apart, however narrow these are', () => {
    const narrow = [1, 2, 3, 4, 5, 6].map((times) => strip(rational(1), times, column(rational(1), 6, pieces('1', rational(1), rational(1)))));
    const { rows } = clothInk(tilesOf(cloth(bolt(42), ...narrow)), 'in', room);
    for (const [i, row] of rows.entries()) if (i > 0) expect(row.at - rows[i - 1]!.at).toBeGreaterThanOrEqual(1.5 * room.text);
  });

  const squares = (times: number): ClothInk =>
    clothInk(tilesOf(cloth(bolt(42), strip(rational(4), times, column(rational(4), 10, pieces('1', rational(4), rational(4)))))), 'in', room);

  test.each([
    [3, 30, null],
    [4, 10, 3],
    [40, 10, 39],
  ])('draws %i equal strips as %i squares and says that there are %s more', (times, drawn, more) => {
    const ink = squares(times);
    expect(boxesIn(ink.pieces.get('1')!)).toHaveLength(drawn);
    expect(ink.rows.map((row) => row.more?.count ?? null)).toEqual([more]);
  });

  test('writes the size of a piece once, and its number into every one with room', () => {
    const ink = squares(1);
    expect(ink.numbers.map(({ text }) => text)).toEqual(Array(10).fill('1'));
    expect(ink.sizes.map(({ text }) => text)).toEqual(['4']);
    expect(ink.lefts.map(({ text }) => text)).toEqual(['2 × 4']);
  });
});

describe('squares that are cut on the diagonal', () => {
  const cutUp = (subcut: 'once' | 'twice'): ClothInk =>
    clothInk(tilesOf(cloth(bolt(42), strip(rational(4), 1, column(rational(4), 5, pieces('1', rational(4), rational(4))))), [line('1', { subcut })]), 'in', room);
  const strokes = ({ diagonals }: ClothInk): number => diagonals.split('M').length - 1;
  test('show one diagonal, or two', () => {
    expect(strokes(cutUp('once'))).toBe(5);
    expect(strokes(cutUp('twice'))).toBe(10);
  });

  /*
   * Leg 2, finished, with 1/4 in. seams: a strip 2 1/2 high, 2 + (2 + √2)/4, up to 2 7/8, for each triangle. From a straight end the
   * first slanted cut runs from 2 7/8 on one edge to 3/8 on the other, and the next is straight at 2 · 2 7/8 − 2 1/2 = 3 1/4: worked out
   * by hand from the drawing in `cutting/from-strips.ts`.
   */
  test('triangles head to tail: slanted and straight by turns, slanted by 45 degrees', () => {
    const nested = { form: 'half', triangles: 2, measure: rational(23, 8) } as const;
    const cuts = [line('1', { subcut: 'head to tail', nested })];
    const ink = clothInk(tilesOf(cloth(bolt(42), strip(rational(5, 2), 1, column(rational(13, 4), 1, pieces('1', rational(13, 4), rational(5, 2))))), cuts), 'in', room);
    const scale = ink.cloth.width / 42;
    const ends = [...ink.diagonals.matchAll(/M([\d.-]+) [\d.-]+L([\d.-]+) [\d.-]+/g)].map(([, far, near]) => [far, near].map((end) => (Number(end) - ink.cloth.x) / scale));
    expect(ends.map((pair) => pair.map((end) => Math.round(end * 8) / 8))).toEqual([[3 / 8, 23 / 8], [13 / 4, 13 / 4]]);
  });
});

describe('what is left over', () => {
  test('is named from the largest down, slivers together', () => {
    const any = cloth(fatQuarter, strip(rational(11, 2), 3, column(rational(21, 4), 4, pieces('1', rational(21, 4), rational(5)))));
    // Three strips: at the end of each 1 × 5 1/2, under each of twelve pieces 1/2; below them all 1 1/2 of the 18 in.
    expect(leftoverWords(leftovers([tilesOf(any)]), 'in')).toBe('22 × 1 1/2 in., 3 of 1 × 5 1/2 in. and slivers under 1 in.');
  });
});

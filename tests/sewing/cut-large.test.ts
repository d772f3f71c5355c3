import { describe, expect, it } from 'vitest';
import type { Block } from '../../src/block/block.ts';
import type { Choices } from '../../src/block/choices.ts';
import { resize } from '../../src/block/sizing.ts';
import { add, compare, multiply, rational, subtract, toNumber, ZERO, type Rational } from '../../src/measure/rational.ts';
import { compareWith, type Surd } from '../../src/measure/surd.ts';
import { largeLines } from '../../src/pattern/large-lines.ts';
import { makePattern } from '../../src/pattern/make-pattern.ts';
import type { Pattern } from '../../src/pattern/pattern.ts';
import { patternJson } from '../../src/pattern/pattern-json.ts';
import { cutLarge } from '../../src/sewing/cut-large.ts';
import { outgrowth } from '../../src/sewing/outgrowth.ts';
import { must } from '../block/drawn.ts';
import { blockNamed, namesIn } from '../pattern/made.ts';

const of = rational;
const patternOf = (block: Block, choices: Choices = {}): Pattern => must(makePattern(block, choices, 'chosen way'));
const square = (block: Block, side: Rational): Block => must(resize(block, { width: side, height: side, unit: 'in' }));
const ink = ({ p, q, r }: Surd): number => toNumber(p) + toNumber(q) * Math.sqrt(r);

describe('what is cut larger than it need be', () => {
  it('is 0.0214 in. for half-square triangles, 0.0429 in. for quarters: the trade figure less the exact one', () => {
    // 7/8 − (2 + √2)/4 and 1 1/4 − (1 + √2)/2: by geometry, and the sliver that teachers tell to trim.
    const shooFly = patternOf(blockNamed('cases', 'shoo-fly-12'));
    const [pair, ...others] = cutLarge(shooFly.cuts, shooFly.steps);
    expect(ink(pair!.by.width)).toBeCloseTo(0.0214, 4);
    expect(others.map(({ by }) => ink(by.width).toFixed(4))).toEqual(['0.0214']);
    const ohio = patternOf(blockNamed('cases', 'ohio-star-12-triangles'), { method: 'triangles' });
    for (const { by } of cutLarge(ohio.cuts, ohio.steps)) expect(ink(by.width)).toBeCloseTo(0.0429, 4);
  });

  it('comes off where the unit is trimmed, and the sentence says in which step and to what size', () => {
    const shooFly = patternOf(blockNamed('cases', 'shoo-fly-12'));
    const { number } = shooFly.steps.find(({ kind }) => kind === 'half-square triangle')!;
    expect(largeLines(shooFly).map(({ says }) => says)).toEqual([expect.stringMatching(new RegExp(`^Cuts \\d and \\d are 0\\.02 in\\. large, trimmed off in step ${number} to 4 1/2 by 4 1/2 in\\.$`))]);
    const line = patternJson(shooFly).cuts.find(({ large }) => large);
    expect(line).toMatchObject({ large: { width: '3/8 - 1/4 √2' }, trimmedIn: [{ step: number, to: ['4 1/2', '4 1/2'] }], untrimmed: false });
  });

  it('stays where no seam is diagonal: first in the list, and said so', () => {
    const nine = patternOf(square(blockNamed('gallery', 'nine-patch-9'), of(10)));
    expect(largeLines(nine).map(({ says }) => says)).toEqual(['Cuts 1 and 2 are 0.04 in. large, and no step trims it.']);
    // A unit of 3 1/3 in. is trimmed to a size that is itself between two marks.
    const dash = largeLines(patternOf(square(blockNamed('gallery', 'churn-dash-12'), of(10)))).map(({ says }) => says);
    expect(dash.at(-1)).toMatch(/trimmed off in step \d+ to 3 5\/6 by 3 5\/6 in\. \(between two marks\)\.$/);
    expect(dash[0]).toMatch(/no step trims it\.$/);
  });

  it('is never less than nothing and never as much as a step of the ruler, and every line is told once', () => {
    namesIn('gallery').filter((_, i) => i % 6 === 3).forEach((name, i) => {
      const ruler = [of(1, 8), of(1, 16), of(1, 4)][i % 3]!;
      const pattern = patternOf(blockNamed('gallery', name), { ruler, trim: i % 2 === 0 ? ZERO : of(1, 8), method: (['usual', 'triangles', 'eight-at-a-time'] as const)[i % 3]! });
      const large = cutLarge(pattern.cuts, pattern.steps);
      for (const { by, trimmed, kept } of large) {
        for (const more of [by.width, by.height]) expect([compareWith(more, ZERO) >= 0, compareWith(more, ruler) < 0]).toEqual([true, true]);
        expect(kept || trimmed.length > 0).toBe(true);
      }
      expect(largeLines(pattern).flatMap(({ cuts }) => cuts).sort()).toEqual(large.map(({ cut }) => cut).sort());
      const exactly = pattern.cuts.filter(({ exact, width, height }) => exact !== null && (compareWith(exact.width, width) !== 0 || compareWith(exact.height, height) !== 0));
      expect(large.map(({ cut }) => cut)).toEqual(exactly.map(({ id }) => id));
    });
  });
});

describe('how much a block outgrows its size', () => {
  const grown = ({ piecing, cuts, lattice, choices }: Pattern) => outgrowth(piecing.root, cuts, { step: lattice.step, seam: choices.seam, ruler: choices.ruler });

  it('is the sum of what its plain pieces are too long, along the longest row and the longest column', () => {
    for (const [name, side] of [['nine-patch-9', of(10)], ['trip-around-the-world-9', of(10)], ['log-cabin-7', of(8)], ['rail-fence-9', of(7)], ['wide-whirl-11', of(9)]] as const) {
      const pattern = patternOf(square(blockNamed('gallery', name), side));
      const { step } = pattern.lattice;
      const lines = new Map(pattern.cuts.flatMap((cut) => cut.pieces.map((piece) => [piece, cut])));
      const pieces = pattern.pieces.map(({ id, outline }) => {
        const [xs, ys] = [outline.map(({ x, w }) => x / w), outline.map(({ y, w }) => y / w)];
        const { width, height } = lines.get(id)!;
        const [left, right, top, bottom] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
        const lies = right - left > bottom - top;
        const over = (cut: Rational, steps: number): Rational => subtract(cut, add(multiply(step, of(steps)), of(1, 2)));
        return { left, right, top, bottom, wide: over(lies ? height : width, right - left), high: over(lies ? width : height, bottom - top) };
      });
      const most = (all: readonly Rational[]): Rational => all.reduce((a, b) => (compare(a, b) >= 0 ? a : b));
      // A line across every half step meets the pieces of one row.
      const across = pieces.map((at) => pieces.filter(({ top, bottom }) => top < at.top + 0.5 && at.top + 0.5 < bottom).reduce((sum, { wide }) => add(sum, wide), ZERO));
      const down = pieces.map((at) => pieces.filter(({ left, right }) => left < at.left + 0.5 && at.left + 0.5 < right).reduce((sum, { high }) => add(sum, high), ZERO));
      expect([name, grown(pattern)]).toMatchObject([name, { width: most(across), height: most(down) }]);
    }
  });

  it('is nothing where every size is on the ruler, or trimmed to one that is', () => {
    for (const name of ['nine-patch-9', 'churn-dash-12', 'economy-patch-8', 'peaked-star-12', 'log-cabin-7']) expect([name, grown(patternOf(blockNamed('gallery', name)))]).toEqual([name, null]);
  });
});

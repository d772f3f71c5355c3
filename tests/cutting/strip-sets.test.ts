import { describe, expect, test } from 'vitest';
import type { Block } from '../../src/block/block.ts';
import type { Choices } from '../../src/block/choices.ts';
import type { Cut } from '../../src/cutting/cut.ts';
import { formatLength } from '../../src/measure/lengths.ts';
import { rational, type Rational } from '../../src/measure/rational.ts';
import type { Pattern } from '../../src/pattern/pattern.ts';
import { blockNamed, patternOf } from '../pattern/made.ts';
import { checks, IN_SETS } from './checks.ts';

/*
 * Long strips, sewn side by side and cut across, as published patterns have them. Pages of the years given; all read in excerpts.
 */

/** @returns "17 @ 1 1/4 × 11 into 8 of 1 1/4": how many strips of what size, and what their sets are cut into */
const strip = ({ quantity, set }: Cut): string =>
  `${quantity} @ ${formatLength(set!.across)} × ${formatLength(set!.length)} into ${set!.segments} of ${formatLength(set!.segment)}`;

/** @returns the strips of each fabric, those of one unit after another */
const strips = ({ cuts }: Pattern, fabric: string): readonly string[] =>
  cuts.filter((cut) => cut.fabric === fabric && cut.set).map((cut) => `${strip(cut)} for ${cut.uses.map(({ unit }) => unit).join(', ')}`);

/** Fabrics that are had in precut strips of this size alone. */
const precut = (fabrics: string, width: Rational, length: Rational): Choices => ({
  cloths: Object.fromEntries([...fabrics].map((id) => [id, { sold: 'precut strip', size: { width, length } }])),
});

describe('published strip sets', () => {
  test('68 nine-patches of 2 1/4 in. from strips 1 1/4 by 11 in.: 35 light and 43 red ones (temeculaquiltco.blogspot.com, 2018-10-26)', () => {
    const block = checks(rational(9, 4), ['RLR', 'LRL', 'RLR']);
    const made = patternOf(block, { ...IN_SETS, ...precut('RL', rational(11), rational(5, 4)), blocks: 68 });
    // 17 sets of red, light, red give 136 segments; 9 sets of light, red, light at least 68, four of them over.
    expect(strips(made, 'L')).toEqual(['35 @ 1 1/4 × 11 into 8 of 1 1/4 for B, C']);
    expect(strips(made, 'R')).toEqual(['43 @ 1 1/4 × 11 into 8 of 1 1/4 for B, C']);
    const uses = made.cuts.flatMap(({ fabric, uses: all }) => all.map(({ unit, role, quantity }) => `${fabric} ${unit} ${role} ${quantity}`));
    expect(uses.sort()).toEqual(['L B strip 17', 'L C strip 18', 'R B strip 34', 'R C strip 9']);
    expect(made.cuts.map(({ spare }) => spare)).toEqual([4, 4]);
    expect(made.units.map(({ count, method }) => [count, method])).toEqual([[136, 'strip-sets'], [68, 'strip-sets']]);
    expect(made.proof).toMatchObject({ holds: true, faults: [] });
  });

  test('a 6 in. rail fence of four rails: strips 1 1/4 by 15 in., four squares of 3 1/2 (pamelaquilts.com, 2021-06-02)', () => {
    const made = patternOf(fence(rational(6), 4), IN_SETS);
    for (const fabric of 'ABCD') expect(strips(made, fabric)).toEqual(['1 @ 1 1/4 × 15 into 4 of 3 1/2 for A']);
  });

  test('a 12 in. rail fence of three rails: no more than the strips 2 1/2 by 28 (mybluprint.com) or 30 in. (All People Quilt), four squares of 6 1/2', () => {
    const made = patternOf(fence(rational(12), 3), IN_SETS);
    for (const fabric of 'ABC') expect(strips(made, fabric)).toEqual(['1 @ 2 1/2 × 27 into 4 of 6 1/2 for A']);
  });

  test('two 8 in. blocks from four strips 2 1/2 by 21 in., the width of a fat quarter: 8 columns (empathy-and-listening-skills.info, strip block)', () => {
    const made = patternOf(checks(rational(8), ['ABCD', 'DCBA', 'ABCD', 'DCBA']), { ...IN_SETS, ...precut('ABCD', rational(21), rational(5, 2)), blocks: 2 });
    for (const fabric of 'ABCD') expect(strips(made, fabric)).toEqual([expect.stringMatching(/^1 @ 2 1\/2 × 21 into 8 of 2 1\/2 for [A-Z]$/)]);
  });

  // equilters.com, Mystery 9-patch, part 4: 10 to 12 sections of 3 1/2 in. from a strip of the fabric's width, 18 to 21 of 2 in.
  test.each([
    [rational(9), '3 1/2', 10, 12],
    [rational(9, 2), '2', 18, 21],
  ] as const)('sections from a width of 42 in.: a nine-patch of %o', (side, segment, least, most) => {
    const made = patternOf(checks(side, ['DLD', 'LDL', 'DLD']), { ...IN_SETS, blocks: 2310 });
    for (const { set } of made.cuts) {
      expect(formatLength(set!.segment)).toBe(segment);
      expect(set!.segments).toBeGreaterThanOrEqual(least);
      expect(set!.segments).toBeLessThanOrEqual(most);
    }
  });
});

/** Four equal squares of so many rails, each turned against its neighbours. */
function fence(side: Rational, rails: number): Block {
  const row = 'ABCD'.slice(0, rails);
  const upright = Array.from({ length: rails }, () => row);
  const level = [...row].map((fabric) => fabric.repeat(rails));
  return checks(side, [...upright.map((each, i) => each + level[i]!), ...level.map((each, i) => each + upright[i]!)]);
}

describe('strip sets', () => {
  const fourPatch = checks(rational(4), ['AB', 'BA']);

  test('are offered where a plain row comes again, and individual pieces stay usual', () => {
    const made = patternOf(fourPatch);
    expect(made.units.map(({ method, methods, settledBy }) => ({ method, methods, settledBy }))).toEqual([
      { method: 'pieces', methods: ['pieces', 'strip-sets'], settledBy: 'usual' },
    ]);
    expect(made.cuts.map(({ set }) => set)).toEqual([undefined, undefined]);
  });

  test('of a four-patch are two strips for both its rows, which are one another turned', () => {
    const made = patternOf(fourPatch, IN_SETS);
    expect(['A', 'B'].map((fabric) => strips(made, fabric))).toEqual([['1 @ 2 1/2 × 6 into 2 of 2 1/2 for A'], ['1 @ 2 1/2 × 6 into 2 of 2 1/2 for A']]);
  });

  test('of a checkerboard make its whole rows, and the smaller rows inside are made no more', () => {
    const made = patternOf(checks(rational(8), ['ABAB', 'BABA', 'ABAB', 'BABA']), IN_SETS);
    expect(strips(made, 'A')).toEqual([expect.stringMatching(/^2 @ 2 1\/2 × 11 into 4 of 2 1\/2 for [A-Z]$/)]);
    expect(made.units).toHaveLength(1);
    expect(made.steps).toHaveLength(2);
    expect(made.figures).toMatchObject({ pieces: 16, seams: 15, differentUnits: 1, matchedPoints: 9 });
  });

  test('are offered for a row that comes once only where there are several blocks', () => {
    const block = checks(rational(9), ['ABC', 'CBA', 'BAB']);
    const rowsOf = (made: Pattern): readonly string[] => made.units.filter(({ methods }) => methods.includes('strip-sets')).map(({ pieces, count }) => `${count} of ${pieces}`);
    expect(rowsOf(patternOf(block))).toEqual(['3 of 2', '2 of 3']);
    expect(rowsOf(patternOf(block, { blocks: 4 }))).toEqual(['12 of 2', '8 of 3', '4 of 3']);
  });

  test('are not offered for rows of other units: in a star of four-patches only the halves of these are', () => {
    const star = patternOf(blockNamed('gallery', 'four-patch-star-12'), { blocks: 10 });
    expect(star.units.filter(({ methods }) => methods.includes('strip-sets')).map(({ unit, pieces, count }) => [unit.id, pieces, count])).toEqual([['A', 2, 20]]);
    expect(star.units.length).toBeGreaterThan(3);
  });

  test('are not offered where the cloth gives no two segments, nor of scraps', () => {
    const wide = checks(rational(60), ['AB', 'BA']);
    expect(patternOf(wide).units[0]!.methods).toEqual([]);
    const family: Block = { ...fourPatch, fabrics: fourPatch.fabrics.map((fabric) => (fabric.id === 'A' ? { ...fabric, scraps: { prints: 4, seed: 1 } } : fabric)) };
    expect(patternOf(family).units.flatMap(({ methods }) => methods)).toEqual([]);
  });

  test('chosen for one unit leave the others as they are, and a unit that cannot be cut so is told', () => {
    const nine = checks(rational(9), ['ABA', 'BAB', 'ABA']);
    const rows: Block = { ...nine, unitMethods: [{ from: [0, 0], to: [3, 1], method: 'strip-sets' }] };
    const made = patternOf(rows);
    expect(made.units.map(({ unit, count, method }) => [unit.id, count, method])).toEqual([['A', 1, null], ['B', 2, 'strip-sets'], ['C', 1, null]]);
    expect(made.proof.holds).toBe(true);
    const once: Block = { ...nine, unitMethods: [{ from: [0, 1], to: [3, 2], method: 'strip-sets' }] };
    expect(patternOf(once).notes.join(' ')).toMatch(/Unit C cannot be cut from strip sets/);
    const rail: Block = { ...checks(rational(4), ['ABCD', 'ABCD', 'ABCD', 'ABCD']), unitMethods: [{ from: [0, 0], to: [4, 4], method: 'strip-sets' }] };
    expect(patternOf(rail).notes.join(' ')).toMatch(/The block cannot be cut from strip sets/);
    expect(patternOf(rail, { blocks: 3 }).notes).toEqual([]);
    const triangles: Block = { ...nine, unitMethods: [{ from: [0, 0], to: [3, 1], method: 'triangles' }] };
    expect(patternOf(triangles).notes.join(' ')).toMatch(/it does nothing/);
  });

  test('of a whole block that is one row are cut when there are several blocks', () => {
    const rail = patternOf(checks(rational(4), ['ABCD', 'ABCD', 'ABCD', 'ABCD']), { ...IN_SETS, blocks: 5 });
    expect(rail.whole).toMatchObject({ method: 'strip-sets', count: 5 });
    expect(strips(rail, 'A')).toEqual(['1 @ 1 1/2 × 23 1/2 into 5 of 4 1/2 for block']);
    expect(rail.proof).toMatchObject({ holds: true, faults: [] });
  });

  test('lie as their unit is described where a print has an up and a down', () => {
    const upright: Block = { ...fourPatch, fabrics: fourPatch.fabrics.map((fabric) => ({ ...fabric, directional: true })) };
    const made = patternOf(upright, { ...IN_SETS, blocks: 3 });
    // A row's strips run down it, so they are cut along the cloth.
    for (const { order } of made.fabrics) expect(order.wanted.map(({ width, height, turn }) => [formatLength(width), formatLength(height), turn])).toEqual([['2 1/2', '16', false]]);
  });

  test('are as wide as the ruler has it, and so are segments', () => {
    const made = patternOf(checks(rational(10), ['ABA', 'BAB', 'ABA']), { ...IN_SETS, blocks: 4 });
    // 3 1/3 and twice 1/4 is 3 5/6.
    for (const { set } of made.cuts.filter(({ set }) => set)) expect([formatLength(set!.across), formatLength(set!.segment)]).toEqual(['3 7/8', '3 7/8']);
    expect(made.proof).toMatchObject({ holds: true, faults: [] });
  });
});

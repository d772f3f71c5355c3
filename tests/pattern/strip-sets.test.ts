import { describe, expect, test } from 'vitest';
import type { Block } from '../../src/block/block.ts';
import { plainTelling } from '../../src/block/plain-telling.ts';
import { formatLength } from '../../src/measure/lengths.ts';
import { rational } from '../../src/measure/rational.ts';
import { byChance } from '../../src/pattern/by-chance.ts';
import { directionNotes } from '../../src/pattern/directions.ts';
import { frameOf, type Mark, type Panel } from '../../src/pattern/diagrams/diagram.ts';
import { stepPanels } from '../../src/pattern/diagrams/step-panels.ts';
import { effectNow, offeredFor, optionsFor } from '../../src/pattern/effects.ts';
import { patternJson } from '../../src/pattern/pattern-json.ts';
import { patternText } from '../../src/pattern/pattern-text.ts';
import type { Pattern } from '../../src/pattern/pattern.ts';
import { cutsAt } from '../../src/pattern/sizes.ts';
import { straightCuts } from '../../src/pattern/straight-cuts.ts';
import { actsOf } from '../../src/pattern/work-time.ts';
import { SEWING_IN_GERMAN } from '../../src/sewing/phrases/german.ts';
import { comesOut } from '../../src/sewing/errors/comes-out.ts';
import { stripSetWords } from '../../src/sewing/strip-set-words.ts';
import { checks, IN_SETS } from '../cutting/checks.ts';
import { blockNamed, patternOf } from './made.ts';

/** Nine squares of three rails each. */
const fence = blockNamed('gallery', 'rail-fence-9');
const nine = checks(rational(9), ['ABA', 'BAB', 'ABA']);

describe('a strip set', () => {
  const made = patternOf(fence, IN_SETS);
  const [step] = made.steps;

  test('is told: what lies beside what, how long it is, what it is cut into', () => {
    expect(step!.how).toBe(
      'Sew long strips side by side, top to bottom: Mustard, Teal and Brick, each 1 1/2 by 32 1/2 in. ' +
        'Press, straighten the ends and cut the set across into 9 segments 3 1/2 in. wide.',
    );
    expect(patternText(made)).toContain('for A, in strip sets, 9 segments each');
    expect(patternText(made)).toContain('joined unit, strip sets');
  });

  test('of several widths is told strip by strip, several sets with their number and what they give too many', () => {
    const uneven: Block = { ...checks(rational(8), ['AABC', 'AABC', 'CBAA', 'CBAA']), name: 'Uneven' };
    const [first] = patternOf(uneven, { ...IN_SETS, blocks: 9 }).steps;
    expect(first!.how).toBe(
      'Sew long strips side by side, left to right: A 4 1/2 by 41 1/2 in., B 2 1/2 by 41 1/2 in. and C 2 1/2 by 41 1/2 in. ' +
        'Make 2 such strip sets. Press, straighten the ends and cut each set across into 9 segments 4 1/2 in. wide.',
    );
    const one = patternOf(uneven, { ...IN_SETS, blocks: 5 }).steps[0]!.how;
    expect(one).toMatch(/Make 2 such strip sets\. .* each set across into 5 segments 4 1\/2 in\. wide\.$/);
    expect(patternOf(checks(rational(9), ['ABC', 'DAB', 'ABC']), { ...IN_SETS, blocks: 11, width: rational(31) }).steps.map(({ how }) => how).join(' ')).toContain('more than needed in all.');
  });

  test('is told in German', () => {
    const words = { telling: plainTelling((id) => id), phrases: SEWING_IN_GERMAN, unit: 'in' as const, seam: rational(1, 4), cut: (id: string) => made.cuts.find((cut) => cut.id === id)! };
    expect(stripSetWords(step!, words)).toMatch(/^Lange Streifen nebeneinander nähen, von oben nach unten: .* Bügeln, die Enden begradigen und den Satz quer in 9 Segmente von 3 1\/2 in\. Breite schneiden\.$/);
  });

  test('is data: strips by width and length, for their unit, with what their set is cut into', () => {
    const { cuts, units } = patternJson(made) as { cuts: readonly Record<string, unknown>[]; units: readonly Record<string, unknown>[] };
    expect(cuts.map(({ quantity, width, height, subcut, strip, for: whom }) => ({ quantity, width, height, subcut, strip, whom }))).toEqual(
      Array.from({ length: 3 }, () => ({
        quantity: 1, width: '1 1/2', height: '32 1/2', subcut: 'none', whom: ['A'],
        strip: { width: '1 1/2', length: '32 1/2', segments: 9, segment: '3 1/2' },
      })),
    );
    expect(units[0]).toMatchObject({ id: 'A', method: 'strip-sets', methods: ['pieces', 'strip-sets'] });
  });

  test('is offered with what it takes and what it changes: three strips for 27 pieces, and cuts across for cuts before', () => {
    const usual = patternOf(fence);
    const [line] = usual.units;
    expect(offeredFor(usual, line!, 'kind')).toEqual(['pieces', 'strip-sets']);
    expect(offeredFor(usual, line!, 'pattern')).toEqual(['usual', 'strip-sets']);
    const [pieces, sets] = optionsFor(usual, line!, 'unit').map(({ effect }) => effect);
    expect(pieces).toEqual(effectNow(usual));
    expect(pieces).toMatchObject({ pieces: 27, cuts: 30, spare: 0 });
    // Each strip off its cloth and to its length, the set straightened, nine segments.
    expect(sets).toMatchObject({ pieces: 3, cuts: 16, spare: 0 });
    expect(sets).toEqual(effectNow(made));
    expect(straightCuts(made)).toBe(16);
    // Units that are only joined of others have no method.
    expect(offeredFor(usual, usual.units.at(-1)!, 'kind')).toEqual([]);
  });

  test('takes fewer seams to begin, and to press, than its units', () => {
    const [sets, pieces] = [actsOf(made), actsOf(patternOf(fence))];
    // Two long seams for 18 short ones; the other eight are as they were.
    expect([pieces.start - sets.start, pieces.press - sets.press]).toEqual([16, 16]);
    // 18 seams of 3 1/2 in. against two of 32 1/2 in.
    expect(pieces.inch - sets.inch).toBeCloseTo(18 * 3.5 - 2 * 32.5, 9);
    expect(sets.match).toBe(pieces.match);
  });

  test('comes out as single pieces do where each seam takes too much: the trade’s three strips finish the middle too narrow', () => {
    const error = { allowance: rational(1, 16), cutting: rational(1, 32) };
    const widths = (pattern: Pattern): unknown => comesOut(pattern.steps, error).map(({ makes, wider, higher }) => [makes, wider, higher]);
    expect(widths(made)).toEqual(widths(patternOf(fence)));
  });

  test('makes segments that are alike, whatever goes wrong by chance: equal rows meet', () => {
    const rows = checks(rational(4), ['AB', 'AB', 'AB', 'AB']);
    const seamed: Block = { ...rows, seams: [1, 2, 3].map((y) => [[0, y], [2, y]] as const) };
    const chance = { allowance: 1 / 32, cutting: 1 / 32, blocks: 60, seed: 4 };
    const misses = (pattern: Pattern): readonly number[] => byChance(pattern.steps, chance).misses.map(({ apart }) => apart.high);
    const [sets, pieces] = [patternOf(seamed, IN_SETS), patternOf(seamed)];
    expect(sets.steps[0]!.method).toBe('strip-sets');
    expect(Math.max(...misses(pieces))).toBeGreaterThan(1 / 64);
    expect(Math.max(...misses(sets))).toBeLessThan(1e-9);
  });

  test('is cut at other sizes too', () => {
    expect(cutsAt(made, rational(18)).map(({ set }) => set && [formatLength(set.across), formatLength(set.length), set.segments])).toEqual(
      Array.from({ length: 3 }, () => ['2 1/2', '33 1/2', 5]),
    );
  });

  test('runs a print with an up and a down the same way in all its segments, which is told', () => {
    const upright: Block = { ...nine, fabrics: nine.fabrics.map((fabric) => ({ ...fabric, directional: true })) };
    const turned = checks(rational(4), ['AB', 'BA']);
    const directional: Block = { ...turned, fabrics: turned.fabrics.map((fabric) => ({ ...fabric, directional: true })) };
    expect(directionNotes(directional.fabrics[0]!, patternOf(directional, IN_SETS))).toEqual([
      'Cut from strip sets, all alike, it runs upside down in 1 of the units A in the block; sew these from pieces if it should not.',
    ]);
    expect(directionNotes(upright.fabrics[0]!, patternOf(upright, { ...IN_SETS, blocks: 2 }))).toEqual([]);
  });
});

describe('the pictures of a strip set', () => {
  const SEAM = 1 / 4;
  const cloths = ({ marks }: Panel): readonly Extract<Mark, { mark: 'cloth' }>[] => marks.flatMap((mark) => (mark.mark === 'cloth' ? [mark] : []));
  const lines = ({ marks }: Panel, line: string): readonly Extract<Mark, { mark: 'line' }>[] => marks.flatMap((mark) => (mark.mark === 'line' && mark.line === line ? [mark] : []));
  const boxOf = (mark: Mark): readonly number[] => {
    const { left, top, width, height } = frameOf([mark]);
    return [left, top, width, height];
  };

  test.each([
    ['a column', patternOf(fence, IN_SETS), 'A'],
    ['a row', patternOf(nine, { ...IN_SETS, blocks: 3 }), 'B'],
    ['a row of three widths', patternOf(checks(rational(8), ['AABC', 'AABC', 'CBAA', 'CBAA']), IN_SETS), 'A'],
  ] as const)('of %s: strips as they are cut, sewn together, cut across, one segment', (_, pattern, unit) => {
    const step = pattern.steps.find(({ makes }) => makes === unit)!;
    const [apart, sewn, segment, ...more] = stepPanels({ step, pattern });
    expect(more).toEqual([]);
    const lies = step.joins[0]!.from.x / step.joins[0]!.from.w === step.joins[0]!.to.x / step.joins[0]!.to.w ? 0 : 1;
    const sets = step.parts.map(({ from }) => pattern.cuts.find(({ id }) => 'cut' in from && id === from.cut)!.set!);
    const across = sets.map((set) => set.across.n / set.across.d);
    // Before: each as wide as it is cut, none on another, a seam between each two.
    const before = cloths(apart!).map(boxOf);
    before.forEach((box, i) => expect(box[2 + lies]).toBeCloseTo(across[i]!, 9));
    before.slice(1).forEach((box, i) => expect(box[lies]!).toBeGreaterThan(before[i]![lies]! + before[i]![2 + lies]!));
    expect(lines(apart!, 'stitched')).toHaveLength(step.joins.length);
    // After: edge to edge, each narrower by its seams; fabrics in the same order.
    const after = cloths(sewn!).map(boxOf);
    expect(cloths(sewn!).map(({ fabric }) => fabric)).toEqual(step.parts.map(({ from }) => 'fabric' in from && from.fabric));
    after.forEach((box, i) => {
      const seams = (i > 0 ? 1 : 0) + (i < after.length - 1 ? 1 : 0);
      expect(box[2 + lies]).toBeCloseTo(across[i]! - seams * SEAM, 9);
      if (i > 0) expect(box[lies]).toBeCloseTo(after[i - 1]![lies]! + after[i - 1]![2 + lies]!, 9);
    });
    // Cuts right across, a segment apart; arrows on every seam, the way the step says.
    const wide = after.reduce((sum, box) => sum + box[2 + lies]!, 0);
    const cuts = lines(sewn!, 'cut').map(boxOf);
    cuts.forEach((box) => expect(box[2 + lies]).toBeCloseTo(wide, 9));
    cuts.slice(1).forEach((box, i) => expect(box[1 - lies]! - cuts[i]![1 - lies]!).toBeCloseTo(sets[0]!.segment.n / sets[0]!.segment.d, 9));
    const arrows = sewn!.marks.flatMap((mark) => (mark.mark === 'pressed' ? [mark] : []));
    arrows.forEach(({ from, to }, i) => expect(Math.sign(to[lies]! - from[lies]!)).toBe(step.pressed[i] === 'second' ? 1 : -1));
    expect(arrows).toHaveLength(step.joins.length);
    // One of them is the unit.
    expect([segment!.frame.width, segment!.frame.height]).toEqual([step.unfinished.width, step.unfinished.height].map(({ n, d }) => expect.closeTo(n / d, 9)));
    expect(segment!.says).toBe('One segment');
  });
});

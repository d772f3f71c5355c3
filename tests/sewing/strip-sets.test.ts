import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Choices } from '../../src/block/choices.ts';
import { toDrawing } from '../../src/block/drawing.ts';
import { STRAIGHTENING } from '../../src/cutting/strip-sets.ts';
import { add, multiply, rational, subtract, ZERO, type Rational } from '../../src/measure/rational.ts';
import { makePattern } from '../../src/pattern/make-pattern.ts';
import type { Pattern } from '../../src/pattern/pattern.ts';
import { prove } from '../../src/sewing/proof.ts';
import type { Plan } from '../../src/sewing/proof-table.ts';
import { must } from '../block/drawn.ts';
import { checks, IN_SETS } from '../cutting/checks.ts';
import { tries } from '../geometry/drawings.ts';
import { blockNamed, namesIn } from '../pattern/made.ts';
import { SETS } from './sabotage-sets.ts';

/** Blocks in which rows come again: each of their rows is one of two, as it is or from its other end. */
const rowed = fc
  .record({ across: fc.integer({ min: 2, max: 5 }), down: fc.integer({ min: 2, max: 5 }) })
  .chain(({ across, down }) =>
    fc.record({
      kinds: fc.tuple(...[0, 1].map(() => fc.array(fc.constantFrom('A', 'B', 'C'), { minLength: across, maxLength: across }))),
      rows: fc.array(fc.record({ kind: fc.nat(1), back: fc.boolean() }), { minLength: down, maxLength: down }),
      side: fc.constantFrom(rational(6), rational(9), rational(10), rational(25, 2), rational(36)),
      unit: fc.constantFrom('in' as const, 'cm' as const),
      blocks: fc.integer({ min: 1, max: 30 }),
      ruler: fc.constantFrom(rational(1, 8), rational(1, 16), rational(1, 10)),
      seam: fc.constantFrom(rational(1, 4), rational(3, 8), rational(3, 4)),
    }),
  )
  .map(({ kinds, rows, side, unit, ...choices }) => {
    const block = checks(side, rows.map(({ kind, back }) => (back ? kinds[kind]!.toReversed() : kinds[kind]!).join('')), unit);
    return { block, choices: { ...IN_SETS, ...choices } satisfies Choices };
  });

const planned = ({ block, choices }: { readonly block: ReturnType<typeof checks>; readonly choices: Choices }): Pattern => must(makePattern(block, choices, 'chosen way'));

const sum = (all: readonly Rational[]): Rational => all.reduce(add, ZERO);
const times = (a: Rational, n: number): Rational => multiply(a, rational(n));

describe('in every block that has rows which come again', () => {
  test('strip sets are proved, and what is cut across adds up to the units and what is to spare', () => {
    let sets = 0;
    fc.assert(
      fc.property(rowed, (drawn) => {
        const pattern = planned(drawn);
        expect(pattern.proof.faults).toEqual([]);
        const off = STRAIGHTENING[drawn.block.finished.unit];
        for (const step of pattern.steps.filter(({ method }) => method === 'strip-sets')) {
          const strips = step.parts.map(({ from }) => pattern.cuts.find(({ id }) => 'cut' in from && id === from.cut)!);
          const { segments, segment, length } = strips[0]!.set!;
          const made = Math.ceil(step.count / segments);
          sets += made;
          // Cut across, the sets are so many segments, as wide together as the strips are long but for their ends.
          expect(made * segments).toBeGreaterThanOrEqual(step.count);
          expect(made * segments - step.count).toBeLessThan(segments);
          const wide = sum(strips.map(({ set }) => subtract(set!.across, times(pattern.choices.seam, 2))));
          const [w, h] = [step.finished.width, step.finished.height];
          const inRow = step.joins[0]!.from.x * step.joins[0]!.to.w === step.joins[0]!.to.x * step.joins[0]!.from.w;
          const [along, across] = inRow ? [h, w] : [w, h];
          // Off the ruler each strip may be up to a mark too wide, and a segment too.
          const near = (has: Rational, needed: Rational, marks: number): void => {
            const more = subtract(has, needed);
            expect(more.n).toBeGreaterThanOrEqual(0);
            expect(subtract(more, times(pattern.choices.ruler, marks)).n).toBeLessThan(0);
          };
          near(wide, across, strips.length);
          near(segment, add(along, times(pattern.choices.seam, 2)), 1);
          near(length, add(times(segment, segments), off), 1);
        }
        // Strips of each line: as many as its units' sets have.
        for (const cut of pattern.cuts.filter(({ set }) => set)) {
          const takes = pattern.steps.map(({ parts, count }) => parts.filter(({ from }) => 'cut' in from && from.cut === cut.id).length * Math.ceil(count / cut.set!.segments));
          expect(cut.quantity).toBe(takes.reduce((a, b) => a + b, 0));
        }
      }),
      tries(120),
    );
    expect(sets).toBeGreaterThan(100);
  });

  test('the pieces are those that are cut one by one, in the same places, and the block is sewn of as many seams', () => {
    fc.assert(
      fc.property(rowed, ({ block, choices }) => {
        const [sets, one] = [planned({ block, choices }), planned({ block, choices: { ...choices, methods: {} } })];
        expect(sets.pieces).toEqual(one.pieces);
        expect(sets.proof.seams).toBe(one.proof.seams);
        expect(sets.figures).toMatchObject({ pieces: one.figures.pieces, seams: one.figures.seams, matchedPoints: one.figures.matchedPoints });
      }),
      tries(40),
    );
  });
});

test('every block of the gallery and of the published cases that has rows is proved in strip sets, six blocks at once', () => {
  const all = (['gallery', 'cases'] as const).flatMap((folder) => namesIn(folder).map((name) => [name, blockNamed(folder, name)] as const));
  const found = all.map(([name, block]) => {
    const pattern = planned({ block, choices: { ...IN_SETS, blocks: 6 } });
    expect([name, ...pattern.proof.faults]).toEqual([name]);
    return pattern.steps.filter(({ method }) => method === 'strip-sets').length;
  });
  expect(found.filter((sets) => sets > 0).length).toBeGreaterThan(25);
});

describe('a fault in strip sets is found for what it is', () => {
  const plans = fc
    .sample(rowed, { ...tries(60), numRuns: 60 })
    .map((drawn): Plan => {
      const { choices, cuts, steps } = planned(drawn);
      const { drawing, step } = must(toDrawing(drawn.block));
      return { drawing, step, ...choices, straighten: STRAIGHTENING[drawn.block.finished.unit], cuts, steps };
    })
    .filter(({ cuts }) => cuts.some(({ set }) => set));

  test.each(SETS)('$says', ({ spoil, found }) => {
    let spoilt = 0;
    plans.forEach((plan, p) => {
      const wrong = spoil(plan, (from) => from[p % from.length]);
      if (!wrong) return;
      spoilt += 1;
      expect(prove(wrong).faults.join(' ')).toMatch(found);
    });
    expect(spoilt).toBeGreaterThan(10);
  });
});

import { describe, expect, test } from 'vitest';
import { rational, type Rational } from '../../src/measure/rational.ts';
import { prove } from '../../src/sewing/proof.ts';
import type { Plan } from '../../src/sewing/proof-table.ts';
import type { Step } from '../../src/sewing/step.ts';
import { cutOf, larger, partOf, smaller, stepOf } from './proof-mutants.ts';
import { cutGoose, flippedGoose, fourGeese, shooFly, slanted } from './proof-plans.ts';
import { eightAtATime, halfRectangle, hourglasses, squareInSquare } from './proof-unit-plans.ts';
import { at, box, COMMON, drawing, list, patch, seam, steps, unit } from './proof-writing.ts';

/** The faults of a plan as one text; a plan that holds has none. */
const faults = (plan: Plan): string => prove(plan).faults.join('\n');

describe('cloth', () => {
  test('a square 1/8 too small for its triangles', () => {
    const plan = cutOf(shooFly, 0, (cut) => ({ width: smaller(cut.width), height: smaller(cut.height) }));
    expect(faults(plan)).toBe(
      'Step 1 (unit A), part 1 (line 1) is cut 4 3/4 by 4 3/4, too small for what is sewn from it: it needs 4 7/8 by 4 7/8.',
    );
  });

  test('a square 1/8 too large', () => {
    const plan = cutOf(shooFly, 0, (cut) => ({ width: larger(cut.width), height: larger(cut.height) }));
    expect(faults(plan)).toContain('is cut 5 by 5, larger than the ruler and the trim ask for: 4 7/8 by 4 7/8 would do');
  });

  test.each([
    ['a flipped goose needs its base as large as the unit', flippedGoose, 0, /line 1\) is cut 3 3\/8 by 6 3\/8, too small/],
    ['a flipped corner is its leg and two allowances', flippedGoose, 1, /line 2\) is cut 3 3\/8 by 3 3\/8, too small/],
    ['four geese need w + 1 1/4', fourGeese, 0, /cut 7 1\/8 by 7 1\/8, too small .* needs 7 1\/4 by 7 1\/4/],
    ['their wings need h + 7/8', fourGeese, 1, /cut 3 3\/4 by 3 3\/4, too small .* needs 3 7\/8 by 3 7\/8/],
    ['a quarter needs its long side + 1 1/4', cutGoose, 0, /cut 7 1\/8 by 7 1\/8, too small .* needs 7 1\/4 by 7 1\/4/],
    ['a half needs its leg + 7/8', cutGoose, 1, /cut 3 3\/4 by 3 3\/4, too small .* needs 3 7\/8 by 3 7\/8/],
    ['eight at a time needs twice that', eightAtATime, 0, /cut 7 5\/8 by 7 5\/8, too small .* needs 7 3\/4 by 7 3\/4/],
    ['a square on its point needs f/√2 + 1/2', squareInSquare, 0, /cut 3 1\/4 by 3 1\/4, too small .* needs 3 3\/8 by 3 3\/8/],
    ['a half-rectangle needs its scale 1 + s/r both ways', halfRectangle, 0, /cut 3 5\/8 by 4 7\/8, too small .* needs 3 3\/4 by 5/],
    ['a template needs cloth that holds it', slanted, 0, /cut from 3 3\/8 by 4 3\/8, too small for the template/],
  ] as const)('%s', (_, plan, line, fault) => {
    expect(faults(cutOf(plan, line, (cut) => ({ width: smaller(cut.width), height: smaller(cut.height) })))).toMatch(fault);
  });

  test('a template may be cut as far as its tips go, and no further', () => {
    // The tip at 3, 4 has the angle arctan 2, so its raw edges meet (1/4)/tan(31.7°) = 0.40… along: 3 + 0.25 + 0.40… is under 3 3/4.
    const wide = (width: Rational): Plan => cutOf(slanted, 0, () => ({ width }));
    expect(faults(wide(rational(15, 4)))).toBe('');
    expect(faults(wide(rational(31, 8)))).toContain('cut from 3 7/8 by 4 1/2, too large for the ruler and the template with its tips');
  });

  test('what is cut larger for trimming is accepted when the step says that it is trimmed', () => {
    const generous = {
      ...[0, 1].reduce((plan, i) => cutOf(plan, i, (cut) => ({ width: larger(cut.width), height: larger(cut.height) })), shooFly),
      trim: rational(1, 8),
    };
    expect(faults(generous)).toMatch(/is cut 5 by 5 to be trimmed, but the step does not say that it is/);
    expect(faults(stepOf(generous, 0, () => ({ trimmed: true })))).toBe('');
  });

  test('the wrong number of squares', () => {
    expect(faults(cutOf(shooFly, 3, () => ({ quantity: 2 })))).toBe('Line 4 cuts 2 squares, but 1 is used up by the steps.');
    expect(faults(cutOf(shooFly, 2, () => ({ quantity: 3 })))).toBe('Line 3 cuts 3 squares, but 4 are used up by the steps.');
    expect(faults(cutOf(shooFly, 0, () => ({ quantity: 1, uses: [{ unit: 'A', role: 'pair', quantity: 1 }] })))).toBe(
      'Line 1 gives unit A 1 square, but 4 of it take 2.\nLine 1 cuts 1 square, but 2 are used up by the steps.',
    );
  });

  test('the wrong number of spare triangles', () => {
    expect(faults(cutOf(cutGoose, 0, () => ({ spare: 2 })))).toBe('Line 1 says 2 to spare, but 3 are left over.');
  });

  test('two squares of one fabric leave one unit over, which is two triangles', () => {
    const oneUnit = (spare: number): Plan => ({
      ...COMMON,
      step: rational(2),
      drawing: drawing(1, 1, 'oat'),
      cuts: list({ cut: '2 oat 2 7/8', for: [['block', 'pair', 2]], spare }),
      steps: steps({
        makes: 'block',
        kind: 'half-square triangle',
        count: 1,
        method: 'two-at-a-time',
        finished: ['2', '2'],
        unfinished: ['2 1/2', '2 1/2'],
        parts: [
          patch('oat', 1, 'pair', [
            [0, 0],
            [1, 0],
            [0, 1],
          ]),
          patch('oat', 1, 'pair', [
            [1, 0],
            [1, 1],
            [0, 1],
          ]),
        ],
        joins: [seam(0, 1, [1, 0], [0, 1])],
      }),
    });
    expect([0, 1, 2, 3].map((spare) => prove(oneUnit(spare)).holds)).toEqual([false, true, true, false]);
  });

  test('a diagonal cut that would spoil the squares', () => {
    expect(faults(cutOf(shooFly, 0, () => ({ subcut: 'once' })))).toContain('must be cut as it is, but the cutting list says once');
  });

  test('a mirrored template', () => {
    const mirrored = [
      [0, 0],
      [4, 0],
      [4, 4],
      [2, 4],
    ].map(([x, y]) => at([x, y]));
    expect(faults(cutOf(slanted, 1, () => ({ template: mirrored })))).toContain('does not have the outline of its template');
  });

  test('the two halves of one rectangle are of one hand: a left and a right one need two rectangles', () => {
    // A peak 4 × 4: legs of its sides 2 × 4, r = 3 − √5, so 2 + 2/(4r) = 2.65… by 4 + 4/(4r) = 5.30….
    const peak = (rectangles: number): Plan => ({
      ...COMMON,
      step: rational(2),
      drawing: drawing(2, 2, 'sky', [
        'rock',
        [
          [0, 2],
          [1, 0],
          [2, 2],
        ],
      ]),
      cuts: list(
        {
          cut: '1 rock 4 7/8 x 4 7/8',
          template: [
            [0, 2],
            [1, 0],
            [2, 2],
          ],
          for: [['block', 'template', 1]],
        },
        {
          cut: `${rectangles} sky 2 3/4 x 5 3/8`,
          subcut: 'once',
          for: [['block', 'half', rectangles]],
          spare: 2 * rectangles - 2,
          diagonals: { falling: 1, rising: rectangles - 1 },
        },
      ),
      steps: steps({
        makes: 'block',
        kind: 'peak',
        count: 1,
        method: 'triangles',
        finished: ['4', '4'],
        unfinished: ['4 1/2', '4 1/2'],
        parts: [
          patch('rock', 1, 'template', [
            [0, 2],
            [1, 0],
            [2, 2],
          ]),
          patch('sky', 2, 'half', [
            [0, 0],
            [1, 0],
            [0, 2],
          ]),
          patch('sky', 2, 'half', [
            [1, 0],
            [2, 0],
            [2, 2],
          ]),
        ],
        joins: [seam(0, 1, [1, 0], [0, 2]), seam(3, 2, [1, 0], [2, 2])],
      }),
    });
    expect(faults(peak(2))).toBe('');
    expect(faults(peak(1))).toContain('Line 2 gives the block 1 rectangle, but 1 of it take 2.');
  });
});

describe('units that come out as mirror images', () => {
  test('geese with two different wings come out as pairs of mirror images', () => {
    const wings = { ...fourGeese, blocks: 2 };
    const changed: Plan = {
      ...wings,
      drawing: drawing(
        4,
        2,
        'sky',
        [
          'gull',
          [
            [0, 2],
            [2, 0],
            [4, 2],
          ],
        ],
        [
          'dusk',
          [
            [2, 0],
            [4, 0],
            [4, 2],
          ],
        ],
      ),
      cuts: list(
        { cut: '1 gull 7 1/4', for: [['A', 'large', 1]] },
        { cut: '2 sky 3 7/8', for: [['A', 'small', 2]] },
        { cut: '2 dusk 3 7/8', for: [['A', 'small', 2]] },
      ),
      steps: stepOf(
        partOf(wings, 0, 2, () => ({ from: { cut: '3', role: 'small', fabric: 'dusk' } })),
        0,
        () => ({ count: 2 }),
      ).steps.map((step): Step => ({ ...step, count: 2 })),
    };
    expect(faults(changed)).toBe('');
    const four = { ...changed, blocks: 4, steps: changed.steps.map((step): Step => ({ ...step, count: 4 })) };
    expect(faults(four)).toContain('Line 1 gives unit A 1 square, but 4 of it take 2.');
  });

  test('both hands of a four-fabric hourglass are made at once', () => {
    const left = hourglasses(['rust', 'oat', 'moss', 'kelp'], 1, { rust: 1, oat: 1, moss: 1, kelp: 1 }, 0);
    const right = hourglasses(['oat', 'rust', 'kelp', 'moss'], 1, { rust: 1, oat: 1, moss: 1, kelp: 1 });
    const both: Plan = {
      ...left,
      drawing: drawing(
        4,
        2,
        'rust',
        ...left.drawing.patches.map((p) => [p.fabric, p.points] as const),
        ...right.drawing.patches.map((p) => [p.fabric, p.points.map(([x, y]) => [x + 2, y] as const)] as const),
      ),
      cuts: left.cuts.map((cut) => ({
        ...cut,
        uses: [
          { unit: 'A', role: 'pair', quantity: 1 },
          { unit: 'B', role: 'pair', quantity: 1 },
        ],
        spare: 1,
      })),
      steps: [
        left.steps[0],
        { ...right.steps[0], number: 2, makes: 'B' },
        {
          ...left.steps[1],
          number: 3,
          finished: { ...left.steps[1].finished, width: rational(7) },
          unfinished: { ...left.steps[1].unfinished, width: rational(15, 2) },
          parts: [unit('A', 0, box(0, 0, 2, 2)), unit('B', 0, box(2, 0, 2, 2))],
          joins: [seam(0, 1, [2, 0], [2, 2])],
        },
      ],
    };
    expect(faults(both)).toBe('');
  });
});

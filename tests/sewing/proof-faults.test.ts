import { describe, expect, test } from 'vitest';
import { rational } from '../../src/measure/rational.ts';
import { prove } from '../../src/sewing/proof.ts';
import type { Plan } from '../../src/sewing/proof-table.ts';
import { partOf, patchOf } from './proof-mutants.ts';
import { flippedGoose, shooFly, slanted } from './proof-plans.ts';
import { box, drawing, patch, steps, unit } from './proof-writing.ts';

/** The faults of a plan as one text; a plan that holds has none. */
const faults = (plan: Plan): string => prove(plan).faults.join('\n');

describe('the drawing', () => {
  test('another fabric', () => {
    expect(faults(patchOf(shooFly, 4, () => ({ fabric: 'plum' })))).toContain(
      'The yellow piece (part 3 of step 3) lies from 4 across, 4 down to 8 across, 8 down, where the drawing shows plum.',
    );
  });

  test('a speck of another fabric inside a piece', () => {
    const specks = {
      ...slanted.drawing,
      patches: [
        ...slanted.drawing.patches,
        {
          fabric: 'gull',
          points: [
            [1, 2],
            [2, 4],
            [1, 3],
          ] as const,
        },
      ],
    };
    expect(faults({ ...slanted, drawing: specks })).toContain(
      'The sand piece (part 1 of step 1, in part 1 of step 2) lies from 0 across, 0 down to 3 across, 4 down, where the drawing shows gull.',
    );
  });

  test('a patch that must stay whole, divided', () => {
    const strip = { ...shooFly, drawing: { ...shooFly.drawing, patches: shooFly.drawing.patches } };
    const whole = {
      ...strip,
      drawing: drawing(
        3,
        3,
        'mustard',
        ['mustard', box(0, 1, 3, 1) as [number, number][], 'whole'],
        ...shooFly.drawing.patches.map((p) => [p.fabric, p.points] as const),
      ),
    };
    expect(faults(whole)).toBe('Patch 1 (mustard) must stay whole, but what shows of it has an inner corner, so it is sewn from 2 pieces.');
    const convex = {
      ...strip,
      drawing: {
        ...shooFly.drawing,
        patches: [
          {
            fabric: 'mustard',
            points: [
              [1, 0],
              [2, 0],
              [2, 2],
              [1, 2],
            ] as const,
            whole: true,
          },
          ...shooFly.drawing.patches,
        ],
      },
    };
    expect(faults(convex)).toBe('');
    const twoStrips = {
      ...flippedGoose,
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
          'sky',
          [
            [0, 0],
            [4, 0],
            [4, 2],
            [2, 0],
            [0, 2],
          ],
          'whole',
        ],
      ),
    };
    expect(faults(twoStrips)).toMatch(
      /^Patch 2 \(sky\) must stay whole, but what shows of it has an inner corner, so it is sewn from 2 pieces\.$/,
    );
  });

  test('a drawn seam that is not sewn', () => {
    const drawn = {
      ...shooFly,
      drawing: {
        ...shooFly.drawing,
        seams: [
          [
            [1, 0],
            [1, 3],
          ],
          [
            [0, 0],
            [1, 1],
          ],
        ] as const,
      },
    };
    expect(faults(drawn)).toMatch(
      /^The seam drawn from 0 across, 0 down to 4 across, 4 down is not sewn: it runs through part \d of step 1, in part 1 of step 2, in part 1 of step 3\.$/,
    );
  });
});

describe('nothing is taken on trust', () => {
  test('numbers that are none', () => {
    const plan = partOf(shooFly, 0, 0, (part) => ({ outline: part.outline.map((p) => ({ ...p, x: p.x + 0.5 })) }));
    expect(faults(plan)).toContain('The pattern holds a number that is not an exact fraction, so it cannot be proved.');
    expect(faults({ ...shooFly, ruler: rational(0) })).toContain('must be lengths');
  });

  test('no steps, no cloth', () => {
    expect(faults({ ...shooFly, steps: [] })).toContain('No step sews the block together.');
    expect(prove({ ...shooFly, cuts: [] }).holds).toBe(false);
  });

  test('units that double at every step without end', () => {
    const doubling = Array.from({ length: 64 }, (_, i) => ({
      makes: `U${i}`,
      kind: 'joined unit' as const,
      count: 1,
      method: null,
      finished: ['12', '12'] as const,
      unfinished: ['12 1/2', '12 1/2'] as const,
      joins: [],
      parts: i === 0 ? [patch('yellow', 4, 'plain', box(0, 0, 1, 1))] : [0, 1].map(() => unit(`U${i - 1}`, 0, box(0, 0, 1, 1))),
    }));
    const block = { ...doubling[1], makes: 'block', parts: [unit('U63', 0, box(0, 0, 1, 1))] };
    expect(faults({ ...shooFly, steps: steps(...doubling, block) })).toContain('more pieces than any block holds');
  });
});

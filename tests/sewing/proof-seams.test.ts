import { describe, expect, test } from 'vitest';
import { prove } from '../../src/sewing/proof.ts';
import type { Plan } from '../../src/sewing/proof-table.ts';
import type { Join, Step } from '../../src/sewing/step.ts';
import { joinOf, larger, partOf, stepOf, without } from './proof-mutants.ts';
import { flippedGoose, shooFly, slanted, whirl } from './proof-plans.ts';
import { halfRectangle, squareInSquare } from './proof-unit-plans.ts';
import { at, box, patch, seam } from './proof-writing.ts';

/** The faults of a plan as one text; a plan that holds has none. */
const faults = (plan: Plan): string => prove(plan).faults.join('\n');

describe('units', () => {
  test('a unit used before it is made', () => {
    const [a, b, c] = shooFly.steps;
    const swapped = { ...shooFly, steps: [b, a, c].map((step, i) => ({ ...step, number: i + 1 })) };
    expect(faults(swapped)).toContain('Step 1 (unit B), part 1 is unit A, which no earlier step makes.');
  });

  test('too few of a unit', () => {
    expect(faults(stepOf(shooFly, 0, () => ({ count: 3 })))).toContain('Step 1 (unit A) is made 3 times, but later steps take 4.');
  });

  test('a misprinted unfinished size', () => {
    const misprint = stepOf(shooFly, 1, (step) => ({ unfinished: { ...step.unfinished, width: larger(step.unfinished.width) } }));
    expect(faults(misprint)).toBe('Step 2 (unit B) says unfinished 12 5/8 by 4 1/2, but it measures 12 1/2 by 4 1/2.');
  });

  test('a unit turned so that its outline no longer fits', () => {
    expect(faults(partOf(shooFly, 2, 0, () => ({ turn: 1 })))).toContain(
      'Step 3 (the block), part 1 is unit B turned 1 quarter turn, but its outline there is a different one.',
    );
  });

  test('a unit turned so that its outline fits and its fabrics do not', () => {
    expect(faults(partOf(shooFly, 1, 2, () => ({ turn: 2 })))).toMatch(
      /^The white piece \(part 1 of step 1, in part 3 of step 2, in part 1 of step 3\) lies from 8 across, 0 down to 12 across, 4 down, where the drawing shows mustard\./,
    );
  });

  test('a mirror image taken for the unit itself', () => {
    const mirrored = {
      ...halfRectangle,
      steps: halfRectangle.steps.map((step): Step => ({
        ...step,
        parts: [
          patch('sail', 1, 'half', [
            [0, 0],
            [3, 4],
            [0, 4],
          ]),
          patch('hull', 2, 'half', [
            [0, 0],
            [3, 0],
            [3, 4],
          ]),
        ],
        joins: [seam(0, 1, [0, 0], [3, 4])],
      })),
    };
    expect(faults(mirrored)).toContain('where the drawing shows');
  });
});

describe('seams', () => {
  test('edges that do not match', () => {
    const plan = partOf(shooFly, 2, 2, () => ({ outline: box(1, 1, 1, 1).map(([x, y]) => ({ x: 2 * x, y: y === 2 ? 3 : 2 * y, w: 2 })) }));
    expect(faults(plan)).toContain('Step 3 (the block): seam 1 joins two edges that do not match in length and place.');
  });

  test('two parts swapped', () => {
    const parts = shooFly.steps[2].parts;
    const swapped = stepOf(shooFly, 2, () => ({ parts: [parts[1], parts[0], parts[2], parts[3], parts[4]] }));
    expect(faults(swapped)).toContain('Step 3 (the block): seam 1 does not lie along an edge of both things it joins.');
    const recut = partOf(
      partOf(shooFly, 2, 1, () => ({ from: parts[2].from })),
      2,
      2,
      () => ({ from: parts[1].from }),
    );
    expect(faults(recut)).toContain(
      'The yellow piece (part 2 of step 3) lies from 0 across, 4 down to 4 across, 8 down, where the drawing shows mustard.',
    );
  });

  test('a missing piece leaves a gap', () => {
    const row = shooFly.steps[2].parts;
    const gap = stepOf(shooFly, 2, (step) => ({ parts: without(row, 3), joins: step.joins.filter((_, i) => i !== 1) }));
    expect(faults(gap)).toContain('The pieces do not fill the block: their areas sum to 16 too little.');
  });

  test('a part that is never sewn on', () => {
    const plan = stepOf(flippedGoose, 0, (step) => ({ joins: step.joins.slice(0, 1) }));
    expect(faults(plan)).toContain('Step 1 (unit A): part 3 is never sewn on.');
  });

  test('a piece that overlaps another', () => {
    const plan = partOf(shooFly, 2, 3, (part) => ({ outline: part.outline.map((p) => ({ x: 2 * p.x - 1, y: 2 * p.y, w: 2 })) }));
    expect(faults(plan)).toContain('The mustard piece (part 4 of step 3) and the yellow piece (part 3 of step 3) overlap in the block.');
  });

  test('a piece beyond the block', () => {
    const plan = partOf(shooFly, 2, 3, (part) => ({ outline: part.outline.map((p) => ({ ...p, x: p.x + 1 })) }));
    expect(faults(plan)).toContain(
      'The mustard piece (part 4 of step 3) reaches beyond the block: it lies from 12 across, 4 down to 16 across, 8 down.',
    );
  });

  test('an inner corner', () => {
    const plan = stepOf(squareInSquare, 0, (step) => ({
      joins: [step.joins[0], seam(5, 3, [1, 0], [2, 1]), seam(6, 2, [2, 1], [1, 2]), step.joins[3]],
    }));
    expect(faults(plan)).toBe('');
    const three = {
      ...slanted,
      steps: slanted.steps.map((step) => ({ ...step, joins: step.joins.map((join) => ({ ...join, to: at([2, 4]) })) })),
    };
    expect(faults(three)).toContain('seam 1 does not lie along an edge of both things it joins');
  });

  test('a seam of an unknown thing, or of one already sewn in', () => {
    expect(faults(joinOf(shooFly, 1, 1, () => ({ first: 9 })))).toContain('seam 2 joins something that is not on the table yet');
    expect(faults(joinOf(shooFly, 1, 1, () => ({ first: 0 })))).toContain('seam 2 joins part 1, which is already sewn into something else');
  });
});

describe('a partial-seam ring', () => {
  const joins = whirl.steps[0].joins;
  const sewing = (...order: readonly Join[]): Plan => stepOf(whirl, 0, () => ({ joins: order }));

  test('sewn through at once', () => {
    const through = sewing({ ...joins[0], sew: 'through' }, ...joins.slice(1, 4));
    expect(faults(through)).toContain('seam 1 joins two edges that do not match in length and place');
  });

  test('never finished', () => {
    expect(faults(sewing(...joins.slice(0, 4)))).toContain('seam 1 is sewn only part of the way and never finished');
  });

  test('finished too early', () => {
    const early = [...joins.slice(0, 3), { ...joins[4], second: 7 }, seam(8, 4, [5, 18], [5, 5])];
    expect(faults(sewing(...early))).toContain('seam 4 joins two edges that do not match in length and place');
  });

  test('sewn round the wrong way, over the loose end', () => {
    const wrong = [joins[0], seam(5, 4, [5, 0], [5, 18]), ...joins.slice(2)];
    expect(faults(sewing(...wrong))).toContain('seam 2 is not the whole of the edge of the part it adds');
  });

  test('sewn part of the way where it could be sewn through', () => {
    expect(faults(joinOf(shooFly, 0, 0, () => ({ sew: 'part-way' })))).toContain('although its edges match: it can be sewn right through');
  });

  test('begun at the loose end', () => {
    expect(faults(joinOf(whirl, 0, 0, () => ({ from: at([0, 5]), to: at([4, 5]) })))).toContain(
      'seam 1 is not the beginning of the edge it is sewn along',
    );
  });

  test('however much of the seam is sewn at first, it holds', () => {
    for (const x of [12, 9, 5, 0]) expect(faults(joinOf(whirl, 0, 0, () => ({ to: at([x, 5]) })))).toBe('');
    for (const x of [12, 9, 5, 1]) expect(faults(joinOf(whirl, 0, 4, () => ({ from: at([x, 5]) })))).toBe('');
  });

  test('the same ring the other way round holds, and so does one that begins at another side', () => {
    const mirror = (plan: Plan): Plan =>
      stepOf(
        {
          ...plan,
          drawing: {
            ...plan.drawing,
            patches: plan.drawing.patches.map((p) => ({ ...p, points: p.points.map(([x, y]) => [18 - x, y] as const) })),
          },
        },
        0,
        (step) => ({
          parts: step.parts.map((part) => ({ ...part, outline: part.outline.map((p) => ({ ...p, x: 18 - p.x })).toReversed() })),
          joins: step.joins.map((join) => ({
            ...join,
            from: { ...join.from, x: 18 - join.from.x },
            to: { ...join.to, x: 18 - join.to.x },
          })),
        }),
      );
    expect(faults(mirror(whirl))).toBe('');
    const other = [
      seam(0, 2, [13, 13], [13, 0], 'part-way'),
      seam(5, 3, [18, 13], [5, 13]),
      seam(6, 4, [5, 18], [5, 5]),
      seam(7, 1, [0, 5], [13, 5]),
      seam(0, 8, [13, 13], [13, 0], 'finish'),
    ];
    expect(faults(sewing(...other))).toBe('');
  });
});

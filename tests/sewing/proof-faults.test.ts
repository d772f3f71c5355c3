import { describe, expect, test } from 'vitest';
import { rational } from '../../src/measure/rational.ts';
import { prove } from '../../src/sewing/proof.ts';
import type { Plan } from '../../src/sewing/proof-table.ts';
import type { Join, Step } from '../../src/sewing/step.ts';
import { cutOf, joinOf, larger, partOf, patchOf, smaller, stepOf, without } from './proof-mutants.ts';
import { at, box, COMMON, cutGoose, drawing, eightAtATime, flippedGoose, fourGeese, halfRectangle, hourglasses, list, patch, seam, shooFly, slanted,
  squareInSquare, steps, unit, whirl } from './proof-plans.ts';

/** The faults of a plan as one text; a plan that holds has none. */
const faults = (plan: Plan): string => prove(plan).faults.join('\n');

describe('cloth', () => {
  test('a square 1/8 too small for its triangles', () => {
    const plan = cutOf(shooFly, 0, (cut) => ({ width: smaller(cut.width), height: smaller(cut.height) }));
    expect(faults(plan)).toBe('Step 1 (unit A), part 1 (line 1) is cut 4 3/4 by 4 3/4, too small for what is sewn from it: it needs 4 7/8 by 4 7/8.');
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

  test('what is cut larger for trimming is accepted when the step says that it is trimmed', () => {
    const generous = { ...[0, 1].reduce((plan, i) => cutOf(plan, i, (cut) => ({ width: larger(cut.width), height: larger(cut.height) })), shooFly), trim: rational(1, 8) };
    expect(faults(generous)).toMatch(/is cut 5 by 5 to be trimmed, but the step does not say that it is/);
    expect(faults(stepOf(generous, 0, () => ({ trimmed: true })))).toBe('');
  });

  test('the wrong number of squares', () => {
    expect(faults(cutOf(shooFly, 3, () => ({ quantity: 2 })))).toBe('Line 4 cuts 2 squares, but 1 is used up by the steps.');
    expect(faults(cutOf(shooFly, 2, () => ({ quantity: 3 })))).toBe('Line 3 cuts 3 squares, but 4 are used up by the steps.');
    expect(faults(cutOf(shooFly, 0, () => ({ quantity: 1, uses: [{ unit: 'A', role: 'pair', quantity: 1 }] }))))
      .toBe('Line 1 gives unit A 1 square, but 4 of it take 2.\nLine 1 cuts 1 square, but 2 are used up by the steps.');
  });

  test('the wrong number of spare triangles', () => {
    expect(faults(cutOf(cutGoose, 0, () => ({ spare: 2 })))).toBe('Line 1 says 2 to spare, but 3 are left over.');
  });

  test('a diagonal cut that would spoil the squares', () => {
    expect(faults(cutOf(shooFly, 0, () => ({ subcut: 'once' })))).toContain('must be cut not diagonally, but the cutting list says once');
  });

  test('a mirrored template', () => {
    const mirrored = [[0, 0], [4, 0], [4, 4], [2, 4]].map(([x, y]) => at([x, y]));
    expect(faults(cutOf(slanted, 1, () => ({ template: mirrored })))).toContain('does not have the outline of its template');
  });

  test('the two halves of one rectangle are of one hand: a left and a right one need two rectangles', () => {
    // A peak 4 × 4: legs of its sides 2 × 4, r = 3 − √5, so 2 + 2/(4r) = 2.65… by 4 + 4/(4r) = 5.30….
    const peak = (rectangles: number): Plan => ({
      ...COMMON,
      step: rational(2),
      drawing: drawing(2, 2, 'sky', ['rock', [[0, 2], [1, 0], [2, 2]]]),
      cuts: list({ cut: '1 rock 4 5/8 x 5 1/4', template: [[0, 2], [1, 0], [2, 2]], for: [['block', 'template', 1]] },
        { cut: `${rectangles} sky 2 3/4 x 5 3/8`, subcut: 'once', for: [['block', 'half', rectangles]], spare: 2 * rectangles - 2,
          diagonals: { falling: 1, rising: rectangles - 1 } }),
      steps: steps({
        makes: 'block', kind: 'peak', count: 1, method: 'triangles', finished: ['4', '4'], unfinished: ['4 1/2', '4 1/2'],
        parts: [patch('rock', 1, 'template', [[0, 2], [1, 0], [2, 2]]), patch('sky', 2, 'half', [[0, 0], [1, 0], [0, 2]]), patch('sky', 2, 'half', [[1, 0], [2, 0], [2, 2]])],
        joins: [seam(0, 1, [1, 0], [0, 2]), seam(3, 2, [1, 0], [2, 2])],
      }),
    });
    expect(faults(peak(2))).toBe('');
    expect(faults(peak(1))).toContain('Line 2 gives the block 1 rectangle, but 1 of it take 2.');
  });
});

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
    expect(faults(partOf(shooFly, 2, 0, () => ({ turn: 1 })))).toContain('Step 3 (the block), part 1 is unit B turned 1 quarter turns, but its outline there is a different one.');
  });

  test('a unit turned so that its outline fits and its fabrics do not', () => {
    expect(faults(partOf(shooFly, 1, 2, () => ({ turn: 2 })))).toMatch(
      /^The white piece \(part 1 of step 1, in part 3 of step 2, in part 1 of step 3\) lies from 8 across, 0 down to 12 across, 4 down, where the drawing shows mustard\./,
    );
  });

  test('a mirror image taken for the unit itself', () => {
    const mirrored = { ...halfRectangle, steps: halfRectangle.steps.map((step): Step => ({
      ...step,
      parts: [patch('sail', 1, 'half', [[0, 0], [3, 4], [0, 4]]), patch('hull', 2, 'half', [[0, 0], [3, 0], [3, 4]])],
      joins: [seam(0, 1, [0, 0], [3, 4])],
    })) };
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
    const recut = partOf(partOf(shooFly, 2, 1, () => ({ from: parts[2].from })), 2, 2, () => ({ from: parts[1].from }));
    expect(faults(recut)).toContain('The yellow piece (part 2 of step 3) lies from 0 across, 4 down to 4 across, 8 down, where the drawing shows mustard.');
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
    expect(faults(plan)).toContain('The mustard piece (part 4 of step 3) reaches beyond the block: it lies from 12 across, 4 down to 16 across, 8 down.');
  });

  test('an inner corner', () => {
    const plan = stepOf(squareInSquare, 0, (step) => ({ joins: [step.joins[0], seam(5, 3, [1, 0], [2, 1]), seam(6, 2, [2, 1], [1, 2]), step.joins[3]] }));
    expect(faults(plan)).toBe('');
    const three = { ...slanted, steps: slanted.steps.map((step) => ({ ...step, joins: step.joins.map((join) => ({ ...join, to: at([2, 4]) })) })) };
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
    expect(faults(joinOf(whirl, 0, 0, () => ({ from: at([0, 5]), to: at([4, 5]) })))).toContain('seam 1 is not the beginning of the edge it is sewn along');
  });

  test('however much of the seam is sewn at first, it holds', () => {
    for (const x of [12, 9, 5, 0]) expect(faults(joinOf(whirl, 0, 0, () => ({ to: at([x, 5]) })))).toBe('');
    for (const x of [12, 9, 5, 1]) expect(faults(joinOf(whirl, 0, 4, () => ({ from: at([x, 5]) })))).toBe('');
  });

  test('the same ring the other way round holds, and so does one that begins at another side', () => {
    const mirror = (plan: Plan): Plan => stepOf({ ...plan, drawing: { ...plan.drawing,
      patches: plan.drawing.patches.map((p) => ({ ...p, points: p.points.map(([x, y]) => [18 - x, y] as const) })) } }, 0, (step) => ({
      parts: step.parts.map((part) => ({ ...part, outline: part.outline.map((p) => ({ ...p, x: 18 - p.x })).toReversed() })),
      joins: step.joins.map((join) => ({ ...join, from: { ...join.from, x: 18 - join.from.x }, to: { ...join.to, x: 18 - join.to.x } })),
    }));
    expect(faults(mirror(whirl))).toBe('');
    const other = [seam(0, 2, [13, 13], [13, 0], 'part-way'), seam(5, 3, [18, 13], [5, 13]), seam(6, 4, [5, 18], [5, 5]), seam(7, 1, [0, 5], [13, 5]),
      seam(0, 8, [13, 13], [13, 0], 'finish')];
    expect(faults(sewing(...other))).toBe('');
  });
});

describe('the drawing', () => {
  test('another fabric', () => {
    expect(faults(patchOf(shooFly, 4, () => ({ fabric: 'plum' })))).toContain(
      'The yellow piece (part 3 of step 3) lies from 4 across, 4 down to 8 across, 8 down, where the drawing shows plum.',
    );
  });

  test('a speck of another fabric inside a piece', () => {
    const specks = { ...slanted.drawing, patches: [...slanted.drawing.patches, { fabric: 'gull', points: [[1, 2], [2, 4], [1, 3]] as const }] };
    expect(faults({ ...slanted, drawing: specks })).toContain('The sand piece (part 1 of step 1, in part 1 of step 2) lies from 0 across, 0 down to 3 across, 4 down, where the drawing shows gull.');
  });

  test('a patch that must stay whole, divided', () => {
    const strip = { ...shooFly, drawing: { ...shooFly.drawing, patches: shooFly.drawing.patches } };
    const whole = { ...strip, drawing: drawing(3, 3, 'mustard', ['mustard', box(0, 1, 3, 1) as [number, number][], 'whole'],
      ...shooFly.drawing.patches.map((p) => [p.fabric, p.points] as const)) };
    expect(faults(whole)).toBe('Patch 1 (mustard) must stay whole, but what shows of it has an inner corner, so it is sewn from 2 pieces.');
    const convex = { ...strip, drawing: { ...shooFly.drawing, patches: [{ fabric: 'mustard', points: [[1, 0], [2, 0], [2, 2], [1, 2]] as const, whole: true }, ...shooFly.drawing.patches] } };
    expect(faults(convex)).toBe('');
    const twoStrips = { ...flippedGoose, drawing: drawing(4, 2, 'sky', ['gull', [[0, 2], [2, 0], [4, 2]]], ['sky', [[0, 0], [4, 0], [4, 2], [2, 0], [0, 2]], 'whole']) };
    expect(faults(twoStrips)).toMatch(/^Patch 2 \(sky\) must stay whole, but what shows of it has an inner corner, so it is sewn from 2 pieces\.$/);
  });

  test('a drawn seam that is not sewn', () => {
    const drawn = { ...shooFly, drawing: { ...shooFly.drawing, seams: [[[1, 0], [1, 3]], [[0, 0], [1, 1]]] as const } };
    expect(faults(drawn)).toMatch(/^The seam drawn from 0 across, 0 down to 4 across, 4 down is not sewn: it runs through part \d of step 1, in part 1 of step 2, in part 1 of step 3\.$/);
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
      makes: `U${i}`, kind: 'joined unit' as const, count: 1, method: null, finished: ['12', '12'] as const, unfinished: ['12 1/2', '12 1/2'] as const, joins: [],
      parts: i === 0 ? [patch('yellow', 4, 'plain', box(0, 0, 1, 1))] : [0, 1].map(() => unit(`U${i - 1}`, 0, box(0, 0, 1, 1))),
    }));
    const block = { ...doubling[1], makes: 'block', parts: [unit('U63', 0, box(0, 0, 1, 1))] };
    expect(faults({ ...shooFly, steps: steps(...doubling, block) })).toContain('more pieces than any block holds');
  });

  test('geese with two different wings come out as pairs of mirror images', () => {
    const wings = { ...fourGeese, blocks: 2 };
    const changed: Plan = {
      ...wings,
      drawing: drawing(4, 2, 'sky', ['gull', [[0, 2], [2, 0], [4, 2]]], ['dusk', [[2, 0], [4, 0], [4, 2]]]),
      cuts: list({ cut: '1 gull 7 1/4', for: [['A', 'large', 1]] }, { cut: '2 sky 3 7/8', for: [['A', 'small', 2]] },
        { cut: '2 dusk 3 7/8', for: [['A', 'small', 2]] }),
      steps: stepOf(partOf(wings, 0, 2, () => ({ from: { cut: '3', role: 'small', fabric: 'dusk' } })), 0, () => ({ count: 2 })).steps
        .map((step): Step => ({ ...step, count: 2 })),
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
      drawing: drawing(4, 2, 'rust', ...left.drawing.patches.map((p) => [p.fabric, p.points] as const),
        ...right.drawing.patches.map((p) => [p.fabric, p.points.map(([x, y]) => [x + 2, y] as const)] as const)),
      cuts: left.cuts.map((cut) => ({ ...cut, uses: [{ unit: 'A', role: 'pair', quantity: 1 }, { unit: 'B', role: 'pair', quantity: 1 }], spare: 1 })),
      steps: [left.steps[0], { ...right.steps[0], number: 2, makes: 'B' }, { ...left.steps[1], number: 3,
        finished: { ...left.steps[1].finished, width: rational(7) }, unfinished: { ...left.steps[1].unfinished, width: rational(15, 2) },
        parts: [unit('A', 0, box(0, 0, 2, 2)), unit('B', 0, box(2, 0, 2, 2))], joins: [seam(0, 1, [2, 0], [2, 2])] }],
    };
    expect(faults(both)).toBe('');
  });
});

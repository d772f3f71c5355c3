import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Choices } from '../../src/block/choices.ts';
import type { Drawing } from '../../src/geometry/patchwork/drawing.ts';
import { waysToSew } from '../../src/geometry/piecing/ways.ts';
import { formatLength } from '../../src/measure/lengths.ts';
import { rational } from '../../src/measure/rational.ts';
import { drawings, EVERYTHING, tiled, tries, whirls } from '../geometry/drawings.ts';
import { complaints, namesMissing, spoiltSentences } from './plain-english.ts';
import { everyWayCut, FILES, patternOf, sewnBy, type Sewn } from './told.ts';

/** All methods a unit can be cut by come up in one of these. */
const CHOICES: readonly Choices[] = [
  {},
  {
    methods: {
      'half-square triangle': 'one-at-a-time',
      'quarter-square triangle': 'triangles',
      'flying geese': 'triangles',
      'corner-triangle unit': 'triangles',
      'square in a square': 'triangles',
      'split quarter-square triangle': 'two-at-a-time',
      peak: 'template',
    },
    blocks: 2,
  },
  { methods: { 'half-square triangle': 'eight-at-a-time', 'flying geese': 'four-at-a-time' }, blocks: 3, trim: rational(1, 8) },
];

describe('the steps of every block of the gallery, the published cases and the sampler', () => {
  it.each(FILES)('%s: say all that is needed, in plain sentences, and make the drawing', (file) => {
    expect(everyWayCut(file, CHOICES).flatMap(complaints)).toEqual([]);
  });
});

describe('the units of a published block come out as large as its pattern says', () => {
  // American Patchwork & Quilting (allpeoplequilt.com): Shoo Fly 2019-04-02, Bear's Paw print/327937, Ohio Star 2017-06-14, Double
  // Nine-Patch 2013-12-12. Sawtooth Star 12: E. Hartman for Sew Mama Sew, 2009. Friendship Star 6: print/328014, squares of 2 7/8.
  it.each([
    ['tests/cases/shoo-fly-12', 'half-square triangle', 4, '4 1/2', '4 1/2'],
    ['tests/cases/bears-paw-14', 'half-square triangle', 16, '2 1/2', '2 1/2'],
    ['tests/cases/bears-paw-14', 'joined unit', 4, '6 1/2', '6 1/2'],
    ['tests/cases/ohio-star-10-1-2', 'quarter-square triangle', 4, '4', '4'],
    ['tests/cases/double-nine-patch-9', 'joined unit', 5, '3 1/2', '3 1/2'],
    ['tests/cases/sawtooth-star-12', 'flying geese', 4, '6 1/2', '3 1/2'],
    ['tests/cases/friendship-star-6', 'half-square triangle', 4, '2 1/2', '2 1/2'],
  ])('%s: %s, %i of %s by %s', (file, kind, count, width, height) => {
    const same = patternOf(file).steps.filter(
      (step) =>
        step.kind === kind &&
        step.count === count &&
        formatLength(step.unfinished.width) === width &&
        formatLength(step.unfinished.height) === height,
    );
    expect(same).toHaveLength(1);
    expect(same[0]!.text).toContain(`It measures ${width} by ${height} in. Make ${count}.`);
  });

  it.each([
    ['tests/cases/shoo-fly-12', '12 1/2'],
    ['tests/cases/ohio-star-10-1-2', '11'],
    ['tests/cases/bears-paw-14', '14 1/2'],
    ['tests/cases/log-cabin-11', '11 1/2'],
    ['tests/cases/whirl-9', '9 1/2'],
  ])('%s: the block measures %s', (file, side) => {
    expect(patternOf(file).steps.at(-1)!.text).toMatch(new RegExp(`The block measures ${side} by ${side} in\\.$`));
  });
});

describe('the order of the steps', () => {
  it('is units from the smallest, then rows, then the block', () => {
    const kinds = patternOf('tests/cases/shoo-fly-12').steps.map(({ makes, kind }) => `${makes}: ${kind}`);
    expect(kinds).toEqual(['A: half-square triangle', 'B: joined unit', 'C: joined unit', 'block: block']);
  });

  it('has one step for a log cabin of twenty logs', () => {
    const { steps, proof } = patternOf('tests/cases/log-cabin-11');
    expect(steps).toHaveLength(1);
    expect(steps[0]!.joins).toHaveLength(20);
    expect(proof).toMatchObject({ holds: true, seams: 20 });
  });
});

describe('the checks of the words', () => {
  const shooFly = (): Sewn => everyWayCut('tests/cases/shoo-fly-12', [{}])[0]!;
  const with1 = (change: Partial<Sewn['steps'][number]>): Sewn => {
    const sewn = shooFly();
    return { ...sewn, steps: sewn.steps.map((step, i) => (i === 1 ? { ...step, ...change } : step)) };
  };

  it('find a double full stop, a double space and a word of the machine', () => {
    for (const how of ['It is 4 in.. Good.', 'Two  spaces.', 'Lay undefined on it.', 'no capital.', 'No stop']) {
      expect(spoiltSentences(with1({ how }))).not.toEqual([]);
    }
    expect(spoiltSentences(shooFly())).toEqual([]);
  });

  it('find a unit that was never made, and a fabric that is not named', () => {
    expect(namesMissing(with1({ how: 'Sew white 4 1/2 in. square to Q.' })).join()).toContain('names Q');
    expect(namesMissing(with1({ how: 'Sew it.' })).join()).toContain('does not name');
    expect(namesMissing(shooFly())).toEqual([]);
  });
});

describe.each([
  ['random drawings', drawings({ ...EVERYTHING, cells: 5, strokes: 8 }), 40],
  ['turned tiles', tiled, 10],
  ['four arms that turn round a centre', whirls, 15],
] as const)('the steps of %s', (_, pictures, runs) => {
  it('say all that is needed, whatever the way and the methods, and make the drawing', () => {
    fc.assert(
      fc.property(pictures, fc.constantFrom(...CHOICES), (drawing: Drawing, choices) => {
        for (const piecing of waysToSew(drawing)) {
          expect(complaints(sewnBy(drawing, rational(1, 2), piecing, choices)), piecing.way).toEqual([]);
        }
      }),
      tries(runs),
    );
  });
});

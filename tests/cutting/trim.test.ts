import { describe, expect, test } from 'vitest';
import type { Method } from '../../src/block/choices.ts';
import { methodsFor } from '../../src/cutting/methods.ts';
import type { UnitKind } from '../../src/geometry/piecing/assembly.ts';
import { compare, rational, type Rational } from '../../src/measure/rational.ts';
import { notesIn } from './notes-in.ts';
import { block, cornered, cutFor, goose, halves, hourglass, lines, peak, plain, splitHourglass, squareInSquare, type Part } from './sewn.ts';

const eighth = rational(1, 8);
const quarter = rational(1, 4);

describe('cut large and trimmed, as published', () => {
  test.each<[string, Part, Method, { trim: Rational; ruler?: Rational }, readonly string[]]>([
    // Open Gate Quilts (unfinished and 1); North Hampshire Quilters, hblk402b; quiltingboard 8425110, 2020.
    ['an hourglass of 3 in. from squares 4 1/2', hourglass(['oat', 'teal', 'oat', 'teal'], 3), 'two-at-a-time', { trim: quarter }, ['oat 1 @ 4 1/2', 'teal 1 @ 4 1/2']],
    // Alamosa Quilter, Quarter square triangle formula, 2014-10-30.
    ['an hourglass of 2 in. from squares 3 1/2', hourglass(['oat', 'teal', 'oat', 'teal'], 2), 'two-at-a-time', { trim: quarter }, ['oat 1 @ 3 1/2', 'teal 1 @ 3 1/2']],
    // piecemealquilts.com, 2011-10-24: 7 1/2 and four 4; its small squares are rounded up less than its large one, as 1/8 does.
    ['four geese of 6 by 3 in., the small squares 4', goose('oat', 'teal', 'teal', 3), 'four-at-a-time', { trim: eighth }, ['oat 1 @ 7 3/8', 'teal 4 @ 4']],
    ['four geese of 6 by 3 in., the large square 7 1/2', goose('oat', 'teal', 'teal', 3), 'four-at-a-time', { trim: quarter }, ['oat 1 @ 7 1/2', 'teal 4 @ 4 1/8']],
    // quiltingboard.com, blog b10533: twice the unfinished size and 1.
    ['eight half-square triangles of 4 in. from squares 10', halves('oat', 'teal', 4), 'eight-at-a-time', { trim: eighth }, ['oat 1 @ 10', 'teal 1 @ 10']],
    // farmandfolk.com, 2025-04-25: centre 2 5/8 as it must be, corners F/2 + 1.
    ['a square in a square of 3 in.: centre 2 5/8, corners 2 1/2', squareInSquare('oat', 'teal', 3), 'triangles', { trim: eighth }, ['oat 1 @ 2 5/8', 'teal 2 @ 2 1/2 once']],
    // mmmquilts.com, 2019-12: (w + 1) by (h + 2), on whole inches.
    ['half-rectangles of 2 by 4 in. from 3 by 6', halves('oat', 'teal', 2, 4), 'triangles', { trim: quarter, ruler: quarter }, ['oat 1 @ 3 × 6 once', 'teal 1 @ 3 × 6 once']],
  ])('%s', (_, part, method, choices, said) => {
    const kind = part.at(0, 0).kind!;
    expect(lines(cutFor(part, { methods: { [kind]: method }, ...choices }))).toEqual(said);
  });
});

/** One unit of each kind that has methods, beside a plain square. */
const UNITS: Readonly<Partial<Record<UnitKind, Part>>> = {
  'half-square triangle': halves('oat', 'teal', 2),
  'quarter-square triangle': hourglass(['oat', 'teal', 'oat', 'teal'], 2),
  'split quarter-square triangle': splitHourglass('oat', 'teal', 'rust', 2),
  'flying geese': goose('oat', 'teal', 'teal', 2),
  'corner-triangle unit': cornered('oat', 2, 2, [[0, 'teal', 1]]),
  'square in a square': squareInSquare('oat', 'teal', 2),
  'half-rectangle triangle': halves('oat', 'teal', 2, 4),
  peak: peak('oat', 'teal', 'teal', 2),
};
const EVERY = Object.entries(UNITS).flatMap(([kind, part]) => methodsFor(kind as UnitKind).map((method) => [kind as UnitKind, method, part] as const));

describe('trim', () => {
  test.each(EVERY)('of a %s made %s enlarges what meets a diagonal seam and nothing else', (kind, method, unit) => {
    const part = block([unit, plain('plum', 2, unit.height)]);
    const [exact, large] = [rational(0), rational(1, 2)].map((trim) => cutFor(part, { methods: { [kind]: method }, trim }));
    const byFabric = (list: typeof exact) => new Map(list!.cuts.map((cut) => [cut.uses[0]!.role, cut] as const));
    for (const [role, cut] of byFabric(large)) {
      const before = byFabric(exact).get(role)!;
      const larger = compare(cut.width, before.width) > 0 && compare(cut.height, before.height) > 0;
      // The square beside it, and the centre of a square in a square, whose edges are seams, are as they must be; so is what has an outline.
      expect([role, larger]).toEqual([role, role !== 'plain' && role !== 'template']);
    }
  });

  test('that does not apply is told: at the centre of a square in a square, and round an outline', () => {
    const part = block([squareInSquare('oat', 'teal', 2), halves('oat', 'teal', 2)]);
    const notes = notesIn(cutFor(part, { methods: { 'square in a square': 'triangles', 'half-square triangle': 'template' }, trim: eighth }));
    expect(notes).toEqual([
      expect.stringMatching(/^The centre of unit [AB] is cut without anything to trim: its edges are seams\./),
      expect.stringMatching(/^Unit [AB] has nothing to trim: pieces cut round an outline are cut exactly\.$/),
    ]);
    expect(cutFor(part, { methods: { 'square in a square': 'triangles', 'half-square triangle': 'template' } }).notes).toEqual([]);
  });
});

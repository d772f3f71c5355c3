import { describe, expect, test } from 'vitest';
import { rational } from '../../src/measure/rational.ts';
import { formatLength } from '../../src/measure/lengths.ts';
import { ceilToStep } from '../../src/measure/surd.ts';
import { cutList, methodsThatFit } from '../../src/cutting/cutting.ts';
import { methodsFor, usualMethod } from '../../src/cutting/methods.ts';
import { notesIn } from './notes-in.ts';
import {
  block,
  column,
  cornered,
  cutFor,
  gathered,
  goose,
  halves,
  hourglass,
  lines,
  mirroredPart,
  peak,
  pieced,
  plain,
  row,
  splitHourglass,
  squareInSquare,
  turnedPart,
  unit,
} from './sewn.ts';

const uses = (list: ReturnType<typeof cutFor>): readonly string[] =>
  list.cuts.flatMap(({ id, uses: of }) => of.map(({ unit: name, role, quantity }) => `${id} ${name} ${role} ${quantity}`));

describe('half-square triangles', () => {
  const four = block([halves('teal', 'oat', 4), halves('teal', 'oat', 4)], [halves('oat', 'teal', 4), halves('teal', 'oat', 4)]);

  test('two at a time: a pair of squares for two', () => {
    expect(lines(cutFor(four))).toEqual(['oat 2 @ 4 7/8', 'teal 2 @ 4 7/8']);
    expect(cutFor(four).cuts.map(({ spare }) => spare)).toEqual([0, 0]);
  });

  test('one at a time: triangles from squares cut once', () => {
    expect(lines(cutFor(four, { methods: { 'half-square triangle': 'one-at-a-time' } }))).toEqual([
      'oat 2 @ 4 7/8 once',
      'teal 2 @ 4 7/8 once',
    ]);
  });

  test('eight at a time: one large pair, four left over', () => {
    const list = cutFor(four, { methods: { 'half-square triangle': 'eight-at-a-time' } });
    expect(lines(list)).toEqual(['oat 1 @ 9 3/4', 'teal 1 @ 9 3/4']);
    expect(list.cuts.map(({ spare }) => spare)).toEqual([4, 4]);
    expect(lines(cutFor(four, { methods: { 'half-square triangle': 'eight-at-a-time' }, blocks: 3 }))).toEqual([
      'oat 2 @ 9 3/4',
      'teal 2 @ 9 3/4',
    ]);
  });

  test('an odd count leaves one over', () => {
    const list = cutFor(row(halves('teal', 'oat', 2), halves('teal', 'oat', 2), halves('teal', 'oat', 2)));
    expect(lines(list)).toEqual(['oat 2 @ 2 7/8', 'teal 2 @ 2 7/8']);
    expect(list.cuts.map(({ spare }) => spare)).toEqual([1, 1]);
  });

  test('the same two fabrics in two different joined units share their squares', () => {
    const other = (fabric: string) => row(halves('teal', 'oat', 2), plain(fabric, 2));
    const list = cutFor(block([other('rust')], [other('plum')]));
    expect(lines(list)).toContain('teal 1 @ 2 7/8');
    expect(lines(list)).toContain('oat 1 @ 2 7/8');
  });

  test('a fabric paired with two others takes squares for each pair', () => {
    const list = cutFor(block([halves('teal', 'oat', 2), halves('teal', 'rust', 2)]));
    expect(lines(list)).toEqual(['oat 1 @ 2 7/8', 'teal 2 @ 2 7/8', 'rust 1 @ 2 7/8']);
    expect(list.cuts.find(({ fabric }) => fabric === 'teal')!.spare).toBe(2);
  });

  test('a triangle of one fabric shares its square with a triangle of another unit', () => {
    const list = cutFor(block([halves('teal', 'oat', 2), halves('teal', 'rust', 2)]), {
      methods: { 'half-square triangle': 'one-at-a-time' },
    });
    expect(lines(list)).toEqual(['oat 1 @ 2 7/8 once', 'teal 1 @ 2 7/8 once', 'rust 1 @ 2 7/8 once']);
    expect(uses(list)).toContain('2 A half 1');
    expect(uses(list)).toContain('2 B half 1');
  });

  test('with a seam through one fabric two squares of it', () => {
    expect(lines(cutFor(block([halves('teal', 'teal', 2), halves('teal', 'teal', 2)])))).toEqual(['teal 2 @ 2 7/8']);
  });

  test('a trim is added before rounding up, on each of eight', () => {
    const trim = rational(1, 8);
    expect(lines(cutFor(four, { trim }))).toEqual(['oat 2 @ 5', 'teal 2 @ 5']);
    expect(lines(cutFor(four, { trim, methods: { 'half-square triangle': 'eight-at-a-time' } }))).toEqual(['oat 1 @ 10', 'teal 1 @ 10']);
    expect(lines(cutFor(plain('oat', 3), { trim }))).toEqual(['oat 1 @ 3 1/2']);
  });

  test('in centimetres sizes are rounded up to the millimetre', () => {
    const list = cutFor(four, { seam: rational(3, 4), ruler: rational(1, 10), step: rational(5, 2) });
    expect(lines(list)).toEqual(['oat 2 @ 12 3/5', 'teal 2 @ 12 3/5']);
  });

  test('the exact size stands beside the rounded one', () => {
    const [{ exact }] = cutFor(four).cuts as [ReturnType<typeof cutFor>['cuts'][number]];
    expect(formatLength(ceilToStep(exact!.width, rational(1, 10_000)))).toBe('4 1067/1250');
  });
});

describe('quarter-square triangles', () => {
  const two = { methods: { 'quarter-square triangle': 'two-at-a-time' } } as const;

  test('two hourglasses of two fabrics come from a square of each', () => {
    const glass = hourglass(['oat', 'teal', 'oat', 'teal'], 3);
    const list = cutFor(block([glass, turnedPart(glass)]), two);
    expect(lines(list)).toEqual(['oat 1 @ 4 1/4', 'teal 1 @ 4 1/4']);
    expect(list.cuts.map(({ spare }) => spare)).toEqual([0, 0]);
  });

  test('a star with two background fabrics takes both kinds of pair', () => {
    const glass = hourglass(['oat', 'teal', 'rust', 'teal'], 3);
    const list = cutFor(block([glass, glass], [glass, glass]), two);
    expect(lines(list)).toEqual(['oat 1 @ 4 1/4', 'teal 2 @ 4 1/4', 'rust 1 @ 4 1/4']);
    expect(list.cuts.map(({ spare }) => spare)).toEqual([0, 0, 0]);
    expect(list.notes).toEqual([]);
  });

  test('of four fabrics, a unit and its mirror image serve each other: four units from one square of each fabric', () => {
    const glass = hourglass(['oat', 'teal', 'rust', 'plum'], 3);
    const list = cutFor(block([glass, mirroredPart(glass)], [turnedPart(glass), turnedPart(mirroredPart(glass))]), two);
    expect(lines(list)).toEqual(['oat 1 @ 4 1/4', 'teal 1 @ 4 1/4', 'rust 1 @ 4 1/4', 'plum 1 @ 4 1/4']);
    expect(list.cuts.map(({ spare }) => spare)).toEqual([0, 0, 0, 0]);
    expect(list.notes).toEqual([]);
    expect(uses(list)).toEqual([
      '1 A pair 1',
      '1 B pair 1',
      '2 A pair 1',
      '2 B pair 1',
      '3 A pair 1',
      '3 B pair 1',
      '4 A pair 1',
      '4 B pair 1',
    ]);
  });

  test('of four fabrics in one hand only, the mirror images are left over, and the list says so', () => {
    const glass = hourglass(['oat', 'teal', 'rust', 'plum'], 3);
    const list = cutFor(block([glass, glass, glass, glass]), two);
    expect(list.cuts.map(({ quantity, spare }) => [quantity, spare])).toEqual([
      [2, 4],
      [2, 4],
      [2, 4],
      [2, 4],
    ]);
    expect(notesIn(list)).toEqual(['Two at a time makes mirror images: 4 of unit A are left over.']);
  });

  test('from triangles: squares cut twice, shared by all units of a fabric', () => {
    const list = cutFor(block([hourglass(['oat', 'teal', 'oat', 'teal'], 3), hourglass(['oat', 'rust', 'oat', 'rust'], 3)]), {
      methods: { 'quarter-square triangle': 'triangles' },
    });
    expect(lines(list)).toEqual(['oat 1 @ 4 1/4 twice', 'teal 1 @ 4 1/4 twice', 'rust 1 @ 4 1/4 twice']);
  });
});

describe('split quarter-square triangles', () => {
  const split = splitHourglass('oat', 'teal', 'rust', 3);

  test('from triangles: one square cut once, two cut twice', () => {
    expect(lines(cutFor(block([split, split])))).toEqual(['oat 1 @ 3 7/8 once', 'teal 1 @ 4 1/4 twice', 'rust 1 @ 4 1/4 twice']);
  });

  test('two at a time: four units, two of each hand, from four squares', () => {
    const list = cutFor(block([split, turnedPart(split)], [mirroredPart(split), turnedPart(mirroredPart(split))]), {
      methods: { 'split quarter-square triangle': 'two-at-a-time' },
    });
    expect(lines(list)).toEqual(['oat 2 @ 3 7/8', 'teal 1 @ 4 1/4', 'rust 1 @ 4 1/4']);
    expect(list.cuts.map(({ spare }) => spare)).toEqual([0, 0, 0]);
  });

  test('two at a time in one hand only leaves as many mirror images', () => {
    const list = cutFor(block([split, split]), { methods: { 'split quarter-square triangle': 'two-at-a-time' } });
    expect(lines(list)).toEqual(['oat 2 @ 3 7/8', 'teal 1 @ 4 1/4', 'rust 1 @ 4 1/4']);
    expect(notesIn(list)).toEqual(['Two at a time makes mirror images: 2 of unit A are left over.']);
  });
});

describe('flying geese', () => {
  const flock = block([goose('oat', 'teal', 'teal', 2), goose('oat', 'teal', 'teal', 2), goose('oat', 'teal', 'teal', 2)]);

  test('stitch-and-flip: a rectangle and two squares each', () => {
    expect(lines(cutFor(flock))).toEqual(['oat 3 @ 2 1/2 × 4 1/2', 'teal 6 @ 2 1/2']);
  });

  test('four at a time: one large and four small squares, one goose left over of four', () => {
    const list = cutFor(flock, { methods: { 'flying geese': 'four-at-a-time' } });
    expect(lines(list)).toEqual(['oat 1 @ 5 1/4', 'teal 4 @ 2 7/8']);
    expect(list.cuts.map(({ spare }) => spare)).toEqual([1, 1]);
    expect(lines(cutFor(flock, { methods: { 'flying geese': 'four-at-a-time' }, blocks: 2 }))).toEqual(['oat 2 @ 5 1/4', 'teal 8 @ 2 7/8']);
  });

  test('from triangles', () => {
    expect(lines(cutFor(flock, { methods: { 'flying geese': 'triangles' } }))).toEqual(['oat 1 @ 5 1/4 twice', 'teal 3 @ 2 7/8 once']);
  });

  test('with corners of two fabrics cannot be made four at a time, which the list says', () => {
    const odd = block([goose('oat', 'teal', 'rust', 2)]);
    const list = cutFor(odd, { methods: { 'flying geese': 'four-at-a-time' } });
    expect(lines(list)).toEqual(['oat 1 @ 2 1/2 × 4 1/2', 'teal 1 @ 2 1/2', 'rust 1 @ 2 1/2']);
    expect(list.methods).toEqual({ A: 'stitch-and-flip' });
    expect(list.notes).toHaveLength(1);
    expect(notesIn(list)[0]).toMatch(/^Unit A \(flying geese\) .* stitch-and-flip\.$/);
    expect(methodsThatFit(pieced(odd).units[0]!, rational(1), list)).toEqual(['stitch-and-flip', 'triangles', 'triangles-from-strips', 'template']);
    expect(methodsThatFit(pieced(flock).units[0]!, rational(1), list)).toContain('four-at-a-time');
  });
});

describe('corners and centres', () => {
  test('a snowball: its square, and a square for each corner', () => {
    const ball = block([
      cornered('oat', 6, 6, [
        [0, 'teal', 2],
        [1, 'teal', 2],
        [2, 'rust', 2],
        [3, 'teal', 2],
      ]),
    ]);
    expect(lines(cutFor(ball))).toEqual(['oat 1 @ 6 1/2', 'teal 3 @ 2 1/2', 'rust 1 @ 2 1/2']);
    expect(lines(cutFor(ball, { methods: { 'corner-triangle unit': 'triangles' } }))).toEqual([
      'oat 1 @ 6 1/2 template',
      'teal 2 @ 2 7/8 once',
      'rust 1 @ 2 7/8 once',
    ]);
  });

  test('a rectangle with one corner, turned or not, is cut alike', () => {
    const part = cornered('oat', 6, 2, [[1, 'teal', 2]]);
    expect(lines(cutFor(block([part])))).toEqual(['oat 1 @ 2 1/2 × 6 1/2', 'teal 1 @ 2 1/2']);
    expect(lines(cutFor(block([turnedPart(part)])))).toEqual(['oat 1 @ 2 1/2 × 6 1/2', 'teal 1 @ 2 1/2']);
  });

  test('a square in a square', () => {
    const part = block([squareInSquare('oat', 'teal', 6)]);
    expect(lines(cutFor(part))).toEqual(['oat 1 @ 6 1/2', 'teal 4 @ 3 1/2']);
    // Lesson 5 (slideblast.com) and the half-square rule: centre F/2 · 1.414 + 1/2, corners F/2 + 7/8.
    expect(lines(cutFor(part, { methods: { 'square in a square': 'triangles' } }))).toEqual(['oat 1 @ 4 3/4', 'teal 2 @ 3 7/8 once']);
  });

  test('trim enlarges what meets a diagonal seam, but not a centre whose own edges are the seams', () => {
    const part = block([squareInSquare('oat', 'teal', 6)]);
    const trim = rational(1, 4);
    expect(lines(cutFor(part, { trim }))).toEqual(['oat 1 @ 6 3/4', 'teal 4 @ 3 3/4']);
    expect(lines(cutFor(part, { trim, methods: { 'square in a square': 'triangles' } }))).toEqual(['oat 1 @ 4 3/4', 'teal 2 @ 4 1/8 once']);
  });
});

describe('half-rectangles and peaks', () => {
  test('two triangles of one hand share a rectangle, those of the other hand another', () => {
    const part = halves('oat', 'teal', 2, 4);
    const one = cutFor(block([part, part]));
    expect(lines(one)).toEqual(['oat 1 @ 2 3/4 × 5 3/8 once', 'teal 1 @ 2 3/4 × 5 3/8 once']);
    expect(one.cuts.map(({ diagonals }) => diagonals)).toEqual([
      { falling: 1, rising: 0 },
      { falling: 1, rising: 0 },
    ]);
    const both = cutFor(block([part, mirroredPart(part)]));
    expect(lines(both)).toEqual(['oat 2 @ 2 3/4 × 5 3/8 once', 'teal 2 @ 2 3/4 × 5 3/8 once']);
    expect(both.cuts.map(({ diagonals, spare }) => [diagonals, spare])).toEqual([
      [{ falling: 1, rising: 1 }, 2],
      [{ falling: 1, rising: 1 }, 2],
    ]);
  });

  test('the hand is told standing on the short side, however the unit lies', () => {
    const lying = turnedPart(halves('oat', 'teal', 2, 4, 'falling'));
    expect(cutFor(block([lying])).cuts[0]!.diagonals).toEqual({ falling: 1, rising: 0 });
    expect(cutFor(block([halves('oat', 'teal', 4, 2, 'falling')])).cuts[0]!.diagonals).toEqual({ falling: 0, rising: 1 });
  });

  test('trim keeps the proportion, as the published + 1 by + 2 does (mmmquilts.com, December 2019)', () => {
    // 0.3455 on the short side makes + 0.6545 the published + 1.
    const list = cutFor(block([halves('oat', 'teal', 2, 4)]), { trim: rational(3, 10), ruler: rational(1, 2) });
    expect(lines(list)).toEqual(['oat 1 @ 3 × 6 once', 'teal 1 @ 3 × 6 once']);
  });

  test('a peak: a template in the middle, and of its sides one of each hand', () => {
    const list = cutFor(block([peak('oat', 'teal', 'teal', 4)]));
    expect(lines(list)).toEqual(['oat 1 @ 4 7/8 template', 'teal 2 @ 2 3/4 × 5 3/8 once']);
    expect(list.cuts[1]!.diagonals).toEqual({ falling: 1, rising: 1 });
    expect(list.cuts[1]!.spare).toBe(2);
    const byTemplate = cutFor(block([peak('oat', 'teal', 'teal', 4)]), { methods: { peak: 'template' } });
    expect(byTemplate.cuts.map(({ shape, quantity }) => [shape, quantity])).toEqual([
      ['template', 1],
      ['template', 1],
      ['template', 1],
    ]);
  });
});

describe('pieces cut by their own shape', () => {
  test('in a free unit: a square on point, triangles with the long side on the block’s edge, and a template', () => {
    const free = unit('free unit', 8, 4, [
      [
        'oat',
        [
          [2, 0],
          [4, 2],
          [2, 4],
          [0, 2],
        ],
      ],
      [
        'teal',
        [
          [2, 0],
          [6, 0],
          [4, 2],
        ],
      ],
      [
        'rust',
        [
          [0, 0],
          [2, 0],
          [0, 2],
        ],
      ],
      [
        'plum',
        [
          [6, 0],
          [8, 0],
          [8, 4],
          [5, 3],
          [4, 2],
        ],
      ],
    ]);
    // 2√2 + 1/2 = 3.328; 4 + 1.2071; 2 + 0.8536; 4 + 1/4 + √2/4 = 4.604 (a square tip on the left), by 4 + 1/4 + 0.347 (71.6° below).
    expect(lines(cutFor(block([free])))).toEqual([
      'oat 1 @ 3 3/8',
      'teal 1 @ 5 1/4 twice',
      'rust 1 @ 2 7/8 once',
      'plum 1 @ 4 5/8 template',
    ]);
  });

  test('turned copies of a template are one line, its mirror image another', () => {
    const kite = unit('free unit', 3, 3, [
      [
        'oat',
        [
          [0, 0],
          [3, 1],
          [1, 3],
        ],
      ],
    ]);
    const bent = unit('free unit', 3, 3, [
      [
        'oat',
        [
          [0, 0],
          [3, 1],
          [2, 3],
        ],
      ],
    ]);
    expect(cutFor(block([kite, mirroredPart(kite), turnedPart(kite)])).cuts).toHaveLength(1);
    expect(cutFor(block([bent, turnedPart(bent), mirroredPart(bent)])).cuts.map(({ quantity }) => quantity)).toEqual([2, 1]);
  });

  test('a unit that is the whole block is cut by its method, for the block', () => {
    const list = cutFor(halves('oat', 'teal', 6));
    expect(lines(list)).toEqual(['oat 1 @ 6 7/8', 'teal 1 @ 6 7/8']);
    expect(uses(list)).toEqual(['1 block pair 1', '2 block pair 1']);
    expect(list.methods).toEqual({ block: 'two-at-a-time' });
  });

  test('units inside a partial-seam ring are cut by their own methods', () => {
    const ring = gathered('partial-seam ring', 6, 6, [
      [halves('oat', 'teal', 2), 2, 2],
      [plain('rust', 4, 2), 0, 0],
      [plain('rust', 2, 4), 4, 0],
      [plain('rust', 4, 2), 2, 4],
      [plain('rust', 2, 4), 0, 2],
    ]);
    const list = cutFor(block([ring]));
    expect(lines(list)).toEqual(['oat 1 @ 2 7/8', 'teal 1 @ 2 7/8', 'rust 4 @ 2 1/2 × 4 1/2']);
    expect(list.methods).toEqual({ A: 'two-at-a-time', B: 'template' });
  });
});

describe('the list', () => {
  const mixed = block(
    [row(halves('oat', 'teal', 2), plain('oat', 2)), plain('teal', 4, 2)],
    [column(plain('oat', 2), plain('teal', 2)), plain('oat', 2, 4), halves('teal', 'oat', 4)],
  );

  test('goes fabric by fabric in the drawing’s order, the largest piece first', () => {
    expect(lines(cutFor(mixed, { fabrics: ['teal', 'oat'] }))).toEqual([
      'teal 1 @ 4 7/8',
      'teal 1 @ 2 1/2 × 4 1/2',
      'teal 1 @ 2 7/8',
      'teal 1 @ 2 1/2',
      'oat 1 @ 4 7/8',
      'oat 1 @ 2 1/2 × 4 1/2',
      'oat 1 @ 2 7/8',
      'oat 2 @ 2 1/2',
    ]);
    expect(cutFor(mixed, { fabrics: ['oat', 'teal'] }).cuts.map(({ id }) => id)).toEqual(['1', '2', '3', '4', '5', '6', '7', '8']);
  });

  test('tells for every piece which line it comes from and as what', () => {
    const list = cutFor(mixed, { fabrics: ['oat', 'teal'] });
    const all = pieced(mixed).pieces;
    expect(list.pieces.map(({ piece }) => piece)).toEqual(all.map(({ id }) => id));
    for (const { piece, cut } of list.pieces) {
      const line = list.cuts.find(({ id }) => id === cut)!;
      expect(line.fabric).toBe(all[piece]!.fabric);
      expect(line.pieces).toContain(piece);
    }
  });

  test('equal cuts for different purposes are one line with its uses', () => {
    // A goose’s corner and a plain square of one fabric: 2 + 1/2.
    const list = cutFor(block([goose('oat', 'teal', 'teal', 2), plain('teal', 2)]));
    expect(lines(list)).toEqual(['oat 1 @ 2 1/2 × 4 1/2', 'teal 3 @ 2 1/2']);
    expect(uses(list)).toEqual(['1 A base 1', '2 A corner 2', '2 block plain 1']);
  });

  test('an impossible method is replaced by the usual one, and the list says so', () => {
    const list = cutFor(mixed, { methods: { 'half-square triangle': 'stitch-and-flip' } });
    expect(list.cuts).toEqual(cutFor(mixed).cuts);
    expect(notesIn(list)[0]).toMatch(/^Unit \w \(half-square triangle\) cannot be cut stitch-and-flip; it is cut two-at-a-time\.$/);
  });

  test('survives JSON, and finds units again in a tree that was copied', () => {
    const piecing = pieced(mixed);
    const rules = {
      step: rational(1),
      seam: rational(1, 4),
      ruler: rational(1, 8),
      trim: rational(0),
      blocks: 2,
      methods: {},
      fabrics: [],
    };
    const list = cutList(piecing, rules);
    expect(JSON.parse(JSON.stringify(list))).toEqual(list);
    expect(cutList(JSON.parse(JSON.stringify(piecing)), rules)).toEqual(list);
  });
});

test('every kind of unit that is cut by a method knows its usual one first', () => {
  expect(usualMethod('half-square triangle')).toBe('two-at-a-time');
  expect(usualMethod('quarter-square triangle')).toBe('two-at-a-time');
  expect(usualMethod('split quarter-square triangle')).toBe('triangles');
  expect(usualMethod('flying geese')).toBe('stitch-and-flip');
  expect(usualMethod('joined unit')).toBe('pieces');
  expect(usualMethod('square')).toBeNull();
  expect(methodsFor('half-square triangle')).toContain('eight-at-a-time');
});

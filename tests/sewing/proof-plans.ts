import type { Cut, Role } from '../../src/cutting/cut.ts';
import { rational } from '../../src/measure/rational.ts';
import type { Plan } from '../../src/sewing/proof-table.ts';
import type { Step, StepPart } from '../../src/sewing/step.ts';
import { eightAtATime, halfRectangle, hourglasses, squareInSquare } from './proof-unit-plans.ts';
import { box, COMMON, drawing, list, patch, seam, steps, unit } from './proof-writing.ts';

/** Small plans written by hand. */

/**
 * Shoo Fly 12 in.: white 2 at 4 7/8; mustard 2 at 4 7/8 and 4 at 4 1/2; yellow 1 at 4 1/2; units 4 1/2, block 12 1/2.
 * Source of the list: All People Quilt, Shoo Fly quilt block, 2019-04-02. White lies outside.
 */
export const shooFly: Plan = {
  ...COMMON,
  step: rational(4),
  drawing: drawing(
    3,
    3,
    'mustard',
    [
      'white',
      [
        [0, 0],
        [1, 0],
        [0, 1],
      ],
    ],
    [
      'white',
      [
        [2, 0],
        [3, 0],
        [3, 1],
      ],
    ],
    [
      'white',
      [
        [3, 2],
        [3, 3],
        [2, 3],
      ],
    ],
    [
      'white',
      [
        [0, 2],
        [1, 3],
        [0, 3],
      ],
    ],
    [
      'yellow',
      [
        [1, 1],
        [2, 1],
        [2, 2],
        [1, 2],
      ],
    ],
  ),
  cuts: list(
    { cut: '2 white 4 7/8', for: [['A', 'pair', 2]] },
    { cut: '2 mustard 4 7/8', for: [['A', 'pair', 2]] },
    {
      cut: '4 mustard 4 1/2',
      for: [
        ['block', 'plain', 2],
        ['B', 'plain', 2],
      ],
    },
    { cut: '1 yellow 4 1/2', for: [['block', 'plain', 1]] },
  ),
  steps: steps(
    {
      makes: 'A',
      kind: 'half-square triangle',
      count: 4,
      method: 'two-at-a-time',
      finished: ['4', '4'],
      unfinished: ['4 1/2', '4 1/2'],
      parts: [
        patch('white', 1, 'pair', [
          [0, 0],
          [1, 0],
          [0, 1],
        ]),
        patch('mustard', 2, 'pair', [
          [1, 0],
          [1, 1],
          [0, 1],
        ]),
      ],
      joins: [seam(0, 1, [1, 0], [0, 1])],
    },
    {
      makes: 'B',
      kind: 'joined unit',
      count: 2,
      method: null,
      finished: ['12', '4'],
      unfinished: ['12 1/2', '4 1/2'],
      parts: [unit('A', 0, box(0, 0, 1, 1)), patch('mustard', 3, 'plain', box(1, 0, 1, 1)), unit('A', 1, box(2, 0, 1, 1))],
      joins: [seam(0, 1, [1, 0], [1, 1]), seam(3, 2, [2, 0], [2, 1])],
    },
    {
      makes: 'block',
      kind: 'block',
      count: 1,
      method: null,
      finished: ['12', '12'],
      unfinished: ['12 1/2', '12 1/2'],
      parts: [
        unit('B', 0, box(0, 0, 3, 1)),
        patch('mustard', 3, 'plain', box(0, 1, 1, 1)),
        patch('yellow', 4, 'plain', box(1, 1, 1, 1)),
        patch('mustard', 3, 'plain', box(2, 1, 1, 1)),
        unit('B', 2, box(0, 2, 3, 1)),
      ],
      joins: [seam(1, 2, [1, 1], [1, 2]), seam(5, 3, [2, 1], [2, 2]), seam(0, 6, [0, 1], [3, 1]), seam(7, 4, [0, 2], [3, 2])],
    },
  ),
};

const gooseDrawing = drawing(4, 2, 'sky', [
  'gull',
  [
    [0, 2],
    [2, 0],
    [4, 2],
  ],
]);
const goosePatches = (roles: readonly [string, number, Role][]): StepPart[] => [
  patch(...roles[0], [
    [2, 0],
    [4, 2],
    [0, 2],
  ]),
  patch(...roles[1], [
    [0, 0],
    [2, 0],
    [0, 2],
  ]),
  patch(...roles[2], [
    [2, 0],
    [4, 0],
    [4, 2],
  ]),
];
const gooseSeams = [seam(0, 1, [0, 2], [2, 0]), seam(3, 2, [2, 0], [4, 2])];
const goose = (method: Step['method'], count: number, cuts: Cut[], roles: readonly [string, number, Role][]): Plan => ({
  ...COMMON,
  blocks: count,
  step: rational(3, 2),
  drawing: gooseDrawing,
  cuts,
  steps: steps(
    {
      makes: 'A',
      kind: 'flying geese',
      count,
      method,
      finished: ['6', '3'],
      unfinished: ['6 1/2', '3 1/2'],
      parts: goosePatches(roles),
      joins: gooseSeams,
    },
    {
      makes: 'block',
      kind: 'block',
      count,
      method: null,
      finished: ['6', '3'],
      unfinished: ['6 1/2', '3 1/2'],
      parts: [unit('A', 0, box(0, 0, 4, 2))],
      joins: [],
    },
  ),
});

/** A goose 6 × 3 from 6 1/2 × 3 1/2 and two squares 3 1/2: Elizabeth Hartman, Sawtooth Star block, 2009. */
export const flippedGoose = goose(
  'stitch-and-flip',
  1,
  list({ cut: '1 gull 3 1/2 x 6 1/2', for: [['A', 'base', 1]] }, { cut: '2 sky 3 1/2', for: [['A', 'corner', 2]] }),
  [
    ['gull', 1, 'base'],
    ['sky', 2, 'corner'],
    ['sky', 2, 'corner'],
  ],
);

/** Four geese 6 × 3 from one square 7 1/4 and four 3 7/8: Beverly's Quilting Page, fast flying geese table. */
export const fourGeese = goose(
  'four-at-a-time',
  4,
  list({ cut: '1 gull 7 1/4', for: [['A', 'large', 1]] }, { cut: '4 sky 3 7/8', for: [['A', 'small', 4]] }),
  [
    ['gull', 1, 'large'],
    ['sky', 2, 'small'],
    ['sky', 2, 'small'],
  ],
);

/** The same goose from separate triangles: square w + 1 1/4 cut twice, square h + 7/8 cut once (The Sewing Place, topic 1499). */
export const cutGoose = goose(
  'triangles',
  1,
  list(
    { cut: '1 gull 7 1/4', subcut: 'twice', for: [['A', 'quarter', 1]], spare: 3 },
    { cut: '1 sky 3 7/8', subcut: 'once', for: [['A', 'half', 1]] },
  ),
  [
    ['gull', 1, 'quarter'],
    ['sky', 2, 'half'],
    ['sky', 2, 'half'],
  ],
);

/**
 * The same goose for three blocks from strips as high as a plain rectangle beside it, 3 + 1/2 (Lou Quilts, Half square triangles with a
 * triangle ruler; atbquilting, 2011-08-16: strips 1/2 wider than the finished size). What is measured along them is the side of the
 * squares above. Each further goose takes 7 1/4 − 3 1/2 of its strip; of the wings two lie in 2 · 3 7/8 − 3 1/2, and the seventh, which
 * is spare, takes 3 7/8.
 */
export const stripGoose = goose(
  'triangles-from-strips',
  3,
  list(
    { cut: '1 gull 3 1/2 x 14 3/4', subcut: 'head to tail', nested: ['quarter', 3, '7 1/4'], for: [['A', 'strip-quarter', 1]] },
    { cut: '1 sky 3 1/2 x 16 5/8', subcut: 'head to tail', nested: ['half', 7, '3 7/8'], for: [['A', 'strip-half', 1]], spare: 1 },
  ),
  [
    ['gull', 1, 'strip-quarter'],
    ['sky', 2, 'strip-half'],
    ['sky', 2, 'strip-half'],
  ],
);

/** Whirl 9 in. with a partial seam: centre 4 1/2, four 3 × 7. Source: New England Fiber Arts, node 253. */
export const whirl: Plan = {
  ...COMMON,
  step: rational(1, 2),
  drawing: drawing(
    18,
    18,
    'oat',
    [
      'rust',
      [
        [0, 0],
        [13, 0],
        [13, 5],
        [0, 5],
      ],
      'whole',
    ],
    [
      'teal',
      [
        [13, 0],
        [18, 0],
        [18, 13],
        [13, 13],
      ],
      'whole',
    ],
    [
      'plum',
      [
        [5, 13],
        [18, 13],
        [18, 18],
        [5, 18],
      ],
      'whole',
    ],
    [
      'moss',
      [
        [0, 5],
        [5, 5],
        [5, 18],
        [0, 18],
      ],
      'whole',
    ],
  ),
  cuts: list(
    { cut: '1 oat 4 1/2', for: [['block', 'plain', 1]] },
    { cut: '1 rust 3 x 7', for: [['block', 'plain', 1]] },
    { cut: '1 teal 3 x 7', for: [['block', 'plain', 1]] },
    { cut: '1 plum 3 x 7', for: [['block', 'plain', 1]] },
    { cut: '1 moss 3 x 7', for: [['block', 'plain', 1]] },
  ),
  steps: steps({
    makes: 'block',
    kind: 'partial-seam ring',
    count: 1,
    method: null,
    finished: ['9', '9'],
    unfinished: ['9 1/2', '9 1/2'],
    parts: [
      patch('oat', 1, 'plain', box(5, 5, 8, 8)),
      patch('rust', 2, 'plain', box(0, 0, 13, 5)),
      patch('teal', 3, 'plain', box(13, 0, 5, 13)),
      patch('plum', 4, 'plain', box(5, 13, 13, 5)),
      patch('moss', 5, 'plain', box(0, 5, 5, 13)),
    ],
    joins: [
      seam(0, 1, [13, 5], [0, 5], 'part-way'),
      seam(5, 2, [13, 0], [13, 13]),
      seam(6, 3, [18, 13], [5, 13]),
      seam(7, 4, [5, 18], [5, 5]),
      seam(0, 8, [13, 5], [0, 5], 'finish'),
    ],
  }),
};

/** One slanted seam through a block of 4 in., cut round templates. */
export const slanted: Plan = {
  ...COMMON,
  step: rational(1),
  drawing: drawing(4, 4, 'sand', [
    'wave',
    [
      [1, 0],
      [4, 0],
      [4, 4],
      [3, 4],
    ],
  ]),
  cuts: list(
    {
      cut: '1 sand 3 1/2 x 4 1/2',
      template: [
        [0, 0],
        [1, 0],
        [3, 4],
        [0, 4],
      ],
      for: [['A', 'template', 1]],
    },
    {
      cut: '1 wave 3 1/2 x 4 1/2',
      template: [
        [0, 0],
        [3, 0],
        [3, 4],
        [2, 4],
      ],
      for: [['A', 'template', 1]],
    },
  ),
  steps: steps(
    {
      makes: 'A',
      kind: 'free unit',
      count: 1,
      method: 'template',
      finished: ['4', '4'],
      unfinished: ['4 1/2', '4 1/2'],
      parts: [
        patch('sand', 1, 'template', [
          [0, 0],
          [1, 0],
          [3, 4],
          [0, 4],
        ]),
        patch('wave', 2, 'template', [
          [1, 0],
          [4, 0],
          [4, 4],
          [3, 4],
        ]),
      ],
      joins: [seam(0, 1, [1, 0], [3, 4])],
    },
    {
      makes: 'block',
      kind: 'block',
      count: 1,
      method: null,
      finished: ['4', '4'],
      unfinished: ['4 1/2', '4 1/2'],
      parts: [unit('A', 0, box(0, 0, 4, 4))],
      joins: [],
    },
  ),
};

export const ALL: Readonly<Record<string, Plan>> = {
  shooFly,
  flippedGoose,
  fourGeese,
  cutGoose,
  stripGoose,
  whirl,
  slanted,
  squareInSquare,
  halfRectangle,
  eightAtATime,
  hourglass: hourglasses(['rust', 'oat', 'rust', 'oat'], 4, { rust: 2, oat: 2 }),
};

import type { Lattice } from '../../src/geometry/patchwork/drawing.ts';
import { rational } from '../../src/measure/rational.ts';
import type { Plan } from '../../src/sewing/proof-table.ts';
import { box, COMMON, drawing, list, patch, seam, steps, unit } from './proof-writing.ts';
import type { Corner, Line } from './proof-writing.ts';

/** Small plans written by hand, each of one kind of unit. */

/**
 * Square in a square 4 in. from cut pieces: centre 3 3/8, two squares 2 7/8 cut once.
 * Source of the sizes: F/√2 + 1/2 and F/2 + 7/8, "Lesson 5", slideblast.com; worked by hydeeannsews.blogspot.com 2016-02 (3 3/8).
 */
export const squareInSquare: Plan = {
  ...COMMON,
  step: rational(2),
  drawing: drawing(2, 2, 'foam', [
    'kelp',
    [
      [1, 0],
      [2, 1],
      [1, 2],
      [0, 1],
    ],
  ]),
  cuts: list({ cut: '1 kelp 3 3/8', for: [['block', 'plain', 1]] }, { cut: '2 foam 2 7/8', subcut: 'once', for: [['block', 'half', 2]] }),
  steps: steps({
    makes: 'block',
    kind: 'square in a square',
    count: 1,
    method: 'triangles',
    finished: ['4', '4'],
    unfinished: ['4 1/2', '4 1/2'],
    parts: [
      patch('kelp', 1, 'plain', [
        [1, 0],
        [2, 1],
        [1, 2],
        [0, 1],
      ]),
      patch('foam', 2, 'half', [
        [0, 0],
        [1, 0],
        [0, 1],
      ]),
      patch('foam', 2, 'half', [
        [2, 1],
        [2, 2],
        [1, 2],
      ]),
      patch('foam', 2, 'half', [
        [1, 0],
        [2, 0],
        [2, 1],
      ]),
      patch('foam', 2, 'half', [
        [0, 1],
        [1, 2],
        [0, 2],
      ]),
    ],
    joins: [seam(0, 1, [1, 0], [0, 1]), seam(5, 2, [2, 1], [1, 2]), seam(6, 3, [1, 0], [2, 1]), seam(7, 4, [0, 1], [1, 2])],
  }),
};

/** Half-rectangle triangle 3 × 4: each rectangle exactly 3 3/4 × 5 (r = (3 + 4 − 5)/2 = 1, scale 1 + 1/4). */
export const halfRectangle: Plan = {
  ...COMMON,
  step: rational(1),
  drawing: drawing(3, 4, 'sail', [
    'hull',
    [
      [3, 0],
      [3, 4],
      [0, 4],
    ],
  ]),
  cuts: list(
    { cut: '1 sail 3 3/4 x 5', subcut: 'once', for: [['block', 'half', 1]], spare: 1, diagonals: { falling: 0, rising: 1 } },
    { cut: '1 hull 3 3/4 x 5', subcut: 'once', for: [['block', 'half', 1]], spare: 1, diagonals: { falling: 0, rising: 1 } },
  ),
  steps: steps({
    makes: 'block',
    kind: 'half-rectangle triangle',
    count: 1,
    method: 'triangles',
    finished: ['3', '4'],
    unfinished: ['3 1/2', '4 1/2'],
    parts: [
      patch('sail', 1, 'half', [
        [0, 0],
        [3, 0],
        [0, 4],
      ]),
      patch('hull', 2, 'half', [
        [3, 0],
        [3, 4],
        [0, 4],
      ]),
    ],
    joins: [seam(0, 1, [3, 0], [0, 4])],
  }),
};

/** Eight half-square triangles of 3 in. from two squares 7 3/4 (Scrapish, half-square triangles 8 at a time), two to a block. */
export const eightAtATime: Plan = {
  ...COMMON,
  blocks: 4,
  step: rational(3),
  drawing: drawing(
    2,
    1,
    'oat',
    [
      'teal',
      [
        [0, 0],
        [1, 0],
        [0, 1],
      ],
    ],
    [
      'teal',
      [
        [2, 0],
        [2, 1],
        [1, 1],
      ],
    ],
  ),
  cuts: list({ cut: '1 teal 7 3/4', for: [['A', 'eight', 1]] }, { cut: '1 oat 7 3/4', for: [['A', 'eight', 1]] }),
  steps: steps(
    {
      makes: 'A',
      kind: 'half-square triangle',
      count: 8,
      method: 'eight-at-a-time',
      finished: ['3', '3'],
      unfinished: ['3 1/2', '3 1/2'],
      parts: [
        patch('teal', 1, 'eight', [
          [0, 0],
          [1, 0],
          [0, 1],
        ]),
        patch('oat', 2, 'eight', [
          [1, 0],
          [1, 1],
          [0, 1],
        ]),
      ],
      joins: [seam(0, 1, [1, 0], [0, 1])],
    },
    {
      makes: 'block',
      kind: 'block',
      count: 4,
      method: null,
      finished: ['6', '3'],
      unfinished: ['6 1/2', '3 1/2'],
      parts: [unit('A', 0, box(0, 0, 1, 1)), unit('A', 2, box(1, 0, 1, 1))],
      joins: [seam(0, 1, [1, 0], [1, 1])],
    },
  ),
};

const quarters: readonly Corner[][] = [
  [
    [0, 0],
    [2, 0],
    [1, 1],
  ],
  [
    [2, 0],
    [2, 2],
    [1, 1],
  ],
  [
    [2, 2],
    [0, 2],
    [1, 1],
  ],
  [
    [0, 2],
    [0, 0],
    [1, 1],
  ],
];
const quarterSeams = [seam(0, 1, [2, 0], [1, 1]), seam(2, 3, [1, 1], [0, 2]), seam(4, 5, [0, 0], [2, 2])];
/** Blocks of one hourglass 3 1/2 in. from squares 4 3/4 (All People Quilt, Ohio Star, 2017-06-14), in four fabrics as named. */
export const hourglasses = (
  fabrics: readonly [string, string, string, string],
  blocks: number,
  squares: Readonly<Record<string, number>>,
  spare = 0,
): Plan => {
  const names = Object.keys(squares);
  const parts = fabrics.map((fabric, i) => patch(fabric, names.indexOf(fabric) + 1, 'pair', quarters[i]));
  return {
    ...COMMON,
    blocks,
    step: rational(7, 4),
    drawing: drawing(2, 2, fabrics[0], ...fabrics.map((fabric, i): readonly [string, readonly Lattice[]] => [fabric, quarters[i]])),
    cuts: list(
      ...names.map((name): Line => ({
        cut: `${squares[name]} ${name} 4 3/4`,
        for: [['A', 'pair', squares[name]]],
        spare,
      })),
    ),
    steps: steps(
      {
        makes: 'A',
        kind: 'quarter-square triangle',
        count: blocks,
        method: 'two-at-a-time',
        finished: ['3 1/2', '3 1/2'],
        unfinished: ['4', '4'],
        parts,
        joins: quarterSeams,
      },
      {
        makes: 'block',
        kind: 'block',
        count: blocks,
        method: null,
        finished: ['3 1/2', '3 1/2'],
        unfinished: ['4', '4'],
        parts: [unit('A', 0, box(0, 0, 2, 2))],
        joins: [],
      },
    ),
  };
};

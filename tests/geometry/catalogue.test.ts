import { describe, expect, it } from 'vitest';
import type { Drawing, Lattice } from '../../src/geometry/patchwork/drawing.ts';
import { recognise, type Rect, type Recognised } from '../../src/geometry/piecing/catalogue.ts';
import { compareAlong, lineKey, lineThrough, type Point } from '../../src/geometry/point.ts';
import { waysToSew } from '../../src/geometry/piecing/ways.ts';
import { nameOf, exactly } from './exact.ts';
import { seenIn, VIEWS, type View } from './same-picture.ts';

/*
 * The trade's units and what only looks like them. What a unit is called, and how its seams run: common practice.
 * Each is drawn in a box of the given size, in steps from its top-left corner, and tried in all turns and mirrors,
 * at the corner of a block and inside one.
 */

interface Drawn {
  readonly what: string;
  /** Width and height. */
  readonly size: readonly [number, number];
  /** What is drawn inside: "x,y – x,y; …". */
  readonly seams: string;
}

const UNITS: readonly (Drawn & { readonly kind: string; readonly corners?: number })[] = [
  { kind: 'half-square triangle', what: 'a square cut by a diagonal', size: [4, 4], seams: '0,0 – 4,4' },
  { kind: 'half-rectangle triangle', what: 'a rectangle cut by a diagonal', size: [4, 8], seams: '0,0 – 4,8' },
  { kind: 'half-rectangle triangle', what: 'a rectangle hardly longer than wide, cut by a diagonal', size: [7, 8], seams: '0,0 – 7,8' },
  { kind: 'quarter-square triangle', what: 'both diagonals of a square', size: [4, 4], seams: '0,0 – 4,4; 4,0 – 0,4' },
  { kind: 'split quarter-square triangle', what: 'a diagonal and half of the other', size: [4, 4], seams: '0,0 – 4,4; 2,2 – 4,0' },
  {
    kind: 'split quarter-square triangle', what: 'the same where the middle is off the lattice points', size: [3, 3],
    seams: '0,0 – 3,3; 1.5,1.5 – 3,0',
  },
  { kind: 'flying geese', what: 'a triangle twice as wide as high between two small ones', size: [8, 4], seams: '0,4 – 4,0; 4,0 – 8,4' },
  { kind: 'flying geese', what: 'the smallest of its kind', size: [2, 1], seams: '0,1 – 1,0; 1,0 – 2,1' },
  {
    kind: 'square in a square', what: 'a square with three quarters in the corners, one step', size: [2, 2],
    seams: '0,1 – 1,0; 1,0 – 2,1; 2,1 – 1,2; 1,2 – 0,1',
  },
  { kind: 'square in a square', what: 'a square on point', size: [8, 8], seams: '0,4 – 4,0; 4,0 – 8,4; 8,4 – 4,8; 4,8 – 0,4' },
  {
    kind: 'square in a square', what: 'a square on point whose corners are off the lattice points', size: [3, 3],
    seams: '0,1.5 – 1.5,0; 1.5,0 – 3,1.5; 3,1.5 – 1.5,3; 1.5,3 – 0,1.5',
  },
  { kind: 'peak', what: 'a triangle as wide as high', size: [8, 8], seams: '0,8 – 4,0; 4,0 – 8,8' },
  { kind: 'peak', what: 'a triangle in a square, its apex off the lattice points', size: [5, 5], seams: '0,5 – 2.5,0; 2.5,0 – 5,5' },
  { kind: 'peak', what: 'a flat triangle in a rectangle', size: [12, 4], seams: '0,4 – 6,0; 6,0 – 12,4' },
  { kind: 'corner-triangle unit', what: 'a square with one corner', size: [4, 4], seams: '0,2 – 2,0', corners: 1 },
  { kind: 'corner-triangle unit', what: 'a rectangle with one corner as high as it is', size: [8, 4], seams: '0,4 – 4,0', corners: 1 },
  {
    kind: 'corner-triangle unit', what: 'a rectangle with two corners of different size', size: [8, 4],
    seams: '0,1 – 1,0; 5,0 – 8,3', corners: 2,
  },
  { kind: 'corner-triangle unit', what: 'a square with two corners across', size: [4, 4], seams: '0,2 – 2,0; 4,2 – 2,4', corners: 2 },
  { kind: 'corner-triangle unit', what: 'a square with two corners that meet', size: [4, 4], seams: '0,2 – 2,0; 2,0 – 4,2', corners: 2 },
  {
    kind: 'corner-triangle unit', what: 'a rectangle with parallel corners as high as it is', size: [8, 4],
    seams: '0,4 – 4,0; 4,4 – 8,0', corners: 2,
  },
  { kind: 'corner-triangle unit', what: 'a square with three corners', size: [6, 6], seams: '0,2 – 2,0; 4,0 – 6,2; 0,4 – 2,6', corners: 3 },
  { kind: 'corner-triangle unit', what: 'a snowball', size: [6, 6], seams: '0,2 – 2,0; 4,0 – 6,2; 0,4 – 2,6; 4,6 – 6,4', corners: 4 },
  { kind: 'corner-triangle unit', what: 'a long snowball', size: [9, 6], seams: '0,2 – 2,0; 7,0 – 9,2; 0,4 – 2,6; 7,6 – 9,4', corners: 4 },
];

const NEAR_MISSES: readonly Drawn[] = [
  { what: 'nothing slanted at all', size: [4, 4], seams: '' },
  { what: 'half a diagonal', size: [4, 4], seams: '0,0 – 2,2' },
  { what: 'a diagonal that stops a step short', size: [4, 4], seams: '0,0 – 3,3' },
  { what: 'a diagonal of a rectangle that misses the corner by a step', size: [4, 8], seams: '0,0 – 4,7' },
  { what: 'two crossing diagonals of a rectangle', size: [4, 8], seams: '0,0 – 4,8; 4,0 – 0,8' },
  { what: 'a diagonal and the half of the other in two lengths', size: [4, 4], seams: '0,0 – 4,4; 3,1 – 4,0' },
  { what: 'a diagonal and a seam from a corner past the middle', size: [4, 4], seams: '0,0 – 4,4; 1,3 – 4,0' },
  { what: 'a split rectangle', size: [4, 8], seams: '0,0 – 4,8; 2,4 – 4,0' },
  { what: 'an apex a step off the middle', size: [8, 4], seams: '0,4 – 3,0; 3,0 – 8,4' },
  { what: 'a peak whose one foot is a step inside', size: [8, 8], seams: '0,8 – 4,0; 4,0 – 7,8' },
  { what: 'a peak whose apex stays below the edge', size: [8, 8], seams: '0,8 – 4,1; 4,1 – 8,8' },
  { what: 'half of a peak', size: [8, 8], seams: '0,8 – 4,0' },
  { what: 'a square in a square with one corner off the middle', size: [8, 8], seams: '0,4 – 5,0; 5,0 – 8,4; 8,4 – 4,8; 4,8 – 0,4' },
  { what: 'a slanted frame in a rectangle', size: [8, 4], seams: '0,2 – 4,0; 4,0 – 8,2; 8,2 – 4,4; 4,4 – 0,2' },
  { what: 'a square twisted inside a square', size: [8, 8], seams: '0,5 – 3,0; 3,0 – 8,3; 8,3 – 5,8; 5,8 – 0,5' },
  { what: 'a corner with unequal legs', size: [4, 4], seams: '0,2 – 1,0' },
  { what: 'two corners, one of them with unequal legs', size: [8, 8], seams: '0,2 – 2,0; 6,0 – 8,3' },
  { what: 'two corners that cross', size: [8, 8], seams: '0,5 – 5,0; 3,0 – 8,5' },
  { what: 'two corners that cross at the end of a strip', size: [4, 8], seams: '0,4 – 4,0; 0,0 – 4,4' },
  { what: 'a corner cut off twice', size: [8, 8], seams: '0,2 – 2,0; 0,4 – 4,0' },
  { what: 'a slanted seam that touches no edge', size: [8, 8], seams: '2,4 – 4,2' },
  { what: 'a slanted seam between opposite edges', size: [4, 8], seams: '0,2 – 4,6' },
  { what: 'a corner that begins inside the edge', size: [8, 8], seams: '1,2 – 3,0' },
  { what: 'a corner and a seam from its middle', size: [8, 8], seams: '0,4 – 4,0; 2,2 – 0,0' },
  { what: 'a diagonal and a small corner off one half', size: [4, 4], seams: '0,0 – 4,4; 3,0 – 4,1' },
  { what: 'three seams to one middle', size: [4, 4], seams: '0,0 – 2,2; 4,0 – 2,2; 0,4 – 2,2' },
];

const point = ([x, y]: Lattice): Point => (Number.isInteger(x) && Number.isInteger(y) ? { x, y, w: 1 } : { x: 2 * x, y: 2 * y, w: 2 });

/** @returns the ends of each stretch */
const stretchesIn = (seams: string): readonly (readonly [Lattice, Lattice])[] =>
  seams
    .split('; ')
    .filter(Boolean)
    .map((seam) => seam.split(' – ').map((end) => end.split(',').map(Number)) as unknown as readonly [Lattice, Lattice]);

/** What is drawn, in one of the eight views, moved to a corner of a block. */
function place(
  { size: [w, h], seams }: Drawn,
  { swaps, take }: View,
  [dx, dy]: Lattice,
): { rect: Rect; inside: { from: Point; to: Point }[] } {
  const at = (p: Lattice): Point => {
    const [x, y] = take(p, w, h);
    return point([x + dx, y + dy]);
  };
  const [across, down] = swaps ? [h, w] : [w, h];
  return {
    rect: { x0: dx, y0: dy, x1: dx + across, y1: dy + down },
    inside: stretchesIn(seams).map(([p, r]) => {
      const [from, to] = [at(p), at(r)];
      return compareAlong(from, to) < 0 ? { from, to } : { from: to, to: from };
    }),
  };
}

/** @returns what each view is recognised as, with the stretches in both orders */
function recognisedIn(
  drawn: Drawn,
): readonly { readonly view: string; readonly found: Recognised | null; readonly inside: readonly { from: Point; to: Point }[] }[] {
  return VIEWS.flatMap((view) =>
    ([[0, 0], [6, 10]] as const).flatMap((corner) => {
      const { rect, inside } = place(drawn, view, corner);
      return [inside, inside.toReversed()].map((given) => ({ view: view.name, found: recognise(rect, given), inside: given }));
    }),
  );
}

describe('a unit of the trade is known in all its turns and mirrors', () => {
  it.each(UNITS.map((unit) => [unit.what, unit.kind, unit] as const))('%s: %s', (_, kind, unit) => {
    for (const { view, found, inside } of recognisedIn(unit)) {
      expect([view, found?.kind, found?.corners]).toEqual([view, kind, unit.corners ?? 0]);
      const drawn = new Set(inside.map(({ from, to }) => lineKey(lineThrough(from, to))));
      expect(new Set(found!.lines.map(lineKey))).toEqual(drawn);
      expect(found!.lines).toHaveLength(drawn.size);
    }
  });
});

describe('what only looks like a unit is none', () => {
  it.each(NEAR_MISSES.map((miss) => [miss.what, miss] as const))('%s', (_, miss) => {
    for (const { view, found } of recognisedIn(miss)) expect([view, found]).toEqual([view, null]);
  });
});

describe('a block of one unit', () => {
  /** A fabric for each side of the seams: painted by the corners that lie behind a seam. */
  const PAINTED: readonly {
    readonly kind: string;
    readonly size: readonly [number, number];
    readonly patches: readonly (readonly Lattice[])[];
  }[] = [
    {
      kind: 'half-square triangle',
      size: [8, 8],
      patches: [[[0, 0], [8, 0], [0, 8]]],
    },
    {
      kind: 'quarter-square triangle',
      size: [8, 8],
      patches: [[[0, 0], [8, 0], [4, 4]], [[0, 8], [8, 8], [4, 4]]],
    },
    {
      kind: 'split quarter-square triangle',
      size: [8, 8],
      patches: [[[0, 0], [8, 0], [0, 8]], [[8, 0], [8, 8], [4, 4]]],
    },
    {
      kind: 'flying geese',
      size: [16, 8],
      patches: [[[0, 8], [8, 0], [16, 8]]],
    },
    {
      kind: 'peak',
      size: [8, 8],
      patches: [[[0, 8], [4, 0], [8, 8]]],
    },
    {
      kind: 'half-rectangle triangle',
      size: [8, 16],
      patches: [[[0, 0], [8, 0], [0, 16]]],
    },
    {
      kind: 'square in a square',
      size: [8, 8],
      patches: [[[4, 0], [8, 4], [4, 8], [0, 4]]],
    },
    {
      kind: 'corner-triangle unit',
      size: [12, 12],
      patches: [[[0, 0], [4, 0], [0, 4]]],
    },
  ];

  it.each(PAINTED.map((unit) => [unit.kind, unit] as const))(
    'is sewn as a %s beside a plain square of its height',
    (kind, { size: [w, h], patches }) => {
      const colours = ['fog', 'rope'];
      const drawing: Drawing = {
        width: w + h,
        height: h,
        columns: [0, w, w + h],
        rows: [0, h],
        ground: 'oat',
        patches: [
          ...patches.map((points, i) => ({ fabric: colours[i]!, points })),
          {
            fabric: 'slate',
            points: [[w, 0], [w + h, 0], [w + h, h], [w, h]] as const,
          },
        ],
        seams: [],
      };
      for (const view of VIEWS) {
        const [standard] = waysToSew(seenIn(view, drawing));
        expect([view.name, ...standard!.units.map((unit) => `${unit.places.length} ${unit.kind}`)]).toEqual([view.name, `1 ${kind}`]);
        const outline = standard!.units[0]!.places[0]!.assembly.outline.map(exactly).map(nameOf);
        expect(outline).toHaveLength(4);
      }
    },
  );
});

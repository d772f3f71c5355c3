import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { toDrawing } from '../../src/block/drawing.ts';
import { parseBlock } from '../../src/files/block-file.ts';
import type { Drawing, Lattice } from '../../src/geometry/patchwork/drawing.ts';
import type { Assembly } from '../../src/geometry/piecing/assembly.ts';
import { inRounds } from '../../src/geometry/piecing/rounds.ts';
import { waysToSew } from '../../src/geometry/piecing/ways.ts';
import { drawings, EVERYTHING, tiled, tries, unpainted } from './drawings.ts';
import { leavesOf, nodeFaults, nodesOf, seamFaults } from './sewn.ts';

const drawingOf = (file: string): Drawing => {
  const block = parseBlock(readFileSync(join(import.meta.dirname, '..', `${file}.block.json`), 'utf8'));
  if (!block.ok) throw new Error(block.problem.sentence);
  const drawn = toDrawing(block.value);
  if (!drawn.ok) throw new Error(drawn.problem.sentence);
  return drawn.value.drawing;
};
const standard = (file: string): Assembly => waysToSew(drawingOf(file))[0]!.root;
const cloths = ({ parts }: Assembly): readonly string[] => parts.map((part) => part.piece?.fabric ?? part.kind ?? '');

const corners = (x0: number, y0: number, x1: number, y1: number): readonly Lattice[] => [
  [x0, y0],
  [x1, y0],
  [x1, y1],
  [x0, y1],
];
const painted = (side: number, ...patches: readonly (readonly [string, number, number, number, number])[]): Drawing => ({
  ...unpainted({ across: side, down: side, cell: [1, 1] }),
  patches: patches.map(([fabric, x0, y0, x1, y1]) => ({ fabric, points: corners(x0, y0, x1, y1) })),
});

/** Four strips of one cloth each round a square that stands at 1, 1 and is `inner` steps wide. */
const frame = (inner: number): readonly (readonly [string, number, number, number, number])[] => [
  ['north', 0, 0, inner + 2, 1],
  ['south', 0, inner + 1, inner + 2, inner + 2],
  ['west', 0, 1, 1, inner + 1],
  ['east', inner + 1, 1, inner + 2, inner + 1],
];

/** What a joined node is sewn from, by cloth, in order; a unit inside by the number of its pieces. */
const order = (node: Assembly): readonly (string | number)[] => node.parts.map((part) => part.piece?.fabric ?? leavesOf(part).length);

describe('a block built from its centre outward', () => {
  it('is one join of the hearth and twenty logs, in the published order, for a log cabin', () => {
    // American Patchwork & Quilting (allpeoplequilt.com), Log Cabin quilt block option 1, 2013-12-18: hearth, then log after log.
    const root = standard('cases/log-cabin-11');
    expect(cloths(root)).toEqual(['hearth', ...Array.from({ length: 20 }, (_, i) => `log${i + 1}`)]);
  });

  it.each([
    ['gallery/log-cabin-7', 13],
    ['gallery/log-cabin-11-on-44', 21],
    ['gallery/log-cabin-10-off-centre', 13],
    ['gallery/log-cabin-12-wide-centre', 13],
    ['gallery/quarter-log-cabin-12', 9],
    ['gallery/courthouse-steps-7', 13],
    ['gallery/courthouse-steps-10-wide-centre', 9],
  ])('is one join of all its pieces: %s', (file, pieces) => {
    const root = standard(file);
    expect(root.parts).toHaveLength(pieces);
    expect(root.seams).toHaveLength(pieces - 1);
    expect(root.parts.every((part) => part.piece)).toBe(true);
    expect([...nodeFaults(root), ...seamFaults(root)]).toEqual([]);
  });

  it.each(['gallery/courthouse-steps-7', 'gallery/log-cabin-7', 'gallery/log-cabin-11-on-44', 'gallery/log-cabin-12-wide-centre'])(
    'begins with the brick centre: %s',
    (file) => expect(cloths(standard(file))[0]).toBe('brick'),
  );

  it('has a log cabin made four times as one unit', () => {
    const four = waysToSew(drawingOf('gallery/four-log-cabins-10')).find(({ way }) => way === 'largest repeated unit')!;
    const cabin = four.units.find(({ places }) => places.length === 4)!;
    expect(cabin.places[0]!.assembly.parts).toHaveLength(9);
  });

  it('has one round for four strips round a star, which stays a unit', () => {
    const star: readonly (readonly [string, number, number, number, number])[] = [0, 1, 2].flatMap((j) =>
      [0, 1, 2].map((i) => [(i + j) % 2 ? 'light' : 'dark', 1 + i, 1 + j, 2 + i, 2 + j] as const),
    );
    const root = waysToSew(painted(5, ...star, ...frame(3)))[0]!.root;
    expect(order(root)).toEqual([9, 'west', 'east', 'north', 'south']);
  });

  it('sews strips on that are pieced in a line, when they come one at a time', () => {
    // A log cabin with a cornerstone beside its last log.
    const logs = painted(
      4,
      ['hearth', 1, 1, 2, 2],
      ['a', 1, 0, 2, 1],
      ['b', 2, 0, 3, 2],
      ['c', 1, 2, 3, 3],
      ['d', 0, 0, 1, 3],
      ['e', 0, 3, 3, 4],
      ['stone', 3, 3, 4, 4],
      ['f', 3, 0, 4, 3],
    );
    expect(order(waysToSew(logs)[0]!.root)).toEqual(['hearth', 'a', 'b', 'c', 'd', 'f', 2]);
  });
});

describe('the centre', () => {
  it('is the larger of two pieces whose cloths come once each', () => {
    const round = [['b', 4, 1, 5, 4], ['c', 1, 0, 5, 1], ['d', 0, 0, 1, 4], ['e', 5, 0, 6, 4], ['f', 0, 4, 6, 6]] as const;
    const larger = waysToSew(painted(6, ['hearth', 1, 1, 4, 3], ['a', 1, 3, 4, 4], ...round))[0]!.root;
    expect(order(larger)[0]).toBe('hearth');
    const below = waysToSew(painted(6, ['a', 1, 1, 4, 2], ['hearth', 1, 2, 4, 4], ...round))[0]!.root;
    expect(order(below)[0]).toBe('hearth');
  });
});

/** Assemblies written by hand, where a drawing would be pieced otherwise. */
const piece = (fabric: string, x0: number, y0: number, x1: number, y1: number): Assembly => {
  const outline = corners(x0, y0, x1, y1).map(([x, y]) => ({ x, y, w: 1 }));
  return { outline, piece: { id: 0, fabric, outline, patches: [] }, parts: [], seams: [] };
};
const row = (...parts: readonly Assembly[]): Assembly => joined(parts, 'x');
const column = (...parts: readonly Assembly[]): Assembly => joined(parts, 'y');
function joined(parts: readonly Assembly[], along: 'x' | 'y'): Assembly {
  const of = (nodes: readonly Assembly[], axis: 'x' | 'y'): readonly number[] =>
    nodes.flatMap(({ outline }) => outline.map((p) => p[axis]));
  const [x0, x1, y0, y1] = [
    Math.min(...of(parts, 'x')),
    Math.max(...of(parts, 'x')),
    Math.min(...of(parts, 'y')),
    Math.max(...of(parts, 'y')),
  ];
  const seams = parts.slice(1).map((part) => {
    const at = Math.min(...of([part], along));
    return along === 'x'
      ? { from: { x: at, y: y0, w: 1 }, to: { x: at, y: y1, w: 1 } }
      : { from: { x: x0, y: at, w: 1 }, to: { x: x1, y: at, w: 1 } };
  });
  return { outline: corners(x0, y0, x1, y1).map(([x, y]) => ({ x, y, w: 1 })), kind: 'joined unit', parts, seams };
}

describe('a chain of joins', () => {
  it('that does not turn is no round: strips in a row are a centre of their own', () => {
    const strips = row(piece('b', 2, 2, 3, 4), row(piece('c', 3, 2, 4, 4), piece('d', 4, 2, 5, 4)));
    const root = row(
      piece('e', 0, 0, 1, 6),
      column(piece('f', 1, 0, 6, 2), row(piece('g', 1, 2, 2, 4), strips, piece('h', 5, 2, 6, 4)), piece('i', 1, 4, 6, 6)),
    );
    const told = inRounds(root);
    expect(seamFaults(told)).toEqual([]);
    expect(order(told)).toEqual([3, 'g', 'h', 'f', 'i', 'e']);
  });

  it('leaves a unit that is also made elsewhere as it is', () => {
    // The pair is the heart of the rounds, and stands beside them once more.
    const pair = (x: number, y: number): Assembly => column(piece('a', x, y, x + 1, y + 1), piece('b', x, y + 1, x + 1, y + 2));
    const framed = row(
      piece('w', 0, 0, 1, 4),
      column(piece('n', 1, 0, 3, 1), row(pair(1, 1), piece('e', 2, 1, 3, 3)), piece('s', 1, 3, 3, 4)),
    );
    const beside = column(piece('x', 3, 0, 4, 2), pair(3, 2));
    expect(order(inRounds(framed))).toEqual(['a', 'b', 'e', 'n', 's', 'w']);
    const both = inRounds(row(framed, beside));
    expect(order(both.parts[0]!)).toEqual([2, 'e', 'n', 's', 'w']);
    expect(seamFaults(both)).toEqual([]);
  });
});

describe('what is no block of rounds', () => {
  it.each([
    'cases/shoo-fly-12',
    'cases/sawtooth-star-12',
    'cases/double-nine-patch-9',
    'gallery/nine-patch-9',
    'gallery/puss-in-the-corner-12',
    'gallery/white-house-steps-12',
    'gallery/rail-fence-9',
  ])('keeps its rows: %s', (file) => {
    const root = standard(file);
    const [seam, ...others] = root.seams.map(({ from, to }) => (from.x * to.w === to.x * from.w ? 'upright' : 'level'));
    expect(others.every((other) => other === seam)).toBe(true);
  });

  it('keeps three strips on two sides as they are', () => {
    const root = waysToSew(painted(4, ['a', 0, 0, 4, 1], ['b', 0, 1, 1, 4], ['c', 1, 1, 4, 2], ['d', 1, 2, 4, 4]))[0]!.root;
    expect(inRounds(root)).toEqual(root);
    expect(root.parts).toHaveLength(2);
  });
});

describe('a pin', () => {
  const cabin = painted(
    5,
    ['hearth', 2, 2, 3, 3],
    ['a', 2, 1, 3, 2],
    ['b', 3, 1, 4, 3],
    ['c', 2, 3, 4, 4],
    ['d', 1, 1, 2, 4],
    ['e', 1, 0, 4, 1],
    ['f', 4, 0, 5, 4],
    ['g', 1, 4, 5, 5],
    ['h', 0, 0, 1, 5],
  );

  it('keeps what is one unit apart from the rounds about it', () => {
    expect(order(waysToSew(cabin)[0]!.root)).toEqual(['hearth', 'a', 'b', 'c', 'd', 'e', 'f', 'g', 'h']);
    const inner = { pin: 'one unit', from: [1, 1], to: [4, 4] } as const;
    const root = waysToSew({ ...cabin, pins: [inner] })[0]!.root;
    expect(order(root)).toEqual([5, 'e', 'f', 'g', 'h']);
    expect(order(root.parts[0]!)).toEqual(['hearth', 'a', 'b', 'c', 'd']);
  });

  it('keeps the seam that is sewn last out of the rounds', () => {
    const last = { pin: 'sewn last', from: [1, 0], to: [1, 5] } as const;
    const root = waysToSew({ ...cabin, pins: [last] })[0]!.root;
    expect(order(root)).toEqual(['h', 8]);
    expect(order(root.parts[1]!)).toEqual(['hearth', 'a', 'b', 'c', 'd', 'e', 'f', 'g']);
  });
});

describe.each([
  ['random drawings', drawings({ ...EVERYTHING, free: 0 })],
  ['turned tiles', tiled],
])('telling %s as rounds', (_, pictures) => {
  it('changes neither pieces nor seams, and each seam is the whole edge of what is there', () => {
    fc.assert(
      fc.property(pictures, (drawing) => {
        for (const { root } of waysToSew(drawing)) {
          const told = inRounds(root);
          expect([...nodeFaults(told), ...seamFaults(told)]).toEqual([]);
          expect(new Set(leavesOf(told))).toEqual(new Set(leavesOf(root)));
          expect(nodesOf(told).flatMap(({ seams }) => seams)).toHaveLength(nodesOf(root).flatMap(({ seams }) => seams).length);
          expect(inRounds(told)).toEqual(told);
        }
      }),
      tries(15),
    );
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkBlock } from '../../src/block/whole-check.ts';
import { mirror, turn } from '../../src/block/turning.ts';
import { samplePoints, seen, SEED, unpainted } from './drawn.ts';
import { uneven } from './uneven.ts';

describe('turning and mirroring a block', () => {
  it('four quarter turns, two mirrorings, or a mirroring each way and half a turn, change nothing', () => {
    fc.assert(
      fc.property(uneven, (drawn) => {
        const half = turn(turn(drawn));
        expect(turn(turn(half))).toEqual(drawn);
        expect(turn(turn(drawn), 'left')).toEqual(drawn);
        expect(turn(drawn, 'left')).toEqual(turn(half));
        for (const exchange of ['left and right', 'top and bottom'] as const) {
          expect(mirror(mirror(drawn, exchange), exchange)).toEqual(drawn);
        }
        expect(mirror(mirror(half, 'left and right'), 'top and bottom')).toEqual(drawn);
      }),
      SEED,
    );
  });

  it('keeps a block valid', () => {
    fc.assert(
      fc.property(uneven, (drawn) => {
        expect(checkBlock(turn(drawn))).toEqual(checkBlock(drawn));
        expect(checkBlock(mirror(drawn, 'left and right'))).toEqual(checkBlock(drawn));
      }),
      SEED,
    );
  });

  it('carries the picture with it: a quarter turn clockwise, or as in a mirror', () => {
    fc.assert(
      fc.property(uneven, (drawn) => {
        const { columns, rows } = drawn.grid;
        const [turned, left, top] = [turn(drawn), mirror(drawn, 'left and right'), mirror(drawn, 'top and bottom')];
        for (const [x, y] of samplePoints(drawn)) {
          const shown = seen(drawn, x, y);
          expect(seen(turned, rows - y, x)).toBe(shown);
          expect(seen(left, columns - x, y)).toBe(shown);
          expect(seen(top, x, rows - y)).toBe(shown);
        }
      }),
      { ...SEED, numRuns: 100 },
    );
  });

  it('carries uneven rows and columns, pins and choices with it', () => {
    // A column of half a unit at the left edge, a row of two units at the top.
    const before = unpainted(4, 3, {
      grid: { columns: 4, rows: 3, across: [{ n: 1, d: 2 }, { n: 1, d: 1 }, { n: 3, d: 1 }], down: [{ n: 2, d: 1 }] },
      pins: [{ pin: 'sewn last', from: [0, 2], to: [4, 2] }],
      choices: { blocks: 4 },
    });
    expect(turn(before)).toMatchObject({
      grid: { columns: 3, rows: 4, across: [{ n: 1, d: 1 }], down: [{ n: 1, d: 2 }, { n: 1, d: 1 }, { n: 3, d: 1 }] },
      pins: [{ pin: 'sewn last', from: [1, 0], to: [1, 4] }],
      choices: { blocks: 4 },
    });
    expect(turn(before, 'left').grid).toEqual({
      columns: 3, rows: 4, across: [{ n: 2, d: 1 }], down: [{ n: 1, d: 1 }, { n: 3, d: 1 }, { n: 7, d: 2 }],
    });
    expect(mirror(before, 'left and right').grid).toEqual({
      columns: 4, rows: 3, across: [{ n: 1, d: 1 }, { n: 3, d: 1 }, { n: 7, d: 2 }], down: [{ n: 2, d: 1 }],
    });
    expect(mirror(before, 'top and bottom').grid).toEqual({ ...before.grid, down: [{ n: 1, d: 1 }] });
  });

  it('brings the top left corner to the top right, and the width to the height', () => {
    const before = unpainted(3, 2, {
      finished: { width: { n: 9, d: 1 }, height: { n: 6, d: 1 }, unit: 'in' },
      patches: [{ fabric: 'teal', points: [[0, 0], [1, 0], [0, 1]] }],
      seams: [[[0, 1], [3, 1]]],
    });
    expect(turn(before)).toMatchObject({
      finished: { width: { n: 6 }, height: { n: 9 } },
      grid: { columns: 2, rows: 3 },
      patches: [{ points: [[2, 0], [2, 1], [1, 0]] }],
      seams: [[[1, 0], [1, 3]]],
    });
  });
});

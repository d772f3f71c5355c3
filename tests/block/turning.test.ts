import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkBlock } from '../../src/block/checks.ts';
import { mirror, turn } from '../../src/block/turning.ts';
import { block, samplePoints, seen, SEED, unpainted } from './drawn.ts';

describe('turning and mirroring a block', () => {
  it('four quarter turns, two mirrorings, or a mirroring each way and half a turn, change nothing', () => {
    fc.assert(
      fc.property(block, (drawn) => {
        const half = turn(turn(drawn));
        expect(turn(turn(half))).toEqual(drawn);
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
      fc.property(block, (drawn) => {
        expect(checkBlock(turn(drawn))).toEqual(checkBlock(drawn));
        expect(checkBlock(mirror(drawn, 'left and right'))).toEqual(checkBlock(drawn));
      }),
      SEED,
    );
  });

  it('carries the picture with it: a quarter turn clockwise, or as in a mirror', () => {
    fc.assert(
      fc.property(block, (drawn) => {
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

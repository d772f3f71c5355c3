import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { addCorner, beginSweep, extendSweep, lineAlong, lineNear, outlineOf, snapToHalfGrid } from '../../src/canvas/gesture.ts';
import { cellsPassed } from '../../src/canvas/stride.ts';

const GRID = { columns: 16, rows: 12 };
const anywhere = fc.double({ min: -5, max: 20, noNaN: true });
const place = fc.tuple(fc.double({ min: 0, max: 15.99, noNaN: true }), fc.double({ min: 0, max: 11.99, noNaN: true }));

describe('a stroke from one place to another', () => {
  test('passes from cell to neighbouring cell and skips none', () => {
    fc.assert(
      fc.property(place, place, (from, to) => {
        const cells = cellsPassed(from, to);
        expect(cells[0]).toEqual([Math.floor(from[0]), Math.floor(from[1])]);
        expect(cells.at(-1)).toEqual([Math.floor(to[0]), Math.floor(to[1])]);
        for (let i = 1; i < cells.length; i++) {
          expect(Math.abs(cells[i]![0] - cells[i - 1]![0]) + Math.abs(cells[i]![1] - cells[i - 1]![1])).toBe(1);
        }
      }),
      { seed: 1 },
    );
  });

  test('lays each cell once, however often it comes back, and nothing beside the block', () => {
    fc.assert(
      fc.property(fc.array(fc.tuple(anywhere, anywhere), { maxLength: 8 }), (ways) => {
        let sweep = beginSweep('half', 1, [8.5, 6.5]);
        for (const to of ways) ({ sweep } = extendSweep(sweep, to, GRID));
        const laid = sweep.strokes.map((stroke) => outlineOf(stroke).join(' '));
        expect(new Set(laid).size).toBe(laid.length);
        for (const stroke of sweep.strokes) {
          for (const [x, y] of outlineOf(stroke)) expect(x >= 0 && y >= 0 && x <= GRID.columns && y <= GRID.rows).toBe(true);
        }
      }),
      { seed: 2 },
    );
  });
});

describe('an outline, corner by corner', () => {
  test('snaps to half cells and stays on the block', () => {
    expect(snapToHalfGrid([2.26, 1.2], 4, 4)).toEqual([2.5, 1]);
    expect(snapToHalfGrid([-1, 9], 4, 4)).toEqual([0, 4]);
  });

  test('takes a corner set twice once, and lengthens a side that goes straight on', () => {
    const started = [[0, 0], [1, 0]] as const;
    expect(addCorner(started, [1, 0])).toEqual(started);
    expect(addCorner(started, [3, 0])).toEqual([[0, 0], [3, 0]]);
    expect(addCorner(started, [0.5, 0])).toHaveLength(3);
    expect(addCorner(started, [1, 2])).toHaveLength(3);
  });
});

describe('a grid line right across the block', () => {
  test('is the one along a side of a cell, never an edge of the block', () => {
    expect(lineAlong([2, 5], 0, GRID)).toEqual([[0, 5], [16, 5]]);
    expect(lineAlong([2, 5], 1, GRID)).toEqual([[3, 0], [3, 12]]);
    expect(lineAlong([2, 5], 2, GRID)).toEqual([[0, 6], [16, 6]]);
    expect(lineAlong([2, 5], 3, GRID)).toEqual([[2, 0], [2, 12]]);
    expect([lineAlong([0, 0], 0, GRID), lineAlong([0, 0], 3, GRID), lineAlong([15, 11], 1, GRID), lineAlong([15, 11], 2, GRID)])
      .toEqual([null, null, null, null]);
  });

  test('is the nearest one to a place, as a look at all of them finds it', () => {
    fc.assert(
      fc.property(place, ([x, y]) => {
        const [[x1, y1], [x2, y2]] = lineNear([x, y], GRID)!;
        const away = x1 === x2 ? Math.abs(x - x1) : Math.abs(y - y1);
        expect([x2 - x1, y2 - y1].sort((a, b) => a - b)).toEqual(x1 === x2 ? [0, 12] : [0, 16]);
        for (let i = 1; i < 16; i++) expect(Math.abs(x - i)).toBeGreaterThanOrEqual(away);
        for (let j = 1; j < 12; j++) expect(Math.abs(y - j)).toBeGreaterThanOrEqual(away);
      }),
      { seed: 3 },
    );
    expect(lineNear([0.5, 0.5], { columns: 1, rows: 1 })).toBeNull();
    expect(lineNear([0.1, 0.5], { columns: 1, rows: 3 })).toEqual([[0, 1], [1, 1]]);
  });
});

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cellsOf, type Cells } from '../../src/block/cells.ts';
import {
  addCorner, beginSweep, extendSweep, lineAlong, lineNear, outlineOf, rectangleBetween, snapToHalfGrid, stepOnHalfGrid,
  strokeAlong, strokeBetween, strokeInCell,
} from '../../src/canvas/gesture.ts';
import { cellsPassed, nearestCellTo } from '../../src/canvas/stride.ts';
import { rational, type Rational } from '../../src/measure/rational.ts';

const grid = (columns: number, rows: number, across?: readonly Rational[], down?: readonly Rational[]): Cells =>
  cellsOf({ columns, rows, ...(across && { across }), ...(down && { down }) });
const GRID = grid(16, 12);
/** A half-inch row and column round a block of 6 by 6 inches, and a cell of thirds. */
const UNEVEN = grid(6, 6, [rational(1, 2), rational(2), rational(7, 3), rational(11, 2)], [rational(1, 2), rational(11, 2)]);
const anywhere = fc.double({ min: -5, max: 20, noNaN: true });
const place = fc.tuple(fc.double({ min: 0, max: 15.99, noNaN: true }), fc.double({ min: 0, max: 11.99, noNaN: true }));

describe('a stroke from one place to another', () => {
  test('passes from cell to neighbouring cell and skips none', () => {
    fc.assert(
      fc.property(place, place, (from, to) => {
        const cells = cellsPassed(GRID, from, to);
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
        let sweep = beginSweep(GRID, 'half', 1, [8.5, 6.5]);
        for (const to of ways) ({ sweep } = extendSweep(GRID, sweep, to));
        const laid = sweep.strokes.map((stroke) => outlineOf(stroke).join(' '));
        expect(new Set(laid).size).toBe(laid.length);
        for (const stroke of sweep.strokes) {
          for (const [x, y] of outlineOf(stroke)) expect(x >= 0 && y >= 0 && x <= 16 && y <= 12).toBe(true);
        }
      }),
      { seed: 2 },
    );
  });
});

describe('an outline, corner by corner', () => {
  test('snaps to half cells and stays on the block', () => {
    expect(snapToHalfGrid(grid(4, 4), [2.26, 1.2])).toEqual([2.5, 1]);
    expect(snapToHalfGrid(grid(4, 4), [-1, 9])).toEqual([0, 4]);
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
  const ends = (line: ReturnType<typeof lineNear>) => line && outlineOf(line);

  test('is the one along a side of a cell, never an edge of the block', () => {
    expect(ends(lineAlong(GRID, [2, 5], 0))).toEqual([[0, 5], [16, 5]]);
    expect(ends(lineAlong(GRID, [2, 5], 1))).toEqual([[3, 0], [3, 12]]);
    expect(ends(lineAlong(GRID, [2, 5], 2))).toEqual([[0, 6], [16, 6]]);
    expect(ends(lineAlong(GRID, [2, 5], 3))).toEqual([[2, 0], [2, 12]]);
    expect([lineAlong(GRID, [0, 0], 0), lineAlong(GRID, [0, 0], 3), lineAlong(GRID, [15, 11], 1), lineAlong(GRID, [15, 11], 2)])
      .toEqual([null, null, null, null]);
  });

  test('is the nearest one to a place, as a look at all of them finds it', () => {
    fc.assert(
      fc.property(place, ([x, y]) => {
        const [[x1, y1], [x2, y2]] = ends(lineNear(GRID, [x, y])) as [readonly [number, number], readonly [number, number]];
        const away = x1 === x2 ? Math.abs(x - x1) : Math.abs(y - y1);
        expect([x2 - x1, y2 - y1].sort((a, b) => a - b)).toEqual(x1 === x2 ? [0, 12] : [0, 16]);
        for (let i = 1; i < 16; i++) expect(Math.abs(x - i)).toBeGreaterThanOrEqual(away);
        for (let j = 1; j < 12; j++) expect(Math.abs(y - j)).toBeGreaterThanOrEqual(away);
      }),
      { seed: 3 },
    );
    expect(lineNear(grid(1, 1), [0.5, 0.5])).toBeNull();
    expect(ends(lineNear(grid(1, 3), [0.1, 0.5]))).toEqual([[0, 1], [1, 1]]);
  });
});

describe('an uneven grid', () => {
  const anywhereOn = fc.tuple(fc.double({ min: 0, max: 5.99, noNaN: true }), fc.double({ min: 0, max: 5.99, noNaN: true }));
  const area = (points: readonly (readonly [number, number])[]): number =>
    Math.abs(points.reduce((sum, [x, y], i) => sum + x * points[(i + 1) % points.length]![1] - points[(i + 1) % points.length]![0] * y, 0)) / 2;

  test('has its cells where its lines are', () => {
    expect(nearestCellTo(UNEVEN, [0.4, 0.4])).toEqual([0, 0]);
    expect(nearestCellTo(UNEVEN, [2.1, 5.4])).toEqual([2, 1]);
    expect(nearestCellTo(UNEVEN, [6, 6])).toEqual([4, 2]);
    expect(outlineOf(strokeInCell(UNEVEN, 'square', [2, 0], 0))).toEqual([[2, 0], [7 / 3, 0], [7 / 3, 0.5], [2, 0.5]]);
    expect(outlineOf(rectangleBetween(UNEVEN, [4, 2], [3, 1]))).toEqual([[7 / 3, 0.5], [6, 0.5], [6, 6], [7 / 3, 6]]);
  });

  test('has halves and quarters that fill each cell', () => {
    for (const column of [0, 1, 2, 3, 4]) {
      for (const row of [0, 1, 2]) {
        const whole = area(outlineOf(strokeInCell(UNEVEN, 'square', [column, row], 0)));
        const parts = ([0, 1, 2, 3] as const).map((turn) => area(outlineOf(strokeInCell(UNEVEN, 'quarter', [column, row], turn))));
        for (const part of parts) expect(part).toBeCloseTo(whole / 4, 12);
        const [half, other] = ([0, 2] as const).map((turn) => area(outlineOf(strokeInCell(UNEVEN, 'half', [column, row], turn))));
        expect(half! + other!).toBeCloseTo(whole, 12);
      }
    }
  });

  test('has half-rectangles and peaks over its cells: each half of what they span, their corners on its lines', () => {
    const one = rectangleBetween(UNEVEN, [1, 0], [3, 1]);
    const whole = area(outlineOf(one));
    for (const tool of ['half rectangle', 'peak'] as const) {
      for (const turn of [0, 1, 2, 3] as const) {
        const half = strokeBetween(UNEVEN, tool, [3, 1], [1, 0], turn);
        expect(half.points).toHaveLength(3);
        expect(area(outlineOf(half))).toBeCloseTo(whole / 2, 12);
      }
    }
    expect(outlineOf(strokeBetween(UNEVEN, 'half rectangle', [1, 0], [3, 1], 2))).toEqual([[5.5, 0], [5.5, 5.5], [0.5, 5.5]]);
    expect(outlineOf(strokeBetween(UNEVEN, 'peak', [1, 0], [3, 1], 2))).toEqual([[5.5, 5.5], [0.5, 5.5], [3, 0]]);
  });

  test('is passed from cell to neighbouring cell, and every cell met lies under the stroke', () => {
    fc.assert(
      fc.property(anywhereOn, anywhereOn, (from, to) => {
        const cells = cellsPassed(UNEVEN, from, to);
        expect(cells[0]).toEqual(nearestCellTo(UNEVEN, from));
        expect(cells.at(-1)).toEqual(nearestCellTo(UNEVEN, to));
        for (let i = 1; i < cells.length; i++) {
          expect(Math.abs(cells[i]![0] - cells[i - 1]![0]) + Math.abs(cells[i]![1] - cells[i - 1]![1])).toBe(1);
        }
        for (let t = 0; t <= 1; t += 1 / 64) {
          const here = nearestCellTo(UNEVEN, [from[0] + t * (to[0] - from[0]), from[1] + t * (to[1] - from[1])]);
          expect(cells).toContainEqual(here);
        }
      }),
      { seed: 4 },
    );
  });

  test('snaps to its lines and half way between them, and these are exact points', () => {
    expect(snapToHalfGrid(UNEVEN, [0.3, 0.05])).toEqual([0.25, 0]);
    expect(snapToHalfGrid(UNEVEN, [2.2, 3.1])).toEqual([13 / 6, 3]);
    expect(stepOnHalfGrid(UNEVEN, [13 / 6, 3], 1, -1)).toEqual([7 / 3, 0.5]);
    expect(stepOnHalfGrid(UNEVEN, [0, 6], -1, 1)).toEqual([0, 6]);
    expect(strokeAlong(UNEVEN, [[13 / 6, 3], [7 / 3, 0.5]])).toEqual({ denominator: 12, points: [[26, 36], [28, 6]] });
    fc.assert(
      fc.property(anywhereOn, (place) => {
        const snapped = snapToHalfGrid(UNEVEN, place);
        expect(snapToHalfGrid(UNEVEN, snapped)).toEqual(snapped);
        const exact = strokeAlong(UNEVEN, [snapped]);
        expect(outlineOf(exact)[0]![0]).toBeCloseTo(snapped[0], 12);
      }),
      { seed: 5 },
    );
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { doubleArea } from '../../src/block/outline.ts';
import {
  cell, cellsBetween, halfCell, nearestCorner, nearestSide, quarterCell, type Corner, type Side,
} from '../../src/block/patch-shapes.ts';
import type { Stroke } from '../../src/block/painting.ts';
import { covers, SEED } from './drawn.ts';

const corners: readonly Corner[] = ['top left', 'top right', 'bottom right', 'bottom left'];
const sides: readonly Side[] = ['top', 'right', 'bottom', 'left'];
const area = ({ points, denominator }: Stroke): number => doubleArea(points) / 2 / denominator ** 2;

describe('the shapes of a stroke', () => {
  it('are cells, halves and quarters of cells, and rectangles of cells', () => {
    expect(area(cell(2, 5))).toBe(1);
    expect(corners.map((corner) => area(halfCell(2, 5, corner)))).toEqual([0.5, 0.5, 0.5, 0.5]);
    expect(sides.map((side) => area(quarterCell(2, 5, side)))).toEqual([0.25, 0.25, 0.25, 0.25]);
    expect(area(cellsBetween(3, 4, 1, 0))).toBe(15);
    expect(cellsBetween(3, 4, 1, 0)).toEqual(cellsBetween(1, 0, 3, 4));
  });

  it('quarters cover a cell once, and so do halves at opposite corners', () => {
    const point = fc.double({ min: 0.001, max: 0.999, noNaN: true });
    fc.assert(
      fc.property(point, point, (x, y) => {
        const holding = (shapes: readonly Stroke[]): number =>
          shapes.filter(({ points, denominator }) => covers(points, denominator, 2 + x, 5 + y)).length;
        fc.pre(Math.abs(x - y) > 1e-9 && Math.abs(x + y - 1) > 1e-9);
        expect(holding(sides.map((side) => quarterCell(2, 5, side)))).toBe(1);
        expect(holding([halfCell(2, 5, 'top left'), halfCell(2, 5, 'bottom right')])).toBe(1);
        expect(holding([halfCell(2, 5, 'top right'), halfCell(2, 5, 'bottom left')])).toBe(1);
      }),
      SEED,
    );
  });

  it('hold the pointer that asks for them', () => {
    const point = fc.double({ min: 0.001, max: 0.999, noNaN: true });
    fc.assert(
      fc.property(point, point, (x, y) => {
        fc.pre([x - y, x + y - 1, x - 0.5, y - 0.5].every((gap) => Math.abs(gap) > 1e-9));
        for (const shape of [quarterCell(2, 5, nearestSide(x, y)), halfCell(2, 5, nearestCorner(x, y))]) {
          expect(covers(shape.points, shape.denominator, 2 + x, 5 + y)).toBe(true);
        }
      }),
      SEED,
    );
  });
});

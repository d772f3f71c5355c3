import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { allows, axesOf, pointImages, shapeOf, strokeImages, SYMMETRIES, type SymmetryName } from '../../src/block/symmetry.ts';
import { covers, SEED, stroke, unpainted } from './drawn.ts';

const GRID = { columns: 6, rows: 6 };
const name = fc.constantFrom(...SYMMETRIES);

describe('a symmetry of the drawing', () => {
  it('brings a place to as many places as the trade counts', () => {
    const places = (of: SymmetryName): number => pointImages(GRID, of, { x: 7, y: 10, w: 4 }).length;
    expect(SYMMETRIES.map((of) => `${of} ${places(of)}`)).toEqual([
      'none 1', 'left and right 2', 'top and bottom 2', 'both ways 4', 'half turn 2', 'quarter turns 4',
      'falling diagonal 2', 'rising diagonal 2', 'both diagonals 4', 'every way 8',
    ]);
  });

  it('means by its name what one sees', () => {
    const to = (of: SymmetryName) => pointImages(GRID, of, { x: 1, y: 2, w: 1 }).slice(1).map(({ x, y }) => [x, y]).sort();
    expect(to('left and right')).toEqual([[5, 2]]);
    expect(to('top and bottom')).toEqual([[1, 4]]);
    expect(to('half turn')).toEqual([[5, 4]]);
    expect(to('falling diagonal')).toEqual([[2, 1]]);
    expect(to('rising diagonal')).toEqual([[4, 5]]);
    expect(to('quarter turns')).toEqual([[2, 5], [4, 1], [5, 4]]);
  });

  it('leads to no place beyond its own, however often it is carried out', () => {
    fc.assert(
      fc.property(name, stroke(6, 6), (of, laid) => {
        const images = strokeImages(GRID, of, laid);
        expect(images[0]).toBe(laid);
        const shapes = images.map(shapeOf).sort();
        expect(new Set(shapes).size).toBe(shapes.length);
        for (const image of images) expect(strokeImages(GRID, of, image).map(shapeOf).sort()).toEqual(shapes);
      }),
      SEED,
    );
  });

  it('brings an outline where it brings each place inside it', () => {
    fc.assert(
      fc.property(name, stroke(6, 6), fc.nat(22), fc.nat(22), (of, laid, i, j) => {
        const at = { x: (101 * i + 13) * 6 * 103, y: (103 * j + 29) * 6 * 101, w: 23 * 101 * 103 };
        const covered = (x: number, y: number): boolean =>
          strokeImages(GRID, of, laid).some(({ points, denominator }) => covers(points, denominator, x, y));
        const inside = covers(laid.points, laid.denominator, at.x / at.w, at.y / at.w);
        for (const { x, y, w } of pointImages(GRID, of, at)) if (inside) expect(covered(x / w, y / w)).toBe(true);
      }),
      SEED,
    );
  });

  it('brings each outline to one place once: a centred one stays where it is', () => {
    const centred = { points: [[2, 2], [4, 2], [4, 4], [2, 4]], denominator: 1 } as const;
    for (const of of SYMMETRIES) expect(strokeImages(GRID, of, centred)).toEqual([centred]);
    const middle = { points: [[0, 3], [6, 3]], denominator: 1 } as const;
    expect(strokeImages(GRID, 'every way', middle).map(({ points }) => points)).toEqual([[[0, 3], [6, 3]], [[3, 6], [3, 0]]]);
  });

  it('turns and mirrors a diagonal only where the block is square and has the same lines both ways', () => {
    const allowed = (block: ReturnType<typeof unpainted>): number => SYMMETRIES.filter((of) => allows(block, of)).length;
    expect(allowed(unpainted(6, 6))).toBe(10);
    expect(allowed(unpainted(6, 4))).toBe(5);
    expect(allowed(unpainted(4, 4, { finished: { width: { n: 12, d: 1 }, height: { n: 9, d: 1 }, unit: 'in' } }))).toBe(5);
    const lines = [{ n: 1, d: 2 }, { n: 2, d: 1 }];
    expect(allowed(unpainted(4, 4, { grid: { columns: 4, rows: 4, across: lines } }))).toBe(5);
    expect(allowed(unpainted(4, 4, { grid: { columns: 4, rows: 4, across: lines, down: lines } }))).toBe(10);
  });

  it('is shown by its mirrors and its turns', () => {
    expect(SYMMETRIES.map((of) => [axesOf(GRID, of).lines.length, axesOf(GRID, of).turns])).toEqual([
      [0, 1], [1, 1], [1, 1], [2, 2], [0, 2], [0, 4], [1, 1], [1, 1], [2, 2], [4, 4],
    ]);
  });
});

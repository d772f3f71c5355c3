import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cellSizes } from '../../src/block/axis.ts';
import type { Block } from '../../src/block/block.ts';
import { cellsOf, countOf } from '../../src/block/cells.ts';
import { checkBlock } from '../../src/block/whole-check.ts';
import { toDrawing } from '../../src/block/drawing.ts';
import { joinCells, resizeCell, splitCell } from '../../src/block/lines.ts';
import { doubleArea } from '../../src/block/outline.ts';
import { paint } from '../../src/block/painting.ts';
import { cell, cellsBetween, halfCell } from '../../src/block/patch-shapes.ts';
import { regrid } from '../../src/block/regridding.ts';
import { multiply, rational } from '../../src/measure/rational.ts';
import { makePattern } from '../../src/pattern/make-pattern.ts';
import { must, paintFabric, SEED, unpainted } from './drawn.ts';
import { measured, uneven } from './uneven.ts';

const sixInch = (columns: number, rows: number): Block =>
  unpainted(columns, rows, { finished: { width: rational(6), height: rational(6), unit: 'in' } });

/** Each patch's area in square inches or centimetres, exactly. */
function areas(block: Block) {
  const { drawing, step } = must(toDrawing(block));
  return drawing.patches.map(({ points }) => multiply(rational(doubleArea(points), 2), multiply(step, step)));
}

describe('a half-inch row in a 6-inch block', () => {
  const lined = must(splitCell(sixInch(6, 6), 'rows', 0, rational(1, 2)));

  it('comes of a line half an inch under the top edge', () => {
    expect(lined.grid).toEqual({ columns: 6, rows: 6, down: [rational(1, 2), rational(1), rational(2), rational(3), rational(4), rational(5)] });
    expect(cellSizes(lined, 'rows')).toEqual([rational(1, 2), rational(1, 2), ...Array.from({ length: 4 }, () => rational(1)), rational(1)]);
    expect(cellSizes(lined, 'columns')).toEqual(Array.from({ length: 6 }, () => rational(1)));
    expect(lined.finished).toEqual(sixInch(6, 6).finished);
  });

  it('or of a row set to half an inch, its neighbour giving way: 1/2 and 1 1/2', () => {
    const set = must(resizeCell(sixInch(6, 6), 'rows', 0, rational(1, 2), 'stays'));
    expect(cellSizes(set, 'rows').slice(0, 3)).toEqual([rational(1, 2), rational(3, 2), rational(1)]);
  });

  it('painted across, is cut 1 by 6 1/2, and what is under it 6 by 6 1/2', () => {
    const cells = cellsOf(lined.grid);
    const right = cells.across.at(-1)!;
    const painted = must(paint(lined, 'teal', { denominator: cells.denominator, points: [[0, 0], [right, 0], [right, 1], [0, 1]] }));
    const pattern = must(makePattern(painted));
    // 1/2 in. and 5 1/2 in. finished, each with 1/4 in. on both sides; both 6 1/2 in. long.
    expect(pattern.cuts.map(({ fabric, quantity, width, height }) => [fabric, quantity, width, height])).toEqual([
      ['oat', 1, rational(6), rational(13, 2)],
      ['teal', 1, rational(1), rational(13, 2)],
    ]);
    expect(pattern.proof.holds).toBe(true);
  });
});

describe('a line', () => {
  const place = fc.record({ axis: fc.constantFrom('columns' as const, 'rows' as const), at: fc.nat(6), part: fc.integer({ min: 1, max: 11 }) });

  it('drawn through a cell changes no area, and taken away again leaves the block as it was', () => {
    fc.assert(
      fc.property(uneven, place, (drawn, { axis, at, part }) => {
        const sizes = cellSizes(drawn, axis);
        const which = at % sizes.length;
        const split = splitCell(drawn, axis, which, multiply(sizes[which]!, rational(part, 12)));
        fc.pre(split.ok);
        const lined = must(split);
        expect(checkBlock(lined)).toBeNull();
        expect(countOf(lined.grid)[axis]).toBe(sizes.length + 1);
        expect(areas(lined)).toEqual(areas(drawn));
        expect(measured(must(joinCells(lined, axis, which)))).toEqual(measured(drawn));
      }),
      SEED,
    );
  });

  it('moved there and back is where it was, the drawing with it or not', () => {
    fc.assert(
      fc.property(uneven, place, fc.constantFrom('stays' as const, 'moves along' as const), (drawn, { axis, at, part }, what) => {
        const sizes = cellSizes(drawn, axis);
        const which = at % sizes.length;
        const other = sizes[which + 1] ?? sizes[which - 1];
        fc.pre(other !== undefined);
        const most = rational(sizes[which]!.n * other!.d + other!.n * sizes[which]!.d, sizes[which]!.d * other!.d);
        const moved = resizeCell(drawn, axis, which, multiply(most, rational(part, 12)), what);
        fc.pre(moved.ok);
        expect(checkBlock(must(moved))).toBeNull();
        expect(must(moved).finished).toEqual(drawn.finished);
        const back = must(resizeCell(must(moved), axis, which, sizes[which]!, what));
        expect(measured(back)).toEqual(measured(drawn));
        if (what === 'stays') expect(areas(must(moved))).toEqual(areas(drawn));
      }),
      SEED,
    );
  });

  it('takes along what is drawn in the cells beside it', () => {
    const painted = must(paint(must(paint(sixInch(3, 3), 'teal', cell(0, 1))), 'rust', halfCell(1, 1, 'top left')));
    const narrow = must(resizeCell(painted, 'columns', 0, rational(1, 2), 'moves along'));
    // Cells of 1/2, 3 1/2 and 2 in.; in grid units of 2 in. the line lies at 1/4.
    expect(narrow.grid.across).toEqual([rational(1, 4), rational(2)]);
    expect(narrow.denominator).toBe(4);
    expect(narrow.patches.map(({ points }) => points)).toEqual([
      [[0, 4], [1, 4], [1, 8], [0, 8]],
      [[1, 8], [1, 4], [8, 4]],
    ]);
  });

  it('does not take along a slanted edge that would bend at it, and says which', () => {
    const long = must(paint(sixInch(3, 3), 'teal', { denominator: 1, points: [[0, 0], [2, 0], [0, 1]] }));
    expect(resizeCell(long, 'columns', 0, rational(1), 'moves along')).toMatchObject({
      problem: { code: 'slanted-across', sentence: expect.stringContaining('Patch 1 has a slanted edge across the upright line') },
    });
    expect(resizeCell(long, 'columns', 0, rational(1), 'stays')).toMatchObject({ ok: true });
    expect(resizeCell(long, 'rows', 1, rational(1), 'moves along')).toMatchObject({ ok: true });
    const seamed = { ...sixInch(3, 3), seams: [[[0, 0], [3, 3]] as const] };
    expect(resizeCell(seamed, 'rows', 2, rational(1), 'moves along')).toMatchObject({ problem: { sentence: expect.stringContaining('Seam 1') } });
  });

  it('is refused where it cannot lie', () => {
    const code = (made: ReturnType<typeof splitCell>) => (made.ok ? null : made.problem.code);
    for (const distance of [rational(0), rational(2), rational(-1), rational(9)]) {
      expect(code(splitCell(sixInch(3, 3), 'columns', 1, distance))).toBe('split-out-of-range');
    }
    expect(code(splitCell(sixInch(3, 3), 'columns', 3, rational(1)))).toBe('no-such-cell');
    expect(code(splitCell(sixInch(64, 64), 'rows', 3, rational(1, 100)))).toBe('grid-out-of-range');
    expect(code(splitCell(sixInch(3, 3), 'rows', 1, rational(1, 99_991)))).toBe('too-fine');
    expect(code(splitCell(sixInch(3, 3), 'rows', 1, rational(1, Number.MAX_SAFE_INTEGER)))).toBe('too-fine');
    expect(code(joinCells(sixInch(3, 3), 'columns', 2))).toBe('no-neighbour');
    expect(code(joinCells(sixInch(3, 3), 'columns', -1))).toBe('no-such-cell');
    expect(code(resizeCell(sixInch(3, 3), 'rows', 0, rational(4), 'stays'))).toBe('cell-size-out-of-range');
    expect(code(resizeCell(sixInch(3, 1), 'rows', 0, rational(4), 'stays'))).toBe('cell-size-out-of-range');
    expect(code(resizeCell(sixInch(3, 3), 'rows', 7, rational(4), 'stays'))).toBe('no-such-cell');
  });
});

describe('the pattern of an uneven drawing', () => {
  // 3 in. cells, and lines at 1 in. and at 2 1/2 in. of one column and one row: cells of 1, 2, 5/2, 1/2 and 3 in.
  const lined = must(splitCell(must(splitCell(unpainted(4, 4), 'columns', 1, rational(1))), 'rows', 2, rational(5, 2)));
  const cells = cellsOf(lined.grid);
  const at = fc.tuple(fc.nat(4), fc.nat(4));
  const corner = fc.constantFrom('top left', 'top right', 'bottom right', 'bottom left' as const);
  const shape = fc.oneof(
    fc.tuple(at, at).map(([from, to]) => cellsBetween(...from, ...to, cells)),
    fc.tuple(at, corner).map(([one, held]) => halfCell(...one, held, cells)),
  );

  it('is proved, and is that of the same picture on an even fine grid', () => {
    fc.assert(
      fc.property(fc.array(fc.tuple(paintFabric, shape), { minLength: 1, maxLength: 6 }), (laid) => {
        const uneven = laid.reduce((now, [fabric, outline]) => must(paint(now, fabric, outline)), lined);
        // Half an inch is what all cells are whole multiples of.
        const { block: even, lost } = must(regrid(uneven, { columns: 24, rows: 24 }, 'picture'));
        expect([even.grid, lost.patches]).toEqual([{ columns: 24, rows: 24 }, []]);
        const [ours, theirs] = [uneven, even].map((block) => must(makePattern(block, {}, 'chosen way')));
        expect(ours!.proof.holds).toBe(true);
        const cuts = ours!.cuts.map(({ fabric, quantity, width, height, subcut }) => ({ fabric, quantity, width, height, subcut }));
        expect(theirs!.cuts).toMatchObject(cuts);
        expect(theirs!.cuts).toHaveLength(cuts.length);
      }),
      { ...SEED, numRuns: 40 },
    );
  });
});

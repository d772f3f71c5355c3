import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cellSizes } from '../../src/block/axis.ts';
import type { Block } from '../../src/block/block.ts';
import { countOf } from '../../src/block/cells.ts';
import { checkBlock } from '../../src/block/whole-check.ts';
import { coarsest } from '../../src/block/lattice.ts';
import { paint } from '../../src/block/painting.ts';
import { cell } from '../../src/block/patch-shapes.ts';
import { addCells, coarsen, cornersOffGrid, regrid, subdivide, takeCells, type BlockEdge } from '../../src/block/regridding.ts';
import { parseBlock, formatBlock } from '../../src/files/block-file.ts';
import { rational } from '../../src/measure/rational.ts';
import { block, must, seen, samplePoints, SEED, unpainted } from './drawn.ts';
import { measured, uneven } from './uneven.ts';

const RUNS = { ...SEED, numRuns: 150 };
const count = fc.integer({ min: 1, max: 9 });
const edge = fc.constantFrom<BlockEdge>('left', 'right', 'top', 'bottom');

describe('another number of columns and rows', () => {
  it('more and then as many as before is as before, whatever is kept meanwhile', () => {
    const keeping = fc.constantFrom('patches in their cells', 'size of a cell', 'picture' as const);
    fc.assert(
      fc.property(block, count, count, keeping, (drawn, columns, rows, kept) => {
        const { columns: c, rows: r } = drawn.grid;
        const more = regrid(drawn, { columns: c + columns, rows: r + rows }, kept);
        fc.pre(more.ok);
        expect(must(more).lost).toEqual({ patches: [], seams: [], pins: [], unitMethods: [], pressedSeams: [] });
        const { block: back } = must(regrid(must(more).block, { columns: c, rows: r }, kept));
        expect(coarsest(back)).toEqual(coarsest(drawn));
      }),
      RUNS,
    );
  });

  it('leaves the picture where it is while only the lines are drawn anew', () => {
    fc.assert(
      fc.property(uneven, count, count, (drawn, columns, rows) => {
        const made = regrid(drawn, { columns, rows }, 'picture');
        fc.pre(made.ok);
        const { block: lined } = must(made);
        expect(lined.finished).toEqual(drawn.finished);
        expect(lined.grid).toEqual({ columns, rows });
        const [across, down] = [columns / drawn.grid.columns, rows / drawn.grid.rows];
        for (const [x, y] of samplePoints(drawn)) expect(seen(lined, x * across, y * down)).toBe(seen(drawn, x, y));
      }),
      { ...RUNS, numRuns: 60 },
    );
  });

  it('keeps the size of every cell while the block grows or shrinks at an edge', () => {
    fc.assert(
      fc.property(uneven, edge, (drawn, at) => {
        const axis = at === 'left' || at === 'right' ? 'columns' : 'rows';
        const made = addCells(drawn, at);
        fc.pre(made.ok);
        const { block: more } = must(made);
        expect(checkBlock(more)).toBeNull();
        const before = cellSizes(drawn, axis);
        const first = at === 'left' || at === 'top';
        expect(cellSizes(more, axis)).toEqual(first ? [before[0], ...before] : [...before, before.at(-1)]);
        expect(measured(must(takeCells(more, at)).block)).toEqual(measured(drawn));
      }),
      RUNS,
    );
  });

  it('cuts off at the new edge what lies across it, and shows inside what it showed', () => {
    fc.assert(
      fc.property(uneven, edge, (drawn, at) => {
        const cells = countOf(drawn.grid);
        fc.pre(at === 'left' || at === 'right' ? cells.columns > 1 : cells.rows > 1);
        const made = takeCells(drawn, at);
        fc.pre(made.ok);
        const { block: fewer, lost } = must(made);
        expect(checkBlock(fewer)).toBeNull();
        // A patch is left out where none of it lies inside, or where what lies inside cannot be held exactly: rare.
        expect(lost.patches.length).toBeLessThanOrEqual(drawn.patches.length);
        const dx = toNumber(drawn.finished.width) - toNumber(fewer.finished.width);
        const dy = toNumber(drawn.finished.height) - toNumber(fewer.finished.height);
        const [left, top] = [at === 'left' ? dx : 0, at === 'top' ? dy : 0];
        for (const [u, v] of samplePoints(unpainted(1, 1))) {
          const [x, y] = [u * toNumber(fewer.finished.width), v * toNumber(fewer.finished.height)];
          const there = seen(fewer, inUnits(fewer, 'columns', x), inUnits(fewer, 'rows', y));
          const before = seen(drawn, inUnits(drawn, 'columns', x + left), inUnits(drawn, 'rows', y + top));
          if (there !== before) return void expect(lost.patches.some((i) => touchesInside(drawn, i))).toBe(true);
        }
      }),
      RUNS,
    );
  });

  it('takes a column away from a block that one patch covers, and leaves the rest of the patch', () => {
    const sky = must(paint(unpainted(4, 4), 'teal', { denominator: 1, points: [[0, 0], [4, 0], [4, 2], [0, 4]] }));
    const { block: fewer, cut, lost } = must(takeCells(sky, 'right'));
    // The slanted edge falls 2 cells in 4, so at column 3 it stands at 2 1/2.
    expect(fewer).toMatchObject({ denominator: 2, finished: { width: { n: 9 }, height: { n: 12 } }, grid: { columns: 3, rows: 4 } });
    expect(fewer.patches).toHaveLength(1);
    expect(new Set(fewer.patches[0]!.points.map(String))).toEqual(new Set(['0,0', '6,0', '6,5', '0,8']));
    expect({ cut, lost }).toEqual({ cut: { patches: [0], seams: [] }, lost: { patches: [], seams: [], pins: [], unitMethods: [], pressedSeams: [] } });
  });

  it('makes two patches of a hook that is cut through', () => {
    const hook = unpainted(3, 3, { patches: [{ fabric: 'teal', points: [[0, 0], [3, 0], [3, 3], [0, 3], [0, 2], [2, 2], [2, 1], [0, 1]], whole: true }] });
    const { block: fewer } = must(regrid(hook, { columns: 1, rows: 3 }, 'size of a cell'));
    expect(fewer.patches.map(({ points, whole }) => [points.length, whole])).toEqual([[4, true], [4, true]]);
  });

  it('is refused where no grid has it, or where the block would be too large', () => {
    expect(regrid(unpainted(4, 4), { columns: 0, rows: 4 })).toMatchObject({ problem: { code: 'grid-out-of-range' } });
    expect(regrid(unpainted(4, 4), { columns: NaN, rows: 4 }, 'picture')).toMatchObject({ problem: { code: 'grid-out-of-range' } });
    expect(takeCells(unpainted(1, 4), 'left')).toMatchObject({ problem: { code: 'grid-out-of-range' } });
    expect(addCells(unpainted(64, 4), 'left')).toMatchObject({ problem: { code: 'grid-out-of-range' } });
    const large = unpainted(1, 1, { finished: { width: rational(150), height: rational(9), unit: 'in' } });
    expect(addCells(large, 'right')).toMatchObject({ problem: { code: 'size-out-of-range' } });
    expect(addCells(large, 'top')).toMatchObject({ ok: true });
  });
});

describe('finer and coarser', () => {
  it('is the same grid again, uneven ones too', () => {
    fc.assert(
      fc.property(uneven, fc.constantFrom(2, 3), (drawn, times) => {
        const finer = subdivide(drawn, times);
        fc.pre(finer.ok);
        expect(countOf(must(finer).grid)).toEqual({
          columns: countOf(drawn.grid).columns * times, rows: countOf(drawn.grid).rows * times,
        });
        expect(measured(must(coarsen(must(finer), times)))).toEqual(measured(drawn));
      }),
      RUNS,
    );
    fc.assert(
      fc.property(block, fc.constantFrom(2, 3), (drawn, times) => {
        expect(must(coarsen(must(subdivide(drawn, times)), times))).toEqual(coarsest(drawn));
      }),
      RUNS,
    );
  });

  it('joins cells only where they come out even', () => {
    expect(coarsen(unpainted(6, 4), 3)).toMatchObject({ problem: { code: 'no-even-groups' } });
    expect(must(coarsen(unpainted(6, 4), 2)).grid).toEqual({ columns: 3, rows: 2 });
  });

  it('joins uneven cells two by two', () => {
    const grid = { columns: 6, rows: 2, across: [rational(1, 2), rational(2), rational(4)] };
    expect(must(coarsen(unpainted(6, 2, { grid }), 2)).grid).toEqual({ columns: 6, rows: 1, across: [rational(2)] });
  });

  it('tells how many corners the lines and their halves no longer hold', () => {
    const stepped = must(paint(unpainted(4, 4), 'teal', { denominator: 4, points: [[0, 0], [6, 0], [6, 5], [0, 4]] }));
    // In quarter cells: 6 is half-way between lines, 5 is not. In cells of two, 6 is off too: it lies at three quarters.
    expect(cornersOffGrid(stepped)).toBe(1);
    expect(cornersOffGrid(must(coarsen(stepped, 2)))).toBe(2);
    expect(cornersOffGrid(must(subdivide(stepped, 2)))).toBe(0);
    // Between lines at 2 1/2 across and 1 1/4 down, half-way is 1 1/4 and 5/8: the corners at 1 1/2 across and 1 down are off.
    expect(cornersOffGrid({ ...stepped, grid: { columns: 4, rows: 4, across: [rational(5, 2)], down: [rational(5, 4)] } })).toBe(3);
  });

  it('survives a file in between', () => {
    fc.assert(
      fc.property(uneven, (drawn) => {
        const finer = subdivide(drawn, 2);
        fc.pre(finer.ok);
        const read = must(parseBlock(formatBlock(must(finer))));
        expect(read).toEqual(coarsest(must(finer)));
      }),
      RUNS,
    );
  });
});

it('a cell painted in the middle keeps its cell when columns come at the left', () => {
  const painted = must(paint(unpainted(3, 3), 'teal', cell(1, 1)));
  const { block: more } = must(addCells(painted, 'left'));
  expect(more.patches[0]!.points).toEqual(cell(2, 1).points);
  expect(more.finished.width).toEqual(rational(16));
});

const toNumber = ({ n, d }: { n: number; d: number }): number => n / d;
const inUnits = (drawn: Block, axis: 'columns' | 'rows', length: number): number =>
  (length / toNumber(axis === 'columns' ? drawn.finished.width : drawn.finished.height)) * drawn.grid[axis];

/** Whether a patch has a slanted edge, without which every cut is exact. */
const touchesInside = (drawn: Block, index: number): boolean =>
  drawn.patches[index]!.points.some(([x, y], i, points) => {
    const [u, v] = points[(i + 1) % points.length]!;
    return x !== u && y !== v;
  });

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkBlock } from '../../src/block/whole-check.ts';
import { erase, paint } from '../../src/block/painting.ts';
import { cell, cellsBetween, halfCell, quarterCell } from '../../src/block/patch-shapes.ts';
import { block, covers, must, paintFabric, samplePoints, seen, SEED, stroke, unpainted } from './drawn.ts';

/** A random block and a stroke that fits on it. */
const blockAndStroke = block.chain((drawn) => fc.tuple(fc.constant(drawn), paintFabric, stroke(drawn.grid.columns, drawn.grid.rows)));

describe('painting', () => {
  it('changes the picture inside the stroke to the fabric, and nowhere else', () => {
    fc.assert(
      fc.property(blockAndStroke, ([before, fabric, shape]) => {
        const after = must(paint(before, fabric, shape));
        for (const [x, y] of samplePoints(before)) {
          expect(seen(after, x, y)).toBe(covers(shape.points, shape.denominator, x, y) ? fabric : seen(before, x, y));
        }
      }),
      SEED,
    );
  });

  it('keeps the picture true over many strokes, and leaves a valid block', () => {
    const strokes = fc.array(fc.tuple(paintFabric, stroke(5, 4)), { minLength: 10, maxLength: 30 });
    fc.assert(
      fc.property(strokes, (all) => {
        const start = unpainted(5, 4);
        const end = all.reduce((now, [fabric, shape]) => must(paint(now, fabric, shape)), start);
        expect(checkBlock(end)).toBeNull();
        for (const [x, y] of samplePoints(start)) {
          const last = all.findLast(([, { points, denominator }]) => covers(points, denominator, x, y));
          expect(seen(end, x, y)).toBe(last?.[0] ?? start.ground);
        }
      }),
      { ...SEED, numRuns: 100 },
    );
  });

  it('adds nothing where the fabric shows already', () => {
    const two = must(paint(must(paint(unpainted(4, 4), 'teal', cell(0, 0))), 'teal', cell(1, 0)));
    expect(paint(two, 'teal', cellsBetween(0, 0, 1, 0))).toEqual({ ok: true, value: two });
    expect(must(paint(two, 'teal', halfCell(1, 0, 'top left')))).toBe(two);
    expect(must(paint(two, 'oat', cell(3, 3)))).toBe(two);
  });

  it('drops the patches it covers', () => {
    const cells = [0, 1, 2, 3].reduce((now, column) => must(paint(now, 'teal', cell(column, 0))), unpainted(4, 4));
    expect(cells.patches).toHaveLength(4);
    expect(must(paint(cells, 'rust', cellsBetween(0, 0, 3, 0))).patches).toEqual([
      { fabric: 'rust', points: [[0, 0], [4, 0], [4, 1], [0, 1]] },
    ]);
  });

  it('takes the painted area from a patch it covers in part', () => {
    const strip = must(paint(unpainted(4, 4), 'teal', cellsBetween(0, 0, 3, 0)));
    const cut = must(paint(strip, 'rust', cellsBetween(1, 0, 2, 1)));
    expect(cut.patches.map(({ fabric, points }) => `${fabric} ${[...points].sort().join(' ')}`).sort()).toEqual([
      'rust 1,0 1,2 3,0 3,2',
      'teal 0,0 0,1 1,0 1,1',
      'teal 3,0 3,1 4,0 4,1',
    ]);
  });

  it('leaves a patch underneath whole where taking the area would leave a hole', () => {
    const square = must(paint(unpainted(4, 4), 'teal', cellsBetween(0, 0, 2, 2)));
    expect(must(paint(square, 'rust', cell(1, 1))).patches).toEqual([
      { fabric: 'teal', points: [[0, 0], [3, 0], [3, 3], [0, 3]] },
      { fabric: 'rust', points: [[1, 1], [2, 1], [2, 2], [1, 2]] },
    ]);
  });

  it('leaves a patch underneath whole where the outlines cross between lattice points', () => {
    const slanted = must(paint(unpainted(3, 3), 'teal', { denominator: 1, points: [[0, 0], [3, 1], [0, 3]] }));
    const crossed = must(paint(slanted, 'rust', cell(1, 0)));
    expect(crossed.patches[0]).toEqual(slanted.patches[0]);
    expect(crossed.patches).toHaveLength(2);
  });

  it('refines the lattice for a quarter of a cell, and keeps what was painted in its place', () => {
    const before = must(paint(unpainted(3, 3), 'teal', cell(2, 2)));
    const after = must(paint(before, 'rust', quarterCell(1, 1, 'top')));
    expect(after.denominator).toBe(2);
    expect(after.patches).toEqual([
      { fabric: 'teal', points: [[4, 4], [6, 4], [6, 6], [4, 6]] },
      { fabric: 'rust', points: [[2, 2], [4, 2], [3, 3]] },
    ]);
  });

  it('forgets a lattice that nothing needs any more before it finds the next one too fine', () => {
    const sliver = (denominator: number) => ({ denominator, points: [[0, 0], [1, 0], [0, 1]] as const });
    const fine = must(paint(unpainted(2, 2), 'teal', sliver(251)));
    const covered = must(paint(fine, 'rust', cell(0, 0)));
    expect(must(paint(covered, 'teal', sliver(257))).denominator).toBe(257);
    const beside = { denominator: 257, points: [[300, 0], [301, 0], [300, 1]] } as const;
    expect(paint(fine, 'teal', beside)).toMatchObject({ problem: { code: 'too-fine' } });
  });

  it.each([
    ['a fabric that is not in the tray', 'plum', cell(0, 0), 'unknown-fabric'],
    ['a cell off the block', 'teal', cell(3, 0), 'off-the-grid'],
    ['a line', 'teal', { denominator: 1, points: [[0, 0], [1, 1], [2, 2]] }, 'too-few-points'],
    ['a bow tie', 'teal', { denominator: 1, points: [[0, 0], [1, 1], [1, 0], [0, 1]] }, 'outline-crosses-itself'],
  ] as const)('refuses %s', (_, fabric, shape, code) => {
    expect(paint(unpainted(3, 3), fabric, shape)).toMatchObject({ ok: false, problem: { code } });
  });

  it('refuses the patch after the last that a block may have', () => {
    const patches = Array.from({ length: 5000 }, (_, i) => {
      const [x, y] = [i % 128, 2 * Math.floor(i / 128)];
      return { fabric: 'teal', points: [[x, y], [x + 1, y], [x, y + 1]] as const };
    });
    const full = unpainted(64, 64, { denominator: 2, patches });
    expect(checkBlock(full)).toBeNull();
    expect(paint(full, 'teal', cell(63, 63))).toMatchObject({ problem: { code: 'too-many-patches' } });
  });
});

describe('erasing', () => {
  it('shows the ground there and leaves no patch behind', () => {
    const painted = must(paint(unpainted(3, 3), 'teal', cellsBetween(0, 0, 1, 0)));
    const erased = must(erase(painted, cell(0, 0)));
    expect(erased.patches.map(({ points }) => [...points].sort().join(' '))).toEqual(['1,0 1,1 2,0 2,1']);
    expect(must(erase(erased, cell(1, 0))).patches).toEqual([]);
  });

  it('lays a patch of the ground where what is underneath must stay', () => {
    const square = must(paint(unpainted(3, 3), 'teal', cellsBetween(0, 0, 2, 2)));
    expect(must(erase(square, cell(1, 1))).patches.map((patch) => patch.fabric)).toEqual(['teal', 'oat']);
  });
});

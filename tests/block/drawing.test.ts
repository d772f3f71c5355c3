import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ALONG } from '../../src/block/axis.ts';
import { toDrawing } from '../../src/block/drawing.ts';
import { coarsest, onLattice } from '../../src/block/lattice.ts';
import { MAX_STEPS } from '../../src/block/limits.ts';
import { divide, equals, multiply, rational } from '../../src/measure/rational.ts';
import { must, SEED, unpainted } from './drawn.ts';
import { uneven } from './uneven.ts';

const inches = (width: number, height: number) => ({ width: rational(width), height: rational(height), unit: 'in' as const });

describe('a drawing in true proportion', () => {
  it('has steps equally long across and down, and the size of the block', () => {
    fc.assert(
      fc.property(uneven, (drawn) => {
        const { drawing, step } = must(toDrawing(drawn));
        expect(multiply(rational(drawing.width), step)).toEqual(drawn.finished.width);
        expect(multiply(rational(drawing.height), step)).toEqual(drawn.finished.height);
        expect(Math.max(drawing.width, drawing.height)).toBeLessThanOrEqual(MAX_STEPS);
      }),
      SEED,
    );
  });

  it('has every point where the block has it', () => {
    fc.assert(
      fc.property(uneven, (drawn) => {
        const { drawing, step } = must(toDrawing(drawn));
        const { width, height } = drawn.finished;
        const cell = [divide(width, rational(drawn.grid.columns)), divide(height, rational(drawn.grid.rows))] as const;
        drawn.patches.forEach((patch, i) =>
          patch.points.forEach((point, j) => {
            for (const axis of [0, 1] as const) {
              const inBlock = multiply(rational(point[axis], drawn.denominator), cell[axis]);
              expect(equals(multiply(rational(drawing.patches[i]!.points[j]![axis]), step), inBlock)).toBe(true);
            }
          }),
        );
      }),
      SEED,
    );
  });

  it('has only even coordinates, so that lines at 45° cross on whole steps', () => {
    fc.assert(
      fc.property(uneven, (drawn) => {
        const { drawing } = must(toDrawing(drawn));
        const { width, height, columns, rows, patches } = drawing;
        const values = [width, height, ...columns, ...rows, ...patches.flatMap(({ points }) => points.flat())];
        expect(values.filter((value) => value % 2 !== 0)).toEqual([]);
      }),
      SEED,
    );
  });

  it('has every line of the grid where the block has it', () => {
    fc.assert(
      fc.property(uneven, (drawn) => {
        const { drawing, step } = must(toDrawing(drawn));
        for (const axis of ['columns', 'rows'] as const) {
          const { lines, side } = ALONG[axis];
          const inner = drawn.grid[lines] ?? Array.from({ length: drawn.grid[axis] - 1 }, (_, i) => rational(i + 1));
          const unit = divide(drawn.finished[side], rational(drawn.grid[axis]));
          expect(drawing[axis].map((at) => multiply(rational(at), step))).toEqual(
            [rational(0), ...inner, rational(drawn.grid[axis])].map((at) => multiply(at, unit)),
          );
        }
      }),
      SEED,
    );
  });

  it('is coarse where cells are square, and no finer than cells of 2 1/2 by 3 in. need', () => {
    expect(must(toDrawing(unpainted(4, 4)))).toMatchObject({ step: { n: 3, d: 2 }, drawing: { width: 8, columns: [0, 2, 4, 6, 8] } });
    const long = must(toDrawing(unpainted(4, 4, { finished: inches(10, 12) })));
    expect(long.step).toEqual({ n: 1, d: 4 });
    expect(long.drawing).toMatchObject({ width: 40, height: 48, columns: [0, 10, 20, 30, 40], rows: [0, 12, 24, 36, 48] });
  });

  it('does not depend on how fine the lattice happens to be', () => {
    fc.assert(
      fc.property(uneven, fc.integer({ min: 2, max: 9 }), (drawn, times) => {
        const fine = must(onLattice(drawn, drawn.denominator * times));
        expect(toDrawing(fine)).toEqual(toDrawing(drawn));
        expect(coarsest(fine)).toEqual(coarsest(drawn));
      }),
      SEED,
    );
  });

  it('is refused in a sentence where its sides share no step that can be held', () => {
    const awkward = unpainted(4, 4, { finished: { width: rational(12), height: rational(10_007, 997), unit: 'in' } });
    const width = rational(9_007_199_254_740_881, 9_007_199_254_740_847);
    const beyond = unpainted(7, 11, { finished: { width, height: rational(1), unit: 'in' } });
    for (const drawn of [awkward, beyond]) expect(toDrawing(drawn)).toMatchObject({ ok: false, problem: { code: 'too-fine' } });
  });
});

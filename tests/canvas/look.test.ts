import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Block } from '../../src/block/block.ts';
import { inSight, moved, nearer, NEAREST, viewThrough, WHOLE, type Look } from '../../src/canvas/look.ts';
import { fitView, gridPointAt, pixelOf, seenPart, type View } from '../../src/canvas/view.ts';
import { rational } from '../../src/measure/rational.ts';

const blockOf = (width: number, height: number, columns: number, rows: number): Pick<Block, 'finished' | 'grid'> => ({
  finished: { width: rational(width), height: rational(height), unit: 'in' },
  grid: { columns, rows },
});

const fits = fc
  .record({
    width: fc.integer({ min: 1, max: 60 }),
    height: fc.integer({ min: 1, max: 60 }),
    columns: fc.integer({ min: 1, max: 64 }),
    rows: fc.integer({ min: 1, max: 64 }),
    wide: fc.integer({ min: 250, max: 2000 }),
    high: fc.integer({ min: 250, max: 1500 }),
  })
  .map(({ width, height, columns, rows, wide, high }): View =>
    fitView(blockOf(width, height, columns, rows), { width: wide, height: high }, { left: 40, top: 30, free: 14 }))
  // A block far longer than wide has no width to speak of on a small table.
  .filter(({ width, height }) => width > 40 && height > 40);

const share = fc.double({ min: 0, max: 1, noNaN: true });
const seed = { seed: 20261125, numRuns: 300 };

/** Deeds with the glass, as a hand does them one after the other. */
const deed = fc.oneof(
  fc.record({ times: fc.double({ min: 0.3, max: 4, noNaN: true }), px: share, py: share }),
  fc.record({ dx: fc.integer({ min: -900, max: 900 }), dy: fc.integer({ min: -900, max: 900 }) }),
);
type Deed = typeof deed extends fc.Arbitrary<infer D> ? D : never;

function done(fit: View, look: Look, what: Deed): Look {
  if ('dx' in what) return moved(fit, look, what.dx, what.dy);
  const { left, top, right, bottom } = fit.window;
  return nearer(fit, look, what.times, [left + what.px * (right - left), top + what.py * (bottom - top)]);
}

describe('the glass over the table', () => {
  it('shows the whole block as it fits, to begin with', () => {
    const fit = fitView(blockOf(12, 12, 3, 3), { width: 500, height: 500 }, { left: 40, top: 30, free: 14 });
    expect(viewThrough(fit, WHOLE)).toBe(fit);
  });

  it('leaves what lies under the pointer where it is, wherever the block need not be pushed back into its window', () => {
    fc.assert(
      fc.property(fits, share, share, fc.double({ min: 2, max: 12, noNaN: true }), (fit, u, v, times) => {
        const near = nearer(fit, WHOLE, 6, pixelOf(fit, fit.columns / 2, fit.rows / 2));
        const view = viewThrough(fit, near);
        const part = seenPart(view);
        const pointer = [part.left + u * (part.right - part.left), part.top + v * (part.bottom - part.top)] as const;
        const nearest = viewThrough(fit, nearer(fit, near, times, pointer));
        const before = gridPointAt(view, ...pointer);
        const [x, y] = pixelOf(nearest, ...before);
        // Views lie on whole pixels, and so does their size.
        const slack = 1 + times;
        if (nearest.left < nearest.window.left && nearest.left + nearest.width > nearest.window.right) expect(Math.abs(x - pointer[0])).toBeLessThan(slack);
        if (nearest.top < nearest.window.top && nearest.top + nearest.height > nearest.window.bottom) expect(Math.abs(y - pointer[1])).toBeLessThan(slack);
      }),
      seed,
    );
  });

  it('never loses the block, whatever is done: it covers its window, or all of it is in it', () => {
    fc.assert(
      fc.property(fits, fc.array(deed, { maxLength: 12 }), (fit, deeds) => {
        const look = deeds.reduce((now, what) => done(fit, now, what), WHOLE);
        const view = viewThrough(fit, look);
        const { window } = view;
        expect(look.zoom).toBeGreaterThanOrEqual(1);
        expect(look.zoom).toBeLessThanOrEqual(NEAREST);
        for (const [from, size, low, high] of [
          [view.left, view.width, window.left, window.right],
          [view.top, view.height, window.top, window.bottom],
        ] as const) {
          const within = from >= low - 1 && from + size <= high + 1;
          const covers = from <= low + 1 && from + size >= high - 16;
          expect(within || covers, `${from} + ${size} in ${low} to ${high}`).toBe(true);
        }
      }),
      seed,
    );
  });

  it('brings any cell into sight, and moves no further once it is there', () => {
    fc.assert(
      fc.property(fits, share, share, fc.array(deed, { maxLength: 6 }), (fit, u, v, deeds) => {
        const look = deeds.reduce((now, what) => done(fit, now, what), nearer(fit, WHOLE, 4, [200, 200]));
        const [column, row] = [Math.floor(u * (fit.columns - 0.001)), Math.floor(v * (fit.rows - 0.001))];
        const cell = { left: column / fit.columns, top: row / fit.rows, right: (column + 1) / fit.columns, bottom: (row + 1) / fit.rows };
        const seen = inSight(fit, look, cell);
        const view = viewThrough(fit, seen);
        const [left, top] = pixelOf(view, column, row);
        const [right, bottom] = pixelOf(view, column + 1, row + 1);
        const { window } = view;
        if (right - left < window.right - window.left - 30) expect(left >= window.left - 1 && right <= window.right + 1).toBe(true);
        if (bottom - top < window.bottom - window.top - 30) expect(top >= window.top - 1 && bottom <= window.bottom + 1).toBe(true);
        const again = viewThrough(fit, inSight(fit, seen, cell));
        expect(Math.abs(again.left - view.left) + Math.abs(again.top - view.top)).toBeLessThanOrEqual(2);
      }),
      seed,
    );
  });

  it('shows a cell of 64 beside each other at least 32 times as large', () => {
    const fit = fitView(blockOf(64, 64, 64, 64), { width: 360, height: 400 }, { left: 40, top: 30, free: 14 });
    const look = Array.from({ length: 30 }).reduce<Look>((now) => nearer(fit, now, 1.5, [200, 200]), WHOLE);
    expect(viewThrough(fit, look).width / 64).toBeGreaterThanOrEqual((32 * fit.width) / 64);
  });
});

import { describe, expect, test, vi } from 'vitest';
import { createPaintAhead } from '../../src/app/paint-ahead.ts';
import { blank } from '../../src/block/blank.ts';
import type { Block } from '../../src/block/block.ts';
import { paint, type Stroke } from '../../src/block/painting.ts';
import { halfCell, quarterCell } from '../../src/block/patch-shapes.ts';
import { rational } from '../../src/measure/rational.ts';

const fabrics = [
  { id: 'oat', name: 'Oat', color: '#f3ede0' },
  { id: 'tide', name: 'Tide', color: '#2f5d62' },
];

function empty(): Block {
  const finished = { width: rational(6), height: rational(6), unit: 'in' } as const;
  const made = blank({ name: 'Mole', finished, grid: { columns: 6, rows: 6 }, fabrics });
  if (!made.ok) throw new Error(made.problem.sentence);
  return made.value;
}

const STROKES: readonly Stroke[] = [
  halfCell(0, 0, 'top left'),
  quarterCell(1, 0, 'left'),
  halfCell(2, 0, 'top right'),
  halfCell(0, 0, 'bottom right'),
];

function atOnce(block: Block): Block {
  return STROKES.reduce((now, stroke) => {
    const next = paint(now, 'tide', stroke);
    if (!next.ok) throw new Error(next.problem.sentence);
    return next.value;
  }, block);
}

describe('strokes painted ahead', () => {
  test('give the drawing that they give painted at once, whether there was time before the hand lifted or not', () => {
    vi.useFakeTimers();
    const block = empty();
    for (const pauses of [0, 1, 5]) {
      const ahead = createPaintAhead();
      for (const stroke of STROKES) {
        ahead.add(block, 'tide', [stroke]);
        for (let i = 0; i < pauses; i++) vi.advanceTimersToNextTimer();
      }
      expect(ahead.finish(block, 'tide', STROKES)).toEqual({ ok: true, value: atOnce(block) });
    }
    vi.useRealTimers();
  });

  test('are forgotten where they were dropped, or where other strokes are laid in the end', () => {
    const block = empty();
    const ahead = createPaintAhead();
    ahead.add(block, 'tide', [halfCell(5, 5, 'top left')]);
    expect(ahead.finish(block, 'tide', STROKES)).toEqual({ ok: true, value: atOnce(block) });
    ahead.add(block, 'tide', [halfCell(5, 5, 'top left')]);
    ahead.drop();
    expect(ahead.finish(block, 'tide', [])).toEqual({ ok: true, value: block });
  });

  test('say what is wrong with one of them', () => {
    const ahead = createPaintAhead();
    const block = empty();
    const beside: Stroke = { denominator: 1, points: [[0, 0], [9, 0], [0, 1]] };
    ahead.add(block, 'tide', [beside]);
    expect(ahead.finish(block, 'tide', [beside, STROKES[0]!])).toMatchObject({ ok: false, problem: { code: 'off-the-grid' } });
  });
});

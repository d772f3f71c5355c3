import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cellsOf } from '../../src/block/cells.ts';
import type { Block } from '../../src/block/block.ts';
import { keyShift, snapShift, type Box } from '../../src/canvas/carrying.ts';
import { NOTHING_CHOSEN, type Chosen } from '../../src/canvas/draw-selection.ts';
import type { Deeds } from '../../src/canvas/hand/bench.ts';
import { SYMMETRIES } from '../../src/block/symmetry.ts';
import { createHand } from '../../src/canvas/hand/hand.ts';
import type { Handling } from '../../src/canvas/hand/selecting.ts';
import { fitView, pixelOf } from '../../src/canvas/view.ts';
import { rational } from '../../src/measure/rational.ts';
import { unpainted } from '../block/drawn.ts';

const EVEN = cellsOf({ columns: 6, rows: 6 });
/** A half-inch row and column round a block of 6 by 6 inches. */
const FRAMED = cellsOf({ columns: 6, rows: 6, across: [rational(1, 2), rational(11, 2)], down: [rational(1, 2), rational(11, 2)] });
const box = (left: number, top: number, right: number, bottom: number, denominator = 1): Box => ({ left, top, right, bottom, denominator });
const inUnits = ({ dx, dy, denominator }: ReturnType<typeof snapShift>) => [dx / denominator, dy / denominator];

describe('patches that are carried', () => {
  test('come to lie on the grid, or half way between its lines', () => {
    expect(inUnits(snapShift(EVEN, box(0, 0, 1, 1), [2.1, 0.4]))).toEqual([2, 0.5]);
    expect(inUnits(snapShift(EVEN, box(0, 0, 1, 1), [0.2, -0.2]))).toEqual([0, 0]);
    // A cell of five units in a frame of half units: an edge on a line, or half way across the wide cell.
    expect(inUnits(snapShift(FRAMED, box(0, 0, 1, 1, 2), [0.4, 5.45]))).toEqual([0.5, 5.5]);
  });

  test('never lie between, wherever they came from', () => {
    const way = fc.double({ min: -5, max: 5, noNaN: true });
    fc.assert(
      fc.property(way, way, fc.integer({ min: 0, max: 9 }), fc.integer({ min: 1, max: 5 }), (x, y, at, wide) => {
        const lain = box(at, at, at + wide, at + wide, 3);
        const { dx, dy, denominator } = snapShift(EVEN, lain, [x, y]);
        for (const by of [dx, dy]) {
          const halves = [at, at + wide].map((edge) => 2 * ((edge * denominator) / 3 + by));
          expect(by === 0 || halves.some((edge) => edge % denominator === 0)).toBe(true);
        }
      }),
      { seed: 6 },
    );
  });

  test('go by keys cell by cell or by half a cell, and stop at the edge of the block', () => {
    expect(inUnits(keyShift(EVEN, box(1, 1, 2, 2), 1, 0, false))).toEqual([1, 0]);
    expect(inUnits(keyShift(EVEN, box(1, 1, 2, 2), 0, -1, true))).toEqual([0, -0.5]);
    expect(inUnits(keyShift(EVEN, box(9, 0, 11, 2, 2), 1, -1, false))).toEqual([0.5, 0]);
    expect(inUnits(keyShift(EVEN, box(1, 1, 2, 2), 12, 0, false))).toEqual([4, 0]);
    expect(inUnits(keyShift(EVEN, box(1, 1, 2, 2), -12, 0, false))).toEqual([-1, 0]);
    expect(inUnits(keyShift(FRAMED, box(0, 0, 1, 1, 2), 1, 0, false))).toEqual([0.5, 0]);
    expect(inUnits(keyShift(FRAMED, box(1, 0, 2, 1, 2), -1, 0, false))).toEqual([-0.5, 0]);
    expect(inUnits(keyShift(FRAMED, box(1, 0, 2, 1, 2), 1, 0, true))).toEqual([2.5, 0]);
  });
});

describe('the hand that chooses', () => {
  const block: Block = unpainted(6, 6, { patches: [{ fabric: 'teal', points: [[1, 1], [2, 1], [2, 2], [1, 2]] }] });
  const view = fitView(block, { width: 640, height: 640 }, { left: 20, top: 20, free: 20 });
  const TEAL: Chosen = { ...NOTHING_CHOSEN, indices: new Set([0]), box: box(1, 1, 2, 2) };

  /** @returns a hand that holds the tool, and what it asked to be done */
  function choosing(chosen: Chosen) {
    const asked: Handling[] = [];
    const nothing = (): void => undefined;
    const deeds: Deeds = {
      lay: () => expect.fail('it lays nothing'),
      foresee: nothing, fill: nothing, divide: nothing, keepWhole: nothing, pin: nothing, takeUpSymmetry: nothing,
      takeUpFabric: nothing, takeUpTool: nothing, point: nothing, say: nothing, sweep: nothing, redraw: nothing,
      handle: (handling) => void asked.push(handling),
    };
    const hand = createHand(() => ({ block, view, tool: 'choose', fabric: 'teal', symmetry: SYMMETRIES[1]!, chosen }), deeds);
    const drag = (from: readonly [number, number], to: readonly [number, number], shifted = false): void => {
      hand.pointerDown(...pixelOf(view, ...from), false, shifted);
      hand.pointerMove(...pixelOf(view, ...to));
      hand.pointerUp();
    };
    return { asked, hand, drag };
  }

  test('takes the patch that is clicked, with Shift beside the others', () => {
    const { asked, drag } = choosing(NOTHING_CHOSEN);
    drag([1.5, 1.5], [1.5, 1.5]);
    drag([1.5, 1.5], [1.51, 1.5], true);
    expect(asked.map((each) => each.do)).toEqual(['take', 'take']);
    expect(asked.map((each) => 'adding' in each && each.adding)).toEqual([false, true]);
  });

  test('drags a frame from anywhere else, and carries what is chosen already', () => {
    const { asked, drag } = choosing(TEAL);
    drag([3, 3], [0.5, 0.5]);
    drag([1.5, 1.5], [3.4, 1.6]);
    drag([1.5, 1.5], [1.6, 1.6]);
    expect(asked.map((each) => each.do)).toEqual(['frame', 'move']);
    expect(asked[1]).toMatchObject({ by: { dx: 4, dy: 0, denominator: 2 } });
  });

  test('carries by arrow keys what a pointer has chosen; after Space they move the cursor, until Enter', () => {
    const { asked, drag, hand } = choosing(TEAL);
    drag([1.5, 1.5], [1.5, 1.5]);
    hand.key({ verb: 'move', dx: 1, dy: 0 });
    hand.key({ verb: 'turn', by: 1 });
    hand.key({ verb: 'use' });
    hand.key({ verb: 'move', dx: 1, dy: 0 });
    hand.key({ verb: 'close' });
    hand.key({ verb: 'move', dx: 0, dy: 1, half: true });
    hand.key({ verb: 'erase' });
    hand.key({ verb: 'cancel' });
    expect(asked.map((each) => each.do)).toEqual(['take', 'move', 'turn', 'take', 'move', 'delete', 'none']);
    expect(asked[4]).toMatchObject({ by: { dx: 0, dy: 1, denominator: 2 } });
  });

  test('drops a drag on Escape, and lets go of nothing by it', () => {
    const { asked, hand } = choosing(TEAL);
    hand.pointerDown(...pixelOf(view, 1.5, 1.5), false);
    hand.pointerMove(...pixelOf(view, 4, 4));
    expect(hand.marks().selection?.carried).toEqual([2.5, 2.5]);
    hand.key({ verb: 'cancel' });
    hand.pointerUp();
    expect(asked).toEqual([]);
    expect(hand.marks().selection?.carried).toBeNull();
  });
});

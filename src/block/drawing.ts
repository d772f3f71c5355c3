import type { Drawing, Lattice } from '../geometry/patchwork/drawing.ts';
import { good, type Result } from '../measure/problem.ts';
import { commonMeasure, divide, rational, type Rational } from '../measure/rational.ts';
import type { Block } from './block.ts';
import { coarsest } from './lattice.ts';
import { MAX_STEPS } from './limits.ts';
import { noCommonStep, refused } from './problems.ts';

/** A drawing in true proportion and the length of one of its steps, in the block's unit. */
export interface TrueDrawing {
  readonly drawing: Drawing;
  readonly step: Rational;
}

/**
 * Puts a block on a lattice whose steps are equally long across and down. The step is half the largest common
 * measure of the block's own steps across and down, so that drawn diagonals at 45° cross on whole steps.
 * @returns the drawing and its step; a problem where a side would have more than MAX_STEPS steps
 */
export function toDrawing(block: Block): Result<TrueDrawing> {
  const { columns, rows } = block.grid;
  const { width, height, unit } = block.finished;
  const scale = latticeScale(block);
  if (scale === null) return refused(noCommonStep(width, height, unit));
  const { denominator, patches, seams, pins } = coarsest(block);
  const { across, down, step } = scale;
  const place = ([x, y]: Lattice): Lattice => [x * across, y * down];
  return good({
    drawing: {
      width: columns * denominator * across,
      height: rows * denominator * down,
      columns: Array.from({ length: columns + 1 }, (_, i) => i * denominator * across),
      rows: Array.from({ length: rows + 1 }, (_, i) => i * denominator * down),
      ground: block.ground,
      patches: patches.map((patch) => ({ ...patch, points: patch.points.map(place) })),
      seams: seams.map(([from, to]) => [place(from), place(to)] as const),
      ...(pins && { pins: pins.map(({ pin, from, to }) => ({ pin, from: place(from), to: place(to) })) }),
    },
    step,
  });
}

/** @returns how many even steps one step of the block's coarsest lattice is across and down; null where they are too many */
function latticeScale(block: Block): { readonly across: number; readonly down: number; readonly step: Rational } | null {
  const { denominator } = coarsest(block);
  const [columns, rows] = [block.grid.columns * denominator, block.grid.rows * denominator];
  try {
    const cellWidth = divide(block.finished.width, rational(columns));
    const cellHeight = divide(block.finished.height, rational(rows));
    const step = divide(commonMeasure(cellWidth, cellHeight), rational(2));
    const [across, down] = [divide(cellWidth, step).n, divide(cellHeight, step).n];
    return Math.max(columns * across, rows * down) <= MAX_STEPS ? { across, down, step } : null;
  } catch (error) {
    // The exact numbers say by RangeError that they leave the safe integers.
    if (error instanceof RangeError) return null;
    throw error;
  }
}

import type { Drawing, Lattice } from '../geometry/patchwork/drawing.ts';
import { good, type Result } from '../measure/problem.ts';
import { commonMeasure, divide, rational, type Rational } from '../measure/rational.ts';
import type { Block, PressedSeam, UnitMethod } from './block.ts';
import { cellsOf } from './cells.ts';
import { coarsest, onLattice } from './lattice.ts';
import { MAX_STEPS } from './limits.ts';
import { noCommonStep, refused } from './problems.ts';

/** A drawing in true proportion and the length of one of its steps, in the block's unit. */
export interface TrueDrawing {
  readonly drawing: Drawing;
  readonly step: Rational;
  /** The block's unit methods, their corners in the drawing's steps. */
  readonly unitMethods: readonly UnitMethod[];
  /** The block's pressed seams, their ends in the drawing's steps. */
  readonly pressedSeams: readonly PressedSeam[];
}

/**
 * Puts a block on a lattice whose steps are equally long across and down. The step is half the largest common
 * measure of the block's own steps across and down, so that drawn diagonals at 45° cross on whole steps.
 * @returns the drawing and its step; a problem where a side would have more than MAX_STEPS steps
 */
export function toDrawing(block: Block): Result<TrueDrawing> {
  const { width, height, unit } = block.finished;
  const cells = cellsOf(block.grid);
  const fine = onLattice(coarsest(block), cells.denominator);
  if (!fine.ok) return fine;
  const scale = latticeScale(fine.value);
  if (scale === null) return refused(noCommonStep(width, height, unit));
  const { grid, denominator, patches, seams, pins, unitMethods = [], pressedSeams = [] } = fine.value;
  const { across, down, step } = scale;
  const families = new Set(block.fabrics.flatMap(({ id, scraps }) => (scraps ? [id] : [])));
  const clothOf = clothsOf(block);
  const place = ([x, y]: Lattice): Lattice => [x * across, y * down];
  const line = (by: number) => (at: number): number => at * (denominator / cells.denominator) * by;
  return good({
    drawing: {
      width: grid.columns * denominator * across,
      height: grid.rows * denominator * down,
      columns: cells.across.map(line(across)),
      rows: cells.down.map(line(down)),
      ground: clothOf(block.ground).fabric,
      ...(clothOf(block.ground).role > 0 && { groundRole: clothOf(block.ground).role }),
      // Each patch of a family of scraps is of a print of its own.
      patches: patches.map(({ photoAt: _, print: __, ...patch }) => {
        const { fabric, role } = clothOf(patch.fabric);
        return { ...patch, fabric, points: patch.points.map(place), ...(families.has(fabric) && { apart: true }), ...(role > 0 && { role }) };
      }),
      seams: seams.map(([from, to]) => [place(from), place(to)] as const),
      ...(pins && { pins: pins.map(({ pin, from, to }) => ({ pin, from: place(from), to: place(to) })) }),
    },
    step,
    unitMethods: unitMethods.map((unit) => ({ ...unit, from: place(unit.from), to: place(unit.to) })),
    pressedSeams: pressedSeams.map((seam) => ({ ...seam, from: place(seam.from), to: place(seam.to) })),
  });
}

/** @returns for a fabric that it is cut from, and a number that keeps its areas apart from others of that cloth, 0 for its own */
function clothsOf({ fabrics, fuses }: Block): (id: string) => { readonly fabric: string; readonly role: number } {
  const cloths = new Map(fabrics.map(({ id, same }, i) => [id, { fabric: same ?? id, role: same === undefined || fuses ? 0 : i + 1 }]));
  return (id) => cloths.get(id) ?? { fabric: id, role: 0 };
}

/** @returns how many even steps one step of the block's lattice is across and down; null where they are too many */
function latticeScale({ grid, finished, denominator }: Block): { readonly across: number; readonly down: number; readonly step: Rational } | null {
  const [columns, rows] = [grid.columns * denominator, grid.rows * denominator];
  try {
    const stepWidth = divide(finished.width, rational(columns));
    const stepHeight = divide(finished.height, rational(rows));
    const step = divide(commonMeasure(stepWidth, stepHeight), rational(2));
    const [across, down] = [divide(stepWidth, step).n, divide(stepHeight, step).n];
    return Math.max(columns * across, rows * down) <= MAX_STEPS ? { across, down, step } : null;
  } catch (error) {
    // The exact numbers say by RangeError that they leave the safe integers.
    if (error instanceof RangeError) return null;
    throw error;
  }
}

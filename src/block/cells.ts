import { paneIndex } from '../geometry/patchwork/pane-index.ts';
import type { Rational } from '../measure/rational.ts';
import type { Grid } from './block.ts';
import { leastCommonMultiple } from './lattice.ts';

/** The cells of a grid by the lines between them, in whole steps of 1/denominator of a grid unit, both edges of the block included. */
export interface Cells {
  readonly denominator: number;
  readonly across: readonly number[];
  readonly down: readonly number[];
}

const known = new WeakMap<Grid, Cells>();

/** @returns the cells of a grid; the same object for the same grid */
export function cellsOf(grid: Grid): Cells {
  let cells = known.get(grid);
  if (!cells) {
    const { columns, rows, across, down } = grid;
    const denominator = [...(across ?? []), ...(down ?? [])].reduce((common, { d }) => leastCommonMultiple(common, d), 1);
    cells = { denominator, across: steps(across, columns, denominator), down: steps(down, rows, denominator) };
    known.set(grid, cells);
  }
  return cells;
}

function steps(lines: readonly Rational[] | undefined, units: number, denominator: number): readonly number[] {
  if (!lines) return Array.from({ length: units + 1 }, (_, i) => i * denominator);
  return [0, ...lines.map(({ n, d }) => (n * denominator) / d), units * denominator];
}

/** @returns how many cells a grid has from left to right and from top to bottom */
export function countOf(grid: Grid): { readonly columns: number; readonly rows: number } {
  return { columns: (grid.across?.length ?? grid.columns - 1) + 1, rows: (grid.down?.length ?? grid.rows - 1) + 1 };
}

/** @returns the cell between two lines that holds a place, in grid units; −1 before the first line, the number of cells from the last on */
export function indexOf(lines: readonly number[], denominator: number, at: number): number {
  const steps = at * denominator;
  return steps < lines[0]! ? -1 : paneIndex(lines, steps);
}

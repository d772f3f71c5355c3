import { indexOf, type Cells } from '../block/cells.ts';

/** A cell of the grid: column, row. */
export type Cell = readonly [number, number];

/** @returns the cell under a place given in grid units; beside the block, its column or row is −1 or their number */
export const cellUnder = ({ across, down, denominator }: Cells, [x, y]: readonly [number, number]): Cell => [
  indexOf(across, denominator, x),
  indexOf(down, denominator, y),
];

/** @returns the cell under a place given in grid units, or the nearest one on the block */
export function nearestCellTo(cells: Cells, at: readonly [number, number]): Cell {
  const [column, row] = cellUnder(cells, at);
  return [Math.min(cells.across.length - 2, Math.max(0, column)), Math.min(cells.down.length - 2, Math.max(0, row))];
}

/**
 * @returns the cells of the block that a straight stroke between two places passes, in order, so that a fast hand skips none.
 * Places in grid units. For pointing only.
 */
export function cellsPassed(cells: Cells, from: readonly [number, number], to: readonly [number, number]): Cell[] {
  const [wide, high] = [cells.across.length - 1, cells.down.length - 1];
  const last = cellUnder(cells, to);
  let [column, row] = cellUnder(cells, from);
  const passed: Cell[] = [];
  const pass = (): void => {
    if (column >= 0 && row >= 0 && column < wide && row < high) passed.push([column, row]);
  };
  /** How far along the stroke the next line is met, as a share of it. */
  const until = (lines: readonly number[], at: number, step: number, start: number, end: number): number => {
    const line = lines[step > 0 ? at + 1 : at];
    return line === undefined ? Infinity : (line / cells.denominator - start) / (end - start);
  };
  const stepX = Math.sign(last[0] - column);
  const stepY = Math.sign(last[1] - row);
  pass();
  while (column !== last[0] || row !== last[1]) {
    const toColumn = column === last[0] ? Infinity : until(cells.across, column, stepX, from[0], to[0]);
    const toRow = row === last[1] ? Infinity : until(cells.down, row, stepY, from[1], to[1]);
    if (row === last[1] || (column !== last[0] && toColumn < toRow)) column += stepX;
    else row += stepY;
    pass();
  }
  return passed;
}

import type { Stroke } from './painting.ts';

/*
 * The shapes of a stroke. A cell is named by its column and row, counted from 0 at the top-left corner.
 */

/** A cell's corner; a half-cell triangle has its right angle there. */
export type Corner = 'top left' | 'top right' | 'bottom right' | 'bottom left';

/** A cell's side; a quarter-cell triangle has its long side there and its tip at the cell's centre. */
export type Side = 'top' | 'right' | 'bottom' | 'left';

/** Corners clockwise from the top left, in half cells. */
const CORNERS = [[0, 0], [2, 0], [2, 2], [0, 2]] as const;
const CORNER_NAMES: readonly Corner[] = ['top left', 'top right', 'bottom right', 'bottom left'];
const SIDE_NAMES: readonly Side[] = ['top', 'right', 'bottom', 'left'];

const inCell = (column: number, row: number, points: readonly (readonly [number, number])[]): Stroke => ({
  denominator: 2,
  points: points.map(([x, y]) => [2 * column + x, 2 * row + y] as const),
});

/** @returns the rectangle of cells between two cells, both included, whichever comes first */
export function cellsBetween(column: number, row: number, otherColumn: number, otherRow: number): Stroke {
  const [left, right] = [Math.min(column, otherColumn), Math.max(column, otherColumn) + 1];
  const [top, bottom] = [Math.min(row, otherRow), Math.max(row, otherRow) + 1];
  return { denominator: 1, points: [[left, top], [right, top], [right, bottom], [left, bottom]] };
}

/** @returns a whole cell */
export const cell = (column: number, row: number): Stroke => cellsBetween(column, row, column, row);

/** @returns the half of a cell that holds one of its corners, cut off by the diagonal between that corner's neighbours */
export function halfCell(column: number, row: number, corner: Corner): Stroke {
  const at = CORNER_NAMES.indexOf(corner);
  const { points } = inCell(column, row, [CORNERS[(at + 3) % 4]!, CORNERS[at]!, CORNERS[(at + 1) % 4]!]);
  return { denominator: 1, points: points.map(([x, y]) => [x / 2, y / 2] as const) };
}

/** @returns the quarter of a cell between one of its sides and its centre */
export function quarterCell(column: number, row: number, side: Side): Stroke {
  const at = SIDE_NAMES.indexOf(side);
  return inCell(column, row, [CORNERS[at]!, CORNERS[(at + 1) % 4]!, [1, 1]]);
}

/**
 * @param x across and y down from the cell's top-left corner, in cells, 0 to 1; a pointer's place, so a double will do
 * @returns the corner nearest to it
 */
export function nearestCorner(x: number, y: number): Corner {
  if (y < 0.5) return x < 0.5 ? 'top left' : 'top right';
  return x < 0.5 ? 'bottom left' : 'bottom right';
}

/**
 * @param x across and y down from the cell's top-left corner, in cells, 0 to 1; a pointer's place, so a double will do
 * @returns the side whose quarter-cell triangle holds it
 */
export function nearestSide(x: number, y: number): Side {
  const aboveFalling = y < x;
  const aboveRising = y < 1 - x;
  if (aboveFalling) return aboveRising ? 'top' : 'right';
  return aboveRising ? 'left' : 'bottom';
}

import type { LatticePoint } from './block.ts';
import type { Cells } from './cells.ts';
import type { Stroke } from './painting.ts';

/*
 * The shapes of a stroke. A cell is named by its column and row, counted from 0 at the top-left corner.
 */

/** A cell's corner; a half-cell triangle has its right angle there. */
export type Corner = 'top left' | 'top right' | 'bottom right' | 'bottom left';

/** A cell's side; a quarter-cell triangle has its long side there and its tip at the cell's centre. */
export type Side = 'top' | 'right' | 'bottom' | 'left';

/** Corners clockwise from the top left: whether right, whether below. */
const CORNERS = [[0, 0], [1, 0], [1, 1], [0, 1]] as const;
const CORNER_NAMES: readonly Corner[] = ['top left', 'top right', 'bottom right', 'bottom left'];
const SIDE_NAMES: readonly Side[] = ['top', 'right', 'bottom', 'left'];

/** A cell by its column and row. */
type Cell = readonly [number, number];

/** Cells of one grid unit each, wherever they are. */
const EVEN: (column: number, row: number) => Box = (column, row) => ({ denominator: 1, x: [column, column + 1], y: [row, row + 1] });

/** Where a cell lies: its lines in steps of 1/denominator of a grid unit. */
interface Box {
  readonly denominator: number;
  readonly x: readonly [number, number];
  readonly y: readonly [number, number];
}

function boxOf(column: number, row: number, cells: Cells | undefined): Box {
  if (!cells) return EVEN(column, row);
  const { denominator, across, down } = cells;
  return { denominator, x: [across[column]!, across[column + 1]!], y: [down[row]!, down[row + 1]!] };
}

function boxBetween([column, row]: Cell, [otherColumn, otherRow]: Cell, cells: Cells | undefined): Box {
  const first = boxOf(Math.min(column, otherColumn), Math.min(row, otherRow), cells);
  const last = boxOf(Math.max(column, otherColumn), Math.max(row, otherRow), cells);
  return { denominator: first.denominator, x: [first.x[0], last.x[1]], y: [first.y[0], last.y[1]] };
}

const doubled = ([x, y]: LatticePoint): LatticePoint => [x * 2, y * 2];

const corner = ({ x, y }: Box, at: number): LatticePoint => {
  const [right, below] = CORNERS[at % 4]!;
  return [x[right], y[below]];
};

/**
 * @param cells where not every cell is a grid unit wide and high
 * @returns the rectangle of cells between two cells, both included, whichever comes first
 */
export function cellsBetween(column: number, row: number, otherColumn: number, otherRow: number, cells?: Cells): Stroke {
  const box = boxBetween([column, row], [otherColumn, otherRow], cells);
  return { denominator: box.denominator, points: [0, 1, 2, 3].map((at) => corner(box, at)) };
}

/** @returns the half of the rectangle between two cells that holds one of its corners, cut off by a diagonal */
export const halfBetween = (one: Cell, other: Cell, held: Corner, cells?: Cells): Stroke => halfOf(boxBetween(one, other, cells), held);

/** @returns the peak in the rectangle between two cells: its base is one side, its tip the middle of the opposite one */
export function peakBetween(one: Cell, other: Cell, base: Side, cells?: Cells): Stroke {
  const box = boxBetween(one, other, cells);
  const at = SIDE_NAMES.indexOf(base);
  const [a, b] = [corner(box, at + 2), corner(box, at + 3)];
  return { denominator: box.denominator * 2, points: [doubled(corner(box, at)), doubled(corner(box, at + 1)), [a[0] + b[0], a[1] + b[1]]] };
}

/** @returns a whole cell */
export const cell = (column: number, row: number, cells?: Cells): Stroke => cellsBetween(column, row, column, row, cells);

/** @returns the half of a cell that holds one of its corners, cut off by the diagonal between that corner's neighbours */
export function halfCell(column: number, row: number, held: Corner, cells?: Cells): Stroke {
  return halfOf(boxOf(column, row, cells), held);
}

function halfOf(box: Box, held: Corner): Stroke {
  const at = CORNER_NAMES.indexOf(held);
  return { denominator: box.denominator, points: [corner(box, at + 3), corner(box, at), corner(box, at + 1)] };
}

/** @returns the quarter of a cell between one of its sides and its centre */
export function quarterCell(column: number, row: number, side: Side, cells?: Cells): Stroke {
  const box = boxOf(column, row, cells);
  const at = SIDE_NAMES.indexOf(side);
  const centre: LatticePoint = [box.x[0] + box.x[1], box.y[0] + box.y[1]];
  return { denominator: box.denominator * 2, points: [doubled(corner(box, at)), doubled(corner(box, at + 1)), centre] };
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

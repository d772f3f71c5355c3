import type { Block } from '../block/block.ts';
import { cellsOf, type Cells } from '../block/cells.ts';
import { toNumber } from '../measure/rational.ts';
import { cellUnder, nearestCellTo, type Cell } from './stride.ts';

/** A rectangle on the canvas, in CSS pixels. */
export interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** Where the block lies on the canvas, in CSS pixels; parts of it may lie beyond the window. For ink and for pointing only. */
export interface View {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
  /** Grid units across and down. */
  readonly columns: number;
  readonly rows: number;
  readonly cells: Cells;
  /** The part of the canvas in which the block is seen; the tape lies at its left and above it. */
  readonly window: Box;
}

/** A cell, and where in it the pointer is: u, v from 0 at its top-left corner to 1 at its bottom-right one. */
export interface CellPlace {
  readonly column: number;
  readonly row: number;
  readonly u: number;
  readonly v: number;
}

/** Room that stays free round the block, in CSS pixels: at the left and the top for the tape and its numbers. */
export interface Margins {
  readonly left: number;
  readonly top: number;
  /** At the right and the bottom. */
  readonly free: number;
}

/** @returns the largest view of the whole block, in true proportion, with its margins */
export function fitView(
  block: Pick<Block, 'finished' | 'grid'>,
  room: { readonly width: number; readonly height: number },
  { left, top, free }: Margins,
): View {
  const wide = toNumber(block.finished.width);
  const high = toNumber(block.finished.height);
  const across = room.width - left - free;
  const down = room.height - top - free;
  const scale = Math.max(0, Math.min(across / wide, down / high));
  const width = Math.floor(wide * scale);
  const height = Math.floor(high * scale);
  return {
    left: left + Math.max(0, Math.round((across - width) / 2)),
    top,
    width,
    height,
    columns: block.grid.columns,
    rows: block.grid.rows,
    cells: cellsOf(block.grid),
    window: { left, top, right: room.width, bottom: room.height },
  };
}

/** @returns the part of the block that is seen, on the canvas; empty (right ≤ left or bottom ≤ top) where none is */
export const seenPart = ({ left, top, width, height, window }: View): Box => ({
  left: Math.max(left, window.left),
  top: Math.max(top, window.top),
  right: Math.min(left + width, window.right),
  bottom: Math.min(top + height, window.bottom),
});

/** @returns the pixel of a point given in grid units */
export const pixelOf = (view: View, x: number, y: number): readonly [number, number] => [
  view.left + (x * view.width) / view.columns,
  view.top + (y * view.height) / view.rows,
];

/** @returns the point in grid units under a pixel, which may lie beside the block */
export const gridPointAt = (view: View, px: number, py: number): readonly [number, number] => [
  ((px - view.left) * view.columns) / view.width,
  ((py - view.top) * view.rows) / view.height,
];

/** @returns the cell under a pixel, or null beside the block */
export function cellAt(view: View, px: number, py: number): CellPlace | null {
  const at = gridPointAt(view, px, py);
  const [column, row] = cellUnder(view.cells, at);
  const { across, down } = view.cells;
  if (column < 0 || row < 0 || column >= across.length - 1 || row >= down.length - 1) return null;
  return placeIn(view.cells, [column, row], at);
}

/** @returns the cell under a pixel, or the nearest one when the pixel lies beside the block */
export function nearestCell(view: View, px: number, py: number): CellPlace {
  const at = gridPointAt(view, px, py);
  return placeIn(view.cells, nearestCellTo(view.cells, at), at);
}

/** @returns where in a cell a place lies, at its edge where it lies beyond it */
function placeIn({ across, down, denominator }: Cells, [column, row]: Cell, [x, y]: readonly [number, number]): CellPlace {
  const share = (lines: readonly number[], i: number, at: number): number =>
    Math.min(1, Math.max(0, (at * denominator - lines[i]!) / (lines[i + 1]! - lines[i]!)));
  return { column, row, u: share(across, column, x), v: share(down, row, y) };
}

/** @returns the place in grid units of a place in a cell */
export function gridPointIn({ across, down, denominator }: Cells, { column, row, u, v }: CellPlace): readonly [number, number] {
  const point = (lines: readonly number[], i: number, share: number): number =>
    (lines[i]! + share * (lines[i + 1]! - lines[i]!)) / denominator;
  return [point(across, column, u), point(down, row, v)];
}

import type { Stroke } from '../block/painting.ts';
import { cell, cellsBetween, halfCell, quarterCell } from '../block/patch-shapes.ts';
import { cellsPassed, type Cell } from './stride.ts';
import { CORNERS, SIDES, type Tool, type Turn } from './tool.ts';

/** A point in grid units from the block's top-left corner, for ink and for pointing. */
export type GridPoint = readonly [number, number];
export type GridOutline = readonly GridPoint[];

/** @returns the outline of something to paint, in grid units */
export const outlineOf = ({ points, denominator }: Stroke): GridOutline =>
  points.map(([x, y]) => [x / denominator, y / denominator] as const);

/** @returns what a tool lays in one cell: all of it, the half in a corner, the quarter at a side */
export function strokeInCell(tool: Tool, [column, row]: Cell, turn: Turn): Stroke {
  if (tool === 'half') return halfCell(column, row, CORNERS[turn]);
  if (tool === 'quarter') return quarterCell(column, row, SIDES[turn]);
  return cell(column, row);
}

/** @returns the rectangle that two cells span */
export const rectangleBetween = (a: Cell, b: Cell): Stroke => cellsBetween(...a, ...b);

/** @returns the half-grid point nearest to a place, inside the block */
export function snapToHalfGrid([x, y]: readonly [number, number], columns: number, rows: number): GridPoint {
  const snap = (value: number, most: number): number => Math.min(most, Math.max(0, Math.round(value * 2) / 2));
  return [snap(x, columns), snap(y, rows)];
}

/** A cell tool drawn over the table in one go: every cell it passes gets one patch, all turned alike. */
export interface Sweep {
  readonly tool: Tool;
  readonly turn: Turn;
  readonly strokes: readonly Stroke[];
  readonly last: GridPoint;
  readonly passed: ReadonlySet<string>;
}

/** @returns a sweep that has laid its first patch in the cell under a point of the grid */
export function beginSweep(tool: Tool, turn: Turn, at: GridPoint): Sweep {
  const first: Cell = [Math.floor(at[0]), Math.floor(at[1])];
  return { tool, turn, strokes: [strokeInCell(tool, first, turn)], last: at, passed: new Set([first.join()]) };
}

/** @returns the sweep drawn on to a point of the grid, and what that added; cells beside the block are left out */
export function extendSweep(
  sweep: Sweep,
  to: GridPoint,
  grid: { readonly columns: number; readonly rows: number },
): { readonly sweep: Sweep; readonly added: readonly Stroke[] } {
  const cells = cellsPassed(sweep.last, to).filter(
    ([column, row]) => column >= 0 && row >= 0 && column < grid.columns && row < grid.rows && !sweep.passed.has(`${column},${row}`),
  );
  if (cells.length === 0) return { sweep: { ...sweep, last: to }, added: [] };
  const added = cells.map((each) => strokeInCell(sweep.tool, each, sweep.turn));
  return {
    sweep: {
      ...sweep,
      last: to,
      strokes: [...sweep.strokes, ...added],
      passed: new Set([...sweep.passed, ...cells.map((each) => each.join())]),
    },
    added,
  };
}

/** @returns the outline with one more corner; set twice in a row it counts once, further along a straight line it replaces the last */
export function addCorner(outline: GridOutline, corner: GridPoint): GridOutline {
  const last = outline.at(-1);
  if (last && last[0] === corner[0] && last[1] === corner[1]) return outline;
  const before = outline.at(-2);
  if (before && last && isForward(before, last, corner)) return [...outline.slice(0, -1), corner];
  return [...outline, corner];
}

/** @returns what a closed outline of half-grid corners lays; whether it is an outline at all is for the painting to say */
export const strokeAlong = (corners: GridOutline): Stroke => ({ denominator: 2, points: corners.map(([x, y]) => [x * 2, y * 2] as const) });

/**
 * @param side of a cell
 * @returns the grid line along it right across the block, from left to right or from top to bottom; null for an edge of the block
 */
export function lineAlong(
  [column, row]: Cell,
  side: Turn,
  { columns, rows }: { readonly columns: number; readonly rows: number },
): readonly [GridPoint, GridPoint] | null {
  const upright = side % 2 === 1;
  const at = upright ? column + (side === 1 ? 1 : 0) : row + (side === 2 ? 1 : 0);
  if (at <= 0 || at >= (upright ? columns : rows)) return null;
  return upright ? [[at, 0], [at, rows]] : [[0, at], [columns, at]];
}

/** @returns the grid line right across the block that lies nearest to a place; null where the block has one cell only */
export function lineNear(
  [x, y]: GridPoint,
  { columns, rows }: { readonly columns: number; readonly rows: number },
): readonly [GridPoint, GridPoint] | null {
  const inner = (value: number, cells: number): number => Math.min(cells - 1, Math.max(1, Math.round(value)));
  const [column, row] = [inner(x, columns), inner(y, rows)];
  const across = columns > 1 ? Math.abs(x - column) : Infinity;
  const down = rows > 1 ? Math.abs(y - row) : Infinity;
  if (across === Infinity && down === Infinity) return null;
  return across < down ? [[column, 0], [column, rows]] : [[0, row], [columns, row]];
}

const isForward = (a: GridPoint, b: GridPoint, c: GridPoint): boolean =>
  (b[0] - a[0]) * (c[1] - b[1]) === (b[1] - a[1]) * (c[0] - b[0]) && (b[0] - a[0]) * (c[0] - b[0]) + (b[1] - a[1]) * (c[1] - b[1]) > 0;

import { indexOf, type Cells } from '../block/cells.ts';
import type { Stroke } from '../block/painting.ts';
import { cell, cellsBetween, halfBetween, halfCell, peakBetween, quarterCell } from '../block/patch-shapes.ts';
import { cellsPassed, nearestCellTo, type Cell } from './stride.ts';
import { CORNERS, SIDES, type Tool, type Turn } from './tool.ts';

/** A point in grid units from the block's top-left corner, for ink and for pointing. */
export type GridPoint = readonly [number, number];
export type GridOutline = readonly GridPoint[];

/** @returns the outline of something to paint, in grid units */
export const outlineOf = ({ points, denominator }: Stroke): GridOutline =>
  points.map(([x, y]) => [x / denominator, y / denominator] as const);

/** @returns what a tool lays in one cell: all of it, the half in a corner, the quarter at a side */
export function strokeInCell(cells: Cells, tool: Tool, [column, row]: Cell, turn: Turn): Stroke {
  if (tool === 'half') return halfCell(column, row, CORNERS[turn], cells);
  if (tool === 'quarter') return quarterCell(column, row, SIDES[turn], cells);
  return cell(column, row, cells);
}

/** @returns the rectangle that two cells span */
export const rectangleBetween = (cells: Cells, a: Cell, b: Cell): Stroke => cellsBetween(...a, ...b, cells);

/** @returns what a tool that is drawn over cells lays between two of them: all, half of it, a peak */
export function strokeBetween(cells: Cells, tool: Tool, a: Cell, b: Cell, turn: Turn): Stroke {
  if (tool === 'half rectangle') return halfBetween(a, b, CORNERS[turn], cells);
  if (tool === 'peak') return peakBetween(a, b, SIDES[turn], cells);
  return rectangleBetween(cells, a, b);
}

/** @returns the place nearest to another on the block where lines of the grid, or lines half way between them, cross */
export function snapToHalfGrid(cells: Cells, [x, y]: GridPoint): GridPoint {
  const snap = (lines: readonly number[], at: number): number => {
    const steps = Math.min(lines.at(-1)!, Math.max(0, at * cells.denominator));
    const i = Math.min(lines.length - 2, indexOf(lines, 1, steps));
    const [low, high] = [lines[i]!, lines[i + 1]!];
    return (low + (Math.round((2 * (steps - low)) / (high - low)) * (high - low)) / 2) / cells.denominator;
  };
  return [snap(cells.across, x), snap(cells.down, y)];
}

/** @returns the next such place from one of them on, `dx` across and `dy` down */
export function stepOnHalfGrid(cells: Cells, [x, y]: GridPoint, dx: number, dy: number): GridPoint {
  const step = (lines: readonly number[], at: number, by: number): number => {
    const places = lines.flatMap((line, i) => (i === 0 ? [line] : [(lines[i - 1]! + line) / 2, line])).map((line) => line / cells.denominator);
    const here = places.findLastIndex((place) => place <= at);
    return places[Math.min(places.length - 1, Math.max(0, here + by))]!;
  };
  return [step(cells.across, x, dx), step(cells.down, y, dy)];
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
export function beginSweep(cells: Cells, tool: Tool, turn: Turn, at: GridPoint): Sweep {
  const first = nearestCellTo(cells, at);
  return { tool, turn, strokes: [strokeInCell(cells, tool, first, turn)], last: at, passed: new Set([first.join()]) };
}

/** @returns the sweep drawn on to a point of the grid, and what that added; cells beside the block are left out */
export function extendSweep(cells: Cells, sweep: Sweep, to: GridPoint): { readonly sweep: Sweep; readonly added: readonly Stroke[] } {
  const fresh = cellsPassed(cells, sweep.last, to).filter((each) => !sweep.passed.has(each.join()));
  if (fresh.length === 0) return { sweep: { ...sweep, last: to }, added: [] };
  const added = fresh.map((each) => strokeInCell(cells, sweep.tool, each, sweep.turn));
  return {
    sweep: {
      ...sweep,
      last: to,
      strokes: [...sweep.strokes, ...added],
      passed: new Set([...sweep.passed, ...fresh.map((each) => each.join())]),
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

/** @returns places of the half grid as exact points; whether they are an outline, or a line, is for the drawing to say */
export const strokeAlong = ({ denominator }: Cells, places: GridOutline): Stroke => ({
  denominator: 2 * denominator,
  points: places.map(([x, y]) => [Math.round(x * 2 * denominator), Math.round(y * 2 * denominator)] as const),
});

/**
 * @param side of a cell
 * @returns the grid line along it right across the block, from left to right or from top to bottom; null for an edge of the block
 */
export function lineAlong(cells: Cells, [column, row]: Cell, side: Turn): Stroke | null {
  return side % 2 === 1 ? lineAt(cells, 'upright', column + (side === 1 ? 1 : 0)) : lineAt(cells, 'level', row + (side === 2 ? 1 : 0));
}

/** @returns the grid line right across the block that lies nearest to a place; null where the block has one cell only */
export function lineNear(cells: Cells, [x, y]: GridPoint): Stroke | null {
  const nearest = (lines: readonly number[], at: number): { readonly line: number; readonly far: number } => {
    let found = { line: 0, far: Infinity };
    for (let line = 1; line < lines.length - 1; line++) {
      const far = Math.abs(lines[line]! - at * cells.denominator);
      if (far < found.far) found = { line, far };
    }
    return found;
  };
  const [upright, level] = [nearest(cells.across, x), nearest(cells.down, y)];
  return upright.far < level.far ? lineAt(cells, 'upright', upright.line) : lineAt(cells, 'level', level.line);
}

function lineAt({ across, down, denominator }: Cells, way: 'upright' | 'level', line: number): Stroke | null {
  const lines = way === 'upright' ? across : down;
  if (line <= 0 || line >= lines.length - 1) return null;
  const at = lines[line]!;
  const points = way === 'upright' ? ([[at, 0], [at, down.at(-1)!]] as const) : ([[0, at], [across.at(-1)!, at]] as const);
  return { denominator, points };
}

const isForward = (a: GridPoint, b: GridPoint, c: GridPoint): boolean =>
  (b[0] - a[0]) * (c[1] - b[1]) === (b[1] - a[1]) * (c[0] - b[0]) && (b[0] - a[0]) * (c[0] - b[0]) + (b[1] - a[1]) * (c[1] - b[1]) > 0;

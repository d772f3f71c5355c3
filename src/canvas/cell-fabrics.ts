import type { Block } from '../block/block.ts';
import { cellsOf } from '../block/cells.ts';
import { boundsOf } from '../block/outline.ts';
import { patchAt } from '../block/patches.ts';
import type { Point } from '../geometry/point.ts';
import { nearestCellTo } from './stride.ts';
import { CORNERS, SIDES } from './tool.ts';
import { gridPointIn } from './view.ts';

/** Which fabric shows in the middle of each quarter of each cell: top, right, bottom, left. Ids of fabrics, four to a cell, row by row. */
export interface CellFabrics {
  readonly columns: number;
  readonly rows: number;
  readonly quarters: readonly string[];
}

/** The middles of a cell's quarters, from its top-left corner: top, right, bottom, left. */
export const QUARTER_MIDDLES: readonly (readonly [number, number])[] = [[1 / 2, 1 / 6], [5 / 6, 1 / 2], [1 / 2, 5 / 6], [1 / 6, 1 / 2]];

/** @returns whether a place lies inside an outline, by counting the edges to its right; for the eye and the ear, not for a decision */
function inside(points: readonly (readonly [number, number])[], x: number, y: number): boolean {
  let within = false;
  for (let i = 0, j = points.length - 1; i < points.length; j = i++) {
    const [ax, ay] = points[i]!;
    const [bx, by] = points[j]!;
    if (ay > y !== by > y && x < ((bx - ax) * (y - ay)) / (by - ay) + ax) within = !within;
  }
  return within;
}

/**
 * @returns what shows in every cell of the drawing, as a look at four places of it tells
 * @param only one cell (column, row) to look at instead of all
 */
export function cellFabrics(block: Block, only?: readonly [number, number]): CellFabrics {
  const { denominator, ground } = block;
  const cells = cellsOf(block.grid);
  const [firstColumn, firstRow] = only ?? [0, 0];
  const [endColumn, endRow] = only ? [firstColumn + 1, firstRow + 1] : [cells.across.length - 1, cells.down.length - 1];
  const columns = endColumn - firstColumn;
  const rows = endRow - firstRow;
  const quarters = new Array<string>(columns * rows * 4).fill(ground);
  for (const patch of block.patches) {
    const points = patch.points.map(([x, y]) => [x / denominator, y / denominator] as const);
    const { left, top, right, bottom } = boundsOf(points);
    const from = nearestCellTo(cells, [left, top]);
    const to = nearestCellTo(cells, [right, bottom]);
    for (let row = Math.max(firstRow, from[1]); row < Math.min(endRow, to[1] + 1); row++) {
      for (let column = Math.max(firstColumn, from[0]); column < Math.min(endColumn, to[0] + 1); column++) {
        QUARTER_MIDDLES.forEach(([u, v], quarter) => {
          const [x, y] = gridPointIn(cells, { column, row, u, v });
          if (inside(points, x, y)) quarters[((row - firstRow) * columns + column - firstColumn) * 4 + quarter] = patch.fabric;
        });
      }
    }
  }
  return { columns, rows, quarters };
}

/** Parts of a grid unit that a pointer's place is rounded to. */
const FINENESS = 1024;
/** Primes that no drawing has in its denominators. */
const [ASIDE, BELOW] = [29, 31];

/**
 * A pointer means what lies on one side of an edge, never the edge: else two places that a mirror exchanges could mean different things.
 * @returns an exact point near a place on the block, in grid units, through which no line of the grid, and hardly any drawn one, passes
 */
export function pointNear([x, y]: readonly [number, number]): Point {
  const near = (at: number, prime: number): number => prime * Math.max(0, Math.ceil(at * FINENESS) - 1) + 1;
  return { x: near(x, ASIDE) * BELOW, y: near(y, BELOW) * ASIDE, w: ASIDE * BELOW * FINENESS };
}

/** @returns the id of the fabric that shows at a place given in grid units */
export const fabricAt = (block: Block, at: readonly [number, number]): string =>
  block.patches[patchAt(block, pointNear(at))]?.fabric ?? block.ground;

/** @returns what lies in a cell, in words: "Oat", "Teal top left, Oat bottom right", "Oat top, Teal right, …" */
export function cellInWords(cells: CellFabrics, column: number, row: number, nameOf: (fabric: string) => string): string {
  const at = (row * cells.columns + column) * 4;
  const [top, right, bottom, left] = cells.quarters.slice(at, at + 4) as [string, string, string, string];
  if (top === right && right === bottom && bottom === left) return nameOf(top);
  if (top === left && right === bottom) return `${nameOf(top)} ${CORNERS[0]}, ${nameOf(right)} ${CORNERS[2]}`;
  if (top === right && left === bottom) return `${nameOf(top)} ${CORNERS[1]}, ${nameOf(left)} ${CORNERS[3]}`;
  return [top, right, bottom, left].map((fabric, side) => `${nameOf(fabric)} ${SIDES[side]}`).join(', ');
}

/** @returns the drawing in words, one line for each row, equal neighbours said once: "Columns 1 to 3 Oat. Column 4 Teal." */
export function drawingInWords(cells: CellFabrics, nameOf: (fabric: string) => string): string[] {
  return Array.from({ length: cells.rows }, (_, row) => {
    const said: { words: string; from: number; to: number }[] = [];
    for (let column = 0; column < cells.columns; column++) {
      const words = cellInWords(cells, column, row, nameOf);
      const last = said.at(-1);
      if (last && last.words === words) last.to = column + 1;
      else said.push({ words, from: column + 1, to: column + 1 });
    }
    return said.map(({ words, from, to }) => (from === to ? `Column ${from}: ${words}.` : `Columns ${from} to ${to}: ${words}.`)).join(' ');
  });
}

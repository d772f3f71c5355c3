import { divide, multiply, rational, subtract, type Rational } from '../measure/rational.ts';
import type { Block, Grid } from './block.ts';
import { cellsOf } from './cells.ts';

/** What is counted along one side of a block: columns from left to right, rows from top to bottom. */
export type Axis = 'columns' | 'rows';

/** What belongs to an axis: its place in a point, its lines in the grid, its finished side. */
export const ALONG = {
  columns: { at: 0, lines: 'across', side: 'width' },
  rows: { at: 1, lines: 'down', side: 'height' },
} as const satisfies Record<Axis, { at: 0 | 1; lines: 'across' | 'down'; side: 'width' | 'height' }>;

/** @returns where the cells of an axis begin and end, in grid units, both edges of the block included */
export function edgesOf(grid: Grid, axis: Axis): readonly Rational[] {
  const cells = cellsOf(grid);
  return cells[ALONG[axis].lines].map((step) => rational(step, cells.denominator));
}

/** @returns the finished widths of the columns or heights of the rows, in the block's unit, exactly */
export function cellSizes({ grid, finished }: Pick<Block, 'grid' | 'finished'>, axis: Axis): readonly Rational[] {
  const unit = unitLength({ grid, finished }, axis);
  const edges = edgesOf(grid, axis);
  return edges.slice(1).map((edge, i) => multiply(subtract(edge, edges[i]!), unit));
}

/** @returns the finished length of one grid unit along an axis, in the block's unit */
export const unitLength = ({ grid, finished }: Pick<Block, 'grid' | 'finished'>, axis: Axis): Rational =>
  divide(finished[ALONG[axis].side], rational(grid[axis]));

/** @returns a grid with other lines; lines that fall on every grid unit, and on nothing else, are left out */
export function gridWith(grid: Grid, axis: Axis, units: number, lines: readonly Rational[] | undefined): Grid {
  const { lines: name } = ALONG[axis];
  const { [name]: _, ...rest } = { ...grid, [axis]: units };
  return lines === undefined || isEven(units, lines) ? rest : { ...rest, [name]: lines };
}

/** @returns the grid without lines that say nothing */
export const plainGrid = (grid: Grid): Grid =>
  gridWith(gridWith(grid, 'columns', grid.columns, grid.across), 'rows', grid.rows, grid.down);

const isEven = (units: number, lines: readonly Rational[]): boolean =>
  lines.length === units - 1 && lines.every(({ n, d }, i) => d === 1 && n === i + 1);

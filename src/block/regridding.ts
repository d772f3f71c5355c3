import { good, type Result } from '../measure/problem.ts';
import { add, divide, equals, multiply, rational, subtract, ZERO, type Rational } from '../measure/rational.ts';
import { ALONG, edgesOf, gridWith, type Axis } from './axis.ts';
import type { Block, Grid, LatticePoint } from './block.ts';
import { cellsOf, countOf } from './cells.ts';
import { checkGrid, checkSide } from './file-checks.ts';
import { cropped, type Cropped } from './cropping.ts';
import { toDrawing } from './drawing.ts';
import { coarsest, withPoints } from './lattice.ts';
import { MAX_CELLS } from './limits.ts';
import { gridOutOfRange, refused } from './problems.ts';
import { noEvenGroups } from './grid-problems.ts';

/*
 * Other cells for a block. Whatever is done, it comes down to this: along each axis, where the new cells begin and end on the
 * old grid, and how long the new side is.
 */

/** The new cells of an axis: their edges in units of the grid before, the block's own two included, and the finished side. */
export interface Layout {
  readonly edges: readonly Rational[];
  readonly side: Rational;
}

/** A block on another grid, and what did not fit there. */
export type Regridded = Cropped;

/** @returns the cells of an axis as they are */
export const layoutOf = (block: Block, axis: Axis): Layout => ({ edges: edgesOf(block.grid, axis), side: block.finished[ALONG[axis].side] });

/**
 * Lays a block out in other cells; what is drawn keeps its place on the grid before.
 * @returns the block, with what lay beyond its new edges left out or cut off
 */
export function relaid(block: Block, layouts: Partial<Readonly<Record<Axis, Layout>>>): Result<Regridded> {
  const { columns = layoutOf(block, 'columns'), rows = layoutOf(block, 'rows') } = layouts;
  for (const [axis, { edges, side }] of [['columns', columns], ['rows', rows]] as const) {
    const cells = edges.length - 1;
    if (!Number.isInteger(cells) || cells < 1 || cells > MAX_CELLS) return refused(gridOutOfRange(axis, String(cells)));
    const fault = checkSide(ALONG[axis].side, side, block.finished.unit);
    if (fault) return refused(fault);
  }
  const [left, right, top, bottom] = [columns.edges[0]!, columns.edges.at(-1)!, rows.edges[0]!, rows.edges.at(-1)!];
  const inside = cropped(block, { left, top, right, bottom });
  if (!inside.ok) return inside;
  const finished = { ...block.finished, width: columns.side, height: rows.side };
  const placed = moved(moved({ ...inside.value.block, finished }, 'columns', columns.edges), 'rows', rows.edges);
  const fault = checkGrid(placed.grid);
  if (fault) return refused(fault);
  const drawn = toDrawing(placed);
  return drawn.ok ? good({ ...inside.value, block: placed }) : drawn;
}

/** @returns the block on a grid with these edges; its units are the cells where those are equal, else as they were if that can be */
function moved(block: Block, axis: Axis, edges: readonly Rational[]): Block {
  const start = edges[0]!;
  const long = subtract(edges.at(-1)!, start);
  const { units, scale } = unitsFor(edges, long);
  const lines = edges.slice(1, -1).map((edge) => multiply(subtract(edge, start), scale));
  const grid: Grid = gridWith(block.grid, axis, units, lines);
  if (start.n === 0 && equals(scale, rational(1))) return { ...block, grid };
  const { at } = ALONG[axis];
  const { denominator } = block;
  // A place x/denominator becomes (x/denominator − start) · scale, over one denominator for both axes.
  const common = denominator * start.d * scale.d;
  const place = (point: LatticePoint): LatticePoint => {
    const along = (point[at] * start.d - start.n * denominator) * scale.n;
    const beside = point[1 - at]! * start.d * scale.d;
    return at === 0 ? [along, beside] : [beside, along];
  };
  return coarsest({ ...block, grid, denominator: common, ...withPoints(block, place) });
}

/** @returns how many grid units the new side has, at most 64, and by how much a length in old units is multiplied */
function unitsFor(edges: readonly Rational[], long: Rational): { readonly units: number; readonly scale: Rational } {
  const cells = edges.length - 1;
  const size = divide(long, rational(cells));
  const equal = edges.every((edge, i) => i === 0 || equals(subtract(edge, edges[i - 1]!), size));
  const whole = long.n;
  let units = cells;
  // A divisor of the side's whole part makes no lattice finer.
  if (!equal) for (units = Math.min(MAX_CELLS, whole); whole % units !== 0; ) units--;
  return { units, scale: divide(rational(units), long) };
}

/** What stays as it is when a block gets another number of cells. */
export type Keeping =
  /** What is drawn stays in its cells and the block keeps its size, so the cells change theirs. */
  | 'patches in their cells'
  /** The cells keep their size, so the block grows or shrinks at an edge. */
  | 'size of a cell'
  /** The picture stays; only the lines are drawn anew, all cells equal. */
  | 'picture';

export type BlockEdge = 'left' | 'right' | 'top' | 'bottom';

/** @returns the axis of the cells that come or go at an edge */
export const axisAt = (edge: BlockEdge): Axis => (edge === 'left' || edge === 'right' ? 'columns' : 'rows');

/**
 * Gives the block another number of columns and rows. New cells are as large as the one at the edge where they come.
 * @param at the edges where cells come and go
 */
export function regrid(
  block: Block,
  count: { readonly columns: number; readonly rows: number },
  keeping: Keeping = 'patches in their cells',
  at: readonly BlockEdge[] = ['right', 'bottom'],
): Result<Regridded> {
  for (const axis of ['columns', 'rows'] as const) {
    const cells = count[axis];
    if (!Number.isInteger(cells) || cells < 1 || cells > MAX_CELLS) return refused(gridOutOfRange(axis, String(cells)));
  }
  const layout = (axis: Axis): Layout => {
    const before = layoutOf(block, axis);
    if (keeping === 'picture') return { ...before, edges: evenEdges(block.grid[axis], count[axis]) };
    const edge = at.find((each) => axisAt(each) === axis) ?? (axis === 'columns' ? 'right' : 'bottom');
    const edges = grown(before.edges, count[axis], edge);
    return { edges, side: keeping === 'size of a cell' ? sideOf(before, edges) : before.side };
  };
  return relaid(block, { columns: layout('columns'), rows: layout('rows') });
}

/** Adds a column or row at an edge; the block grows by it. */
export const addCells = (block: Block, edge: BlockEdge): Result<Regridded> => byOne(block, edge, 1);

/** Takes the column or row at an edge away; the block shrinks by it. */
export const takeCells = (block: Block, edge: BlockEdge): Result<Regridded> => byOne(block, edge, -1);

function byOne(block: Block, edge: BlockEdge, more: 1 | -1): Result<Regridded> {
  const count = countOf(block.grid);
  const axis = axisAt(edge);
  return regrid(block, { ...count, [axis]: count[axis] + more }, 'size of a cell', [edge]);
}

/** @returns edges with so many cells, more or fewer at one end */
function grown(edges: readonly Rational[], cells: number, edge: BlockEdge): readonly Rational[] {
  const more = cells - (edges.length - 1);
  const first = edge === 'left' || edge === 'top';
  if (more <= 0) return first ? edges.slice(-more) : edges.slice(0, edges.length + more);
  const [outer, inner] = first ? [edges[0]!, edges[1]!] : [edges.at(-1)!, edges.at(-2)!];
  const step = subtract(outer, inner);
  const added = Array.from({ length: more }, (_, i) => add(outer, multiply(step, rational(i + 1))));
  return first ? [...added.reverse(), ...edges] : [...edges, ...added];
}

/** @returns the finished side of a block with other edges whose cells keep their size */
function sideOf({ edges, side }: Layout, next: readonly Rational[]): Rational {
  return multiply(side, divide(subtract(next.at(-1)!, next[0]!), edges.at(-1)!));
}

/** @returns the edges of equal cells over so many grid units */
export const evenEdges = (units: number, cells: number): readonly Rational[] => Array.from({ length: cells + 1 }, (_, i) => rational(units * i, cells));

/** @returns the same picture on a grid with each cell divided into `times` by `times`, times ≥ 1 and whole */
export function subdivide(block: Block, times: number): Result<Block> {
  const divided = ({ edges, side }: Layout): Layout => ({
    side,
    edges: edges.flatMap((edge, i) => {
      const step = i + 1 < edges.length ? divide(subtract(edges[i + 1]!, edge), rational(times)) : ZERO;
      return step.n === 0 ? [edge] : Array.from({ length: times }, (_, k) => add(edge, multiply(step, rational(k))));
    }),
  });
  return onlyBlock(relaid(block, { columns: divided(layoutOf(block, 'columns')), rows: divided(layoutOf(block, 'rows')) }));
}

/** @returns the same picture on a grid where `times` by `times` cells are joined into one; a problem where they do not come out even */
export function coarsen(block: Block, times: number): Result<Block> {
  const { columns, rows } = countOf(block.grid);
  if (columns % times !== 0 || rows % times !== 0) return refused(noEvenGroups(columns, rows, times));
  const fewer = ({ edges, side }: Layout): Layout => ({ side, edges: edges.filter((_, i) => i % times === 0) });
  return onlyBlock(relaid(block, { columns: fewer(layoutOf(block, 'columns')), rows: fewer(layoutOf(block, 'rows')) }));
}

/** @returns how many corners of patches and ends of seams lie neither on a line between cells nor half-way between two */
export function cornersOffGrid({ grid, denominator, patches, seams }: Block): number {
  const cells = cellsOf(grid);
  const halves = [cells.across, cells.down].map((lines) => new Set(lines.flatMap((line, i) => [2 * line, line + (lines[i + 1] ?? line)])));
  const lies = (at: number, axis: 0 | 1): boolean => halves[axis]!.has((at * 2 * cells.denominator) / denominator);
  const points = [...patches.flatMap(({ points: corners }) => corners), ...seams.flat()];
  const off = points.filter(([x, y]) => !lies(x, 0) || !lies(y, 1));
  return new Set(off.map(String)).size;
}

/** For what moves no edge of the block, and so leaves nothing out. */
export const onlyBlock = (made: Result<Regridded>): Result<Block> => (made.ok ? good(made.value.block) : made);

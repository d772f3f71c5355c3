import type { Block } from '../block/block.ts';
import { cellsOf } from '../block/cells.ts';
import type { Pin } from '../geometry/patchwork/drawing.ts';
import { formatLength } from '../measure/lengths.ts';
import { rational } from '../measure/rational.ts';

/** What each kind of pin is called, and what it asks. */
export const PIN_NAMES: Readonly<Record<Pin['pin'], string>> = { 'sewn last': 'Sewn last', 'one unit': 'One unit' };

const range = (one: string, many: string, from: number, to: number): string =>
  to - from === 1 ? `${one} ${to}` : `${many} ${from + 1} to ${to}`;

/** @returns where a pin lies: "between rows 2 and 3", "columns 1 to 2, row 4", else its two points */
export function pinInWords({ denominator, grid }: Pick<Block, 'denominator' | 'grid'>, { pin, from, to }: Pin): string {
  const cells = cellsOf(grid);
  /** The number of the grid line through a place, −1 between lines. */
  const line = (lines: readonly number[], place: number): number => lines.findIndex((each) => each * denominator === place * cells.denominator);
  const [left, right] = [line(cells.across, Math.min(from[0], to[0])), line(cells.across, Math.max(from[0], to[0]))];
  const [top, bottom] = [line(cells.down, Math.min(from[1], to[1])), line(cells.down, Math.max(from[1], to[1]))];
  const onGrid = [left, right, top, bottom].every((each) => each >= 0);
  if (onGrid && pin === 'one unit') return `${range('column', 'columns', left, right)}, ${range('row', 'rows', top, bottom)}`;
  if (onGrid && left === right && top === 0 && bottom === cells.down.length - 1) return `between columns ${left} and ${left + 1}`;
  if (onGrid && top === bottom && left === 0 && right === cells.across.length - 1) return `between rows ${top} and ${top + 1}`;
  const point = ([x, y]: readonly [number, number]): string =>
    `${formatLength(rational(x, denominator))} across, ${formatLength(rational(y, denominator))} down`;
  return `from ${point(from)} to ${point(to)}`;
}

import type { Block } from './block.ts';
import { withPoints } from './lattice.ts';

/** @returns the block as a mirror shows it: left and right exchanged, or top and bottom */
export function mirror(block: Block, exchange: 'left and right' | 'top and bottom'): Block {
  const right = block.grid.columns * block.denominator;
  const bottom = block.grid.rows * block.denominator;
  return { ...block, ...withPoints(block, ([x, y]) => (exchange === 'left and right' ? [right - x, y] : [x, bottom - y])) };
}

/** @returns the block turned a quarter turn clockwise; columns and rows, width and height change places */
export function turn(block: Block): Block {
  const { width, height, unit } = block.finished;
  const { columns, rows } = block.grid;
  const bottom = rows * block.denominator;
  return {
    ...block,
    finished: { width: height, height: width, unit },
    grid: { columns: rows, rows: columns },
    ...withPoints(block, ([x, y]) => [bottom - y, x]),
  };
}

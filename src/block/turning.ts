import { rational, subtract, type Rational } from '../measure/rational.ts';
import type { Block, Grid, LatticePoint } from './block.ts';
import { withPoints } from './lattice.ts';

/** Which sides change places in a mirror. */
export type Exchange = 'left and right' | 'top and bottom';

/** @returns the block as a mirror shows it: left and right exchanged, or top and bottom */
export function mirror(block: Block, exchange: Exchange): Block {
  const { columns, rows, across, down } = block.grid;
  const [right, bottom] = [columns * block.denominator, rows * block.denominator];
  const aside = exchange === 'left and right';
  return {
    ...block,
    grid: withLines(columns, rows, aside ? reversed(across, columns) : across, aside ? down : reversed(down, rows)),
    ...withPoints(block, ([x, y]) => (aside ? [right - x, y] : [x, bottom - y])),
    ...mirroredSeams(block, ([x, y]) => (aside ? [right - x, y] : [x, bottom - y])),
  };
}

/** @returns the block turned a quarter turn, clockwise unless told to the left; columns and rows, width and height change places */
export function turn(block: Block, way: 'right' | 'left' = 'right'): Block {
  const { width, height, unit } = block.finished;
  const { columns, rows, across, down } = block.grid;
  const [right, bottom] = [columns * block.denominator, rows * block.denominator];
  const clockwise = way === 'right';
  return {
    ...block,
    finished: { width: height, height: width, unit },
    grid: withLines(rows, columns, clockwise ? reversed(down, rows) : down, clockwise ? across : reversed(across, columns)),
    ...withPoints(block, ([x, y]) => (clockwise ? [bottom - y, x] : [y, right - x])),
  };
}

/** In a mirror what lay to the right of the way from one end to the other lies to the right of the way back. */
const mirroredSeams = ({ pressedSeams }: Block, move: (point: LatticePoint) => LatticePoint): Pick<Block, 'pressedSeams'> =>
  pressedSeams ? { pressedSeams: pressedSeams.map(({ from, to, lies }) => ({ from: move(to), to: move(from), lies })) } : {};

/** @returns lines counted from the other edge */
const reversed = (lines: readonly Rational[] | undefined, units: number): readonly Rational[] | undefined =>
  lines?.map((line) => subtract(rational(units), line)).reverse();

const withLines = (columns: number, rows: number, across: Grid['across'], down: Grid['down']): Grid => ({
  columns,
  rows,
  ...(across && { across }),
  ...(down && { down }),
});

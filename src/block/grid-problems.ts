import { printLength } from '../measure/lengths.ts';
import type { Problem } from '../measure/problem.ts';
import type { Rational } from '../measure/rational.ts';
import type { LengthUnit } from './block.ts';
import { LINE_WORDS, problem } from './problems.ts';

/*
 * What is wrong with the lines of a grid that somebody would move.
 */

const CELL = { columns: 'column', rows: 'row' } as const;
const SIDE = { columns: ['width', 'left'], rows: ['height', 'top'] } as const;
const length = (value: Rational, unit: LengthUnit): string => printLength(value, unit);

export const cellSizeOutOfRange = (axis: 'columns' | 'rows', number: number, found: Rational, most: Rational | null, unit: LengthUnit): Problem => {
  const [side] = SIDE[axis];
  const what = `The ${side} of ${CELL[axis]} ${number}`;
  return problem(
    'cell-size-out-of-range',
    most === null
      ? `${what} is the block's own, for there is no other ${CELL[axis]}; change the finished ${side} instead.`
      : `${what} must be more than 0 and less than ${length(most, unit)}, what it and its neighbour have together; this one is ${length(found, unit)}.`,
  );
};

export const splitOutOfRange = (axis: 'columns' | 'rows', number: number, found: Rational, size: Rational, unit: LengthUnit): Problem =>
  problem(
    'split-out-of-range',
    `A line in ${CELL[axis]} ${number} must lie more than 0 and less than ${length(size, unit)} from its ${SIDE[axis][1]}; ` +
      `this one is at ${length(found, unit)}.`,
  );

export const lengthTooFine = (text: string): Problem =>
  problem('too-fine', `${text} puts the lines of the grid on places finer than can be held exactly; choose a rounder length.`);

export const slantedAcross = (where: string, line: 'across' | 'down'): Problem =>
  problem(
    'slanted-across',
    `${where} has a slanted edge across the ${LINE_WORDS[line][0]} line that would move, and it would bend there; ` +
      'let the drawing stay where it is.',
  );

export const noEvenGroups = (columns: number, rows: number, times: number): Problem =>
  problem(
    'no-even-groups',
    `${columns} columns and ${rows} rows cannot be joined ${times} by ${times}; both numbers must be multiples of ${times}.`,
  );

export const noNeighbour = (axis: 'columns' | 'rows', number: number): Problem =>
  problem('no-neighbour', `There is no ${CELL[axis]} after ${CELL[axis]} ${number} to join it with; choose one before it.`);

export const twoUnits = (width: string, height: string): Problem =>
  problem('two-units', `“${width}” and “${height}” are in two units; give both sides in inches or both in centimetres.`);

export const noSuchCell = (axis: 'columns' | 'rows', number: number, cells: number): Problem =>
  problem('no-such-cell', `The block has no ${CELL[axis]} ${number}; it has ${cells}.`);

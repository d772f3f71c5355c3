import { formatLength } from '../measure/lengths.ts';
import { compare, rational, ZERO, type Rational } from '../measure/rational.ts';
import { ALONG, type Axis } from './axis.ts';
import type { Grid, LengthUnit, PressedSeam, UnitMethod } from './block.ts';
import { checkPoint, checkSeam, type Checked, type Ground } from './checks.ts';
import { leastCommonMultiple } from './lattice.ts';
import { MAX_CELLS, MAX_FINISHED, MAX_STEPS } from './limits.ts';
import * as say from './problems.ts';

/*
 * What every block obeys that no hand on the table can break: a file may, or a number that is typed.
 */

/** @returns whether the grid has a number of cells that a grid can have, between lines that are in order and on the block */
export function checkGrid(grid: Grid): Checked {
  const fits = (cells: number): boolean => Number.isInteger(cells) && cells >= 1 && cells <= MAX_CELLS;
  for (const axis of ['columns', 'rows'] as const) {
    if (!fits(grid[axis])) return say.gridOutOfRange(axis, String(grid[axis]));
  }
  return checkLines(grid, 'columns') ?? checkLines(grid, 'rows') ?? checkFineness(grid);
}

function checkLines(grid: Grid, axis: Axis): Checked {
  const lines = grid[ALONG[axis].lines];
  if (!lines) return null;
  if (lines.length >= MAX_CELLS) return say.gridOutOfRange(axis, String(lines.length + 1));
  for (const [i, line] of lines.entries()) {
    const at = formatLength(line);
    if (line.n <= 0 || line.n >= line.d * grid[axis]) return say.lineOffBlock(ALONG[axis].lines, i + 1, at, grid[axis]);
    const before = lines[i - 1];
    if (before && compare(before, line) >= 0) return say.lineOutOfOrder(ALONG[axis].lines, i + 1, at, formatLength(before));
  }
  return null;
}

/** @returns whether the lattice can hold all lines */
function checkFineness({ columns, rows, across = [], down = [] }: Grid): Checked {
  let common = 1;
  for (const { d } of [...across, ...down]) {
    const steps = Math.max(columns, rows) * (common = leastCommonMultiple(common, d));
    if (steps > MAX_STEPS) return say.tooFine(steps, 'The lines of the grid');
  }
  return null;
}

/** @returns whether a finished side is more than 0 and at most 200 in. or 508 cm */
export function checkSide(side: 'width' | 'height', length: Rational, unit: LengthUnit): Checked {
  const fits = compare(length, ZERO) > 0 && compare(length, rational(MAX_FINISHED[unit])) <= 0;
  return fits ? null : say.sizeOutOfRange(side, formatLength(length), unit);
}

/** @returns whether the rectangle of a unit lies on the block and has area; whether such a unit is sewn there is found when it is pieced */
export function checkUnitMethod(where: string, { from, to }: UnitMethod, ground: Ground): Checked {
  const off = checkPoint(`${where}, from`, from, ground) ?? checkPoint(`${where}, to`, to, ground);
  return off ?? (from[0] !== to[0] && from[1] !== to[1] ? null : say.unitWithoutArea(where));
}

/** @returns whether a seam to be pressed has length and lies on the block; whether one is sewn there is found when it is pieced */
export const checkPressedSeam = (where: string, { from, to }: PressedSeam, ground: Ground): Checked => checkSeam(where, [from, to], ground);

/** @returns what a seam is called by, whichever of its ends comes first */
export const seamName = ({ from, to }: Pick<PressedSeam, 'from' | 'to'>): string =>
  (from[0] - to[0] || from[1] - to[1]) < 0 ? [...from, ...to].join() : [...to, ...from].join();

/** @returns whether a number is whole and lies between two, both included */
export const isWhole = (value: number, least: number, most: number): boolean => Number.isInteger(value) && value >= least && value <= most;

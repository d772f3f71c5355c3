import type { Pin } from '../geometry/patchwork/drawing.ts';
import { formatLength } from '../measure/lengths.ts';
import type { Problem } from '../measure/problem.ts';
import { compare, rational, ZERO, type Rational } from '../measure/rational.ts';
import { ALONG, type Axis } from './axis.ts';
import type { Block, DrawnSeam, Fabric, Grid, LatticePoint, LengthUnit, PressedSeam, UnitMethod } from './block.ts';
import { leastCommonMultiple } from './lattice.ts';
import { isWellFormed, MAX_CELLS, MAX_FINISHED, MAX_NAME, MAX_POINTS, MAX_STEPS, PLAIN_TEXT } from './limits.ts';
import { outlineFault, type Outline } from './outline.ts';
import * as say from './problems.ts';

/*
 * What every block obeys, part by part. Each check returns null, or the first problem it finds.
 */

export type Checked = Problem | null;

/** The lattice that points must lie on. */
export type Ground = Pick<Block, 'grid' | 'denominator'>;

/** @param what the words a sentence begins with: "The block's name" */
export function checkText(what: string, text: string): Checked {
  if (text.length > MAX_NAME) return say.nameTooLong(what, text.length);
  return PLAIN_TEXT.test(text) && isWellFormed(text) ? null : say.nameUnprintable(what);
}

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

/** @param where what is to be of this fabric: "Patch 3", "The ground" */
export function checkFabricKnown(where: string, id: string, fabrics: readonly Fabric[]): Checked {
  if (fabrics.some((fabric) => fabric.id === id)) return null;
  return say.unknownFabric(where, id, fabrics.map((fabric) => fabric.id));
}

/** @returns whether a lattice point lies on the block, its edges included */
export function checkPoint(where: string, [x, y]: LatticePoint, { grid, denominator }: Ground): Checked {
  const on = x >= 0 && y >= 0 && x <= grid.columns * denominator && y <= grid.rows * denominator;
  if (on) return null;
  const at = `${formatLength(rational(x, denominator))}, ${formatLength(rational(y, denominator))}`;
  return say.offBlock(where, at, grid.columns, grid.rows);
}

/** @returns whether points make a simple outline on the block */
export function checkOutline(where: string, points: Outline, ground: Ground): Checked {
  if (points.length > MAX_POINTS) return say.tooManyPoints(where, points.length);
  for (const [i, point] of points.entries()) {
    const off = checkPoint(`${where}, point ${i + 1}`, point, ground);
    if (off) return off;
  }
  const fault = outlineFault(points);
  return fault === null ? null : say.noOutline(where, points.length, fault);
}

/** @returns whether a drawn seam has length and lies on the block */
export function checkSeam(where: string, [from, to]: DrawnSeam, ground: Ground): Checked {
  const off = checkPoint(`${where}, end 1`, from, ground) ?? checkPoint(`${where}, end 2`, to, ground);
  if (off) return off;
  return from[0] === to[0] && from[1] === to[1] ? say.seamWithoutLength(where) : null;
}

/** @returns whether a pin lies on the block and has extent; whether the block can be sewn so is found when it is pieced */
export function checkPin(where: string, { pin, from, to }: Pin, ground: Ground): Checked {
  const off = checkPoint(`${where}, from`, from, ground) ?? checkPoint(`${where}, to`, to, ground);
  if (off) return off;
  const [across, down] = [from[0] !== to[0], from[1] !== to[1]];
  if (pin === 'one unit') return across && down ? null : say.pinWithoutArea(where);
  return across || down ? null : say.pinWithoutLength(where);
}

/** @returns whether the rectangle of a unit lies on the block and has area; whether such a unit is sewn there is found when it is pieced */
export function checkUnitMethod(where: string, { from, to }: UnitMethod, ground: Ground): Checked {
  const off = checkPoint(`${where}, from`, from, ground) ?? checkPoint(`${where}, to`, to, ground);
  return off ?? (from[0] !== to[0] && from[1] !== to[1] ? null : say.unitWithoutArea(where));
}

/** @returns what the rectangle between two opposite corners is called by, whichever two they are */
export const boxName = ({ from, to }: Pick<UnitMethod, 'from' | 'to'>): string =>
  [Math.min(from[0], to[0]), Math.min(from[1], to[1]), Math.max(from[0], to[0]), Math.max(from[1], to[1])].join();

/** @returns whether a seam to be pressed has length and lies on the block; whether one is sewn there is found when it is pieced */
export const checkPressedSeam = (where: string, { from, to }: PressedSeam, ground: Ground): Checked => checkSeam(where, [from, to], ground);

/** @returns what a seam is called by, whichever of its ends comes first */
export const seamName = ({ from, to }: Pick<PressedSeam, 'from' | 'to'>): string =>
  (from[0] - to[0] || from[1] - to[1]) < 0 ? [...from, ...to].join() : [...to, ...from].join();

/** @returns whether a number is whole and lies between two, both included */
export const isWhole = (value: number, least: number, most: number): boolean => Number.isInteger(value) && value >= least && value <= most;

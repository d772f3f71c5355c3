import { plainGrid } from '../block/axis.ts';
import type { Block, DrawnSeam, Grid, LatticePoint, LengthUnit, Patch } from '../block/block.ts';
import { checkBlock, checkGrid } from '../block/checks.ts';
import type { Choices } from '../block/choices.ts';
import { leastCommonMultiple } from '../block/lattice.ts';
import { MAX_STEPS } from '../block/limits.ts';
import * as say from '../block/problems.ts';
import type { Pin } from '../geometry/patchwork/drawing.ts';
import { good, type Problem, type Result } from '../measure/problem.ts';
import type { Rational } from '../measure/rational.ts';
import type { BlockShape } from './block-shape.ts';
import { parseExact } from './exact-number.ts';

type Written = number | string;
type WrittenPoint = readonly [Written, Written];

/**
 * The door from what is written to what is drawn: exact numbers, one lattice, and all that a block obeys.
 * @returns the block on the coarsest lattice that holds its points, or the first problem found
 */
export function blockFrom(file: BlockShape): Result<Block> {
  const { name, ground, fabrics } = file;
  const { unit } = file.finished;
  const read = gridFrom(file.grid);
  if (!read.ok) return read;
  const grid = read.value;
  const width = side('width', file.finished.width, unit);
  if (!width.ok) return width;
  const height = side('height', file.finished.height, unit);
  if (!height.ok) return height;
  const choices = choicesFrom(file.choices ?? {}, unit);
  if (!choices.ok) return choices;
  const lattice = commonDenominator(file);
  if (!lattice.ok) return lattice;
  const denominator = lattice.value;
  const steps = (value: Written): number => {
    const { n, d } = parseExact(value) as Rational;
    return n * (denominator / d);
  };
  const placed = ([x, y]: WrittenPoint): LatticePoint => [steps(x), steps(y)];
  const block: Block = {
    name,
    finished: { width: width.value, height: height.value, unit },
    grid,
    denominator,
    fabrics: fabrics.map((fabric) => ({ ...fabric, color: fabric.color.toLowerCase() })),
    ground,
    patches: file.patches.map(({ fabric, points, whole }): Patch => ({ fabric, points: points.map(placed), ...(whole && { whole }) })),
    seams: (file.seams ?? []).map(([from, to]): DrawnSeam => [placed(from), placed(to)]),
    ...(file.pins?.length && { pins: file.pins.map(({ pin, from, to }): Pin => ({ pin, from: placed(from), to: placed(to) })) }),
    ...(file.choices && { choices: choices.value }),
  };
  const fault = checkBlock(block);
  return fault ? say.refused(fault) : good(block);
}

/** @returns the grid on which cells are as the file says; lines that say nothing are left out */
function gridFrom({ columns, rows, across, down }: BlockShape['grid']): Result<Grid> {
  const upright = linesFrom('upright', across, columns);
  if (!upright.ok) return upright;
  const level = linesFrom('level', down, rows);
  if (!level.ok) return level;
  const grid = { columns, rows, ...(upright.value && { across: upright.value }), ...(level.value && { down: level.value }) };
  const fault = checkGrid(grid);
  return fault ? say.refused(fault) : good(plainGrid(grid));
}

function linesFrom(direction: 'upright' | 'level', lines: readonly Written[] | undefined, units: number): Result<readonly Rational[] | null> {
  if (!lines) return good(null);
  const found: Rational[] = [];
  for (const [i, value] of lines.entries()) {
    const where = `The grid's ${direction} line ${i + 1}`;
    const name = direction === 'upright' ? 'across' : 'down';
    const read = length(where, value, () => say.lineOffBlock(name, i + 1, String(value), units));
    if (!read.ok) return read;
    found.push(read.value);
  }
  return good(found);
}

/** @returns a length, exactly; `outOfRange` says what is wrong where it is far too large */
function length(where: string, value: Written, outOfRange: () => Problem): Result<Rational> {
  const read = parseExact(value);
  if (typeof read === 'object') return good(read);
  return say.refused(read === 'too-fine' ? say.numberTooFine(where, String(value)) : outOfRange());
}

const side = (name: 'width' | 'height', value: Written, unit: LengthUnit): Result<Rational> =>
  length(`The finished ${name}`, value, () => say.sizeOutOfRange(name, String(value), unit));

function choicesFrom({ methods, way, blocks, ...written }: NonNullable<BlockShape['choices']>, unit: LengthUnit): Result<Choices> {
  const lengths: Partial<Record<keyof typeof written, Rational>> = {};
  for (const name of ['seam', 'ruler', 'trim', 'width'] as const) {
    const value = written[name];
    if (value === undefined) continue;
    const read = length(`The chosen ${name}`, value, () => say.choiceOutOfRange(name, String(value), unit));
    if (!read.ok) return read;
    lengths[name] = read.value;
  }
  return good({ ...lengths, ...(methods && { methods }), ...(way && { way }), ...(blocks && { blocks }) });
}

/** @returns the least number of steps to a grid unit that holds all points, having seen that each lies on the grid */
function commonDenominator(file: BlockShape): Result<number> {
  const { columns, rows } = file.grid;
  let common = 1;
  for (const [where, point] of everyPoint(file)) {
    for (const [axis, value] of point.entries()) {
      const read = parseExact(value);
      if (read === 'too-fine') return say.refused(say.numberTooFine(where(), String(value)));
      if (typeof read === 'string' || read.n < 0 || read.n > read.d * (axis === 0 ? columns : rows)) {
        return say.refused(say.offBlock(where(), point.join(', '), columns, rows));
      }
      common = leastCommonMultiple(common, read.d);
      const needed = Math.max(columns, rows) * common;
      if (needed > MAX_STEPS) return say.refused(say.tooFine(needed, `The points up to ${where().toLowerCase()}`));
    }
  }
  return good(common);
}

/** Every point of the file with the words for its place. */
function* everyPoint(file: BlockShape): Generator<readonly [() => string, WrittenPoint]> {
  for (const [i, { points }] of file.patches.entries()) {
    for (const [j, point] of points.entries()) yield [() => `Patch ${i + 1}, point ${j + 1}`, point];
  }
  for (const [i, seam] of (file.seams ?? []).entries()) {
    for (const [j, end] of seam.entries()) yield [() => `Seam ${i + 1}, end ${j + 1}`, end];
  }
  for (const [i, pin] of (file.pins ?? []).entries()) {
    for (const end of ['from', 'to'] as const) yield [() => `Pin ${i + 1}, ${end}`, pin[end]];
  }
}

import { gcd } from '../geometry/point.ts';
import { printLength } from '../measure/lengths.ts';
import { good, type Result } from '../measure/problem.ts';
import { add, compare, divide, equals, rational, subtract, ZERO, type Rational } from '../measure/rational.ts';
import { ALONG, cellSizes, edgesOf, unitLength, type Axis } from './axis.ts';
import type { Block, LatticePoint } from './block.ts';
import { coarsest, leastCommonMultiple, onLattice, withPoints } from './lattice.ts';
import { MAX_STEPS } from './limits.ts';
import { tidyOutline } from './outline.ts';
import { refused, tooFine } from './problems.ts';
import { evenEdges, onlyBlock, relaid } from './regridding.ts';
import { cellSizeOutOfRange, lengthTooFine, noNeighbour, noSuchCell, slantedAcross, splitOutOfRange } from './grid-problems.ts';

/*
 * Uneven rows and columns: one line after another. Cells are counted from 0; lengths are finished ones, in the block's unit.
 * The finished size of the block stays.
 */

/** Whether what is drawn moves along with a line, or stays where it is. */
export type Drawn = 'moves along' | 'stays';

/** Draws a line through a column or row, so far from its left or top; the picture stays as it is. */
export function splitCell(block: Block, axis: Axis, cell: number, distance: Rational): Result<Block> {
  const size = cellSizes(block, axis)[cell];
  if (size === undefined) return refused(noSuchCell(axis, cell + 1, cellSizes(block, axis).length));
  const { unit } = block.finished;
  if (compare(distance, ZERO) <= 0 || compare(distance, size) >= 0) return refused(splitOutOfRange(axis, cell + 1, distance, size, unit));
  return exactly(distance, unit, () => {
    const edges = edgesOf(block.grid, axis);
    const line = add(edges[cell]!, divide(distance, unitLength(block, axis)));
    return withEdges(block, axis, edges.toSpliced(cell + 1, 0, line));
  });
}

/** Takes away the line between a column or row and the next one; the picture stays as it is. */
export function joinCells(block: Block, axis: Axis, cell: number): Result<Block> {
  const edges = edgesOf(block.grid, axis);
  if (!(cell in edges.slice(1))) return refused(noSuchCell(axis, cell + 1, edges.length - 1));
  return cell + 2 < edges.length ? withEdges(block, axis, edges.toSpliced(cell + 1, 1)) : refused(noNeighbour(axis, cell + 1));
}

/**
 * Gives a column another width, or a row another height. The next one gives way; the last one takes from the one before it.
 * @returns the block; a problem where the two have not so much together, or where a slanted edge that should move along would bend
 */
export function resizeCell(block: Block, axis: Axis, cell: number, size: Rational, drawn: Drawn): Result<Block> {
  const sizes = cellSizes(block, axis);
  if (!(cell in sizes)) return refused(noSuchCell(axis, cell + 1, sizes.length));
  const { unit } = block.finished;
  const last = cell + 1 === sizes.length;
  const neighbour = sizes[last ? cell - 1 : cell + 1];
  if (neighbour === undefined) return refused(cellSizeOutOfRange(axis, 1, size, null, unit));
  const most = add(sizes[cell]!, neighbour);
  if (compare(size, ZERO) <= 0 || compare(size, most) >= 0) return refused(cellSizeOutOfRange(axis, cell + 1, size, most, unit));
  return exactly(size, unit, () => {
    const edges = edgesOf(block.grid, axis);
    const units = divide(size, unitLength(block, axis));
    const line = last ? subtract(edges[cell + 1]!, units) : add(edges[cell]!, units);
    return moveLines(block, axis, edges.with(last ? cell : cell + 1, line), drawn);
  });
}

/** Makes all columns as wide, or all rows as high, as one another. */
export function evenOut(block: Block, axis: Axis, drawn: Drawn): Result<Block> {
  return moveLines(block, axis, evenEdges(block.grid[axis], edgesOf(block.grid, axis).length - 1), drawn);
}

function moveLines(block: Block, axis: Axis, edges: readonly Rational[], drawn: Drawn): Result<Block> {
  if (drawn === 'stays') return withEdges(block, axis, edges);
  const along = movedAlong(block, axis, edgesOf(block.grid, axis), edges);
  return along.ok ? withEdges(along.value, axis, edges) : along;
}

/** Lays what is drawn out anew, each part in its own cell. */
function movedAlong(block: Block, axis: Axis, before: readonly Rational[], after: readonly Rational[]): Result<Block> {
  const { at, lines } = ALONG[axis];
  // One lattice for every point before and after: fine enough for the lines on both sides, and for what is between them.
  const fine = onLattice(block, [...before, ...after].reduce((common, { d }) => leastCommonMultiple(common, d), 1));
  if (!fine.ok) return fine;
  const { denominator } = fine.value;
  const steps = ({ n, d }: Rational): number => n * (denominator / d);
  const [from, to] = [before.map(steps), after.map(steps)];
  // In each cell a place p moves to start + (p − begin) · n / d.
  const cells = from.slice(1).map((end, i) => {
    const share = rational(to[i + 1]! - to[i]!, end - from[i]!);
    return { begin: from[i]!, end, start: to[i]!, ...share };
  });
  const cellOf = (p: number): (typeof cells)[number] => cells.find(({ end }) => p < end) ?? cells.at(-1)!;
  const { patches, seams, pins = [], unitMethods = [], pressedSeams = [] } = fine.value;
  const boxes = [...pins, ...unitMethods, ...pressedSeams];
  const points = [...patches.flatMap((patch) => patch.points), ...seams.flat(), ...boxes.flatMap(({ from, to }) => [from, to])];
  let common = 1;
  for (const point of points) {
    const { begin, n, d } = cellOf(point[at]);
    common = leastCommonMultiple(common, d / gcd((point[at] - begin) * n, d));
    const steps = Math.max(block.grid.columns, block.grid.rows) * denominator * common;
    if (steps > MAX_STEPS) return refused(tooFine(steps));
  }
  const place = (point: LatticePoint): LatticePoint => {
    const { begin, start, n, d } = cellOf(point[at]);
    const along = start * common + ((point[at] - begin) * n * common) / d;
    const beside = point[1 - at]! * common;
    return at === 0 ? [along, beside] : [beside, along];
  };
  // A slanted edge stays straight where all cells it passes change alike.
  const bends = (p: LatticePoint, q: LatticePoint): boolean => {
    if (p[0] === q[0] || p[1] === q[1]) return false;
    const [low, high] = [Math.min(p[at], q[at]), Math.max(p[at], q[at])];
    const passed = cells.filter(({ begin, end }) => begin < high && end > low);
    return passed.some((share) => !equals(share, passed[0]!));
  };
  const bent = patches.findIndex(({ points }) => points.some((p, i) => bends(p, points[(i + 1) % points.length]!)));
  if (bent >= 0) return refused(slantedAcross(`Patch ${bent + 1}`, lines));
  const bentSeam = seams.findIndex(([p, q]) => bends(p, q));
  if (bentSeam >= 0) return refused(slantedAcross(`Seam ${bentSeam + 1}`, lines));
  const moved = { ...fine.value, denominator: denominator * common, ...withPoints(fine.value, place) };
  const tidied = moved.patches.map((patch) => ({ ...patch, points: tidyOutline(patch.points) }));
  return good(coarsest({ ...moved, patches: tidied }));
}

function withEdges(block: Block, axis: Axis, edges: readonly Rational[]): Result<Block> {
  return onlyBlock(relaid(block, { [axis]: { edges, side: block.finished[ALONG[axis].side] } }));
}

/** A length that no lattice can hold is told as the length that was given. */
function exactly(length: Rational, unit: Block['finished']['unit'], make: () => Result<Block>): Result<Block> {
  try {
    const made = make();
    return !made.ok && made.problem.code === 'too-fine' ? refused(lengthTooFine(printLength(length, unit))) : made;
  } catch (error) {
    if (error instanceof RangeError) return refused(lengthTooFine(printLength(length, unit)));
    throw error;
  }
}

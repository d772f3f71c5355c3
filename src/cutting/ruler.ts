import { MAX_FINISHED } from '../block/limits.ts';
import type { Block } from '../block/block.ts';
import type { Piece } from '../geometry/piecing/assembly.ts';
import { add, commonMeasure, compare, divide, multiply, rational, timesInto, ZERO, type Rational } from '../measure/rational.ts';
import { cutShape } from './shapes.ts';

/*
 * What it means that a block can be cut by the ruler. A plain piece is cut its finished sides + 2s; where s is half a mark or a whole
 * one, the cut falls on a mark exactly when the finished side does. Where it does not, the cut is rounded up, every such piece finishes
 * a little too large, and a row of them outgrows the block. The diagonal units' rules, + 7/8 and + 1 1/4, are rounded up for any size
 * and meant to be; what must fall on a mark there is the finished side they are added to. Pieces whose sides run slantwise, and
 * templates, are never cut by the marks, so they ask for nothing. (Common practice.)
 */

/**
 * @param step length of a lattice step, in the block's unit
 * @param units the finished sizes of the sewn units, which are measured with the ruler too
 * @returns every finished side that is cut or measured by the ruler's marks, in the block's unit: each once, the shortest first
 */
export function ruledSides(
  pieces: readonly Pick<Piece, 'outline'>[],
  step: Rational,
  units: readonly Pick<Block['finished'], 'width' | 'height'>[],
): readonly Rational[] {
  const cut = pieces.flatMap(({ outline }): readonly Rational[] => {
    const shape = cutShape(outline, step);
    if (shape.form === 'rectangle') return shape.level ? shape.sides.map(({ p }) => p) : [];
    if (shape.form === 'right') return shape.legs;
    if (shape.form === 'isosceles' && shape.grain === 'legs') return [shape.leg.p];
    return shape.form === 'isosceles' && shape.grain === 'long side' ? [shape.longSide.p] : [];
  });
  return eachOnce([...cut, ...units.flatMap(({ width, height }) => [width, height])]);
}

/** @returns lengths without repetition, the shortest first */
export function eachOnce(lengths: readonly Rational[]): readonly Rational[] {
  return [...new Map(lengths.map((length) => [`${length.n}/${length.d}`, length])).values()].sort(compare);
}

/** @returns whether a length falls on a mark of the ruler */
export const onMark = (length: Rational, ruler: Rational): boolean => divide(length, ruler).d === 1;

/** @returns the marks on either side of a length (≥ 0) that falls between two */
export function marksAround(length: Rational, ruler: Rational): readonly [below: Rational, above: Rational] {
  const below = multiply(ruler, rational(timesInto(length, ruler)));
  return [below, add(below, ruler)];
}

type Finished = Block['finished'];

/** How a block's sides meet the ruler. */
export interface RulerFit {
  /** Sides that fall between two marks, the shortest first. */
  readonly off: readonly Rational[];
  /** The next finished sizes in the same proportion at which every side falls on a mark; null where no block has them. */
  readonly smaller: Finished | null;
  readonly larger: Finished | null;
}

/**
 * @param sides finished lengths that should fall on marks, each more than 0, in the block's unit
 * @param ruler the ruler's step, in the same unit
 * @returns which of them do not, and the nearest sizes at which they do: the sides are whole multiples of their common measure g, and
 * enlarged by t they fall on marks exactly when t · g does
 */
export function rulerFit(sides: readonly Rational[], finished: Finished, ruler: Rational): RulerFit {
  const off = sides.filter((side) => !onMark(side, ruler));
  if (off.length === 0) return { off, smaller: null, larger: null };
  const sized = (marks: number, measure: Rational): Finished | null => {
    const by = divide(multiply(ruler, rational(marks)), measure);
    const [width, height] = [multiply(finished.width, by), multiply(finished.height, by)];
    const most = rational(MAX_FINISHED[finished.unit]);
    const fits = [width, height].every((side) => compare(side, ZERO) > 0 && compare(side, most) <= 0);
    return fits ? { width, height, unit: finished.unit } : null;
  };
  try {
    const measure = sides.reduce(commonMeasure);
    const marks = timesInto(measure, ruler);
    return { off, smaller: sized(marks, measure), larger: sized(marks + 1, measure) };
  } catch (error) {
    // Sides without a common measure that can be held have no such sizes that anybody would want.
    if (error instanceof RangeError) return { off, smaller: null, larger: null };
    throw error;
  }
}

import { multiply, rational, type Rational } from '../measure/rational.ts';

/** A mark on the tape along an edge of the drawing: how many cells from its beginning, and the finished length there. */
export interface RulerMark {
  readonly cell: number;
  readonly length: Rational;
}

/**
 * @returns marks for the tape along an edge of `cells` cells and finished length `length`, both ends included, no two closer than
 * `apart` pixels where the edge is drawn `pixels` long
 */
export function rulerMarks(length: Rational, cells: number, pixels: number, apart: number): RulerMark[] {
  const between = pixels / cells;
  const divisors = Array.from({ length: cells }, (_, i) => i + 1).filter((n) => cells % n === 0);
  const every = divisors.find((n) => n * between >= apart) ?? cells;
  return Array.from({ length: cells / every + 1 }, (_, i) => ({ cell: i * every, length: multiply(length, rational(i * every, cells)) }));
}

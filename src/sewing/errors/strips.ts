import { multiply, rational, subtract, add, type Rational } from '../../measure/rational.ts';
import type { SeamError } from './comes-out.ts';

/** Strips of one width sewn side by side, the trade's test of a seam allowance. */
export interface Strips {
  readonly count: number;
  /** The width they are to be cut to, the allowance, in one unit. */
  readonly cut: Rational;
  readonly seam: Rational;
}

/** What a ruler finds on them, from raw edge to raw edge, pressed flat. */
export interface Measured {
  readonly whole: Rational;
  /** From raw edge to seam, of the first and the last. */
  readonly outer: Rational;
  /** From seam to seam; of two strips there is none. */
  readonly inner: Rational | null;
}

/** @returns what strips measure: each seam takes an allowance from two of them, each inner strip gives two */
export function measured({ count, cut, seam }: Strips, { allowance, cutting }: SeamError): Measured {
  const [width, taken] = [add(cut, cutting), add(seam, allowance)];
  return {
    whole: subtract(multiply(width, rational(count)), multiply(taken, rational(2 * (count - 1)))),
    outer: subtract(width, taken),
    inner: count > 2 ? subtract(width, multiply(taken, rational(2))) : null,
  };
}

/** @returns by how much each allowance is too wide, on each cloth, when strips cut exactly measure so much in all; negative: too narrow */
export const allowanceOff = (strips: Strips, whole: Rational): Rational =>
  multiply(subtract(measured(strips, { allowance: rational(0), cutting: rational(0) }).whole, whole), rational(1, 2 * (strips.count - 1)));

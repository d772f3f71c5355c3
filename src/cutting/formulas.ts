import type { Rational } from '../measure/rational.ts';
import { add, commonMeasure, divide, multiply, rational } from '../measure/rational.ts';
import type { Surd } from '../measure/surd.ts';
import { addSurds, plus, rootOf, surd, times } from '../measure/surd.ts';

/*
 * Exact sizes to cut from finished sizes f and a seam allowance s, all in the same unit, before rounding up to the ruler.
 * Behind every triangle stands one rule: an allowance s round a triangle with an inscribed circle of radius r enlarges it
 * by the factor 1 + s/r (similar triangles). At s = 1/4 in. these are the trade's + 1/2, + 7/8 and + 1 1/4, which are the
 * exact 0.5, 0.8536 and 1.2071 rounded up to the eighth.
 */

/** A finished length: rational along the block's sides, with a root on the slant. */
export type Finished = Rational | Surd;

const TWO = rational(2);
const HALF = rational(1, 2);
const ROOT_TWO = rootOf(TWO);

const exact = (f: Finished): Surd => ('p' in f ? f : surd(f));

/** @returns the side of a square or rectangle to cut: f + 2s */
export const plainSide = (f: Finished, seam: Rational): Surd => plus(exact(f), multiply(TWO, seam));

/**
 * @returns the square that gives two half-square triangles of leg f, cut once diagonally or sewn two at a time: f + (2 + √2)s.
 * Also the small squares of four geese at a time (f = the goose's height) and the corner squares of a square in a square.
 * @throws RangeError when f has another root than √2
 */
export const halfSquare = (leg: Finished, seam: Rational): Surd => addSurds(exact(leg), surd(multiply(TWO, seam), seam, 2));

/** @returns the square, one of two, that gives eight half-square units of leg f: 2(f + (2 + √2)s + trim), trim for each unit */
export const eightSquare = (leg: Finished, seam: Rational, trim: Rational): Surd => times(plus(halfSquare(leg, seam), trim), TWO);

/**
 * @returns the square that gives four quarter-square triangles of long side f, cut twice diagonally: f + 2(1 + √2)s.
 * Also the squares of an hourglass two at a time, and the large square of four geese at a time (f = the goose's width).
 * @throws RangeError when f has another root than √2
 */
export const quarterSquare = (longSide: Finished, seam: Rational): Surd =>
  addSurds(exact(longSide), times(surd(rational(1), rational(1), 2), multiply(TWO, seam)));

/** @returns the centre of a square in a square of side f, cut by itself: f/√2 + 2s */
export const centreOnPoint = (f: Rational, seam: Rational): Surd => plainSide(times(ROOT_TWO, multiply(f, HALF)), seam);

/** @returns the square cut twice for the four side triangles round blocks of side b set on point: b√2 + 2(1 + √2)s */
export const sideTriangleSquare = (block: Rational, seam: Rational): Surd => quarterSquare(times(ROOT_TWO, block), seam);

/** @returns the square cut once for two of the corner triangles round blocks of side b set on point: b/√2 + (2 + √2)s */
export const cornerTriangleSquare = (block: Rational, seam: Rational): Surd => halfSquare(times(ROOT_TWO, multiply(block, HALF)), seam);

/**
 * @returns the rectangle that gives two right triangles with legs w and h, cut once diagonally: both sides enlarged by 1 + s/r,
 * r = (w + h − √(w² + h²))/2 the radius of the triangle's inscribed circle, which is w + s(w + h + √(w² + h²))/h, and so for h
 */
export function halfRectangle(width: Rational, height: Rational, seam: Rational): { readonly width: Surd; readonly height: Surd } {
  const round = plus(hypotenuse(width, height), add(width, height));
  return {
    width: plus(times(round, divide(seam, height)), width),
    height: plus(times(round, divide(seam, width)), height),
  };
}

/** √(w² + h²), from the small whole numbers in the proportion w : h, so that nothing under the root grows large. */
function hypotenuse(width: Rational, height: Rational): Surd {
  const measure = commonMeasure(width, height);
  const [m, n] = [divide(width, measure), divide(height, measure)];
  return times(rootOf(add(multiply(m, m), multiply(n, n))), measure);
}

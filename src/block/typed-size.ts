import { parseLength } from '../measure/lengths.ts';
import { good, type Result } from '../measure/problem.ts';
import { divide, multiply, rational, type Rational } from '../measure/rational.ts';
import type { Block, LengthUnit } from './block.ts';
import { refused } from './problems.ts';
import { lengthTooFine, twoUnits } from './grid-problems.ts';

/** An inch in centimetres, exactly (international yard and pound agreement, 1959). */
const INCH = rational(254, 100);

/** @returns a length in the other unit, exactly; RangeError where that leaves what can be held */
const converted = (length: Rational, into: LengthUnit): Rational => (into === 'cm' ? multiply(length, INCH) : divide(length, INCH));

/**
 * @param text a length as people type it
 * @param unit what it is in where no unit is typed
 * @returns the length in that unit, exactly
 */
export function typedLength(text: string, unit: LengthUnit): Result<Rational> {
  const read = parseLength(text);
  if (!read.ok) return read;
  const { value, unit: typed } = read.value;
  try {
    return good(typed === null || typed === unit ? value : converted(value, unit));
  } catch (error) {
    if (error instanceof RangeError) return refused(lengthTooFine(text.trim()));
    throw error;
  }
}

/**
 * @param unit what the sides are in where no unit is typed with either
 * @returns a finished size as typed; a unit typed with one side is that of both
 */
export function typedSize(width: string, height: string, unit: LengthUnit): Result<Block['finished']> {
  const across = parseLength(width);
  if (!across.ok) return across;
  const down = parseLength(height);
  if (!down.ok) return down;
  const [first, second] = [across.value.unit, down.value.unit];
  if (first && second && first !== second) return refused(twoUnits(width.trim(), height.trim()));
  return good({ width: across.value.value, height: down.value.value, unit: first ?? second ?? unit });
}

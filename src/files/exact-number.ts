import { rational, type Rational } from '../measure/rational.ts';

/** A whole number, a decimal, a fraction or a mixed number: "3", "1.5", "5/3", "1 2/3". */
export const NUMBER_TEXT = /^-?(?:\d+(?:\.\d+)?|(?:\d+ )?\d+\/0*[1-9]\d*)$/;

/** Why a number cannot be taken exactly. */
export type NumberFault = 'no-number' | 'zero-denominator' | 'too-large' | 'too-fine';

/** @returns n/d, or why it cannot be held */
function held(n: number, d: number): Rational | NumberFault {
  if (Number.isSafeInteger(n) && Number.isSafeInteger(d)) return rational(n, d);
  return Math.abs(n / d) < 1e9 ? 'too-fine' : 'too-large';
}

/**
 * Reads a number as it stands in a file: a JSON number by its decimal digits, or a text.
 * @returns the number, exactly, or what is wrong with it
 */
export function parseExact(value: number | string): Rational | NumberFault {
  if (typeof value === 'number') {
    if (!Number.isFinite(value)) return 'no-number';
    if (Number.isInteger(value)) return held(value, 1);
    // A double prints as its shortest decimal: 0.1 as "0.1"; below 0.000001 with an exponent.
    const [digits, exponent] = String(value).split('e-');
    return decimal(digits!, Number(exponent ?? 0));
  }
  if (/^-?(?:\d+ )?\d+\/0+$/.test(value)) return 'zero-denominator';
  if (!NUMBER_TEXT.test(value)) return 'no-number';
  if (!value.includes('/')) return decimal(value, 0);
  const [before, below] = value.replace('-', '').split('/') as [string, string];
  const [whole, above] = before.includes(' ') ? before.split(' ').map(Number) : [0, Number(before)];
  const d = Number(below);
  const n = whole! * d + above!;
  return held(value.startsWith('-') ? -n : n, d);
}

/** @returns the number written with these decimal digits, shifted `exponent` places to the right of the point */
function decimal(digits: string, exponent: number): Rational | NumberFault {
  const [whole, part = ''] = digits.split('.') as [string, string?];
  return held(Number(whole + part), 10 ** (part.length + exponent));
}

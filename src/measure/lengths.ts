import type { Rational } from './rational.ts';
import { rational } from './rational.ts';
import type { Result } from './problem.ts';
import { bad, good } from './problem.ts';

export interface TypedLength {
  /** In the unit that was typed; millimetres come back as centimetres. */
  readonly value: Rational;
  /** null: no unit was typed. */
  readonly unit: 'in' | 'cm' | null;
}

const LONGEST_TEXT = 40;
const EXAMPLES = 'write it like 6 1/2, 6.5 or 16,5 cm';
const ENDING = /\s*(?:(in\.?|inch|inches|")|(cm\.?|centimet(?:er|re)s?)|(mm\.?|millimet(?:er|re)s?))$/i;
const MIXED = /^(\d+)(?:\s*-\s*|\s+)(\d+)\s*\/\s*(\d+)$/;
const FRACTION = /^(\d+)\s*\/\s*(\d+)$/;
const DECIMAL = /^(\d*)[.,](\d+)$/;
const WHOLE = /^\d+$/;

/**
 * @returns the length a person typed: "6 1/2", "6-1/2", "6½", "13/2", "6.5", "6,5", with or without in, inch, ", cm or mm.
 * Problems: `length-not-a-number`, `length-denominator-0`, `length-negative`, `length-too-long`, `length-too-fine`.
 * `formatLength` and `printLength` write what this reads.
 */
export function parseLength(text: string): Result<TypedLength> {
  if (text.length > LONGEST_TEXT) {
    return bad('length-too-long', `A length of ${text.length} characters is too long to read: ${EXAMPLES}.`);
  }
  const plain = plainText(text);
  const ending = ENDING.exec(plain);
  const number = ending === null ? plain : plain.slice(0, ending.index);
  const quoted = `“${text.trim()}”`;
  if (/^-\s*[\d.,]/.test(number))
    return bad('length-negative', `${quoted} is below zero: a length cannot be negative; leave out the minus sign.`);
  const read = readNumber(number);
  if (read === null) return bad('length-not-a-number', `${quoted} is not a length: ${EXAMPLES}.`);
  if (read.d === 0) return bad('length-denominator-0', `${quoted} has a denominator of 0: write a fraction such as 3/8.`);
  const denominator = ending?.[3] === undefined ? read.d : read.d * 10;
  if (!Number.isSafeInteger(read.n) || !Number.isSafeInteger(denominator)) {
    return bad('length-too-fine', `${quoted} has more digits than any ruler shows: shorten it.`);
  }
  const unit = ending === null ? null : ending[1] === undefined ? 'cm' : 'in';
  return good({ value: rational(read.n, denominator), unit });
}

/** @returns "6 1/2", "12", "3/8", "0": whole part and fraction in lowest terms, no unit. `parseLength` reads it back. */
export function formatLength(value: Rational): string {
  const size = Math.abs(value.n);
  const rest = size % value.d;
  const whole = (size - rest) / value.d;
  const parts = [whole > 0 || rest === 0 ? `${whole}` : '', rest === 0 ? '' : `${rest}/${value.d}`];
  return (value.n < 0 ? '-' : '') + parts.filter((part) => part !== '').join(' ');
}

/**
 * @returns a length (≥ 0) for people, in its unit: "1 7/8 in.", or "4,8 cm" where three decimals say it exactly and a fraction where
 * they do not; `bare` leaves the unit out. `parseLength` reads it back.
 */
export function printLength(value: Rational, unit: 'in' | 'cm', style: 'with unit' | 'bare' = 'with unit'): string {
  const number = unit === 'cm' && 1000 % value.d === 0 ? withComma(value) : formatLength(value);
  return style === 'bare' ? number : `${number} ${unit === 'in' ? 'in.' : 'cm'}`;
}

/** One way of writing for the many: built fractions, dashes, primes and quotes become plain signs. */
function plainText(text: string): string {
  return text
    .replace(/[″”“]|''|′′|’’/g, '"')
    .replace(/[\u00bc-\u00be\u2150-\u215e]/g, ' $&')
    .normalize('NFKC')
    .replace(/[\u2044\u2215]/g, '/')
    .replace(/[\u2010-\u2015\u2212]/g, '-')
    .trim();
}

/** A number as typed, not yet in lowest terms; null when it is none. A fraction after a whole number must be a proper one. */
function readNumber(text: string): { n: number; d: number } | null {
  const mixed = MIXED.exec(text);
  if (mixed !== null) {
    const [whole, n, d] = [Number(mixed[1]), Number(mixed[2]), Number(mixed[3])];
    return d > 0 && n >= d ? null : { n: whole * d + n, d };
  }
  const fraction = FRACTION.exec(text);
  if (fraction !== null) return { n: Number(fraction[1]), d: Number(fraction[2]) };
  const decimal = DECIMAL.exec(text);
  if (decimal !== null) return { n: Number(`${decimal[1]}${decimal[2]}`), d: 10 ** (decimal[2] ?? '').length };
  return WHOLE.test(text) ? { n: Number(text), d: 1 } : null;
}

/** A value in whole thousandths as a decimal with a comma. */
function withComma(value: Rational): string {
  const whole = Math.floor(value.n / value.d);
  const thousandths = (value.n - whole * value.d) * (1000 / value.d);
  return thousandths === 0 ? `${whole}` : `${whole},${`${thousandths}`.padStart(3, '0').replace(/0+$/, '')}`;
}

import type { Margin } from '../../block/choices.ts';
import { formatLength, printLength } from '../../measure/lengths.ts';
import { add, compare, divide, equals, multiply, rational, upToStep, ZERO, type Rational } from '../../measure/rational.ts';
import { listed, several } from '../../measure/words.ts';
import type { ClothLayout, ClothSource } from '../layout.ts';
import type { Joined } from './joined.ts';
import { piecesFor } from './sources.ts';

/** What is bought beyond what the pieces take, and how shops sell. */
export interface BuyingRules {
  readonly squaringUp: Rational;
  readonly margin: Margin;
  readonly shopStep: Rational;
  readonly unit: 'in' | 'cm';
}

/** What to ask for in the shop. */
export interface Buying {
  /** "1 1/8 yd", "30 cm", "3 fat quarters", "nothing". */
  readonly buy: string;
  /** The same as a length, where it is bought by the length; else null. */
  readonly bought: Rational | null;
  /** What is in it beyond what the pieces take, in words: "1/2 in. to square it up and 5 % to spare"; null where nothing is added. */
  readonly added: string | null;
}

const YARD = rational(36);
const HUNDRED = rational(100);

/**
 * @returns what to buy: what the pieces take, squaring up (of precut pieces it is off already), the margin, and all that rounded up to
 * what shops sell
 * @param takes length by the length, else the number of precut pieces
 */
export function buyingOf(takes: Rational, source: ClothSource, rules: BuyingRules): Buying {
  const { squaringUp, margin, shopStep, unit } = rules;
  if (equals(takes, ZERO)) return { buy: 'nothing', bought: null, added: null };
  const spare = marginWords(margin, unit);
  const squared = equals(squaringUp, ZERO) ? null : `${printLength(squaringUp, unit)} to square ${source.length === null ? 'it' : 'each'} up`;
  const words = [squared, spare].filter((word) => word !== null);
  const added = words.length === 0 ? null : listed(words);
  const share = 'percent' in margin ? divide(multiply(takes, margin.percent), HUNDRED) : null;
  if (source.length === null) {
    const needed = add(add(takes, squaringUp), share ?? ('length' in margin ? margin.length : ZERO));
    return { buy: lengthToBuy(needed, shopStep, unit), bought: upToStep(needed, shopStep), added };
  }
  const more = share ?? ('length' in margin && spare !== null ? rational(piecesFor(margin.length, source)) : ZERO);
  return { buy: several(upToStep(add(takes, more), rational(1)).n, source.form), bought: null, added };
}

function marginWords(margin: Margin, unit: 'in' | 'cm'): string | null {
  if ('percent' in margin) return compare(margin.percent, ZERO) > 0 ? `${formatLength(margin.percent)} % to spare` : null;
  return compare(margin.length, ZERO) > 0 ? `${printLength(margin.length, unit)} to spare` : null;
}

/** @returns a length of cloth as it is asked for in a shop, rounded up to what shops sell: "1 1/8 yd", "30 cm" */
export function lengthToBuy(length: Rational, shopStep: Rational, unit: 'in' | 'cm'): string {
  const sold = upToStep(length, shopStep);
  return unit === 'in' ? `${formatLength(divide(sold, YARD))} yd` : printLength(sold, 'cm');
}

/** @returns the strips of a layout, joined widths among them, by their width, the widest first: what is cut from the cloth first of all */
export function stripsOf(layout: ClothLayout, joined: readonly Joined[]): readonly { readonly width: Rational; readonly count: number }[] {
  const strips: { width: Rational; count: number }[] = [];
  const all = layout.cloths.flatMap(({ strips: cut, times }) => cut.map(({ length, times: below }) => ({ length, count: below * times })));
  for (const { length, count, widths } of joined) all.push({ length, count: count * widths });
  for (const { length, count } of all.sort((a, b) => compare(b.length, a.length))) {
    const last = strips.at(-1);
    if (last !== undefined && equals(last.width, length)) last.count += count;
    else strips.push({ width: length, count });
  }
  return strips;
}

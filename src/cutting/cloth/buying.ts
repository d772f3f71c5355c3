import type { Margin } from '../../block/choices.ts';
import { add, compare, divide, equals, multiply, rational, upToStep, ZERO, type Rational } from '../../measure/rational.ts';
import { counted } from '../../block/counting.ts';
import type { Telling } from '../../block/telling.ts';
import type { ClothLayout, ClothSource } from '../layout.ts';
import type { CuttingPhrases, Precut } from '../phrases/cutting-phrases.ts';
import type { Joined } from './joined.ts';
import { piecesFor } from './sources.ts';

/** What is bought beyond what the pieces take, and how shops sell. */
export interface BuyingRules {
  readonly squaringUp: Rational;
  readonly margin: Margin;
  readonly shopStep: Rational;
  readonly unit: 'in' | 'cm';
}

/** How what is bought is put into words. */
export interface BuyingWords {
  readonly telling: Telling;
  readonly phrases: CuttingPhrases;
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
export function buyingOf(takes: Rational, source: ClothSource, rules: BuyingRules, words: BuyingWords): Buying {
  const { squaringUp, margin, shopStep, unit } = rules;
  const { telling, phrases } = words;
  if (equals(takes, ZERO)) return { buy: phrases.nothing, bought: null, added: null };
  const spare = marginWords(margin, unit, words);
  const squared = equals(squaringUp, ZERO) ? null : phrases.toSquareUp(telling.length(squaringUp, unit), source.length === null ? 'length' : 'each');
  const both = [squared, spare].filter((word) => word !== null);
  const added = both.length === 0 ? null : phrases.listed(both);
  const share = 'percent' in margin ? divide(multiply(takes, margin.percent), HUNDRED) : null;
  if (source.length === null) {
    const needed = add(add(takes, squaringUp), share ?? ('length' in margin ? margin.length : ZERO));
    return { buy: lengthToBuy(needed, shopStep, unit, words), bought: upToStep(needed, shopStep), added };
  }
  const more = share ?? ('length' in margin && spare !== null ? rational(piecesFor(margin.length, source)) : ZERO);
  return { buy: phrases.precut(source.form as Precut, counted(upToStep(add(takes, more), rational(1)).n, telling)), bought: null, added };
}

function marginWords(margin: Margin, unit: 'in' | 'cm', { telling, phrases }: BuyingWords): string | null {
  if ('percent' in margin) return compare(margin.percent, ZERO) > 0 ? phrases.percentToSpare(telling.length(margin.percent, 'in', 'bare')) : null;
  return compare(margin.length, ZERO) > 0 ? phrases.toSpare(telling.length(margin.length, unit)) : null;
}

/** @returns a length of cloth as it is asked for in a shop, rounded up to what shops sell: "1 1/8 yd", "30 cm" */
export function lengthToBuy(length: Rational, shopStep: Rational, unit: 'in' | 'cm', { telling, phrases }: BuyingWords): string {
  const sold = upToStep(length, shopStep);
  return unit === 'in' ? phrases.yards(telling.length(divide(sold, YARD), 'in', 'bare')) : telling.length(sold, 'cm');
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

import type { ClothChoice, ClothSize, Sold } from '../../block/choices.ts';
import { divide, multiply, rational, subtract, type Rational } from '../../measure/rational.ts';
import type { ClothSource } from '../layout.ts';

type Precut = Exclude<Sold, 'by length'>;

/** Usual sizes of precut pieces: along the cloth, and across it a part of the usable width or a width of its own. */
interface Usual {
  readonly length: Rational;
  readonly width: { readonly part: Rational } | { readonly own: Rational };
}

const HALF = { part: rational(1, 2) };
const WHOLE = { part: rational(1) };

/*
 * Sources:
 * - fat quarter and fat eighth: half of 1/2 yd and of 1/4 yd, cut along the fold: 18 × 21 and 9 × 21 in. of cloth whose usable width is 42
 *   (allpeoplequilt.com, What are fat quarters and fat eighths?, 2017-02-13); a book that counts on 40 has 18 × 20 and 9 × 20, the
 *   charts that count on 44 have 18 × 22: always half the usable width;
 * - 50 cm in metric shops: lonesockproductions, 2010; its half, 25 cm, after it;
 * - precut strips 2 1/2 in. by the width, precut squares 5 in. (and 10 in., which is typed in): Nebraska Extension, Quilt Quest fair book;
 *   ebookreading.net, Quilting (ISBN 978-1-61564-614-2), p. 37. The same goods are sold in metric shops: 6.35 and 12.7 cm.
 */
const USUAL: Readonly<Record<'in' | 'cm', Readonly<Record<Precut, Usual>>>> = {
  in: {
    'fat quarter': { length: rational(18), width: HALF },
    'fat eighth': { length: rational(9), width: HALF },
    'precut strip': { length: rational(5, 2), width: WHOLE },
    'precut square': { length: rational(5), width: { own: rational(5) } },
  },
  cm: {
    'fat quarter': { length: rational(50), width: HALF },
    'fat eighth': { length: rational(25), width: HALF },
    'precut strip': { length: rational(127, 20), width: WHOLE },
    'precut square': { length: rational(127, 10), width: { own: rational(127, 10) } },
  },
};

/**
 * How far the longest ruler for rotary cutters in common use reaches: 6 × 24 in. (badgerandchirp.com, 2012-03; ukqu.co.uk, 2021-02-01;
 * quiltnutcreations, 2010-06), 60 cm on a metric one (common practice).
 */
export const REACH: Readonly<Record<'in' | 'cm', Rational>> = { in: rational(24), cm: rational(60) };

/** @returns what one precut piece usually measures, of cloth of this usable width */
export function usualSize(sold: Precut, usableWidth: Rational, unit: 'in' | 'cm'): ClothSize {
  const { length, width } = USUAL[unit][sold];
  return { length, width: 'own' in width ? width.own : multiply(usableWidth, width.part) };
}

/** What of a pattern's choices decides where cloth comes from. */
export interface SourceRules {
  /** Usable width of all fabrics. */
  readonly width: Rational;
  /** Taken off each precut piece both ways, to make its edges straight. */
  readonly squaringUp: Rational;
  readonly unit: 'in' | 'cm';
}

/** @returns the cloth one fabric is cut from: what the maker has, and what is bought */
export function sourcesOf(choice: ClothChoice, rules: SourceRules): { readonly own: readonly ClothSource[]; readonly bought: ClothSource } {
  const own = (choice.have ?? []).map(({ width, length, count }): ClothSource => ({ form: 'own', width, length, count }));
  const { sold = 'by length', width = rules.width } = choice;
  if (sold === 'by length') return { own, bought: { form: sold, width, length: null, count: null } };
  const size = choice.size ?? usualSize(sold, width, rules.unit);
  const straight = (side: Rational): Rational => subtract(side, rules.squaringUp);
  return { own, bought: { form: sold, width: straight(size.width), length: straight(size.length), count: null } };
}

/** @returns the number of precut pieces one length holds at least; at least 1 */
export const piecesFor = (length: Rational, source: ClothSource): number => {
  const pieces = divide(length, source.length ?? length);
  return Math.max(1, Math.ceil(pieces.n / pieces.d));
};

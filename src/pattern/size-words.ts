import type { LengthUnit } from '../block/block.ts';
import { counted } from '../block/counting.ts';
import { plainTelling } from '../block/plain-telling.ts';
import type { Cut } from '../cutting/cut.ts';
import type { Rational } from '../measure/rational.ts';
import { placesOf } from './cut-words.ts';
import { ENGLISH } from './english.ts';
import type { Speech } from './language.ts';
import { sizeSaid } from './saying.ts';

/** So many lengths between two marks are listed; the others are counted. */
const LISTED = 3;

/** English; no fabric is named here. */
const PLAIN: Speech = { language: ENGLISH, telling: plainTelling((id) => id) };

/** @returns "3 5/12, 4 1/3 and 2 more" */
export function offText(off: readonly Rational[], unit: LengthUnit, { language, telling }: Speech = PLAIN): string {
  const shown = off.slice(0, LISTED).map((length, i, all) => telling.length(length, unit, i < all.length - 1 ? 'bare' : 'with unit'));
  return language.pattern.offMarks(shown, off.length > LISTED ? counted(off.length - LISTED, telling) : null);
}

/** @returns one line of a list in short: "4 squares 4 7/8 in., cut once on the diagonal for A" */
export function cutText(cut: Cut, unit: LengthUnit, speech: Speech = PLAIN): string {
  const { language, telling } = speech;
  const size = cut.shape === 'square' ? telling.length(cut.width, unit) : sizeSaid(cut, unit, speech);
  return language.pattern.shortCut(counted(cut.quantity, telling), cut.shape, size, cut.subcut, placesOf(cut, speech));
}

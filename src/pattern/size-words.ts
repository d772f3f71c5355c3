import type { LengthUnit } from '../block/block.ts';
import type { Cut } from '../cutting/cut.ts';
import { printLength } from '../measure/lengths.ts';
import type { Rational } from '../measure/rational.ts';
import { listed, several } from '../measure/words.ts';

/** So many lengths between two marks are listed; the others are counted. */
const LISTED = 3;

/** @returns "3 5/12, 4 1/3 and 2 more" */
export function offText(off: readonly Rational[], unit: LengthUnit): string {
  const shown = off.slice(0, LISTED).map((length, i, all) => printLength(length, unit, i < all.length - 1 ? 'bare' : 'with unit'));
  return listed(off.length > LISTED ? [...shown, `${off.length - LISTED} more`] : shown);
}

/** @returns one line of a list in short: "4 squares 4 7/8 in., cut once on the diagonal" */
export function cutText(cut: Cut, unit: LengthUnit): string {
  const size = cut.shape === 'square' ? printLength(cut.width, unit) : `${printLength(cut.width, unit, 'bare')} by ${printLength(cut.height, unit)}`;
  const places = [...new Set(cut.uses.map((use) => (use.unit === 'block' ? 'the block' : use.unit)))];
  return `${several(cut.quantity, cut.shape)} ${size}${SUBCUTS[cut.subcut]} for ${listed(places)}`;
}

const SUBCUTS: Readonly<Record<Cut['subcut'], string>> = {
  none: '',
  once: ', cut once on the diagonal',
  twice: ', cut twice on the diagonals',
  'head to tail': ', cut into triangles head to tail',
};

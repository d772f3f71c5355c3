import type { LengthUnit } from '../../../block/block.ts';
import type { Cut } from '../../../cutting/cut.ts';
import type { ClothForm } from '../../../cutting/layout.ts';
import type { ClothTiles, Leftover } from '../../../cutting/laid.ts';
import { printLength } from '../../../measure/lengths.ts';
import { compare, lesser, rational, type Rational } from '../../../measure/rational.ts';
import { listed, several } from '../../../measure/words.ts';

/** @returns "squares", "strip cut head to tail" …: what one of a line is called, or many */
export function nameOf({ shape, set }: Cut, count: number): string {
  const one = set ? 'strip' : shape === 'template' ? 'piece' : shape;
  return count === 1 ? one : `${one}s`;
}

/** @returns "4 1/2 in." for a square, "2 1/2 × 4 1/2 in." else */
export const sizeWords = ({ shape, width, height }: Cut, unit: LengthUnit): string =>
  shape === 'square' ? printLength(width, unit) : `${printLength(width, unit, 'bare')} × ${printLength(height, unit)}`;

const FORMS: Readonly<Record<ClothForm, string>> = {
  'by length': 'Cloth by the length',
  'fat quarter': 'Fat quarter',
  'fat eighth': 'Fat eighth',
  'precut strip': 'Precut strip',
  'precut square': 'Precut square',
  own: 'What you have',
};

/** @returns "Cloth by the length, 42 in. usable", "3 × fat quarter, 21 × 18 in., cut alike": what a picture is of */
export function clothWords({ source, times }: Pick<ClothTiles, 'source' | 'times'>, unit: LengthUnit): string {
  const { form, width, length } = source;
  if (length === null) return `${FORMS[form]}, ${printLength(width, unit)} usable`;
  const size = `${printLength(width, unit, 'bare')} × ${printLength(length, unit)}`;
  return times === 1 ? `${FORMS[form]}, ${size}` : `${FORMS[form]}, ${size}: ${times} cut alike`;
}

/** Leftovers named one by one; the others only counted. */
const NAMED = 4;
/** What is narrower finishes, with the usual seams on both sides, under half an inch, or about a centimetre: a sliver. */
const SLIVER: Readonly<Record<LengthUnit, Rational>> = { in: rational(1), cm: rational(5, 2) };

/** @returns "22 × 1 1/2 in., 3 of 5 1/2 × 5 1/2 in. and slivers under 1 in.", the largest first; null where nothing is left over */
export function leftoverWords(left: readonly Leftover[], unit: LengthUnit): string | null {
  if (left.length === 0) return null;
  const useful = left.filter(({ width, length }) => compare(lesser(width, length), SLIVER[unit]) >= 0);
  const named = useful.slice(0, NAMED).map(({ width, length, count }) => {
    const size = `${printLength(width, unit, 'bare')} × ${printLength(length, unit)}`;
    return count === 1 ? size : `${count} of ${size}`;
  });
  const others = useful.slice(NAMED).reduce((sum, { count }) => sum + count, 0);
  const slivers = useful.length < left.length ? [`slivers under ${printLength(SLIVER[unit], unit)}`] : [];
  return listed([...named, ...(others === 0 ? [] : [several(others, 'smaller one')]), ...slivers]);
}

/** @returns what a picture shows, in one sentence for those who cannot see it */
export function pictureWords(tiles: ClothTiles, unit: LengthUnit): string {
  const strips = tiles.strips.reduce((sum, { times }) => sum + times, 0);
  const pieces = tiles.strips.reduce((sum, strip) => sum + strip.times * strip.pieces.reduce((all, { across, down }) => all + across * down, 0), 0);
  return `${clothWords(tiles, unit)}: ${several(pieces, 'piece')} in ${several(strips, 'strip')}, drawn to scale; the list after it says the same in words.`;
}

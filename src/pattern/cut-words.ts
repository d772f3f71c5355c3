import { counted } from '../block/counting.ts';
import type { Cut } from '../cutting/cut.ts';
import type { Rational } from '../measure/rational.ts';
import { cornersOf } from './exact-text.ts';
import type { Speech } from './language.ts';
import type { Pattern } from './pattern.ts';

/** @returns the units a line is for, each once, as they stand in a sentence; null is the block itself */
export const placesOf = ({ uses }: Cut, { telling }: Speech): readonly (string | null)[] =>
  [...new Set(uses.map(({ unit }) => unit))].map((unit) => (unit === 'block' ? null : telling.unit(unit)));

/** @returns where the pieces of a line go, what is cut of them first, and what is left over: clauses that follow one another */
export function purposeOf(cut: Cut, speech: Speech): readonly string[] {
  const { language, telling } = speech;
  const phrases = language.pattern;
  const said = [phrases.goesInto(placesOf(cut, speech))];
  if (cut.subcut === 'once') said.push(phrases.cutOnce);
  if (cut.subcut === 'twice') said.push(phrases.cutTwice);
  if (cut.nested) said.push(phrases.headToTail(cut.quantity, counted(cut.nested.triangles, telling)));
  if (cut.set) said.push(phrases.segments(counted(cut.set.segments, telling)));
  if (cut.spare > 0) said.push(phrases.spare(counted(cut.spare, telling)));
  return said;
}

/** @returns what a line of the list cannot say in a few words, one sentence each: which diagonals, which outline */
export function detailsOf({ diagonals, template }: Cut, { lattice, block }: Pick<Pattern, 'lattice' | 'block'>, { language, telling }: Speech): readonly string[] {
  const details: string[] = [];
  if (diagonals) {
    const some = (n: number) => (n > 0 ? counted(n, telling) : null);
    details.push(language.pattern.diagonals(some(diagonals.falling), some(diagonals.rising)));
  }
  if (template) {
    const bare = (length: Rational): string => telling.length(length, block.unit, 'bare');
    details.push(language.pattern.corners(cornersOf(template, lattice.step).map(([x, y]) => [bare(x), bare(y)] as const)));
  }
  return details;
}

import type { Count } from '../block/counting.ts';
import { counted, cutOf, diagonalOf, placeOf, roleOf, thing, type Vocabulary } from './naming.ts';
import type { SlantedPart } from './phrases/slanted.ts';
import type { Step, StepPart } from './step.ts';

/** What the instructions for units of several kinds have in common. */

/** What the instructions for a unit go by. */
export type Told = Pick<Step, 'makes' | 'kind' | 'count' | 'parts' | 'joins'>;

/** @returns the seam allowance */
export const allowance = ({ telling, seam, unit }: Vocabulary): string => telling.length(seam, unit);

/** @returns how many rounds of squares a unit takes by itself; null when its squares also serve other units, so that fewer are cut */
export function roundsFor({ makes, count }: Told, part: StepPart, perRound: number, words: Vocabulary): number | null {
  const { uses, quantity } = cutOf(part, words);
  const alone = uses.filter(({ role }) => role === roleOf(part)).reduce((sum, use) => sum + use.quantity, 0);
  const serves = uses.filter((use) => use.role === roleOf(part) && use.unit !== makes).length > 0;
  return serves && alone > quantity ? null : Math.ceil(count / perRound);
}

/** @returns how many units of so many rounds are beyond the count; null where none are, or nobody can tell */
export function spareOf(perRound: number, rounds: number | null, { count }: Told, words: Vocabulary): Count | null {
  const beyond = rounds === null ? 0 : rounds * perRound - count;
  return beyond > 0 ? counted(beyond, words) : null;
}

/** @returns a part with where it lies and how its rectangle is cut */
export const slantedPart = (part: StepPart, { parts }: Pick<Told, 'parts'>, words: Vocabulary): SlantedPart => ({
  thing: thing(part, words),
  place: placeOf(part, parts),
  cut: diagonalOf(part),
});

/** A printed outline is for one hand only. */
export const templatesLie = ({ parts }: Pick<Told, 'parts'>, words: Vocabulary): readonly string[] =>
  parts.some((part) => 'cut' in part.from && cutOf(part, words).shape === 'template') ? [words.phrases.slanted.templatesLie] : [];

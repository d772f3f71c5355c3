import type { Count } from '../../block/counting.ts';
import type { Method } from '../../block/choices.ts';
import type { ClothForm } from '../layout.ts';

/** Precut pieces that are bought by number. */
export type Precut = Exclude<ClothForm, 'by length' | 'own'>;

/**
 * The wording of everything the cutting room says, in one language. A phrase is given values as they stand in the sentence and never looks
 * into them; a unit is its letter, null the block itself.
 */
export interface CuttingPhrases {
  /** "A, B and C" */
  readonly listed: (words: readonly string[]) => string;

  /** What is bought: "nothing", "1/4 yd", "3 fat quarters". */
  readonly nothing: string;
  readonly yards: (yards: string) => string;
  readonly precut: (form: Precut, count: Count) => string;
  /** "1/2 in. to square it up": off the length, or off each precut piece. */
  readonly toSquareUp: (length: string, off: 'length' | 'each') => string;
  /** "10 cm to spare", "5 % to spare" */
  readonly toSpare: (length: string) => string;
  readonly percentToSpare: (percent: string) => string;

  /** A unit cannot be cut as was asked, and how it is cut instead. */
  readonly otherMethod: (unit: string | null, kind: string, asked: Method, taken: Method, why: 'two corners' | 'no strips' | 'not its kind') => string;
  /** So many mirror images are left over. */
  readonly mirrorImages: (unit: string | null, count: Count) => string;
  /** Nothing is trimmed off the centre. */
  readonly centreUntrimmed: (units: readonly (string | null)[]) => string;
  /** What is cut round an outline has nothing to trim. */
  readonly outlinedUntrimmed: (units: readonly (string | null)[]) => string;
}

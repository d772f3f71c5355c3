import type { AssemblyPhrases } from './assembly.ts';
import type { CornerPhrases } from './corners.ts';
import type { HalfSquarePhrases } from './half-squares.ts';
import type { JoinPhrases } from './joins.ts';
import type { PointPhrases } from './points.ts';
import type { PressingPhrases } from './pressing.ts';
import type { QuarterSquarePhrases } from './quarter-squares.ts';
import type { SlantedPhrases } from './slanted.ts';
import type { StepPhrases } from './steps.ts';
import type { StripSetPhrases } from './strip-sets.ts';
import type { StripPhrases } from './strips.ts';

/**
 * The wording of everything the sewing room says, in one language. What is said, of which things and in which order is decided once, in the
 * words files of this room; how a language says it stands in its table alone. A phrase is a whole sentence or clause, so that word order,
 * cases and plurals are the language's own; it is given values as they stand in the sentence, and never looks into them.
 */
export interface SewingPhrases {
  readonly steps: StepPhrases;
  readonly halfSquares: HalfSquarePhrases;
  readonly quarterSquares: QuarterSquarePhrases;
  readonly corners: CornerPhrases;
  readonly slanted: SlantedPhrases;
  readonly joins: JoinPhrases;
  readonly strips: StripPhrases;
  readonly stripSets: StripSetPhrases;
  readonly pressing: PressingPhrases;
  readonly points: PointPhrases;
  readonly assembly: AssemblyPhrases;
}

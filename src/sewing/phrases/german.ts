import { assembly } from './german/assembly.ts';
import { corners } from './german/corners.ts';
import { halfSquares } from './german/half-squares.ts';
import { joins } from './german/joins.ts';
import { points } from './german/points.ts';
import { pressing } from './german/pressing.ts';
import { quarterSquares } from './german/quarter-squares.ts';
import { slanted } from './german/slanted.ts';
import { steps } from './german/steps.ts';
import { stripSets } from './german/strip-sets.ts';
import { strips } from './german/strips.ts';
import type { SewingPhrases } from './sewing-phrases.ts';

/** Sewing in German, in the words of the trade. It is fetched when somebody first wants it: nothing of the first load may import it. */
export const SEWING_IN_GERMAN: SewingPhrases = {
  steps,
  halfSquares,
  quarterSquares,
  corners,
  slanted,
  joins,
  strips,
  stripSets,
  pressing,
  points,
  assembly,
};

import { assembly } from './english/assembly.ts';
import { corners } from './english/corners.ts';
import { halfSquares } from './english/half-squares.ts';
import { joins } from './english/joins.ts';
import { points } from './english/points.ts';
import { pressing } from './english/pressing.ts';
import { quarterSquares } from './english/quarter-squares.ts';
import { slanted } from './english/slanted.ts';
import { steps } from './english/steps.ts';
import { stripSets } from './english/strip-sets.ts';
import { strips } from './english/strips.ts';
import type { SewingPhrases } from './sewing-phrases.ts';

/** Sewing in English, in the words of the trade. */
export const SEWING_IN_ENGLISH: SewingPhrases = {
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

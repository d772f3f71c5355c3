import { steps } from './english/steps.ts';
import { stripSets } from './english/strip-sets.ts';
import type { SewingPhrases } from './sewing-phrases.ts';

/** Sewing in English, in the words of the trade. */
export const SEWING_IN_ENGLISH: SewingPhrases = { steps, stripSets };

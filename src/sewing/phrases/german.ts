import { steps } from './german/steps.ts';
import { stripSets } from './german/strip-sets.ts';
import type { SewingPhrases } from './sewing-phrases.ts';

/** Sewing in German, in the words of the trade. It is fetched when somebody first wants it: nothing of the first load may import it. */
export const SEWING_IN_GERMAN: SewingPhrases = { steps, stripSets };

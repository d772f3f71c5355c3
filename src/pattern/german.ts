import { CUTTING_IN_GERMAN } from '../cutting/phrases/german.ts';
import { SEWING_IN_GERMAN } from '../sewing/phrases/german.ts';
import type { Language } from './language.ts';
import { SHOWN_IN_GERMAN } from './phrases/german/shown.ts';
import { WRITTEN_IN_GERMAN } from './phrases/german/written.ts';

/** German, the trade's, in metric or in inches. It is fetched when somebody first wants it: nothing of the first load may import it. */
export const GERMAN: Language = {
  tag: 'de',
  cutting: CUTTING_IN_GERMAN,
  sewing: SEWING_IN_GERMAN,
  pattern: { ...WRITTEN_IN_GERMAN, ...SHOWN_IN_GERMAN },
};

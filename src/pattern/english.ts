import { plainTelling } from '../block/plain-telling.ts';
import type { Language, Speech } from './language.ts';
import type { Pattern } from './pattern.ts';
import { SHOWN_IN_ENGLISH } from './phrases/english/shown.ts';
import { ENGLISH_WORDING, namesIn } from './plain-speech.ts';

/** English, whole: for what is told when somebody asks for it. `makePattern` needs only `ENGLISH_WORDING`. */
export const ENGLISH: Language = { tag: 'en', ...ENGLISH_WORDING, pattern: { ...ENGLISH_WORDING.pattern, ...SHOWN_IN_ENGLISH } };

/** @returns how a pattern is told on the sheet and in the terminal: in English, its values printed plainly */
export const inEnglish = (pattern: Pick<Pattern, 'fabrics' | 'scraps'>): Speech => ({ language: ENGLISH, telling: plainTelling(namesIn(pattern)) });

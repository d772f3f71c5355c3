import type { LanguageTag } from '../../pattern/house-style.ts';
import type { Language } from '../../pattern/language.ts';

/** @returns everything that a pattern says in a language; only the one that is asked for is fetched */
export const languageOf = async (tag: LanguageTag): Promise<Language> =>
  tag === 'de' ? (await import('../../pattern/german.ts')).GERMAN : (await import('../../pattern/english.ts')).ENGLISH;

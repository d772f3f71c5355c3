import { ENGLISH } from '../../pattern/english.ts';
import type { LanguageTag } from '../../pattern/house-style.ts';
import type { Language } from '../../pattern/language.ts';

/** @returns everything that a pattern says in a language; others than English are fetched when they are asked for */
export const languageOf = async (tag: LanguageTag): Promise<Language> =>
  tag === 'de' ? (await import('../../pattern/german.ts')).GERMAN : ENGLISH;

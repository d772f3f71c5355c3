import type { LanguageTag } from '../../house-style.ts';
import { ENGLISH_DOCUMENT } from './english.ts';
import { GERMAN_DOCUMENT } from './german.ts';
import type { DocumentPhrases } from './phrases.ts';

const PHRASES: Readonly<Record<LanguageTag, DocumentPhrases>> = { en: ENGLISH_DOCUMENT, de: GERMAN_DOCUMENT };

/** @returns what a published pattern says in a language */
export const documentPhrases = (tag: LanguageTag): DocumentPhrases => PHRASES[tag];

import { plainTelling } from '../block/plain-telling.ts';
import { CUTTING_IN_ENGLISH } from '../cutting/phrases/english.ts';
import { SEWING_IN_ENGLISH } from '../sewing/phrases/english.ts';
import type { Speech, Wording } from './language.ts';
import { WRITTEN_IN_ENGLISH } from './phrases/english/written.ts';
import type { Pattern } from './pattern.ts';

/** What `makePattern` needs of English: all that the first load pays for. */
export const ENGLISH_WORDING: Wording = { cutting: CUTTING_IN_ENGLISH, sewing: SEWING_IN_ENGLISH, pattern: WRITTEN_IN_ENGLISH };

/** @returns how a pattern is written first of all: in English, its values printed plainly */
export const plainSpeech = (fabricName: (id: string) => string): Speech<Wording> => ({ language: ENGLISH_WORDING, telling: plainTelling(fabricName) });

/** @returns what the fabrics of a pattern are called, by their ids; one that it does not cut by its id */
export function namesIn({ fabrics, scraps }: Pick<Pattern, 'fabrics' | 'scraps'>): (id: string) => string {
  const names = new Map([...fabrics.map(({ fabric }) => fabric), ...scraps].map(({ id, name }) => [id, name]));
  return (id) => names.get(id) ?? id;
}

import { plainTelling } from '../../src/block/plain-telling.ts';
import type { CutList } from '../../src/cutting/cutting.ts';
import { cutNoteText } from '../../src/cutting/notes.ts';
import { CUTTING_IN_ENGLISH } from '../../src/cutting/phrases/english.ts';

/** How cutting is put into words: plainly, in English; fabrics by their ids. */
export const WORDS = { telling: plainTelling((id) => id), phrases: CUTTING_IN_ENGLISH };

/** @returns what a list tells its maker, in English */
export const notesIn = ({ notes }: Pick<CutList, 'notes'>): readonly string[] => notes.map((note) => cutNoteText(note, WORDS.telling, WORDS.phrases));

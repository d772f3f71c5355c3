import type { OwnWords } from '../../block/publication.ts';
import { inOwnWords, setAside } from '../telling/own-words.ts';
import type { Content, Said } from './content.ts';
import { plain } from './writing.ts';

/** Her words for one pattern as it is written. */
export interface WordsOf {
  /** @returns a sentence at its place, in her words where she has some for it */
  readonly said: (at: string, told: string) => Said;
  /**
   * @param more writes what the pattern leaves out, so that words for it count as in their place
   * @returns what of hers is for nothing that was written
   */
  readonly aside: (more: () => void) => Content['aside'];
}

/** @returns what puts a pattern's sentences into her words of one language */
export function wordsOf(all: readonly OwnWords[], language: string): WordsOf {
  const words = all.filter((own) => own.language === language).map((own) => ({ ...own, now: plain(own.now) }));
  const places = new Set(words.map(({ at }) => at));
  const written: { readonly at: string; readonly told: string }[] = [];
  return {
    said: (at, told) => {
      if (!places.has(at)) return { at, told };
      written.push({ at, told });
      const own = inOwnWords(words, { at, language, told });
      return own === null ? { at, told } : { at, told: own, was: told };
    },
    aside: (more) => {
      if (setAside(words, language, written).length > 0) more();
      return setAside(words, language, written).map(({ at, now, was }) => ({ at, now, was }));
    },
  };
}

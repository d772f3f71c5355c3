import type { Telling } from '../block/telling.ts';
import type { CuttingPhrases } from '../cutting/phrases/cutting-phrases.ts';
import type { SewingPhrases } from '../sewing/phrases/sewing-phrases.ts';
import type { LanguageTag } from './house-style.ts';
import type { PatternPhrases } from './phrases/pattern-phrases.ts';
import type { WrittenPhrases } from './phrases/written-phrases.ts';

/** The wording of everything that `makePattern` writes. */
export interface Wording {
  readonly cutting: CuttingPhrases;
  readonly sewing: SewingPhrases;
  readonly pattern: WrittenPhrases;
}

/** The wording of everything that a pattern says, also of what is told only when somebody asks for it. */
export interface Language extends Wording {
  readonly tag: LanguageTag;
  readonly pattern: PatternPhrases;
}

/** How something is said: in a language, with its values printed or kept alive. */
export interface Speech<Words extends Wording = Language> {
  readonly language: Words;
  readonly telling: Telling;
}

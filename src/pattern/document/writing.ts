import type { Block } from '../../block/block.ts';
import type { Rational } from '../../measure/rational.ts';
import type { Surd } from '../../measure/surd.ts';
import type { HouseStyle } from '../house-style.ts';
import type { Speech } from '../language.ts';
import type { Pattern, Size } from '../pattern.ts';
import { aboutSaid, sizeSaid } from '../saying.ts';
import { KEPT } from '../telling/kept.ts';
import type { Said } from './content.ts';
import type { DocumentPhrases } from './phrases/phrases.ts';

/** What every section is written from. */
export interface Writing {
  readonly block: Block;
  /** Its sentences told in the language of the words, with values kept. */
  readonly pattern: Pattern;
  readonly style: HouseStyle;
  /** How everything else of a pattern is said: in its language, with values kept. */
  readonly speech: Speech;
  readonly words: DocumentPhrases;
  /** @returns a sentence at its place, in her words where she has some for it */
  readonly said: (at: string, told: string) => Said;
  /** @returns what a unit is, or 'block': the same as long as such a unit is sewn (`unit-names.ts`) */
  readonly named: (unit: string) => string;
  /** @returns kept words as plain text, for what cannot hold values: a figure's description */
  readonly print: (told: string) => string;
}

/** @returns a length with its value kept */
export const length = ({ pattern }: Writing, value: Rational): string => KEPT.length(value, pattern.block.unit);

/** @returns the same without its unit */
export const bare = ({ pattern }: Writing, value: Rational): string => KEPT.length(value, pattern.block.unit, 'bare');

/** @returns width and height with their values kept */
export const size = ({ pattern, speech }: Writing, sides: Size): string => sizeSaid(sides, pattern.block.unit, speech);

/** @returns a length that need not be measured: exactly, else to the nearest hundredth */
export const about = ({ pattern, speech }: Writing, value: Surd): string => aboutSaid(value, pattern.block.unit, speech);

/** @returns "A, B and C" */
export const listed = ({ speech }: Writing, words: readonly string[]): string => speech.language.pattern.listed(words);

/** @returns plain text of hers as a sentence that holds no values, whatever is in it */
export const plain = (text: string): string => text.replaceAll(/\{(?=\w+ )/gu, '{ ');

/** @returns the block's name, or that it has none */
export const titleOf = ({ pattern, words }: Pick<Writing, 'pattern' | 'words'>): string => pattern.block.name.trim() || words.noName;

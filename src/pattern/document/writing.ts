import type { Block } from '../../block/block.ts';
import type { Rational } from '../../measure/rational.ts';
import { nearly } from '../../measure/about.ts';
import type { Surd } from '../../measure/surd.ts';
import type { HouseStyle } from '../house-style.ts';
import type { Pattern } from '../pattern.ts';
import { KEPT } from '../telling/kept.ts';
import type { Said } from './content.ts';
import type { DocumentPhrases, Sides } from './phrases/phrases.ts';

/** What every section is written from. */
export interface Writing {
  readonly block: Block;
  /** Its sentences told in the language of the words, with values kept. */
  readonly pattern: Pattern;
  readonly style: HouseStyle;
  readonly words: DocumentPhrases;
  /** @returns a sentence at its place, in her words where she has some for it */
  readonly said: (at: string, told: string) => Said;
  /** @returns what a unit is, or 'block': the same as long as such a unit is sewn (`unit-names.ts`) */
  readonly named: (unit: string) => string;
}

/** @returns a length with its value kept */
export const length = ({ pattern }: Writing, value: Rational): string => KEPT.length(value, pattern.block.unit);

/** @returns the same without its unit */
export const bare = ({ pattern }: Writing, value: Rational): string => KEPT.length(value, pattern.block.unit, 'bare');

/** @returns width and height with their values kept */
export const size = ({ pattern, words }: Writing, sides: Sides): string => words.size(sides, pattern.block.unit);

/** @returns a length that need not be measured: exactly, else to the nearest hundredth */
export function about({ pattern, words }: Writing, value: Surd): string {
  const { unit } = pattern.block;
  const { is, length: near } = nearly(value, unit);
  if (is === 'exact') return KEPT.length(near, unit);
  return is === 'near' ? KEPT.about(near, unit) : words.lessThan(KEPT.about(near, unit));
}

/** @returns plain text of hers as a sentence that holds no values, whatever is in it */
export const plain = (text: string): string => text.replaceAll(/\{(?=\w+ )/gu, '{ ');

/** @returns the block's name, or that it has none */
export const titleOf = ({ pattern, words }: Pick<Writing, 'pattern' | 'words'>): string => pattern.block.name.trim() || words.noName;

import type { Setting } from './face.ts';
import type { Weight } from './page.ts';

/** A word as it is set, and how wide it is in em. */
export interface Measured {
  readonly text: string;
  readonly wide: number;
}

const known = new WeakMap<Setting, Map<string, Measured>>();

/**
 * @returns a word measured once for a setting: without kerning the width of a line is the sum of its words and spaces, and a pattern says
 * the same few words again and again
 */
export function measured(word: string, weight: Weight, setting: Setting): Measured {
  let words = known.get(setting);
  if (!words) known.set(setting, (words = new Map()));
  const key = weight === 'strong' ? `\u0001${word}` : word;
  const found = words.get(key);
  if (found) return found;
  const text = setting.shown(word);
  const fresh: Measured = { text, wide: setting.widthOf(text, 1, weight) };
  if (words.size > MOST_WORDS) words.clear();
  words.set(key, fresh);
  return fresh;
}

/** So that a page that stands open for days does not remember everything that was ever typed. */
const MOST_WORDS = 20_000;

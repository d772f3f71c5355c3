import type { OwnWords } from '../../block/publication.ts';
import type { Telling } from '../../block/telling.ts';
import { bad, good, type Result } from '../../measure/problem.ts';
import { listed } from '../../measure/words.ts';
import { filled, printed, skeletonOf, valuesOf } from './kept.ts';

/*
 * A designer edits a sentence as it is printed, its values in braces: "Cut {4 7/8 in.} squares". She may move them, leave them out and
 * say them twice; what a value is, the drawing decides.
 */

/** @returns a value as it stands in braces; braces of its own, as in a fabric's name, become round ones */
const inBraces = (value: string, telling: Telling): string =>
  printed(value, telling).replaceAll('{', '(').replaceAll('}', ')').trim();

/** @returns a kept sentence as a person edits it */
export function editText(told: string, telling: Telling): string {
  const values = valuesOf(told);
  return skeletonOf(told).replaceAll(/\{(\d+)\}/gu, (_, number: string) => `{${inBraces(values[Number(number) - 1]!, telling)}}`);
}

/** One way of writing for the many, so that "4⅞ in." is also found as "4 7/8 in". */
const alike = (text: string): string =>
  text
    .replaceAll(/[\u00bc-\u00be\u2150-\u215e]/gu, ' $&')
    .normalize('NFKC')
    .replaceAll('\u2044', '/')
    .replaceAll(/\s+/gu, ' ')
    .trim()
    .replace(/\.$/u, '')
    .toLowerCase();

const quoted = (text: string): string => `“${text}”`;

/**
 * Reads a sentence that was edited.
 * @param written what the program writes there, kept: its values are those that braces may name
 * @param telling by which the edited text was printed
 * @returns the sentence with its values numbered as they come in what the program writes; or what is wrong with it, where, and what to do
 */
export function readEdit(text: string, written: string, telling: Telling): Result<string> {
  const line = text.replaceAll(/\s+/gu, ' ').trim();
  if (line === '') return bad('no-words', 'A sentence cannot be empty: write what it should say, or take the program’s words again.');
  const open = unmatched(line);
  if (open !== null) return bad('open-brace', open);
  const values = valuesOf(written);
  const names = values.map((value) => inBraces(value, telling));
  const places = names.map(alike);
  const asked = [...line.matchAll(/\{([^{}]*)\}/gu)].map(([, name]) => name!);
  for (const name of asked) {
    if (!places.includes(alike(name))) return bad('no-such-value', notAmong(name, names));
  }
  const numbers = inRuns(asked.map((name) => places.flatMap((place, i) => (place === alike(name) ? [i] : []))));
  let next = 0;
  return good(line.replaceAll(/\{[^{}]*\}/gu, () => `{${numbers[next++]! + 1}}`));
}

function notAmong(name: string, names: readonly string[]): string {
  const here = [...new Set(names)].map((each) => `{${each}}`);
  const remedy = here.length === 0 ? 'It has none: leave the braces out' : `Write one of ${listed(here)}, or leave the braces out`;
  return `${quoted(`{${name}}`)} is no value of this sentence. ${remedy}.`;
}

/** @returns what is wrong with the braces of a text; null where each has its other half */
function unmatched(text: string): string | null {
  let open = -1;
  for (let i = 0; i < text.length; i++) {
    if (text[i] === '{') {
      if (open >= 0) return lonely(text, open, '{', '}');
      open = i;
    }
    if (text[i] === '}') {
      if (open < 0) return lonely(text, i, '}', '{');
      open = -1;
    }
  }
  return open < 0 ? null : lonely(text, open, '{', '}');
}

/** So many signs of the text tell where something is. */
const AROUND = 24;

function lonely(text: string, at: number, brace: string, other: string): string {
  const there = brace === '{' ? text.slice(at, at + AROUND) : text.slice(Math.max(0, at + 1 - AROUND), at + 1);
  const where = brace === '{' ? `at ${quoted(there)}` : `after ${quoted(there)}`;
  return `A brace ${quoted(brace)} stands alone ${where}: add ${quoted(other)}, or take it away; a value stands between two.`;
}

/**
 * Of values that look alike those are meant that stand in the same order as their neighbours: in "with {2} {Sea} squares" the 2 is the
 * one that comes before the Sea.
 * @param candidates for each brace the values it may name, at least one
 * @returns for each brace a value: least leaps from one to the next, the first of several
 */
function inRuns(candidates: readonly (readonly number[])[]): readonly number[] {
  // Best ways to the values of the brace before, each with its leaps and what was chosen.
  let ways: readonly { readonly leaps: number; readonly chosen: readonly number[] }[] = [{ leaps: 0, chosen: [] }];
  for (const each of candidates) {
    ways = each.map((value) =>
      ways
        .map(({ leaps, chosen }) => ({ leaps: leaps + (chosen.length === 0 || value === chosen.at(-1)! + 1 ? 0 : 1), chosen: [...chosen, value] }))
        .reduce((a, b) => (b.leaps < a.leaps ? b : a)),
    );
  }
  return ways.reduce((a, b) => (b.leaps < a.leaps ? b : a)).chosen;
}

/** A sentence of the program at its place, kept. */
export interface Written {
  readonly at: string;
  readonly language: string;
  readonly told: string;
}

/** @returns the record of an edited sentence; null where it says what the program writes; or what is wrong with the text */
export function ownWords({ at, language, told }: Written, text: string, telling: Telling): Result<OwnWords | null> {
  const read = readEdit(text, told, telling);
  if (!read.ok) return read;
  const was = skeletonOf(told);
  return good(read.value === was ? null : { at, language, was, now: read.value });
}

/**
 * @returns the sentence in her words, kept, with the values it has now; null where none of hers is for what the program writes there
 */
export function inOwnWords(words: readonly OwnWords[], { at, language, told }: Written): string | null {
  const was = skeletonOf(told);
  const own = words.find((each) => each.at === at && each.language === language && each.was === was);
  return own ? filled(own.now, valuesOf(told)) : null;
}

/** @returns her words in one language that are for none of the sentences the program writes now: kept aside until one comes again */
export function setAside(words: readonly OwnWords[], language: string, written: Iterable<Omit<Written, 'language'>>): readonly OwnWords[] {
  const now = new Map([...written].map(({ at, told }) => [at, told]));
  return words.filter((own) => {
    const told = now.get(own.at);
    return own.language === language && (told === undefined || inOwnWords([own], { at: own.at, language, told }) === null);
  });
}

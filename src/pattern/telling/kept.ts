import type { UnitKind } from '../../geometry/piecing/assembly.ts';
import { rational } from '../../measure/rational.ts';
import type { LengthUnit } from '../../block/block.ts';
import type { Telling } from '../../block/telling.ts';

/*
 * Sentences whose values are alive: "Pair {count 2} {cloth fog} {length 39/8 in} squares". They are printed by any `Telling`. A pattern
 * sentence holds no braces but these; ids of fabrics are written as in an address.
 */

const VALUE = /\{(\w+) ([^{} ]+)(?: (\w+))?\}/gu;

/** Keeps every value in the sentence, to be printed later. */
export const KEPT: Telling = {
  length: ({ n, d }, unit, style = 'with unit') => `{${style === 'bare' ? 'bare' : 'length'} ${n}/${d} ${unit}}`,
  about: ({ n, d }, unit) => `{about ${n}/${d} ${unit}}`,
  count: (n) => `{count ${n}}`,
  cloth: (id) => `{cloth ${encodeURIComponent(id)}}`,
  unit: (letter) => `{unit ${letter}}`,
  cut: (id) => `{cut ${encodeURIComponent(id)}}`,
  kind: (kind, number) => `{kind ${encodeURIComponent(kind)} ${number}}`,
};

/** A stretch of a printed sentence. */
export interface Run {
  readonly text: string;
  /** The value it prints, as it is kept: "unit A"; absent for plain words. */
  readonly value?: string;
}

/** @returns a kept sentence as words and printed values; a full stop after a value that ends with one is said once */
export function runsOf(told: string, telling: Telling): readonly Run[] {
  const runs: Run[] = [];
  const add = (run: Run): void => {
    const text = runs.at(-1)?.text.endsWith('.') && run.text.startsWith('.') ? run.text.slice(1) : run.text;
    if (text !== '') runs.push({ ...run, text });
  };
  let at = 0;
  for (const match of told.matchAll(VALUE)) {
    add({ text: told.slice(at, match.index) });
    add({ text: valueText(match, telling), value: match[0].slice(1, -1) });
    at = match.index + match[0].length;
  }
  add({ text: told.slice(at) });
  return runs;
}

/** @returns a kept sentence as plain text */
export const printed = (told: string, telling: Telling): string =>
  runsOf(told, telling)
    .map(({ text }) => text)
    .join('');

function valueText([whole, kind, what, more]: RegExpMatchArray, telling: Telling): string {
  const text = (): string => decodeURIComponent(what!);
  switch (kind) {
    case 'length':
    case 'bare':
    case 'about': {
      const [n, d] = what!.split('/').map(Number) as [number, number];
      const [value, unit] = [rational(n, d), more as LengthUnit];
      return kind === 'about' ? telling.about(value, unit) : telling.length(value, unit, kind === 'bare' ? 'bare' : 'with unit');
    }
    case 'count':
      return telling.count(Number(what));
    case 'cloth':
      return telling.cloth(text());
    case 'unit':
      return telling.unit(what!);
    case 'cut':
      return telling.cut(text());
    case 'kind':
      return telling.kind(text() as UnitKind, more as 'one' | 'many');
    default:
      return whole;
  }
}

/** @returns the values of a kept sentence in their order, as they stand in it */
export const valuesOf = (told: string): readonly string[] => [...told.matchAll(VALUE)].map(([whole]) => whole);

/** @returns the sentence with its values numbered instead: "Pair {1} {2} {3} squares", the same whatever they are */
export function skeletonOf(told: string): string {
  let number = 0;
  return told.replaceAll(VALUE, () => `{${++number}}`);
}

/** @returns a sentence with numbered values filled in; null where it asks for one that is not there */
export function filled(skeleton: string, values: readonly string[]): string | null {
  const asked = [...skeleton.matchAll(/\{(\d+)\}/gu)].map(([, number]) => Number(number));
  if (asked.some((number) => number < 1 || number > values.length)) return null;
  return skeleton.replaceAll(/\{(\d+)\}/gu, (_, number: string) => values[Number(number) - 1]!);
}

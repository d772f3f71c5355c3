import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Telling } from '../../../src/block/telling.ts';
import { rational } from '../../../src/measure/rational.ts';
import { VALUES_IN_ENGLISH } from '../../../src/pattern/phrases/english/values.ts';
import { KEPT, printed, skeletonOf, valuesOf } from '../../../src/pattern/telling/kept.ts';
import { editText, inOwnWords, ownWords, readEdit, setAside } from '../../../src/pattern/telling/own-words.ts';
import { styledTelling } from '../../../src/pattern/telling/styled.ts';

const names: Readonly<Record<string, string>> = { fog: 'Fog', sea: 'Sea', odd: 'Odd {blue} {2}' };
const telling = styledTelling({ kinds: 'short', fractions: 'set', inches: 'in.' }, (id) => names[id] ?? id, { pattern: { values: VALUES_IN_ENGLISH } });

/** "Pair 2 Fog 3 in. squares with 2 Sea 3 in. squares: 4 HSTs. It measures 2 1/2 in." */
const pairs = ({ length, count, cloth, kind }: Telling, of: { readonly fog: number; readonly sea: number } = { fog: 3, sea: 3 }): string =>
  `Pair ${count(2)} ${cloth('fog')} ${length(rational(of.fog), 'in')} squares with ${count(2)} ${cloth('sea')} ${length(rational(of.sea), 'in')} squares: ` +
  `${count(4)} ${kind('half-square triangle', 'many')}. It measures ${length(rational(5, 2), 'in')}.`;

const written = pairs(KEPT);
const read = (text: string): string => {
  const found = readEdit(text, written, telling);
  if (!found.ok) throw new Error(found.problem.sentence);
  return found.value;
};
const wrong = (text: string, told = written): string => {
  const found = readEdit(text, told, telling);
  return found.ok ? `read as ${found.value}` : found.problem.sentence;
};

describe('a sentence as a designer edits it', () => {
  it('has its values in braces, as they are printed', () => {
    expect(editText(written, telling)).toBe('Pair {2} {Fog} {3 in.} squares with {2} {Sea} {3 in.} squares: {4} {HSTs}. It measures {2½ in.}.');
  });

  it('reads back as it was, whatever its values are', () => {
    const value = fc.oneof(
      fc.constantFrom(KEPT.cloth('fog'), KEPT.cloth('sea'), KEPT.cloth('odd'), KEPT.unit('A'), KEPT.cut('3'), KEPT.kind('half-square triangle', 'one')),
      fc.integer({ min: 1, max: 4 }).map((n) => KEPT.count(n)),
      fc.integer({ min: 1, max: 40 }).map((n) => KEPT.length(rational(n, 8), n % 2 === 0 ? 'in' : 'cm', n % 3 === 0 ? 'bare' : 'with unit')),
      fc.integer({ min: 1, max: 40 }).map((n) => KEPT.about(rational(n, 100), 'in')),
    );
    const word = fc.constantFrom('Lay', 'sew them', 'with', ',', 'on', '. Then');
    fc.assert(
      fc.property(fc.array(fc.oneof(value, word), { minLength: 1, maxLength: 12 }), (parts) => {
        const told = `${parts.join(' ')}.`;
        const again = readEdit(editText(told, telling), told, telling);
        expect(again).toEqual({ ok: true, value: skeletonOf(told) });
      }),
      { seed: 20261125, numRuns: 400 },
    );
  });

  it('may have them moved, left out, said twice, and fractions typed', () => {
    expect(read('You need {Sea} and {Fog}.')).toBe('You need {5} and {2}.');
    expect(read('Trim to {2 1/2 in}, that is {2½ in.} and no more')).toBe('Trim to {9}, that is {9} and no more');
    expect(read('  Pair them \n well ')).toBe('Pair them well');
  });

  it('means, of values that look alike, the ones beside its neighbours', () => {
    expect(read('Take {2} {Sea} {3 in.} squares.')).toBe('Take {4} {5} {6} squares.');
    expect(read('Take {2} {Fog} {3 in.} squares.')).toBe('Take {1} {2} {3} squares.');
    expect(read('{Sea} {3 in.} and {Fog} {3 in.}')).toBe('{5} {6} and {2} {3}');
  });

  it('is refused in one sentence where a value is not its own, or a brace stands alone', () => {
    expect(wrong('Cut {5 in.} squares')).toBe(
      '“{5 in.}” is no value of this sentence. Write one of {2}, {Fog}, {3 in.}, {Sea}, {4}, {HSTs} and {2½ in.}, or leave the braces out.',
    );
    expect(wrong('Take care {now}', 'Take care.')).toBe('“{now}” is no value of this sentence. It has none: leave the braces out.');
    expect(wrong('Cut {3 in. squares')).toBe('A brace “{” stands alone at “{3 in. squares”: add “}”, or take it away; a value stands between two.');
    expect(wrong('Cut {3 {2} in.}')).toBe('A brace “{” stands alone at “{3 {2} in.}”: add “}”, or take it away; a value stands between two.');
    expect(wrong('Cut 3 in.} squares')).toBe('A brace “}” stands alone after “Cut 3 in.}”: add “{”, or take it away; a value stands between two.');
    expect(wrong(' ')).toBe('A sentence cannot be empty: write what it should say, or take the program’s words again.');
  });
});

describe('words of her own', () => {
  const at = 'step/half-square triangle/how';
  const here = { at, language: 'en', told: written };
  const own = (text: string) => {
    const made = ownWords(here, text, telling);
    if (!made.ok || made.value === null) throw new Error('no words');
    return made.value;
  };

  it('are none where they are the program’s', () => {
    expect(ownWords(here, editText(written, telling), telling)).toEqual({ ok: true, value: null });
  });

  it('tell the values of the drawing as it is now', () => {
    const words = own('Stack {2} {Sea} {3 in.} squares on {2} {Fog} {3 in.} squares.');
    const changed = pairs(KEPT, { fog: 7, sea: 5 });
    expect(printed(inOwnWords([words], { ...here, told: changed })!, telling)).toBe('Stack 2 Sea 5 in. squares on 2 Fog 7 in. squares.');
    expect(valuesOf(inOwnWords([words], here)!)).toEqual([4, 5, 6, 1, 2, 3].map((n) => valuesOf(written)[n - 1]));
  });

  it('are edited again as they stand', () => {
    const text = 'Stack {2} {Sea} {3 in.} squares on {2} {Fog} {3 in.} squares.';
    expect(editText(inOwnWords([own(text)], here)!, telling)).toBe(text);
  });

  it('wait aside where the program writes something else, or nothing, and come back with it', () => {
    const words = [own('Stack them.'), { at, language: 'de', was: 'x', now: 'y' }];
    const other = { ...here, told: `Lay them out, ${KEPT.count(3)} in a row.` };
    expect(inOwnWords(words, other)).toBeNull();
    expect(setAside(words, 'en', [other])).toEqual([words[0]]);
    expect(setAside(words, 'en', [])).toEqual([words[0]]);
    expect(setAside(words, 'en', [here])).toEqual([]);
    expect(inOwnWords(words, here)).toBe('Stack them.');
    expect(inOwnWords(words, { ...here, language: 'de' })).toBeNull();
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { rational } from '../../../src/measure/rational.ts';
import { printHundredths } from '../../../src/measure/about.ts';
import { printLength } from '../../../src/measure/lengths.ts';
import type { Telling } from '../../../src/block/telling.ts';
import { filled, KEPT, printed, runsOf, skeletonOf, valuesOf } from '../../../src/pattern/telling/kept.ts';

const plain: Telling = {
  length: printLength,
  about: printHundredths,
  count: String,
  cloth: (id) => `<${id}>`,
  unit: (letter) => letter,
  cut: (id) => id,
  kind: (kind, number) => (number === 'one' ? kind : `${kind}s`),
};

const say = (telling: Telling): string =>
  `Pair ${telling.count(2)} ${telling.cloth('sea 1')} squares, ${telling.length(rational(39, 8), 'in')}, for ` +
  `${telling.kind('half-square triangle', 'many')} ${telling.unit('A')}, cut ${telling.cut('3')}.`;

describe('a sentence that keeps its values', () => {
  it('prints as if it had been written plainly', () => {
    expect(printed(say(KEPT), plain)).toBe(say(plain));
    expect(printed(say(KEPT), plain)).toBe('Pair 2 <sea 1> squares, 4 7/8 in., for half-square triangles A, cut 3.');
  });

  it('ends in one full stop, also behind "in."', () => {
    expect(printed(`It measures ${KEPT.length(rational(9, 2), 'in')}.`, plain)).toBe('It measures 4 1/2 in.');
    expect(printed(`Es misst ${KEPT.length(rational(23, 2), 'cm')}.`, plain)).toBe('Es misst 11,5 cm.');
  });

  it('tells which of its words are values', () => {
    expect(runsOf(say(KEPT), plain).flatMap(({ text, value }) => (value?.startsWith('unit') ? [text] : []))).toEqual(['A']);
  });

  it('is the same without its values, whatever these are', () => {
    expect(skeletonOf(say(KEPT))).toBe('Pair {1} {2} squares, {3}, for {4} {5}, cut {6}.');
    expect(filled('Cut {3}, then {3} again', valuesOf(say(KEPT)))).toBe('Cut {length 39/8 in}, then {length 39/8 in} again');
    expect(filled('Cut {7}', valuesOf(say(KEPT)))).toBeNull();
  });

  it('keeps any name and any length', () => {
    const fabric = fc.string({ minLength: 1, unit: 'grapheme' }).filter((id) => !/\p{Cs}/u.test(id));
    fc.assert(
      fc.property(fabric, fc.integer({ min: 0, max: 1e6 }), fc.integer({ min: 1, max: 999 }), (id, n, d) => {
        const written = (telling: Telling): string => `${telling.cloth(id)} ${telling.length(rational(n, d), 'cm', 'bare')}`;
        expect(printed(written(KEPT), plain)).toBe(written(plain));
        expect(filled(skeletonOf(written(KEPT)), valuesOf(written(KEPT)))).toBe(written(KEPT));
      }),
      { seed: 7, numRuns: 300 },
    );
  });
});

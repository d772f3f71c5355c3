import { describe, expect, it } from 'vitest';
import { rational } from '../../../src/measure/rational.ts';
import { VALUES_IN_ENGLISH } from '../../../src/pattern/phrases/english/values.ts';
import { VALUES_IN_GERMAN } from '../../../src/pattern/phrases/german/values.ts';
import { plainTelling } from '../../../src/block/plain-telling.ts';
import { KEPT, printed } from '../../../src/pattern/telling/kept.ts';
import { styledTelling, type ValueStyle } from '../../../src/pattern/telling/styled.ts';

const usual: ValueStyle = { kinds: 'in full', fractions: 'set', inches: 'in.' };
const names = (id: string): string => (id === 'fog' ? ' Fog\n No. 2. ' : '');
const english = (style: Partial<ValueStyle> = {}) => styledTelling({ ...usual, ...style }, names, { pattern: { values: VALUES_IN_ENGLISH } });
const german = (style: Partial<ValueStyle> = {}) => styledTelling({ ...usual, ...style }, names, { pattern: { values: VALUES_IN_GERMAN } });

describe('values in a house style', () => {
  it('sets fractions as one sign where there is one, and as raised and lowered digits where there is none', () => {
    expect(english().length(rational(39, 8), 'in')).toBe('4⅞ in.');
    expect(english().length(rational(7, 16), 'in')).toBe('7⁄16 in.');
    expect(english().length(rational(39, 16), 'in')).toBe('2\u202f7⁄16 in.');
    expect(english({ fractions: 'typed' }).length(rational(39, 8), 'in')).toBe('4 7/8 in.');
    expect(english().length(rational(9, 2), 'in', 'bare')).toBe('4½');
  });

  it('writes inches as a word or as a sign', () => {
    expect(english({ inches: '″' }).length(rational(9, 2), 'in')).toBe('4½″');
    expect(english({ inches: '″' }).about(rational(1, 50), 'in')).toBe('0.02″');
    expect(german().length(rational(9, 2), 'in')).toBe('4½ Zoll');
    expect(german().about(rational(1, 50), 'in')).toBe('0,02 Zoll');
  });

  it('writes centimetres with a comma, whatever the house style', () => {
    expect(german().length(rational(23, 2), 'cm')).toBe('11,5 cm');
    expect(german({ inches: '″', fractions: 'typed' }).length(rational(19, 4), 'cm')).toBe('4,75 cm');
    expect(german().about(rational(1, 50), 'cm')).toBe('0,02 cm');
  });

  it('names kinds in full, or as quilters shorten them, in German too', () => {
    expect(english().kind('half-square triangle', 'many')).toBe('half-square triangles');
    expect(english({ kinds: 'short' }).kind('half-square triangle', 'many')).toBe('HSTs');
    expect(german().kind('half-square triangle', 'one')).toBe('Halbquadrat-Dreieck');
    expect(german({ kinds: 'short' }).kind('half-square triangle', 'one')).toBe('HST');
    expect(german({ kinds: 'short' }).kind('square in a square', 'one')).toBe('Quadrat im Quadrat');
  });

  it('calls a kind in full as it is called without a house style', () => {
    const plain = plainTelling(names);
    for (const [kind, { one, many }] of Object.entries(VALUES_IN_ENGLISH.kinds)) {
      expect([one, many]).toEqual([plain.kind(kind as 'square', 'one'), plain.kind(kind as 'square', 'many')]);
    }
  });

  it('puts a name on one line, without a full stop, and a fabric without one by its id', () => {
    expect(english().cloth('fog')).toBe('Fog No. 2');
    expect(english().cloth('sea')).toBe('sea');
  });

  it('says one full stop at the end of a sentence', () => {
    expect(printed(`It measures ${KEPT.length(rational(9, 2), 'in')}.`, english())).toBe('It measures 4½ in.');
    expect(printed(`It measures ${KEPT.length(rational(9, 2), 'in')}.`, english({ inches: '″' }))).toBe('It measures 4½″.');
  });
});

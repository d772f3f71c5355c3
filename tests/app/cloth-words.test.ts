import { describe, expect, test } from 'vitest';
import { pictureWords, clothWords } from '../../src/app/sheet/cloth/cloth-words.ts';
import { chosen, marginWords, takingLength, typedMargin, withCloth } from '../../src/app/sheet/cloth/taking.ts';
import { takesWords } from '../../src/app/sheet/takes-words.ts';
import type { Choices } from '../../src/block/choices.ts';
import { clothTiles } from '../../src/cutting/laid.ts';
import type { ClothLayout } from '../../src/cutting/layout.ts';
import { rational, ZERO, type Rational } from '../../src/measure/rational.ts';
import type { Cloth } from '../../src/pattern/pattern.ts';
import { bolt, cloth, column, fatQuarter, line, pieces, strip } from '../cutting/any-cloth.ts';

const squares = (source = bolt(42)) => cloth(source, strip(rational(4), 2, column(rational(4), 5, pieces('1', rational(4), rational(4)))));

/** A fabric whose layout takes so much, and no layout less than that. */
const taking = (layout: Partial<ClothLayout>, bought = bolt(42), some: Partial<Cloth> = {}): Cloth => ({
  fabric: { id: 'oat', name: 'Oat', color: '#f3ede0' },
  order: { wanted: [], own: [], bought, reach: rational(24) },
  layout: { cloths: [squares(bought)], takes: ZERO, least: ZERO, unplaced: [], ...layout },
  joined: [],
  strips: [],
  length: ZERO,
  buy: '',
  bought: null,
  added: null,
  ...some,
});

describe('what a fabric takes', () => {
  test.each<[string, Cloth]>([
    ['takes 8 in. of cloth 42 in. wide; proved least', taking({ takes: rational(8), least: rational(8) })],
    ['takes 8 in. of cloth 42 in. wide; at most 1/8 in. above the least', taking({ takes: rational(8), least: rational(63, 8) })],
    ['takes 3, each 22 × 18 in.; at most 1 above the least', taking({ takes: rational(3), least: rational(2) }, fatQuarter)],
    ['all of it from what you have', taking({ cloths: [squares({ ...fatQuarter, form: 'own' })] })],
    ['takes 8 in. of cloth 42 in. wide beside what you have; proved least', taking({ cloths: [squares({ ...fatQuarter, form: 'own' }), squares()], takes: rational(8), least: rational(8) })],
    ['takes 8 in. of cloth 42 in. wide; proved least; with 5 % to spare', taking({ takes: rational(8), least: rational(8) }, bolt(42), { added: '5 % to spare' })],
    ['takes 1, each 22 × 18 in.; proved least; 2 pieces fit into none of it', taking({ takes: rational(1), least: rational(1), unplaced: [{ cut: '1', count: 2 }] }, fatQuarter)],
  ])('%s', (words, from) => expect(takesWords(from, 'in')).toBe(words));

  test('is said to be looked into as long as less may be found', () => {
    const cloth = taking({ takes: rational(8), least: rational(7) });
    expect(takesWords(cloth, 'in', 'solving')).toMatch(/at most 1 in\. above the least; looking for less …$/);
    expect(takesWords(cloth, 'in', 'best known')).toMatch(/at most 1 in\. above the least$/);
  });
});

describe('a picture of cloth in words', () => {
  test('names the cloth, and counts what is cut from it', () => {
    const [bought] = clothTiles([squares()], [line('1')]);
    expect(pictureWords(bought!, 'in')).toMatch(/^Cloth by the length, 42 in\. usable: 10 pieces in 2 strips/);
    const [quarters] = clothTiles([{ ...squares(fatQuarter), times: 3 }], [line('1')]);
    expect(clothWords(quarters!, 'in')).toBe('Fat quarter, 22 × 18 in.: 3 cut alike');
  });
});

describe('what is typed about cloth', () => {
  test.each<[string, { readonly percent: Rational } | { readonly length: Rational }]>([
    ['10 %', { percent: rational(10) }],
    ['7,5%', { percent: rational(15, 2) }],
    ['5 per cent', { percent: rational(5) }],
    ['4 1/2', { length: rational(9, 2) }],
    ['2.54 cm', { length: rational(1) }],
  ])('“%s” is a margin', (text, margin) => {
    const read = typedMargin(text, 'in');
    expect(read).toEqual({ ok: true, value: margin });
  });

  test.each(['much', '%', '-3 %', '1/0'])('“%s” is none, said in one sentence', (text) => {
    const read = typedMargin(text, 'in');
    expect(read.ok ? '' : read.problem.sentence).toMatch(/^“.*\.$/);
  });

  test('a margin is shown as it would be typed', () => {
    for (const text of ['10 %', '4 1/2 in.', '0 in.']) {
      const read = typedMargin(text, 'in');
      expect(read.ok && marginWords(read.value, 'in')).toBe(text);
    }
  });

  test('is chosen where it holds; else nothing is, and the answer says why', () => {
    const taken: Choices[] = [];
    const width = takingLength('in', (some) => taken.push(some), (length) => ({ width: length }));
    expect(width('40 in')).toBeNull();
    expect(taken).toEqual([{ width: rational(40) }]);
    expect(width('wide')).toContain('is not a length');
    expect(width('0')).toContain('must be more than 0');
    expect(chosen({ cloths: { oat: { have: [{ width: rational(3), length: rational(4), count: 0 }] } } }, 'in', (some) => taken.push(some))).toContain('whole number');
    expect(taken).toHaveLength(1);
  });

  test('what is as usual again is left out of the choices', () => {
    const cloths = { oat: { sold: 'fat quarter', width: rational(40) }, rye: { sold: 'fat eighth' } } as const;
    expect(withCloth(cloths, 'oat', { ...cloths.oat, sold: undefined })).toEqual({ cloths: { oat: { width: rational(40) }, rye: cloths.rye } });
    expect(withCloth(cloths, 'oat', { sold: undefined, width: undefined })).toEqual({ cloths: { rye: cloths.rye } });
  });
});

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { formatLength, parseLength, printLength } from '../../src/measure/lengths.ts';
import { rational } from '../../src/measure/rational.ts';

const laws = { seed: 20260712, numRuns: 500 };
const anyLength = fc.tuple(fc.integer({ min: 0, max: 200_000 }), fc.integer({ min: 1, max: 1000 })).map(([n, d]) => rational(n, d));

describe('a length as people type it', () => {
  test.each([
    ['6 1/2', 13, 2, null],
    ['6.5', 13, 2, null],
    ['6,5', 13, 2, null],
    ['6½', 13, 2, null],
    ['6 ½', 13, 2, null],
    ['13/2', 13, 2, null],
    ['6-1/2', 13, 2, null],
    ['6\u20111/2', 13, 2, null],
    ['6 1\u20442', 13, 2, null],
    ['  6\u00a01/2  ', 13, 2, null],
    ['16,5 cm', 33, 2, 'cm'],
    ['6 1/2"', 13, 2, 'in'],
    ['6 1/2″', 13, 2, 'in'],
    ['6 1/2”', 13, 2, 'in'],
    ["6 1/2''", 13, 2, 'in'],
    ['6 1/2 in', 13, 2, 'in'],
    ['6 1/2 in.', 13, 2, 'in'],
    ['6½in', 13, 2, 'in'],
    ['12 inches', 12, 1, 'in'],
    ['1 INCH', 1, 1, 'in'],
    ['0.75cm', 3, 4, 'cm'],
    ['0,75 cm', 3, 4, 'cm'],
    ['1 mm', 1, 10, 'cm'],
    ['7.5 mm', 3, 4, 'cm'],
    ['2 centimetres', 2, 1, 'cm'],
    ['.25', 1, 4, null],
    ['⅞', 7, 8, null],
    ['1⅓', 4, 3, null],
    ['0', 0, 1, null],
    ['12', 12, 1, null],
    ['6 0/2', 6, 1, null],
  ] as const)('%s', (text, n, d, unit) => {
    expect(parseLength(text)).toEqual({ ok: true, value: { value: rational(n, d), unit } });
  });

  test.each([
    ['3/0', 'length-denominator-0', 'denominator of 0'],
    ['6 1/0', 'length-denominator-0', 'denominator of 0'],
    ['', 'length-not-a-number', 'not a length'],
    ['six', 'length-not-a-number', '“six”'],
    ['cm', 'length-not-a-number', 'not a length'],
    ['NaN', 'length-not-a-number', 'not a length'],
    ['Infinity', 'length-not-a-number', 'not a length'],
    ['1e3', 'length-not-a-number', 'not a length'],
    ['0x10', 'length-not-a-number', 'not a length'],
    ['1,234.5', 'length-not-a-number', 'not a length'],
    ['6 3/2', 'length-not-a-number', 'not a length'],
    ['6 1 /2 1/2', 'length-not-a-number', 'not a length'],
    ['<b>6</b>', 'length-not-a-number', 'not a length'],
    ['-6', 'length-negative', 'cannot be negative'],
    ['−1/2', 'length-negative', 'cannot be negative'],
    ['1'.repeat(41), 'length-too-long', '41 characters'],
    ['9'.repeat(40), 'length-too-fine', 'more digits'],
    ['0.12345678901234567890', 'length-too-fine', 'more digits'],
    ['9007199254740991/9007199254740993', 'length-too-fine', 'more digits'],
  ])('%s is refused in one sentence', (text, code, says) => {
    const result = parseLength(text);
    expect(result.ok).toBe(false);
    if (result.ok) return;
    expect(result.problem.code).toBe(code);
    expect(result.problem.sentence).toContain(says);
    expect(result.problem.sentence).toMatch(/^[^\n]{10,140}\.$/);
  });

  test('never throws, whatever is typed', () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 60, unit: 'grapheme' }), (text) => {
        expect(typeof parseLength(text).ok).toBe('boolean');
      }),
      laws,
    );
  });
});

describe('a length as it is written', () => {
  test.each([
    [rational(15, 8), '1 7/8', '1 7/8 in.', '1,875 cm'],
    [rational(12), '12', '12 in.', '12 cm'],
    [rational(3, 8), '3/8', '3/8 in.', '0,375 cm'],
    [rational(0), '0', '0 in.', '0 cm'],
    [rational(24, 5), '4 4/5', '4 4/5 in.', '4,8 cm'],
    [rational(10, 3), '3 1/3', '3 1/3 in.', '3 1/3 cm'],
    [rational(201, 200), '1 1/200', '1 1/200 in.', '1,005 cm'],
    [rational(-3, 2), '-1 1/2', '-1 1/2 in.', null],
  ])('%j', (value, plain, inches, centimetres) => {
    expect(formatLength(value)).toBe(plain);
    expect(printLength(value, 'in')).toBe(inches);
    if (centimetres !== null) expect(printLength(value, 'cm')).toBe(centimetres);
  });

  test('bare leaves the unit to the column heading', () => {
    expect(printLength(rational(15, 8), 'in', 'bare')).toBe('1 7/8');
    expect(printLength(rational(24, 5), 'cm', 'bare')).toBe('4,8');
  });

  test('is read back as the same length', () => {
    fc.assert(
      fc.property(anyLength, fc.constantFrom('in', 'cm'), (value, unit) => {
        expect(parseLength(formatLength(value))).toEqual({ ok: true, value: { value, unit: null } });
        expect(parseLength(printLength(value, unit))).toEqual({ ok: true, value: { value, unit } });
      }),
      laws,
    );
  });
});

import { describe, expect, test } from 'vitest';
import { printLength } from '../../src/measure/lengths.ts';
import { add, compare, divide, multiply, rational, subtract, upToStep } from '../../src/measure/rational.ts';
import { ceilToStep, compareWith, plus, rootOf, times } from '../../src/measure/surd.ts';
import { cornerTriangleSquare, halfSquare, quarterSquare, sideTriangleSquare } from '../../src/cutting/formulas.ts';
import { SOURCES, length } from './published-sizes.ts';

describe.each(SOURCES)('$source', ({ values, ruler, differs }) => {
  test.each(values.map((value) => [value.what, value.published, value] as const))('%s: %s', (_, published, { exact, ours }) => {
    const cut = ceilToStep(exact, ruler);
    expect(cut).toEqual(length(ours ?? published));
    if (ours !== undefined) {
      expect(differs).toBeDefined();
      expect(cut).not.toEqual(length(published));
    }
  });
});

describe('the published tables for setting triangles', () => {
  const settings = SOURCES.filter(({ source }) => /How to make setting|Quilty math/.test(source)).flatMap(({ values }) => values);
  const block = (what: string): string => what.replace(/^.* /, '').trim();
  const blocks = settings.map(({ what, published }) => [what, /block of (.*)$/.exec(what)?.[1] ?? block(what), published] as const);

  test.each(blocks)('%s (block %s) follows its rule 1.414 b + 1 1/4, or b/1.414 + 7/8, rounded up: %s', (what, b, published) => {
    const rule = what.startsWith('side')
      ? add(multiply(length(b), rational(1414, 1000)), rational(5, 4))
      : add(divide(length(b), rational(1414, 1000)), rational(7, 8));
    // The one entry that is larger than its rule.
    const larger = what.startsWith('corner') && b === '3 1/2' ? rational(1, 8) : rational(0);
    expect(add(upToStep(rule, rational(1, 8)), larger)).toEqual(length(published));
  });

  test.each(blocks)('%s (block %s) at %s is never less than ours and at most an eighth more', (what, b, published) => {
    const exact = what.startsWith('side') ? sideTriangleSquare(length(b), rational(1, 4)) : cornerTriangleSquare(length(b), rational(1, 4));
    const difference = subtract(length(published), ceilToStep(exact, rational(1, 8)));
    expect([0, 1].map((eighths) => rational(eighths, 8))).toContainEqual(difference);
    expect(compareWith(exact, length(published))).toBeLessThan(0);
  });

  test('are rounded differently in two sources: 16-in. blocks take 23 7/8 by 1.414 and 24 by √2', () => {
    const byRoot = plus(times(rootOf(rational(2)), rational(16)), rational(5, 4));
    expect(ceilToStep(byRoot, rational(1, 8))).toEqual(rational(24));
    expect(compare(upToStep(add(multiply(rational(1414, 1000), rational(16)), rational(5, 4)), rational(1, 8)), length('23 7/8'))).toBe(0);
  });
});

describe('metric adds', () => {
  // Derived by geometry; the published + 2.5 and + 3.5 at 0.75 cm (weednstitch, 2012) are rounded down.
  test.each([
    ['3/4', '2,561', '3,622'],
    ['3/5', '2,049', '2,898'],
    ['0.635', '2,169', '3,067'],
  ])('with a seam of %s cm: half-square + %s, quarter-square + %s', (seam, halfAdd, quarterAdd) => {
    const toMicron = (add: ReturnType<typeof halfSquare>): string => printLength(ceilToStep(add, rational(1, 1000)), 'cm', 'bare');
    expect(toMicron(halfSquare(rational(0), length(seam)))).toBe(halfAdd);
    expect(toMicron(quarterSquare(rational(0), length(seam)))).toBe(quarterAdd);
  });
});

test('at least 120 published values are checked', () => {
  const different = new Set(SOURCES.flatMap(({ source, values }) => values.map(({ what, published }) => `${source}|${what}|${published}`)));
  expect(different.size).toBe(SOURCES.flatMap(({ values }) => values).length);
  expect(different.size).toBeGreaterThanOrEqual(120);
});

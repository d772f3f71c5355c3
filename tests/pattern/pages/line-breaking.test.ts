import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { breaksOf, GLUED, lineCost, type Atom } from '../../../src/pattern/pages/line-breaking.ts';
import { blockItems, linesOf, type Line } from '../../../src/pattern/pages/text-lines.ts';
import { typographyOf } from '../../../src/pattern/pages/typography.ts';
import type { TextItem } from '../../../src/pattern/pages/page.ts';
import { printed } from '../../../src/pattern/telling/kept.ts';
import { telling } from './any-content.ts';
import { setting } from './laid.ts';

const atom: fc.Arbitrary<Atom> = fc.record({
  wide: fc.integer({ min: 1, max: 40 }),
  space: fc.constantFrom(0, 3),
  cost: fc.constantFrom(0, 0, 0, 0.05, 0.3, GLUED),
});

/** What a way of breaking costs: the sum of its lines; endless where a line is too long. */
function costOf(atoms: readonly Atom[], starts: readonly number[], width: number): number {
  return starts.reduce((sum, start, i) => {
    const row = atoms.slice(start, starts[i + 1] ?? atoms.length);
    const wide = row.reduce((all, { wide: each, space }, k) => all + each + (k > 0 ? space : 0), 0);
    if (wide > width) return Infinity;
    return sum + lineCost(wide, width, { first: i === 0, last: i === starts.length - 1 }) + (i > 0 ? row[0]!.cost : 0);
  }, 0);
}

describe('lines', () => {
  test('are broken as well as any way of breaking them, all tried', () => {
    fc.assert(
      fc.property(fc.array(atom, { minLength: 1, maxLength: 10 }), fc.integer({ min: 40, max: 110 }), (atoms, width) => {
        const starts = breaksOf(atoms, width);
        const ways = Array.from({ length: 2 ** (atoms.length - 1) }, (_, bits) => [
          0,
          ...atoms.slice(1).flatMap((_each, i) => (bits & (1 << i) ? [i + 1] : [])),
        ]);
        const least = Math.min(...ways.map((way) => costOf(atoms, way, width)));
        expect(costOf(atoms, starts, width)).toBeCloseTo(least, 6);
      }),
      { seed: 20261125, numRuns: 150 },
    );
  });

  const look = typographyOf({ letters: 'usual' }).body;
  const lined = (told: string, width: number): readonly Line[] =>
    linesOf(told, look, width, { telling, setting, places: new Set(['unit A']) });
  const textOf = (line: Line): string =>
    blockItems([line], 0, 0, {})
      .flatMap((item) => (item.kind === 'text' ? [item.text] : []))
      .join('');

  test('hold the whole text, are no wider than their column, and are as wide as they say', () => {
    const word = fc.oneof(
      fc.string({ unit: 'grapheme', minLength: 1, maxLength: 12 }).map((text) => text.replace(/[{}]/gu, '')),
      fc.constantFrom('half-square', '{unit A}', '{length 7/8 in}', 'W'.repeat(200), '1 7⁄16'),
    );
    fc.assert(
      fc.property(fc.array(word, { maxLength: 60 }), fc.integer({ min: 40, max: 500 }), (words, width) => {
        const told = words.join(' ');
        const lines = lined(told, width);
        expect(lines.map(textOf).join('').replace(/\s/gu, '')).toBe(setting.shown(printed(told, telling)).replace(/\s/gu, ''));
        for (const line of lines) {
          expect(line.wide).toBeLessThanOrEqual(width + 1e-6);
          const texts = blockItems([line], 0, 0, {}).filter((item): item is TextItem => item.kind === 'text');
          expect(texts.reduce((sum, { text, size, weight }) => sum + setting.widthOf(text, size, weight), 0)).toBeLessThanOrEqual(
            line.wide + 1e-6,
          );
          expect(texts.reduce((sum, { width: each }) => sum + each, 0)).toBeCloseTo(line.wide, 6);
        }
      }),
      { seed: 20261125, numRuns: 150 },
    );
  });

  test('never part a value from its unit where a line holds both', () => {
    for (let width = 60; width < 400; width += 7) {
      const lines = lined(
        'Cut 3 strips {length 9/2 in} wide and {bare 3/2 in} × {length 7/2 in} pieces, then 4½ in. more, and 2 1/2 in. more.',
        width,
      ).map(textOf);
      for (const value of ['4 1/2 in.', '1 1/2 × 3 1/2 in.', '4½ in.', '2 1/2 in.']) {
        if (setting.widthOf(value, look.size, 'regular') < width)
          expect(
            lines.some((line) => line.includes(value)),
            `${value} at ${width}: ${lines.join(' / ')}`,
          ).toBe(true);
      }
    }
  });

  test('of plain words are one text each; a unit’s letter stands out and leads to its step', () => {
    const plain = lined(
      'Sew the four squares together in two rows of two, press toward the darker side and measure what comes out of it.',
      200,
    );
    expect(plain.length).toBeGreaterThan(2);
    for (const line of plain) expect(blockItems([line], 0, 0, {})).toHaveLength(1);
    const [line] = lined('Sew {unit A}, then press.', 400);
    const items = blockItems([line!], 10, 0, {});
    expect(items.map((item) => (item.kind === 'text' ? [item.text, item.weight] : item.kind))).toEqual([
      ['Sew ', 'regular'],
      ['A', 'strong'],
      [', then press.', 'regular'],
      'link',
    ]);
    const [before, letter, , link] = items as [TextItem, TextItem, TextItem, Extract<(typeof items)[number], { kind: 'link' }>];
    expect(letter.x).toBeCloseTo(before.x + before.width, 9);
    expect([link.to, link.area.left, link.area.width]).toEqual(['unit A', letter.x, letter.width]);
  });
});

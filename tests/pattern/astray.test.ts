import { describe, expect, it } from 'vitest';
import { rational, toNumber } from '../../src/measure/rational.ts';
import { makePattern } from '../../src/pattern/make-pattern.ts';
import { astray } from '../../src/pattern/diagrams/astray.ts';
import type { Pattern } from '../../src/pattern/pattern.ts';
import { must } from '../block/drawn.ts';
import { blockNamed, namesIn } from './made.ts';

const patternOf = (folder: 'cases' | 'gallery', name: string): Pattern => must(makePattern(blockNamed(folder, name), {}, 'chosen way'));
const NONE = { allowance: rational(0), cutting: rational(0) };

describe('a block as it really comes out', () => {
  it('is the drawing where nothing is off: every piece in its place and its fabric, every seam met', () => {
    for (const name of namesIn('gallery').filter((_, i) => i % 5 === 2)) {
      const pattern = patternOf('gallery', name);
      const scale = toNumber(pattern.lattice.step);
      const written = (fabric: string, outline: readonly (readonly [number, number])[]): string =>
        `${fabric} ${outline.map(([x, y]) => `${(x + 0).toFixed(5)},${(y + 0).toFixed(5)}`.replaceAll('-0.00000', '0.00000')).sort().join(' ')}`;
      const drawn = pattern.pieces.map(({ fabric, outline }) => written(fabric, outline.map(({ x, y, w }) => [(x / w) * scale, (y / w) * scale] as const)));
      const { pieces, missed, width } = astray(pattern, NONE, 4);
      expect(pieces.map(({ fabric, outline }) => written(fabric, outline)).sort(), name).toEqual(drawn.sort());
      expect(missed).toEqual([]);
      expect(width.top).toEqual(pattern.block.unfinished.width);
    }
  });

  it('comes out half an inch too small after 8 seams that each take 1/32 in. too much on both sides', () => {
    // 8 seams at 1/32 in. make 1/2 in.: homeschoolquilting.com, block construction, counts both sides as 16 seams.
    const pattern = patternOf('gallery', 'trip-around-the-world-9');
    const { width, height } = astray(pattern, { ...NONE, allowance: rational(1, 32) }, 1);
    expect([width.top, height.left].map(toNumber)).toEqual([9, 9]);
  });

  it('loses points first where rows of many seams meet rows of few', () => {
    const pattern = patternOf('cases', 'double-nine-patch-9');
    const { missed } = astray(pattern, { ...NONE, allowance: rational(1, 32) }, 1);
    expect(missed.length).toBeGreaterThan(0);
    expect(missed.map(({ apart }) => toNumber(apart))).toEqual(missed.map(({ apart }) => toNumber(apart)).toSorted((a, b) => b - a));
  });

  it('lays pieces edge to edge along a row, each as much narrower as its seams take', () => {
    const pattern = patternOf('cases', 'log-cabin-11');
    const { pieces } = astray(pattern, { ...NONE, allowance: rational(1, 16) }, 1);
    const spans = pieces.map(({ outline }) => {
      const ys = outline.map(([, y]) => y);
      return [Math.min(...ys), Math.max(...ys)] as const;
    });
    // The middle, 1 in. finished, shows 1/8 in. less; the strip above it ends where it begins.
    const centre = spans[0]!;
    expect(centre[1] - centre[0]).toBeCloseTo(0.875, 9);
    expect(spans.some(([, end]) => Math.abs(end - centre[0]) < 1e-9)).toBe(true);
  });
});

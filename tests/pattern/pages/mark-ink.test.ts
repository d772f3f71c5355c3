import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Mark } from '../../../src/pattern/diagrams/diagram.ts';
import { depthIn, type Spot } from '../../../src/pattern/polygons.ts';
import { clothLook, type ClothLook } from '../../../src/pattern/pages/cloth-look.ts';
import { hatchInk, HATCHES } from '../../../src/pattern/pages/hatches.ts';
import { inkOfMarks, type FigureLook } from '../../../src/pattern/pages/mark-ink.ts';
import type { Item, PathItem, TextItem } from '../../../src/pattern/pages/page.ts';
import { telling } from './any-content.ts';
import { inkBox, setting, spotsOf } from './laid.ts';

const square: readonly Spot[] = [
  [0, 0],
  [10, 0],
  [10, 10],
  [0, 10],
];
const look = (cloth: ClothLook): FigureLook => ({ cloth, telling, setting, letters: 1 });
const cloth = (fabric: string, side: 'right' | 'wrong' = 'right', outline = square): Mark => ({ mark: 'cloth', fabric, side, outline });
const drawn = (marks: readonly Mark[], cloths: ClothLook, size = 100): readonly Item[] =>
  inkOfMarks(marks, { left: 0, top: 0, width: 10, height: 10 }, { left: 50, top: 50, width: size, height: size }, look(cloths));
/** What is seen of it, wherever it belongs to. */
const seen = (items: readonly Item[]): string => JSON.stringify(items.map((item) => ({ ...item, what: '' })));

describe('a figure on paper', () => {
  test('keeps its hatches inside the cloth', () => {
    const corner = fc.tuple(fc.double({ min: 0, max: 1, noNaN: true }), fc.integer({ min: 8, max: 60 }));
    fc.assert(
      fc.property(fc.array(corner, { minLength: 3, maxLength: 6 }), fc.constantFrom(...HATCHES), (corners, hatch) => {
        // Corners in the order of their angle about a middle, on a circle: convex, clockwise on screen.
        const angles = [...new Set(corners.map(([turn]) => Math.round(turn * 36)))].sort((a, b) => a - b);
        if (angles.length < 3) return;
        const outline = angles.map((angle): Spot => [100 + 40 * Math.cos(angle / 6), 100 + 40 * Math.sin(angle / 6)]);
        for (const { steps } of hatchInk(hatch, [outline], [3, 7])) {
          for (const spot of spotsOf({ kind: 'path', what: '', steps })) expect(depthIn(outline, spot)).toBeGreaterThan(-0.6);
        }
        for (const { steps, width } of hatchInk(hatch, [outline], [3, 7])) {
          if (width !== undefined && !hatch.dots)
            for (const spot of spotsOf({ kind: 'path', what: '', steps })) expect(Math.abs(depthIn(outline, spot))).toBeLessThan(1e-6);
        }
      }),
      { seed: 20261125, numRuns: 200 },
    );
  });

  test('shows thirteen fabrics, and thirty, each in a hatch of its own, the lighter colour with less ink', () => {
    for (const count of [1, 2, 5, 13, 30]) {
      const ids = Array.from({ length: count }, (_, i) => `f${i}`);
      const grey = (i: number): string =>
        Math.round(250 - (200 * i) / Math.max(1, count - 1))
          .toString(16)
          .padStart(2, '0')
          .repeat(3);
      const cloths = clothLook(ids, new Map(ids.map((id, i) => [id, `#${grey(i)}`])), 'hatches');
      expect(new Set(ids.map((id) => seen(drawn([cloth(id)], cloths)))).size).toBe(count);
      expect(cloths.hatches.get('f0')).toEqual({});
      if (count > 1) expect(cloths.hatches.get(`f${count - 1}`)!.ground).toBeDefined();
    }
  });

  test('tells the wrong side of cloth by lines, not by its colour alone', () => {
    for (const ink of ['colours', 'hatches'] as const) {
      const cloths = clothLook(
        ['teal', 'fog'],
        new Map([
          ['teal', '#2f5d62'],
          ['fog', '#eeeeee'],
        ]),
        ink,
      );
      for (const fabric of ['teal', 'fog', 'nothing']) {
        const [right, wrong] = [drawn([cloth(fabric)], cloths), drawn([cloth(fabric, 'wrong')], cloths)];
        const lines = (items: readonly Item[]): number => items.filter((item) => item.kind === 'path' && item.what === 'wrong side').length;
        expect([lines(right), lines(wrong)]).toEqual([0, 1]);
      }
    }
  });

  test('stays in its area at every size, with lines as wide as ever', () => {
    const cloths = clothLook(['teal'], new Map([['teal', '#2f5d62']]), 'colours');
    const marks: readonly Mark[] = [
      cloth('teal'),
      { mark: 'line', line: 'stitched', from: [0, 0], to: [10, 10] },
      { mark: 'line', line: 'cut', from: [0, 10], to: [10, 0] },
      { mark: 'pressed', from: [5, 5], to: [6, 6] },
      { mark: 'pressed open', from: [2, 2], to: [3, 2] },
      { mark: 'name', text: 'A', at: [5, 5], turn: 1, room: 6 },
      { mark: 'order', number: 3, at: [8, 3] },
    ];
    const widths = (items: readonly Item[]): readonly (number | undefined)[] =>
      items.flatMap((item) => (item.kind === 'path' && item.what !== 'heads of arrows' ? [item.stroke?.width] : []));
    for (const size of [60, 100, 300]) {
      const items = drawn(marks, cloths, size);
      for (const item of items) {
        const { left, top, right, bottom } = inkBox(item);
        expect(Math.min(left - 50, top - 50, 50 + size - right, 50 + size - bottom)).toBeGreaterThan(-0.01);
      }
      expect(widths(items)).toEqual(widths(drawn(marks, cloths)));
    }
  });

  test('turns a name as its unit lies, in the middle of its place', () => {
    const cloths = clothLook([], new Map(), 'colours');
    for (const turn of [0, 1, 2, 3] as const) {
      const [text] = drawn([{ mark: 'name', text: 'AB', at: [5, 5], turn, room: 8 }], cloths).filter(
        (item): item is TextItem => item.kind === 'text',
      );
      expect(text!.turn ?? 0).toBe(turn);
      const { left, right, top, bottom } = inkBox(text!);
      const [across, down] = turn % 2 === 0 ? [right - left, bottom - top] : [bottom - top, right - left];
      expect(across).toBeCloseTo(text!.width, 6);
      expect(down).toBeCloseTo(text!.size * 0.96, 6);
      expect(Math.hypot((left + right) / 2 - 100, (top + bottom) / 2 - 100)).toBeLessThan(text!.size * 0.1);
    }
  });

  test('draws cloth that lies on cloth above it, and neighbours of one fabric as one path', () => {
    const cloths = clothLook(['teal'], new Map([['teal', '#2f5d62']]), 'colours');
    const beside = (dx: number): readonly Spot[] =>
      [
        [0, 0],
        [4, 0],
        [4, 4],
        [0, 4],
      ].map(([x, y]): Spot => [x! + dx, y!]);
    const paths = (marks: readonly Mark[]): number =>
      drawn(marks, cloths).filter((item): item is PathItem => item.kind === 'path' && item.what === 'cloth teal').length;
    expect(paths([cloth('teal', 'right', beside(0)), cloth('teal', 'right', beside(4))])).toBe(1);
    expect(paths([cloth('teal', 'right', beside(0)), cloth('teal', 'right', beside(2))])).toBe(2);
  });
});

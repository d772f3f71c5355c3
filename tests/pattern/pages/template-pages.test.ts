import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import type { Block } from '../../../src/block/block.ts';
import { templatesOf } from '../../../src/cutting/template-list.ts';
import { parseBlock } from '../../../src/files/block-file.ts';
import { multiply, rational } from '../../../src/measure/rational.ts';
import { inkOf } from '../../../src/pattern/pages/ink.ts';
import type { Document, Page } from '../../../src/pattern/pages/page.ts';
import { MARGIN, POINTS } from '../../../src/pattern/pages/paper.ts';
import { turnedBy, type Spot } from '../../../src/pattern/polygons.ts';
import { inkOfTemplate, saidAt } from '../../../src/pattern/pages/template-drawing.ts';
import { templatePages } from '../../../src/pattern/pages/template-pages.ts';
import type { Pattern } from '../../../src/pattern/pattern.ts';
import { between } from '../../cutting/buffer.ts';
import { blockNamed, patternOf } from '../made.ts';
import { byTemplate, inkBox, paths, setting, spotsOf, texts } from './laid.ts';

const demo = readdirSync('demo-blocks')
  .filter((file) => file.endsWith('.block.json'))
  .map((file): readonly [string, Block] => {
    const read = parseBlock(readFileSync(`demo-blocks/${file}`, 'utf8'));
    if (!read.ok) throw new Error(read.problem.sentence);
    return [file.slice(0, -'.block.json'.length), read.value];
  });
const blocks: readonly (readonly [string, Block])[] = [
  ...demo,
  ...['peaked-star-12', 'star-and-diamond-8', 'crown-of-thorns-10'].map(
    (name) => [name, blockNamed('gallery', name)] as const,
  ),
];

const cutLines = (page: Page): readonly (readonly [string, readonly Spot[]])[] =>
  paths(page, 'cut line').map((item) => [item.what.slice('cut line '.length), spotsOf(item)]);

function expectWithinMargins({ pages }: Document): void {
  for (const { width, height, items } of pages) {
    for (const item of items) {
      const { left, top, right, bottom } = inkBox(item);
      const what = 'text' in item ? item.text : 'what' in item ? item.what : item.kind;
      expect([what, left >= MARGIN - 1e-6, top >= MARGIN - 1e-6, right <= width - MARGIN + 1e-6, bottom <= height - MARGIN + 1e-6]).toEqual([
        what, true, true, true, true,
      ]);
    }
  }
}

/** No two lines of text lie on each other, and none on a template that it does not belong to. */
function expectTextsApart(page: Page): void {
  const boxes = texts(page).map((text) => [text.text, inkBox(text)] as const);
  for (const [i, [said, a]] of boxes.entries()) {
    for (const [other, b] of boxes.slice(i + 1)) {
      const apart = a.left >= b.right - 0.01 || b.left >= a.right - 0.01 || a.top >= b.bottom - 0.01 || b.top >= a.bottom - 0.01;
      expect([said, other, apart]).toEqual([said, other, true]);
    }
  }
}

function expectSquaresToMeasure(page: Page): void {
  for (const [what, side] of [['square of 1 in.', 72], ['square of 2 cm', 144 / 2.54]] as const) {
    const [square, ...others] = paths(page, what);
    expect(others).toEqual([]);
    const [xs, ys] = [0, 1].map((axis) => spotsOf(square!).map((spot) => spot[axis]!)) as [number[], number[]];
    for (const all of [xs, ys]) expect(Math.abs(Math.max(...all) - Math.min(...all) - side)).toBeLessThan(1e-9);
  }
}

const areaOf = (outline: readonly Spot[]): number =>
  outline.reduce((sum, [x, y], i) => {
    const [nextX, nextY] = outline[(i + 1) % outline.length]!;
    return sum + (x * nextY - nextX * y) / 2;
  }, 0);

/** Lengths of the sides, from the least one on, which say what an outline is wherever it lies and however it is turned. */
function sides(outline: readonly Spot[]): readonly number[] {
  const all = outline.map(([x, y], i) => Math.hypot(x - outline[(i + 1) % outline.length]![0], y - outline[(i + 1) % outline.length]![1]));
  const before = (a: readonly number[], b: readonly number[]): boolean => {
    const i = a.findIndex((side, k) => Math.abs(side - b[k]!) > 1e-7);
    return i >= 0 && a[i]! < b[i]!;
  };
  return all.map((_, i) => [...all.slice(i), ...all.slice(0, i)]).reduce((a, b) => (before(b, a) ? b : a));
}

const outlinesOf = (pattern: Pattern): readonly (readonly Spot[])[] =>
  templatesOf(pattern).map(({ outline }) => outline.flat().map((place) => inkOf(place).map((x) => x * POINTS[pattern.block.unit]) as unknown as Spot));

describe('pages of templates', () => {
  // In A4 every third is enough.
  test.each(blocks.map((block, i) => [...block, i % 3 === 0 ? (['letter', 'a4'] as const) : (['letter'] as const)] as const))('of %s: each once, at full size, apart, within the margins, with squares to measure', (_, block, papers) => {
    const pattern = byTemplate(block);
    const wanted = outlinesOf(pattern);
    for (const paper of papers) {
      const document = templatePages(pattern, paper, setting);
      expectWithinMargins(document);
      const parted = new Set(document.pages.flatMap((page) => (paths(page, 'match line').length > 0 ? cutLines(page).map(([name]) => name) : [])));
      const found = document.pages.flatMap(cutLines).filter(([name]) => !parted.has(name));
      expect([...found.map(([name]) => name), ...parted].sort()).toEqual(wanted.map((__, i) => `T${i + 1}`).sort());
      // As few pages as the area of the templates allows; where they do not lie so close together, or in parts, one more.
      const { width, height } = document.pages[0] ?? { width: 1, height: 1 };
      const least = Math.ceil(found.reduce((sum, [, outline]) => sum + areaOf(outline), 0) / ((width - 2 * MARGIN) * (height - 2 * MARGIN)));
      expect(document.pages.filter((page) => cutLines(page).some(([name]) => !parted.has(name))).length).toBeLessThanOrEqual(least + 1);
      for (const [name, outline] of found) {
        const exact = sides(wanted[Number(name.slice(1)) - 1]!);
        sides(outline).forEach((side, i) => expect(Math.abs(side - exact[i]!)).toBeLessThan(1e-6));
      }
      for (const page of document.pages) {
        expectTextsApart(page);
        expectSquaresToMeasure(page);
        const outlines = cutLines(page).map(([, outline]) => outline);
        for (const [i, outline] of outlines.entries()) {
          for (const other of outlines.slice(i + 1)) {
            const { shared, distance } = between(outline, other);
            expect(shared).toBe(0);
            // An eighth of an inch, for the scissors.
            expect(distance).toBeGreaterThan(9 - 1e-6);
          }
        }
      }
    }
  });

  test('name the fabric, how many are cut of it and how many turned over', () => {
    const said = templatePages(byTemplate(blockNamed('gallery', 'peaked-star-12')), 'letter', setting).pages.flatMap(texts);
    expect(said.map(({ text }) => text)).toEqual(expect.arrayContaining(['Peaked Star', 'T1', 'Cut 4: Oat (line 1)', 'T2', 'Cut 4 and 4 reversed: Ink (lines 4 and 5)']));
  });

  test('are none where a ruler cuts every piece', () => {
    expect(templatePages(patternOf(blockNamed('cases', 'shoo-fly-12')), 'letter', setting).pages).toEqual([]);
  });

  test('say so where the proof does not hold', () => {
    const pattern = byTemplate(blockNamed('gallery', 'peaked-star-12'));
    const { pages } = templatePages({ ...pattern, proof: { holds: false, faults: ['a fault'] } as unknown as Pattern['proof'] }, 'letter', setting);
    for (const page of pages) expect(texts(page).map(({ text }) => text).join(' ')).toContain('Do not cut yet');
  });
});

describe('a template larger than a page', () => {
  const small = blockNamed('gallery', 'peaked-star-12');
  const times = (n: number): Block => ({
    ...small,
    finished: { ...small.finished, width: multiply(small.finished.width, rational(n)), height: multiply(small.finished.height, rational(n)) },
  });

  test.each([[3], [6]])('is printed in parts that meet at lettered lines: %i times its size', (n) => {
    const pattern = byTemplate(times(n));
    const document = templatePages(pattern, 'letter', setting);
    expectWithinMargins(document);
    const exact = outlinesOf(pattern);
    const letters = (page: Page): ReadonlyMap<string, readonly Spot[]> => new Map(paths(page, 'match line').map((item) => [item.what, spotsOf(item)]));
    for (const [i, outline] of exact.entries()) {
      const parts = document.pages.filter((page) => paths(page, `cut line T${i + 1}`).length > 0);
      expect(parts.length).toBeGreaterThan(1);
      parts.forEach(expectTextsApart);
      parts.forEach(expectSquaresToMeasure);
      // Laid together as a person does it: line on line, from the first part on.
      const laid = new Map<Page, Spot>([[parts[0]!, [0, 0]]]);
      for (const [page, [dx, dy]] of laid) {
        for (const other of parts) {
          if (laid.has(other)) continue;
          for (const [letter, [here]] of letters(page)) {
            const there = letters(other).get(letter)?.[0];
            if (there !== undefined && here !== undefined) laid.set(other, [dx + here[0] - there[0], dy + here[1] - there[1]]);
          }
        }
      }
      expect(laid.size).toBe(parts.length);
      const drawn = parts.flatMap((page) => {
        const [dx, dy] = laid.get(page)!;
        return paths(page, `cut line T${i + 1}`).flatMap((item) => spotsOf(item).map(([x, y]): Spot => [x + dx, y + dy]));
      });
      // What reaches furthest, each way, is as far apart as on the whole template.
      const reach = (spots: readonly Spot[], axis: 0 | 1): number => Math.max(...spots.map((s) => s[axis])) - Math.min(...spots.map((s) => s[axis]));
      const [a, b] = [[reach(drawn, 0), reach(drawn, 1)], [reach(outline, 0), reach(outline, 1)]].map((both) => both.sort((x, y) => x - y)) as [number[], number[]];
      a.forEach((side, axis) => expect(Math.abs(side - b[axis]!)).toBeLessThan(1e-6));
      // Every line of the outline is drawn from end to end: no gap between the parts.
      const lines = parts.flatMap((page) => {
        const [dx, dy] = laid.get(page)!;
        return paths(page, `cut line T${i + 1}`).flatMap((item) => {
          const spots = spotsOf(item).map(([x, y]): Spot => [x + dx, y + dy]);
          return spots.flatMap((spot, k): (readonly [Spot, Spot])[] => (k % 2 === 0 && spots[k + 1] ? [[spot, spots[k + 1]!]] : []));
        });
      });
      const total = lines.reduce((sum, [p, q]) => sum + Math.hypot(p[0] - q[0], p[1] - q[1]), 0);
      expect(total).toBeGreaterThanOrEqual(sides(outline).reduce((sum, side) => sum + side, 0) - 1e-6);
    }
  });
});

describe('a print with an up and a down', () => {
  const block = blockNamed('gallery', 'peaked-star-12');
  const upright = { ...block, fabrics: block.fabrics.map((fabric) => ({ ...fabric, directional: true })) };

  test('is told where on a template its top lies, for every piece, as the template lies on the page', () => {
    // The four peaks of the star point outwards, so that each of their sides is up once.
    const [page] = templatePages(byTemplate(upright), 'letter', setting).pages;
    const said = texts(page!).map(({ text }) => text);
    expect(said).toContain('top of the print: ↑ 1, → 1, ↓ 1, ← 1');
    expect(said).toContain('top of the print: ↑ 2, → 2, ↓ 2, ← 2');
    expect(texts(templatePages(byTemplate(block), 'letter', setting).pages[0]!).some(({ text }) => text.includes('print:'))).toBe(false);
  });

  test('stays where it is in the block when the template is turned on the page', () => {
    // One goose, its long side along the bottom: the print's top is at its tip.
    const point = (x: number, y: number): readonly [number, number] => [x, y];
    const goose: Block = { ...upright, grid: { columns: 2, rows: 1 }, denominator: 1, finished: { ...upright.finished, width: rational(6), height: rational(3) }, patches: [{ fabric: upright.fabrics.find(({ id }) => id !== upright.ground)!.id, points: [point(0, 1), point(1, 0), point(2, 1)] }] };
    const [template] = templatesOf(byTemplate(goose)).filter(({ finished, uses }) => finished.length === 3 && uses[0]!.fabric !== upright.ground);
    expect(template!.uses[0]!.tops).toEqual([1, 0, 0, 0]);
    const ink = inkOfTemplate(template!, byTemplate(goose).lattice.step, 72, () => ({ name: 'Print', directional: true }));
    const signs = [0, 90, 180, 270].map((degrees) => {
      const tip = turnedBy(degrees)([0, -1]).map((x) => x + 0);
      return [saidAt(ink, degrees).says[0]!.print[0], tip];
    });
    expect(signs).toEqual([
      ['top of the print: ↑ 1', [0, -1]],
      ['top of the print: → 1', [1, 0]],
      ['top of the print: ↓ 1', [0, 1]],
      ['top of the print: ← 1', [-1, 0]],
    ]);
  });
});

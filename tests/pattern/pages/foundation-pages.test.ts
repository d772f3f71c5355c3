import { describe, expect, test } from 'vitest';
import { sectionsOf } from '../../../src/sewing/sections.ts';
import { rational, toNumber } from '../../../src/measure/rational.ts';
import { makePattern } from '../../../src/pattern/make-pattern.ts';
import { foundationPages, hasFoundations } from '../../../src/pattern/pages/foundation-pages.ts';
import { sectionInks } from '../../../src/pattern/diagrams/foundation.ts';
import type { Document } from '../../../src/pattern/pages/page.ts';
import { MARGIN } from '../../../src/pattern/pages/paper.ts';
import type { Pattern } from '../../../src/pattern/pattern.ts';
import { areaOf, type Polygon } from '../../../src/pattern/polygons.ts';
import { must } from '../../block/drawn.ts';
import { blockNamed } from '../made.ts';
import { inkBox, paths, setting, spotsOf, texts } from './laid.ts';

const INCH = 72;
const onFoundations = (name: string): Pattern => must(makePattern(blockNamed('gallery', name), { way: 'foundation' }, 'chosen way'));
const laid = (pattern: Pattern): Document => foundationPages(pattern, 'letter', setting);

/** Blocks whose sections fit a page each. */
const SMALL = ['flock-of-geese-8', 'kings-crown-8', 'star-and-diamond-8', 'cake-stand-8', 'louisiana-8'];

/** Sides in order, in points, from the longest run that sorts last: the same for an outline and its turned copies, another one for a mirror image. */
function shapeOf(outline: Polygon): string {
  const sides = outline.map((p, i) => {
    const q = outline[(i + 1) % outline.length]!;
    const r = outline[(i + 2) % outline.length]!;
    const turn = (q[0] - p[0]) * (r[1] - q[1]) - (q[1] - p[1]) * (r[0] - q[0]);
    return `${Math.hypot(q[0] - p[0], q[1] - p[1]).toFixed(3)}/${turn.toFixed(2)}`;
  });
  return sides.map((_, i) => [...sides.slice(i), ...sides.slice(0, i)].join(' ')).sort()[0]!;
}

const mirrored = (outline: Polygon): Polygon => outline.map(([x, y]): Polygon[number] => [-x, y]).reverse();

describe('printed foundations', () => {
  test('are their sections once more when they are seen in a mirror: at full size, each once, every line to sew on them', () => {
    for (const name of SMALL) {
      const pattern = onFoundations(name);
      const [step] = pattern.steps as [Pattern['steps'][number]];
      const sections = sectionInks({ step, pattern }).filter(({ pieces }) => pieces.length > 1);
      const { pages } = laid(pattern);
      const edges = pages.flatMap((page) => paths(page, 'seam line').map((path) => spotsOf(path)));
      const wanted = sections.map(({ outline }) => shapeOf(outline.map(([x, y]): Polygon[number] => [x * INCH, y * INCH])));
      expect(edges.map((edge) => shapeOf(mirrored(edge))).sort(), name).toEqual(wanted.sort());
      expect(pages.flatMap((page) => paths(page, 'sewing line')), name).toHaveLength(sections.reduce((sum, { lines }) => sum + lines.length, 0));
    }
  });

  test('are no longer their sections where nothing mirrors them', () => {
    const pattern = onFoundations('flock-of-geese-8');
    const [step] = pattern.steps as [Pattern['steps'][number]];
    const wanted = sectionInks({ step, pattern }).filter(({ pieces }) => pieces.length > 1).map(({ outline }) => shapeOf(outline.map(([x, y]): Polygon[number] => [x * INCH, y * INCH])));
    const edges = laid(pattern).pages.flatMap((page) => paths(page, 'seam line').map((path) => spotsOf(path)));
    expect(edges.map((edge) => shapeOf(edge)).sort()).not.toEqual(wanted.sort());
  });

  test('have an allowance all round, and every piece its number inside', () => {
    for (const name of SMALL) {
      const pattern = onFoundations(name);
      const [step] = pattern.steps as [Pattern['steps'][number]];
      const { pages } = laid(pattern);
      for (const page of pages) {
        const [cuts, edges] = [paths(page, 'cut line'), paths(page, 'seam line')].map((all) => all.map((path) => spotsOf(path))) as [Polygon[], Polygon[]];
        for (const [i, edge] of edges.entries()) {
          // Area of a convex outline with a strip of one allowance all round (Steiner), its corners sharp or cut across.
          const round = edge.reduce((sum, [x, y], k) => sum + Math.hypot(edge[(k + 1) % edge.length]![0] - x, edge[(k + 1) % edge.length]![1] - y), 0);
          expect(areaOf(cuts[i]!), name).toBeGreaterThan(areaOf(edge) + round * INCH * toNumber(pattern.choices.seam) + Math.PI * (INCH / 4) ** 2);
        }
        for (const item of page.items) {
          const { left, top, right, bottom } = inkBox(item);
          expect(Math.min(left, top)).toBeGreaterThanOrEqual(MARGIN - 0.01);
          expect(right).toBeLessThanOrEqual(page.width - MARGIN + 0.01);
          expect(bottom).toBeLessThanOrEqual(page.height - MARGIN + 0.01);
        }
      }
      const numbered = pages.flatMap((page) => texts(page).map(({ text }) => text)).filter((text) => /^[A-Z]?\d+$/.test(text));
      const sewn = sectionsOf(step).sections.filter(({ parts }) => parts.length > 1).flatMap(({ parts }) => parts.map((part) => part + 1));
      expect(numbered.map((text) => Number(text.replace(/^[A-Z]/, ''))).sort((a, b) => a - b), name).toEqual([...sewn].sort((a, b) => a - b));
    }
  });

  test('are parted where they are larger than a page, and none are printed for a way without foundations', () => {
    const strip = laid(onFoundations('wild-geese-strip-8x12'));
    expect(strip.pages.length).toBeGreaterThan(1);
    expect(texts(strip.pages[0]!).some(({ text }) => text.startsWith('The foundation, part 1 of'))).toBe(true);
    const plain = must(makePattern(blockNamed('gallery', 'wild-geese-strip-8x12'), {}, 'chosen way'));
    expect([hasFoundations(plain), laid(plain).pages.length]).toEqual([false, 0]);
  });

  test('tell how many copies, and the allowance that is chosen', () => {
    const pattern = must(makePattern(blockNamed('gallery', 'kings-crown-8'), { way: 'foundation', blocks: 3, seam: rational(3, 8) }, 'chosen way'));
    const said = texts(laid(pattern).pages[0]!).map(({ text }) => text).join(' ');
    expect(said).toContain('Print 3 copies');
    expect(said).toContain('⅜');
  });
});

describe('the sections of a foundation', () => {
  test('hold every piece once; each is sewn along a line right across what is there; together they are the block', () => {
    for (const name of [...SMALL, 'goose-in-the-pond-15', 'four-small-stars-12', 'rising-star-12']) {
      const pattern = onFoundations(name);
      const [step] = pattern.steps as [Pattern['steps'][number]];
      const { sections, last } = sectionsOf(step);
      expect(sections.flatMap(({ parts }) => parts).sort((a, b) => a - b)).toEqual(step.parts.map((_, i) => i));
      expect(sections.flatMap(({ joins }) => joins).length + last.length).toBe(step.joins.length);
      expect(last).toHaveLength(sections.length - 1);
      const whole = toNumber(pattern.block.finished.width) * toNumber(pattern.block.finished.height);
      for (const { outline, pieces, lines } of sectionInks({ step, pattern })) {
        // As a hull it is no larger than its pieces: so it is convex.
        expect(areaOf(outline), name).toBeCloseTo(pieces.reduce((sum, piece) => sum + areaOf(piece.outline), 0), 6);
        lines.forEach(([[ax, ay], [bx, by]], i) => {
          const side = ([x, y]: Polygon[number]): number => Math.sign(Math.round(1e6 * ((bx - ax) * (y - ay) - (by - ay) * (x - ax))));
          const [before, added] = [pieces.slice(0, i + 1).flatMap((piece) => piece.outline), pieces[i + 1]!.outline];
          const wanted = added.map(side).find((s) => s !== 0)!;
          expect(added.every((spot) => side(spot) !== -wanted) && before.every((spot) => side(spot) !== wanted), `${name}: ${pieces[i + 1]!.name}`).toBe(true);
        });
      }
      expect(sectionInks({ step, pattern }).reduce((sum, { outline }) => sum + areaOf(outline), 0)).toBeCloseTo(whole, 6);
    }
  });
});

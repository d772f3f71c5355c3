import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { Choices } from '../../src/block/choices.ts';
import { parseBlock } from '../../src/files/block-file.ts';
import { makePattern } from '../../src/pattern/make-pattern.ts';
import type { Mark, Panel } from '../../src/pattern/diagrams/diagram.ts';
import type { Spot } from '../../src/pattern/polygons.ts';
import { stepPanels } from '../../src/pattern/diagrams/step-panels.ts';
import { rational, toNumber } from '../../src/measure/rational.ts';
import type { Pattern } from '../../src/pattern/pattern.ts';
import { must } from '../block/drawn.ts';
import { blockNamed, namesIn } from './made.ts';

type Of<Name extends Mark['mark']> = Extract<Mark, { readonly mark: Name }>;
const only = <Name extends Mark['mark']>({ marks }: Panel, name: Name): readonly Of<Name>[] =>
  marks.filter((mark): mark is Of<Name> => mark.mark === name);
const lines = (panel: Panel, line: Of<'line'>['line']): readonly Of<'line'>[] => only(panel, 'line').filter((mark) => mark.line === line);

/** Twice the signed area, by the shoelace formula. */
const area = (outline: readonly Spot[]): number =>
  Math.abs(outline.reduce((sum, [x, y], i) => sum + x * outline[(i + 1) % outline.length]![1] - y * outline[(i + 1) % outline.length]![0], 0)) / 2;

/** How far a place lies from a straight line. */
const distance = ([x, y]: Spot, { from: [ax, ay], to: [bx, by] }: Of<'line'>): number =>
  Math.abs((bx - ax) * (y - ay) - (by - ay) * (x - ax)) / Math.hypot(bx - ax, by - ay);

const made = new Map<string, Pattern>();
const patternOf = (name: string, choices: Choices = {}): Pattern => {
  const key = `${name} ${JSON.stringify(choices)}`;
  const folder = namesIn('cases').includes(name) ? 'cases' : 'gallery';
  const pattern = made.get(key) ?? must(makePattern(blockNamed(folder, name), choices, 'chosen way'));
  made.set(key, pattern);
  return pattern;
};

/** Every third block of the gallery, as it comes. */
const GALLERY = namesIn('gallery').filter((_, i) => i % 3 === 0);

let sampler: readonly Pattern[] | null = null;
const demoPatterns = (): readonly Pattern[] => {
  const folder = new URL('../../demo-blocks/', import.meta.url);
  const files = readdirSync(folder).filter((file) => file.endsWith('.block.json'));
  return (sampler ??= files.map((file) => must(makePattern(must(parseBlock(readFileSync(new URL(file, folder), 'utf8'))), {}, 'chosen way'))));
};

const picturesOf = (pattern: Pattern): readonly (readonly Panel[])[] => pattern.steps.map((step) => stepPanels({ step, pattern }));

/** Pictures of the first step that makes units of a kind. */
const pictured = (pattern: Pattern, kind: string): readonly Panel[] => {
  const step = pattern.steps.find((each) => each.kind === kind)!;
  return stepPanels({ step, pattern });
};

describe('the pictures of every step', () => {
  it('are there for every step of the sampler, and end with what the step makes and its size', () => {
    for (const pattern of demoPatterns()) {
      for (const [i, panels] of picturesOf(pattern).entries()) {
        expect(panels.length, `${pattern.block.name}, step ${i + 1}`).toBeGreaterThanOrEqual(2);
        expect(panels.at(-1)!.measures).toBeDefined();
      }
    }
  });

  it('show the finished work with its allowances: all of it, and no cloth twice', () => {
    const trimmed: Choices = { trim: rational(1, 4) };
    const patterns = [...demoPatterns(), ...GALLERY.map((name) => patternOf(name)), ...namesIn('cases').map((name) => patternOf(name, trimmed))];
    for (const pattern of patterns) {
      for (const [i, panels] of picturesOf(pattern).entries()) {
        const { unfinished, trimmed: large, makes } = pattern.steps[i]!;
        const more = large ? toNumber(pattern.choices.trim) : 0;
        const whole = (toNumber(unfinished.width) + more) * (toNumber(unfinished.height) + more);
        const cloth = only(panels.at(-1)!, 'cloth').reduce((sum, { outline }) => sum + area(outline), 0);
        expect(cloth, `${pattern.block.name}, ${makes}`).toBeCloseTo(whole, 6);
      }
    }
  });

  it('lay out every piece once, and every unit under its letter, turned as the words say', () => {
    for (const name of GALLERY) {
      const pattern = patternOf(name);
      for (const step of pattern.steps.filter(({ kind, makes }) => kind === 'joined unit' || (kind === 'block' && makes === 'block'))) {
        const [laid] = stepPanels({ step, pattern }) as [Panel];
        expect(only(laid, 'cloth').reduce((sum, { outline }) => sum + area(outline), 0)).toBeCloseTo(toNumber(step.finished.width) * toNumber(step.finished.height), 6);
        const told = step.parts.flatMap(({ from, turn }) => ('unit' in from ? [`${from.unit} ${turn}`] : []));
        expect(only(laid, 'name').map(({ text, turn }) => `${text} ${turn}`)).toEqual(told);
        expect(only(laid, 'line')).toHaveLength(step.joins.length);
      }
    }
  });

  it('point each arrow at the side to which the seam is pressed', () => {
    let seen = 0;
    for (const name of GALLERY) {
      const pattern = patternOf(name);
      const lattice = toNumber(pattern.lattice.step);
      // Two things sewn by one level or upright seam: the pressed one lies wholly on one side of it.
      for (const step of pattern.steps.filter(({ joins, parts }) => joins.length === 1 && parts.length === 2)) {
        const way = step.pressed[0]!;
        const arrow = only(stepPanels({ step, pattern }).at(-1)!, way === 'open' ? 'pressed open' : 'pressed')[0]!;
        if (way === 'open') continue;
        const part = step.parts[step.joins[0]![way]]!;
        const corners = part.outline.map(({ x, y, w }): Spot => [(x / w) * lattice, (y / w) * lattice]);
        const toward = (spot: Spot): number => (spot[0] - arrow.from[0]) * (arrow.to[0] - arrow.from[0]) + (spot[1] - arrow.from[1]) * (arrow.to[1] - arrow.from[1]);
        expect(corners.every((corner) => toward(corner) > 0), `${name}, ${step.makes}`).toBe(true);
        seen++;
      }
    }
    expect(seen).toBeGreaterThan(10);
  });
});

describe('the pictures of a method', () => {
  it('two at a time: squares of the list, sewn a seam’s width from the line on both sides, cut on it', () => {
    const pattern = patternOf('shoo-fly-12');
    const [lay, sewn] = pictured(pattern, 'half-square triangle') as [Panel, Panel];
    // 4 7/8 in. for triangles that finish 4 in.: All People Quilt, Shoo Fly, 2019-04-02.
    for (const { outline } of only(lay, 'cloth')) expect(area(outline)).toBeCloseTo(4.875 ** 2, 9);
    expect(only(lay, 'cloth').map(({ side }) => side)).toEqual(['right', 'wrong']);
    const [cut] = lines(sewn, 'cut');
    expect(lines(sewn, 'stitched')).toHaveLength(2);
    for (const stitched of lines(sewn, 'stitched')) {
      expect(distance(stitched.from, cut!)).toBeCloseTo(0.25, 9);
      expect(distance(stitched.to, cut!)).toBeCloseTo(0.25, 9);
    }
  });

  it('eight at a time: both diagonals sewn on both sides, and cut four times through the middle', () => {
    const pattern = patternOf('shoo-fly-12', { methods: { 'half-square triangle': 'eight-at-a-time' } });
    const [lay, sewn] = pictured(pattern, 'half-square triangle') as [Panel, Panel];
    // 9 3/4 in. for eight that finish 4 in.: scrapish.com, half-square triangles 8 at a time.
    for (const { outline } of only(lay, 'cloth')) expect(area(outline)).toBeCloseTo(9.75 ** 2, 9);
    expect(lines(sewn, 'stitched')).toHaveLength(4);
    expect(lines(sewn, 'cut')).toHaveLength(4);
    for (const cut of lines(sewn, 'cut')) expect(distance([9.75 / 2, 9.75 / 2], cut)).toBeCloseTo(0, 9);
  });

  it('stitch and flip: one corner of a goose after the other, sewn on the diagonal and cut a seam’s width outside it', () => {
    const pattern = patternOf('sawtooth-star-8', { methods: { 'flying geese': 'stitch-and-flip' } });
    const panels = pictured(pattern, 'flying geese');
    expect(panels).toHaveLength(3);
    for (const panel of panels.slice(0, 2)) {
      const [stitched, cut] = [lines(panel, 'stitched')[0]!, lines(panel, 'cut')[0]!];
      expect(distance(cut.from, stitched)).toBeCloseTo(0.25, 9);
      const square = only(panel, 'cloth').at(-1)!;
      expect(square.side).toBe('wrong');
      // On the diagonal of its square of 2 1/2 in. (the same source as the case).
      expect(Math.hypot(stitched.to[0] - stitched.from[0], stitched.to[1] - stitched.from[1])).toBeCloseTo(2.5 * Math.SQRT2, 9);
      expect(square.outline.filter((corner) => distance(corner, stitched) < 1e-9)).toHaveLength(2);
    }
  });

  it('corners that no seam of the other crosses are sewn at once: four of a snowball, two and two of a square in a square', () => {
    expect(pictured(patternOf('snowball-and-nine-patch-12'), 'corner-triangle unit')).toHaveLength(2);
    const sampler = demoPatterns().find(({ units }) => units.some(({ unit, method }) => unit.kind === 'square in a square' && method === 'stitch-and-flip'))!;
    expect(pictured(sampler, 'square in a square')).toHaveLength(3);
  });

  it('four geese at a time: two squares on the large one, then the third on each half, whose triangles are folded out', () => {
    const pattern = patternOf('sawtooth-star-6', { methods: { 'flying geese': 'four-at-a-time' } });
    const [first, second] = pictured(pattern, 'flying geese') as [Panel, Panel];
    // 4 1/4 and 2 3/8 in. for geese of 3 by 1 1/2 in.: the exact no-waste tables of trade pages (members.shaw.ca/beverlysquiltingpage).
    expect(only(first, 'cloth').map(({ outline }) => area(outline))).toEqual([4.25 ** 2, 2.375 ** 2, 2.375 ** 2]);
    const [under, ...others] = only(second, 'cloth');
    const cut = lines(second, 'cut')[0]!;
    expect(lines(second, 'stitched').map(({ from }) => +distance(from, cut).toFixed(9))).toEqual([0.25, 0.25]);
    // The half loses nothing but what is folded: both triangles are whole, beyond the seam.
    expect(others.filter(({ side }) => side === 'right')).toHaveLength(2);
    expect(area(under!.outline)).toBeLessThan(4.25 ** 2 / 2);
  });

  it('an hourglass: each fabric lies on the other, the line across the seam', () => {
    const pattern = patternOf('ohio-star-10-1-2', { methods: { 'quarter-square triangle': 'two-at-a-time' } });
    const panels = pictured(pattern, 'quarter-square triangle');
    expect(panels).toHaveLength(4);
    const [, lay] = panels as [Panel, Panel];
    const [lower, upper] = [only(lay, 'cloth').slice(0, 2), only(lay, 'cloth').slice(2)];
    // 4 3/8 in. and a little: All People Quilt, Ohio Star, 2017-06-14.
    expect(Math.sqrt(area(lower[0]!.outline) * 2)).toBeCloseTo(4.75 - 0.25 * Math.SQRT2, 9);
    const centre = ({ outline }: Of<'cloth'>): Spot => [outline.reduce((sum, [x]) => sum + x, 0) / outline.length, outline.reduce((sum, [, y]) => sum + y, 0) / outline.length];
    for (const below of lower) {
      const over = upper.toSorted((a, b) => Math.hypot(centre(a)[0] - centre(below)[0], centre(a)[1] - centre(below)[1]) - Math.hypot(centre(b)[0] - centre(below)[0], centre(b)[1] - centre(below)[1]))[0]!;
      expect(over.fabric).not.toBe(below.fabric);
    }
  });

  it('a ring: the first seam is begun, and finished last', () => {
    const pattern = patternOf('whirl-9');
    const [lay] = stepPanels({ step: pattern.steps[0]!, pattern }) as [Panel];
    expect(lines(lay, 'stitched later')).toHaveLength(1);
    expect(only(lay, 'order').map(({ number }) => number)).toEqual([1, 2, 3, 4, 5]);
  });
});

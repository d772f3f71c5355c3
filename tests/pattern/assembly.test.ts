import { describe, expect, it } from 'vitest';
import type { Choices } from '../../src/block/choices.ts';
import { toNumber } from '../../src/measure/rational.ts';
import { alsoOf } from '../../src/pattern/also.ts';
import { assemblyOrders } from '../../src/pattern/assembly-orders.ts';
import { assemblyPicture } from '../../src/pattern/diagrams/assembly.ts';
import type { Mark, Panel } from '../../src/pattern/diagrams/diagram.ts';
import { playThrough } from '../../src/pattern/diagrams/play-through.ts';
import { inEnglish } from '../../src/pattern/english.ts';
import { GERMAN } from '../../src/pattern/german.ts';
import { makePattern } from '../../src/pattern/make-pattern.ts';
import type { Pattern } from '../../src/pattern/pattern.ts';
import { areaOf, depthIn } from '../../src/pattern/polygons.ts';
import { told } from '../../src/pattern/told.ts';
import { must } from '../block/drawn.ts';
import { blockNamed, namesIn } from './made.ts';

const made = new Map<string, Pattern>();

/** @returns a pattern of the gallery; each is made once */
function patternOf(name: string, choices: Choices = {}): Pattern {
  const key = `${name} ${JSON.stringify(choices)}`;
  const pattern = made.get(key) ?? must(makePattern(blockNamed('gallery', name), choices, 'chosen way'));
  made.set(key, pattern);
  return pattern;
}

type Of<Name extends Mark['mark']> = Extract<Mark, { readonly mark: Name }>;
const only = <Name extends Mark['mark']>({ marks }: Panel, name: Name): readonly Of<Name>[] => marks.filter((mark): mark is Of<Name> => mark.mark === name);

/** Every seventh block of the gallery, as it comes. */
const SOME = namesIn('gallery').filter((_, i) => i % 7 === 0);
const ORDERS = ['as found', 'rows', 'columns', 'web', 'quarters'] as const;

/** The patterns of some blocks in every order they have. */
const all = SOME.flatMap((name) => ORDERS.map((assembly) => patternOf(name, { assembly })).filter(({ choices }, i) => choices.assembly === ORDERS[i]));

describe('a pattern in another order of assembly', () => {
  it('holds its proof, with the pieces and as many seams as before', () => {
    expect(all.length).toBeGreaterThan(2 * SOME.length);
    for (const pattern of all) {
      const { pieces, figures } = patternOf(SOME.find((name) => patternOf(name).block.name === pattern.block.name)!);
      expect(pattern.proof, pattern.block.name).toMatchObject({ holds: true, faults: [], seams: figures.seams });
      expect(pattern.pieces).toEqual(pieces);
    }
  });

  it('says so where a block has no such order, and is put together as found', () => {
    const { notes, choices } = patternOf('quarter-log-cabin-12', { assembly: 'quarters' });
    expect(choices.assembly).toBe('as found');
    expect(notes[0]).toContain('cannot be put together by quarters');
  });

  /*
   * American Patchwork & Quilting, How to chain-piece an entire quilt block, 2022-03-03
   * (allpeoplequilt.com/how-to-quilt/piecing/how-to-chain-piece-an-entire-quilt-block): the first two columns in one chain, then column
   * after column; the rows pressed; then the rows joined.
   */
  it('as a web is sewn column onto column, and only then along the long seams', () => {
    const { steps } = patternOf('nine-patch-9', { assembly: 'web' });
    expect(steps).toHaveLength(1);
    const [{ joins, how, press }] = steps as [Pattern['steps'][number]];
    const upright = joins.map(({ from, to }) => from.x === to.x);
    expect(upright).toEqual([true, true, true, true, true, true, false, false]);
    const at = joins.map(({ from }) => [from.x, from.y] as const);
    expect(new Set(at.slice(0, 3).map(([x]) => x)).size).toBe(1);
    expect(at.slice(0, 3).map(([, y]) => y)).toEqual([...at.slice(0, 3).map(([, y]) => y)].sort((a, b) => a - b));
    expect(at[3]![0]).toBeGreaterThan(at[0]![0]);
    expect(how).toContain('Do not cut the threads');
    expect(press).toMatch(/^Press the rows before the long seams: rows 1 and 3, .*; row 2, /);
  });

  it('as a web is watched in the order in which it is sewn', () => {
    const { moments, at } = playThrough(patternOf('shoo-fly-9-on-9', { assembly: 'web' }));
    expect(moments.map(({ sewn }) => sewn).at(-1)).toBe(12);
    // After its units the first seam joins the first two pieces of the first row alone.
    const units = moments.filter(({ step }) => step.makes !== 'block').length;
    const [before, after] = [at(units), at(units + 1)];
    const moved = before.filter((piece, i) => Math.abs(piece.outline[0]![0] - after[i]!.outline[0]![0]) > 1e-6);
    expect(moved.length).toBeGreaterThan(0);
    expect(moved.length).toBeLessThan(before.length / 2);
  });
});

describe('the picture of an assembly', () => {
  it('shows every piece once, in its size, and nothing on anything', () => {
    for (const pattern of all) {
      const panel = assemblyPicture(pattern);
      const cloth = only(panel, 'cloth');
      expect(cloth).toHaveLength(pattern.pieces.length);
      const whole = toNumber(pattern.block.finished.width) * toNumber(pattern.block.finished.height);
      expect(cloth.reduce((sum, { outline }) => sum + Math.abs(areaOf(outline)), 0)).toBeCloseTo(whole, 6);
      const middles = cloth.map(({ outline }) => outline.reduce(([x, y], [u, v]) => [x + u / outline.length, y + v / outline.length] as const, [0, 0] as readonly [number, number]));
      for (const [i, { outline }] of cloth.entries()) {
        expect(middles.every((middle, k) => k === i || depthIn(outline, middle) < 1e-9), pattern.block.name).toBe(true);
      }
    }
  });

  it('has every letter on its unit, turned as the unit lies', () => {
    for (const pattern of all) {
      const panel = assemblyPicture(pattern);
      const turns = new Map(pattern.units.map(({ unit }) => [unit.id, unit.places.map(({ turn }) => turn)]));
      for (const { text, at, turn, room } of only(panel, 'name')) {
        expect(turns.get(text), text).toContain(turn);
        expect(only(panel, 'cloth').some(({ outline }) => depthIn(outline, at) > -1e-9)).toBe(true);
        expect(room).toBeGreaterThan(0);
      }
    }
  });

  it('numbers seams from 1 on without a gap, a seam of the block after those of its rows, and a unit’s in the order of its joins', () => {
    for (const pattern of all) {
      const numbers = [...new Set(only(assemblyPicture(pattern), 'order').map(({ number }) => number))].sort((a, b) => a - b);
      const lines = only(assemblyPicture(pattern), 'line').filter(({ line }) => line !== 'thread');
      if (lines.length <= 24 && lines.length > 1) expect(numbers, pattern.block.name).toEqual(numbers.map((_, i) => i + 1));
    }
    const web = only(assemblyPicture(patternOf('shoo-fly-9-on-9', { assembly: 'web' })), 'order');
    const byPlace = [...web].sort((a, b) => a.number - b.number).map(({ at }) => at);
    // Three down the first column, three down the second, then the two long seams.
    expect(byPlace.slice(0, 3).every(([x], i, column) => x === column[0]![0] && (i === 0 || byPlace[i]![1] > byPlace[i - 1]![1]))).toBe(true);
    expect(byPlace[3]![0]).toBeGreaterThan(byPlace[0]![0]);
    expect(byPlace[7]![1]).toBeGreaterThan(byPlace[6]![1]);
  });

  it('draws the threads of a web: from each seam down to the next in its column, and no others', () => {
    for (const pattern of all) {
      const threads = only(assemblyPicture(pattern), 'line').filter(({ line }) => line === 'thread');
      const rows = pattern.piecing.root.parts;
      expect(threads.length, pattern.block.name).toBe(pattern.choices.assembly === 'web' ? (rows.length - 1) * rows[0]!.seams.length : 0);
      for (const { from, to } of threads) {
        expect(to[0]).toBeCloseTo(from[0], 9);
        expect(to[1]).toBeGreaterThan(from[1]);
      }
    }
  });
});

describe('the orders that are offered', () => {
  it('have the figures of the patterns that come of them', () => {
    for (const name of SOME.slice(0, 6)) {
      const block = blockNamed('gallery', name);
      for (const { order, seams, points, loose, units } of assemblyOrders(block, patternOf(name))) {
        const { figures, pressing } = patternOf(name, { assembly: order });
        expect({ seams, points, loose, units }, `${name} ${order}`).toEqual({
          seams: figures.seams,
          points: pressing.points,
          loose: pressing.sameWay + pressing.open,
          units: figures.differentUnits,
        });
      }
    }
  });

  it('are the same whichever of them is chosen now', () => {
    const block = blockNamed('gallery', 'star-quartet-24');
    const orders = assemblyOrders(block, patternOf('star-quartet-24')).map(({ order, seams, points, units }) => ({ order, seams, points, units }));
    for (const assembly of ['rows', 'web', 'quarters'] as const) {
      expect(assemblyOrders(block, patternOf('star-quartet-24', { assembly })).map(({ order, seams, points, units }) => ({ order, seams, points, units }))).toEqual(orders);
    }
  });
});

describe('chain-piecing', () => {
  const also = (pattern: Pattern): readonly string[] => alsoOf(pattern).flatMap((said) => said ?? []);

  it('is told where there are many, explained once, and then in a few words', () => {
    const said = also(patternOf('sawtooth-star-12-on-16', { blocks: 6 }));
    expect(said[0]).toMatch(/^Chain-piece: sew the first seam of all 24 one after another/);
    expect(said.slice(1)).toEqual(['Chain-piece all 12, one seam of each and then the next.', 'Chain-piece all 6, one seam of each and then the next.']);
  });

  it('counts pairs of squares, not the units that come of them', () => {
    expect(also(patternOf('shoo-fly-9-on-9', { blocks: 6 }))[0]).toMatch(/^Chain-piece: feed all 12 pairs through/);
  });

  it('is nothing to speak of where there are few', () => {
    expect(also(patternOf('shoo-fly-9-on-9'))).toEqual([]);
  });

  it('is told in German, as is the web', () => {
    const block = { ...blockNamed('gallery', 'shoo-fly-9-on-9') };
    const pattern = patternOf('shoo-fly-9-on-9', { assembly: 'web', blocks: 6 });
    const { steps } = told(block, pattern, GERMAN);
    expect(alsoOf(pattern, { language: GERMAN, telling: inEnglish(pattern).telling })[0]).toMatch(/^In einer Kette nähen: alle .* Paare/);
    expect(steps.at(-1)!.how).toContain('Die Fäden zwischen den Reihen nicht durchschneiden');
  });
});

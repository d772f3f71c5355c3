import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Block, DrawnSeam } from '../../src/block/block.ts';
import { checkBlock } from '../../src/block/whole-check.ts';
import { divide } from '../../src/block/dividing.ts';
import { areaAt, fill } from '../../src/block/filling.ts';
import { doubleArea } from '../../src/block/outline.ts';
import { paint } from '../../src/block/painting.ts';
import { cellsBetween, halfCell } from '../../src/block/patch-shapes.ts';
import { toggleWhole } from '../../src/block/patches.ts';
import { block, must, samplePoints, seen, SEED, unpainted } from './drawn.ts';

const boxed = must(paint(unpainted(6, 6), 'teal', cellsBetween(1, 1, 4, 4)));
const outlines = (drawn: Block): readonly string[] =>
  drawn.patches.map(({ fabric, points }) => `${fabric} ${points.map((point) => point.join(',')).sort().join(' ')}`).sort();
const line = (...ends: readonly [number, number, number, number]): DrawnSeam => [[ends[0], ends[1]], [ends[2], ends[3]]];

describe('a seam drawn across the cloth', () => {
  it('makes two patches of each that it passes right through, in the same fabric', () => {
    const cut = must(divide(boxed, [line(0, 3, 6, 3)], 1));
    expect(outlines(cut)).toEqual(['teal 1,1 1,3 5,1 5,3', 'teal 1,3 1,5 5,3 5,5']);
    expect(cut.seams).toEqual([[[0, 3], [6, 3]]]);
  });

  it('divides at any slant, on a lattice fine enough for it', () => {
    const cut = must(divide(boxed, [line(0, 1, 6, 4)], 1));
    expect(cut.denominator).toBe(2);
    expect(outlines(cut)).toEqual(['teal 10,10 10,7 2,10 2,3', 'teal 10,2 10,7 2,2 2,3']);
  });

  it('leaves a patch that it ends in as it is, until another seam meets it there', () => {
    const first = must(divide(boxed, [line(0, 3, 3, 3)], 1));
    expect(outlines(first)).toEqual(outlines(boxed));
    const second = must(divide(first, [line(3, 3, 3, 0)], 1));
    expect(outlines(second)).toEqual(['teal 1,1 1,3 3,1 3,3', 'teal 1,3 1,5 3,1 3,3 5,1 5,5']);
  });

  it('drawn again from its other end is taken away, and what it divided is one patch again', () => {
    for (const seam of [line(0, 3, 6, 3), line(0, 1, 6, 4), line(1, 1, 5, 5)]) {
      const cut = must(divide(boxed, [seam], 1));
      expect(cut.patches).toHaveLength(2);
      const back = must(divide(cut, [[seam[1], seam[0]]], 1));
      expect([back.seams, outlines(back), back.denominator]).toEqual([[], outlines(boxed), 1]);
    }
    const across = must(divide(must(divide(boxed, [line(0, 3, 6, 3)], 1)), [line(3, 0, 3, 6)], 1));
    expect(across.patches).toHaveLength(4);
    expect(outlines(must(divide(across, [line(0, 3, 6, 3)], 1)))).toEqual(['teal 1,1 1,5 3,1 3,5', 'teal 3,1 3,5 5,1 5,5']);
  });

  it('leaves apart what got another fabric meanwhile', () => {
    const cut = must(fill(must(divide(boxed, [line(0, 3, 6, 3)], 1)), 'rust', { x: 2, y: 2, w: 1 }));
    const back = must(divide(cut, [line(0, 3, 6, 3)], 1));
    expect(outlines(back)).toEqual(['rust 1,1 1,3 5,1 5,3', 'teal 1,3 1,5 5,3 5,5']);
  });

  it('never divides a whole patch', () => {
    const whole = must(toggleWhole(boxed, 0));
    expect(outlines(must(divide(whole, [line(0, 3, 6, 3)], 1)))).toEqual(outlines(boxed));
  });

  it('leaves undivided what would need finer points than can be held exactly, and draws the seams all the same', () => {
    const slants = [1, 2, 3, 4, 5, 6, 7].flatMap((n) => [line(0, n, 12, 12 - n), line(n, 0, 11, n), line(n, 12, 12, n - 1)]);
    const many = must(divide(must(paint(unpainted(12, 12), 'teal', cellsBetween(1, 1, 10, 10))), slants, 1));
    expect(many.seams).toHaveLength(slants.length);
    expect(checkBlock(many)).toBeNull();
    expect(fill(many, 'rust', { x: 11, y: 13, w: 2 })).toMatchObject({ ok: false, problem: { code: 'area-too-fine' } });
  });

  it('several at once are drawn or taken away together, as the first of them is', () => {
    const both = [line(0, 3, 6, 3), line(3, 0, 3, 6)];
    const one = must(divide(boxed, both.slice(1), 1));
    const two = must(divide(one, both, 1));
    expect([two.seams.length, two.patches.length]).toEqual([2, 4]);
    expect([must(divide(two, both, 1)).seams, outlines(must(divide(two, both, 1)))]).toEqual([[], outlines(boxed)]);
    expect(divide(boxed, [...both, line(0, 0, 7, 7)], 1)).toMatchObject({ ok: false, problem: { code: 'off-the-grid' } });
  });

  it('shows the same picture, of the same areas, whatever is drawn', () => {
    let divided = 0;
    fc.assert(
      fc.property(block, fc.nat(6), fc.nat(6), (before, left, right) => {
        const { columns, rows } = before.grid;
        const after = must(divide(before, [line(0, Math.min(left, rows), columns, Math.min(right, rows))], 1));
        expect(checkBlock(after)).toEqual(checkBlock(before));
        for (const [x, y] of samplePoints(before)) expect(seen(after, x, y)).toBe(seen(before, x, y));
        const area = ({ patches, denominator }: Block): number =>
          patches.reduce((sum, { points }) => sum + doubleArea(points) / denominator ** 2, 0);
        expect(area(after)).toBeCloseTo(area(before), 9);
        if (after.patches.length > before.patches.length) divided++;
      }),
      SEED,
    );
    expect(divided).toBeGreaterThan(40);
  });
});

describe('filling beside seams', () => {
  const at = (x: number, y: number) => ({ x: Math.round(x * 60), y: Math.round(y * 60), w: 60 });

  it('stops at a seam that passes right through, on the ground too', () => {
    const cut = must(divide(boxed, [line(0, 3, 6, 3)], 1));
    const filled = must(fill(cut, 'rust', at(2.5, 2.5)));
    expect([seen(filled, 2.5, 2.4), seen(filled, 2.5, 3.4), seen(filled, 0.5, 0.4)]).toEqual(['rust', 'teal', 'oat']);
    const ground = must(fill(cut, 'rust', at(0.5, 0.5)));
    expect([seen(ground, 0.5, 0.4), seen(ground, 0.5, 4.4), seen(ground, 5.5, 0.4), seen(ground, 2.5, 2.4)]).toEqual(['rust', 'oat', 'rust', 'teal']);
  });

  it('passes round the end of a seam', () => {
    const slit = must(divide(boxed, [line(0, 3, 3, 3)], 1));
    const filled = must(fill(slit, 'rust', at(2.5, 2.5)));
    expect([seen(filled, 1.5, 2.4), seen(filled, 1.5, 3.4)]).toEqual(['rust', 'rust']);
  });

  it('fills inside a ring of seams, and outside it', () => {
    const ring = must(divide(boxed, [line(2, 2, 4, 2), line(4, 2, 4, 4), line(4, 4, 2, 4), line(2, 4, 2, 2)], 1));
    const inner = must(fill(ring, 'rust', at(3, 3)));
    expect([seen(inner, 3.1, 3.2), seen(inner, 1.5, 1.4)]).toEqual(['rust', 'teal']);
    const outer = must(fill(ring, 'rust', at(1.5, 1.5)));
    expect([seen(outer, 3.1, 3.2), seen(outer, 1.5, 1.4), seen(outer, 0.5, 0.4)]).toEqual(['teal', 'rust', 'oat']);
  });

  it('fills round what touches the edge at a corner', () => {
    const tip = must(paint(unpainted(4, 4), 'teal', { points: [[2, 0], [3, 2], [1, 2]], denominator: 1 }));
    const filled = must(fill(must(divide(tip, [line(2, 2, 2, 4)], 1)), 'rust', at(0.5, 3.5)));
    expect([seen(filled, 0.5, 3.4), seen(filled, 3.5, 3.4), seen(filled, 2.1, 1.4)]).toEqual(['rust', 'oat', 'teal']);
  });

  it('the areas that seams make of one add up to it', () => {
    const seams = [line(0, 2, 6, 5), line(1, 6, 5, 0), line(0, 6, 6, 0), line(3, 1, 3, 4)];
    const drawn = must(divide(must(paint(boxed, 'rust', halfCell(2, 2, 'top left'))), seams, 1));
    const areas = new Map<string, number>();
    for (let i = 0; i < 60 * 60; i++) {
      const [x, y] = [(i % 60) / 10 + 0.037, Math.floor(i / 60) / 10 + 0.041];
      if (seen(drawn, x, y) !== 'teal') continue;
      const { region, denominator } = must(areaAt(drawn, { x: Math.round(x * 1000), y: Math.round(y * 1000), w: 1000 }));
      const size = (doubleArea(region.outer) - region.holes.reduce((sum, hole) => sum + doubleArea(hole), 0)) / denominator ** 2;
      areas.set(JSON.stringify(region.outer.map(([px, py]) => [px / denominator, py / denominator]).sort()), size);
    }
    expect(areas.size).toBeGreaterThan(6);
    expect([...areas.values()].reduce((sum, size) => sum + size, 0)).toBeCloseTo(2 * (16 - 0.5), 9);
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { blank } from '../../src/block/blank.ts';
import { paint } from '../../src/block/painting.ts';
import { cell, quarterCell } from '../../src/block/patch-shapes.ts';
import { regrid, subdivide } from '../../src/block/regridding.ts';
import { choose } from '../../src/block/choosing.ts';
import { rename } from '../../src/block/renaming.ts';
import { resize } from '../../src/block/sizing.ts';
import { rational } from '../../src/measure/rational.ts';
import { block, FABRICS, must, samplePoints, seen, SEED, unpainted } from './drawn.ts';

const size = (width: number, height: number, unit: 'in' | 'cm' = 'in') => ({ width: rational(width), height: rational(height), unit });

describe('a block gets another size', () => {
  it('and everything drawn stretches with it', () => {
    const drawn = must(paint(unpainted(3, 3), 'teal', cell(1, 1)));
    expect(must(resize(drawn, size(9, 6)))).toEqual({ ...drawn, finished: size(9, 6) });
  });

  it('but not one that no block can have', () => {
    expect(resize(unpainted(3, 3), size(0, 6))).toMatchObject({ problem: { code: 'size-out-of-range' } });
    expect(resize(unpainted(3, 3), size(201, 6))).toMatchObject({ problem: { code: 'size-out-of-range' } });
    expect(resize(unpainted(3, 3), size(508, 508, 'cm'))).toMatchObject({ ok: true });
    expect(resize(unpainted(3, 3), { ...size(12, 12), height: { n: 12_001, d: 1009 } })).toMatchObject({ problem: { code: 'too-fine' } });
  });

  it('and in another unit the chosen lengths fall back, the other choices stay', () => {
    const chosen = must(choose(unpainted(3, 3), { seam: { n: 1, d: 4 }, width: { n: 40, d: 1 }, way: 'fewest pieces', blocks: 6 }));
    expect(must(resize(chosen, size(30, 30, 'cm'))).choices).toEqual({ way: 'fewest pieces', blocks: 6 });
    expect(must(resize(chosen, size(9, 9))).choices).toEqual(chosen.choices);
  });
});

describe('a block gets another grid', () => {
  const shapes = [cell(0, 0), cell(3, 0), quarterCell(3, 3, 'left')];
  const painted = shapes.reduce((now, shape) => must(paint(now, 'teal', shape)), unpainted(4, 4));

  it('and keeps what fits in its place, saying what does not', () => {
    const seams = [[[0, 2], [8, 2]], [[7, 0], [7, 8]]] as const;
    const { block: smaller, lost, cut } = must(regrid({ ...painted, seams }, { columns: 3, rows: 4 }));
    expect(lost).toEqual({ patches: [1, 2], seams: [1], pins: [], unitMethods: [], pressedSeams: [] });
    expect(cut).toEqual({ patches: [], seams: [0] });
    expect(smaller.patches).toEqual([painted.patches[0]]);
    expect(smaller.seams).toEqual([[[0, 2], [6, 2]]]);
    expect(must(regrid(painted, { columns: 5, rows: 4 }))).toEqual({
      block: { ...painted, grid: { columns: 5, rows: 4 } },
      lost: { patches: [], seams: [], pins: [], unitMethods: [], pressedSeams: [] },
      cut: { patches: [], seams: [] },
    });
  });

  it('but not one of 0 or 65 rows', () => {
    for (const rows of [0, 65, 2.5]) {
      expect(regrid(painted, { columns: 4, rows })).toMatchObject({ problem: { code: 'grid-out-of-range' } });
    }
  });

  it('with cells divided, and shows the same picture', () => {
    fc.assert(
      fc.property(block, fc.integer({ min: 1, max: 4 }), (drawn, times) => {
        const finer = must(subdivide(drawn, times));
        for (const [x, y] of samplePoints(drawn)) expect(seen(finer, x * times, y * times)).toBe(seen(drawn, x, y));
      }),
      { ...SEED, numRuns: 50 },
    );
    expect(subdivide(unpainted(40, 40), 2)).toMatchObject({ problem: { code: 'grid-out-of-range' } });
  });
});

describe('a block', () => {
  it('gets another name, but none that cannot be printed', () => {
    expect(must(rename(unpainted(3, 3), 'Tide Table')).name).toBe('Tide Table');
    expect(rename(unpainted(3, 3), 'a'.repeat(201))).toMatchObject({ problem: { code: 'name-too-long' } });
    expect(rename(unpainted(3, 3), 'Tide\tTable')).toMatchObject({ problem: { code: 'control-characters' } });
  });

  it('takes choices that can be sewn, and no others', () => {
    expect(choose(unpainted(3, 3), { seam: { n: 0, d: 1 } })).toMatchObject({ problem: { code: 'choice-out-of-range' } });
    expect(choose(unpainted(3, 3), { trim: { n: 0, d: 1 }, blocks: 1 })).toMatchObject({ ok: true });
    expect(choose(unpainted(3, 3), { blocks: 0 })).toMatchObject({ problem: { code: 'choice-out-of-range' } });
  });

  it('begins with nothing painted on its first fabric', () => {
    const { name, finished } = unpainted(3, 3);
    expect(blank({ name, finished, grid: { columns: 3, rows: 3 }, fabrics: FABRICS })).toEqual({ ok: true, value: unpainted(3, 3) });
    expect(blank({ name, finished, grid: { columns: 3, rows: 3 }, fabrics: [] })).toMatchObject({ problem: { code: 'unknown-fabric' } });
  });
});

import { describe, expect, test } from 'vitest';
import { rational, toNumber } from '../../../src/measure/rational.ts';
import { cutterSvg, USUAL_MAT } from '../../../src/pattern/cutter-svg.ts';
import type { Pattern } from '../../../src/pattern/pattern.ts';
import { between } from '../../cutting/buffer.ts';
import { blockNamed, patternOf } from '../made.ts';
import { byTemplate } from '../pages/laid.ts';

type Spot = readonly [number, number];

const written = (pattern: Pattern, width = USUAL_MAT[pattern.block.unit]): string => {
  const svg = cutterSvg(pattern, width, 'en');
  if (!svg.ok) throw new Error(svg.problem.sentence);
  return svg.value;
};

/** The layers of a drawing: of each its fabric, its colour, and its outlines with how many there are of each. */
function layersIn(svg: string) {
  return [...svg.matchAll(/<g id="[^"]+" fill="none" stroke="([^"]+)"[^>]*>\n<title>([^<]*)<\/title>\n([\s\S]*?)\n<\/g>/g)].map(([, color, fabric, body]) => ({
    color,
    fabric,
    shapes: [...body!.matchAll(/<path d="M([^"]+)Z"><title>cut (\d+): lines? ([\d, ]+) of the cutting list<\/title><\/path>/g)].map(([, path, count]) => ({
      count: Number(count),
      outline: path!.split('L').map((place) => place.split(' ').map(Number) as unknown as Spot),
    })),
  }));
}

const areaOf = (outline: readonly Spot[]): number =>
  Math.abs(outline.reduce((sum, [x, y], i) => sum + (x * outline[(i + 1) % outline.length]![1] - outline[(i + 1) % outline.length]![0] * y) / 2, 0));

const star = blockNamed('cases', 'sawtooth-star-12');
const cases: readonly (readonly [string, Pattern])[] = [
  ['a star, geese four at a time', patternOf(star)],
  ['a star of triangles', patternOf(star, { method: 'triangles' })],
  ['triangles that are mirror images', patternOf(blockNamed('gallery', 'half-rectangle-darts-12x9'))],
  ['an hourglass block', patternOf(blockNamed('cases', 'ohio-star-12-triangles'), { method: 'triangles' })],
];

describe('pieces for a cutting machine', () => {
  test.each(cases)('%s: the cloth of the cutting list, fabric by fabric, apart and on the mat', (_, pattern) => {
    const svg = written(pattern);
    const [, wide, high, box] = /width="([\d.]+)in" height="([\d.]+)in" viewBox="0 0 ([\d.]+ [\d.]+)"/.exec(svg)!;
    expect(box).toBe(`${wide} ${high}`);
    expect(wide).toBe('12');
    const layers = layersIn(svg);
    expect(layers.map(({ fabric }) => fabric)).toEqual(pattern.fabrics.filter(({ fabric: { id } }) => pattern.cuts.some((cut) => cut.fabric === id)).map(({ fabric }) => fabric.name));
    expect(new Set(layers.map(({ color }) => color)).size).toBe(layers.length);
    for (const [i, { shapes }] of layers.entries()) {
      const lines = pattern.cuts.filter(({ fabric }) => fabric === pattern.fabrics[i]!.fabric.id);
      const cloth = lines.reduce((sum, { quantity, width, height }) => sum + quantity * toNumber(width) * toNumber(height), 0);
      expect(shapes.reduce((sum, { count, outline }) => sum + count * areaOf(outline), 0)).toBeCloseTo(cloth, 4);
    }
    const all = layers.flatMap(({ shapes }) => shapes.map(({ outline }) => outline));
    for (const [x, y] of all.flat()) expect([x > 0.1, y > 0.1, x < 11.9, y < Number(high) - 0.1]).toEqual([true, true, true, true]);
    for (const [i, outline] of all.entries()) {
      for (const other of all.slice(i + 1)) expect(between(outline, other).distance).toBeGreaterThan(0.1249);
    }
    // Each shape once.
    for (const { shapes } of layers) expect(new Set(shapes.map(({ outline }) => outline.map(([x, y]) => [x - outline[0]![0], y - outline[0]![1]].map((n) => n.toFixed(3)).join(' ')).join(' '))).size).toBe(shapes.length);
  });

  test('cuts triangles from strips as a ruler does: a half loses one tip, a quarter its apex', () => {
    const pattern = patternOf(star, { method: 'triangles-from-strips' });
    const strips = pattern.cuts.filter((cut) => cut.nested);
    expect(new Set(strips.map((cut) => cut.nested!.form))).toEqual(new Set(['half', 'quarter']));
    for (const { nested, width, quantity, fabric } of strips) {
      const [m, h] = [toNumber(nested!.measure), toNumber(width)];
      // A triangle of leg m without its tip; one of long side m without its apex.
      const area = nested!.form === 'half' ? (m * m - (m - h) ** 2) / 2 : (m * m - (m - 2 * h) ** 2) / 4;
      const layer = layersIn(written(pattern)).find((one) => one.fabric === pattern.fabrics.find((cloth) => cloth.fabric.id === fabric)!.fabric.name)!;
      expect(layer.shapes.filter(({ outline }) => Math.abs(areaOf(outline) - area) < 1e-4).map(({ count }) => count)).toEqual([quantity * nested!.triangles]);
    }
  });

  test('cuts templates along their outline, and those that are turned over as their mirror images', () => {
    const pattern = byTemplate(blockNamed('gallery', 'peaked-star-12'));
    const counts = layersIn(written(pattern)).flatMap(({ shapes }) => shapes.map(({ count }) => count));
    // 4 peaks of one cloth; 4 sides of another and 4 reversed.
    expect(counts.filter((count) => count === 4).length).toBeGreaterThanOrEqual(3);
  });

  test('of a block in centimetres is measured in millimetres', () => {
    const metric = patternOf({ ...star, finished: { width: rational(30), height: rational(30), unit: 'cm' } });
    expect(written(metric)).toMatch(/width="300mm" height="[\d.]+mm" viewBox="0 0 300 /);
    const [largest] = layersIn(written(metric)).flatMap(({ shapes }) => shapes.map(({ outline }) => Math.max(...outline.map(([x]) => x)) - Math.min(...outline.map(([x]) => x)))).sort((a, b) => b - a);
    expect(largest).toBeCloseTo(10 * Math.max(...metric.cuts.map(({ width, height }) => toNumber(width.n * height.d > height.n * width.d ? width : height))), 3);
  });

  test('names the piece that a mat is too narrow for', () => {
    const refused = cutterSvg(patternOf(star), rational(3), 'en');
    expect(refused.ok ? '' : refused.problem.sentence).toMatch(/^Line \d+ of the cutting list \(".+"\) is larger than a mat 3 in\. wide; choose a wider one\.$/);
  });

  test('says so where the proof does not hold', () => {
    const pattern = patternOf(star);
    expect(written({ ...pattern, proof: { ...pattern.proof, holds: false } })).toContain('do not cut yet');
  });
});

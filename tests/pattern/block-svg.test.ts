import { readdirSync, readFileSync } from 'node:fs';
import fc from 'fast-check';
import Area from 'jsts/org/locationtech/jts/algorithm/Area.js';
import type { Page } from 'playwright';
import { describe } from 'vitest';
import type { Block } from '../../src/block/block.ts';
import { parseBlock } from '../../src/files/block-file.ts';
import { toNumber } from '../../src/measure/rational.ts';
import { blockSvg, dotsOf, MAX_DOTS, type PictureChoices } from '../../src/pattern/block-svg.ts';
import { makePattern } from '../../src/pattern/make-pattern.ts';
import { block as anyBlock, must, unpainted } from '../block/drawn.ts';
import { expect, test } from '../e2e/browser.ts';

const PLAIN: PictureChoices = { ground: true, lines: 'none' };

/** The share of a picture in which colours blend, along edges. */
const EDGES = 0.008;

/** An SVG as an XML parser sees it. */
interface Seen {
  readonly fault: string | null;
  readonly title: string;
  readonly size: readonly [string, string];
  readonly box: readonly number[];
  readonly ground: string | null;
  readonly polygons: readonly { readonly fill: string; readonly points: readonly (readonly [number, number])[] }[];
  readonly paths: number;
  /** Of each colour, the share of the picture that it covers, as the browser paints it. */
  readonly shares: Readonly<Record<string, number>>;
}

/** @returns what the browser's own parser and painter make of an SVG */
const seen = (page: Page, svg: string): Promise<Seen> =>
  page.evaluate(async (text) => {
    const document = new DOMParser().parseFromString(text, 'image/svg+xml');
    const root = document.documentElement;
    const polygons = [...root.querySelectorAll('polygon')].map((polygon) => ({
      fill: polygon.parentElement!.getAttribute('fill')!,
      points: polygon.getAttribute('points')!.split(' ').map((pair) => pair.split(',').map(Number) as [number, number]),
    }));
    const box = root.getAttribute('viewBox')!.split(' ').map(Number);
    // So many dots that those at the edges, where colours blend, hardly count.
    const side = 960;
    const canvas = new OffscreenCanvas(side, side);
    root.setAttribute('width', String(side));
    root.setAttribute('height', String(side));
    root.setAttribute('preserveAspectRatio', 'none');
    const image = new Image(side, side);
    image.src = URL.createObjectURL(new Blob([new XMLSerializer().serializeToString(root)], { type: 'image/svg+xml' }));
    await image.decode();
    const ink = canvas.getContext('2d')!;
    ink.drawImage(image, 0, 0, side, side);
    const dots = ink.getImageData(0, 0, side, side).data;
    const counts: Record<string, number> = {};
    const whole = new Map<number, number>();
    for (const dot of new Uint32Array(dots.buffer)) whole.set(dot, (whole.get(dot) ?? 0) + 1);
    for (const [dot, count] of whole) {
      // Least byte first: red, green, blue, and how far it covers.
      const hex = [dot, dot >>> 8, dot >>> 16].map((part) => (part & 255).toString(16).padStart(2, '0')).join('');
      counts[dot >>> 24 === 0 ? 'clear' : `#${hex}`] = count / (side * side);
    }
    const original = new DOMParser().parseFromString(text, 'image/svg+xml').documentElement;
    return {
      fault: document.querySelector('parsererror')?.textContent ?? null,
      title: root.querySelector('title')!.textContent!,
      size: [original.getAttribute('width')!, original.getAttribute('height')!] as const,
      box,
      ground: root.querySelector('rect')?.getAttribute('fill') ?? null,
      polygons,
      paths: root.querySelectorAll('path').length,
      shares: counts,
    };
  }, svg);

/** @returns the area of an outline, by JTS */
const areaOf = (points: readonly (readonly [number, number])[]): number => {
  const ring = [...points, points[0]!].map(([x, y]) => ({ x, y, getX: () => x, getY: () => y }));
  return (Area as unknown as { ofRing: (ring: readonly object[]) => number }).ofRing(ring);
};

const sampler = readdirSync('demo-blocks')
  .filter((name) => name.endsWith('.block.json'))
  .map((name) => must(parseBlock(readFileSync(`demo-blocks/${name}`, 'utf8'))));

describe('a block as SVG', () => {
  test('has every corner of every patch at its place, in whole steps, at the true finished size', async ({ visitor: { page } }) => {
    for (const block of sampler) {
      const { fault, title, size, box, polygons, ground } = await seen(page, must(blockSvg(block, PLAIN, null)));
      expect(fault).toBeNull();
      expect(title).toBe(block.name);
      const { unit } = block.finished;
      expect(size).toEqual([`${toNumber(block.finished.width)}${unit}`, `${toNumber(block.finished.height)}${unit}`]);
      const [, , width, height] = box as [number, number, number, number];
      // In true proportion: steps are as long across as down.
      expect(width * toNumber(block.finished.height)).toBe(height * toNumber(block.finished.width));
      expect(ground).toBe(block.fabrics.find(({ id }) => id === block.ground)!.color);
      expect(polygons.flatMap(({ points }) => points.flat()).every(Number.isInteger)).toBe(true);
      const [across, down] = [width / (block.grid.columns * block.denominator), height / (block.grid.rows * block.denominator)];
      expect(polygons.map(({ points }) => points)).toEqual(block.patches.map(({ points }) => points.map(([x, y]) => [x * across, y * down])));
      const steps = across * down;
      for (const [i, { points }] of polygons.entries()) expect(areaOf(points)).toBe(areaOf(block.patches[i]!.points) * steps);
    }
  });

  test('shows each fabric in its share of the block', async ({ visitor: { page } }) => {
    // Counted on squared paper: 3 × 3 cells, one of them teal, half of another rust, a quarter of a third teal.
    const block = unpainted(3, 3, {
      denominator: 2,
      patches: [
        { fabric: 'teal', points: [[0, 0], [2, 0], [2, 2], [0, 2]] },
        { fabric: 'rust', points: [[2, 2], [4, 2], [4, 4]] },
        { fabric: 'teal', points: [[4, 4], [6, 4], [5, 5]] },
      ],
    });
    const { shares } = await seen(page, must(blockSvg(block, PLAIN, null)));
    expect(Math.abs(shares['#2f5d62']! - 1.25 / 9)).toBeLessThan(EDGES);
    expect(Math.abs(shares['#8c2f39']! - 0.5 / 9)).toBeLessThan(EDGES);
    expect(Math.abs(shares['#f3ede0']! - 7.25 / 9)).toBeLessThan(EDGES);
    const clear = await seen(page, must(blockSvg(block, { ...PLAIN, ground: false }, null)));
    expect(clear.ground).toBeNull();
    expect(Math.abs(clear.shares['clear']! - 7.25 / 9)).toBeLessThan(EDGES);
    expect(clear.shares['#f3ede0'] ?? 0).toBe(0);
  });

  test('is clear where cloth was taken back to the ground', async ({ visitor: { page } }) => {
    const ground = { fabric: 'oat', points: [[1, 1], [2, 1], [2, 2], [1, 2]] } as const;
    const { polygons } = await seen(page, must(blockSvg(unpainted(3, 3, { patches: [ground] }), { ...PLAIN, ground: false }, null)));
    expect(polygons).toEqual([]);
    // But not where the ground's fabric covers another.
    const over = [{ fabric: 'teal', points: [[0, 0], [3, 0], [3, 3], [0, 3]] }, ground] as const;
    const covered = await seen(page, must(blockSvg(unpainted(3, 3, { patches: over }), { ...PLAIN, ground: false }, null)));
    expect(Math.abs(covered.shares['#f3ede0']! - 1 / 9)).toBeLessThan(EDGES);
    expect(Math.abs(covered.shares['#2f5d62']! - 8 / 9)).toBeLessThan(EDGES);
  });

  test('is XML whatever the block is called', async ({ visitor: { page } }) => {
    const names = ['<img src=x>', 'Tide & "rope"', "]]> '", 'Möwe 🪶', ...fc.sample(fc.string({ unit: 'binary', minLength: 1 }), { seed: 4, numRuns: 40 })];
    for (const name of names) {
      const { fault, title, polygons } = await seen(page, must(blockSvg(unpainted(2, 2, { name }), PLAIN, null)));
      expect(fault, name).toBeNull();
      expect(polygons).toEqual([]);
      if (/^[\u0020-\u007e]+$/.test(name)) expect(title).toBe(name);
    }
  });

  test('is drawn for any drawing there is, with the grid or the seams on it where they are asked for', async ({ visitor: { page } }) => {
    for (const block of fc.sample(anyBlock, { seed: 20261101, numRuns: 30 })) {
      const { fault, polygons, paths } = await seen(page, must(blockSvg(block, { ...PLAIN, lines: 'grid' }, null)));
      expect(fault).toBeNull();
      expect(polygons).toHaveLength(block.patches.length);
      expect(paths).toBe(2);
    }
    const star = sampler[0]!;
    const pattern = must(makePattern(star));
    const seams = must(blockSvg(star, { ...PLAIN, lines: 'seams' }, pattern));
    // One closed outline for each piece.
    expect(seams.match(/<path d="([^"]*)"/)![1]!.match(/Z/g)).toHaveLength(pattern.pieces.length);
    expect((await seen(page, must(blockSvg(star, { ...PLAIN, lines: 'seams' }, null)))).paths).toBe(0);
  });
});

describe('a picture in dots', () => {
  const sized = (width: number, height: number, unit: Block['finished']['unit']) => ({ width: { n: width, d: 1 }, height: { n: height, d: 1 }, unit });

  test('has as many as the finished size takes, in inches or in centimetres', () => {
    expect(dotsOf(sized(12, 9, 'in'), 300)).toEqual({ width: 3600, height: 2700, perInch: 300 });
    // 25.4 cm are 10 in. by definition (International yard and pound agreement, 1959).
    expect(dotsOf({ width: { n: 127, d: 5 }, height: { n: 127, d: 10 }, unit: 'cm' }, 300)).toEqual({ width: 3000, height: 1500, perInch: 300 });
  });

  test('has no more than browsers take, and at least one', () => {
    const large = dotsOf(sized(200, 100, 'in'), 300);
    expect([large.width, large.height]).toEqual([MAX_DOTS, MAX_DOTS / 2]);
    expect(large.perInch).toBe(40);
    expect(dotsOf(sized(200, 1, 'in'), 0.1).height).toBe(1);
  });
});

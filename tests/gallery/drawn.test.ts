/**
 * The gallery checked against itself by other means than those that made it: the files alone are read, what shows of
 * each fabric is found by painting patch over patch (polygon-clipping), and the sizes expected of a pattern must add
 * up to just that. What a traditional block is sewn from is common practice of the trade.
 */
import { readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import Fraction from 'fraction.js';
import polygonClipping from 'polygon-clipping';
import type { MultiPolygon } from 'polygon-clipping';
import { describe, expect, it } from 'vitest';
import { drawing, expectation, gallery, printed } from './draw.ts';

interface BlockFile {
  format: string;
  version: number;
  name: string;
  finished: { width: string; height: string; unit: string };
  grid: { columns: number; rows: number };
  fabrics: { id: string; name: string; color: string }[];
  ground: string;
  patches: { fabric: string; points: [number, number][] }[];
}

interface ExpectFile {
  source: string;
  note: string;
  unfinished: string | [string, string];
  patches: number;
  units?: Record<string, number>;
  partialSeams?: number;
  plain?: { fabric: string; quantity: number; width: string; height: string }[];
  made: {
    kind: string; quantity: number; width: string; height: string; pieces: number; corners?: number; fabrics: Record<string, string>;
  }[];
}

/** Pieces of a unit, and into how many equal shares of its area they can be divided; common practice. */
const KINDS: Record<string, { pieces: number; shares: number }> = {
  'half-square triangle': { pieces: 2, shares: 2 },
  'quarter-square triangle': { pieces: 4, shares: 4 },
  'split quarter-square triangle': { pieces: 3, shares: 4 },
  'flying geese': { pieces: 3, shares: 4 },
  'square in a square': { pieces: 5, shares: 8 },
  'half-rectangle triangle': { pieces: 2, shares: 2 },
  peak: { pieces: 3, shares: 4 },
};

const LATTICE = 4;

const areaOf = (shape: MultiPolygon): number =>
  shape.reduce((total, rings) => total + rings.reduce((sum, ring, i) => {
    const twice = ring.reduce((t, [x, y], k) => {
      const [u, v] = ring[(k + 1) % ring.length]!;
      return t + x * v - u * y;
    }, 0);
    return sum + (i === 0 ? 1 : -1) * Math.abs(twice) / 2;
  }, 0), 0);

/** @returns for each fabric the square inches that show once every patch has covered those under it */
function shown(block: BlockFile): Map<string, Fraction> {
  const { columns, rows } = block.grid;
  const shapes = new Map<string, MultiPolygon>();
  const corners = [[0, 0], [columns, 0], [columns, rows], [0, rows]] as [number, number][];
  for (const { fabric, points } of [{ fabric: block.ground, points: corners }, ...block.patches]) {
    const patch: MultiPolygon = [[points.map(([x, y]): [number, number] => [x * LATTICE, y * LATTICE])]];
    for (const [other, shape] of shapes) shapes.set(other, polygonClipping.difference(shape, patch));
    shapes.set(fabric, polygonClipping.union(shapes.get(fabric) ?? [], patch));
  }
  const step = new Fraction(block.finished.width).mul(block.finished.height).div(columns * rows).div(LATTICE * LATTICE);
  return new Map([...shapes].map(([fabric, shape]) => [fabric, step.mul(new Fraction(BigInt(areaOf(shape) * 2), 2n))]));
}

const finished = (cut: string): Fraction => new Fraction(cut).sub(1, 2);
const total = (items: readonly number[]): number => items.reduce((a, b) => a + b, 0);

/** @returns for each fabric the finished square inches of the expected pieces and units */
function sewn({ plain = [], made }: ExpectFile): Map<string, Fraction> {
  const sums = new Map<string, Fraction>();
  const add = (fabric: string, area: Fraction): unknown => sums.set(fabric, area.add(sums.get(fabric) ?? 0));
  for (const { fabric, quantity, width, height } of plain) add(fabric, finished(width).mul(finished(height)).mul(quantity));
  for (const { quantity, width, height, fabrics } of made) {
    for (const [fabric, share] of Object.entries(fabrics)) add(fabric, finished(width).mul(finished(height)).mul(quantity).mul(share));
  }
  return sums;
}

/** @returns what is wrong with a drawing by itself */
function flaws(block: BlockFile): string[] {
  const wrong: string[] = [];
  const ids = block.fabrics.map((fabric) => fabric.id);
  if (block.format !== 'piecewright/block' || block.version !== 1 || block.finished.unit !== 'in') wrong.push('not a block file in inches');
  if (new Set(ids).size !== ids.length || !ids.includes(block.ground)) wrong.push('fabrics');
  for (const side of ['columns', 'rows'] as const) if (block.grid[side] < 1 || block.grid[side] > 64) wrong.push(`grid ${side}`);
  block.patches.forEach(({ fabric, points }, i) => {
    if (!ids.includes(fabric)) wrong.push(`patch ${i}: fabric ${fabric}`);
    if (points.some(([x, y]) => x < 0 || y < 0 || x > block.grid.columns || y > block.grid.rows)) wrong.push(`patch ${i}: off the grid`);
    if (points.flat().some((step) => !Number.isInteger(step * LATTICE))) wrong.push(`patch ${i}: off the lattice`);
    const turns = points.map(([x, y], k) => {
      const [u, v] = points[(k + 1) % points.length]!;
      const [p, q] = points[(k + 2) % points.length]!;
      return Math.sign((u - x) * (q - v) - (p - u) * (v - y));
    });
    if (points.length < 3 || Math.abs(total(turns)) !== points.length) wrong.push(`patch ${i}: not convex, or three corners on a line`);
  });
  return wrong;
}

/** @returns where drawing and expectation do not add up */
function disagreements(block: BlockFile, wanted: ExpectFile): string[] {
  const wrong: string[] = [];
  const drawn = shown(block);
  const cloth = sewn(wanted);
  for (const fabric of new Set([...drawn.keys(), ...cloth.keys()])) {
    const [a, b] = [drawn.get(fabric) ?? new Fraction(0), cloth.get(fabric) ?? new Fraction(0)];
    if (!a.equals(b)) wrong.push(`${fabric}: ${a.toFraction(true)} square inches drawn, ${b.toFraction(true)} sewn`);
  }
  const { plain = [], made, units, partialSeams = 0 } = wanted;
  const pieces = total(plain.map((line) => line.quantity)) + total(made.map((unit) => unit.quantity * unit.pieces));
  if (pieces !== wanted.patches) wrong.push(`${wanted.patches} patches expected, ${pieces} listed`);
  for (const unit of made) {
    const kind = unit.kind === 'corner-triangle unit' ? { pieces: 1 + unit.corners!, shares: undefined } : KINDS[unit.kind];
    if (kind && kind.pieces !== unit.pieces) wrong.push(`${unit.kind} of ${unit.pieces} pieces`);
    const parts = Object.values(unit.fabrics).map((share) => new Fraction(share));
    if (!parts.reduce((a, b) => a.add(b)).equals(1)) wrong.push(`${unit.kind}: shares do not make a whole`);
    if (kind?.shares && parts.some((share) => share.mul(kind.shares!).d !== 1n)) wrong.push(`${unit.kind}: odd shares`);
    const long = unit.kind === 'flying geese';
    const square = !long && !['corner-triangle unit', 'half-rectangle triangle', 'free unit'].includes(unit.kind);
    if (long && !finished(unit.height).equals(finished(unit.width).mul(2))) wrong.push(`${unit.kind} ${unit.width} by ${unit.height}`);
    if (square && unit.width !== unit.height) wrong.push(`${unit.kind} ${unit.width} by ${unit.height}`);
  }
  if (units) {
    const counts = new Map<string, number>();
    for (const { kind, quantity } of made) counts.set(kind, (counts.get(kind) ?? 0) + quantity);
    const wholeBlock = partialSeams === 1 && wanted.patches === 5;
    if (partialSeams > 0 && !wholeBlock) counts.set('partial-seam ring', partialSeams);
    const listed = (entries: Iterable<[string, number]>): string => JSON.stringify([...entries].sort());
    if (listed(counts) !== listed(Object.entries(units))) wrong.push(`units ${listed(Object.entries(units))}, made ${listed(counts)}`);
  }
  const sides = [wanted.unfinished].flat();
  const [across, down = across] = sides.map(finished);
  if (!across!.equals(block.finished.width) || !down!.equals(block.finished.height)) wrong.push(`unfinished ${sides.join(' by ')}`);
  const lines = [...plain, ...made].flatMap((line) => [line.width, line.height]);
  if ([...lines, ...sides].some((cut) => 8n % new Fraction(cut).d !== 0n)) wrong.push('a size between the marks of a ruler');
  if ([...plain, ...made].some((line) => finished(line.width).compare(finished(line.height)) > 0)) wrong.push('a width over its height');
  return wrong;
}

const folder = import.meta.dirname;
const read = (file: string): string => readFileSync(join(folder, file), 'utf8');
const block = (file: string): BlockFile => JSON.parse(read(`${file}.block.json`)) as BlockFile;
const wanted = (file: string): ExpectFile => JSON.parse(read(`${file}.expect.json`)) as ExpectFile;
const files = gallery.map((entry) => entry.file);

describe('the gallery of traditional blocks', () => {
  it('holds two files for each of at least 45 blocks, and no others', () => {
    const there = readdirSync(folder).filter((name) => name.endsWith('.json')).sort();
    expect(there).toEqual(files.flatMap((file) => [`${file}.block.json`, `${file}.expect.json`]).sort());
    expect(new Set(files).size).toBeGreaterThanOrEqual(45);
  });

  it.each(gallery.map((entry) => [entry.file, entry] as const))('%s is as its sheet says', (file, entry) => {
    expect(read(`${file}.block.json`)).toBe(printed(drawing(entry)));
    expect(read(`${file}.expect.json`)).toBe(printed(expectation(entry)));
  });

  it.each(files)('%s is drawn on its grid in its own fabrics', (file) => {
    expect(flaws(block(file))).toEqual([]);
  });

  it.each(files)('%s shows as much of each fabric as its pieces and units have', (file) => {
    expect(disagreements(block(file), wanted(file))).toEqual([]);
  });
});

describe('the check of the gallery', () => {
  const star = wanted('sawtooth-star-8-on-48');

  it('sees a piece too few', () => {
    const short = { ...star, plain: star.plain!.map((line, i) => (i === 0 ? { ...line, quantity: line.quantity - 1 } : line)) };
    expect(disagreements(block('sawtooth-star-8-on-48'), short)).toHaveLength(2);
  });

  it('sees a cut an eighth too wide', () => {
    const wider = (cut: string): string => new Fraction(cut).add(1, 8).toFraction(true);
    const wide = { ...star, plain: star.plain!.map((line, i) => (i === 0 ? { ...line, height: wider(line.height) } : line)) };
    expect(disagreements(block('sawtooth-star-8-on-48'), wide)).toHaveLength(1);
  });

  it('sees a unit of the wrong kind', () => {
    const halves = { ...star, made: star.made.map((unit) => ({ ...unit, kind: 'half-square triangle' })) };
    expect(disagreements(block('sawtooth-star-8-on-48'), halves).join()).toMatch(/half-square triangle of 3 pieces.*units/);
  });

  it('sees a patch off the grid and three corners on a line', () => {
    const pinwheel = block('pinwheel-8-on-2');
    const off = { ...pinwheel, patches: [{ fabric: 'teal', points: [[0, 0], [3, 0], [0, 1]] as [number, number][] }] };
    const flat = { ...pinwheel, patches: [{ fabric: 'teal', points: [[0, 0], [1, 0], [2, 0], [0, 1]] as [number, number][] }] };
    expect(flaws(off)).toEqual(['patch 0: off the grid']);
    expect(flaws(flat)).toHaveLength(1);
  });
});

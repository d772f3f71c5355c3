/**
 * Writes the gallery: for each block a drawing (only coloured areas) and what an experienced pattern writer would
 * expect of it. Run from the top of the checkout: npx tsx tests/gallery/draw.ts
 */
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import Fraction from 'fraction.js';
import type { Entry } from './entry.ts';
import { mixed } from './mixed.ts';
import type { Cloth, Corner, Part } from './sheet.ts';
import { squares } from './squares.ts';
import { stars } from './stars.ts';
import { triangles } from './triangles.ts';

export const gallery: readonly Entry[] = [...stars, ...triangles, ...mixed, ...squares];

const FABRICS: Record<string, { id: string; name: string; color: string }> = {
  o: { id: 'oat', name: 'Oat', color: '#f3ede0' },
  t: { id: 'teal', name: 'Teal', color: '#2f5d62' },
  r: { id: 'brick', name: 'Brick', color: '#8c2f39' },
  y: { id: 'mustard', name: 'Mustard', color: '#d9a441' },
  n: { id: 'ink', name: 'Ink', color: '#3b3a5a' },
  s: { id: 'sand', name: 'Sand', color: '#d3b992' },
  b: { id: 'sky', name: 'Sky', color: '#9fbcc6' },
  p: { id: 'plum', name: 'Plum', color: '#6d3f5b' },
  g: { id: 'sage', name: 'Sage', color: '#83a07c' },
};

const id = (letter: string): string => FABRICS[letter]!.id;

/** @returns a length as a ruler says it: "4 1/2" */
export function said(length: Fraction): string {
  if (8n % length.d !== 0n) throw new Error(`${length.toFraction(true)} is not on a ruler`);
  return length.toFraction(true);
}

const shoelace = (points: readonly Corner[]): Fraction => {
  let twice = new Fraction(0);
  points.forEach(([x, y], i) => {
    const [u, v] = points[(i + 1) % points.length]!;
    twice = twice.add(exact(x).mul(exact(v))).sub(exact(u).mul(exact(y)));
  });
  return twice.abs().div(2);
};

/** Grid coordinates are multiples of 1/64 at most, which doubles hold exactly. */
const exact = (steps: number): Fraction => new Fraction(BigInt(steps * 64), 64n);

const scales = (entry: Entry): [Fraction, Fraction] => [
  new Fraction(entry.finished[0]).div(exact(entry.sheet.width)),
  new Fraction(entry.finished[1]).div(exact(entry.sheet.height)),
];

function counted<T extends object>(items: readonly T[]): (T & { quantity: number })[] {
  const groups = new Map<string, T & { quantity: number }>();
  for (const item of items) {
    const key = JSON.stringify(item);
    groups.set(key, { ...item, quantity: (groups.get(key)?.quantity ?? 0) + 1 });
  }
  return [...groups.values()];
}

function cutSize(part: Part, [across, down]: [Fraction, Fraction], turnable: boolean): { width: string; height: string } {
  const w = exact(part.width).mul(across).add(1, 2);
  const h = exact(part.height).mul(down).add(1, 2);
  return turnable && w.compare(h) > 0 ? { width: said(h), height: said(w) } : { width: said(w), height: said(h) };
}

function share(part: Part): Record<string, string> {
  const whole = exact(part.width).mul(exact(part.height));
  const sums = new Map<string, Fraction>();
  for (const { fabric, points } of part.cloth) sums.set(fabric, (sums.get(fabric) ?? new Fraction(0)).add(shoelace(points)));
  return Object.fromEntries([...sums].sort().map(([fabric, sum]) => [id(fabric), sum.div(whole).toFraction()]));
}

/** @returns what a pattern writer would expect of the block */
export function expectation(entry: Entry): Record<string, unknown> {
  const { parts, rings, width, height } = entry.sheet;
  const scale = scales(entry);
  const sewn = parts.filter((part) => part.kind !== 'plain');
  if (sewn.length > 0 && !scale[0].equals(scale[1])) throw new Error(`${entry.file}: triangles on cells that are not square`);
  const patches = parts.reduce((n, part) => n + part.cloth.length, 0);
  if (patches !== entry.patches) throw new Error(`${entry.file}: ${patches} pieces drawn, ${entry.patches} known`);
  const units: Record<string, number> = {};
  for (const { kind } of sewn) units[kind] = (units[kind] ?? 0) + 1;
  const covers = rings === 1 && parts.length === 5;
  if (rings > 0 && !covers) units['partial-seam ring'] = rings;
  const sorted = (counts: object): string => JSON.stringify(Object.entries(counts).sort());
  if (sorted(units) !== sorted(entry.units)) throw new Error(`${entry.file}: ${sorted(units)} drawn, ${sorted(entry.units)} known`);
  if (rings !== (entry.partialSeams ?? 0)) throw new Error(`${entry.file}: ${rings} partial seams drawn`);
  const area = parts.reduce((sum, part) => sum.add(exact(part.width).mul(exact(part.height))), new Fraction(0));
  if (!area.equals(exact(width).mul(exact(height)))) throw new Error(`${entry.file}: the parts do not fill the block`);

  const whole = entry.finished.map((length) => said(new Fraction(length).add(1, 2)));
  const plain = parts.filter((part) => part.kind === 'plain')
    .map((part) => ({ fabric: id(part.cloth[0]!.fabric), ...cutSize(part, scale, true) }));
  const listed = counted(plain).map(({ fabric, quantity, ...size }) => ({ fabric, quantity, ...size }));
  const made = sewn.map((part) => ({
    kind: part.kind,
    ...cutSize(part, scale, true),
    pieces: part.cloth.length,
    ...(part.kind === 'corner-triangle unit' ? { corners: part.cloth.length - 1 } : {}),
    fabrics: share(part),
  }));
  return {
    source: 'common practice',
    note: entry.note,
    unfinished: whole[0] === whole[1] ? whole[0] : whole,
    patches,
    ...(entry.open?.includes('units') ? {} : { units }),
    ...(rings > 0 ? { partialSeams: rings } : {}),
    ...(entry.open?.includes('plain') ? {} : { plain: listed }),
    made: counted(made).map(({ kind, quantity, ...rest }) => ({ kind, quantity, ...rest })),
  };
}

function brushed(part: Part, step: number): Cloth[] {
  const cells: Cloth[] = [];
  for (let y = part.y; y < part.y + part.height; y += step) {
    for (let x = part.x; x < part.x + part.width; x += step) {
      cells.push({ fabric: part.cloth[0]!.fabric, points: [[x, y], [x + step, y], [x + step, y + step], [x, y + step]] });
    }
  }
  return cells;
}

/** @returns the block file's data: coloured areas and nothing else */
export function drawing(entry: Entry): Record<string, unknown> {
  const { sheet, finer = 1, paint = 'pieces' } = entry;
  const cloth = entry.painted ?? sheet.parts.flatMap((part) => {
    const whole = Number.isInteger(part.width) && Number.isInteger(part.height);
    return paint === 'cells' && part.kind === 'plain' && whole ? brushed(part, 1) : part.cloth;
  });
  const shown = cloth.filter(({ fabric }) => paint === 'all' || fabric !== entry.ground || entry.painted);
  const used = new Set([entry.ground, ...sheet.parts.flatMap((part) => part.cloth.map((c) => c.fabric))]);
  return {
    format: 'piecewright/block',
    version: 1,
    name: entry.name,
    finished: { width: entry.finished[0], height: entry.finished[1], unit: 'in' },
    grid: { columns: sheet.width * finer, rows: sheet.height * finer },
    fabrics: Object.keys(FABRICS).filter((letter) => used.has(letter)).map((letter) => FABRICS[letter]),
    ground: id(entry.ground),
    patches: shown.map(({ fabric, points }) => ({ fabric: id(fabric), points: points.map(([x, y]) => [x * finer, y * finer]) })),
  };
}

/** @returns JSON with one line for each list of points */
export function printed(data: unknown): string {
  const text = JSON.stringify(data, null, 1);
  const pairs = text.replace(/\[\s+([-\d.]+),\s+([-\d.]+)\s+\]/g, '[$1, $2]');
  return `${pairs.replace(/\[\s+(\[[^{}]*?\])\s+\]/g, (_, inner: string) => `[${inner.replace(/\s+/g, ' ')}]`)}\n`;
}

if (process.argv[1]?.endsWith('draw.ts')) {
  for (const entry of gallery) {
    writeFileSync(join(import.meta.dirname, `${entry.file}.block.json`), printed(drawing(entry)));
    writeFileSync(join(import.meta.dirname, `${entry.file}.expect.json`), printed(expectation(entry)));
  }
}

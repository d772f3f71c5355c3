import * as v from 'valibot';
import type { Block, Colourway, Fabric, Grid, LatticePoint, Look, Patch, PressedSeam, UnitMethod } from '../block/block.ts';
import type { Choices, ClothChoice, ClothSize, Margin } from '../block/choices.ts';
import type { Publication } from '../block/publication.ts';
import { coarsest } from '../block/lattice.ts';
import { refused } from '../block/problems.ts';
import type { Pin } from '../geometry/patchwork/drawing.ts';
import { formatLength } from '../measure/lengths.ts';
import type { Problem, Result } from '../measure/problem.ts';
import { rational, type Rational } from '../measure/rational.ts';
import { blockShape, FORMAT, VERSION } from './block-shape.ts';
import { blockFrom } from './door.ts';
import { readJson } from './read-json.ts';
import { fileTooLarge, shapeProblem, wrongFormat, wrongVersion } from './shape-problems.ts';

/** Longest block file, in bytes (and in characters). Pictures take most of it: 5,000 triangles are half a megabyte. */
export const MAX_FILE = 26_000_000;

/** @returns the problem with a file of this many bytes, null where it may be read; for shells to ask before they read it */
export const fileSizeProblem = (bytes: number): Problem | null => (bytes > MAX_FILE ? fileTooLarge(bytes, MAX_FILE) : null);

/**
 * Reads a block file. `formatBlock` is its counterpart.
 * @param text the file's content
 * @returns the block on the coarsest lattice that holds its points, or the first problem found
 */
export function parseBlock(text: string): Result<Block> {
  const tooLarge = fileSizeProblem(text.length);
  if (tooLarge) return refused(tooLarge);
  const read = readJson(text);
  if (!read.ok) return read;
  const { content, format, version } = read.value;
  if (format !== FORMAT) return refused(wrongFormat(format, FORMAT));
  if (version !== VERSION) return refused(wrongVersion(version, VERSION));
  const shaped = v.safeParse(blockShape, content, { abortEarly: true });
  return shaped.success ? blockFrom(shaped.output) : refused(shapeProblem(shaped.issues[0]));
}

/**
 * Writes a block file, one patch to a line.
 * @returns text that parseBlock reads back as the same block on its coarsest lattice
 */
export function formatBlock(block: Block): string {
  const { name, finished, grid, denominator, fabrics, ground, patches, seams, pins = [], unitMethods = [], pressedSeams = [], choices, fuses, colourways = [], photos = [], publication } = coarsest(block);
  const place = ([x, y]: LatticePoint): string => `[${coordinate(x, denominator)}, ${coordinate(y, denominator)}]`;
  const patchLine = ({ fabric, points, whole, photoAt, print }: Patch): string =>
    `{ "fabric": ${JSON.stringify(fabric)}, "points": [${points.map(place).join(', ')}]${whole ? ', "whole": true' : ''}${photoAt ? `, "photoAt": [${photoAt.join(', ')}]` : ''}${print ? `, "print": ${print}` : ''} }`;
  const pinLine = ({ pin, from, to }: Pin): string => `{ "pin": ${JSON.stringify(pin)}, "from": ${place(from)}, "to": ${place(to)} }`;
  const unitLine = ({ from, to, method }: UnitMethod): string =>
    `{ "from": ${place(from)}, "to": ${place(to)}, "method": ${JSON.stringify(method)} }`;
  const pressedLine = ({ from, to, lies }: PressedSeam): string =>
    `{ "from": ${place(from)}, "to": ${place(to)}, "lies": ${JSON.stringify(lies)} }`;
  const { width, height, unit } = finished;
  const entries: readonly (readonly [string, string])[] = [
    ['format', JSON.stringify(FORMAT)],
    ['version', String(VERSION)],
    ['name', JSON.stringify(name)],
    ['finished', oneLine({ width: formatLength(width), height: formatLength(height), unit })],
    ['grid', writtenGrid(grid)],
    ['fabrics', list(fabrics.map(fabricLine))],
    ['ground', JSON.stringify(ground)],
    ['patches', list(patches.map(patchLine))],
    ...(seams.length > 0 ? [['seams', list(seams.map(([from, to]) => `[${place(from)}, ${place(to)}]`))] as const] : []),
    ...(pins.length > 0 ? [['pins', list(pins.map(pinLine))] as const] : []),
    ...(unitMethods.length > 0 ? [['unitMethods', list(unitMethods.map(unitLine))] as const] : []),
    ...(pressedSeams.length > 0 ? [['pressedSeams', list(pressedSeams.map(pressedLine))] as const] : []),
    ...(choices ? [['choices', oneLine(writtenChoices(choices))] as const] : []),
    ...(fuses ? [['fuses', 'true'] as const] : []),
    ...(colourways.length > 0 ? [['colourways', list(colourways.map(colourwayLine))] as const] : []),
    ...(photos.length > 0 ? [['photos', list(photos.map(oneLine))] as const] : []),
    ...(publication ? [['publication', writtenPublication(publication)] as const] : []),
  ];
  return `{\n${entries.map(([key, value]) => `  "${key}": ${value}`).join(',\n')}\n}\n`;
}

/** @returns what a designer adds, one sentence, part or picture to a line */
function writtenPublication({ subtitle, ...lists }: Publication): string {
  const lines = (name: string, items: readonly unknown[]): string => `"${name}": [\n      ${items.map(oneLine).join(',\n      ')}\n    ]`;
  const written = (['sections', 'words', 'parts', 'pictures'] as const).flatMap((name) => (lists[name] ? [lines(name, lists[name])] : []));
  return `{\n    ${[...(subtitle === undefined ? [] : [`"subtitle": ${JSON.stringify(subtitle)}`]), ...written].join(',\n    ')}\n  }`;
}

/** @returns a coordinate as JSON: whole numbers and halves as numbers, other fractions as text */
function coordinate(steps: number, denominator: number): string {
  if ((2 * steps) % denominator === 0) return String(steps / denominator);
  return JSON.stringify(formatLength(rational(steps, denominator)));
}

function writtenGrid({ columns, rows, across, down }: Grid): string {
  const lines = (name: string, at: Grid['across']): string =>
    at ? `, "${name}": [${at.map(({ n, d }) => coordinate(n, d)).join(', ')}]` : '';
  return `{ "columns": ${columns}, "rows": ${rows}${lines('across', across)}${lines('down', down)} }`;
}

const fabricLine = ({ id, ...look }: Fabric): string => oneLine({ id, ...writtenLook(look) });

const writtenLook = ({ name, color, directional, scraps, same, value, photo }: Look): Readonly<Record<string, unknown>> => ({
  name, color, directional: directional || undefined, scraps, same, value,
  photo: photo && { picture: photo.picture, across: length(photo.across) },
});

const colourwayLine = ({ name, looks }: Colourway): string =>
  oneLine({ name, looks: Object.fromEntries(Object.entries(looks).map(([id, look]) => [id, writtenLook(look)])) });

const length = (value: Rational | undefined): string | undefined => value && formatLength(value);

function writtenChoices(choices: Choices): Readonly<Record<string, unknown>> {
  const { seam, ruler, trim, method, methods, way, assembly, blocks, width, cloths, squaringUp, margin, shopStep } = choices;
  return {
    seam: length(seam),
    ruler: length(ruler),
    trim: length(trim),
    method,
    methods,
    way,
    assembly,
    blocks,
    width: length(width),
    cloths: cloths && Object.fromEntries(Object.entries(cloths).map(([id, cloth]) => [id, writtenCloth(cloth)])),
    squaringUp: length(squaringUp),
    margin: margin && writtenMargin(margin),
    shopStep: length(shopStep),
  };
}

const writtenMargin = (margin: Margin): Readonly<Record<string, unknown>> =>
  'percent' in margin ? { percent: length(margin.percent) } : { length: length(margin.length) };

const writtenSize = (size: ClothSize): Readonly<Record<string, unknown>> => ({ width: length(size.width), length: length(size.length) });

const writtenCloth = ({ sold, size, width, have }: ClothChoice): Readonly<Record<string, unknown>> => ({
  sold,
  size: size && writtenSize(size),
  width: length(width),
  have: have && have.map((piece) => ({ ...writtenSize(piece), count: piece.count })),
});

/** @returns data as JSON on one line; absent values are left out */
function oneLine(data: unknown): string {
  if (Array.isArray(data)) return `[${data.map(oneLine).join(', ')}]`;
  if (typeof data !== 'object' || data === null) return JSON.stringify(data);
  const entries = Object.entries(data).filter(([, value]) => value !== undefined);
  const inner = entries.map(([key, value]) => `${JSON.stringify(key)}: ${oneLine(value)}`);
  return inner.length === 0 ? '{}' : `{ ${inner.join(', ')} }`;
}

/** @returns a list as JSON, one item to a line */
const list = (items: readonly string[]): string => (items.length === 0 ? '[]' : `[\n    ${items.join(',\n    ')}\n  ]`);

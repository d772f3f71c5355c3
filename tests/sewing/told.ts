import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Block } from '../../src/block/block.ts';
import type { Choices } from '../../src/block/choices.ts';
import { toDrawing } from '../../src/block/drawing.ts';
import { plainTelling } from '../../src/block/plain-telling.ts';
import { cutList } from '../../src/cutting/cutting.ts';
import type { Cut } from '../../src/cutting/cut.ts';
import { parseBlock } from '../../src/files/block-file.ts';
import type { Drawing } from '../../src/geometry/patchwork/drawing.ts';
import type { Piecing } from '../../src/geometry/piecing/assembly.ts';
import { sewing } from '../../src/geometry/piecing/ways.ts';
import { rational, type Rational } from '../../src/measure/rational.ts';
import { makePattern } from '../../src/pattern/make-pattern.ts';
import type { Pattern } from '../../src/pattern/pattern.ts';
import { SEWING_IN_ENGLISH } from '../../src/sewing/phrases/english.ts';
import { prove } from '../../src/sewing/proof.ts';
import type { Pressing, Proof, Step } from '../../src/sewing/step.ts';
import { sewingPlan } from '../../src/sewing/steps.ts';
import { must } from '../block/drawn.ts';

/** Patterns of block files and of small blocks drawn for a test, and what their steps say. */

const root = join(import.meta.dirname, '..', '..');
const ENDING = '.block.json';
const folders = ['tests/cases', 'tests/gallery', 'demo-blocks'];

/** Every block file of the project: "tests/cases/shoo-fly-12". */
export const FILES: readonly string[] = folders.flatMap((folder) =>
  readdirSync(join(root, folder))
    .filter((name) => name.endsWith(ENDING))
    .sort()
    .map((name) => `${folder}/${name.slice(0, -ENDING.length)}`),
);

const made = new Map<string, Pattern>();

/** @returns the pattern of a block's text, worked out once */
function patternFrom(text: string, choices: Choices): Pattern {
  const name = `${JSON.stringify(choices)} ${text}`;
  const found = made.get(name) ?? must(makePattern(must(parseBlock(text)), choices, 'chosen way'));
  made.set(name, found);
  return found;
}

export const patternOf = (file: string, choices: Choices = {}): Pattern =>
  patternFrom(readFileSync(join(root, file + ENDING), 'utf8'), choices);

/** @returns the drawing of a block file */
export const blockOf = (file: string): Block => must(parseBlock(readFileSync(join(root, file + ENDING), 'utf8')));

/** Fabrics to paint with, the lightest first. */
const CLOTHS = { oat: '#f3ede0', sand: '#d3b992', sage: '#83a07c', rust: '#8c2f39', teal: '#2f5d62', ink: '#20203a' } as const;

export type Cloth = keyof typeof CLOTHS;
type Corner = readonly [number, number];

/** A patch by its cloth and corners, in grid units. */
export const patch = (fabric: Cloth, ...points: readonly Corner[]): { readonly fabric: Cloth; readonly points: readonly Corner[] } => ({
  fabric,
  points,
});

/** A patch of straight sides: from corner x, y so far across and down. */
export const box = (fabric: Cloth, x: number, y: number, w: number, h: number): ReturnType<typeof patch> =>
  patch(fabric, [x, y], [x + w, y], [x + w, y + h], [x, y + h]);

interface Drawn {
  /** Finished size in inches: "3 by 1 1/2". */
  readonly finished: string;
  /** Columns and rows. */
  readonly grid: readonly [number, number];
  readonly ground: Cloth;
  readonly patches: readonly ReturnType<typeof patch>[];
  readonly seams?: readonly (readonly [Corner, Corner])[];
}

/** @returns the pattern of a block drawn for a test */
export function patternDrawn({ finished, grid: [columns, rows], ground, patches, seams = [] }: Drawn, choices: Choices = {}): Pattern {
  const [width, height] = finished.split(' by ');
  const used = new Set([ground, ...patches.map(({ fabric }) => fabric)]);
  const block = {
    format: 'piecewright/block',
    version: 1,
    name: 'Tide table',
    finished: { width, height, unit: 'in' },
    grid: { columns, rows },
    fabrics: Object.entries(CLOTHS).flatMap(([id, color]) =>
      used.has(id as Cloth) ? [{ id, name: id.charAt(0).toUpperCase() + id.slice(1), color }] : [],
    ),
    ground,
    patches,
    seams,
  };
  return patternFrom(JSON.stringify(block), choices);
}

/** @returns the one step that makes units of a kind; 'block' is the last step */
export function stepOf({ steps }: Pattern, kind: Step['kind']): Step {
  const found = steps.filter((step) => step.kind === kind);
  if (found.length !== 1) throw new Error(`${found.length} steps make a ${kind}`);
  return found[0]!;
}

/** @returns the step that makes the block */
export const lastStep = ({ steps }: Pattern): Step => steps.at(-1)!;

/** A block as it is sewn: what to cut, the steps, and whether they make the drawing. */
export interface Sewn {
  readonly cuts: readonly Cut[];
  readonly steps: readonly Step[];
  readonly pressing: Pressing;
  readonly proof: Proof;
}

/** Fabrics are as dark as their names come late in the alphabet. */
export const darkness = (fabric: string): number => fabric.charCodeAt(0);

/** @returns one way to sew a drawing, cut and told by these methods; fabrics are called by their ids unless told otherwise */
export function sewnBy(
  drawing: Drawing,
  step: Rational,
  piecing: Piecing,
  { methods = {}, trim = rational(0), blocks = 1 }: Choices = {},
  fabricName = (id: string): string => id,
): Sewn {
  const rules = { step, seam: rational(1, 4), ruler: rational(1, 8), trim, blocks };
  const fabrics = [...new Set(piecing.pieces.map(({ fabric }) => fabric))];
  const list = cutList(piecing, { ...rules, methods, fabrics });
  const { steps, pressing } = sewingPlan(piecing, list, { ...rules, words: { telling: plainTelling(fabricName), phrases: SEWING_IN_ENGLISH, unit: 'in', seam: rules.seam }, darkness });
  return { cuts: list.cuts, steps, pressing, proof: prove({ drawing, ...rules, cuts: list.cuts, steps }) };
}

/** @returns the drawing of a block file and the standard way to sew it */
export function sewnFrom(file: string): { readonly drawing: Drawing; readonly step: Rational; readonly piecing: Piecing } {
  const { drawing, step } = must(toDrawing(must(parseBlock(readFileSync(join(root, file + ENDING), 'utf8')))));
  return { drawing, step, piecing: sewing(drawing).way('standard units')! };
}

/** @returns a block file by every one of these choices, pieced once */
export function everyWayCut(file: string, all: readonly Choices[]): readonly Sewn[] {
  const { drawing, step, piecing } = sewnFrom(file);
  return all.map((choices) => sewnBy(drawing, step, piecing, choices));
}

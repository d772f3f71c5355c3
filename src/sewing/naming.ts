import { printLength } from '../measure/lengths.ts';
import { rational, type Rational } from '../measure/rational.ts';
import type { LengthUnit } from '../block/block.ts';
import type { Telling } from '../block/telling.ts';
import { cutShape, type Hand } from '../cutting/shapes.ts';
import type { Cut, Role } from '../cutting/cut.ts';
import { box, type Box } from '../geometry/convex.ts';
import { compareX, compareY, type Point } from '../geometry/point.ts';
import { shapeOf } from '../geometry/shape.ts';
import { listed } from '../measure/words.ts';
import { different } from './sentences.ts';
import type { Count, Shape, Size, Thing } from './phrases/said.ts';
import type { SewingPhrases } from './phrases/sewing-phrases.ts';
import type { StepPart } from './step.ts';

/** What the sentences of a step are made from. */
export interface Vocabulary {
  /** How values stand in a sentence. */
  readonly telling: Telling;
  /** How a language says it. */
  readonly phrases: SewingPhrases;
  readonly unit: LengthUnit;
  readonly seam: Rational;
  readonly cut: (id: string) => Cut;
}

const TURNS = ['', ' turned a quarter clockwise', ' turned half round', ' turned a quarter counter-clockwise'] as const;

/** @returns a fabric as it is called in a sentence */
export const clothName = (id: string, { telling }: Vocabulary): string => telling.cloth(id);

/** @returns a number as phrases want it */
export const counted = (n: number, { telling }: Vocabulary): Count => ({ n, said: telling.count(n) });

/** @returns a size as phrases want it, of width and height also where these are equal */
export const sizeOf = ({ width, height }: { readonly width: Rational; readonly height: Rational }, { telling, unit }: Vocabulary): Size => [
  telling.length(width, unit, 'bare'),
  telling.length(height, unit),
];

/** @returns the shape of the pieces that are made of a line of the cutting list */
export function shapeFrom(cut: Cut, words: Vocabulary): Shape {
  const { telling, unit } = words;
  if (cut.shape === 'template') return { form: 'template', cut: telling.cut(cut.id) };
  const { subcut, shape: form } = cut;
  if (subcut === 'head to tail') return { form: 'strip triangle', strip: telling.length(cut.width, unit) };
  const size = cutSizeOf(cut, words);
  return subcut === 'none' ? { form, size } : { form: 'triangle', from: form, size, cut: subcut };
}

/** @returns the size as it stands in the cutting list, of a square its side alone */
export const cutSizeOf = (cut: Cut, words: Vocabulary): Size =>
  cut.shape === 'square' ? [words.telling.length(cut.width, words.unit)] : sizeOf(cut, words);

/** @returns a part of a step as phrases want it */
export const thing = ({ from, turn }: StepPart, words: Vocabulary): Thing =>
  'unit' in from
    ? { unit: words.telling.unit(from.unit), turn }
    : { cloth: words.telling.cloth(from.fabric), shape: shapeFrom(words.cut(from.cut), words) };

/** @returns the fabric of a piece; '' for a unit */
export const clothOf = (part: StepPart): string => ('cut' in part.from ? part.from.fabric : '');

/** @returns what a piece does in its unit; null for a unit */
export const roleOf = (part: StepPart): Role | null => ('cut' in part.from ? part.from.role : null);

/** @returns what a part is called in a few letters: a unit by its letter, a piece by its fabric */
export const shortName = (part: StepPart, words: Vocabulary): string =>
  'unit' in part.from ? part.from.unit : clothName(part.from.fabric, words);

/** @returns the size as it stands in the cutting list: "4 7/8 in." or "2 1/2 by 4 1/2 in." */
export function cutSize({ shape, width, height }: Cut, { unit }: Vocabulary): string {
  return shape === 'square' ? printLength(width, unit) : `${printLength(width, unit, 'bare')} by ${printLength(height, unit)}`;
}

/** @returns "4 7/8 in. square", "2 1/2 by 4 1/2 in. rectangle"; with many more than one of them */
const cutName = (cut: Cut, words: Vocabulary, many: boolean): string => `${cutSize(cut, words)} ${cut.shape}${many ? 's' : ''}`;

/** What is made of a line of the cutting list: how it is called, and where it comes from where that is not plain from its name. */
function pieceName(cut: Cut, words: Vocabulary, many: boolean): { readonly name: string; readonly from: string } {
  if (cut.shape === 'template') return { name: many ? 'pieces' : 'piece', from: ` (template ${cut.id})` };
  if (cut.subcut === 'none') return { name: cutName(cut, words, many), from: '' };
  const triangles = many ? 'triangles' : 'triangle';
  if (cut.subcut === 'head to tail') return { name: triangles, from: ` (from strips ${printLength(cut.width, words.unit)} high)` };
  return { name: triangles, from: ` (${cutName(cut, words, many)} cut ${cut.subcut})` };
}

/** @returns what to call a part: a unit by its letter and turn, a piece by its fabric and the size it is cut to */
export function partName(part: StepPart, words: Vocabulary, many = false): string {
  if ('unit' in part.from) return `${part.from.unit}${TURNS[part.turn]}`;
  const { name, from } = pieceName(words.cut(part.from.cut), words, many);
  return `${clothName(part.from.fabric, words)} ${name}${from}`;
}

/** @returns pieces by fabric and size, one size told once for all its fabrics: "Fog and Sea triangles (5 1/4 in. squares cut twice)" */
export function namesTogether(parts: readonly StepPart[], words: Vocabulary): string {
  const cloths = new Map<string, string[]>();
  for (const part of parts) {
    const { name, from } = pieceName(words.cut('cut' in part.from ? part.from.cut : ''), words, true);
    cloths.set(`${name}${from}`, [...(cloths.get(`${name}${from}`) ?? []), clothName(clothOf(part), words)]);
  }
  return listed([...cloths].map(([what, whose]) => `${listed(different(whose))} ${what}`));
}

/** How a rectangle is cut for a triangle, as the cutting list says it: right side up, standing on its short side. */
const HANDS: Readonly<Record<Hand, string>> = {
  falling: 'from the top left to the bottom right',
  rising: 'from the bottom left to the top right',
};

/** @returns along which diagonal a triangle's rectangle is cut; null where it comes from a square or a template */
export function diagonalOf(part: StepPart): string | null {
  const shape = cutShape(part.outline, rational(1));
  return shape.form === 'right' && roleOf(part) === 'half' ? HANDS[shape.hand] : null;
}

/** A side of what a step makes, as it lies when the step begins. */
export type Side = 'top' | 'right' | 'bottom' | 'left';

export const SIDES: readonly Side[] = ['top', 'right', 'bottom', 'left'];

/** @returns on which side of a whole's middle a part lies; '' where it reaches across the middle */
function toOneSide(part: Box, whole: Box): { readonly across: '' | 'left' | 'right'; readonly down: '' | 'top' | 'bottom' } {
  const middleX = { x: whole.left.x * whole.right.w + whole.right.x * whole.left.w, y: 0, w: 2 * whole.left.w * whole.right.w };
  const middleY = { x: 0, y: whole.top.y * whole.bottom.w + whole.bottom.y * whole.top.w, w: 2 * whole.top.w * whole.bottom.w };
  return {
    across: compareX(part.right, middleX) <= 0 ? 'left' : compareX(part.left, middleX) >= 0 ? 'right' : '',
    down: compareY(part.bottom, middleY) <= 0 ? 'top' : compareY(part.top, middleY) >= 0 ? 'bottom' : '',
  };
}

const boxOfAll = (parts: readonly StepPart[]): Box => box(parts.flatMap(({ outline }) => outline));

/** @returns where a part lies in what its step makes: "top left", "right", "middle" */
export function placeOf(part: StepPart, parts: readonly StepPart[]): string {
  const { across, down } = toOneSide(box(part.outline), boxOfAll(parts));
  return [down, across].filter(Boolean).join(' ') || 'middle';
}

/** @returns in which corner of its unit a corner triangle lies: "top left" */
export function cornerOf(part: StepPart, parts: readonly StepPart[]): string {
  const shape = shapeOf(part.outline);
  if (shape.shape !== 'right triangle') return placeOf(part, parts);
  const at: Point = part.outline[shape.corner]!;
  const { across, down } = toOneSide({ left: at, right: at, top: at, bottom: at }, boxOfAll(parts));
  return [down, across].filter(Boolean).join(' ');
}

/** @returns along which side of a square unit the long side of a triangle lies */
export function sideAlong(part: StepPart, parts: readonly StepPart[]): Side {
  const [own, whole] = [box(part.outline), boxOfAll(parts)];
  if (compareX(own.right, whole.right) < 0) return 'left';
  if (compareX(own.left, whole.left) > 0) return 'right';
  return compareY(own.bottom, whole.bottom) < 0 ? 'top' : 'bottom';
}

/** @returns on which side of another thing a part lies that touches it along a whole side */
export function sideOf(part: StepPart, other: readonly StepPart[]): Side {
  const [own, there] = [box(part.outline), boxOfAll(other)];
  if (compareY(own.bottom, there.top) <= 0) return 'top';
  if (compareX(own.left, there.right) >= 0) return 'right';
  return compareY(own.top, there.bottom) >= 0 ? 'bottom' : 'left';
}

import { counted as numberOf, type Count } from '../block/counting.ts';
import { rational, type Rational } from '../measure/rational.ts';
import type { LengthUnit } from '../block/block.ts';
import type { Telling } from '../block/telling.ts';
import { cutShape } from '../cutting/shapes.ts';
import type { Cut, Role } from '../cutting/cut.ts';
import { box, type Box } from '../geometry/convex.ts';
import { compareX, compareY, type Point } from '../geometry/point.ts';
import { shapeOf } from '../geometry/shape.ts';
import { different, grouped, runsOf } from './sentences.ts';
import type { Some } from './phrases/joins.ts';
import type { Diagonal, Piece, Pieces, Place, Shape, Side, Size, Thing } from './phrases/said.ts';
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

/** @returns a fabric as it is called in a sentence */
export const clothName = (id: string, { telling }: Vocabulary): string => telling.cloth(id);

/** @returns a number as phrases want it */
export const counted = (n: number, { telling }: Vocabulary): Count => numberOf(n, telling);

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
export const thing = (part: StepPart, words: Vocabulary): Thing =>
  'unit' in part.from ? { unit: words.telling.unit(part.from.unit), turn: part.turn } : pieceOf(part, words);

/** @returns a part that is a piece of cloth as phrases want it */
export const pieceOf = (part: StepPart, words: Vocabulary): Piece => ({
  cloth: clothName(clothOf(part), words),
  shape: shapeFrom(cutOf(part, words), words),
});

/** @returns the line of the cutting list that a piece comes from */
export const cutOf = ({ from }: StepPart, { cut }: Vocabulary): Cut => cut('cut' in from ? from.cut : '');

/** @returns the fabric of a piece; '' for a unit */
export const clothOf = (part: StepPart): string => ('cut' in part.from ? part.from.fabric : '');

/** @returns what a piece does in its unit; null for a unit */
export const roleOf = (part: StepPart): Role | null => ('cut' in part.from ? part.from.role : null);

/** @returns a text that pieces of two lines share if they are cut to one shape, whatever their cloth */
export function shapeKey({ id, shape, subcut, width, height }: Cut): string {
  if (shape === 'template') return id;
  const sides = subcut === 'head to tail' ? [width] : [width, height];
  return [shape, subcut, ...sides.map(({ n, d }) => `${n}/${d}`)].join(' ');
}

/** @returns a text that two parts share if they are called alike */
export const likeness = ({ from, turn }: StepPart, { cut }: Vocabulary): string =>
  'unit' in from ? `${from.unit} ${turn}` : `${from.fabric} ${shapeKey(cut(from.cut))}`;

/** @returns pieces by their shapes, each shape once with all its cloths */
export const together = (parts: readonly StepPart[], words: Vocabulary): readonly Pieces[] =>
  grouped(parts, (part) => shapeKey(cutOf(part, words))).map((alike) => ({
    cloths: different(alike.map(clothOf)).map(words.telling.cloth),
    shape: shapeFrom(cutOf(alike[0], words), words),
  }));

/** @returns things that follow one another with how many there are in a row */
export const inRuns = (parts: readonly StepPart[], words: Vocabulary): readonly Some[] =>
  runsOf(parts, (part) => likeness(part, words)).map((alike) => ({ thing: thing(alike[0], words), count: counted(alike.length, words) }));

/** @returns along which diagonal a triangle's rectangle is cut; null where it comes from a square or a template */
export function diagonalOf(part: StepPart): Diagonal | null {
  const shape = cutShape(part.outline, rational(1));
  return shape.form === 'right' && roleOf(part) === 'half' ? shape.hand : null;
}

/** Sides of what a step makes, as it lies when the step begins, clockwise. */
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
export const placeOf = (part: StepPart, parts: readonly StepPart[]): Place => placeIn(box(part.outline), boxOfAll(parts));

function placeIn(part: Box, whole: Box): Place {
  const { across, down } = toOneSide(part, whole);
  return down && across ? `${down} ${across}` : down || across || 'middle';
}

/** @returns in which corner of its unit a corner triangle lies: "top left" */
export function cornerOf(part: StepPart, parts: readonly StepPart[]): Place {
  const shape = shapeOf(part.outline);
  if (shape.shape !== 'right triangle') return placeOf(part, parts);
  const at: Point = part.outline[shape.corner]!;
  return placeIn({ left: at, right: at, top: at, bottom: at }, boxOfAll(parts));
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

import { formatLength } from '../measure/lengths.ts';
import type { Problem, Result } from '../measure/problem.ts';
import type { Rational } from '../measure/rational.ts';
import type { LengthUnit } from './block.ts';
import {
  MAX_CELLS, MAX_FINISHED, MAX_NAME, MAX_PATCHES, MAX_PINS, MAX_POINTS,
  MAX_PRESSED_SEAMS, MAX_SEAMS, MAX_STEPS, MAX_UNIT_METHODS,
} from './limits.ts';
import type { OutlineFault } from './outline.ts';

/*
 * Every sentence about a drawing. `where` begins a sentence and names a place as a person counts: "Patch 3", "Seam 1, end 2".
 */

export const problem = (code: string, sentence: string): Problem => ({ code, sentence });

/** @returns the failed result of an operation */
export const refused = (why: Problem): Result<never> => ({ ok: false, problem: why });

/** @returns a number with commas between thousands */
export const count = (n: number): string => n.toLocaleString('en-US');
/** @returns a unit as it stands after a number */
export const unitName = (unit: LengthUnit): string => (unit === 'in' ? 'in.' : 'cm');

/** @returns what somebody else wrote, in quotes and cut short, for use in a sentence */
export function quoted(text: string): string {
  const short = [...text.slice(0, 100)].slice(0, 40).join('');
  return JSON.stringify(short.length < text.length ? `${short}…` : short);
}

/** @returns up to six names as "oat", "teal" … */
export function listed(names: readonly string[]): string {
  const some = names.slice(0, 6).map(quoted).join(', ');
  return names.length > 6 ? `${some} …` : some;
}

export const tooManyPoints = (where: string, points: number): Problem =>
  problem(
    'too-many-points',
    `${where} has ${count(points)} points; one outline may have at most ${count(MAX_POINTS)}, so divide the patch.`,
  );

/** @returns the sentence for corners that make no simple outline */
export function noOutline(where: string, points: number, fault: OutlineFault): Problem {
  const [a, b, c] = fault.points.map((i) => i + 1);
  switch (fault.kind) {
    case 'few':
      return problem('too-few-points', `${where} has ${points === 1 ? '1 point' : `${points} points`}; an outline needs at least 3.`);
    case 'repeated':
      return problem('repeated-points', `${where} comes to the same place at points ${a} and ${b}; leave one of them out.`);
    case 'on-one-line':
      return problem('points-on-a-line', `${where} has points ${a}, ${b} and ${c} on one line; leave out point ${b}.`);
    case 'crossing':
      return problem(
        'outline-crosses-itself',
        `${where} crosses or touches itself where the edges after point ${a} and point ${b} meet; move one of them.`,
      );
  }
}

export const offBlock = (where: string, at: string, columns: number, rows: number): Problem =>
  problem('off-the-grid', `${where} at ${at} is off the grid; keep across from 0 to ${columns} and down from 0 to ${rows}.`);

export const tooFine = (steps: number, points = 'The points'): Problem =>
  problem(
    'too-fine',
    `${points} need ${count(steps)} steps to a side of the block, ` +
      `finer than the ${count(MAX_STEPS)} that can be held exactly; use coarser fractions.`,
  );

export const numberTooFine = (where: string, text: string): Problem =>
  problem('too-fine', `${where} has the number ${text}, finer than can be held exactly; use a coarser fraction like "5/3".`);

export const noCommonStep = (width: Rational, height: Rational, unit: LengthUnit): Problem =>
  problem(
    'too-fine',
    `At ${formatLength(width)} by ${formatLength(height)} ${unitName(unit)} the points need more than the ${count(MAX_STEPS)} steps ` +
      'to a side of the block that can be held exactly; choose rounder sizes or coarser fractions.',
  );

export const unknownFabric = (where: string, id: string, known: readonly string[]): Problem =>
  problem(
    'unknown-fabric',
    `${where} uses the fabric ${quoted(id)}, which the block does not have; use one of ${listed(known)} or add it.`,
  );

export const tooManyPatches = (patches: number): Problem =>
  problem(
    'too-many-patches',
    `The block has ${count(patches)} patches; it may have at most ${count(MAX_PATCHES)}, so join or remove some.`,
  );

export const tooManySeams = (seams: number): Problem =>
  problem('too-many-seams', `The block has ${count(seams)} drawn seams; it may have at most ${count(MAX_SEAMS)}, so remove some.`);

export const seamWithoutLength = (where: string): Problem =>
  problem('seam-without-length', `${where} has no length because its two ends are the same; move one of them.`);

export const tooManyPins = (pins: number): Problem =>
  problem('too-many-pins', `The block has ${count(pins)} pins; it may have at most ${count(MAX_PINS)}, so take some away.`);

export const pinWithoutArea = (where: string): Problem =>
  problem('pin-without-extent', `${where} spans no area; move its two corners apart both across and down.`);

export const pinWithoutLength = (where: string): Problem =>
  problem('pin-without-extent', `${where} has no length because its two ends are the same; move one of them to the other side of the block.`);

export const tooManyUnitMethods = (units: number): Problem =>
  problem(
    'too-many-unit-methods',
    `The block has ${count(units)} units with a method of their own; it may have at most ${count(MAX_UNIT_METHODS)}, so take some away.`,
  );

export const unitWithoutArea = (where: string): Problem =>
  problem('unit-without-area', `${where} spans no area; move its two corners apart both across and down.`);

export const tooManyPressedSeams = (seams: number): Problem =>
  problem(
    'too-many-pressed-seams',
    `The block has ${count(seams)} seams with a pressing of their own; it may have at most ${count(MAX_PRESSED_SEAMS)}, so take some away.`,
  );

export const noSuchPin = (number: number): Problem =>
  problem('no-such-pin', `The block has no pin ${number}; choose one that is there.`);

export const sizeOutOfRange = (side: 'width' | 'height', text: string, unit: LengthUnit): Problem =>
  problem(
    'size-out-of-range',
    `The finished ${side} must be more than 0 and at most ${MAX_FINISHED[unit]} ${unitName(unit)}; this one is ${text}.`,
  );

export const gridOutOfRange = (side: 'columns' | 'rows', found: string): Problem =>
  problem('grid-out-of-range', `The grid has ${found} ${side}; it must have a whole number of them from 1 to ${MAX_CELLS}.`);

export const LINE_WORDS = { across: ['upright', 'the left edge'], down: ['level', 'the top edge'] } as const;

export const lineOffBlock = (lines: 'across' | 'down', number: number, at: string, units: number): Problem =>
  problem(
    'line-off-the-grid',
    `The grid's ${LINE_WORDS[lines][0]} line ${number} is at ${at}; put it between 0 and ${units}, the edges themselves left out.`,
  );

export const lineOutOfOrder = (lines: 'across' | 'down', number: number, at: string, before: string): Problem =>
  problem(
    'lines-out-of-order',
    `The grid's ${LINE_WORDS[lines][0]} line ${number} is at ${at} and the one before it at ${before}; ` +
      `list each line once, in order from ${LINE_WORDS[lines][1]}.`,
  );

export const nameTooLong = (where: string, characters: number): Problem =>
  problem('name-too-long', `${where} has ${count(characters)} characters; shorten it to at most ${MAX_NAME}.`);

export const nameUnprintable = (where: string): Problem =>
  problem(
    'control-characters',
    `${where} holds characters that cannot be printed, such as a line break; write it as plain text on one line.`,
  );

export const noSuchPatch = (number: number): Problem =>
  problem('no-such-patch', `The block has no patch ${number}; choose one that is there.`);

export const areaTooFine = (): Problem =>
  problem(
    'area-too-fine',
    'The outlines cross here at points finer than can be held exactly, so this area cannot be filled; paint it in parts.',
  );

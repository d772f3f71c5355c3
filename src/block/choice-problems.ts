import type { Problem } from '../measure/problem.ts';
import type { LengthUnit } from './block.ts';
import { MAX_BLOCKS, MAX_CHOSEN, MAX_CLOTH, MAX_HAVE, MAX_HAVE_COUNT, MAX_MARGIN, MAX_SEED, MAY_BE_NONE, PRINTS, type ChosenLength } from './limits.ts';
import { count, problem, unitName } from './problems.ts';

/*
 * Every sentence about what is chosen: how a block is cut and sewn, and from what cloth.
 */

export const unitTwice = (first: number, second: number): Problem =>
  problem('unit-twice', `Unit methods ${first} and ${second} are for the same rectangle; leave one of them out.`);

export const pressedTwice = (first: number, second: number): Problem =>
  problem('pressed-twice', `Pressings ${first} and ${second} are for the same seam; leave one of them out.`);

/** @returns what is chosen, as a sentence begins with it: "The chosen squaring-up" */
export const chosen = (name: ChosenLength): string =>
  `The chosen ${name === 'squaringUp' ? 'squaring-up' : name === 'shopStep' ? 'step of the shop' : name}`;

export const choiceOutOfRange = (name: ChosenLength, text: string, unit: LengthUnit): Problem =>
  problem(
    'choice-out-of-range',
    `${chosen(name)} must be ${MAY_BE_NONE.has(name) ? '0 or more' : 'more than 0'} and at most ` +
      `${MAX_CHOSEN[name][unit]} ${unitName(unit)}; this one is ${text}.`,
  );

export const clothOutOfRange = (where: string, most: number, text: string, unit: LengthUnit): Problem =>
  problem('choice-out-of-range', `${where} must be more than 0 and at most ${count(most)} ${unitName(unit)}; this one is ${text}.`);

export const noHaveCount = (where: string, found: string): Problem =>
  problem('choice-out-of-range', `${where} must be a whole number from 1 to ${count(MAX_HAVE_COUNT)}; this one is ${found}.`);

export const tooMuchToHave = (where: string, found: number): Problem =>
  problem('too-much-to-have', `${where} lists ${count(found)} sizes of cloth; it may list at most ${MAX_HAVE}, so put equal ones together.`);

export const marginOutOfRange = (text: string, unit: LengthUnit | '%'): Problem => {
  const most = unit === '%' ? `${MAX_MARGIN} per cent` : `${count(MAX_CLOTH[unit])} ${unitName(unit)}`;
  return problem('choice-out-of-range', `The chosen margin must be 0 or more and at most ${most}; this one is ${text}.`);
};

export const blocksOutOfRange = (found: string): Problem =>
  problem('choice-out-of-range', `The number of blocks must be a whole number from 1 to ${count(MAX_BLOCKS)}; this one is ${found}.`);

export const noPrints = (where: string, found: string): Problem =>
  problem('no-prints', `${where} must be a whole number of prints from ${PRINTS.least} to ${PRINTS.most}; this one is ${found}.`);

export const noSeed = (where: string, found: string): Problem =>
  problem('no-seed', `${where} must be a whole number from 0 to ${count(MAX_SEED)}; this one is ${found}.`);

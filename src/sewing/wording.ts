import { isInRounds, ringWords, roundWords, rowWords } from './join-words.ts';
import { matching } from './pressing/point-words.ts';
import { counted, sizeOf, thing, type Vocabulary } from './naming.ts';
import { stripSetWords } from './strip-set-words.ts';
import { stripWords } from './strip-words.ts';
import type { SeamPoint, Step } from './step.ts';
import {
  cornerWords,
  freeWords,
  halfRectangleWords,
  halfSquareWords,
  peakWords,
  quarterSquareWords,
  splitQuarterWords,
} from './unit-words.ts';

/** A step before it is put into words. */
export type Unworded = Omit<Step, 'number' | 'how' | 'text' | 'press' | 'pressed' | 'points' | 'layers'>;

/** What the recipe of an hourglass says of the seams that cross in its middle. */
const NESTED = 'seams nested';

/**
 * @param points the places along the step's seams where seams of both things it joins meet
 * @returns what to lay on what, and how to sew it
 */
export function howTo(step: Unworded, words: Vocabulary, points: readonly SeamPoint[]): string {
  const how = recipe(step, words);
  const more = matching(points, step.joins);
  const saysSo = how.includes(NESTED);
  const all = points.every(({ lie }) => lie === 'opposite ways');
  return `${stripWords(step, words)}${saysSo && !all ? how.replace(NESTED, 'seams matched') : how}${saysSo && all ? '' : more}`;
}

/** @returns the how-to, then what the result measures (unfinished) and how many to make, as sentences of their own */
export function instruction(how: string, { makes, count, trimmed, unfinished }: Unworded, words: Vocabulary): string {
  const { measures, make } = words.phrases.steps;
  const whole = makes === 'block';
  const measure = measures(whole ? 'block' : 'unit', sizeOf(unfinished, words), trimmed);
  return [how, measure, ...(whole && count === 1 ? [] : [make(counted(count, words))])].join(' ');
}

function recipe(step: Unworded, words: Vocabulary): string {
  if (step.joins.length === 0) return words.phrases.steps.onePiece(thing(step.parts[0]!, words));
  if (step.method === 'strip-sets') return stripSetWords(step, words);
  switch (step.kind) {
    case 'half-square triangle':
      return halfSquareWords(step, words);
    case 'quarter-square triangle':
      return quarterSquareWords(step, words);
    case 'split quarter-square triangle':
      return splitQuarterWords(step, words);
    case 'flying geese':
    case 'corner-triangle unit':
    case 'square in a square':
      return cornerWords(step, words);
    case 'half-rectangle triangle':
      return halfRectangleWords(step, words);
    case 'peak':
      return peakWords(step, words);
    case 'partial-seam ring':
      return ringWords(step, words);
    case 'free unit':
      return freeWords(step, words);
    default:
      return isInRounds(step) ? roundWords(step, words) : rowWords(step, words);
  }
}

import { cornerWords } from './corner-words.ts';
import { freeWords } from './free-words.ts';
import { isInRounds, ringWords, roundWords, rowWords } from './join-words.ts';
import { matching } from './pressing/point-words.ts';
import { counted, sizeOf, thing, type Vocabulary } from './naming.ts';
import { stripSetWords } from './strip-set-words.ts';
import { isWebStep } from './web.ts';
import { webWords } from './web-words.ts';
import { stripWords } from './strip-words.ts';
import type { SeamPoint, Step } from './step.ts';
import { halfRectangleWords, halfSquareWords, peakWords, quarterSquareWords, splitQuarterWords, tellsOfCrossing } from './unit-words.ts';

/** A step before it is put into words. */
export type Unworded = Omit<Step, 'number' | 'how' | 'text' | 'press' | 'pressed' | 'points'>;

/**
 * @param points the places along the step's seams where seams of both things it joins meet
 * @returns what to lay on what, and how to sew it
 */
export function howTo(step: Unworded, words: Vocabulary, points: readonly SeamPoint[]): string {
  const nested = points.every(({ lie }) => lie === 'opposite ways');
  const told = [...stripWords(step, words), ...recipe(step, words, nested ? 'nested' : 'matched')];
  // What an hourglass says of its crossing is enough where everything nests.
  const more = tellsOfCrossing(step) && nested ? [] : matching(points, step.joins, words);
  return [...told, ...more].join(' ');
}

/** @returns the how-to, then what the result measures (unfinished) and how many to make, as sentences of their own */
export function instruction(how: string, { makes, count, trimmed, unfinished }: Unworded, words: Vocabulary): string {
  const { measures, make } = words.phrases.steps;
  const whole = makes === 'block';
  const measure = measures(whole ? 'block' : 'unit', sizeOf(unfinished, words), trimmed);
  return [how, measure, ...(whole && count === 1 ? [] : [make(counted(count, words))])].join(' ');
}

function recipe(step: Unworded, words: Vocabulary, seams: 'nested' | 'matched'): readonly string[] {
  if (step.joins.length === 0) return [words.phrases.steps.onePiece(thing(step.parts[0]!, words))];
  if (step.method === 'strip-sets') return [stripSetWords(step, words)];
  switch (step.kind) {
    case 'half-square triangle':
      return halfSquareWords(step, words);
    case 'quarter-square triangle':
      return quarterSquareWords(step, words, seams);
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
      return [ringWords(step, words)];
    case 'free unit':
      return freeWords(step, words);
    default:
      if (isWebStep(step)) return [webWords(step, words)];
      return [isInRounds(step) ? roundWords(step, words) : rowWords(step, words)];
  }
}

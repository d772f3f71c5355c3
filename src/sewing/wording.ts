import { printLength } from '../measure/lengths.ts';
import type { Crossings } from './nesting.ts';
import { isInRounds, ringWords, roundWords, rowWords } from './join-words.ts';
import { partName, type Vocabulary } from './naming.ts';
import { sentence } from './sentences.ts';
import { stripWords } from './strip-words.ts';
import type { Step } from './step.ts';
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
export type Unworded = Omit<Step, 'number' | 'how' | 'text' | 'press' | 'pressed'>;

/**
 * @param crossings the places along the step's seams where seams of both things it joins meet
 * @returns what to lay on what, and how to sew it
 */
export function howTo(step: Unworded, words: Vocabulary, crossings: Crossings): string {
  return `${stripWords(step, words)}${recipe(step, words)}${matching(crossings)}`;
}

/** @returns the how-to, then what the result measures (unfinished) and how many to make, as sentences of their own */
export function instruction(how: string, { makes, count, trimmed, unfinished: { width, height } }: Unworded, { unit }: Vocabulary): string {
  const size = `${printLength(width, unit, 'bare')} by ${printLength(height, unit)}`;
  const measure = trimmed ? `Trim to ${size}` : `${makes === 'block' ? 'The block' : 'It'} measures ${size}`;
  return [how, sentence(measure), ...(makes === 'block' && count === 1 ? [] : [`Make ${count}.`])].join(' ');
}

function recipe(step: Unworded, words: Vocabulary): string {
  if (step.joins.length === 0) return `The block is one piece, ${partName(step.parts[0]!, words)}: there is nothing to sew.`;
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

/** What to do where seams meet across the seam that is sewn. */
function matching({ met, nested }: Crossings): string {
  if (met === 0) return '';
  if (nested === met) return ' Nest the seams where they meet.';
  const where = met === 1 ? 'there' : nested === 0 ? 'there' : `at ${met - nested} of the ${met} places`;
  return ` Match the seams where they meet; ${where} they lie the same way, so pin them.`;
}

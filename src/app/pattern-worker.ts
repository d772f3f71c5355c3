import { expose } from 'comlink';
import { makePattern } from '../pattern/make-pattern.ts';

/** What the worker beside the page does: the whole pattern of a drawing, away from the hand that paints. */
const patternMaker = { makePattern };

export type PatternMaker = typeof patternMaker;

expose(patternMaker);

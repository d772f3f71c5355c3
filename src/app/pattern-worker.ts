import { expose } from 'comlink';
import type { Block } from '../block/block.ts';
import type { Result } from '../measure/problem.ts';
import { makePattern } from '../pattern/make-pattern.ts';
import type { Alternative, Pattern } from '../pattern/pattern.ts';

let made: Result<Pattern> | null = null;

/** Works out the pattern of a drawing, sewn the way that is chosen in it, and keeps it until it is collected. */
function workOut(block: Block): void {
  made = makePattern(block, {}, 'chosen way');
}

/** @returns the pattern worked out last: large, so that unpacking it keeps the page busy for a moment */
const collect = (): Result<Pattern> | null => made;

/** @returns every way to sew a drawing, the chosen one first, as figures only: a whole pattern is long on its way to the page */
function everyWay(block: Block): readonly Alternative[] {
  const all = makePattern(block, {}, 'all ways');
  if (!all.ok) return [];
  const { way, figures, alternatives } = all.value;
  return [{ way, figures }, ...alternatives];
}

/** What the worker beside the page does: patterns of drawings, away from the hand that paints. */
const patternMaker = { workOut, collect, everyWay };

export type PatternMaker = typeof patternMaker;

expose(patternMaker);

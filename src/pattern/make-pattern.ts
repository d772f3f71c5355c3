import type { Block } from '../block/block.ts';
import type { Choices } from '../block/choices.ts';
import { last } from '../geometry/piecing/steps.ts';
import type { Result } from '../measure/problem.ts';
import { answersBy, type Scope } from './answers.ts';
import type { Pattern } from './pattern.ts';
import { RARE_PARTS } from './rare-parts.ts';

/**
 * The whole way from drawing to pattern.
 * @param choices override those saved in the block, which override the trade's usual values
 * @param scope 'chosen way' leaves the alternatives out, for a first answer sooner
 * @returns the pattern with its proof; a problem where the drawing cannot be held exactly or cannot be sewn by straight seams
 */
export const makePattern = (block: Block, choices: Choices = {}, scope: Scope = 'all ways'): Result<Pattern> =>
  last(answersBy(RARE_PARTS, block, choices, scope)).pattern();

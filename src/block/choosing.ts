import { good, type Result } from '../measure/problem.ts';
import type { Block } from './block.ts';
import { checkChoices } from './choice-checks.ts';
import type { Choices } from './choices.ts';
import { refused } from './problems.ts';

/** @returns the block with other choices of how it is cut and sewn; an empty choice takes the trade's usual value */
export function choose(block: Block, choices: Choices): Result<Block> {
  const fault = checkChoices(choices, block.finished.unit);
  return fault ? refused(fault) : good({ ...block, choices });
}

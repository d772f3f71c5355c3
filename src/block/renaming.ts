import { good, type Result } from '../measure/problem.ts';
import type { Block } from './block.ts';
import { checkText } from './checks.ts';
import { refused } from './problems.ts';

/** @returns the block under another name */
export function rename(block: Block, name: string): Result<Block> {
  const fault = checkText("The block's name", name);
  return fault ? refused(fault) : good({ ...block, name });
}

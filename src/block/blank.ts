import { good, type Result } from '../measure/problem.ts';
import type { Block } from './block.ts';
import { toDrawing } from './drawing.ts';
import { checkGround } from './fabric-checks.ts';
import { refused } from './problems.ts';

/** @returns a block with nothing painted on its ground, the first of its fabrics */
export function blank(start: Pick<Block, 'name' | 'finished' | 'grid' | 'fabrics'>): Result<Block> {
  const block: Block = { ...start, ground: start.fabrics[0]?.id ?? '', denominator: 1, patches: [], seams: [] };
  const fault = checkGround(block);
  if (fault) return refused(fault);
  const drawn = toDrawing(block);
  return drawn.ok ? good(block) : drawn;
}

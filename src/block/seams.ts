import { good, type Result } from '../measure/problem.ts';
import type { Block, DrawnSeam } from './block.ts';
import { checkSeam } from './checks.ts';
import { onLattice } from './lattice.ts';
import { MAX_SEAMS } from './limits.ts';
import { refused, tooManySeams } from './problems.ts';

/**
 * Asks for a seam, also where it runs through one fabric.
 * @param denominator steps to a grid unit in which the seam's ends are given
 * @returns the block with the seam; the same block where it is drawn already, from either end
 */
export function drawSeam(block: Block, [from, to]: DrawnSeam, denominator: number): Result<Block> {
  const fine = onLattice(block, denominator);
  if (!fine.ok) return fine;
  const times = fine.value.denominator / denominator;
  const seam: DrawnSeam = [[from[0] * times, from[1] * times], [to[0] * times, to[1] * times]];
  const fault = checkSeam('The seam', seam, fine.value);
  if (fault) return refused(fault);
  if (fine.value.seams.some((other) => alike(other, seam))) return good(block);
  const seams = [...fine.value.seams, seam];
  return seams.length > MAX_SEAMS ? refused(tooManySeams(seams.length)) : good({ ...fine.value, seams });
}

/** @returns the block without one of its drawn seams */
export const removeSeam = (block: Block, index: number): Block => ({ ...block, seams: block.seams.filter((_, i) => i !== index) });

function alike([a, b]: DrawnSeam, [c, d]: DrawnSeam): boolean {
  const key = String([c, d]);
  return String([a, b]) === key || String([b, a]) === key;
}

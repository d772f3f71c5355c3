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
export function drawSeam(block: Block, seam: DrawnSeam, denominator: number): Result<Block> {
  const found = placed(block, seam, denominator);
  if (!found.ok) return found;
  return found.value.at < 0 ? drawn(found.value) : good(block);
}

/**
 * Asks for a seam as `drawSeam` does, or takes the same one away, from whichever end it was drawn.
 * @param denominator steps to a grid unit in which the seam's ends are given
 */
export function toggleSeam(block: Block, seam: DrawnSeam, denominator: number): Result<Block> {
  const found = placed(block, seam, denominator);
  if (!found.ok) return found;
  return found.value.at < 0 ? drawn(found.value) : good(removeSeam(found.value.block, found.value.at));
}

/**
 * @param denominator steps to a grid unit in which the seam's ends are given
 * @returns whether a seam is drawn, from whichever end
 */
export function hasSeam(block: Block, seam: DrawnSeam, denominator: number): boolean {
  const found = placed(block, seam, denominator);
  return found.ok && found.value.at >= 0;
}

/** @returns the block without one of its drawn seams */
export const removeSeam = (block: Block, index: number): Block => ({ ...block, seams: block.seams.filter((_, i) => i !== index) });

/** A seam on the lattice of a block, and its index there; −1 where it is not drawn. */
interface Placed {
  readonly block: Block;
  readonly seam: DrawnSeam;
  readonly at: number;
}

function placed(block: Block, [from, to]: DrawnSeam, denominator: number): Result<Placed> {
  const fine = onLattice(block, denominator);
  if (!fine.ok) return fine;
  const times = fine.value.denominator / denominator;
  const seam: DrawnSeam = [[from[0] * times, from[1] * times], [to[0] * times, to[1] * times]];
  const fault = checkSeam('The seam', seam, fine.value);
  if (fault) return refused(fault);
  return good({ block: fine.value, seam, at: fine.value.seams.findIndex((other) => alike(other, seam)) });
}

function drawn({ block, seam }: Placed): Result<Block> {
  const seams = [...block.seams, seam];
  return seams.length > MAX_SEAMS ? refused(tooManySeams(seams.length)) : good({ ...block, seams });
}

function alike([a, b]: DrawnSeam, [c, d]: DrawnSeam): boolean {
  const key = String([c, d]);
  return String([a, b]) === key || String([b, a]) === key;
}

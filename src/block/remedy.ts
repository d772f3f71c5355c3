import { good, type Remedy, type Result } from '../measure/problem.ts';
import type { Block, Patch } from './block.ts';
import { onLattice } from './lattice.ts';
import { MAX_PATCHES } from './limits.ts';
import { toggleWhole } from './patches.ts';
import { refused, tooManyPatches } from './problems.ts';

/** @returns the block changed as a remedy says: patches need not stay whole any more, or one is divided in whole parts */
export function remedied(block: Block, { free, divide }: Pick<Remedy, 'free' | 'divide'>): Result<Block> {
  let result: Result<Block> = good(block);
  for (const patch of free) {
    if (result.ok && result.value.patches[patch]?.whole) result = toggleWhole(result.value, patch);
  }
  return result.ok && divide ? divided(result.value, divide) : result;
}

function divided(block: Block, { patch, parts, denominator }: NonNullable<Remedy['divide']>): Result<Block> {
  const fine = onLattice(block, denominator);
  if (!fine.ok) return fine;
  const { patches } = fine.value;
  const before = patches[patch];
  if (!before) return fine;
  const times = fine.value.denominator / denominator;
  const placed = parts.map((points): Patch => ({ ...before, points: points.map(([x, y]) => [x * times, y * times]), whole: true }));
  const after = patches.toSpliced(patch, 1, ...placed);
  return after.length > MAX_PATCHES ? refused(tooManyPatches(after.length)) : good({ ...fine.value, patches: after });
}

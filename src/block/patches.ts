import { good, type Result } from '../measure/problem.ts';
import type { Point } from '../geometry/point.ts';
import type { Block, Patch } from './block.ts';
import { checkFabricKnown } from './checks.ts';
import { whereIs } from './outline.ts';
import { noSuchPatch, refused } from './problems.ts';

/**
 * @param at in grid units from the top-left corner: x/w across, y/w down
 * @returns the index of the patch on top there, its edge included; −1 where the ground shows
 */
export function patchAt(block: Block, at: Point): number {
  const scaled = { x: at.x * block.denominator, y: at.y * block.denominator, w: at.w };
  return block.patches.findLastIndex((patch) => whereIs(scaled, patch.points) !== 'outside');
}

/** @returns the block without a patch, so that what lies under it shows */
export const removePatch = (block: Block, index: number): Result<Block> =>
  changed(block, index, (patches) => patches.toSpliced(index, 1));

/** @returns the block with a patch in another fabric */
export function recolourPatch(block: Block, index: number, fabric: string): Result<Block> {
  const fault = checkFabricKnown('The paint', fabric, block.fabrics);
  return fault ? refused(fault) : changed(block, index, (patches) => patches.with(index, { ...patches[index]!, fabric }));
}

/** @returns the block with a patch that must stay one piece, or again may be divided */
export function toggleWhole(block: Block, index: number): Result<Block> {
  return changed(block, index, (patches) => {
    const { whole, ...patch } = patches[index]!;
    return patches.with(index, whole ? patch : { ...patch, whole: true });
  });
}

/** @returns the block with patches that must stay one piece; where the first of them must already, all may be divided again */
export function toggleWholes(block: Block, indices: readonly number[]): Result<Block> {
  const away = indices[0] !== undefined && (block.patches[indices[0]]?.whole ?? false);
  let next: Result<Block> = good(block);
  for (const index of new Set(indices)) {
    if (next.ok && (next.value.patches[index]?.whole ?? false) === away) next = toggleWhole(next.value, index);
  }
  return next;
}

function changed(block: Block, index: number, change: (patches: readonly Patch[]) => readonly Patch[]): Result<Block> {
  if (!(index in block.patches)) return refused(noSuchPatch(index + 1));
  return good({ ...block, patches: change(block.patches) });
}

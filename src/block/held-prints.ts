import type { Block, Patch } from './block.ts';

/**
 * @param patches indices of patches; those of other fabrics are left as they are
 * @returns the block with patches of a family of scraps held in one of its prints, from 1 on, or (null) spread as the others are
 */
export function holdPrint(block: Block, fabric: string, patches: readonly number[], print: number | null): Block {
  const meant = new Set(patches);
  const held = ({ print: _, ...patch }: Patch): Patch => ({ ...patch, ...(print !== null && { print }) });
  return { ...block, patches: block.patches.map((patch, i) => (meant.has(i) && patch.fabric === fabric ? held(patch) : patch)) };
}

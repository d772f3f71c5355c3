import { good, type Result } from '../measure/problem.ts';
import type { Block, Patch } from './block.ts';
import { checkFabricKnown, checkOutline } from './checks.ts';
import { onLattice } from './lattice.ts';
import { MAX_PATCHES } from './limits.ts';
import { boundsOf, boundsOverlap, tidyOutline, type Outline } from './outline.ts';
import { doubleAreaOf, regionOf, without, type Region } from './overlay.ts';
import { refused, tooManyPatches } from './problems.ts';

/** The outline of something to paint, its points in whole steps of 1/denominator of a grid unit. */
export interface Stroke {
  readonly points: Outline;
  readonly denominator: number;
}

/**
 * Paints an outline in one fabric over what is there. Patches wholly covered are dropped; patches partly covered give
 * up the covered area where what is left has exact simple outlines, and otherwise stay as they are underneath.
 * @returns the painted block; the same block where the outline already shows this fabric; a problem where the fabric is
 * unknown, the outline is no outline on the block, its points are too fine, or the patches become too many
 */
export function paint(block: Block, fabric: string, stroke: Stroke): Result<Block> {
  const fine = onLattice(block, stroke.denominator);
  if (!fine.ok) return fine;
  const times = fine.value.denominator / stroke.denominator;
  const outline = tidyOutline(stroke.points.map(([x, y]) => [x * times, y * times] as const));
  const fault = checkFabricKnown('The paint', fabric, block.fabrics) ?? checkOutline('The painted shape', outline, fine.value);
  if (fault) return refused(fault);
  if (shows(fine.value, outline, fabric)) return good(block);
  const patches = laid(fine.value, fabric, outline);
  return patches.length > MAX_PATCHES ? refused(tooManyPatches(patches.length)) : good({ ...fine.value, patches });
}

/** Paints an outline in the ground's fabric, as `paint` does. */
export const erase = (block: Block, stroke: Stroke): Result<Block> => paint(block, block.ground, stroke);

/** @returns the patches after an outline is painted over them */
function laid(block: Block, fabric: string, outline: Outline): readonly Patch[] {
  const bounds = boundsOf(outline);
  const patches: Patch[] = [];
  let onlyGroundBelow = true;
  for (const patch of block.patches) {
    if (!boundsOverlap(boundsOf(patch.points), bounds)) {
      patches.push(patch);
      continue;
    }
    const rest = left(patch, outline, fabric);
    patches.push(...rest.patches);
    if (rest.overlaps && patch.fabric !== block.ground) onlyGroundBelow = false;
  }
  // Where nothing but ground is left below, ground needs no patch.
  if (fabric !== block.ground || !onlyGroundBelow) patches.push({ fabric, points: outline });
  return patches;
}

/** @returns what becomes of a patch under a painted outline, and whether something of it still lies there */
function left(patch: Patch, outline: Outline, fabric: string): { readonly patches: readonly Patch[]; readonly overlaps: boolean } {
  const before = [regionOf(patch.points)];
  const rest = without(before, [regionOf(outline)]);
  if (rest?.length === 0) return { patches: [], overlaps: false };
  if (rest !== null && doubleAreaOf(rest) === doubleAreaOf(before)) return { patches: [patch], overlaps: false };
  // Cutting a patch of the same fabric would change nothing that can be seen.
  const cuttable = rest !== null && patch.fabric !== fabric && rest.every(({ holes }) => holes.length === 0);
  if (!cuttable) return { patches: [patch], overlaps: true };
  return { patches: rest.map(({ outer }) => ({ ...patch, points: outer })), overlaps: false };
}

/** @returns whether an outline shows one fabric everywhere; false also where that cannot be told exactly on this lattice */
function shows(block: Block, outline: Outline, fabric: string): boolean {
  const bounds = boundsOf(outline);
  let rest: readonly Region[] = [regionOf(outline)];
  for (let i = block.patches.length - 1; i >= 0; i--) {
    const patch = block.patches[i]!;
    if (!boundsOverlap(boundsOf(patch.points), bounds)) continue;
    const uncovered = without(rest, [regionOf(patch.points)]);
    if (uncovered === null) return false;
    if (patch.fabric === fabric) rest = uncovered;
    else if (doubleAreaOf(uncovered) !== doubleAreaOf(rest)) return false;
    if (rest.length === 0) return true;
  }
  return block.ground === fabric;
}

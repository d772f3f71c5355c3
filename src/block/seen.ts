import type { Block, Patch } from './block.ts';
import { nearby, type Nearby } from './boxes.ts';
import { crossingFactor } from './crossings.ts';
import { boundsOf, type Outline } from './outline.ts';
import { regionOf, without, type Region } from './overlay.ts';

/** What is seen of a patch: the parts of it that no later patch covers, in steps of 1/denominator of a grid unit. */
export interface Seen {
  readonly denominator: number;
  readonly regions: readonly Region[];
}

const known = new WeakMap<readonly Patch[], { readonly near: Nearby; readonly parts: Map<number, Seen | null> }>();

/**
 * Finds what a person sees of a patch.
 * @returns the parts on the block's lattice, or on a finer one where outlines cross between its points; none where the patch is wholly
 * covered; null where outlines cross at points finer than can be held exactly
 */
export function seenOf(block: Block, index: number): Seen | null {
  const { patches, grid, denominator } = block;
  let found = known.get(patches);
  if (!found) {
    const side = Math.max(grid.columns, grid.rows) * denominator;
    found = { near: nearby(patches.map(({ points }) => points), side), parts: new Map() };
    known.set(patches, found);
  }
  if (!found.parts.has(index)) {
    const { points } = patches[index]!;
    const covering = found.near(boundsOf(points)).filter((i) => i > index).map((i) => patches[i]!);
    found.parts.set(index, uncovered(block, patches[index]!, covering));
  }
  return found.parts.get(index)!;
}

function uncovered(block: Block, patch: Patch, covering: readonly Patch[]): Seen | null {
  const { denominator } = block;
  const rest = (times: number): readonly Region[] | null =>
    without([regionOf(finer(patch.points, times))], covering.map(({ points }) => regionOf(finer(points, times))));
  const regions = rest(1);
  if (regions) return { denominator, regions };
  const factor = crossingFactor({ ...block, patches: [patch, ...covering] });
  const fine = factor === null || factor === 1 ? null : rest(factor);
  return fine && { denominator: denominator * factor!, regions: fine };
}

/** @returns an outline on a lattice whose steps are `times` finer */
export const finer = (outline: Outline, times: number): Outline =>
  times === 1 ? outline : outline.map(([x, y]) => [x * times, y * times]);

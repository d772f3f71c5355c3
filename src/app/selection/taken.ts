import type { Block, Patch } from '../../block/block.ts';
import { createStore, type Store } from '../store.ts';

/*
 * What is chosen is no part of the drawing, and no part of its past: it is a set of patches. Those that no longer stand in the drawing
 * stay in the set, so that undo brings back a patch as it was, chosen.
 */

/** The patches that are chosen, where they stand in the drawing. */
export const taken: Store<ReadonlySet<Patch>> = createStore<ReadonlySet<Patch>>(new Set());

/** Whether each patch that is clicked is taken beside the others, as with Shift: for fingers. */
export const gathering: Store<boolean> = createStore(false);

/** What was copied last, in this window. */
export const scrap: Store<Block | null> = createStore<Block | null>(null);

/** Lets go of all patches. */
export function letGo(): void {
  if (taken.get().size > 0) taken.set(new Set());
  gathering.set(false);
}

import type { Block } from './block.ts';
import { applyChange, changeBetween, inverse, isEmpty, type Change } from './change.ts';

/** One gesture: what it is called on screen, and what it changed. */
export interface Entry {
  readonly label: string;
  readonly change: Change;
}

/** What was done to a block, as a value. Plain data that survives JSON, so that it is saved with the block. */
export interface History {
  /** Oldest first. */
  readonly done: readonly Entry[];
  /** What can be done again, next first. */
  readonly undone: readonly Entry[];
}

/** A block and how it came about. */
export interface Work {
  readonly block: Block;
  readonly history: History;
}

/** A gesture that has begun: a stroke, say, until the pointer is lifted. The block may change many times meanwhile. */
export interface Gesture {
  readonly label: string;
  readonly start: Block;
}

/** @returns a block with nothing done to it */
export const begun = (block: Block): Work => ({ block, history: { done: [], undone: [] } });

/** @returns a gesture from here on; to give it up, take its `start` again */
export const begin = (block: Block, label: string): Gesture => ({ label, start: block });

/**
 * Ends a gesture.
 * @param block what the gesture has made of its start
 * @returns the work with the whole gesture as one entry; what was undone before can no longer be done again.
 * A gesture that changed nothing leaves no entry.
 */
export function commit({ history }: Work, { label, start }: Gesture, block: Block): Work {
  const change = changeBetween(start, block);
  if (isEmpty(change)) return { block: start, history };
  return { block, history: { done: [...history.done, { label, change }], undone: [] } };
}

/** @returns the work before its last gesture; the same work where there is none */
export function undo(work: Work): Work {
  const { block, history } = work;
  const entry = history.done.at(-1);
  if (!entry) return work;
  return {
    block: applyChange(block, inverse(entry.change)),
    history: { done: history.done.slice(0, -1), undone: [entry, ...history.undone] },
  };
}

/** @returns the work with the last undone gesture done again; the same work where there is none */
export function redo(work: Work): Work {
  const { block, history } = work;
  const [entry, ...undone] = history.undone;
  if (!entry) return work;
  return { block: applyChange(block, entry.change), history: { done: [...history.done, entry], undone } };
}

/** @returns the work undone or redone until so many gestures are done, or as near to that as its history goes */
export function goTo(work: Work, done: number): Work {
  let now = work;
  for (let left = now.history.done.length - done; left > 0 && now.history.done.length > 0; left--) now = undo(now);
  for (let left = done - now.history.done.length; left > 0 && now.history.undone.length > 0; left--) now = redo(now);
  return now;
}

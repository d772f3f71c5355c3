import { createStore } from '../store.ts';

/** Names of the parts of the sheet that are unfolded; they stay so when the sheet is written anew. */
export const unfolded = createStore<ReadonlySet<string>>(new Set());

/** Unfolds parts of the sheet, or folds them. */
export function unfold(names: readonly string[], open: boolean): void {
  unfolded.change((now) => new Set(open ? [...now, ...names] : [...now].filter((name) => !names.includes(name))));
}

import { createStore } from './store.ts';

/** A quiet line about something that was done, with at most one thing to do about it. */
export interface Notice {
  readonly words: string;
  readonly act?: { readonly name: string; readonly do: () => void };
  /** How long it stays, in milliseconds; what it offers can be had on the shelf as well, and later. */
  readonly stays: number;
}

/** The line that is shown now. */
export const notice = createStore<Notice | null>(null);

/** Shows a line; it takes the place of the one before. */
export function say(words: string, act?: Notice['act'], stays = act ? 20_000 : 10_000): void {
  notice.set({ words, ...(act && { act }), stays });
}

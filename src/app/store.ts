import { useSyncExternalStore } from 'react';

/** A value that changes over time and tells its listeners. */
export interface Store<T> {
  readonly get: () => T;
  readonly set: (next: T) => void;
  readonly change: (verb: (now: T) => T) => void;
  readonly subscribe: (listener: () => void) => () => void;
}

/** @returns a store that holds `first`; setting the same value again tells nobody */
export function createStore<T>(first: T): Store<T> {
  let now = first;
  const listeners = new Set<() => void>();
  const set = (next: T): void => {
    if (Object.is(next, now)) return;
    now = next;
    for (const listener of [...listeners]) listener();
  };
  return {
    get: () => now,
    set,
    change: (verb) => set(verb(now)),
    subscribe: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
  };
}

/** @returns what `select` sees in the store; the component draws again only when that changes (compared with Object.is) */
export function useStore<T, S>(store: Store<T>, select: (now: T) => S): S {
  return useSyncExternalStore(store.subscribe, () => select(store.get()));
}

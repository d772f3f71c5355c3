import type { Autosave } from '../files/autosave.ts';
import { freshDrawing, launchLifeboat } from './lifeboat.ts';
import { createStore, type Store } from './store.ts';
import type { Table } from './table.ts';

/** Which drawing is kept, and how that goes. */
export interface Kept {
  readonly id: string;
  /** The version the table continues. */
  readonly version: number;
  readonly state: 'kept' | 'waiting' | 'not kept';
}

/** How long the hand may rest before the drawing is kept, in milliseconds. */
const REST = 300;

/**
 * Keeps every change of the drawing in the browser, its past included, soon after it is made and at the latest when the page is hidden.
 * Where another window has kept the same drawing since, this one goes on under a name of its own: neither overwrites the other.
 * @param autosave null where the browser has no keeping place
 */
export function keepDrawing(table: Store<Table>, autosave: Autosave | null, first: Pick<Kept, 'id' | 'version'>): Store<Kept> {
  const kept = createStore<Kept>({ ...first, state: autosave ? 'kept' : 'not kept' });
  if (!autosave) return kept;

  let last: Table['work'] | null = table.get().work;
  let rest: ReturnType<typeof setTimeout> | undefined;
  let saving: Promise<void> = Promise.resolve();

  const save = (): void => {
    clearTimeout(rest);
    const { work } = table.get();
    if (work === last) return;
    last = work;
    // One after the other: each save must know the version of the one before.
    saving = saving.then(async () => {
      const { id, version } = kept.get();
      try {
        const done = await autosave.save(id, version, work);
        if (done.saved) {
          kept.change((now) => ({ ...now, version: done.version, state: table.get().work === work ? 'kept' : 'waiting' }));
          return;
        }
        const own = freshDrawing();
        const again = await autosave.save(own, 0, work);
        if (again.saved) kept.set({ id: own, version: again.version, state: 'kept' });
      } catch {
        last = null;
        kept.change((now) => ({ ...now, state: 'not kept' }));
      }
    });
  };

  table.subscribe(() => {
    if (table.get().work === last) return;
    kept.change((now) => (now.state === 'waiting' ? now : { ...now, state: 'waiting' }));
    clearTimeout(rest);
    rest = setTimeout(save, REST);
  });
  const leave = (): void => {
    const { work } = table.get();
    const { id, version, state } = kept.get();
    if (state !== 'kept') launchLifeboat({ id, version, work });
    save();
  };
  document.addEventListener('visibilitychange', () => document.visibilityState === 'hidden' && leave());
  window.addEventListener('pagehide', leave);
  return kept;
}

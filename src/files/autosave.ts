import { openDB, type DBSchema, type IDBPDatabase } from 'idb';
import type { Work } from '../block/history.ts';

/** A drawing as the browser keeps it between visits. */
export interface SavedDrawing {
  readonly id: string;
  /** Counts the saves of this drawing; whoever saves says which one they started from. */
  readonly version: number;
  readonly work: Work;
  /** Milliseconds since 1970, for showing the newest first. */
  readonly savedAt: number;
}

/** Saved; or not, because another tab saved a version that this one has not seen. */
export type Saving = { readonly saved: true; readonly version: number } | { readonly saved: false; readonly theirs: SavedDrawing };

interface Drawings extends DBSchema {
  drawings: { key: string; value: SavedDrawing };
}

const NAME = 'piecewright';

/** The browser's own keeping place for drawings. */
export interface Autosave {
  /** @returns the newest save of a drawing, if there is one */
  readonly load: (id: string) => Promise<SavedDrawing | undefined>;
  /** @returns all drawings, the last saved first */
  readonly list: () => Promise<readonly SavedDrawing[]>;
  /**
   * Keeps a drawing, unless somebody saved it since.
   * @param from the version this work continues: what load or the last save gave, 0 for a new drawing
   */
  readonly save: (id: string, from: number, work: Work) => Promise<Saving>;
  /** Forgets a drawing. */
  readonly remove: (id: string) => Promise<void>;
  /** Calls back when another tab saves this drawing. @returns what stops it */
  readonly watch: (id: string, onSaved: (version: number) => void) => () => void;
  readonly close: () => void;
}

/** Opens the keeping place; rejects where the browser has none or refuses it, as some do in private windows. */
export async function openAutosave(): Promise<Autosave> {
  const database = await openDB<Drawings>(NAME, 1, {
    upgrade: (fresh) => void fresh.createObjectStore('drawings', { keyPath: 'id' }),
  });
  // A channel does not hear itself, so one hears exactly the other tabs.
  const channel = new BroadcastChannel(NAME);
  return {
    load: (id) => database.get('drawings', id),
    list: async () => (await database.getAll('drawings')).sort((a, b) => b.savedAt - a.savedAt),
    save: async (id, from, work) => {
      const saving = await saveIn(database, id, from, work);
      if (saving.saved) channel.postMessage({ id, version: saving.version });
      return saving;
    },
    remove: (id) => database.delete('drawings', id),
    watch: (id, onSaved) => {
      const listen = ({ data }: MessageEvent<{ id: string; version: number }>): void => {
        if (data.id === id) onSaved(data.version);
      };
      channel.addEventListener('message', listen);
      return () => channel.removeEventListener('message', listen);
    },
    close: () => {
      channel.close();
      database.close();
    },
  };
}

/** Compares and saves in one transaction, so that no other tab's save falls between. */
async function saveIn(database: IDBPDatabase<Drawings>, id: string, from: number, work: Work): Promise<Saving> {
  const transaction = database.transaction('drawings', 'readwrite');
  const theirs = await transaction.store.get(id);
  if (theirs && theirs.version !== from) {
    await transaction.done;
    return { saved: false, theirs };
  }
  const version = from + 1;
  await transaction.store.put({ id, version, work, savedAt: Date.now() });
  await transaction.done;
  return { saved: true, version };
}

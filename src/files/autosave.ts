import { openDB, type DBSchema, type IDBPDatabase } from 'idb';
import type { Block } from '../block/block.ts';
import type { Work } from '../block/history.ts';

/** A drawing as the browser keeps it between visits. */
export interface SavedDrawing {
  readonly id: string;
  /** Counts the saves of this drawing; whoever saves says which one they started from. */
  readonly version: number;
  readonly work: Work;
  /** Milliseconds since 1970, for showing the newest first. */
  readonly savedAt: number;
  /** When it was put away, in milliseconds since 1970; absent while it is on the shelf. Saved again, it is back on the shelf. */
  readonly putAway?: number;
}

/** What a shelf shows of a drawing without opening it. */
export type Card = Omit<SavedDrawing, 'work'> & Pick<Block, 'name' | 'finished' | 'grid'>;

/** A small picture of one version of a drawing. */
export interface KeptPicture {
  readonly id: string;
  readonly version: number;
  readonly picture: Blob;
}

/** Saved; or not, because another tab saved a version that this one has not seen. */
export type Saving = { readonly saved: true; readonly version: number } | { readonly saved: false; readonly theirs: SavedDrawing };

/** A place for drawings. */
export interface Autosave {
  /** @returns the newest save of a drawing, if there is one */
  readonly load: (id: string) => Promise<SavedDrawing | undefined>;
  /** @returns what is kept, the last saved first, those that were put away included */
  readonly cards: () => Promise<readonly Card[]>;
  /**
   * Keeps a drawing, unless somebody saved it since.
   * @param from the version this work continues: what load or the last save gave, 0 for a new drawing
   */
  readonly save: (id: string, from: number, work: Work) => Promise<Saving>;
  /** Puts a drawing away, or (null) back on the shelf; its version stays. */
  readonly putAway: (id: string, when: number | null) => Promise<void>;
  /** Forgets a drawing for good, with its picture and its file. */
  readonly remove: (id: string) => Promise<void>;
  readonly picture: (id: string) => Promise<KeptPicture | undefined>;
  readonly keepPicture: (picture: KeptPicture) => Promise<void>;
  /** @returns the file on the device that a drawing is saved to, if there is one */
  readonly fileOf: (id: string) => Promise<FileSystemFileHandle | undefined>;
  readonly keepFile: (id: string, file: FileSystemFileHandle) => Promise<void>;
  /** Calls back when another tab saves a drawing. @returns what stops it */
  readonly watch: (onSaved: (id: string, version: number) => void) => () => void;
  readonly close: () => void;
}

interface Drawings extends DBSchema {
  drawings: { key: string; value: SavedDrawing };
  cards: { key: string; value: Card };
  pictures: { key: string; value: KeptPicture };
  files: { key: string; value: FileSystemFileHandle };
}

const NAME = 'piecewright';
const STORES = ['drawings', 'cards', 'pictures', 'files'] as const;

/** @returns what a shelf shows of a drawing */
export function cardOf({ work, ...rest }: SavedDrawing): Card {
  const { name, finished, grid } = work.block;
  return { ...rest, name, finished, grid };
}

/** Opens the browser's own keeping place; rejects where it has none or refuses it, as some do in private windows. */
export async function openAutosave(): Promise<Autosave> {
  const database = await opened();
  // A channel does not hear itself, so one hears exactly the other tabs.
  const channel = new BroadcastChannel(NAME);
  return {
    load: (id) => database.get('drawings', id),
    cards: async () => (await database.getAll('cards')).sort((a, b) => b.savedAt - a.savedAt),
    save: async (id, from, work) => {
      const saving = await saveIn(database, id, from, work);
      if (saving.saved) channel.postMessage({ id, version: saving.version });
      return saving;
    },
    putAway: (id, when) => putAwayIn(database, id, when),
    remove: async (id) => {
      const transaction = database.transaction(STORES, 'readwrite');
      await Promise.all([...STORES.map((store) => transaction.objectStore(store).delete(id)), transaction.done]);
    },
    picture: (id) => database.get('pictures', id),
    keepPicture: async (picture) => void (await database.put('pictures', picture)),
    fileOf: (id) => database.get('files', id),
    keepFile: async (id, file) => void (await database.put('files', file, id)),
    watch: (onSaved) => {
      const listen = ({ data }: MessageEvent<{ id: string; version: number }>): void => onSaved(data.id, data.version);
      channel.addEventListener('message', listen);
      return () => channel.removeEventListener('message', listen);
    },
    close: () => {
      channel.close();
      database.close();
    },
  };
}

function opened(): Promise<IDBPDatabase<Drawings>> {
  return new Promise((resolve, reject) => {
    const opening = openDB<Drawings>(NAME, 2, {
      upgrade: async (database, before, _now, transaction) => {
        if (before < 1) database.createObjectStore('drawings', { keyPath: 'id' });
        database.createObjectStore('cards', { keyPath: 'id' });
        database.createObjectStore('pictures', { keyPath: 'id' });
        database.createObjectStore('files');
        const cards = transaction.objectStore('cards');
        for (const drawing of await transaction.objectStore('drawings').getAll()) await cards.put(cardOf(drawing));
      },
      // An older page has it open and does not let go: better no keeping than a page that never comes up.
      blocked: () => reject(new Error('the keeping place is held by an older page')),
      blocking: () => void opening.then((database) => database.close()),
    });
    opening.then(resolve, reject);
  });
}

/** Compares and saves in one transaction, so that no other tab's save falls between. */
async function saveIn(database: IDBPDatabase<Drawings>, id: string, from: number, work: Work): Promise<Saving> {
  const transaction = database.transaction(['drawings', 'cards'], 'readwrite');
  const theirs = await transaction.objectStore('drawings').get(id);
  if (theirs && theirs.version !== from) {
    await transaction.done;
    return { saved: false, theirs };
  }
  const drawing: SavedDrawing = { id, version: from + 1, work, savedAt: Date.now() };
  await Promise.all([
    transaction.objectStore('drawings').put(drawing),
    transaction.objectStore('cards').put(cardOf(drawing)),
    transaction.done,
  ]);
  return { saved: true, version: drawing.version };
}

async function putAwayIn(database: IDBPDatabase<Drawings>, id: string, when: number | null): Promise<void> {
  const transaction = database.transaction(['drawings', 'cards'], 'readwrite');
  const { putAway: _, ...drawing } = (await transaction.objectStore('drawings').get(id)) ?? {};
  if ('work' in drawing) {
    const moved = { ...drawing, ...(when !== null && { putAway: when }) } as SavedDrawing;
    await Promise.all([transaction.objectStore('drawings').put(moved), transaction.objectStore('cards').put(cardOf(moved))]);
  }
  await transaction.done;
}

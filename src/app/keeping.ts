import { begun, type Work } from '../block/history.ts';
import type { Block } from '../block/block.ts';
import type { Autosave } from '../files/autosave.ts';
import { sharePicture } from '../files/pictures.ts';
import { freshDrawing, launchLifeboat, noteOnTable, recallLifeboat, sameWork, type TakenUp } from './lifeboat.ts';
import { say } from './notice.ts';
import { createStore, type Store } from './store.ts';
import type { Acts, Table } from './table.ts';

/** Which drawing is kept, and how that goes. */
export interface Kept {
  readonly id: string;
  readonly state: 'kept' | 'waiting' | 'not kept';
}

/** Keeps the drawing on the table, and changes it for another. */
export interface Keeping {
  readonly now: Store<Kept>;
  /** Lays a new drawing on the table; the one that lies there stays on the shelf. */
  readonly begin: (block: Block, from?: 'sampler') => void;
  /** Lays a kept drawing on the table with its own past; the one that lies there stays on the shelf. */
  readonly layOut: (drawing: TakenUp) => void;
  /** Keeps what is not kept yet. @returns when that is done */
  readonly settled: () => Promise<void>;
}

/** How long the hand may rest before the drawing is kept, in milliseconds. */
const REST = 300;

/** What a drawing that was only taken out to look at is called by. */
const LOOKED_AT = 'sampler ';

/** @returns a name for a drawing that is forgotten unless something is done to it */
export const lookedAt = (): string => LOOKED_AT + freshDrawing();

/** @returns whether nothing would be lost with a drawing: it is the sampler's and nothing was done to it */
const isUntouched = (id: string, { history }: Work): boolean =>
  id.startsWith(LOOKED_AT) && history.done.length + history.undone.length === 0;

/** @returns why a drawing could not be kept, in a sentence */
function whyNot(error: unknown): string {
  const full = error instanceof DOMException && error.name === 'QuotaExceededError';
  const fault = full ? "The browser's storage is full" : 'The browser refuses to keep drawings';
  return `${fault}: what you draw is only in this window, so save it to a file before you close${full ? ', or empty what was put away on the shelf' : ''}.`;
}

/**
 * Keeps every change of the drawing in the browser, its past included, soon after it is made and at the latest when the page is hidden.
 * Where another window has kept the same drawing since, this one goes on under a name of its own: neither overwrites the other.
 * @param place where it is kept; saving rejects where the browser refuses
 * @param lasts whether the browser has a keeping place at all
 */
export function keepDrawing(table: Store<Table>, acts: Pick<Acts, 'unfold' | 'alarm'>, place: Autosave, lasts: boolean, first: TakenUp): Keeping {
  const now = createStore<Kept>({ id: first.id, state: lasts ? 'kept' : 'not kept' });
  /** The drawing on the table and the version it continues; another object for another drawing. */
  let berth = { id: first.id, version: first.version };
  let last: Work | null = first.work;
  let rest: ReturnType<typeof setTimeout> | undefined;
  let saving: Promise<unknown> = Promise.resolve();
  const refused = new Set<string>();
  let persistent = false;

  const keep = async (mine: typeof berth, work: Work): Promise<void> => {
    try {
      const done = await place.save(mine.id, mine.version, work);
      if (done.saved) {
        mine.version = done.version;
      } else if (sameWork(done.theirs.work, work)) {
        mine.version = done.theirs.version;
      } else {
        const own = freshDrawing();
        const again = await place.save(own, 0, work);
        await sharePicture(mine.id, own).catch(() => undefined);
        recallLifeboat(mine.id);
        if (again.saved) [mine.id, mine.version] = [own, again.version];
        if (mine === berth) noteOnTable(own);
        const { name } = work.block;
        say(`“${name}” was changed in another window too: yours goes on as a drawing of its own, theirs is on the shelf.`, undefined, Infinity);
      }
    } catch (error) {
      if (mine === berth) {
        last = null;
        now.set({ id: mine.id, state: 'not kept' });
      }
      if (!refused.has(mine.id) && lasts) acts.alarm(whyNot(error));
      refused.add(mine.id);
      return;
    }
    recallLifeboat(mine.id);
    refused.delete(mine.id);
    if (mine === berth) now.set({ id: mine.id, state: table.get().work === work ? 'kept' : 'waiting' });
    for (const id of refused) await keepAgain(id);
    if (!persistent) {
      persistent = true;
      // So that the browser does not clear the shelf when the device runs out of room; it may say no.
      void navigator.storage?.persist?.().catch(() => false);
    }
  };

  /** There may be room by now for what was refused before. */
  const keepAgain = async (id: string): Promise<void> => {
    try {
      const drawing = await place.load(id);
      if (drawing) await place.save(id, drawing.version, drawing.work);
      refused.delete(id);
    } catch {
      // Then it is held in the page, as before.
    }
  };

  const save = (): void => {
    clearTimeout(rest);
    const { work } = table.get();
    if (work === last) return;
    last = work;
    const mine = berth;
    // One after the other: each save must know the version of the one before.
    saving = saving.then(() => keep(mine, work));
  };

  table.subscribe(() => {
    if (table.get().work === last) return;
    now.change((known) => (known.state === 'kept' ? { ...known, state: 'waiting' } : known));
    clearTimeout(rest);
    rest = setTimeout(save, REST);
  });

  const layOut = (drawing: TakenUp): void => {
    save();
    const leaving = berth;
    if (isUntouched(leaving.id, table.get().work)) saving = saving.then(() => place.remove(leaving.id)).catch(() => undefined);
    berth = { id: drawing.id, version: drawing.version };
    last = drawing.version === 0 ? null : drawing.work;
    noteOnTable(drawing.id);
    now.set({ id: drawing.id, state: lasts ? 'kept' : 'not kept' });
    acts.unfold(drawing.work);
    save();
  };

  place.watch((id, version) => {
    if (id !== berth.id || version <= berth.version) return;
    const takeTheirs = async (): Promise<void> => {
      const theirs = await place.load(id);
      if (theirs) layOut(theirs);
    };
    const show = { name: 'Show the change', do: () => void takeTheirs().catch((error: unknown) => acts.alarm(whyNot(error))) };
    say('Another window has changed this drawing. If you go on here, yours becomes a drawing of its own.', show, Infinity);
  });

  const leave = (): void => {
    const { work } = table.get();
    const { id, version } = berth;
    if (now.get().state !== 'kept' && !isUntouched(id, work)) launchLifeboat({ id, version, work });
    save();
  };
  document.addEventListener('visibilitychange', () => document.visibilityState === 'hidden' && leave());
  window.addEventListener('pagehide', leave);
  window.addEventListener('beforeunload', (event) => {
    if (refused.size > 0 && table.get().work.history.done.length > 0) event.preventDefault();
  });
  noteOnTable(first.id);

  return {
    now,
    begin: (block, from) => layOut({ id: from ? lookedAt() : freshDrawing(), version: 0, work: begun(block) }),
    layOut,
    settled: async () => {
      save();
      await saving;
    },
  };
}

import type { Block } from '../../block/block.ts';
import { begin, commit } from '../../block/history.ts';
import { rename } from '../../block/renaming.ts';
import type { Autosave, Card } from '../../files/autosave.ts';
import { forgetPicture, sharePicture } from '../../files/pictures.ts';
import { good, type Result } from '../../measure/problem.ts';
import type { Keeping } from '../keeping.ts';
import { freshDrawing } from '../lifeboat.ts';
import { renamedTo } from '../past/words.ts';
import type { Acts, Table } from '../table.ts';
import type { Store } from '../store.ts';
import { smallPicture } from './small-picture.ts';

/** Her drawings, and what she can do with one as a whole. */
export interface Shelf {
  /** @returns what is on the shelf and what was put away, the last saved first */
  readonly cards: () => Promise<readonly Card[]>;
  /** @returns the drawing in small, of this very version; null where it is gone */
  readonly picture: (card: Card) => Promise<Blob | null>;
  readonly open: (id: string) => Promise<void>;
  /** Renames a drawing, which is an entry of its history. */
  readonly rename: (id: string, name: string) => Promise<Result<null>>;
  /** Lays a second one like it on the shelf, its past included. */
  readonly duplicate: (id: string) => Promise<void>;
  /** Puts a drawing away; in place of the one on the table comes the next on the shelf, else an empty one like it. */
  readonly putAway: (id: string) => Promise<void>;
  readonly bringBack: (id: string) => Promise<void>;
  /** Forgets what was put away, for good. */
  readonly empty: () => Promise<void>;
}

/** @returns a block of the same size, grid and fabrics with nothing on it */
const emptied = ({ name: _, patches: __, seams: ___, pins: ____, unitMethods: _____, pressedSeams: ______, publication: _______, ...rest }: Block): Block => ({
  ...rest, name: 'New block', patches: [], seams: [],
});

/** @returns the shelf over a keeping place */
export function shelfOf(place: Autosave, keeping: Keeping, table: Store<Table>, acts: Acts): Shelf {
  const onTable = (id: string): boolean => keeping.now.get().id === id;
  const cards = async (): Promise<readonly Card[]> => {
    await keeping.settled();
    return place.cards();
  };
  const forget = async (id: string): Promise<void> => {
    await place.remove(id);
    await forgetPicture(id).catch(() => undefined);
  };
  return {
    cards,
    picture: async ({ id, version }) => {
      const kept = await place.picture(id);
      if (kept?.version === version) return kept.picture;
      const drawing = await place.load(id);
      const picture = drawing && (await smallPicture(drawing.work.block));
      if (picture) await place.keepPicture({ id, version: drawing.version, picture });
      return picture ?? null;
    },
    open: async (id) => {
      if (onTable(id)) return;
      const drawing = await place.load(id);
      if (!drawing) return;
      if (drawing.putAway !== undefined) await place.putAway(id, null);
      keeping.layOut(drawing);
    },
    rename: async (id, name) => {
      if (onTable(id)) {
        const checked = rename(table.get().work.block, name);
        if (!checked.ok) return checked;
        acts.change(renamedTo(name), () => checked);
        await keeping.settled();
        return good(null);
      }
      const drawing = await place.load(id);
      if (!drawing) return good(null);
      const { work, version } = drawing;
      const renamed = rename(work.block, name);
      if (!renamed.ok) return renamed;
      await place.save(id, version, commit(work, begin(work.block, renamedTo(name)), renamed.value));
      return good(null);
    },
    duplicate: async (id) => {
      await keeping.settled();
      const work = onTable(id) ? table.get().work : (await place.load(id))?.work;
      if (!work) return;
      const called = rename(work.block, `${work.block.name} again`);
      // A name that would become too long stays as it is.
      const twin = called.ok ? commit(work, begin(work.block, renamedTo(called.value.name)), called.value) : work;
      const twinId = freshDrawing();
      await place.save(twinId, 0, twin);
      await sharePicture(id, twinId).catch(() => undefined);
    },
    putAway: async (id) => {
      if (onTable(id)) {
        const next = (await cards()).find((card) => card.id !== id && card.putAway === undefined);
        const drawing = next && (await place.load(next.id));
        if (drawing) keeping.layOut(drawing);
        else keeping.begin(emptied(table.get().work.block));
        await keeping.settled();
      }
      await place.putAway(id, Date.now());
    },
    bringBack: (id) => place.putAway(id, null),
    empty: async () => {
      for (const { id, putAway } of await place.cards()) if (putAway !== undefined) await forget(id);
    },
  };
}

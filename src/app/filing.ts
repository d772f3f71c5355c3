import type { Block } from '../block/block.ts';
import type { Autosave } from '../files/autosave.ts';
import { readBlockFile, saveBlockFile } from './block-files.ts';
import { askToOpen, canAskToOpen } from './device-files.ts';
import type { Keeping } from './keeping.ts';
import { notice, say } from './notice.ts';
import type { Store } from './store.ts';
import type { Acts, Table } from './table.ts';
import type { GivenFile } from './use-file-drop.ts';

/** Drawings to files on the device, and back. */
export interface Filing {
  /** Lays the drawing in a file on the table; a file with a fault says so and changes nothing. */
  readonly open: (given: GivenFile) => void;
  /** Asks which file to open. @param otherwise asks where the browser has no way to write to a file again */
  readonly ask: (otherwise: () => void) => void;
  /** Saves to the drawing's own file. */
  readonly save: () => void;
  /** Saves to another file; the drawing's own stays what it is. */
  readonly saveCopy: () => void;
  /** Lays a new drawing on the table; the one that lies there stays on the shelf. */
  readonly begin: (block: Block, from?: 'sampler') => void;
}

/** @returns the filing of the drawing on a table */
export function filingOf(place: Autosave, keeping: Keeping, table: Store<Table>, acts: Pick<Acts, 'alarm'>): Filing {
  const begin: Filing['begin'] = (block, from) => {
    const before = { id: keeping.now.get().id, block: table.get().work.block };
    const goBack = async (): Promise<void> => {
      await keeping.settled();
      const kept = await place.load(before.id);
      // A block of the sampler that nothing was done to is not kept.
      if (kept) keeping.layOut(kept);
      else keeping.begin(before.block, 'sampler');
    };
    keeping.begin(block, from);
    say(`“${block.name}” is on the table.`, { name: `Back to ${before.block.name}`, do: () => void goBack().catch(() => undefined) });
    // Once she goes on, the line is out of her way.
    const [laid, line] = [table.get().work, notice.get()];
    const stop = table.subscribe(() => {
      if (table.get().work === laid) return;
      stop();
      notice.change((now) => (now === line ? null : now));
    });
  };

  const open = async ({ file, again }: GivenFile): Promise<void> => {
    const read = await readBlockFile(file);
    if (!read.ok) return acts.alarm(read.problem.sentence);
    begin(read.value);
    if (again) await place.keepFile(keeping.now.get().id, again);
  };

  const save = async (to: 'its own file' | 'another file'): Promise<void> => {
    const { id } = keeping.now.get();
    const { block } = table.get().work;
    const known = to === 'its own file' ? await place.fileOf(id).catch(() => undefined) : undefined;
    const saved = await saveBlockFile(block, known);
    if (!saved.ok) return acts.alarm(saved.problem.sentence);
    if (saved.value === null) return;
    const { words, file } = saved.value;
    if (file && to === 'its own file') await place.keepFile(id, file);
    say(words);
  };

  return {
    begin,
    open: (given) => void open(given),
    ask: (otherwise) => {
      if (!canAskToOpen()) return otherwise();
      void askToOpen().then(async (again) => again && open({ file: await again.getFile(), again }));
    },
    save: () => void save('its own file'),
    saveCopy: () => void save('another file'),
  };
}

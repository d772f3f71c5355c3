import { useCallback, useEffect, useMemo, type ReactNode } from 'react';
import { fabricLetters } from '../canvas/fabric-letters.ts';
import type { Autosave } from '../files/autosave.ts';
import { Alert } from './Alert.tsx';
import { readBlockFile } from './block-files.ts';
import type { KeptDrawing } from './Drawings.tsx';
import type { Kept } from './keeping.ts';
import type { Desk } from './pattern-desk.ts';
import { PatternSheet } from './sheet/PatternSheet.tsx';
import { useStore, type Store } from './store.ts';
import type { Acts, Table } from './table.ts';
import { TablePanel } from './TablePanel.tsx';
import { TopBar } from './TopBar.tsx';
import { useFileDrop } from './use-file-drop.ts';
import { useUndoKeys } from './use-undo-keys.ts';

const NO_KNOT: readonly number[] = [];

/** The whole screen: the drawing table, and the pattern sheet beside it. */
export function App({ table, acts, desk, kept, autosave }: {
  readonly table: Store<Table>;
  readonly acts: Acts;
  readonly desk: Store<Desk>;
  readonly kept: Store<Kept>;
  readonly autosave: Autosave | null;
}): ReactNode {
  const now = useStore(table, (all) => all);
  const { drawn, pattern, ways, problem, working } = useStore(desk, (all) => all);
  const keptState = useStore(kept, (all) => all.state);
  const { block } = now.work;
  const letters = useMemo(() => fabricLetters(block.fabrics), [block.fabrics]);

  const openFile = useCallback(
    (file: File): void => {
      void readBlockFile(file).then((read) => (read.ok ? acts.open(read.value) : acts.alarm(read.problem.sentence)));
    },
    [acts],
  );
  const dropping = useFileDrop(openFile);
  useUndoKeys(acts);
  useEffect(() => {
    document.title = `${block.name} · Piecewright`;
  }, [block.name]);

  const keptDrawings = useCallback(async (): Promise<readonly KeptDrawing[]> => {
    const drawings = (await autosave?.list()) ?? [];
    return drawings
      .filter(({ id }) => id !== kept.get().id)
      .map(({ id, version, savedAt, work }) => ({
        id,
        savedAt,
        block: work.block,
        unfold: () => {
          kept.set({ id, version, state: 'kept' });
          acts.unfold(work);
        },
      }));
  }, [autosave, kept, acts]);

  return (
    <div className="page" data-dropping={dropping || undefined}>
      <TopBar work={now.work} acts={acts} openFile={openFile} kept={keptDrawings} />
      <Alert sentence={now.alert} dismiss={() => acts.alarm(null)} />
      <main className="desk">
        <TablePanel now={now} acts={acts} letters={letters} pattern={working ? null : pattern} knot={(!working && problem?.patches) || NO_KNOT} kept={keptState} />
        <PatternSheet
          block={block}
          drawn={drawn}
          pattern={pattern}
          ways={ways}
          problem={problem}
          working={working}
          letters={letters}
          acts={acts}
        />
      </main>
    </div>
  );
}

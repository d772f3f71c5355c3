import { useCallback, useEffect, useMemo, useRef, useState, type ReactNode } from 'react';
import { fabricLetters } from '../canvas/fabric-letters.ts';
import type { Autosave } from '../files/autosave.ts';
import type { Remedy } from '../measure/problem.ts';
import { Alert } from './Alert.tsx';
import { filingOf } from './filing.ts';
import type { Keeping } from './keeping.ts';
import { NoticeLine } from './Notice.tsx';
import { bestCut, type Cloths } from './cloths.ts';
import type { Desk } from './pattern-desk.ts';
import { PatternSheet } from './sheet/PatternSheet.tsx';
import { Sheets } from './Sheets.tsx';
import { useStore, type Store } from './store.ts';
import type { Acts, Table } from './table.ts';
import { TablePanel } from './TablePanel.tsx';
import { TopBar, type Sheet } from './TopBar.tsx';
import { useFileDrop, type GivenFile } from './use-file-drop.ts';
import { usePageKeys } from './use-page-keys.ts';
import { takePicture } from './views/underlay.ts';

const NO_KNOT: readonly number[] = [];
const NO_REMEDIES: readonly Remedy[] = [];

/** The whole screen: the drawing table, and the pattern sheet beside it. */
export function App({ table, acts, desk, cloths, keeping, place }: {
  readonly table: Store<Table>;
  readonly acts: Acts;
  readonly desk: Store<Desk>;
  readonly cloths: Store<Cloths>;
  readonly keeping: Keeping;
  /** Where drawings are kept. */
  readonly place: Autosave;
}): ReactNode {
  const now = useStore(table, (all) => all);
  const { drawn, pattern: first, ways, standing, problem, working } = useStore(desk, (all) => all);
  const pattern = useStore(cloths, (all) => bestCut(all, first));
  const clothStates = useStore(cloths, (all) => all.states);
  const keptState = useStore(keeping.now, (all) => all.state);
  const drawing = useStore(keeping.now, (all) => all.id);
  const { block } = now.work;
  const letters = useMemo(() => fabricLetters(block.fabrics), [block.fabrics]);

  const [sheet, setSheet] = useState<Sheet | null>(null);
  const closeSheet = useCallback(() => setSheet(null), []);
  const opener = useRef<() => void>(null);
  const filing = useMemo(() => filingOf(place, keeping, table, acts), [place, keeping, table, acts]);
  const openFile = useCallback(
    (given: GivenFile): void => {
      if (!given.file.type.startsWith('image/')) filing.open(given);
      else void takePicture(given.file).then((sentence) => sentence !== null && acts.alarm(sentence));
    },
    [acts, filing],
  );
  const dropping = useFileDrop(openFile);
  usePageKeys(
    useMemo(
      () => ({
        undo: acts.undo,
        redo: acts.redo,
        save: filing.save,
        'save a copy': filing.saveCopy,
        open: () => opener.current?.(),
        keys: () => setSheet('keys'),
      }),
      [acts, filing],
    ),
  );
  useEffect(() => {
    document.title = `${block.name} · Piecewright`;
  }, [block.name]);

  return (
    <div className="page" data-dropping={dropping || undefined}>
      <TopBar filing={filing} ask={setSheet} opener={opener} />
      <Alert sentence={now.alert} dismiss={() => acts.alarm(null)} />
      <main className="desk">
        <TablePanel now={now} acts={acts} letters={letters} pattern={working ? null : pattern} knot={(!working && problem?.patches) || NO_KNOT} remedies={(!working && problem?.remedies) || NO_REMEDIES} kept={keptState} drawing={drawing} />
        <PatternSheet
          block={block}
          drawn={drawn}
          pattern={pattern}
          ways={ways}
          standing={standing}
          problem={problem}
          working={working}
          clothStates={clothStates}
          letters={letters}
          acts={acts}
        />
      </main>
      <NoticeLine />
      <Sheets
        sheet={sheet}
        table={table}
        acts={acts}
        keeping={keeping}
        place={place}
        filing={filing}
        pattern={working ? null : pattern}
        close={closeSheet}
      />
    </div>
  );
}

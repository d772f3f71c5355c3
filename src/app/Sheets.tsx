import { lazy, type ReactNode } from 'react';
import type { Autosave } from '../files/autosave.ts';
import type { Pattern } from '../pattern/pattern.ts';
import type { Filing } from './filing.ts';
import type { Keeping } from './keeping.ts';
import { Later } from './Later.tsx';
import { useStore, type Store } from './store.ts';
import type { Acts, Table } from './table.ts';
import type { Sheet } from './TopBar.tsx';

const NewBlock = lazy(() => import('./NewBlock.tsx').then(({ NewBlock: part }) => ({ default: part })));
const ShelfDialog = lazy(() => import('./shelf/Shelf.tsx').then(({ ShelfDialog: part }) => ({ default: part })));
const PictureDialog = lazy(() => import('./shelf/PictureDialog.tsx').then(({ PictureDialog: part }) => ({ default: part })));
const KeysDialog = lazy(() => import('./KeysDialog.tsx').then(({ KeysDialog: part }) => ({ default: part })));

/** The sheet that is laid over the page just now, fetched when it is first asked for. */
export function Sheets({ sheet, table, acts, keeping, place, filing, pattern, close }: {
  readonly sheet: Sheet | null;
  readonly table: Store<Table>;
  readonly acts: Acts;
  readonly keeping: Keeping;
  readonly place: Autosave;
  readonly filing: Filing;
  /** The pattern of the drawing on the table, or null while there is none. */
  readonly pattern: Pattern | null;
  readonly close: () => void;
}): ReactNode {
  const block = useStore(table, ({ work }) => work.block);
  if (sheet === null) return null;
  const failed = (): void => {
    acts.alarm('That part of the app could not be fetched; check that the app is still being served, then load the page again.');
    close();
  };
  return (
    <Later failed={failed}>
      {sheet === 'new' && <NewBlock like={block} open={filing.begin} close={close} />}
      {sheet === 'shelf' && <ShelfDialog table={table} acts={acts} keeping={keeping} place={place} begin={filing.begin} close={close} />}
      {sheet === 'picture' && <PictureDialog block={block} pattern={pattern} alarm={acts.alarm} close={close} />}
      {sheet === 'keys' && <KeysDialog close={close} />}
    </Later>
  );
}

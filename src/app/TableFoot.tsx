import { ListOrdered, Redo2, Undo2 } from 'lucide-react';
import { lazy, useState, type ReactNode } from 'react';
import { Later } from './Later.tsx';
import type { Acts, Table } from './table.ts';

const Past = lazy(() => import('./past/Past.tsx').then(({ Past: part }) => ({ default: part })));

/** Under the cloth: what the hand is over, the way back and forth. */
export function TableFoot({ now, words, acts }: { readonly now: Table; readonly words: string; readonly acts: Acts }): ReactNode {
  const { done, undone } = now.work.history;
  const [past, setPast] = useState(false);
  const failed = (): void => {
    acts.alarm('The list of what was done could not be fetched; check that the app is still being served, then load the page again.');
    setPast(false);
  };
  return (
    <div className="table-foot">
      <p className="here" aria-hidden="true">
        {words}
      </p>
      <div className="table-acts">
        <button type="button" className="plain" disabled={done.length === 0} onClick={acts.undo}>
          <Undo2 size={20} aria-hidden="true" /> Undo
        </button>
        <button type="button" className="plain" disabled={undone.length === 0} onClick={acts.redo}>
          <Redo2 size={20} aria-hidden="true" /> Redo
        </button>
        <button type="button" className="plain" aria-expanded={past} onClick={() => setPast(!past)}>
          <ListOrdered size={20} aria-hidden="true" /> Past
        </button>
      </div>
      {past && (
        <Later failed={failed}>
          <Past history={now.work.history} goTo={acts.goTo} close={() => setPast(false)} />
        </Later>
      )}
    </div>
  );
}

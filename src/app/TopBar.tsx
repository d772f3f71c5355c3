import { BookOpen, FilePlus2, FolderOpen, Save } from 'lucide-react';
import { useRef, useState, type ReactNode } from 'react';
import { saveBlockFile } from './block-files.ts';
import { Drawings, type KeptDrawing } from './Drawings.tsx';
import { NewBlock } from './NewBlock.tsx';
import type { Acts, Table } from './table.ts';
import { Mark } from './TradeIcons.tsx';

/** The head of the page: our name, and what one does with whole drawings. */
export function TopBar({ work, acts, openFile, kept }: {
  readonly work: Table['work'];
  readonly acts: Acts;
  readonly openFile: (file: File) => void;
  readonly kept: () => Promise<readonly KeptDrawing[]>;
}): ReactNode {
  const chooser = useRef<HTMLInputElement>(null);
  const [asked, setAsked] = useState<'new' | 'drawings' | null>(null);
  const save = (): void => void saveBlockFile(work.block).then((problem) => problem && acts.alarm(problem.sentence));
  return (
    <header className="top">
      <h1 className="wordmark">
        <Mark /> Piecewright
      </h1>
      <nav className="top-acts" aria-label="Drawings">
        <button type="button" className="plain" onClick={() => setAsked('new')}>
          <FilePlus2 size={20} aria-hidden="true" /> New
        </button>
        <button type="button" className="plain" onClick={() => chooser.current?.click()}>
          <FolderOpen size={20} aria-hidden="true" /> Open
        </button>
        <input
          ref={chooser}
          type="file"
          accept=".json,application/json"
          className="unseen"
          tabIndex={-1}
          aria-label="Open a block file"
          onChange={(event) => {
            const file = event.target.files?.[0];
            event.target.value = '';
            if (file) openFile(file);
          }}
        />
        <button type="button" className="plain" onClick={save}>
          <Save size={20} aria-hidden="true" /> Save
        </button>
        <button type="button" className="plain" onClick={() => setAsked('drawings')}>
          <BookOpen size={20} aria-hidden="true" /> Sampler
        </button>
      </nav>
      {asked === 'new' && <NewBlock like={work.block} open={acts.open} close={() => setAsked(null)} />}
      {asked === 'drawings' && <Drawings acts={acts} kept={kept} close={() => setAsked(null)} />}
    </header>
  );
}

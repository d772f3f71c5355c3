import { BookOpen, Copy, FilePlus2, FolderOpen, Image, Keyboard, Save } from 'lucide-react';
import { memo, useImperativeHandle, useRef, type ReactNode, type Ref } from 'react';
import { FileChooser } from './FileChooser.tsx';
import type { Filing } from './filing.ts';
import { Mark } from './TradeIcons.tsx';

/** The sheets that can be laid over the page. */
export type Sheet = 'new' | 'shelf' | 'picture' | 'keys';

/** The head of the page: our name, and what one does with whole drawings. */
export const TopBar = memo(function TopBar({ filing, ask, opener }: {
  readonly filing: Filing;
  readonly ask: (sheet: Sheet) => void;
  /** Is given what asks for a file to open. */
  readonly opener: Ref<() => void>;
}): ReactNode {
  const chooser = useRef<HTMLInputElement>(null);
  const open = (): void => filing.ask(() => chooser.current?.click());
  useImperativeHandle(opener, () => open);
  return (
    <header className="top">
      <h1 className="wordmark">
        <Mark /> Piecewright
      </h1>
      <nav className="top-acts" aria-label="Drawings">
        <button type="button" className="plain" onClick={() => ask('new')}>
          <FilePlus2 size={20} aria-hidden="true" /> New
        </button>
        <button type="button" className="plain" onClick={() => ask('shelf')}>
          <BookOpen size={20} aria-hidden="true" /> Shelf
        </button>
        <button type="button" className="plain" onClick={open}>
          <FolderOpen size={20} aria-hidden="true" /> Open
        </button>
        <FileChooser
          chooser={chooser}
          accept=".json,application/json"
          label="Open a block file"
          take={(file) => filing.open({ file })}
        />
        <button type="button" className="plain" onClick={filing.save}>
          <Save size={20} aria-hidden="true" /> Save
        </button>
        <button type="button" className="plain" onClick={filing.saveCopy}>
          <Copy size={20} aria-hidden="true" /> Save a copy
        </button>
        <button type="button" className="plain" onClick={() => ask('picture')}>
          <Image size={20} aria-hidden="true" /> Picture
        </button>
        <button type="button" className="plain" onClick={() => ask('keys')}>
          <Keyboard size={20} aria-hidden="true" /> Keys
        </button>
      </nav>
    </header>
  );
});

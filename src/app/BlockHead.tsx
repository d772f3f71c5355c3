import { lazy, Suspense, useRef, useState, type ReactNode } from 'react';
import type { Block } from '../block/block.ts';
import { countOf } from '../block/cells.ts';
import { MAX_NAME } from '../block/limits.ts';
import { rename } from '../block/renaming.ts';
import type { Pattern } from '../pattern/pattern.ts';
import { renamedTo } from './past/words.ts';
import type { Acts } from './table.ts';
import { Area } from './sheet/Length.tsx';

const GridPanel = lazy(() => import('./grid/GridPanel.tsx'));

/** The name of the block, to be written over, and how large it is, which opens size and grid. */
export function BlockHead({ block, pattern, acts }: {
  readonly block: Block;
  /** The pattern of this very drawing, or null while there is none. */
  readonly pattern: Pattern | null;
  readonly acts: Acts;
}): ReactNode {
  const [typed, setTyped] = useState<string | null>(null);
  const [open, setOpen] = useState(false);
  const size = useRef<HTMLButtonElement>(null);
  const { columns, rows } = countOf(block.grid);
  const take = (): void => {
    const name = typed?.trim() ?? '';
    setTyped(null);
    if (name !== '' && name !== block.name) acts.change(renamedTo(name), (now) => rename(now, name));
  };
  return (
    <div className="block-head">
      <h2 className="unseen" id="table-title">
        Drawing table
      </h2>
      <input
        type="text"
        className="block-name"
        aria-label="Name of the block"
        value={typed ?? block.name}
        maxLength={MAX_NAME}
        spellCheck={false}
        onChange={(event) => setTyped(event.target.value)}
        onBlur={take}
        onKeyDown={(event) => {
          if (event.key === 'Enter') event.currentTarget.blur();
          if (event.key === 'Escape') setTyped(null);
        }}
      />
      <button ref={size} type="button" className="plain block-size" aria-haspopup="dialog" aria-expanded={open} onClick={() => setOpen(!open)}>
        <span className="unseen">Size and grid: </span>
        <span>
          <Area size={block.finished} unit={block.finished.unit} /> · {columns} × {rows} cells
        </span>
      </button>
      {open && (
        <Suspense fallback={null}>
          <GridPanel
            block={block}
            pattern={pattern}
            acts={acts}
            close={() => {
              setOpen(false);
              size.current?.focus();
            }}
          />
        </Suspense>
      )}
    </div>
  );
}

import { useState, type ReactNode } from 'react';
import type { Block } from '../block/block.ts';
import { MAX_NAME } from '../block/limits.ts';
import { rename } from '../block/sizing.ts';
import type { Acts } from './table.ts';
import { Area } from './sheet/Length.tsx';

/** The name of the block, to be written over, and how large it is. */
export function BlockHead({ block, acts }: { readonly block: Block; readonly acts: Acts }): ReactNode {
  const [typed, setTyped] = useState<string | null>(null);
  const take = (): void => {
    const name = typed?.trim() ?? '';
    setTyped(null);
    if (name !== '' && name !== block.name) acts.change('rename', (now) => rename(now, name));
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
      <p className="block-size">
        <Area size={block.finished} unit={block.finished.unit} /> finished · {block.grid.columns} × {block.grid.rows} cells
      </p>
    </div>
  );
}

import { useState, type CSSProperties, type ReactNode } from 'react';
import type { Block, Colourway } from '../../block/block.ts';
import { dropColourway, keepColourway, takeColourway, worn } from '../../block/colour/colourways.ts';
import { MAX_NAME } from '../../block/limits.ts';
import type { Acts } from '../table.ts';

/** The looks that are kept by name: keep one more, take one, let one go. */
export function Colourways({ block, acts }: { readonly block: Block; readonly acts: Acts }): ReactNode {
  const [name, setName] = useState('');
  const on = worn(block);
  const typed = name.trim();
  const known = block.colourways?.some((each) => each.name === typed);
  return (
    <section aria-labelledby="colourways-title" className="colourways">
      <h3 id="colourways-title">Colourways</h3>
      {(block.colourways ?? []).length > 0 && (
        <ul>
          {block.colourways!.map((colourway) => (
            <li key={colourway.name} data-worn={colourway.name === on || undefined}>
              <Chips colourway={colourway} block={block} />
              <span className="colourway-name">
                {colourway.name}
                {colourway.name === on && <span className="quiet"> as it is now</span>}
              </span>
              <button type="button" className="plain framed" disabled={colourway.name === on} onClick={() => acts.change(`took ${colourway.name}`, (now) => takeColourway(now, colourway.name))}>
                Take<span className="unseen"> {colourway.name}</span>
              </button>
              <button type="button" className="plain" onClick={() => acts.change(`let ${colourway.name} go`, (now) => dropColourway(now, colourway.name))}>
                Let go<span className="unseen"> of {colourway.name}</span>
              </button>
            </li>
          ))}
        </ul>
      )}
      <form
        className="colourway-keep"
        onSubmit={(event) => {
          event.preventDefault();
          acts.change(`kept ${typed}`, (now) => keepColourway(now, typed));
          setName('');
        }}
      >
        <label className="field">
          <span>Keep the block as it is now under</span>
          <input type="text" value={name} required maxLength={MAX_NAME} onChange={(event) => setName(event.target.value)} />
        </label>
        <button type="submit" className="main-act" disabled={typed === ''}>
          {known ? 'Keep in its place' : 'Keep'}
        </button>
      </form>
    </section>
  );
}

function Chips({ colourway, block }: { readonly colourway: Colourway; readonly block: Block }): ReactNode {
  return (
    <span className="colourway-chips" aria-hidden="true">
      {block.fabrics.map(({ id, color }) => (
        <span key={id} className="chip" style={{ '--cloth': colourway.looks[id]?.color ?? color } as CSSProperties} />
      ))}
    </span>
  );
}

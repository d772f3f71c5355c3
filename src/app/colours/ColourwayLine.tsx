import { useEffect, useId, useRef, useState, type CSSProperties, type ReactNode } from 'react';
import type { Block, Colourway } from '../../block/block.ts';
import { dropColourway, renameColourway, takeColourway } from '../../block/colour/colourways.ts';
import { MAX_NAME } from '../../block/limits.ts';
import type { Acts } from '../table.ts';
import { CutList } from './CutList.tsx';
import type { ColourwayPattern } from './use-colourway-pattern.ts';

/** One colourway: take it, name it anew, let it go; unfolded, what to buy and to cut for it. */
export function ColourwayLine({ colourway, block, on, open, made, unfold, renamed, acts }: {
  readonly colourway: Colourway;
  readonly block: Block;
  /** Whether the block is in it now. */
  readonly on: boolean;
  readonly open: boolean;
  /** Its pattern, where it is unfolded. */
  readonly made: ColourwayPattern;
  readonly unfold: () => void;
  readonly renamed: (to: string) => void;
  readonly acts: Acts;
}): ReactNode {
  const { name } = colourway;
  const listId = useId();
  const [renaming, setRenaming] = useState(false);
  const again = useRef<HTMLButtonElement>(null);
  const renamedOnce = useRef(false);
  useEffect(() => {
    if (renamedOnce.current && !renaming) again.current?.focus();
    renamedOnce.current = true;
  }, [renaming]);
  return (
    <li data-worn={on || undefined}>
      <Chips colourway={colourway} block={block} />
      {renaming ? (
        <Renaming
          block={block}
          name={name}
          done={(to) => {
            setRenaming(false);
            if (to === null || to === name) return;
            acts.change(`renamed ${name} to ${to}`, (now) => renameColourway(now, name, to));
            renamed(to);
          }}
        />
      ) : (
        <>
          <span className="colourway-name">
            {name}
            {on && <span className="quiet"> as it is now</span>}
          </span>
          <button type="button" className="plain unfold" aria-expanded={open} aria-controls={open ? listId : undefined} onClick={unfold}>
            Cloth and cuts<span className="unseen"> of {name}</span>
          </button>
          <button type="button" className="plain framed" disabled={on} onClick={() => acts.change(`took ${name}`, (now) => takeColourway(now, name))}>
            Take<span className="unseen"> {name}</span>
          </button>
          <button ref={again} type="button" className="plain" onClick={() => setRenaming(true)}>
            Rename<span className="unseen"> {name}</span>
          </button>
          <button type="button" className="plain" onClick={() => acts.change(`let ${name} go`, (now) => dropColourway(now, name))}>
            Let go<span className="unseen"> of {name}</span>
          </button>
        </>
      )}
      {open && (
        <div id={listId} className="colourway-cuts">
          {made.fault !== null ? <p role="alert">{made.fault}</p> : made.pattern ? <CutList pattern={made.pattern} /> : <p className="quiet" role="status">Working it out …</p>}
        </div>
      )}
    </li>
  );
}

/** Another name for a colourway, which no other has. */
function Renaming({ block, name, done }: { readonly block: Block; readonly name: string; readonly done: (to: string | null) => void }): ReactNode {
  const [to, setTo] = useState(name);
  const field = useRef<HTMLInputElement>(null);
  useEffect(() => field.current?.select(), []);
  const typed = to.trim();
  const taken = typed !== name && block.colourways?.some((each) => each.name === typed);
  return (
    <form
      className="colourway-renaming"
      onKeyDown={(event) => {
        if (event.key !== 'Escape') return;
        event.preventDefault();
        done(null);
      }}
      onSubmit={(event) => {
        event.preventDefault();
        if (typed !== '' && !taken) done(typed);
      }}
    >
      <input type="text" ref={field} aria-label={`Another name for ${name}`} value={to} required maxLength={MAX_NAME} onChange={(event) => setTo(event.target.value)} />
      <button type="submit" className="plain framed" disabled={typed === '' || taken}>
        Rename
      </button>
      <button type="button" className="plain" onClick={() => done(null)}>
        Leave it
      </button>
      {taken && <span role="alert">Another one is called that.</span>}
    </form>
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

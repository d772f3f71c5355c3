import { useRef, useState, type ReactNode } from 'react';
import { MAX_NAME } from '../../block/limits.ts';
import type { Card } from '../../files/autosave.ts';
import { Area } from '../sheet/Length.tsx';
import { CardPicture } from './CardPicture.tsx';
import type { Shelf } from './shelf.ts';
import { whenInWords } from './when.ts';

/** @returns the id, in the page, of what opens a drawing */
export const lineId = (drawing: string): string => `shelf ${drawing}`;

/** A drawing on the shelf: its picture and name open it, beside it what can be done with it as a whole. */
export function ShelfLine({ card, onTable, picture, open, rename, duplicate, putAway }: {
  readonly card: Card;
  /** Whether it lies on the table just now. */
  readonly onTable: boolean;
  readonly picture: Shelf['picture'];
  readonly open: () => void;
  readonly rename: (name: string) => void;
  readonly duplicate: () => void;
  readonly putAway: () => void;
}): ReactNode {
  const [typed, setTyped] = useState<string | null>(null);
  const renaming = useRef<HTMLButtonElement>(null);
  const { name, finished, savedAt } = card;
  const take = (): void => {
    const wanted = typed?.trim() ?? '';
    setTyped(null);
    if (wanted !== '' && wanted !== name) rename(wanted);
    else renaming.current?.focus();
  };
  return (
    <li className="shelf-line" aria-current={onTable || undefined}>
      <CardPicture card={card} picture={picture} />
      <div className="shelf-words">
        {typed === null ? (
          <button id={lineId(card.id)} type="button" className="shelf-name" onClick={open}>
            {name}
          </button>
        ) : (
          <form
            className="shelf-rename"
            onSubmit={(event) => {
              event.preventDefault();
              take();
            }}
          >
            <input
              type="text"
              aria-label={`New name for ${name}`}
              autoFocus
              value={typed}
              maxLength={MAX_NAME}
              onFocus={(event) => event.target.select()}
              onChange={(event) => setTyped(event.target.value)}
              onKeyDown={(event) => {
                if (event.key !== 'Escape') return;
                // Escape leaves the name as it is, not the shelf.
                event.preventDefault();
                setTyped(null);
                renaming.current?.focus();
              }}
            />
            <button type="submit" className="plain framed">
              Take this name
            </button>
          </form>
        )}
        <p className="quiet shelf-facts">
          <Area size={finished} unit={finished.unit} />
          <span>{onTable ? 'on the table' : whenInWords(savedAt, Date.now())}</span>
        </p>
      </div>
      <div className="shelf-acts">
        <button
          ref={renaming}
          type="button"
          className="plain"
          aria-label={`Rename ${name}`}
          onClick={() => setTyped(name)}
        >
          Rename
        </button>
        <button type="button" className="plain" aria-label={`Duplicate ${name}`} onClick={duplicate}>
          Duplicate
        </button>
        <button type="button" className="plain" aria-label={`Put away ${name}`} onClick={putAway}>
          Put away
        </button>
      </div>
    </li>
  );
}

import { useState, type ReactNode } from 'react';
import type { Card } from '../../files/autosave.ts';
import { Area } from '../sheet/Length.tsx';
import { CardPicture } from './CardPicture.tsx';
import type { Shelf } from './shelf.ts';

/** What was put away: each can be brought back until all of it is emptied. */
export function PutAway({ cards, picture, bringBack, empty }: {
  readonly cards: readonly Card[];
  readonly picture: Shelf['picture'];
  readonly bringBack: (card: Card) => void;
  readonly empty: () => void;
}): ReactNode {
  const [asked, setAsked] = useState(false);
  const many = cards.length === 1 ? 'This drawing' : `These ${cards.length} drawings`;
  return (
    <details className="put-away">
      <summary>
        <h3>Put away ({cards.length})</h3>
      </summary>
      <ul className="shelf-lines">
        {cards.map((card) => (
          <li key={card.id} className="shelf-line">
            <CardPicture card={card} picture={picture} />
            <div className="shelf-words">
              <span className="shelf-name">{card.name}</span>
              <p className="quiet shelf-facts">
                <Area size={card.finished} unit={card.finished.unit} />
              </p>
            </div>
            <div className="shelf-acts">
              <button type="button" className="plain" aria-label={`Bring back ${card.name}`} onClick={() => bringBack(card)}>
                Bring back
              </button>
            </div>
          </li>
        ))}
      </ul>
      {asked ? (
        <div className="shelf-said">
          <span>{many} cannot be brought back after that.</span>
          <button type="button" className="plain framed" onClick={empty}>
            Forget for good
          </button>
          <button type="button" className="plain" autoFocus onClick={() => setAsked(false)}>
            Leave
          </button>
        </div>
      ) : (
        <button type="button" className="plain framed" onClick={() => setAsked(true)}>
          Empty …
        </button>
      )}
    </details>
  );
}

import { useCallback, useEffect, useId, useMemo, useRef, useState, type ReactNode } from 'react';
import type { Autosave, Card } from '../../files/autosave.ts';
import { Dialog } from '../Dialog.tsx';
import type { Filing } from '../filing.ts';
import type { Keeping } from '../keeping.ts';
import { useStore, type Store } from '../store.ts';
import type { Acts, Table } from '../table.ts';
import { Sampler } from './Sampler.tsx';
import { PutAway } from './PutAway.tsx';
import { shelfOf } from './shelf.ts';
import { lineId, ShelfLine } from './ShelfLine.tsx';

/** From how many drawings on there is a field to look for one. */
const MANY = 12;
/** How many are shown at first, and how many more each time. */
const SHOWN = 60;

/** What was done last, whether it can be taken back, and which drawing it left on the shelf. */
interface Said {
  readonly words: string;
  readonly back?: Card;
  readonly left?: string;
}

/** @returns whether a name has all the words looked for */
function answers(name: string, wanted: string): boolean {
  const plain = (text: string): string => text.normalize('NFKD').replace(/\p{M}/gu, '').toLowerCase();
  return plain(wanted).split(/\s+/).every((word) => plain(name).includes(word));
}

/** One place for her drawings: those kept in this browser, the sampler's blocks, and what was put away. */
export function ShelfDialog({ table, acts, keeping, place, begin, close }: {
  readonly table: Store<Table>;
  readonly acts: Acts;
  readonly keeping: Keeping;
  readonly place: Autosave;
  readonly begin: Filing['begin'];
  readonly close: () => void;
}): ReactNode {
  const shelf = useMemo(() => shelfOf(place, keeping, table, acts), [place, keeping, table, acts]);
  const onTable = useStore(keeping.now, ({ id }) => id);
  const [cards, setCards] = useState<readonly Card[] | null>(null);
  const [wanted, setWanted] = useState('');
  const [most, setMost] = useState(SHOWN);
  const [said, setSaid] = useState<Said | null>(null);
  const bringBack = useRef<HTMLButtonElement>(null);
  const shelfId = useId();
  const samplerId = useId();

  const read = useCallback(async (): Promise<void> => setCards(await shelf.cards()), [shelf]);
  const refuse = useCallback((): void => setSaid({ words: 'The browser did not let that be done; nothing was changed. Try it again.' }), []);
  useEffect(() => {
    read().catch(refuse);
  }, [read, refuse, onTable]);
  useEffect(() => {
    // Where the button that was pressed is gone, the focus goes to what came of it.
    if (said?.back) bringBack.current?.focus();
    else if (said?.left !== undefined) document.getElementById(lineId(said.left))?.focus();
  }, [said]);

  const act = (deed: () => Promise<void>, done?: Said): void => {
    deed()
      .then(read)
      .then(() => done && setSaid(done))
      .catch(refuse);
  };
  const broughtBack = ({ id, name }: Card): Said => ({ words: `“${name}” is on the shelf again.`, left: id });
  const all = useMemo(() => cards?.filter(({ putAway }) => putAway === undefined) ?? [], [cards]);
  const away = useMemo(() => cards?.filter(({ putAway }) => putAway !== undefined) ?? [], [cards]);
  const found = wanted.trim() === '' ? all : all.filter(({ name }) => answers(name, wanted.trim()));

  return (
    <Dialog title="Shelf" className="wide shelf" close={close}>
      <p className="quiet">What you open comes to the table with its own past; what lies on the table now stays on the shelf.</p>
      <div className="shelf-said" role="status">
        {said && <span>{said.words}</span>}
        {said?.back && (
          <button
            ref={bringBack}
            type="button"
            className="plain framed"
            onClick={() => act(() => shelf.bringBack(said.back!.id), broughtBack(said.back!))}
          >
            Bring back
          </button>
        )}
      </div>
      <section aria-labelledby={shelfId}>
        <div className="shelf-head">
          <h3 id={shelfId}>Kept in this browser</h3>
          {all.length > MANY && (
            <label className="shelf-search">
              <span>Look for</span>
              <input type="text" value={wanted} onChange={(event) => setWanted(event.target.value)} />
            </label>
          )}
        </div>
        {cards && all.length === 0 && <p className="quiet">Nothing yet: the first patch you lay is kept here by itself.</p>}
        {wanted.trim() !== '' && (
          <p className="quiet" role="status">
            {found.length === 0 ? 'No drawing has that in its name.' : `${found.length} of ${all.length} drawings`}
          </p>
        )}
        <ul className="shelf-lines">
          {found.slice(0, most).map((card) => (
            <ShelfLine
              key={card.id}
              card={card}
              onTable={card.id === onTable}
              picture={shelf.picture}
              open={() => act(() => shelf.open(card.id).then(close))}
              rename={(name) => {
                shelf.rename(card.id, name).then(async (renamed) => {
                  await read();
                  setSaid({ words: renamed.ok ? `Now called “${name}”.` : renamed.problem.sentence, left: card.id });
                }, refuse);
              }}
              duplicate={() => act(() => shelf.duplicate(card.id), { words: `A second “${card.name}” is on the shelf.` })}
              putAway={() => act(() => shelf.putAway(card.id), { words: `“${card.name}” was put away.`, back: card })}
            />
          ))}
        </ul>
        {found.length > most && (
          <button type="button" className="plain framed" onClick={() => setMost(most + SHOWN)}>
            Show {Math.min(SHOWN, found.length - most)} older ones
          </button>
        )}
      </section>
      <section aria-labelledby={samplerId}>
        <h3 id={samplerId}>Kittiwake Point sampler</h3>
        <Sampler
          take={(block) => {
            begin(block, 'sampler');
            close();
          }}
          failed={(sentence) => setSaid({ words: sentence })}
        />
      </section>
      {away.length > 0 && (
        <PutAway
          cards={away}
          picture={shelf.picture}
          bringBack={(card) => act(() => shelf.bringBack(card.id), broughtBack(card))}
          empty={() => act(shelf.empty, { words: 'What was put away is gone.' })}
        />
      )}
    </Dialog>
  );
}

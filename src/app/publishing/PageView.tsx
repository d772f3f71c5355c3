import { memo, useId, useMemo, useRef, useState, type CSSProperties, type KeyboardEvent, type ReactNode } from 'react';
import type { Area, Page } from '../../pattern/pages/page.ts';
import { PagePicture } from '../sheet/templates/PagePicture.tsx';
import { spotsOn, type Spot } from './spots.ts';
import type { Sentence } from './pages-maker.ts';

/** A page as it will be printed. Its sentences are one stop for the Tab key; arrows go from one to the next, Enter opens it. */
export const PageView = memo(function PageView({ page, number, of, sentences, open, chosen, editor }: {
  readonly page: Page;
  /** Counted from 1. */
  readonly number: number;
  readonly of: number;
  readonly sentences: ReadonlyMap<string, Sentence>;
  /** Opens a sentence to be worded. */
  readonly open: (at: string, page: number) => void;
  /** The sentence that is open on this page. */
  readonly chosen: string | null;
  /** What it is worded in. */
  readonly editor: ReactNode;
}): ReactNode {
  const spots = useMemo(() => spotsOn(page, (at) => sentences.has(at)), [page, sentences]);
  const [reached, setReached] = useState(0);
  const id = useId();
  const list = useRef<HTMLDivElement>(null);
  const active = Math.min(reached, spots.length - 1);
  const go = (to: number): void => {
    const next = Math.max(0, Math.min(spots.length - 1, to));
    setReached(next);
    list.current?.children[next]?.scrollIntoView({ block: 'nearest' });
  };
  const onKey = (event: KeyboardEvent): void => {
    const [next, before, last] = [active + 1, active - 1, spots.length - 1];
    const sideways = { ArrowRight: next, ArrowLeft: before };
    const moves: Readonly<Record<string, number>> = { ...sideways, ArrowDown: next, ArrowUp: before, Home: 0, End: last };
    const to = moves[event.key];
    if (to !== undefined) go(to);
    else if ((event.key === 'Enter' || event.key === ' ') && spots[active]) open(spots[active].at, number);
    else return;
    event.preventDefault();
  };
  const edited = spots.find(({ at }) => at === chosen);
  return (
    <div className="room-page" style={{ '--page-wide': page.width } as CSSProperties}>
      <PagePicture page={page} says={`Page ${number} of ${of}`} />
      {spots.length > 0 && (
        <div
          ref={list}
          className="room-spots"
          role="listbox"
          tabIndex={0}
          aria-label={`Sentences of page ${number}`}
          aria-activedescendant={`${id}-${active}`}
          onKeyDown={onKey}
        >
          {spots.map((spot, i) => (
            <SpotView
              key={spot.at}
              id={`${id}-${i}`}
              spot={spot}
              page={page}
              active={i === active}
              chosen={spot.at === chosen}
              mine={sentences.get(spot.at)?.was !== undefined}
              open={() => {
                setReached(i);
                open(spot.at, number);
              }}
            />
          ))}
        </div>
      )}
      {edited && (
        <div className="room-editor-place" style={{ top: share(bottomOf(edited.areas[0]!), page.height) }}>
          {editor}
        </div>
      )}
    </div>
  );
});

function SpotView({ id, spot, page, active, chosen, mine, open }: {
  readonly id: string;
  readonly spot: Spot;
  readonly page: Page;
  readonly active: boolean;
  readonly chosen: boolean;
  readonly mine: boolean;
  readonly open: () => void;
}): ReactNode {
  return (
    <div
      id={id}
      role="option"
      aria-selected={chosen}
      aria-label={mine ? `${spot.text} (in your words)` : spot.text}
      data-active={active || undefined}
      data-mine={mine || undefined}
      onClick={open}
    >
      {spot.areas.map((area, i) => (
        <span key={i} className="room-spot" style={placeOf(area, page)} />
      ))}
    </div>
  );
}

const share = (part: number, whole: number): string => `${(part / whole) * 100}%`;
const bottomOf = ({ top, height }: Area): number => top + height;

const placeOf = ({ left, top, width, height }: Area, page: Page): CSSProperties => ({
  left: share(left, page.width),
  top: share(top, page.height),
  width: share(width, page.width),
  height: share(height, page.height),
});

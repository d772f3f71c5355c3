import { useEffect, useLayoutEffect, useRef, useState, type KeyboardEvent, type ReactNode } from 'react';
import type { History } from '../../block/history.ts';

/** How many lines are shown at first, and how many more each time. */
const SHOWN = 200;

/** One place in the history: how many gestures are done there, and what the last of them was. */
interface Place {
  readonly done: number;
  readonly words: string;
}

/** @returns every place of a history, the newest first, down to the beginning */
export function placesOf({ done, undone }: History): Place[] {
  const words = [...done, ...undone].map(({ label }) => label);
  return ['the beginning', ...words].map((each, i) => ({ done: i, words: each })).reverse();
}

const KEYS: Readonly<Record<string, (at: number, last: number) => number>> = {
  ArrowUp: (at) => at - 1,
  ArrowDown: (at) => at + 1,
  PageUp: (at) => at - 10,
  PageDown: (at) => at + 10,
  Home: () => 0,
  End: (_, last) => last,
};

/** What was done to the drawing, newest first: a list to go back and forth in, beside the table, which stays in use. */
export function Past({ history, goTo, close }: {
  readonly history: History;
  readonly goTo: (done: number) => void;
  readonly close: () => void;
}): ReactNode {
  const panel = useRef<HTMLElement>(null);
  const list = useRef<HTMLOListElement>(null);
  const here = history.done.length;
  const places = placesOf(history);
  const [most, setMost] = useState(SHOWN);
  // The present place is always among those that are shown.
  const shown = places.slice(0, Math.max(most, history.undone.length + SHOWN / 2));
  const [at, setAt] = useState(history.undone.length);
  const lineOf = (i: number): HTMLElement | null | undefined => list.current?.querySelector(`[data-at="${i}"]`);

  useLayoutEffect(() => {
    const before = document.activeElement;
    list.current?.querySelector<HTMLElement>('[aria-current]')?.focus();
    const standing = panel.current;
    return () => {
      if (standing?.contains(document.activeElement) && before instanceof HTMLElement) before.focus();
    };
  }, []);
  useEffect(() => {
    setAt(history.undone.length);
    list.current?.querySelector('[aria-current]')?.scrollIntoView({ block: 'nearest' });
  }, [history]);

  const onKeyDown = (event: KeyboardEvent): void => {
    if (event.key === 'Escape') {
      event.stopPropagation();
      close();
      return;
    }
    const move = KEYS[event.key];
    if (!move || event.ctrlKey || event.metaKey || event.altKey) return;
    event.preventDefault();
    const next = Math.min(shown.length - 1, Math.max(0, move(at, shown.length - 1)));
    setAt(next);
    lineOf(next)?.focus();
  };

  return (
    <section ref={panel} className="past" aria-labelledby="past-title" onKeyDown={onKeyDown}>
      <div className="sheet-top">
        <h2 id="past-title">What was done</h2>
        <button type="button" className="plain" onClick={close}>
          Close
        </button>
      </div>
      <ol ref={list} className="past-lines" reversed>
        {shown.map(({ done, words }, i) => (
          <li key={done}>
            <button
              type="button"
              className="past-line"
              data-at={i}
              data-undone={done > here || undefined}
              aria-current={done === here ? 'step' : undefined}
              tabIndex={i === at ? 0 : -1}
              onClick={() => goTo(done)}
            >
              <span className="past-mark" aria-hidden="true" />
              <span>{words}</span>
              {done === here && <span className="past-here">here</span>}
              {done > here && <span className="past-here">undone</span>}
            </button>
          </li>
        ))}
      </ol>
      {shown.length < places.length && (
        <button type="button" className="plain framed" onClick={() => setMost(shown.length + SHOWN)}>
          Show {Math.min(SHOWN, places.length - shown.length)} earlier ones
        </button>
      )}
    </section>
  );
}

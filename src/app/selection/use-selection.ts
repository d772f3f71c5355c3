import { useCallback, useEffect, useLayoutEffect, useMemo, useRef, useState } from 'react';
import type { Block } from '../../block/block.ts';
import { NOTHING_CHOSEN, type Chosen } from '../../canvas/draw-selection.ts';
import type { Handling } from '../../canvas/hand/selecting.ts';
import { useStore } from '../store.ts';
import type { Acts, Table } from '../table.ts';
import { letGo, scrap, taken } from './taken.ts';

type Arranging = typeof import('./arranger.ts');

/** What arranges patches, loaded when patches are first chosen or pasted. */
const fetchArranging = (): Promise<Arranging> => import('./arranger.ts');

/** The patches that are chosen, and what is done with them. */
export interface Selecting {
  readonly chosen: Chosen;
  readonly handle: (handling: Handling) => void;
}

/** @returns whether keys and the clipboard belong to a text or to a sheet laid over the page */
export function isElsewhere(target: EventTarget | null): boolean {
  if (document.querySelector('dialog:modal')) return true;
  const taking = 'input:not([type=radio], [type=checkbox], [type=color]), textarea, select, [contenteditable]';
  return (target instanceof Element && target.closest(taking) !== null) || document.getSelection()?.isCollapsed === false;
}

/**
 * Keeps which patches are chosen while the hand holds the tool for it, and does what is asked of them.
 * @param say tells what was done to those who listen
 */
export function useSelection(now: Table, acts: Acts, say: (words: string) => void): Selecting {
  const { block } = now.work;
  const [arranging, setArranging] = useState<Arranging | null>(null);
  const set = useStore(taken, (all) => all);
  const latest = useRef<{ readonly block: Block; readonly arranging: Arranging | null }>({ block, arranging });
  useLayoutEffect(() => {
    latest.current = { block, arranging };
  });
  const choosing = now.tool === 'choose';

  const fetched = useCallback(async (): Promise<Arranging | null> => {
    if (latest.current.arranging) return latest.current.arranging;
    try {
      const found = await fetchArranging();
      setArranging(found);
      return found;
    } catch {
      acts.alarm('The part of the app that arranges patches could not be fetched; check that the app is still being served and try again.');
      return null;
    }
  }, [acts]);

  const arranger = useMemo(() => arranging?.createArranger({ block: () => latest.current.block, acts }), [arranging, acts]);
  const ready = useRef(arranger);
  useLayoutEffect(() => {
    ready.current = arranger;
  });
  const handle = useCallback(
    (handling: Handling): void => {
      const doing = (): void => {
        if (ready.current) say(ready.current.handle(handling));
      };
      if (ready.current) doing();
      // Once it is there, it is made ready before the next task.
      else void fetched().then((found) => found && setTimeout(doing));
    },
    [fetched, say],
  );

  useEffect(() => {
    if (choosing) void fetched();
    return choosing ? letGo : undefined;
  }, [choosing, fetched]);

  useEffect(() => {
    const onCopy = (event: ClipboardEvent): void => {
      if (!choosing || !arranging || isElsewhere(event.target)) return;
      if (arranging.selectionIn(latest.current.block, taken.get()).length === 0) return;
      handle({ do: event.type === 'cut' ? 'cut' : 'copy' });
      const text = arranging.scrapText();
      if (text) event.clipboardData?.setData('text/plain', text);
      event.preventDefault();
    };
    const onPaste = (event: ClipboardEvent): void => {
      const text = event.clipboardData?.getData('text/plain') ?? '';
      if (isElsewhere(event.target) || (!scrap.get() && !text.trimStart().startsWith('{'))) return;
      handle({ do: 'paste', text });
      event.preventDefault();
    };
    document.addEventListener('copy', onCopy);
    document.addEventListener('cut', onCopy);
    document.addEventListener('paste', onPaste);
    return () => {
      document.removeEventListener('copy', onCopy);
      document.removeEventListener('cut', onCopy);
      document.removeEventListener('paste', onPaste);
    };
  }, [choosing, arranging, handle]);

  const chosen = useMemo(
    () => (arranging && choosing ? arranging.chosenIn(block, set) : NOTHING_CHOSEN),
    [arranging, choosing, block, set],
  );
  return { chosen, handle };
}

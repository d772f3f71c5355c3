import { useEffect, useState } from 'react';
import type { Block } from '../../block/block.ts';
import type { HouseStyle } from '../../pattern/house-style.ts';
import type { Pattern } from '../../pattern/pattern.ts';
import { useStore } from '../store.ts';
import { createPagesDesk, type Pages, type PagesDesk } from './pages-desk.ts';

/** What takes longer than this, in milliseconds, says that it is at work. */
const PATIENCE = 500;

/**
 * Has pages laid out of whatever the pattern is now.
 * @param pattern that of the block; null while it is worked out
 * @returns the desk, its pages, and whether newer ones have been waited for longer than half a second
 */
export function usePages(
  block: Block,
  pattern: Pattern | null,
  style: HouseStyle,
): { readonly desk: PagesDesk; readonly pages: Pages; readonly late: boolean } {
  const [desk] = useState(createPagesDesk);
  // In development effects run twice; a stopped desk opens its worker again.
  useEffect(() => () => desk.stop(), [desk]);
  useEffect(() => {
    if (pattern) desk.want({ block, pattern, style });
  }, [desk, block, pattern, style]);
  const pages = useStore(desk.pages, (all) => all);
  const waiting = pages.busy || pattern === null;
  const [late, setLate] = useState(false);
  useEffect(() => {
    if (!waiting) return setLate(false);
    const timer = setTimeout(() => setLate(true), PATIENCE);
    return () => clearTimeout(timer);
  }, [waiting]);
  return { desk, pages, late };
}

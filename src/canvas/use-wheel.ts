import { useEffect, type RefObject } from 'react';
import type { Glass } from './glass.ts';

/** How much nearer one pixel of a wheel brings the drawing, and the most that one turn of it may bring, as logarithms. */
const PER_PIXEL = 0.008;
const MOST = 0.24;
/** Pixels to a line, for wheels that count in lines. */
const LINE = 16;

/**
 * Lets a wheel move the drawing, and bring it nearer with Ctrl held, which is also how a pinch on a trackpad arrives. Where the drawing
 * cannot be moved any further the page is scrolled as ever.
 */
export function useWheel(element: RefObject<HTMLElement | null>, glass: Glass): void {
  useEffect(() => {
    const table = element.current;
    if (!table) return;
    const turn = (event: WheelEvent): void => {
      const pixels = event.deltaMode === WheelEvent.DOM_DELTA_LINE ? LINE : 1;
      const [dx, dy] = [event.deltaX * pixels, event.deltaY * pixels];
      if (event.ctrlKey || event.metaKey) {
        event.preventDefault();
        const box = table.getBoundingClientRect();
        const times = Math.exp(Math.min(MOST, Math.max(-MOST, -dy * PER_PIXEL)));
        glass.nearer(times, [event.clientX - box.left - table.clientLeft, event.clientY - box.top - table.clientTop]);
      } else if (glass.move(-dx, -dy)) {
        event.preventDefault();
      }
    };
    // Not passive: the page must not be scrolled or enlarged as well.
    table.addEventListener('wheel', turn, { passive: false });
    return () => table.removeEventListener('wheel', turn);
  }, [element, glass]);
}

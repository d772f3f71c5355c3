/** What a key asks of the glass over the table. */
export type ViewVerb =
  | { readonly verb: 'nearer' }
  | { readonly verb: 'farther' }
  | { readonly verb: 'whole' }
  | { readonly verb: 'move'; readonly dx: number; readonly dy: number };

const ARROWS: Readonly<Record<string, readonly [number, number]>> = {
  ArrowLeft: [1, 0],
  ArrowRight: [-1, 0],
  ArrowUp: [0, 1],
  ArrowDown: [0, -1],
};

/** @returns what a key asks of the glass while the table has the focus, or null; dx, dy: which way the drawing moves, the window goes the other */
export function viewVerb(event: Pick<KeyboardEvent, 'key' | 'ctrlKey' | 'metaKey' | 'altKey'>): ViewVerb | null {
  // Together with Ctrl these are the browser's own: they enlarge the page.
  if (event.ctrlKey || event.metaKey) return null;
  const { key } = event;
  const arrow = ARROWS[key];
  if (event.altKey) return arrow ? { verb: 'move', dx: arrow[0], dy: arrow[1] } : null;
  if (key === '+' || key === '=') return { verb: 'nearer' };
  if (key === '-' || key === '−' || key === '_') return { verb: 'farther' };
  return key === '0' ? { verb: 'whole' } : null;
}

/** What a key asks of the whole page, wherever on it the focus is. */
export type PageVerb = 'undo' | 'redo' | 'save' | 'save a copy' | 'open' | 'keys';

/** A key of the page. */
export interface PageKey {
  readonly verb: PageVerb;
  /** As the browser calls it, in lower case. */
  readonly key: string;
  /** With Ctrl, or Cmd where that is the key for it. */
  readonly command: boolean;
  /** null where the sign itself may need it. */
  readonly shift: boolean | null;
}

export const PAGE_KEYS: readonly PageKey[] = [
  { verb: 'undo', key: 'z', command: true, shift: false },
  { verb: 'redo', key: 'z', command: true, shift: true },
  { verb: 'redo', key: 'y', command: true, shift: false },
  { verb: 'save', key: 's', command: true, shift: false },
  { verb: 'save a copy', key: 's', command: true, shift: true },
  { verb: 'open', key: 'o', command: true, shift: false },
  { verb: 'keys', key: '?', command: false, shift: null },
];

/** @returns what a key asks of the page, null when it is none of the page's keys */
export function pageVerb(event: Pick<KeyboardEvent, 'key' | 'ctrlKey' | 'metaKey' | 'altKey' | 'shiftKey'>): PageVerb | null {
  if (event.altKey) return null;
  const pressed = event.key.toLowerCase();
  const command = event.ctrlKey || event.metaKey;
  const found = PAGE_KEYS.find((each) => each.key === pressed && each.command === command && (each.shift ?? event.shiftKey) === event.shiftKey);
  return found?.verb ?? null;
}

import { tableVerb, type TableVerb } from '../canvas/table-keys.ts';
import { viewVerb, type ViewVerb } from '../canvas/view-keys.ts';
import { CLOTH_TOOLS, SEWING_TOOLS, type ToolLine } from '../canvas/tool.ts';
import { CHOSEN_KEYS } from './selection/chosen-keys.ts';
import { PAGE_KEYS, type PageKey, type PageVerb } from './page-keys.ts';

/*
 * The sheet of keys. Which keys there are is asked of the very functions that obey them, so the sheet says nothing they do not do.
 */

/** One line of the sheet: keys that all do the same, and what that is. */
export interface KeyLine {
  readonly keys: readonly string[];
  readonly does: string;
}

export interface KeyGroup {
  readonly title: string;
  readonly lines: readonly KeyLine[];
}

type Pressed = Parameters<typeof tableVerb>[0];

const NAMES: Readonly<Record<string, string>> = {
  ArrowLeft: '←', ArrowRight: '→', ArrowUp: '↑', ArrowDown: '↓', ' ': 'Space', Escape: 'Esc', PageUp: 'Page ↑', PageDown: 'Page ↓',
};

/** Every key there is to press, as the browser calls it. */
const PRESSABLE: readonly string[] = [
  'ArrowLeft', 'ArrowRight', 'ArrowUp', 'ArrowDown', 'Home', 'End', 'PageUp', 'PageDown',
  ' ', 'Enter', 'Escape', 'Delete', 'Backspace', 'Tab', 'Insert',
  ...Array.from({ length: 94 }, (_, i) => String.fromCharCode(33 + i)).filter((sign) => sign === sign.toLowerCase()),
  ...Array.from({ length: 12 }, (_, i) => `F${i + 1}`),
];

/** Alone first; with Shift only where that asks for something else. */
const HELD: readonly Omit<Pressed, 'key'>[] = [
  { shiftKey: false, ctrlKey: false, metaKey: false, altKey: false },
  { shiftKey: true, ctrlKey: false, metaKey: false, altKey: false },
  { shiftKey: false, ctrlKey: true, metaKey: false, altKey: false },
  { shiftKey: true, ctrlKey: true, metaKey: false, altKey: false },
  { shiftKey: false, ctrlKey: false, metaKey: false, altKey: true },
];

/** @returns "Shift+T", "Ctrl+S" or, on a Mac, "⌘S" */
function keyName(key: string, command: boolean, shift: boolean, alt: boolean, mac: boolean): string {
  const name = NAMES[key] ?? (key.length === 1 ? key.toUpperCase() : key);
  if (mac) return `${alt ? '⌥' : ''}${shift ? '⇧' : ''}${command ? '⌘' : ''}${name}`;
  return [...(command ? ['Ctrl'] : []), ...(alt ? ['Alt'] : []), ...(shift ? ['Shift'] : []), name].join('+');
}

/** @returns what a verb of the table does, in words; verbs of the same words share a line */
function tableWords(asked: TableVerb): string | null {
  switch (asked.verb) {
    case 'move': return asked.half ? 'Move the patches in the hand by half a cell' : 'To the next cell or corner; with patches in the hand, move them';
    case 'edge': return 'To the edge of the block';
    case 'use': return 'Use the tool here: lay, fill, pick up, set a corner';
    case 'close': return 'Close the outline; take the chosen patches in the hand, or let them go; else as Space';
    case 'cancel': return 'Drop what was begun';
    case 'erase': return 'Take the cloth up, back to the ground';
    case 'symmetry': return asked.by === 1 ? 'The next symmetry' : 'The symmetry before';
    case 'turn': return asked.by === 1 ? 'Turn the shape, or the patches in the hand, clockwise' : 'Turn it the other way';
    case 'fabric': return 'Take up the first fabric, the second …';
    // The tools have groups of their own.
    case 'take': return null;
  }
}

/** @returns what a verb of the glass over the table does, in words */
function viewWords(asked: ViewVerb): string {
  switch (asked.verb) {
    case 'nearer': return 'Nearer';
    case 'farther': return 'Farther';
    case 'whole': return 'The whole block';
    case 'move': return 'Look at another part';
  }
}

/**
 * @param words what a key does, null where it does nothing that is listed
 * @returns the keys that do something, by what they do; of more than four in a row that do alike, the first and the last
 */
function linesOf(words: (pressed: Pressed) => string | null, mac: boolean): KeyLine[] {
  const lines = new Map<string, string[]>();
  for (const key of PRESSABLE) {
    const said = new Set<string>();
    for (const held of HELD) {
      const does = words({ key, ...held });
      if (does === null || said.has(does)) continue;
      said.add(does);
      lines.set(does, [...(lines.get(does) ?? []), keyName(key, held.ctrlKey, held.shiftKey, held.altKey, mac)]);
    }
  }
  return [...lines].map(([does, keys]) => ({ does, keys: keys.length > 4 ? [`${keys[0]} to ${keys.at(-1)}`] : keys }));
}

/** @returns the words of a verb where there is one */
const of = <V,>(words: (verb: V) => string | null, asked: V | null): string | null => (asked === null ? null : words(asked));

const toolLines = (tools: readonly ToolLine[]): KeyLine[] => tools.map(({ key, name, does }) => ({ keys: [key], does: `${name}. ${does}` }));

const chosenLines = (mac: boolean): KeyLine[] => CHOSEN_KEYS.map(({ key, does }) => ({ keys: [keyName(key, true, false, false, mac)], does }));

const PAGE_WORDS: Readonly<Record<PageVerb, string>> = {
  undo: 'Undo',
  redo: 'Do again what was undone',
  save: 'Save to the file of this drawing',
  'save a copy': 'Save to another file',
  open: 'Open a file',
  keys: 'This sheet of keys',
};

function pageLines(keys: readonly PageKey[], mac: boolean): KeyLine[] {
  const lines = new Map<string, string[]>();
  for (const { verb, key, command, shift } of keys) {
    lines.set(PAGE_WORDS[verb], [...(lines.get(PAGE_WORDS[verb]) ?? []), keyName(key, command, shift === true, false, mac)]);
  }
  return [...lines].map(([does, names]) => ({ does, keys: names }));
}

/** @returns all keys, group by group. @param mac whether to call them as on a Mac */
export const keyGroups = (mac: boolean): readonly KeyGroup[] => [
  { title: 'On the drawing table', lines: linesOf((pressed) => of(tableWords, tableVerb(pressed)), mac) },
  { title: 'Tools for cloth', lines: toolLines(CLOTH_TOOLS) },
  { title: 'Tools for sewing', lines: toolLines(SEWING_TOOLS) },
  { title: 'With the tool Choose', lines: chosenLines(mac) },
  { title: 'Looking', lines: linesOf((pressed) => of(viewWords, viewVerb(pressed)), mac) },
  { title: 'Anywhere', lines: pageLines(PAGE_KEYS, mac) },
];

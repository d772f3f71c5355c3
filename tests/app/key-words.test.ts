import { describe, expect, it } from 'vitest';
import { keyGroups, type KeyLine } from '../../src/app/key-words.ts';
import { PAGE_KEYS, pageVerb } from '../../src/app/page-keys.ts';
import { tableVerb } from '../../src/canvas/table-keys.ts';
import { TOOLS } from '../../src/canvas/tool.ts';

const lines = (mac = false): readonly KeyLine[] => keyGroups(mac).flatMap((group) => group.lines);
const keysOf = (does: RegExp, mac = false): readonly string[] => lines(mac).filter((line) => does.test(line.does)).flatMap(({ keys }) => keys);
const press = (key: string, held: Partial<KeyboardEvent> = {}) => ({
  key, ctrlKey: false, metaKey: false, altKey: false, shiftKey: false, ...held,
});

describe('the sheet of keys', () => {
  it('has every tool by the key that takes it up', () => {
    for (const { key, name, tool } of TOOLS) {
      expect(keysOf(new RegExp(`^${name}\\.`)), name).toEqual([key]);
      expect(tableVerb(press(key.toLowerCase())), name).toEqual({ verb: 'take', tool });
    }
  });

  it('says what the table does at each key that it obeys', () => {
    const named = new Set(lines().flatMap(({ keys }) => keys));
    for (const key of ['ArrowLeft', 'Home', ' ', 'Enter', 'Escape', 'Delete', 't']) expect(tableVerb(press(key)), key).not.toBeNull();
    for (const name of ['←', 'Home', 'Space', 'Enter', 'Esc', 'Delete', 'T', 'Shift+T', '1 to 9']) expect(named, name).toContain(name);
  });

  it('has every key of the page, on a Mac by its own signs', () => {
    expect(keysOf(/^Save to the file/)).toEqual(['Ctrl+S']);
    expect(keysOf(/^Save to the file/, true)).toEqual(['⌘S']);
    expect(keysOf(/^Do again/, true)).toEqual(['⇧⌘Z', '⌘Y']);
    expect(keysOf(/sheet of keys/)).toEqual(['?']);
    const verbs = new Set(PAGE_KEYS.map(({ verb }) => verb));
    expect(keyGroups(false).at(-1)!.lines).toHaveLength(verbs.size);
  });

  it('does not say one thing twice', () => {
    const all = lines().flatMap(({ keys }) => keys);
    expect(all.length).toBe(new Set(all).size);
  });
});

describe('a key of the page', () => {
  it('is obeyed with Ctrl or with Cmd, and not with Alt', () => {
    expect(pageVerb(press('s', { ctrlKey: true }))).toBe('save');
    expect(pageVerb(press('S', { metaKey: true, shiftKey: true }))).toBe('save a copy');
    expect(pageVerb(press('s', { ctrlKey: true, altKey: true }))).toBeNull();
    expect(pageVerb(press('s'))).toBeNull();
    // Where the sign needs Shift, and where it does not.
    expect(pageVerb(press('?', { shiftKey: true }))).toBe('keys');
    expect(pageVerb(press('?'))).toBe('keys');
  });
});

/** Where a text stops being JSON. */
export interface JsonFault {
  /** Counted from 1. */
  readonly line: number;
  /** The first word or sign that does not belong there; empty at the end of the text. */
  readonly found: string;
}

const SPACE = /[ \t\n\r]*/y;
const VALUE = /"(?:[^"\\\u0000-\u001f]|\\(?:["\\/bfnrt]|u[0-9a-fA-F]{4}))*"|-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?|true|false|null/y;
const WORD = /[\w.+-]{1,20}|[^]?/uy;

/**
 * Finds where a text that JSON.parse refuses goes wrong. Engines word this differently or not at all, so it is looked
 * for here, by walking the text once.
 */
export function jsonFault(text: string): JsonFault {
  let at = 0;
  const take = (pattern: RegExp): string | null => {
    pattern.lastIndex = at;
    const found = pattern.exec(text);
    if (found !== null) at = pattern.lastIndex;
    return found && found[0];
  };
  const sign = (wanted: string): boolean => {
    take(SPACE);
    if (text[at] !== wanted) return false;
    at++;
    return true;
  };
  const key = (): boolean => {
    take(SPACE);
    return text[at] === '"' && take(VALUE) !== null && sign(':');
  };
  /** What closes each list or object that is still open. */
  const closers: string[] = [];
  let expecting = true;
  for (;;) {
    const closer = closers.at(-1);
    if (expecting) {
      const opened = sign('{') ? '}' : sign('[') ? ']' : null;
      if (opened === null) {
        if (take(VALUE) === null) break;
        expecting = false;
      } else if (sign(opened)) {
        expecting = false;
      } else {
        closers.push(opened);
        if (opened === '}' && !key()) break;
      }
    } else if (closer !== undefined && sign(closer)) {
      closers.pop();
    } else if (closer === undefined || !sign(',')) {
      break;
    } else {
      if (closer === '}' && !key()) break;
      expecting = true;
    }
  }
  take(SPACE);
  return { line: text.slice(0, at).split('\n').length, found: take(WORD) ?? '' };
}

import { refused } from '../block/problems.ts';
import { good, type Result } from '../measure/problem.ts';
import { jsonFault } from './json-text.ts';
import { notJson } from './shape-problems.ts';

/** What somebody's JSON says it is, before anything else of it is looked at: a file from elsewhere or from later has a shape of its own. */
export interface JsonContent {
  readonly content: unknown;
  readonly format: unknown;
  readonly version: unknown;
}

/** @returns what is written in a text, or where it stops being JSON */
export function readJson(text: string): Result<JsonContent> {
  // Some editors begin a file with a byte order mark.
  const json = text.startsWith('\ufeff') ? text.slice(1) : text;
  let content: unknown;
  try {
    content = JSON.parse(json);
  } catch {
    return refused(notJson(jsonFault(json)));
  }
  const { format, version } = (typeof content === 'object' && content !== null ? content : {}) as Record<string, unknown>;
  return good({ content, format, version });
}

import { inRuns, likeness, type Vocabulary } from './naming.ts';
import type { Rows } from './phrases/assembly.ts';
import type { Lying } from './phrases/pressing.ts';
import { ranges } from './pressing/ranges.ts';
import { different } from './sentences.ts';
import type { Pressed } from './step.ts';
import { rowsOf, type Laid } from './web.ts';

/** @returns what to lay out and how to sew it, column onto column */
export function webWords(step: Laid, words: Vocabulary): string {
  const rows = rowsOf(step);
  const told = together(rows, (row) => row.map((part) => likeness(part, words)).join());
  return words.phrases.assembly.web(
    told.map(({ rows: which, what }) => ({ rows: which, what: inRuns(what, words) })),
    rows[0]!.length,
  );
}

/** @returns how the rows are pressed, and then the long seams */
export function webPressing(step: Laid, pressed: readonly Pressed[], words: Vocabulary): string {
  const rows = rowsOf(step);
  const across = rows.map((row, r) => row.slice(1).map((_, c) => SIDE[pressed[c * rows.length + r]!]));
  const told = together(across, (row) => row.join()).map((each) => ({ ...each, what: lying(each.what) }));
  return words.phrases.assembly.pressWeb(told, lying(pressed.slice(step.parts.length - rows.length).map((way) => LONG[way])));
}

const SIDE: Readonly<Record<Pressed, 'open' | 'left' | 'right'>> = { first: 'left', second: 'right', open: 'open' };
const LONG: Readonly<Record<Pressed, 'open' | 'top' | 'bottom'>> = { first: 'top', second: 'bottom', open: 'open' };

const lying = <Way>(ways: readonly Way[]): readonly Lying<Way>[] =>
  different(ways).map((way) => ({ way, seams: ranges(ways.flatMap((each, i) => (each === way ? [i + 1] : []))) }));

/** @returns rows that are alike together, by their numbers from 1 */
function together<Row>(rows: readonly Row[], keyOf: (row: Row) => string): readonly Rows<Row>[] {
  const keys = rows.map(keyOf);
  return different(keys).map((key) => ({
    rows: ranges(keys.flatMap((each, i) => (each === key ? [i + 1] : []))),
    what: rows[keys.indexOf(key)]!,
  }));
}

import type { Step, StepPart } from './step.ts';

/* A block whose rows hang together by uncut threads before the long seams are sewn. */

export type Laid = Pick<Step, 'kind' | 'parts' | 'joins'>;

/** @returns whether a step joins rows that are no units of their own */
export const isWebStep = ({ kind, parts, joins }: Laid): boolean =>
  (kind === 'joined unit' || kind === 'block') && joins.some(({ second }) => second >= parts.length);

/** @returns the parts of a web row by row; it lays them down in that order */
export function rowsOf({ parts, joins }: Laid): readonly (readonly StepPart[])[] {
  const rows = 1 + joins.filter(({ second }) => second >= parts.length).length;
  const columns = parts.length / rows;
  return Array.from({ length: rows }, (_, row) => parts.slice(row * columns, (row + 1) * columns));
}

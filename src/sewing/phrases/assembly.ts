import type { Some } from './joins.ts';
import type { Lying } from './pressing.ts';
import type { Run } from './said.ts';

/** Rows that are alike, by their numbers from the top. */
export interface Rows<What> {
  readonly rows: readonly Run[];
  readonly what: What;
}

/** What is said of a block whose rows hang together by uncut threads before its long seams are sewn. */
export interface AssemblyPhrases {
  /** A block that is sewn column onto column, the thread uncut, so that its rows hang together before the long seams. */
  readonly web: (rows: readonly Rows<readonly Some[]>[], columns: number) => string;
  /** How the rows of a web are pressed, seams counted from the left, and then its long seams, counted from the top. */
  readonly pressWeb: (rows: readonly Rows<readonly Lying<'open' | 'left' | 'right'>[]>[], long: readonly Lying<'open' | 'top' | 'bottom'>[]) => string;
}

import type { Count } from '../../block/counting.ts';
import type { Some } from './joins.ts';
import type { Lying } from './pressing.ts';
import type { Run } from './said.ts';

/** Rows that are alike, by their numbers from the top. */
export interface Rows<What> {
  readonly rows: readonly Run[];
  readonly what: What;
}

/** What is said where units are fed through the machine one after another. */
export interface AssemblyPhrases {
  /** A block that is sewn column onto column, the thread uncut, so that its rows hang together before the long seams. */
  readonly web: (rows: readonly Rows<readonly Some[]>[], columns: number) => string;
  /** How the rows of a web are pressed, seams counted from the left, and then its long seams, counted from the top. */
  readonly pressWeb: (rows: readonly Rows<readonly Lying<'open' | 'left' | 'right'>[]>[], long: readonly Lying<'open' | 'top' | 'bottom'>[]) => string;
  /**
   * How what is told piece by piece is sewn onto foundations.
   * @param sections by their letters, with the numbers of their pieces; `single`: one piece, which needs no foundation
   */
  readonly foundations: (sections: readonly { readonly letter: string; readonly pieces: readonly Run[]; readonly single: boolean }[]) => string;
  /**
   * How many of a unit are sewn in a chain.
   * @param seams one seam each; a seam on both sides of a line, which is then cut; several, one after another
   * @param explained whether a step before has told what that is
   */
  readonly chain: (count: Count, seams: 'one' | 'both sides' | 'several', explained: boolean) => string;
}

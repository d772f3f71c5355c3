import type { Run, Side } from './said.ts';

/** Where both allowances of a seam are pressed. */
export type Toward = 'open' | 'to one side' | { readonly cloth: string };

/** What custom presses outward. */
export type Outward =
  /** Strips or arms round a centre. */
  | 'round'
  /** The small triangles of a goose. */
  | 'small triangles'
  | 'corners'
  /** The side triangles of a peak. */
  | 'side triangles'
  /** Pieces sewn on one after another. */
  | 'sewn on'
  /** Other pieces, in which seams cross. */
  | 'crossing';

/** Seams by their numbers, and how they lie. */
export interface Lying<Way> {
  readonly seams: readonly Run[];
  readonly way: Way;
}

/** How seams are pressed, a sentence each. */
export interface PressingPhrases {
  readonly flat: string;
  readonly seam: (toward: Toward) => string;
  /** @param first how the first seams lie, each way once */
  readonly hourglass: (first: readonly Toward[], last: 'open' | 'to one side') => string;
  readonly split: (short: Toward, long: 'open' | 'toward' | 'away') => string;
  /** Every seam as custom has it. @param seams how many there are */
  readonly outward: (what: Outward, seams: number) => string;
  /** Every seam, and otherwise. */
  readonly otherwise: (what: Outward, way: 'open' | 'inward', seams: number) => string;
  /** Each seam as it lies; they are counted as they are sewn. */
  readonly each: (what: Outward, lying: readonly Lying<'open' | 'outward' | 'inward'>[]) => string;
  /** The seams of a row or column: toward a unit or cloth; toward what is cut in one piece. */
  readonly toward: (name: string, seams: number) => string;
  readonly towardPlain: string;
  readonly oneWay: (way: 'open' | Side, seams: number) => string;
  readonly middle: (way: 'toward' | 'away') => string;
  readonly counted: (from: 'left' | 'top', lying: readonly Lying<'open' | Side>[]) => string;
}

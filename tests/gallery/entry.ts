import type { Cloth, Sheet, SewnKind } from './sheet.ts';

/** One block of the gallery: how it is sewn, how it is painted, and the counts known by heart, which must agree with the sheet. */
export interface Entry {
  /** The name of its two files. */
  readonly file: string;
  readonly name: string;
  /** Finished width and height in inches. */
  readonly finished: readonly [string, string];
  readonly sheet: Sheet;
  readonly ground: string;
  /** One line: why it is sewn so. */
  readonly note: string;
  readonly patches: number;
  readonly units: Partial<Record<SewnKind | 'partial-seam ring', number>>;
  readonly partialSeams?: number;
  /** How many grid steps of the file go to one step of the sheet, across and down. */
  readonly finer?: number;
  /** pieces: each piece a patch (default); cells: plain pieces painted cell by cell, as with a brush; all: the ground painted too. */
  readonly paint?: 'pieces' | 'cells' | 'all';
  /** The areas as painted, one over the other, where that differs from piece by piece; sheet steps. */
  readonly painted?: readonly Cloth[];
  /** What the trade leaves open and no test should compare. */
  readonly open?: readonly ('units' | 'plain')[];
}

/** @returns a painted rectangle */
export const area = (fabric: string, x: number, y: number, w: number, h: number): Cloth => ({
  fabric,
  points: [[x, y], [x + w, y], [x + w, y + h], [x, y + h]],
});

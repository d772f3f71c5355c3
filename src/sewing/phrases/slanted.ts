import type { Diagonal, Pieces, Place, Thing } from './said.ts';

/** A part, where it lies, and along which diagonal its rectangle is cut; null where it is not cut from one. */
export interface SlantedPart {
  readonly thing: Thing;
  readonly place: Place;
  readonly cut: Diagonal | null;
}

/** Numbered things sewn one after another: `second` to `first`, then the others; what is already one is told from its first number to its last. */
export interface Sewn {
  readonly first: string;
  readonly second: string;
  readonly then: readonly string[];
}

/** How units are made of slanted pieces: half-rectangle triangles, peaks, free units. */
export interface SlantedPhrases {
  /** @param cut null where they are not cut from rectangles */
  readonly halfRectangles: (triangles: readonly Pieces[], seam: string, cut: Diagonal | null) => string;
  /** A middle triangle, and one at each of its slopes; `place` tells which slope. */
  readonly peak: (middle: Thing, one: SlantedPart, other: SlantedPart, seam: string) => string;
  /** The point ends so far inside the raw edge. */
  readonly pointEnds: (seam: string) => string;
  /** Rounds of four triangles: all alike, or each with its side. */
  readonly rounds: (centre: Thing, rounds: readonly (Pieces | readonly SlantedPart[])[]) => string;
  /** Pieces laid out and numbered in their order. @param order how they are sewn, a sentence or more after it */
  readonly layOut: (parts: readonly SlantedPart[]) => string;
  readonly sewInOrder: (order: readonly Sewn[]) => string;
  readonly templatesLie: string;
}

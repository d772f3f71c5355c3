import type { Pairs } from './half-squares.ts';
import type { Piece, Pieces } from './said.ts';

/** Half-square triangles on the way to something else. */
export interface Halves {
  /** What the trade calls them, many of them. */
  readonly kind: string;
  /** They come out a little larger than squares of that side; null where that is nothing. */
  readonly over: string | null;
  readonly seam: string;
}

/** What lies left and right in a half of an hourglass whose long side is below; 'one cloth' where a half is of one cloth. */
export type HalvesLie =
  | { readonly lie: 'one cloth'; readonly one: string; readonly other: string }
  | { readonly lie: 'alike'; readonly left: string; readonly right: string }
  | { readonly lie: 'two'; readonly first: readonly [string, string]; readonly second: readonly [string, string] };

/** How quarter-square triangles are made, and split ones; seams that lie opposite ways nest, others are only matched. */
export interface QuarterSquarePhrases {
  /** Of two cloths: half-square triangles of one sort, crossed in twos. */
  readonly hourglasses: (pairs: Pairs, halves: Halves, seams: 'nested' | 'matched') => string;
  /**
   * Of two sorts of half-square triangles: first pairs and second pairs.
   * @param round the cloths of a unit clockwise; the fourth comes to lie on the first, and the third on the second
   * @param mirrored whether the two units of each two are mirror images of each other, so that one of them alone is used
   */
  readonly crossed: (
    first: Pairs,
    second: Pairs,
    halves: Halves,
    seams: 'nested' | 'matched',
    round: readonly [string, string, string, string],
    mirrored: boolean,
  ) => string;
  readonly fromTriangles: (triangles: readonly Pieces[], lie: HalvesLie) => string;
  /** Split: half-square triangles crossed with large squares; of mirror images it is told which one is meant. */
  readonly split: (
    pairs: Pairs,
    halves: Halves,
    large: Piece,
    mirrored: { readonly left: string; readonly right: string; readonly large: string } | null,
  ) => string;
  /** @param left the cloth on the left when the long side of two small ones is below; null where both are of one cloth */
  readonly splitFromTriangles: (small: readonly Pieces[], left: string | null, large: readonly Pieces[]) => string;
}

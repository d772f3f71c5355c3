import type { Count } from '../../block/counting.ts';
import type { Piece, Pieces } from './said.ts';

/** Squares that are laid on each other in pairs. */
export interface Pairs {
  /** How many of each, or of the one cloth where both are of it; null where they serve other units too, and are not counted here. */
  readonly count: Count | null;
  readonly one: Piece;
  /** null where both squares are of one cloth. */
  readonly other: Piece | null;
  /** Whether they make a single pair. */
  readonly single: boolean;
}

/** How half-square triangles are made. `spare` is how many units come out beyond those that are needed, null where none. */
export interface HalfSquarePhrases {
  /** Sewn on both sides of one diagonal: 2 units from each pair. */
  readonly twoAtATime: (pairs: Pairs, seam: string, spare: Count | null) => string;
  /** Sewn on both sides of both diagonals: 8 units from each pair. */
  readonly eightAtATime: (pairs: Pairs, seam: string, spare: Count | null) => string;
  readonly fromTriangles: (triangles: readonly Pieces[]) => string;
}

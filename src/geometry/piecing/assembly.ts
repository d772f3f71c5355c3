import type { Point } from '../point.ts';
import type { AssemblyOrder } from './order.ts';
import type { Way } from './way.ts';

/** The trade's names for sewn units; a mirror image counts as a different unit of the same kind. */
export type UnitKind =
  | 'square'
  | 'rectangle'
  | 'half-square triangle'
  | 'quarter-square triangle'
  | 'split quarter-square triangle'
  | 'flying geese'
  | 'corner-triangle unit'
  | 'square in a square'
  | 'half-rectangle triangle'
  | 'peak'
  | 'joined unit'
  | 'partial-seam ring'
  | 'free unit';

/** One cut piece of cloth, finished (without allowance), where it lies in the block. */
export interface Piece {
  readonly id: number;
  readonly fabric: string;
  /** Convex, clockwise as seen on screen (y down), no three corners on a line; lattice steps from the block's top-left corner. */
  readonly outline: readonly Point[];
  /** Indices into the drawing's patches that show in this piece; −1 is the ground. */
  readonly patches: readonly number[];
}

/** A straight seam between two points of the block. `partial`: sewn in two goes, first only part of the way. */
export interface SewnSeam {
  readonly from: Point;
  readonly to: Point;
  readonly partial?: boolean;
}

/**
 * The sewing order as a tree: a leaf is a piece, a node is what its parts become.
 * seams[i] joins parts[i + 1] to what parts[0..i] have become; in a partial-seam ring parts[0] is the centre,
 * parts[1..] go round it, and seams[0] is partial: it is finished after the last part is on.
 */
export interface Assembly {
  /** Convex, clockwise as seen on screen, lattice steps in the block. */
  readonly outline: readonly Point[];
  /** Only on a leaf: the piece. */
  readonly piece?: Piece;
  /** Only on a named unit; a bare sub-assembly inside a unit has none. */
  readonly kind?: UnitKind;
  readonly parts: readonly Assembly[];
  readonly seams: readonly SewnSeam[];
}

/** All the places of the block where the same unit is sewn (congruent up to quarter turns, same fabrics, same seams). */
export interface Unit {
  /** A, B, … Z, AA, …: smallest first. */
  readonly id: string;
  readonly kind: UnitKind;
  /** The same for congruent units of any block: a stable name for choices that must survive a change of the drawing. */
  readonly key: string;
  /** The first is the one the instructions describe; turn = quarter turns clockwise from it to this one. */
  readonly places: readonly { readonly assembly: Assembly; readonly turn: 0 | 1 | 2 | 3 }[];
}

export interface Figures {
  readonly pieces: number;
  readonly seams: number;
  readonly partialSeams: number;
  /** Seams that no straight sewing can avoid; 0 unless `whole` patches lock each other. */
  readonly setInSeams: number;
  readonly units: number;
  readonly differentUnits: number;
  /** Pieces that no ruler cuts: they need a printed template. */
  readonly templates: number;
  /** Points where seams from both sides of a seam must meet. */
  readonly matchedPoints: number;
  /**
   * Only of the way with the fewest pieces: none by straight through-seams along drawn lines has fewer than this.
   * Equal to `pieces`: proved least.
   */
  readonly bound?: number;
}

/** One way to sew the block. */
export interface Piecing {
  readonly way: Way;
  readonly root: Assembly;
  readonly pieces: readonly Piece[];
  /** Named units except plain squares and rectangles, smallest first, the block itself last and not among them. */
  readonly units: readonly Unit[];
  readonly figures: Figures;
  /** Where its units are put together in another order than the way was found in: which, and how it was found. */
  readonly reassembled?: { readonly order: AssemblyOrder; readonly found: Assembly };
  /** Where seams run through one cloth, though nothing is drawn there, in lattice steps. */
  readonly divisions: readonly { readonly from: Point; readonly to: Point }[];
}

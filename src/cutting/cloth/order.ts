import type { Rational } from '../../measure/rational.ts';
import type { ClothSource } from '../layout.ts';

/** Equal pieces to be cut from one fabric. */
export interface Wanted {
  /** Id of the line of the cutting list. */
  readonly cut: string;
  /** Across and along the cloth where it must lie as given; either way round where it may be turned. */
  readonly width: Rational;
  readonly height: Rational;
  readonly count: number;
  readonly turn: boolean;
}

/** Everything that decides how one fabric is cut, as plain data; lengths in the block's unit. */
export interface ClothOrder {
  readonly wanted: readonly Wanted[];
  /** What the maker has, in the order in which it is used. */
  readonly own: readonly ClothSource[];
  /** What is bought beyond that. */
  readonly bought: ClothSource;
  /** No strip is longer than this or than the longest piece: a ruler reaches no further when a strip is cut across. */
  readonly reach: Rational;
}

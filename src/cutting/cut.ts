import type { Rational } from '../measure/rational.ts';
import type { Surd } from '../measure/surd.ts';
import type { Point } from '../geometry/point.ts';

/**
 * What a cut piece does in its unit; with the unit's method it says how the cut becomes finished patches.
 * plain: sewn as cut. pair: one of two squares sewn on both sides of a diagonal. eight: one of two squares sewn along both diagonals.
 * half: a triangle from a square or rectangle cut once diagonally. quarter: a triangle from a square cut twice.
 * base: what corners are flipped onto. corner: a square flipped onto a corner. large, small: the squares of four geese at a time.
 * template: cut round a printed outline.
 */
export type Role = 'plain' | 'pair' | 'eight' | 'half' | 'quarter' | 'base' | 'corner' | 'large' | 'small' | 'template';

export interface CutUse {
  /** Unit id, or 'block' where the piece goes into the block as it is. */
  readonly unit: string;
  readonly role: Role;
  /** Squares, rectangles or templates of this line that go to this unit, over all blocks. */
  readonly quantity: number;
}

/** One line of the cutting list. Lengths in the block's unit. */
export interface Cut {
  /** Names the line: "1", "2", …, in cutting order within the whole list. */
  readonly id: string;
  readonly fabric: string;
  /** Squares, rectangles or templates as cut, before any diagonal cut, over all blocks. */
  readonly quantity: number;
  readonly shape: 'square' | 'rectangle' | 'template';
  /** Rounded up to the ruler; width ≤ height. For a template the rectangle that holds it. */
  readonly width: Rational;
  readonly height: Rational;
  /** What width and height are before rounding up, trim included; for a template null. */
  readonly exact: { readonly width: Surd; readonly height: Surd } | null;
  readonly subcut: 'none' | 'once' | 'twice';
  /**
   * Only on rectangles cut once: how many of the quantity are cut along each diagonal, right side up, standing on the short side;
   * falling runs from the top left to the bottom right. The two give mirror-image triangles.
   */
  readonly diagonals?: { readonly falling: number; readonly rising: number };
  readonly uses: readonly CutUse[];
  /** Triangles or units this line yields beyond what the blocks need. */
  readonly spare: number;
  /** Finished outline of a template, in lattice steps, moved by whole steps so that its box starts in the first one: at 0, 0 if it can. */
  readonly template: readonly Point[] | null;
  /** Ids of the block's pieces that come from this line. */
  readonly pieces: readonly number[];
}

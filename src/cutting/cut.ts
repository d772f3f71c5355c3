import type { Rational } from '../measure/rational.ts';
import type { Surd } from '../measure/surd.ts';
import type { Point } from '../geometry/point.ts';

/**
 * What a cut piece does in its unit; with the unit's method it says how the cut becomes finished patches.
 * plain: sewn as cut. pair: one of two squares sewn on both sides of a diagonal. eight: one of two squares sewn along both diagonals.
 * half: a triangle from a square or rectangle cut once diagonally. quarter: a triangle from a square cut twice.
 * base: what corners are flipped onto. corner: a square flipped onto a corner. large, small: the squares of four geese at a time.
 * strip-half, strip-quarter: the same triangles cut head to tail from a strip. template: cut round a printed outline.
 * strip: a strip sewn to others along its length, and cut across with them into units.
 */
export type Role =
  | 'plain'
  | 'pair'
  | 'eight'
  | 'half'
  | 'quarter'
  | 'strip-half'
  | 'strip-quarter'
  | 'base'
  | 'corner'
  | 'large'
  | 'small'
  | 'template'
  | 'strip';

/** How triangles come out of one strip: see `from-strips.ts`. */
export interface NestedTriangles {
  /** half: every second cut is straight across, the others slanted by 45°; quarter: every cut is slanted. */
  readonly form: 'half' | 'quarter';
  /** How many triangles one strip gives. */
  readonly triangles: number;
  /** What is measured for each triangle, along one edge of the strip and the other by turns, on the ruler. */
  readonly measure: Rational;
}

/** How long strips, sewn side by side, become units: see `strip-sets.ts`. */
export interface StripSet {
  /** How wide a strip is cut, and how long: its line's width and height, whichever is the longer. */
  readonly across: Rational;
  readonly length: Rational;
  /** How many units are cut from a set, and how wide each of them is cut; `exact`: before rounding up to the ruler. */
  readonly segments: number;
  readonly segment: Rational;
  readonly exact: Surd;
  /** How many of the strips run down the block where their unit is described; the others run across it. */
  readonly down: number;
}

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
  /** Cut diagonally once or twice; or a strip, `width` high and `height` long, cut into triangles that lie head to tail. */
  readonly subcut: 'none' | 'once' | 'twice' | 'head to tail';
  /** Only on strips cut head to tail. */
  readonly nested?: NestedTriangles;
  /** Only on strips for strip sets. */
  readonly set?: StripSet;
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

import type { Hand } from '../../cutting/shapes.ts';

/*
 * What the phrases of sewing speak of. Everything measured, counted or named comes as the text it has in the sentence (see `Telling`):
 * printed, or kept alive. What a phrase decides, it decides by the numbers and words here that are no text of the sentence.
 */

/** The side of a square, or width and height; of two the first is said without its unit. */
export type Size = readonly [string] | readonly [string, string];

/** What pieces of one line of the cutting list are, by how they are cut. */
export type Shape =
  | { readonly form: 'square' | 'rectangle'; readonly size: Size }
  /** Triangles from squares or rectangles of that size. */
  | { readonly form: 'triangle'; readonly from: 'square' | 'rectangle'; readonly size: Size; readonly cut: 'once' | 'twice' }
  /** Triangles that lie head to tail in strips so high. */
  | { readonly form: 'strip triangle'; readonly strip: string }
  /** Cut round the template of that line. */
  | { readonly form: 'template'; readonly cut: string };

/** A piece of cloth. */
export interface Piece {
  readonly cloth: string;
  readonly shape: Shape;
}

/** Pieces of one shape, in one or several cloths. */
export interface Pieces {
  readonly cloths: readonly string[];
  readonly shape: Shape;
}

/** What is laid down before sewing: a piece, or a unit, so many quarter turns clockwise from how it was made. */
export type Thing = Piece | { readonly unit: string; readonly turn: 0 | 1 | 2 | 3 };

export type Side = 'top' | 'right' | 'bottom' | 'left';
export type Corner = 'top left' | 'top right' | 'bottom right' | 'bottom left';
export type Place = Side | Corner | 'middle';

/** Along which diagonal a rectangle is cut that lies right side up, standing on its short side. */
export type Diagonal = Hand;

/** Numbers that follow one another, from … to. */
export type Run = readonly [number, number];

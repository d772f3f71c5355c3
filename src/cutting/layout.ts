import type { Rational } from '../measure/rational.ts';

/*
 * How the pieces of one fabric are cut from cloth: by straight cuts right across, as a rotary cutter works. A sheet of cloth is cut
 * across its width into strips, a strip across into columns, a column into pieces; what is still too wide is trimmed. All lengths are in
 * the block's unit. Across the cloth is its width (from selvage to selvage), along the cloth its length.
 */

/** How cloth is bought: by the length, in precut pieces of one size, or not at all: it is what the maker has. */
export type ClothForm = 'by length' | 'fat quarter' | 'fat eighth' | 'precut strip' | 'precut square' | 'own';

/** Cloth to cut from. */
export interface ClothSource {
  readonly form: ClothForm;
  /** Usable, across the cloth. */
  readonly width: Rational;
  /** Along the cloth; null where as much is bought as is needed. */
  readonly length: Rational | null;
  /** How many there are; null where as many are bought as are needed. */
  readonly count: number | null;
}

/** Equal pieces one below another in a column. */
export interface LaidPieces {
  /** Id of the line of the cutting list. */
  readonly cut: string;
  /** Of one piece, across and along the cloth. */
  readonly width: Rational;
  readonly length: Rational;
  readonly count: number;
}

/** A part of a strip, cut across the strip. */
export interface LaidColumn {
  /** Across the cloth: that of its widest piece. */
  readonly width: Rational;
  /** From the strip's upper edge down; what is left over lies at the lower edge. */
  readonly pieces: readonly LaidPieces[];
  /** How many such columns lie side by side. */
  readonly times: number;
}

/** A strip right across the cloth. */
export interface LaidStrip {
  /** Along the cloth: that of its longest column. */
  readonly length: Rational;
  /** From one end on; what is left over lies at the other end. */
  readonly columns: readonly LaidColumn[];
  /** How many such strips are cut, one after another. */
  readonly times: number;
}

/** One piece of cloth and what is cut from it. */
export interface LaidCloth {
  readonly source: ClothSource;
  /** In cutting order, from one end of the cloth on. */
  readonly strips: readonly LaidStrip[];
  /** How many pieces of cloth are cut alike; 1 where it is bought by the length. */
  readonly times: number;
}

/** How one fabric is cut. */
export interface ClothLayout {
  /** What the maker has first, then what is bought. */
  readonly cloths: readonly LaidCloth[];
  /** What is bought: the length of all strips together where by length, else a number of precut pieces; nothing added. */
  readonly takes: Rational;
  /** No layout by such cuts takes less than this, in the same measure. Equal to `takes`: proved least. */
  readonly least: Rational;
  /** Pieces that fit into none of the cloth there is. */
  readonly unplaced: readonly { readonly cut: string; readonly count: number }[];
}

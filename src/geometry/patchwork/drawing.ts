/** A lattice point: whole steps from the block's top-left corner, x right, y down. */
export type Lattice = readonly [number, number];

/**
 * What the designer asks of the sewing order. 'sewn last': the seam right across the block through both points is the
 * last one. 'one unit': the rectangle between two opposite corners is made by itself.
 */
export interface Pin {
  readonly pin: 'sewn last' | 'one unit';
  readonly from: Lattice;
  readonly to: Lattice;
}

/** What is painted. */
export interface DrawnPatch {
  readonly fabric: string;
  readonly points: readonly Lattice[];
  /** Must stay one piece of cloth. */
  readonly whole?: boolean;
  /** Is no cloth with its neighbours, even of the same fabric: one of many prints. It may be divided. */
  readonly apart?: boolean;
  /** Areas of one fabric that have different numbers here do not become one, so that a seam stays between them; 0 where absent. */
  readonly role?: number;
}

/**
 * A drawing in true proportion: one lattice step is the same length across and down,
 * so that a right angle here is a right angle in cloth.
 */
export interface Drawing {
  readonly width: number;
  readonly height: number;
  /** Where the block's grid lines lie, in steps, both edges included. */
  readonly columns: readonly number[];
  readonly rows: readonly number[];
  readonly ground: string;
  readonly groundRole?: number;
  readonly patches: readonly DrawnPatch[];
  readonly seams: readonly (readonly [Lattice, Lattice])[];
  readonly pins?: readonly Pin[];
}

import type { UnitKind } from './assembly.ts';

/** What a leaf of the search is worth, told apart by kind, cloth and size. */
export interface LeafClass {
  readonly kind: UnitKind;
  /** Shared by congruent leaves. */
  readonly key: string;
  /** Shared by leaves of one kind and size, whatever their cloth. */
  readonly size: string;
  /** Shorter side in lattice steps. */
  readonly module: number;
  /** Pieces of cloth in one. */
  readonly pieces: number;
  /** Pieces of it that need a printed template. */
  readonly templates: number;
  /** Corners of a corner-triangle unit, else 0. */
  readonly corners: number;
}

/**
 * How the search weighs a construction, in the trouble of handling one plain piece.
 * Chosen so that the gallery of published constructions comes out as published.
 */
export interface Weights {
  /** Making one unit, beyond what its kind costs by pieces: standard units are quick to make. */
  readonly unit: Readonly<Record<UnitKind, number>>;
  /** Setting the ruler to one more size of plain piece, or of unit; paid once, shared among all of that size. */
  readonly newPlainSize: number;
  readonly newUnitSize: number;
  /** Another cloth, or combination of cloths, at a size that is there already. */
  readonly newPlain: number;
  readonly newUnit: number;
  /** One more join of rows or columns. */
  readonly join: number;
  /** A corner of a corner-triangle unit. */
  readonly corner: number;
  /** A piece of a free unit that a ruler can cut, and one that needs a template. */
  readonly freePiece: number;
  readonly template: number;
}

export const NATURAL: Weights = {
  unit: {
    square: 1,
    rectangle: 1,
    'half-square triangle': 1.35,
    'quarter-square triangle': 2.2,
    'split quarter-square triangle': 2.1,
    'flying geese': 2,
    'corner-triangle unit': 2.6,
    'square in a square': 3,
    'half-rectangle triangle': 1.8,
    peak: 2.4,
    'joined unit': 0,
    'partial-seam ring': 2,
    'free unit': 3,
  },
  newPlainSize: 1,
  newUnitSize: 6,
  newPlain: 0.3,
  newUnit: 0.5,
  join: 0.8,
  corner: 0.9,
  freePiece: 2.2,
  template: 4.5,
};

/** The same search for the fewest pieces of cloth: nothing else has weight, ties aside. */
export const FEWEST: Weights = {
  unit: {
    square: 1,
    rectangle: 1,
    'half-square triangle': 2,
    'quarter-square triangle': 4,
    'split quarter-square triangle': 3,
    'flying geese': 3,
    'corner-triangle unit': 1,
    'square in a square': 5,
    'half-rectangle triangle': 2,
    peak: 3,
    'joined unit': 0,
    'partial-seam ring': 0,
    'free unit': 0,
  },
  newPlainSize: 0,
  newUnitSize: 0,
  newPlain: 0,
  newUnit: 0,
  join: 0.001,
  corner: 1,
  freePiece: 1,
  template: 1.001,
};

/** @returns what making one leaf of a class costs, its novelty not counted */
export function handling(leaf: LeafClass, weights: Weights): number {
  if (leaf.kind === 'corner-triangle unit') return weights.unit[leaf.kind] + weights.corner * leaf.corners;
  if (leaf.kind === 'free unit') {
    const { pieces, templates } = leaf;
    return weights.unit[leaf.kind] + weights.freePiece * (pieces - templates) + weights.template * templates;
  }
  return weights.unit[leaf.kind];
}

/** @returns whether a leaf is sewn as it is cut */
export const isPlain = (leaf: LeafClass): boolean => leaf.kind === 'square' || leaf.kind === 'rectangle';

/** @returns what a leaf's cloths cost once, to be shared among the leaves of its class */
export const clothNovelty = (leaf: LeafClass, weights: Weights): number => (isPlain(leaf) ? weights.newPlain : weights.newUnit);

/** @returns what a leaf's size costs once, to be shared among all leaves of that size */
export const sizeNovelty = (leaf: LeafClass, weights: Weights): number => (isPlain(leaf) ? weights.newPlainSize : weights.newUnitSize);

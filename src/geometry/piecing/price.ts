import type { UnitKind } from './assembly.ts';

/** What a leaf of the search is worth, told apart by kind, cloth and size. */
export interface LeafClass {
  readonly kind: UnitKind;
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
  /** Rounds of four corner triangles, one round a turn of 45° inside the other, in a free unit made of nothing else; else 0. */
  readonly rounds: number;
  /** Whether every such unit stands alone in the drawing, with a seam drawn all round it. */
  readonly alone: boolean;
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
  /** A unit in a second, third, … size, beyond what any new size costs. */
  readonly anotherUnitSize: number;
  /** What of that is left for a unit that is drawn apart from all its neighbours: nobody would divide it. */
  readonly alone: number;
  /** Another cloth, or combination of cloths, at a size that is there already. */
  readonly newPlain: number;
  readonly newUnit: number;
  /** What a plan in a frame of three by three equal modules, or of another number, costs relative to one without a frame. */
  readonly nineModules: number;
  readonly modules: number;
  /** The same where all modules show the same seams the same way up: a block of equal blocks. */
  readonly equalModules: number;
  /** One more join of rows or columns. */
  readonly join: number;
  /** A corner of a corner-triangle unit. */
  readonly corner: number;
  /** One more round of corner triangles outside a square in a square. */
  readonly round: number;
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
    'flying geese': 1.8,
    'corner-triangle unit': 2.6,
    'square in a square': 2.4,
    'half-rectangle triangle': 1.8,
    peak: 2.4,
    'joined unit': 0,
    'partial-seam ring': 0.5,
    'free unit': 3,
  },
  newPlainSize: 1,
  newUnitSize: 3,
  anotherUnitSize: 4,
  alone: 0.25,
  newPlain: 0.3,
  newUnit: 0.5,
  nineModules: 0.9,
  modules: 0.97,
  equalModules: 0.8,
  join: 0.55,
  corner: 0.9,
  round: 2.5,
  freePiece: 3.5,
  template: 6,
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
    'partial-seam ring': 0.5,
    'free unit': 0,
  },
  newPlainSize: 0,
  newUnitSize: 0,
  anotherUnitSize: 0,
  alone: 1,
  newPlain: 0,
  newUnit: 0,
  nineModules: 1,
  modules: 1,
  equalModules: 1,
  join: 0.001,
  corner: 1,
  round: 4,
  freePiece: 1,
  template: 1.001,
};

const NOTHING = Object.fromEntries(Object.keys(NATURAL.unit).map((kind) => [kind, 0])) as Weights['unit'];

/** The order of joining for given leaves: as few different things to make as can be; the leaves themselves are settled. */
export const ARRANGED: Weights = { ...FEWEST, unit: NOTHING, corner: 0, freePiece: 0, template: 0, round: 0, join: 1 };

/** @returns what making one leaf of a class costs, its novelty not counted */
export function handling(leaf: LeafClass, weights: Weights): number {
  if (leaf.kind === 'corner-triangle unit') return weights.unit[leaf.kind] + weights.corner * leaf.corners;
  if (leaf.kind === 'free unit') {
    const { pieces, templates, rounds } = leaf;
    if (rounds > 0) return weights.unit['square in a square'] + weights.round * (rounds - 1);
    return weights.unit[leaf.kind] + weights.freePiece * (pieces - templates) + weights.template * templates;
  }
  return weights.unit[leaf.kind];
}

/** @returns whether a leaf is sewn as it is cut */
export const isPlain = (leaf: LeafClass): boolean => leaf.kind === 'square' || leaf.kind === 'rectangle';

/** @returns what a leaf's cloths cost once, to be shared among the leaves of its class */
export const clothNovelty = (leaf: LeafClass, weights: Weights): number => (isPlain(leaf) ? weights.newPlain : weights.newUnit);

/** @returns what a leaf's size costs once, to be shared among all leaves of that size */
export function sizeNovelty(leaf: LeafClass, weights: Weights): number {
  if (isPlain(leaf)) return weights.newPlainSize;
  return leaf.alone ? weights.newUnitSize * weights.alone : weights.newUnitSize;
}

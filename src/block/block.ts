import type { Pin } from '../geometry/patchwork/drawing.ts';
import type { Rational } from '../measure/rational.ts';
import type { Choices, Method } from './choices.ts';
import type { Value } from './colour/lightness.ts';
import type { Picture, Publication } from './publication.ts';

export type LengthUnit = 'in' | 'cm';

/** A point of the drawing: whole steps of the block's lattice from the top-left corner, x right, y down. */
export type LatticePoint = readonly [number, number];

export interface Fabric {
  readonly id: string;
  readonly name: string;
  /** sRGB as #rrggbb */
  readonly color: string;
  /** Its print has an up and a down: no piece of it may be turned when it is cut. */
  readonly directional?: boolean;
  /** It stands for a family of scraps: so many prints, spread over its pieces by this seed. Absent for one cloth. */
  readonly scraps?: { readonly prints: number; readonly seed: number };
  /** Id of another fabric of the block from whose cloth it is cut, and which is cut from none but its own. */
  readonly same?: string;
  /** How light it is taken to be, where that is not what its colour says. */
  readonly value?: Value;
  /** A photo of the real cloth. */
  readonly photo?: ClothPhoto;
}

/** A photo of cloth; its own up and down are those of the print. */
export interface ClothPhoto {
  /** Id of one of the block's photos. */
  readonly picture: string;
  /** How much cloth it shows from left to right, in the block's unit. */
  readonly across: Rational;
}

/** What a fabric looks like and is, but for what the block calls it. */
export type Look = Omit<Fabric, 'id'>;

/** The block in other cloth: what each of its fabrics is there, by their ids; one that is not named stays as it is. */
export interface Colourway {
  readonly name: string;
  readonly looks: Readonly<Record<string, Look>>;
}

/** One painted shape of one fabric; a later patch covers what lies under it. */
export interface Patch {
  readonly fabric: string;
  /** A simple outline of at least three corners, no two neighbours equal, no three neighbours on a line; either way round. */
  readonly points: readonly LatticePoint[];
  /** Must stay one piece of cloth. */
  readonly whole?: boolean;
  /** Where the photo of its fabric shows one: the place of the photo that lies in its middle; as chance has it where absent. */
  readonly photoAt?: PhotoPlace;
  /** Which print it is of, from 1 on, where its fabric stands for scraps: it is held while the rest is spread; as the spread has it where absent. */
  readonly print?: number;
}

/** A place of a photo, in thousandths of its width from the left and of its height from the top: whole, from 0 to 1000. */
export type PhotoPlace = readonly [across: number, down: number];

/** A seam the designer asks for, also where it runs through one fabric. */
export type DrawnSeam = readonly [LatticePoint, LatticePoint];

/** How one unit is cut and sewn, wherever it comes again: the unit that is sewn in the rectangle between two opposite corners. */
export interface UnitMethod {
  readonly from: LatticePoint;
  readonly to: LatticePoint;
  readonly method: Method;
}

/**
 * How the designer wants one seam pressed, wherever its unit comes again: the seam that runs along this line through its middle, its
 * allowances to the right or the left of the way from → to as seen on the front, or open.
 */
export interface PressedSeam {
  readonly from: LatticePoint;
  readonly to: LatticePoint;
  readonly lies: 'right' | 'left' | 'open';
}

/** What a block is drawn on. Grid units are equal; the cells between its lines need not be. */
export interface Grid {
  /** Grid units from left to right and from top to bottom. */
  readonly columns: number;
  readonly rows: number;
  /**
   * Where the upright lines between the cells lie, and the level ones, in grid units from the top-left corner: in order, the edges of
   * the block left out. Absent where there is one after every grid unit.
   */
  readonly across?: readonly Rational[];
  readonly down?: readonly Rational[];
}

/** The drawing, valid and exact. Made only by `files/` (from a file) or by the operations of this room (from another block). */
export interface Block {
  readonly name: string;
  readonly finished: { readonly width: Rational; readonly height: Rational; readonly unit: LengthUnit };
  readonly grid: Grid;
  /** Lattice steps to one grid unit: the common denominator of every coordinate. */
  readonly denominator: number;
  readonly fabrics: readonly Fabric[];
  /** Id of the fabric where nothing is painted. */
  readonly ground: string;
  readonly patches: readonly Patch[];
  readonly seams: readonly DrawnSeam[];
  /** What the designer asks of the sewing order, its points on the block's lattice; absent where there is none. */
  readonly pins?: readonly Pin[];
  /** How the designer wants single units cut and sewn, against what is chosen for their kind; absent where there is none. */
  readonly unitMethods?: readonly UnitMethod[];
  /** How the designer wants single seams pressed; absent where there is none. */
  readonly pressedSeams?: readonly PressedSeam[];
  /** How the designer wants it cut and sewn, where the file says so. */
  readonly choices?: Choices;
  /** Whether areas of different fabrics that are cut from the same cloth are one area; the seams between them stay where absent. */
  readonly fuses?: true;
  /** The block in other cloth, by different names; absent where there is none. */
  readonly colourways?: readonly Colourway[];
  /** The photos of its fabrics and colourways; absent where there is none. */
  readonly photos?: readonly Picture[];
  /** What the designer adds to the pattern that is written for her; absent where there is nothing. */
  readonly publication?: Publication;
}

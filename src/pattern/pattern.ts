import type { Rational } from '../measure/rational.ts';
import type { Figures, Piece, Piecing, Unit } from '../geometry/piecing/assembly.ts';
import type { Way } from '../geometry/piecing/way.ts';
import type { LengthUnit, Fabric } from '../block/block.ts';
import type { Choices } from '../block/choices.ts';
import type { Method } from '../block/choices.ts';
import type { Cut } from '../cutting/cut.ts';
import type { Step, Proof } from '../sewing/step.ts';

/** A size in the block's unit; width and height as the thing lies when its step describes it. */
export interface Size {
  readonly width: Rational;
  readonly height: Rational;
}

export interface UnitLine {
  readonly unit: Unit;
  /** In one block times the number of blocks. */
  readonly count: number;
  readonly finished: Size;
  readonly unfinished: Size;
  /** null for joined units. */
  readonly method: Method | null;
  /** Methods that could cut this unit, the chosen one among them. */
  readonly methods: readonly Method[];
  /** Pieces of cloth in one unit. */
  readonly pieces: number;
}

export interface Cloth {
  readonly fabric: Fabric;
  /** Strips across the usable width. */
  readonly strips: readonly { readonly width: Rational; readonly count: number }[];
  /** Sum of the strips, in the block's unit. */
  readonly length: Rational;
  /** What to ask for in the shop: "1/4 yd", "30 cm". */
  readonly buy: string;
}

export interface Alternative {
  readonly way: Way;
  readonly figures: Figures;
}

/** The finished pattern of one block as plain data; every output only prints it. */
export interface Pattern {
  readonly block: { readonly name: string; readonly finished: Size; readonly unfinished: Size; readonly unit: LengthUnit };
  /** The drawing's lattice: its extent in steps, and the length of one step in the block's unit. */
  readonly lattice: { readonly width: number; readonly height: number; readonly step: Rational };
  readonly choices: Required<Choices>;
  readonly way: Way;
  readonly figures: Figures;
  readonly pieces: readonly Piece[];
  /** Where seams run through one cloth, though nothing is drawn there, in lattice steps. */
  readonly divisions: Piecing['divisions'];
  readonly units: readonly UnitLine[];
  readonly cuts: readonly Cut[];
  readonly steps: readonly Step[];
  readonly fabrics: readonly Cloth[];
  readonly alternatives: readonly Alternative[];
  readonly proof: Proof;
  /** Things a maker should know before cutting: one sentence each. */
  readonly notes: readonly string[];
  readonly cautions: readonly string[];
}

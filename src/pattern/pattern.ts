import type { Rational } from '../measure/rational.ts';
import type { Figures, Piece, Piecing, Unit } from '../geometry/piecing/assembly.ts';
import type { Division } from '../geometry/piecing/divisions.ts';
import type { Refusal } from '../geometry/piecing/pins.ts';
import type { Way } from '../geometry/piecing/way.ts';
import type { LengthUnit, Fabric } from '../block/block.ts';
import type { Choices } from '../block/choices.ts';
import type { Method } from '../block/choices.ts';
import type { Joined } from '../cutting/cloth/joined.ts';
import type { ClothOrder } from '../cutting/cloth/order.ts';
import type { Cut } from '../cutting/cut.ts';
import type { SettledBy } from '../cutting/cutting.ts';
import type { ClothLayout } from '../cutting/layout.ts';
import type { Pressing, Step, Proof } from '../sewing/step.ts';
import type { Unmet } from './unmet.ts';
import type { Warning } from './warnings.ts';
import type { WithinCloth } from './within-cloth.ts';

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
  /** null for joined units but those that strip sets could make. */
  readonly method: Method | null;
  /** Methods that could cut this unit, the chosen one among them. */
  readonly methods: readonly Method[];
  /** Whose choice the method is; null where there is none. */
  readonly settledBy: SettledBy | null;
  /** Pieces of cloth in one unit. */
  readonly pieces: number;
}

export interface Cloth {
  readonly fabric: Fabric;
  /** What decides how it is cut. */
  readonly order: ClothOrder;
  /** One that is there at once; a better one may be found in time (cutting/cloth). */
  readonly layout: ClothLayout;
  /** Pieces wider than the cloth, cut from widths of it sewn together; not in the layout. */
  readonly joined: readonly Joined[];
  /** All strips across the usable width, joined widths among them, the widest first. */
  readonly strips: readonly { readonly width: Rational; readonly count: number }[];
  /** Sum of the strips that are cut from what is bought, in the block's unit. */
  readonly length: Rational;
  /** What to ask for in the shop: "1/4 yd", "30 cm", "3 fat quarters", "nothing". */
  readonly buy: string;
  /** The same as a length, where it is bought by the length; else null. */
  readonly bought: Rational | null;
  /** What is in that beyond what the pieces take, in words; null where nothing is added. */
  readonly added: string | null;
}

export interface Alternative {
  readonly way: Way;
  readonly figures: Figures;
}

/** Where the seams of one straight line run through one fabric. */
export interface DivisionLine {
  readonly fabric: string;
  /** In the order of the line, one for each area that is divided; in lattice steps. */
  readonly places: readonly Division[];
  /** How many pieces, and so how many seams, the block has more for it. */
  readonly more: number;
  /** Where it is and what it costs, in one sentence. */
  readonly says: string;
}

/** A pin that is not honoured, by its index among the drawing's pins; `says` tells why, and what to do, in one sentence. */
export interface RefusedPin {
  readonly pin: number;
  readonly why: Refusal;
  readonly says: string;
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
  /** The way it is sewn, as a tree. */
  readonly piecing: Piecing;
  /** The same before any unit is sewn in strip sets: what would come of other methods and sizes is worked out from it. */
  readonly plan: Piecing;
  /** Where seams run through one fabric, though nothing is drawn there, the last seam first. */
  readonly divisions: readonly DivisionLine[];
  /** Where seams stay between areas of one cloth; the notes say so. */
  readonly withinCloths: readonly WithinCloth[];
  readonly units: readonly UnitLine[];
  /** The block itself where it is one unit that methods can make, by the name 'block'; it is not among the units. */
  readonly whole: UnitLine | null;
  /** The methods that are chosen for single units and find them, by unit id. */
  readonly chosenUnits: Readonly<Record<string, Method>>;
  readonly cuts: readonly Cut[];
  readonly steps: readonly Step[];
  /** How the seams of one block are pressed, and how good that is. */
  readonly pressing: Pressing;
  readonly fabrics: readonly Cloth[];
  /** Fabrics that stand for a family of scraps: cut from what there is, neither laid out nor bought. How their prints lie: `scrapsOf`. */
  readonly scraps: readonly Fabric[];
  /** Patches, by their indices in the drawing, whose print is held while the others are spread. */
  readonly heldPrints: readonly { readonly patch: number; readonly print: number }[];
  readonly alternatives: readonly Alternative[];
  readonly proof: Proof;
  readonly refusedPins: readonly RefusedPin[];
  /** What spoils the work where it is overlooked, the gravest first; each kind once. */
  readonly warnings: readonly Warning[];
  /** What was chosen and comes to nothing; the notes say so. */
  readonly unmet: readonly Unmet[];
  /** Things a maker should know before cutting: one sentence each. */
  readonly notes: readonly string[];
  readonly cautions: readonly string[];
}

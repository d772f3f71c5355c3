import type { Rational } from '../measure/rational.ts';
import type { Point } from '../geometry/point.ts';
import type { UnitKind } from '../geometry/piecing/assembly.ts';
import type { Method } from '../block/choices.ts';
import type { Role } from '../cutting/cut.ts';

/** One thing laid down before sewing: a unit made earlier, or a piece from the cutting list. */
export interface StepPart {
  readonly from: { readonly unit: string } | { readonly cut: string; readonly role: Role; readonly fabric: string };
  /** Quarter turns clockwise from how the unit was described when it was made. */
  readonly turn: 0 | 1 | 2 | 3;
  /** Finished outline, clockwise, in lattice steps from the top-left corner of what the step makes. */
  readonly outline: readonly Point[];
}

/**
 * One seam. Things are numbered: 0 … parts.length − 1 are the parts, parts.length + j is what join j made.
 * through: first and second are sewn along the whole seam. part-way: only a beginning of the seam is sewn.
 * finish: the seam of an earlier part-way join is sewn to its end (first = that join's number, second = what it closes against).
 */
export interface Join {
  readonly sew: 'through' | 'part-way' | 'finish';
  readonly first: number;
  readonly second: number;
  readonly from: Point;
  readonly to: Point;
}

/** Where the two allowances of a join lie once it is pressed: toward its first or its second thing, or open. */
export type Pressed = 'first' | 'second' | 'open';

/** A point of a step's join where seams of both things it joins meet. */
export interface SeamPoint {
  readonly join: number;
  /** In lattice steps from the top-left corner of what the step makes. */
  readonly at: Point;
  /** Seams that lie opposite ways nest; the others want a pin. */
  readonly lie: 'opposite ways' | 'the same way' | 'open';
}

/** How the seams of one whole block are pressed. */
export interface Pressing {
  /** Points where seams from both sides of a seam meet, and of these where two lie the same way, or one lies open. */
  readonly points: number;
  readonly sameWay: number;
  readonly open: number;
  /** Pairs of seams that meet and lie the same way; at one point there may be several. */
  readonly apart: number;
  /** No pressing in which equal units are pressed alike, and the maker's own choices kept, leaves fewer pairs. */
  readonly apartAtLeast: number;
  /** Whether that is reached, and nothing that leaves as few has less against it. */
  readonly proved: boolean;
}

/** One instruction in sewing order. */
export interface Step {
  readonly number: number;
  /** Unit id, or 'block'. */
  readonly makes: string;
  readonly kind: UnitKind | 'block';
  /** How many to make, over all blocks (spares not counted). */
  readonly count: number;
  readonly method: Method | null;
  readonly parts: readonly StepPart[];
  readonly joins: readonly Join[];
  /** One for each join; a finish lies as its beginning does. */
  readonly pressed: readonly Pressed[];
  /** Where seams meet along its joins, join after join. */
  readonly points: readonly SeamPoint[];
  /** Finished size of the result in the block's unit, as described (before any turn). */
  readonly finished: { readonly width: Rational; readonly height: Rational };
  readonly unfinished: { readonly width: Rational; readonly height: Rational };
  /** Whether the result is cut large and trimmed to the unfinished size. */
  readonly trimmed: boolean;
  /** What to lay on what, and how to sew it. */
  readonly how: string;
  /** `how`, then what the result measures and how many to make, as sentences of their own. */
  readonly text: string;
  readonly press: string;
  /** Ids of the block's pieces that lie in any of the results. */
  readonly pieces: readonly number[];
}

/** What the virtual sewing found. */
export interface Proof {
  readonly holds: boolean;
  /** Seams sewn over the whole of one block, all straight. */
  readonly seams: number;
  /** One sentence for each thing that is wrong; empty when it holds. */
  readonly faults: readonly string[];
}

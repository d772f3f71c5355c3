import type { UnitKind } from '../geometry/piecing/assembly.ts';
import type { Rational } from '../measure/rational.ts';
import type { LengthUnit } from './block.ts';

/**
 * How what is measured, counted or named stands in a sentence. Whoever writes sentences writes every such value through this, so that the
 * same sentence can be printed plainly, in a house style, or kept with its values alive in it (`pattern/telling/kept.ts`).
 */
export interface Telling {
  /** "1 7/8 in."; `bare` leaves the unit out. */
  readonly length: (value: Rational, unit: LengthUnit, style?: 'with unit' | 'bare') => string;
  /** A whole number of hundredths, of what is told and not measured: "0.02 in.". */
  readonly about: (value: Rational, unit: LengthUnit) => string;
  /** How many of something. */
  readonly count: (n: number) => string;
  /** A fabric's name, on one line and without a full stop, by the fabric's id. */
  readonly cloth: (id: string) => string;
  /** A unit's letter; a step that makes it can be linked to. */
  readonly unit: (letter: string) => string;
  /** Which line of the cutting list. */
  readonly cut: (id: string) => string;
  /** What the trade calls a kind of unit: "half-square triangle", "half-square triangles". */
  readonly kind: (kind: UnitKind, number: 'one' | 'many') => string;
}

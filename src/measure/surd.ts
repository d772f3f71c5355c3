import type { Rational } from './rational.ts';

/** An exact length p + q·√r, r a whole number ≥ 0 (1 or 0 root: q = 0). */
export interface Surd {
  readonly p: Rational;
  readonly q: Rational;
  readonly r: number;
}

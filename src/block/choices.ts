import type { Rational } from '../measure/rational.ts';
import type { UnitKind } from '../geometry/piecing/assembly.ts';
import type { Way } from '../geometry/piecing/way.ts';

/** How a unit is cut and sewn; which kinds know which methods is `cutting/methods.ts`. */
export type Method =
  | 'one-at-a-time'
  | 'two-at-a-time'
  | 'four-at-a-time'
  | 'eight-at-a-time'
  | 'stitch-and-flip'
  | 'triangles'
  | 'template';

/** What a sewer chooses. Everything is optional: what is absent takes the trade's usual value. Lengths are in the block's own unit. */
export interface Choices {
  /** Seam allowance; 1/4 in. or 0.75 cm. */
  readonly seam?: Rational;
  /** Smallest step of the ruler; 1/8 in. or 1 mm. */
  readonly ruler?: Rational;
  /** Added to every cut that meets a diagonal seam, to be trimmed off after sewing; 0. */
  readonly trim?: Rational;
  readonly methods?: Readonly<Partial<Record<UnitKind, Method>>>;
  readonly way?: Way;
  /** How many blocks to cut for; 1. */
  readonly blocks?: number;
  /** Usable width of cloth; 42 in. or 107 cm. */
  readonly width?: Rational;
}

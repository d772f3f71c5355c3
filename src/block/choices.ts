import type { Rational } from '../measure/rational.ts';
import type { UnitKind } from '../geometry/piecing/assembly.ts';
import type { AssemblyOrder } from '../geometry/piecing/order.ts';
import type { Way } from '../geometry/piecing/way.ts';

/** How a unit is cut and sewn; which kinds know which methods is `cutting/methods.ts`. */
export type Method =
  | 'one-at-a-time'
  | 'two-at-a-time'
  | 'four-at-a-time'
  | 'eight-at-a-time'
  | 'stitch-and-flip'
  | 'triangles'
  | 'triangles-from-strips'
  | 'template'
  | 'pieces'
  | 'strip-sets';

/** How cloth is sold: by the length, or in precut pieces of one size. */
export type Sold = 'by length' | 'fat quarter' | 'fat eighth' | 'precut strip' | 'precut square';

/** A rectangle of cloth; width from selvage to selvage, or either way where there is none. */
export interface ClothSize {
  readonly width: Rational;
  readonly length: Rational;
}

/** Where the pieces of one fabric are cut from. Lengths are in the block's own unit. */
export interface ClothChoice {
  /** 'by length' where absent. */
  readonly sold?: Sold;
  /** Of one precut piece; the usual size of its form where absent. */
  readonly size?: ClothSize;
  /** Usable width of this fabric where it is sold by the length; that of all fabrics where absent. */
  readonly width?: Rational;
  /** What the sewer has already, which is used first. */
  readonly have?: readonly (ClothSize & { readonly count: number })[];
}

/** What is bought beyond what the pieces take: so many per cent, or so much length. */
export type Margin = { readonly percent: Rational } | { readonly length: Rational };

/** What a sewer chooses. Everything is optional: what is absent takes the trade's usual value. Lengths are in the block's own unit. */
export interface Choices {
  /** Seam allowance; 1/4 in. or 0.75 cm. */
  readonly seam?: Rational;
  /** Smallest step of the ruler; 1/8 in. or 1 mm. */
  readonly ruler?: Rational;
  /** Added to every cut that meets a diagonal seam, to be trimmed off after sewing; 0. */
  readonly trim?: Rational;
  /** For every kind that knows it and for which nothing else is chosen; the usual method of each kind where absent. */
  readonly method?: Method | 'usual';
  readonly methods?: Readonly<Partial<Record<UnitKind, Method>>>;
  readonly way?: Way;
  /** In which order the finished units are put together, where they lie so; as the way was found where absent. */
  readonly assembly?: AssemblyOrder;
  /** How many blocks to cut for; 1. */
  readonly blocks?: number;
  /** Usable width of cloth; 42 in. or 107 cm. */
  readonly width?: Rational;
  /** By fabric id: where its pieces are cut from. */
  readonly cloths?: Readonly<Record<string, ClothChoice>>;
  /** Cut off each length or precut piece to make its edge straight; 0. */
  readonly squaringUp?: Rational;
  /** None where absent. */
  readonly margin?: Margin;
  /** Shops sell lengths that are whole multiples of this; 4 1/2 in. (1/8 yd) or 10 cm. */
  readonly shopStep?: Rational;
}

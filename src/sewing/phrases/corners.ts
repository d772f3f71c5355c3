import type { Count } from '../../block/counting.ts';
import type { Corner, Piece, Pieces, Size, Thing } from './said.ts';

/** Whose corners these are: those of geese and of squares in a square are sewn on with more care. */
export type CornersOf = 'flying geese' | 'square in a square' | 'corner-triangle unit';

/** How units are made that have corners sewn on: flying geese, squares in a square, corner-triangle units. */
export interface CornerPhrases {
  /** @param single whether one large square is enough */
  readonly fourGeese: (small: Piece, large: Piece, seam: string, single: boolean, spare: Count | null) => string;
  /** Squares sewn across the corners of a base. */
  readonly stitchAndFlip: (squares: readonly Pieces[], base: Thing, seam: string) => string;
  /** Triangles sewn to a base that is cut to its shape. */
  readonly fromTriangles: (triangles: readonly Pieces[], base: Thing, whose: CornersOf) => string;
  readonly toAllCorners: (cloth: string) => string;
  /** With the size of what goes there where cloths alone would not tell it. */
  readonly toCorners: (where: readonly { readonly cloth: string; readonly size: Size | null; readonly corners: readonly Corner[] }[]) => string;
}

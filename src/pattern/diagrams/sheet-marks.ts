import type { Spot } from '../polygons.ts';

/*
 * What figures of a printed pattern show beside what is done at one step (`diagram.ts`), in the figure's own units.
 */

export type SheetMark =
  /** A thin line round something: the cells of a page to colour, pieces on the cloth beside their colour. No ink inside. */
  | { readonly mark: 'outline'; readonly outline: readonly Spot[] }
  /** Cloth that is left over. */
  | { readonly mark: 'leftover'; readonly outline: readonly Spot[] }
  /** A stronger line round a whole: the edge of the cloth, of the block. */
  | { readonly mark: 'edge'; readonly outline: readonly Spot[] }
  /** A cut of a layout: right across the cloth; across a strip; a diagonal. */
  | { readonly mark: 'cut'; readonly cut: 'strip' | 'across' | 'diagonal'; readonly from: Spot; readonly to: Spot }
  /**
   * Words about a place, with values kept (`telling/kept.ts`), in the middle of a rectangle of so much room; as high as the rest of the
   * figure's words, smaller where they do not fit, left out where they would be too small to read. `upright`: read from below.
   */
  | {
      readonly mark: 'label';
      readonly told: string;
      readonly at: Spot;
      readonly width: number;
      readonly height: number;
      readonly upright: boolean;
    }
  /** A point where seams meet that do not nest. */
  | { readonly mark: 'loose'; readonly at: Spot };

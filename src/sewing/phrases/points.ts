import type { Count } from '../../block/counting.ts';
import type { Run } from './said.ts';

/** Some of the places where seams meet. */
export interface Places {
  readonly count: Count;
  /** Of how many. */
  readonly of: Count;
  /** Numbered along each seam; `seam` is its number, null where places on one seam alone are meant. */
  readonly at: readonly { readonly seam: number | null; readonly places: readonly Run[] }[];
  /** From where they are counted, along some seams and along others. */
  readonly from: readonly ('left' | 'top')[];
}

/** What is done where seams meet. */
export interface PointPhrases {
  /** Wherever they meet they lie opposite ways. */
  readonly nest: string;
  /** @param nests whether there are places where they nest; @param sameWay, open where they do not, and why */
  readonly match: (nests: boolean, sameWay: Places | 'everywhere' | null, open: Places | 'everywhere' | null) => string;
}

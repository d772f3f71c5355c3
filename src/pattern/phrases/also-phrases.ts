import type { Count } from '../../block/counting.ts';
import type { Run } from '../../sewing/phrases/said.ts';

/** What else is worth saying of a step. */
export interface AlsoPhrases {
  /**
   * How what is told piece by piece is sewn onto foundations.
   * @param sections by their letters, with the numbers of their pieces; `single`: one piece, which needs no foundation
   */
  readonly foundations: (sections: readonly { readonly letter: string; readonly pieces: readonly Run[]; readonly single: boolean }[]) => string;
  /**
   * How many of a unit are sewn in a chain.
   * @param seams one seam each; a seam on both sides of a line, which is then cut; several, one after another
   * @param explained whether a step before has told what that is
   */
  readonly chain: (count: Count, seams: 'one' | 'both sides' | 'several', explained: boolean) => string;
}

import type { Count } from '../../block/counting.ts';
import type { Side, Thing } from './said.ts';

/** Things that are alike, one after another. */
export interface Some {
  readonly thing: Thing;
  readonly count: Count;
}

/** Things that are alike, and the sides they are sewn to. */
export interface Around extends Some {
  readonly sides: readonly Side[];
}

/** How things are joined that are finished in themselves. */
export interface JoinPhrases {
  /** From left to right, or from top to bottom. */
  readonly row: (lie: 'row' | 'column', things: readonly Some[]) => string;
  /** Strips round a centre, round by round. */
  readonly rounds: (
    centre: Thing,
    turning: 'clockwise' | 'counter-clockwise' | null,
    rounds: readonly (readonly Around[])[],
  ) => string;
  /** @param even the edges that lie on each other where the first seam begins */
  readonly ring: (
    first: Thing,
    side: Side,
    centre: Thing,
    even: Side,
    others: readonly { readonly thing: Thing; readonly side: Side }[],
  ) => string;
}

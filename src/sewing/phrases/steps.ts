import type { Count } from '../../block/counting.ts';
import type { Size, Thing } from './said.ts';

/** What every step says beside how it is sewn: whole sentences. */
export interface StepPhrases {
  /** There is nothing to sew. */
  readonly onePiece: (piece: Thing) => string;
  /** What the result measures, or is trimmed to. */
  readonly measures: (what: 'block' | 'unit', size: Size, trimmed: boolean) => string;
  readonly make: (count: Count) => string;
  /** The unit is the mirror image of another, which has this letter. */
  readonly mirrored: (letter: string) => string;
}

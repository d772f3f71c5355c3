import type { Count } from '../../block/counting.ts';
import type { Size } from './said.ts';

/** Strips of one cloth that lie beside each other in a set; each as wide and as long as the size says. */
export interface SetStrip {
  readonly count: Count;
  readonly cloth: string;
  readonly size: Size;
}

/** What is said of long strips that are sewn side by side and cut across: whole sentences. */
export interface StripSetPhrases {
  /**
   * What is sewn side by side, in order.
   * @param lie from left to right, or from top to bottom
   * @param oneSize the size of all strips, where they are alike
   */
  readonly sew: (strips: readonly SetStrip[], lie: 'row' | 'column', oneSize: Size | null) => string;
  /** How many such sets there are to be; said of two and more. */
  readonly sets: (count: Count) => string;
  /**
   * What is done with a set once it is sewn.
   * @param segments of each set
   * @param beyond how many more all sets give than are needed; null where none are over
   */
  readonly cut: (sets: Count, segments: Count, width: string, beyond: Count | null) => string;
}

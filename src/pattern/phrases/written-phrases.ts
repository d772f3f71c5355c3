import type { Count } from '../../block/counting.ts';
import type { Method } from '../../block/choices.ts';
import type { ClothForm } from '../../cutting/layout.ts';
import type { AssemblyOrder } from '../../geometry/piecing/order.ts';
import type { Refusal } from '../../geometry/piecing/pins.ts';
import type { Way } from '../../geometry/piecing/way.ts';

/** Along which side of the block a place is measured: from its left edge, or from its top. */
export type Along = 'across' | 'down';

/** What bias on the outer edge is cured by: triangles from squares cut so. */
export type Remedied = 'once' | 'twice';

/**
 * The wording of everything that `makePattern` writes itself, in one language. A phrase is given values as they stand in the sentence and
 * never looks into them; of `ids` each is one line of the cutting list.
 */
export interface WrittenPhrases {
  /** "A, B and C" */
  readonly listed: (words: readonly string[]) => string;
  /** "4 by 6 in."; the width without its unit. */
  readonly size: (width: string, height: string) => string;
  /** The same of what is cut from cloth, among other things in brackets: "4 × 6 in." */
  readonly clothSize: (width: string, height: string) => string;
  /** A length that is less than a hundredth. */
  readonly lessThan: (hundredth: string) => string;

  /** A place that no ruler shows, to its nearest mark. */
  readonly near: (length: string) => string;
  /** "3 in. across, 4 in. down" from the block's top-left corner. */
  readonly point: (across: string, down: string) => string;
  /** Where a level or upright line lies: "at 3 in. across". */
  readonly at: (length: string, along: Along) => string;
  /** How far stretches of such a line reach: "from 0 to 4 in. down"; of each the first end is without its unit. */
  readonly runs: (ends: readonly (readonly [string, string])[], along: Along) => string;
  /** The same of a slanted line, whose ends are points. */
  readonly slanted: (ends: readonly (readonly [string, string])[]) => string;

  /** A seam runs through one fabric, and how many pieces and seams more that takes; `at` is empty for a slanted one. */
  readonly division: (at: string, cloth: string, runs: string, more: Count) => string;
  /** Areas of one cloth meet, in these places or, where it is null, on so many straight lines, and the seams between them stay. */
  readonly withinCloth: (cloth: string, places: readonly { readonly at: string; readonly runs: string }[] | null, lines: Count) => string;
  /** Why a pin is not honoured, and what to do: the sentence goes on from a colon. */
  readonly refused: Readonly<Record<Refusal, string>>;

  /** What was asked for, and that nothing comes of it. */
  readonly noSuchWay: (asked: Way, taken: Way) => string;
  readonly notAssembled: (order: AssemblyOrder) => string;
  readonly lostMethod: (method: Method, from: string, to: string) => string;
  readonly lostPressing: (from: string, to: string) => string;

  /** Prints with an up and a down of which every second triangle is upside down. */
  readonly upsideDown: (cloths: readonly string[]) => string;
  /** All of a line, or so many pieces of it, do not fit the cloth. */
  readonly tooLarge: (pieces: Count | 'all', id: string, size: string, form: ClothForm, cloth: string) => string;

  /** "cut 3", "cuts 3 and 5", within a sentence; "9 cuts". */
  readonly cuts: (ids: readonly string[]) => string;
  readonly manyCuts: (count: Count) => string;
  readonly smallPieces: (pieces: Count, cuts: string, least: string, narrowest: string, from: string | null) => string;
  readonly biasOnEdge: (pieces: Count, cuts: string, remedy: Remedied) => string;
  /** `one`: it is one line of the list; `even`: all rows come out alike; sizes instead may be none. */
  readonly outgrown: (said: {
    readonly mark: string;
    readonly cuts: string;
    readonly one: boolean;
    readonly wider: string | null;
    readonly higher: string | null;
    readonly even: boolean;
    readonly instead: readonly string[];
  }) => string;
  readonly widerThanCloth: (ids: readonly string[], sizes: readonly string[], room: string) => string;
  readonly longerThanCloth: (ids: readonly string[], sizes: readonly string[], room: string, strips: Count, seam: string) => string;
  /** Of cloths, each with what is bought of it, too little is left. */
  readonly noMargin: (cloths: readonly (readonly [name: string, buy: string])[], left: string, more: string) => string;

  /** For rotary cutter, needle and iron, those about cutting first. */
  readonly cautions: readonly string[];
}

import type { LengthUnit } from '../block/block.ts';
import type { Choices } from '../block/choices.ts';
import { counted } from '../block/counting.ts';
import { MAX_FINISHED } from '../block/limits.ts';
import type { Cut } from '../cutting/cut.ts';
import type { CutList } from '../cutting/cutting.ts';
import { grainOf } from '../cutting/grain.ts';
import { finishedWidths, narrower } from '../cutting/narrowest.ts';
import { eachOnce, rulerFit, ruledSides } from '../cutting/ruler.ts';
import type { Piecing } from '../geometry/piecing/assembly.ts';
import { compare, divide, multiply, rational, ZERO, type Rational } from '../measure/rational.ts';
import { compareWith, surd, times } from '../measure/surd.ts';
import { outgrowth } from '../sewing/outgrowth.ts';
import { longCuts, noMargin } from './cloth-warnings.ts';
import type { Speech, Wording } from './language.ts';
import type { Cloth, Size } from './pattern.ts';
import { aboutSaid, sizeSaid } from './saying.ts';

/** What a warning is about. */
export type WarningCode = 'small pieces' | 'bias on the edge' | 'longer than the cloth' | 'outgrows its size' | 'no margin';

/** Something that spoils the work where it is overlooked; each kind once, for all the pieces it is about. */
export interface Warning {
  readonly code: WarningCode;
  /** What, where and what to do, in one sentence. */
  readonly says: string;
  /** Ids of the block's pieces, in order. */
  readonly pieces: readonly number[];
  /** Ids of the lines of the cutting list. */
  readonly cuts: readonly string[];
}

/** What the warnings of a pattern are found from. */
export interface Warned {
  readonly piecing: Piecing;
  readonly list: Pick<CutList, 'cuts' | 'pieces'>;
  readonly block: { readonly finished: Size; readonly unit: LengthUnit };
  /** The drawing's extent in lattice steps, and the length of one in the block's unit. */
  readonly lattice: { readonly width: number; readonly height: number; readonly step: Rational };
  readonly choices: Pick<Required<Choices>, 'seam' | 'ruler' | 'trim' | 'shopStep'>;
  readonly fabrics: readonly Cloth[];
  /** Finished sizes of the sewn units. */
  readonly units: readonly Size[];
  readonly speech: Speech<Wording>;
}

/** Under this a piece is hard to sew true: half an inch, 1.2 cm (common practice). */
export const SMALL: Readonly<Record<LengthUnit, Rational>> = { in: rational(1, 2), cm: rational(6, 5) };
/** Sizes that are proposed are whole multiples of this. */
const QUARTER: Readonly<Record<LengthUnit, Rational>> = { in: rational(1, 4), cm: rational(1, 2) };

/** @returns what a maker should know before cutting a block sewn and cut this way, the gravest first */
export function warningsOf(warned: Warned): readonly Warning[] {
  return [outgrown(warned), ...longCuts(warned), noMargin(warned), biasOnEdge(warned), smallPieces(warned)].filter((warning) => warning !== null);
}

/** So many lines are named one by one. */
const NAMED = 5;

/** @returns "cut 3", "cuts 3 and 5", "9 cuts" */
const named = (cuts: readonly string[], { language, telling }: Speech<Wording>): string =>
  cuts.length > NAMED ? language.pattern.manyCuts(counted(cuts.length, telling)) : language.pattern.cuts(cuts.map(telling.cut));

/** The lines that some pieces come from, in the list's order. */
const linesOf = (cuts: readonly Cut[], pieces: ReadonlySet<number>): readonly string[] =>
  cuts.filter((cut) => cut.pieces.some((piece) => pieces.has(piece))).map(({ id }) => id);

function smallPieces({ piecing, list, block, lattice: { step }, speech }: Warned): Warning | null {
  const { unit, finished } = block;
  const least = SMALL[unit];
  const widths = finishedWidths(piecing.pieces.map(({ outline }) => outline), step);
  const small = piecing.pieces.filter((_, i) => compareWith(widths[i]!, least) < 0);
  if (small.length === 0) return null;
  const narrowest = widths.reduce(narrower);
  const pieces = small.map(({ id }) => id);
  const cuts = linesOf(list.cuts, new Set(pieces));
  // The smallest size of a whole number of quarters at which the narrowest piece is no longer small.
  const enough = (quarters: number): boolean => compareWith(times(narrowest, divide(multiply(QUARTER[unit], rational(quarters)), finished.width)), least) >= 0;
  const most = 4 * MAX_FINISHED[unit];
  let [low, high] = [1, most];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (enough(middle)) high = middle;
    else low = middle + 1;
  }
  const width = multiply(QUARTER[unit], rational(low));
  const larger = { width, height: divide(multiply(finished.height, width), finished.width) };
  const from = low < most && compare(larger.height, rational(MAX_FINISHED[unit])) <= 0 ? sizeSaid(larger, unit, speech) : null;
  const { language, telling } = speech;
  return {
    code: 'small pieces',
    says: language.pattern.smallPieces(counted(small.length, telling), named(cuts, speech), telling.length(least, unit), aboutSaid(narrowest, unit, speech), from),
    pieces,
    cuts,
  };
}

function biasOnEdge({ piecing, list, lattice, choices: { seam, trim }, speech }: Warned): Warning | null {
  const lines = new Map(list.cuts.map((cut) => [cut.id, cut]));
  const pieces = piecing.pieces.filter(({ id, outline }) => {
    const { cut, role } = list.pieces[id]!;
    if (!outline.some(({ x, y, w }) => x === 0 || y === 0 || x === lattice.width * w || y === lattice.height * w)) return false;
    const along = grainOf({ outline, role, cut: lines.get(cut)! }, { step: lattice.step, seam, trim });
    return along === 'slanted' && outline.some((p, i) => {
      const q = outline[(i + 1) % outline.length]!;
      const both = (at: (point: typeof p) => boolean): boolean => at(p) && at(q);
      return both(({ x }) => x === 0) || both(({ y }) => y === 0) || both(({ x, w }) => x === lattice.width * w) || both(({ y, w }) => y === lattice.height * w);
    });
  });
  if (pieces.length === 0) return null;
  const ids = pieces.map(({ id }) => id);
  const cuts = linesOf(list.cuts, new Set(ids));
  const quarter = pieces.every(({ id }) => ['half', 'pair', 'eight', 'small', 'strip-half'].includes(list.pieces[id]!.role));
  return {
    code: 'bias on the edge',
    says: speech.language.pattern.biasOnEdge(counted(ids.length, speech.telling), named(cuts, speech), quarter ? 'twice' : 'once'),
    pieces: ids,
    cuts,
  };
}

function outgrown({ piecing, list, block, lattice: { step }, choices: { seam, ruler }, units, speech }: Warned): Warning | null {
  const grown = outgrowth(piecing.root, list.cuts, { step, seam, ruler });
  if (grown === null) return null;
  const { unit, finished } = block;
  const cuts = linesOf(list.cuts, new Set(grown.pieces));
  const over = (by: Rational): string | null => (compare(by, ZERO) > 0 ? aboutSaid(surd(by), unit, speech) : null);
  const { smaller, larger } = rulerFit(eachOnce(ruledSides(piecing.pieces, step, units)), { ...finished, unit }, ruler);
  const instead = [smaller, larger].flatMap((each) => (each ? [sizeSaid(each, unit, speech)] : []));
  return {
    code: 'outgrows its size',
    says: speech.language.pattern.outgrown({
      mark: speech.telling.length(ruler, unit),
      cuts: named(cuts, speech),
      one: cuts.length === 1,
      wider: over(grown.width),
      higher: over(grown.height),
      even: grown.even,
      instead,
    }),
    pieces: grown.pieces,
    cuts,
  };
}

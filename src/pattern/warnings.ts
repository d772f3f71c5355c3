import type { LengthUnit } from '../block/block.ts';
import type { Choices } from '../block/choices.ts';
import { MAX_FINISHED } from '../block/limits.ts';
import type { Cut } from '../cutting/cut.ts';
import type { CutList } from '../cutting/cutting.ts';
import { grainOf } from '../cutting/grain.ts';
import { finishedWidths, narrower } from '../cutting/narrowest.ts';
import { eachOnce, rulerFit, ruledSides } from '../cutting/ruler.ts';
import type { Piecing } from '../geometry/piecing/assembly.ts';
import { printLength } from '../measure/lengths.ts';
import { aboutLength } from '../measure/about.ts';
import { compare, divide, multiply, rational, ZERO, type Rational } from '../measure/rational.ts';
import { compareWith, surd, times } from '../measure/surd.ts';
import { listed, several } from '../measure/words.ts';
import { outgrowth } from '../sewing/outgrowth.ts';
import { longCuts, noMargin } from './cloth-warnings.ts';
import type { Cloth, Size } from './pattern.ts';

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
}

/** Under this a piece is hard to sew true: half an inch, 1.2 cm (common practice). */
const SMALL: Readonly<Record<LengthUnit, Rational>> = { in: rational(1, 2), cm: rational(6, 5) };
/** Sizes that are proposed are whole multiples of this. */
const QUARTER: Readonly<Record<LengthUnit, Rational>> = { in: rational(1, 4), cm: rational(1, 2) };

/** @returns what a maker should know before cutting a block sewn and cut this way, the gravest first */
export function warningsOf(warned: Warned): readonly Warning[] {
  return [outgrown(warned), ...longCuts(warned), noMargin(warned), biasOnEdge(warned), smallPieces(warned)].filter((warning) => warning !== null);
}

const size = ({ width, height }: Size, unit: LengthUnit): string => `${printLength(width, unit, 'bare')} by ${printLength(height, unit)}`;

/** So many lines are named one by one. */
const NAMED = 5;

/** @returns "cut 3", "cuts 3 and 5", "9 cuts" */
const named = (cuts: readonly string[]): string =>
  cuts.length > NAMED ? several(cuts.length, 'cut') : `${cuts.length === 1 ? 'cut' : 'cuts'} ${listed(cuts)}`;

/** The lines that some pieces come from, in the list's order. */
const linesOf = (cuts: readonly Cut[], pieces: ReadonlySet<number>): readonly string[] =>
  cuts.filter((cut) => cut.pieces.some((piece) => pieces.has(piece))).map(({ id }) => id);

function smallPieces({ piecing, list, block, lattice: { step } }: Warned): Warning | null {
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
  const remedy = low < most && compare(larger.height, rational(MAX_FINISHED[unit])) <= 0 ? `; from ${size(larger, unit)} on none does` : '';
  const many = small.length === 1;
  return {
    code: 'small pieces',
    says:
      `${several(small.length, 'piece')} (${named(cuts)}) ${many ? 'finishes' : 'finish'} under ${printLength(least, unit)}` +
      `${many ? ', at' : ', the narrowest at'} ${aboutLength(narrowest, unit)}, and ${many ? 'is' : 'are'} hard to sew true${remedy}.`,
    pieces,
    cuts,
  };
}

function biasOnEdge({ piecing, list, lattice, choices: { seam, trim } }: Warned): Warning | null {
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
  const better = quarter ? 'from squares cut twice on the diagonals' : 'from squares cut once on the diagonal';
  return {
    code: 'bias on the edge',
    says:
      `${several(ids.length, 'piece')} (${named(cuts)}) ${ids.length === 1 ? 'has' : 'have'} bias on the outer edge of the block, which stretches: ` +
      `cut ${ids.length === 1 ? 'it' : 'them'} ${better}, so that the straight grain lies there.`,
    pieces: ids,
    cuts,
  };
}

function outgrown({ piecing, list, block, lattice: { step }, choices: { seam, ruler }, units }: Warned): Warning | null {
  const grown = outgrowth(piecing.root, list.cuts, { step, seam, ruler });
  if (grown === null) return null;
  const { unit, finished } = block;
  const cuts = linesOf(list.cuts, new Set(grown.pieces));
  const over = (by: Rational, word: string): readonly string[] => (compare(by, ZERO) > 0 ? [`${aboutLength(surd(by), unit)} ${word}`] : []);
  const much = listed([...over(grown.width, 'too wide'), ...over(grown.height, 'too high')]);
  const { smaller, larger } = rulerFit(eachOnce(ruledSides(piecing.pieces, step, units)), { ...finished, unit }, ruler);
  const friendly = [smaller, larger].flatMap((each) => (each ? [size(each, unit)] : []));
  const instead = friendly.length > 0 ? `; at ${friendly.join(' or ')} every plain cut is on a mark` : '';
  return {
    code: 'outgrows its size',
    says:
      `Cut up to the next ${printLength(ruler, unit)} of the ruler, ${named(cuts)} ${cuts.length === 1 ? 'is' : 'are'} too large: untrimmed, ` +
      `the block comes out ${grown.even ? '' : 'up to '}${much}${grown.even ? '' : ', and its rows do not meet'}${instead}.`,
    pieces: grown.pieces,
    cuts,
  };
}

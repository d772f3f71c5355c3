import { isInRounds } from '../join-words.ts';
import { clothOf, placeOf, roleOf } from '../naming.ts';
import type { Unworded } from '../wording.ts';

/** Darkness of a fabric: larger is darker. Only its order means anything. */
export type Darkness = (fabric: string) => number;

/**
 * What is against a way to press a seam, in whole numbers, once for every copy. Points that do not nest come before all of it, however
 * much it is. Bulk comes before colour, which a good presser gives up first (carolyngibbsquilts.co.uk, Pressing for
 * perfect points).
 */
export const TROUBLE = {
  /**
   * Against how the unit is always pressed: geese toward the small triangles (American Patchwork & Quilting, Pinwheel Star,
   * 2019-10-01), an hourglass's last seam open (its Ohio Star, 2017-06-14), corners, rounds and rings outward (common practice).
   */
  unusual: 40,
  /** Toward a unit, away from a plain piece (quiltville.com, doubledelight5pf, 2008; APQ, Double Nine-Patch, Ohio Star). */
  towardThePieced: 4,
  /** Toward the lighter of two plain pieces (APQ: toward the darker where no arrow is drawn). */
  towardTheLighter: 3,
  /** For every earlier seam that ends along it and is folded back on itself: seven layers there, not five. */
  foldedBack: 2,
  /** For a seam of a row not pressed the way of the one before it (common practice). */
  otherThanBeside: 2,
  /** For a seam of a unit round a middle not pressed as the one before it: outward, or toward the middle (common practice). */
  uneven: 1,
} as const;

/** The trouble of pressing one join toward its first thing, and toward its second. */
export type Sides = readonly [first: number, second: number];

const toward = (side: 'first' | 'second', trouble: number): Sides => (side === 'first' ? [0, trouble] : [trouble, 0]);

/** @returns whether the last seam of an hourglass is meant: it is pressed open unless it is forced to a side */
export const isLeftOpen = ({ kind, joins }: Unworded, join: number): boolean =>
  kind === 'quarter-square triangle' && join === joins.length - 1;

/**
 * @param ends how many seams end along the join on its first and its second thing
 * @returns what is against either side, whatever meets the seam
 */
export function sidesOf(step: Unworded, join: number, ends: readonly [number, number], darkness: Darkness): Sides {
  const outward = outwardOf(step, join);
  if (outward) return toward(outward, TROUBLE.unusual);
  const { parts, joins } = step;
  const { first, second } = joins[join]!;
  // In a row every seam lies between two neighbours, whatever was sewn on before; so it does in the rows of a web.
  const row = step.kind === 'joined unit' || step.kind === 'block';
  const [before, after] = row ? [parts[second - 1], parts[second]] : [parts[first], parts[second]];
  const [one, other] = [before && clothOf(before), after && clothOf(after)];
  if (one && other) {
    const [a, b] = [darkness(one), darkness(other)];
    return a === b ? [0, 0] : toward(a > b ? 'first' : 'second', TROUBLE.towardTheLighter);
  }
  const [bulk, more] = ends.map((many) => many * TROUBLE.foldedBack) as [number, number];
  return [bulk + (other && !one ? TROUBLE.towardThePieced : 0), more + (one && !other ? TROUBLE.towardThePieced : 0)];
}

/** @returns toward which of its things a join is pressed by the custom of its unit; null where there is none */
export function outwardOf(step: Unworded, join: number): 'first' | 'second' | null {
  const { parts, joins, kind } = step;
  const { sew, first, second } = joins[join]!;
  if (isInRounds(step)) return 'second';
  switch (kind) {
    case 'partial-seam ring':
      return sew === 'part-way' ? 'first' : 'second';
    case 'split quarter-square triangle':
      // The long seam, toward the large triangle, which is unpieced.
      return join < joins.length - 1 ? null : first < parts.length ? 'first' : 'second';
    case 'flying geese':
    case 'corner-triangle unit':
    case 'square in a square':
    case 'peak':
      return first < parts.length && first !== middleOf(step) ? 'first' : 'second';
    case 'free unit':
      return second >= parts.length && first < parts.length ? 'first' : 'second';
    default:
      return null;
  }
}

/** @returns the number of the part that the others are sewn round */
export const middleOf = ({ parts, kind }: Unworded): number =>
  parts.findIndex((part) =>
    kind === 'peak' ? placeOf(part, parts) === 'middle' : !['corner', 'half', 'small'].includes(roleOf(part) ?? ''),
  );

/** Two neighbouring joins of a step that had better be pressed alike, and what it costs when they are not. */
export interface Beside {
  readonly one: number;
  readonly other: number;
  /** Whether alike means both toward their first or both toward their second things. */
  readonly sameSide: boolean;
  readonly trouble: number;
}

/** @returns the pairs of joins that had better be pressed alike */
export function besides(step: Unworded): readonly Beside[] {
  const { joins, kind } = step;
  const row = (kind === 'joined unit' || kind === 'block') && !isInRounds(step);
  const round = kind === 'flying geese' || kind === 'corner-triangle unit' || kind === 'square in a square' || kind === 'peak';
  if (!row && !round) return [];
  if (row) return joins.flatMap((_, other) => besideInRow(step, other));
  return joins.slice(1).map((_, i) => ({ one: i, other: i + 1, sameSide: outwardOf(step, i) === outwardOf(step, i + 1), trouble: TROUBLE.uneven }));
}

/** In a row, a column, or the rows and the long seams of a web: the seam before, to whose result the next thing is sewn. */
function besideInRow({ parts, joins }: Unworded, other: number): readonly Beside[] {
  const one = joins[other]!.first - parts.length;
  const addsPart = (join: number): boolean => joins[join]!.second < parts.length;
  return one >= 0 && addsPart(one) === addsPart(other) ? [{ one, other, sameSide: true, trouble: TROUBLE.otherThanBeside }] : [];
}

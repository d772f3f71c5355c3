import type { PressedSeam } from '../../block/block.ts';
import type { Assembly } from '../../geometry/piecing/assembly.ts';
import { placed, type Turn } from '../../geometry/piecing/congruence.ts';
import { compareAlong, latticePoint, lineThrough, side, type Point } from '../../geometry/point.ts';
import { placementIn } from '../placement.ts';
import type { Join, Pressed } from '../step.ts';
import type { Laid } from './meetings.ts';

/** Where a step's result lies in the block: the assembly there, and its quarter turns from what the step makes. */
type Places = readonly { readonly assembly: Assembly; readonly turn: Turn }[];

interface Forced {
  /** How the maker wants a join of a step pressed; undefined where there is no wish. */
  of(step: number, join: number): Pressed | undefined;
  /** Indices of the wishes that lie on no seam. */
  readonly unplaced: readonly number[];
}

/**
 * Finds the seams that the maker wants pressed: a wish holds for the seam that runs along its line through its middle, and so for the
 * same seam of all equal units.
 * @param wished in lattice steps of the block
 */
export function forcedSeams(steps: readonly Laid[], places: readonly Places[], wished: readonly PressedSeam[]): Forced {
  const found = new Map<string, Pressed>();
  const unplaced: number[] = [];
  wished.forEach((wish, index) => {
    const here = steps.flatMap((step, s) => places[s]!.flatMap((place) => on(step, place, wish).map(([join, way]) => [`${s} ${join}`, way] as const)));
    if (here.length === 0) unplaced.push(index);
    for (const [join, way] of here) found.set(join, way);
  });
  return { of: (step, join) => found.get(`${step} ${join}`), unplaced };
}

/** @returns the joins of a step that a wish means in one of its places, with the thing each is to be pressed toward */
function on({ parts, joins }: Laid, { assembly, turn }: Places[number], { from, to, lies }: PressedSeam): readonly (readonly [number, Pressed])[] {
  const placement = placementIn(parts, turn, assembly.outline);
  const inBlock = (p: Point): Point => placed(p, placement);
  const middle: Point = { x: from[0] + to[0], y: from[1] + to[1], w: 2 };
  const [start, end] = [latticePoint(...from), latticePoint(...to)];
  const line = lineThrough(start, end);
  return joins.flatMap((join, j): readonly (readonly [number, Pressed])[] => {
    // A finish lies as its beginning does, and either may be meant.
    const begun = join.sew === 'finish' ? join.first - parts.length : j;
    const [a, b] = [inBlock(join.from), inBlock(join.to)];
    const meant = side(line, a) === 0 && side(line, b) === 0 && compareAlong(a, middle) * compareAlong(middle, b) > 0;
    if (!meant) return [];
    if (lies === 'open') return [[begun, 'open']];
    const right = side(line, inBlock(aside(parts, joins[begun]!, joins))) > 0;
    return [[begun, right === (lies === 'right') ? 'second' : 'first']];
  });
}

/** @returns a corner of a join's second thing beside its seam */
function aside(parts: Laid['parts'], { second, from, to }: Join, joins: readonly Join[]): Point {
  let part = second;
  while (part >= parts.length) part = joins[part - parts.length]!.first;
  return parts[part]!.outline.find((p) => side(lineThrough(from, to), p) !== 0)!;
}

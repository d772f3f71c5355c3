import { cross, mirroredIn, opposite, quarterTurned, type Vector } from '../../geometry/vector.ts';
import type { Pressed, Step } from '../step.ts';
import { tableOf, type End, type Gathering } from './meetings.ts';

/*
 * How many layers of cloth lie on one another where seams meet, folded as it is pressed. Within one allowance of a finished corner there
 * is cloth of every piece that touches it: every cut and every trimmed tip, too, runs at least an allowance away (`template.ts`,
 * `tips.ts`). So before it is folded a piece covers everything round the point once. A seam leaves both its things flat on their own
 * side; beyond it the cloth of the thing that it is pressed away from lies flat under the other, whose own cloth beyond it is folded back.
 * Pressed open, each is folded back on itself. In the angle between two seams and beside it this is 3 where both are pressed away, 5
 * where both go round the same way, 7 where both are pressed into it (nachograndmasquilts.com).
 */

/** Cloth round a point: how many layers lie in a direction, which is none of those where their number may change. */
interface Fan {
  readonly layers: (way: Vector) => number;
  readonly bounds: readonly Vector[];
}

type Fold = Pick<End, 'seam' | 'dx' | 'dy' | 'spin'>;

const PLAIN: Fan = { layers: () => 1, bounds: [] };

/** @returns by step: of all layers of cloth that lie on one another along its joins the most; 1 where nothing is sewn */
export function layersOf(steps: readonly Pick<Step, 'makes' | 'count' | 'parts' | 'joins' | 'pressed'>[]): readonly number[] {
  const { joins, seams } = tableOf(steps);
  const wayOf = (seam: number): Pressed => steps[seams[seam]!.step]!.pressed[seams[seam]!.join]!;
  return joins.map((sewn) => {
    const counts = sewn.flatMap((join) => {
      const round = join.gatherings.flatMap((each) => layersAround(each, join, wayOf).map(({ layers }) => layers));
      return [wayOf(join.seam) === 'open' ? 2 : 3, ...round];
    });
    return Math.max(1, ...counts);
  });
}

/** @returns the layers of cloth round a point of a join once it is pressed: so many between each of these directions and the next */
export function layersAround(
  { ends: [first, second] }: Pick<Gathering, 'ends'>,
  join: Fold,
  wayOf: (seam: number) => Pressed,
): readonly { readonly way: Vector; readonly layers: number }[] {
  const { layers, bounds } = folded(fanOf(first, wayOf), fanOf(second, wayOf), join, wayOf(join.seam));
  const round = inOrder(bounds);
  // Two that follow one another are never more than a quarter turn apart, so that their sum lies between them.
  return round.map((way, i) => ({ way, layers: layers(sum(way, round[(i + 1) % round.length]!)) }));
}

/** @returns the cloth of one thing round a point where these of its seams end */
function fanOf(ends: readonly End[], wayOf: (seam: number) => Pressed): Fan {
  // What is sewn later has the higher number, and its seam is folded last.
  const last = ends.reduce<End | null>((late, end) => (late && late.seam > end.seam ? late : end), null);
  if (!last) return PLAIN;
  const on = (second: boolean): Fan =>
    fanOf(
      ends.filter((end) => end !== last && isOnSecond(last, directionOf(end)) === second),
      wayOf,
    );
  return folded(on(false), on(true), last, wayOf(last.seam));
}

/** @returns the cloth of two things round a point of the seam that joins them */
function folded(first: Fan, second: Fan, seam: Fold, pressed: Pressed): Fan {
  const line = directionOf(seam);
  const across = quarterTurned(line);
  const mirrored = (way: Vector): Vector => mirroredIn(line, way);
  const earlier = [...first.bounds, ...second.bounds];
  return {
    layers: (way) => {
      const onSecond = isOnSecond(seam, way);
      const [own, other] = onSecond ? [second, first] : [first, second];
      if (pressed === 'open') return own.layers(way) + own.layers(mirrored(way));
      return (pressed === 'second') === onSecond ? own.layers(way) + own.layers(mirrored(way)) + other.layers(way) : own.layers(way);
    },
    bounds: [line, opposite(line), across, opposite(across), ...earlier, ...earlier.map(mirrored)],
  };
}

const directionOf = ({ dx, dy }: Pick<Fold, 'dx' | 'dy'>): Vector => [BigInt(dx), BigInt(dy)];

/** Whether a direction goes to the side of the seam's second thing. */
const isOnSecond = (seam: Fold, way: Vector): boolean => cross(directionOf(seam), way) > 0n === seam.spin > 0;

const sum = ([a, b]: Vector, [c, d]: Vector): Vector => [a + c, b + d];

/** @returns different directions, clockwise */
function inOrder(ways: readonly Vector[]): readonly Vector[] {
  const isLater = ([x, y]: Vector): boolean => y < 0n || (y === 0n && x < 0n);
  const byTurn = (turn: bigint): number => (turn > 0n ? -1 : turn < 0n ? 1 : 0);
  const order = (a: Vector, b: Vector): number => Number(isLater(a)) - Number(isLater(b)) || byTurn(cross(a, b));
  return [...new Map(ways.map((way) => [way.join(), way])).values()].sort(order);
}

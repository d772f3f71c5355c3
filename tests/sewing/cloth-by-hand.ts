import type { Point } from '../../src/geometry/point.ts';
import type { Step } from '../../src/sewing/step.ts';

/*
 * How many layers of cloth lie over a place of the pressed block, by following the place back through every fold to the raw pieces, in
 * doubles. Nothing is taken from the pressing but where it goes.
 */

type Spot = readonly [number, number];
type Sewn = Pick<Step, 'makes' | 'parts' | 'joins' | 'pressed'>;

/** How a piece is cut round its finished outline: as little as any tip may be trimmed to, or with tips as long as they may be. */
export type Tips = 'round' | 'long';

const spotOf = ({ x, y, w }: Point): Spot => [x / w, y / w];
const depth = ([px, py]: Spot, [qx, qy]: Spot, [x, y]: Spot): number =>
  ((qx - px) * (y - py) - (qy - py) * (x - px)) / Math.hypot(qx - px, qy - py);

function distance([px, py]: Spot, [qx, qy]: Spot, [x, y]: Spot): number {
  const t = Math.max(0, Math.min(1, ((x - px) * (qx - px) + (y - py) * (qy - py)) / ((qx - px) ** 2 + (qy - py) ** 2)));
  return Math.hypot(x - px - t * (qx - px), y - py - t * (qy - py));
}

/** @param seam allowance in lattice steps */
function isCloth(outline: readonly Spot[], place: Spot, seam: number, tips: Tips): boolean {
  const edges = outline.map((p, i) => [p, outline[(i + 1) % outline.length]!] as const);
  const out = Math.min(...edges.map(([p, q]) => depth(p, q, place)));
  if (out >= 0) return true;
  const far = Math.min(...edges.map(([p, q]) => distance(p, q, place)));
  return tips === 'round' ? far <= seam : out >= -seam && far <= Math.sqrt(5) * seam;
}

function mirrored([px, py]: Spot, [qx, qy]: Spot, [x, y]: Spot): Spot {
  const [dx, dy] = [qx - px, qy - py];
  const t = (2 * ((x - px) * dy - (y - py) * dx)) / (dx * dx + dy * dy);
  return [x - t * dy, y + t * dx];
}

const quarterBack = ([x, y]: Spot, turns: number): Spot => (turns === 0 ? [x, y] : quarterBack([y, -x], turns - 1));
const quarterOn = ([x, y]: Spot, turns: number): Spot => (turns === 0 ? [x, y] : quarterOn([-y, x], turns - 1));
const corner = (points: readonly Spot[]): Spot => [Math.min(...points.map(([x]) => x)), Math.min(...points.map(([, y]) => y))];

/** @returns the layers over a place of what the last step makes; every join must be sewn through */
export function clothOver(steps: readonly Sewn[], seam: number, tips: Tips): (place: Spot) => number {
  const made = new Map(steps.map((step) => [step.makes, step]));
  const inStep = (step: Sewn, thing: number, place: Spot): number => {
    const part = step.parts[thing];
    if (part) {
      const outline = part.outline.map(spotOf);
      if (!('unit' in part.from)) return isCloth(outline, place, seam, tips) ? 1 : 0;
      const unit = made.get(part.from.unit)!;
      const [hx, hy] = corner(outline);
      const [ux, uy] = corner(unit.parts.flatMap((each) => each.outline.map((p) => quarterOn(spotOf(p), part.turn))));
      return inStep(unit, unit.parts.length + unit.joins.length - 1, quarterBack([place[0] - hx + ux, place[1] - hy + uy], part.turn));
    }
    const j = thing - step.parts.length;
    const { first, second, from, to } = step.joins[j]!;
    const [p, q] = [spotOf(from), spotOf(to)];
    const member = (of: number): Spot[] =>
      of < step.parts.length ? step.parts[of]!.outline.map(spotOf) : member(step.joins[of - step.parts.length]!.first);
    const lean = member(first).map((each) => depth(p, q, each)).reduce((a, b) => (Math.abs(b) > Math.abs(a) ? b : a));
    const onFirst = depth(p, q, place) > 0 === lean > 0;
    const [own, other] = onFirst ? [first, second] : [second, first];
    const flat = inStep(step, own, place);
    if (step.pressed[j] === 'open') return flat + inStep(step, own, mirrored(p, q, place));
    return (step.pressed[j] === 'first') === onFirst ? flat + inStep(step, own, mirrored(p, q, place)) + inStep(step, other, place) : flat;
  };
  const last = steps.at(-1)!;
  return (place) => inStep(last, last.parts.length + last.joins.length - 1, place);
}

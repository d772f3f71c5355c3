import type { Step, StepPart } from '../../src/sewing/step.ts';

/*
 * Cutting and sewing as it is done, in doubles: every piece is its raw outline, the allowance and half of what was cut too much beyond
 * the finished one; a seam runs so far inside a raw edge as the foot says; the second thing is laid so that its own line comes to lie on
 * that of the first. Where seams come to is found by crossing these lines. No formula for how errors grow is in it.
 */

type Vector = readonly [number, number];
const plus = ([a, b]: Vector, [c, d]: Vector): Vector => [a + c, b + d];
const minus = ([a, b]: Vector, [c, d]: Vector): Vector => [a - c, b - d];
const times = ([a, b]: Vector, k: number): Vector => [a * k, b * k];
const dot = ([a, b]: Vector, [c, d]: Vector): number => a * c + b * d;
const unit = (v: Vector): Vector => times(v, 1 / Math.hypot(...v));

/** A line by a point on it and its direction. */
interface Line {
  readonly at: Vector;
  readonly way: Vector;
}

function crossing(a: Line, b: Line): Vector {
  const [[x, y], [u, v]] = [minus(b.at, a.at), b.way];
  const over = a.way[0] * v - a.way[1] * u;
  return plus(a.at, times(a.way, (x * v - y * u) / over));
}

/** A piece: its finished corners where they should lie, and how it was moved from there. */
interface Cloth {
  readonly corners: readonly Vector[];
  readonly moved: Vector;
}

/** A seam sewn: its line where it really lies, and where its ends should be. */
interface Seam {
  readonly line: Line;
  readonly ends: readonly Vector[];
}

interface Thing {
  readonly cloths: readonly Cloth[];
  readonly seams: readonly Seam[];
}

interface Machine {
  readonly seam: number;
  readonly allowance: number;
  readonly cutting: number;
}

export interface ByHand {
  readonly shifts: readonly Vector[];
  readonly misses: readonly Vector[];
  readonly wider: number;
}

const same = (p: Vector, q: Vector): boolean => Math.hypot(...minus(p, q)) < 1e-7;

/** @returns a raw edge's line: outside the finished one, which runs from p to q, by so much; the cloth's middle is inside */
function rawEdge(p: Vector, q: Vector, middle: Vector, beyond: number): Line & { readonly inward: Vector } {
  const way = unit(minus(q, p));
  const left: Vector = [way[1], -way[0]];
  const inward = dot(left, minus(middle, p)) > 0 ? left : times(left, -1);
  return { at: plus(p, times(inward, -beyond)), way, inward };
}

const middleOf = (corners: readonly Vector[]): Vector => times(corners.reduce(plus), 1 / corners.length);

export function sewnByHand(steps: readonly Step[], step: number, { seam, allowance, cutting }: Machine): readonly ByHand[] {
  const made = new Map<string, Thing & { readonly parts: readonly StepPart[] }>();
  const cornersOf = ({ outline }: Pick<StepPart, 'outline'>): readonly Vector[] => outline.map(({ x, y, w }) => [(x / w) * step, (y / w) * step]);
  return steps.map(({ parts, joins, makes }) => {
    const things: Thing[] = parts.map((part) => {
      const unit = 'unit' in part.from ? made.get(part.from.unit)! : null;
      if (!unit) return { cloths: [{ corners: cornersOf(part), moved: [0, 0] }], seams: [] };
      const turn = (v: Vector): Vector => Array.from({ length: part.turn }).reduce<Vector>(([x, y]) => [-y, x], v);
      const least = (points: readonly Vector[]): Vector => [Math.min(...points.map(([x]) => x)), Math.min(...points.map(([, y]) => y))];
      const to = minus(least(cornersOf(part)), least(unit.parts.flatMap(cornersOf).map(turn)));
      const place = (p: Vector): Vector => plus(turn(p), to);
      return {
        cloths: unit.cloths.map(({ corners, moved }) => ({ corners: corners.map(place), moved: turn(moved) })),
        seams: unit.seams.map(({ line, ends }) => ({ line: { at: place(line.at), way: turn(line.way) }, ends: ends.map(place) })),
      };
    });
    const misses: Vector[] = [];
    for (const { first, second, from, to } of joins) {
      const ends = cornersOf({ outline: [from, to] });
      const [start, end] = [...ends].sort(([x, y], [u, v]) => (Math.abs(x - u) > 1e-9 ? x - u : y - v)) as [Vector, Vector];
      const way = unit(minus(end, start));
      const off = (p: Vector): number => Math.abs(way[0] * (p[1] - start[1]) - way[1] * (p[0] - start[0]));
      // The cloth at the beginning of the seam, where the needle goes in.
      const begin = ({ cloths }: Thing): Cloth =>
        cloths.find(({ corners }) =>
          corners.some((p, i) => {
            const q = corners[(i + 1) % corners.length]!;
            if (off(p) > 1e-7 || off(q) > 1e-7) return false;
            const [a, b] = [dot(way, minus(p, start)), dot(way, minus(q, start))];
            return Math.min(a, b) < 1e-7 && Math.max(a, b) > 1e-7;
          }),
        )!;
      const stitched = ({ corners, moved }: Cloth): Line => {
        const raw = rawEdge(start, end, middleOf(corners), seam + cutting / 2);
        return { at: plus(plus(raw.at, times(raw.inward, seam + allowance)), moved), way };
      };
      const [one, other] = [things[first]!, things[second]!];
      const [line, its] = [stitched(begin(one)), stitched(begin(other))];
      const lay = minus(line.at, its.at);
      const laid: Thing = {
        cloths: other.cloths.map(({ corners, moved }) => ({ corners, moved: plus(moved, lay) })),
        seams: other.seams.map((each) => ({ ...each, line: { ...each.line, at: plus(each.line.at, lay) } })),
      };
      const isOn = (p: Vector): boolean => off(p) < 1e-7 && dot(way, minus(p, start)) > 1e-7 && dot(way, minus(p, end)) < -1e-7;
      for (const near of one.seams) {
        for (const p of near.ends.filter(isOn)) {
          for (const far of laid.seams.filter(({ ends: its }) => its.some((q) => same(p, q)))) {
            misses.push(minus(crossing(far.line, line), crossing(near.line, line)));
          }
        }
      }
      things.push({ cloths: [...one.cloths, ...laid.cloths], seams: [...one.seams, ...laid.seams, { line, ends: [start, end] }] });
    }
    const thing = things.at(-1)!;
    made.set(makes, { ...thing, parts });
    // Along the top, from the outermost raw edge on the left to that on the right.
    const all = thing.cloths.flatMap(({ corners }) => corners);
    const [left, right, top] = [Math.min(...all.map(([x]) => x)), Math.max(...all.map(([x]) => x)), Math.min(...all.map(([, y]) => y))];
    const at = (x: number): number => thing.cloths.find(({ corners }) => corners.some((p) => same(p, [x, top])))!.moved[0];
    return { shifts: thing.cloths.map(({ moved }) => moved), misses, wider: at(right) - at(left) + cutting };
  });
}

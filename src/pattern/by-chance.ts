import { placed } from '../geometry/piecing/congruence.ts';
import { box } from '../geometry/convex.ts';
import { compareAlong, lineThrough, samePoint, side, type Point } from '../geometry/point.ts';
import { chanceFrom } from '../measure/chance.ts';
import { atStart, inCorner } from '../sewing/errors/ends.ts';
import { placementIn } from '../sewing/placement.ts';
import type { Step, StepPart } from '../sewing/step.ts';

/*
 * How a block comes out when every seam and every edge is a little off, each by chance and by itself. `sewing/errors` tells exactly what
 * comes of one error everywhere; here blocks are sewn again and again with errors that are drawn. Estimates, in doubles.
 */

/** How far off people are: standard deviations, in the block's unit. */
export interface Chance {
  /** Of the allowance of a seam, on each of its two cloths; the same along the seam. */
  readonly allowance: number;
  /** Of a side of a piece, from raw edge to raw edge; half of its variance at either edge. */
  readonly cutting: number;
  readonly blocks: number;
  readonly seed: number;
}

/** What a share of the blocks is not beyond: 5, 50 and 95 of a hundred. */
export interface Quantiles {
  readonly low: number;
  readonly middle: number;
  readonly high: number;
}

export interface ByChance {
  /** How much wider and higher than it should be the block is, along its top and its left side. */
  readonly wider: Quantiles;
  readonly higher: Quantiles;
  /** Of every point where seams should meet, by step: how far the two are apart, over all copies in a block; the worst first. */
  readonly misses: readonly { readonly step: number; readonly join: number; readonly at: Point; readonly apart: Quantiles }[];
}

type Vector = readonly [number, number];

/** A place on a thing: the piece it moves with, and where it is in the step. */
interface Mark {
  readonly cloth: number;
  readonly at: Point;
}

/** An end of a seam: the piece and the side of it that the seam runs along. */
interface End extends Mark {
  readonly way: Vector;
  /** Number of the seam among those inside the thing: its own error tells where it runs. */
  readonly seam: number;
}

interface Sewing {
  readonly way: Vector;
  /** From the first to the second, of length 1. */
  readonly normal: Vector;
  readonly one: number;
  readonly other: number;
  /** Pieces and seams of the second thing, which move. */
  readonly cloths: readonly number[];
  readonly seams: readonly number[];
  readonly seam: number;
  readonly meetings: readonly { readonly at: Point; readonly near: End; readonly far: End }[];
}

/** How one step is sewn, worked out once. */
interface Plan {
  readonly parts: readonly StepPart[];
  readonly inside: readonly (number | null)[];
  readonly sewings: readonly Sewing[];
  readonly outlines: readonly (readonly Point[])[];
  readonly ends: readonly End[];
  readonly cloths: number;
  readonly seams: number;
  readonly corners: { readonly topLeft: number; readonly topRight: number; readonly bottomLeft: number };
  readonly trimmed: boolean;
}

/** One thing as it was sewn: how far each piece and each seam was moved. */
interface Made {
  readonly cloths: readonly Vector[];
  readonly seams: readonly Vector[];
}

const plus = ([a, b]: Vector, [c, d]: Vector): Vector => [a + c, b + d];
const minus = ([a, b]: Vector, [c, d]: Vector): Vector => [a - c, b - d];
const times = ([a, b]: Vector, k: number): Vector => [a * k, b * k];
const cross = ([a, b]: Vector, [c, d]: Vector): number => a * d - b * c;
const STILL: Vector = [0, 0];

type Sewn = Pick<Step, 'makes' | 'parts' | 'joins' | 'trimmed'> & Partial<Pick<Step, 'method'>>;

/** @returns how blocks come out that are sewn by these steps; segments of strip sets come of one set in each block, and so are alike */
export function byChance(steps: readonly Sewn[], chance: Chance): ByChance {
  const numbers = new Map(steps.map(({ makes }, i) => [makes, i]));
  const plans: Plan[] = [];
  for (const step of steps) plans.push(planOf(step, plans, numbers));
  const draw = normal(chance.seed);
  const apart = new Map<string, { step: number; join: number; at: Point; found: number[] }>();
  const sets = new Map<number, Made>();
  const make = (number: number): Made => {
    if (steps[number]!.method !== 'strip-sets') return makeOne(number);
    const segment = sets.get(number) ?? makeOne(number);
    sets.set(number, segment);
    return segment;
  };
  const makeOne = (number: number): Made => {
    const { parts, inside, sewings, trimmed } = plans[number]!;
    const cloths: Vector[] = [];
    const seams: Vector[] = [];
    parts.forEach(({ turn }, i) => {
      const unit = inside[i] ?? null;
      const made = unit === null ? null : make(unit);
      const still = unit !== null && plans[unit]!.trimmed;
      for (const moved of made?.cloths ?? [STILL]) cloths.push(still ? STILL : turnedWay(moved, turn));
      for (const moved of made?.seams ?? []) seams.push(still ? STILL : turnedWay(moved, turn));
    });
    sewings.forEach((sewing, join) => {
      const { normal: out, one, other, way } = sewing;
      const allowance = draw() * chance.allowance;
      // An edge of a trimmed unit is cut as it should be, and its own pieces are still.
      const [first, second] = [draw(), draw()].map((by) => (by * chance.cutting) / Math.SQRT2 - allowance) as [number, number];
      const lay = plus(minus(cloths[one]!, cloths[other]!), times(out, first + second));
      for (const cloth of sewing.cloths) cloths[cloth] = plus(cloths[cloth]!, lay);
      for (const seam of sewing.seams) seams[seam] = plus(seams[seam]!, lay);
      const line = plus(cloths[one]!, times(out, first));
      seams[sewing.seam] = line;
      for (const { at, near, far } of sewing.meetings) {
        // Where the line of a seam crosses that of the join, along the join.
        const reach = ({ way: its, seam }: End): number => cross(minus(seams[seam]!, line), its) / cross(way, its);
        const key = `${number} ${join} ${at.x} ${at.y} ${at.w} ${near.seam} ${far.seam}`;
        const kept = apart.get(key) ?? { step: number, join, at, found: [] };
        apart.set(key, kept);
        kept.found.push(Math.abs(reach(far) - reach(near)));
      }
    });
    return trimmed ? { cloths: cloths.map(() => STILL), seams: seams.map(() => STILL) } : { cloths, seams };
  };
  const sizes = Array.from({ length: chance.blocks }, (): Vector => {
    const block = plans.at(-1)!;
    sets.clear();
    const { cloths } = make(steps.length - 1);
    const { topLeft, topRight, bottomLeft } = block.corners;
    const edges = (): number => ((draw() + draw()) * chance.cutting) / Math.SQRT2;
    return [cloths[topRight]![0] - cloths[topLeft]![0] + edges(), cloths[bottomLeft]![1] - cloths[topLeft]![1] + edges()];
  });
  const misses = [...apart.values()].map(({ found, ...point }) => ({ ...point, apart: quantiles(found) }));
  return {
    wider: quantiles(sizes.map(([width]) => width)),
    higher: quantiles(sizes.map(([, height]) => height)),
    misses: misses.sort((a, b) => b.apart.high - a.apart.high),
  };
}

function planOf({ parts, joins, trimmed }: Pick<Step, 'parts' | 'joins' | 'trimmed'>, before: readonly Plan[], numbers: ReadonlyMap<string, number>): Plan {
  const outlines: (readonly Point[])[] = [];
  const inside: (number | null)[] = [];
  let seamsBefore = 0;
  const things = parts.map((part): { cloths: number[]; seams: number[]; ends: End[] } => {
    const number = 'unit' in part.from ? numbers.get(part.from.unit)! : null;
    inside.push(number);
    const first = outlines.length;
    if (number === null) {
      outlines.push(part.outline);
      return { cloths: [first], seams: [], ends: [] };
    }
    const unit = before[number]!;
    const placement = placementIn(unit.parts, part.turn, part.outline);
    outlines.push(...unit.outlines.map((outline) => outline.map((p) => placed(p, placement))));
    const start = seamsBefore;
    seamsBefore += unit.seams;
    return {
      cloths: Array.from({ length: unit.cloths }, (_, i) => first + i),
      seams: Array.from({ length: unit.seams }, (_, i) => start + i),
      ends: unit.ends.map(({ cloth, at, way, seam }) => ({ cloth: first + cloth, at: placed(at, placement), way: turnedWay(way, part.turn), seam: start + seam })),
    };
  });
  const sewings: Sewing[] = [];
  for (const { sew, first, second, from, to } of joins) {
    if (sew === 'finish') {
      things.push(things[second]!);
      continue;
    }
    const [start, end] = compareAlong(from, to) < 0 ? [from, to] : [to, from];
    const line = lineThrough(start, end);
    const length = Math.hypot(line.a, line.b);
    const way: Vector = [line.b / length, -line.a / length];
    const [one, other] = [clothAt(things[first]!.cloths, outlines, start, end), clothAt(things[second]!.cloths, outlines, start, end)];
    const front = outlines[other]!.some((p) => side(line, p) > 0) ? 1 : -1;
    const isOn = ({ at }: End): boolean => side(line, at) === 0 && compareAlong(start, at) * compareAlong(at, end) > 0;
    const seam = seamsBefore++;
    sewings.push({
      way,
      normal: [(front * line.a) / length, (front * line.b) / length],
      one,
      other,
      cloths: things[second]!.cloths,
      seams: things[second]!.seams,
      seam,
      meetings: things[first]!.ends
        .filter(isOn)
        .flatMap((near) => things[second]!.ends.filter((far) => samePoint(near.at, far.at)).map((far) => ({ at: near.at, near, far }))),
    });
    things.push({
      cloths: [...things[first]!.cloths, ...things[second]!.cloths],
      seams: [...things[first]!.seams, ...things[second]!.seams, seam],
      ends: [...[...things[first]!.ends, ...things[second]!.ends].filter((each) => !isOn(each)), ...[start, end].map((at) => ({ cloth: one, at, way, seam }))],
    });
  }
  const { left, right, top, bottom } = box(outlines.flat());
  const corner = (x: Point, y: Point): number => inCorner(outlines, x, y);
  return {
    parts, inside, sewings, outlines, trimmed,
    ends: things.at(-1)!.ends,
    cloths: outlines.length,
    seams: seamsBefore,
    corners: { topLeft: corner(left, top), topRight: corner(right, top), bottomLeft: corner(left, bottom) },
  };
}

/** @returns which of some pieces lies at the beginning of a seam */
const clothAt = (cloths: readonly number[], outlines: readonly (readonly Point[])[], start: Point, end: Point): number =>
  cloths[atStart(cloths.map((cloth) => outlines[cloth]!), start, end)]!;

const turnedWay = ([x, y]: Vector, turn: number): Vector => (turn === 0 ? [x, y] : turnedWay([-y, x], turn - 1));

function quantiles(values: readonly number[]): Quantiles {
  const sorted = [...values].sort((a, b) => a - b);
  const at = (share: number): number => sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? 0;
  return { low: at(0.05), middle: at(0.5), high: at(0.95) };
}

/** @returns draws from a normal distribution of standard deviation 1, nearly: twelve even ones added up, less six */
function normal(seed: number): () => number {
  const { next } = chanceFrom(seed);
  return () => Array.from({ length: 12 }, () => next() / 2 ** 32).reduce((sum, each) => sum + each, -6);
}

import type { Point } from '../../src/geometry/point.ts';
import type { Step, StepPart } from '../../src/sewing/step.ts';

/*
 * Every seam of a block where it lies in the finished block, with the way its allowances are pressed: told from the steps alone by
 * carrying each unit to its place, without the seam-by-seam book-keeping of src/sewing.
 */

/** Exact: x over d, y over d. */
export type Place = readonly [x: bigint, y: bigint, d: bigint];

export interface LaidSeam {
  readonly from: Place;
  readonly to: Place;
  /** A corner of what the allowances lie under; null where the seam is open. */
  readonly toward: Place | null;
  /** Number of the step that sews it, its join (of two goes the first), and which of the unit's places. */
  readonly step: number;
  readonly join: number;
  readonly place: string;
}

type Carry = (p: Place) => Place;

/** @returns the seams of the block */
export function seamsInBlock(steps: readonly Pick<Step, 'makes' | 'number' | 'parts' | 'joins' | 'pressed'>[]): readonly LaidSeam[] {
  const made = new Map(steps.map((step) => [step.makes, step]));
  const found: LaidSeam[] = [];
  const visit = (step: (typeof steps)[number], carry: Carry, place: string): void => {
    step.joins.forEach((join, j) => {
      if (join.sew === 'part-way') return;
      const first = join.sew === 'finish' ? join.first - step.parts.length : j;
      const begun = step.joins[first]!;
      const way = step.pressed[first]!;
      const [from, to] = [carry(exact(begun.from)), carry(exact(join.to))];
      // A part lies on one side of its seam; what a ring has become may not, for its first arm is loose: it is told by the other side.
      const single = begun.second < step.parts.length;
      const corner = partsOf(step, single || way === 'second' ? begun.second : begun.first)
        .flatMap(({ outline }) => outline.map((p) => carry(exact(p))))
        .find((p) => cross(from, to, p) !== 0n)!;
      const off = way === 'open' ? null : single && way === 'first' ? across(from, to, corner) : corner;
      found.push({ from, to, toward: off, step: step.number, join: first, place });
    });
    step.parts.forEach((part, i) => {
      if (!('unit' in part.from)) return;
      const unit = made.get(part.from.unit)!;
      visit(unit, (p) => carry(intoPart(p, part, unit)), `${place}/${i}`);
    });
  };
  visit(steps.at(-1)!, (p) => p, '');
  return found;
}

const exact = ({ x, y, w }: Point): Place => [BigInt(x), BigInt(y), BigInt(w)];

/** @returns the point on the other side of a seam, as far from its middle */
const across = ([x, y, d]: Place, [u, v, e]: Place, [p, q, f]: Place): Place => [(x * e + u * d) * f - p * d * e, (y * e + v * d) * f - q * d * e, d * e * f];

const extent = (points: readonly Point[], of: (p: Point) => number, which: 'min' | 'max'): bigint =>
  BigInt(Math[which](...points.map((p) => of(p) / p.w)));

/** Quarter turns clockwise within the unit's rectangle, then to where the part lies. */
function intoPart([x, y, d]: Place, { turn, outline }: StepPart, unit: Pick<Step, 'parts'>): Place {
  const all = unit.parts.flatMap((part) => part.outline);
  const [width, height] = [extent(all, (p) => p.x, 'max') * d, extent(all, (p) => p.y, 'max') * d];
  const [left, top] = [extent(outline, (p) => p.x, 'min') * d, extent(outline, (p) => p.y, 'min') * d];
  const turns = [
    [x, y],
    [height - y, x],
    [width - x, height - y],
    [y, width - x],
  ] as const;
  const [u, v] = turns[turn];
  return [u + left, v + top, d];
}

/** The parts a thing is made of. */
function partsOf(step: Pick<Step, 'parts' | 'joins'>, thing: number): readonly StepPart[] {
  const { parts, joins } = step;
  if (thing < parts.length) return [parts[thing]!];
  const { first, second } = joins[thing - parts.length]!;
  return [...partsOf(step, first), ...partsOf(step, second)];
}

type Vector = readonly [bigint, bigint];
const vector = ([x, y, d]: Place, [u, v, e]: Place): Vector => [u * d - x * e, v * d - y * e];
const times = ([a, b]: Vector, [c, d]: Vector): bigint => a * d - b * c;
const dot = ([a, b]: Vector, [c, d]: Vector): bigint => a * c + b * d;
const sign = (n: bigint): number => (n > 0n ? 1 : n < 0n ? -1 : 0);

/** Positive where r lies to the right of p → q (y down). */
export const cross = (p: Place, q: Place, r: Place): bigint => times(vector(p, q), vector(p, r));

/** @returns whether a point lies on a seam; between its ends only, unless these count */
export function isOn({ from, to }: LaidSeam, p: Place, ends: 'with its ends' | 'between'): boolean {
  if (cross(from, to, p) !== 0n) return false;
  const [a, b] = [dot(vector(from, to), vector(from, p)), dot(vector(to, from), vector(to, p))];
  return ends === 'between' ? a > 0n && b > 0n : a >= 0n && b >= 0n;
}

/** @returns whether a point may lie on a seam, roughly and soon */
function near({ from, to }: LaidSeam): (p: Place) => boolean {
  const rough = ([x, y, d]: Place): readonly [number, number] => [Number(x) / Number(d), Number(y) / Number(d)];
  const [[x, y], [u, v]] = [rough(from), rough(to)];
  const [left, right, top, bottom] = [Math.min(x, u) - 0.1, Math.max(x, u) + 0.1, Math.min(y, v) - 0.1, Math.max(y, v) + 0.1];
  return (p) => {
    const [a, b] = rough(p);
    return a >= left && a <= right && b >= top && b <= bottom;
  };
}

export interface SeamEnd {
  readonly seam: LaidSeam;
  readonly at: Place;
  /** From the end into the seam. */
  readonly way: Vector;
}

export const endsOfAll = (seams: readonly LaidSeam[]): readonly SeamEnd[] =>
  seams.flatMap((seam) => [
    { seam, at: seam.from, way: vector(seam.from, seam.to) },
    { seam, at: seam.to, way: vector(seam.to, seam.from) },
  ]);

/** Two seams that end at one point of a third, on its two sides. */
export interface Crossing {
  readonly across: LaidSeam;
  readonly one: LaidSeam;
  readonly other: LaidSeam;
  readonly at: string;
  readonly lie: 'opposite ways' | 'the same way' | 'open';
}

/** @returns a name that places share exactly when they are the same */
export function placeName([x, y, d]: Place): string {
  const gcd = (a: bigint, b: bigint): bigint => (b === 0n ? (a < 0n ? -a : a) : gcd(b, a % b));
  const least = (n: bigint): string => `${n / gcd(n, d)}/${d / gcd(n, d)}`;
  return `${least(x)} ${least(y)}`;
}

/** @returns every seam with the ends that lie on it, by their side of it: to the left of the way from → to, and to the right */
export function endsAlong(seams: readonly LaidSeam[], which: 'with its ends' | 'between'): readonly (readonly [LaidSeam, readonly SeamEnd[], readonly SeamEnd[]])[] {
  const byPlace = new Map<string, SeamEnd[]>();
  for (const end of endsOfAll(seams)) byPlace.set(placeName(end.at), [...(byPlace.get(placeName(end.at)) ?? []), end]);
  return seams.map((across) => {
    const along = vector(across.from, across.to);
    const isNear = near(across);
    const here = [...byPlace.values()].flatMap((ends) => (isNear(ends[0]!.at) && isOn(across, ends[0]!.at, which) ? ends : []));
    const on = (side: number): SeamEnd[] => here.filter(({ way }) => sign(times(along, way)) === side);
    return [across, on(-1), on(1)] as const;
  });
}

/**
 * @returns where two seams meet across a third, of which one is the other's mirror image in it, or goes straight on into it. Which way
 * an end lies along the third: the way in which its allowance leans, told by the angle between the two.
 */
export function crossingsIn(seams: readonly LaidSeam[]): readonly Crossing[] {
  return endsAlong(seams, 'between').flatMap(([across, left, right]) => {
    const along = vector(across.from, across.to);
    const leans = ({ seam, at, way }: SeamEnd): number => {
      if (!seam.toward) return 0;
      // Square to the seam, toward its allowance.
      const right: Vector = [-way[1], way[0]];
      const out: Vector = times(way, vector(at, seam.toward)) > 0n ? right : [-right[0], -right[1]];
      return sign(dot(out, along));
    };
    return left.flatMap((one) =>
      right.flatMap((other): Crossing[] => {
        if (placeName(one.at) !== placeName(other.at)) return [];
        // Lengths compared by squares: a mirror image makes the same angle with the third.
        const square = (v: Vector): bigint => dot(v, v);
        const [a, b] = [dot(one.way, along), dot(other.way, along)];
        const mirrored = sign(a) === sign(b) && a * a * square(other.way) === b * b * square(one.way);
        if (!mirrored && times(one.way, other.way) !== 0n) return [];
        const [x, y] = [leans(one), leans(other)];
        const lie = x * y === 0 ? 'open' : x * y < 0 ? 'opposite ways' : 'the same way';
        return [{ across, one: one.seam, other: other.seam, at: placeName(one.at), lie }];
      }),
    );
  });
}

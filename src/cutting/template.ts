import type { Rational } from '../measure/rational.ts';
import { add, compare, gcd, multiply, ratio, rational, subtract, upToStep } from '../measure/rational.ts';
import type { Surd } from '../measure/surd.ts';
import { addSurds, ceilToStep, rootOf, surd, times } from '../measure/surd.ts';
import type { Point } from '../geometry/point.ts';
import { moved, turned } from '../geometry/point.ts';
import { box, fromLeastCorner } from '../geometry/convex.ts';
import { cross, dot, opposite, outward, type Vector } from '../geometry/vector.ts';

/*
 * A template is a finished outline with the allowance s round it. Each edge runs on past its corner until it meets the next
 * one, but at most 2s: a sharper tip (under 53.13°, where tan(angle/2) = 1/2) is cut straight across there. Every point within s of the
 * finished outline is then inside the template, and no tip reaches further than √5·s from its finished corner. Where it is known what a
 * tip is sewn to, it is trimmed to that (`tips.ts`): along lines that also lie s from the finished corner.
 */

/** A summand k·√m·v of a place: lengths in the block's unit. */
export interface Term {
  readonly k: Rational;
  readonly m: Rational;
  readonly v: Vector;
}

/** A place of a template's outline, exactly: the sum of its terms, counted from where the finished outline counts from. */
export type Place = readonly Term[];

/** For each finished corner the outward normals of the lines its tip is trimmed along, in the order of the outline. */
export type Trims = readonly (readonly Vector[])[];

const ONE = rational(1);

/** Roots are rounded up at this fraction of a ruler step (or of the unit, for drawing) before they are added up. */
const FINE = rational(1, 2 ** 20);

const whole = (a: bigint): Rational => ratio(a, 1n);

/** A finished outline in whole numbers: corners over one denominator, edges as directions in lowest terms. */
interface Outline {
  readonly corners: readonly Vector[];
  readonly over: bigint;
  /** edges[i] leaves corners[i]. */
  readonly edges: readonly Vector[];
  readonly lengths: readonly bigint[];
}

/**
 * @returns the smallest rectangle of ruler steps that surely holds the template; it lies along the longest edge among those
 * that run along the block's sides, for these belong on the straight grain, or along the longest edge where there is none
 * @param outline finished, clockwise on screen, lattice steps; step: length of a lattice step in the block's unit
 */
export function templateBox(
  outline: readonly Point[],
  step: Rational,
  seam: Rational,
  ruler: Rational,
): { width: Rational; height: Rational } {
  const shape = inWholeNumbers(outline);
  const points = shape.corners.flatMap((_, i) => allowanceAt(shape, i, step, seam));
  const along = grainOf(shape);
  const across: Vector = [-along[1], along[0]];
  const grain = multiply(ruler, FINE);
  const far = (way: Vector): Rational =>
    points
      .map((terms) =>
        sumUp(
          terms.map((term) => reach(term, way)),
          grain,
        ),
      )
      .reduce((a, b) => (compare(a, b) >= 0 ? a : b));
  const side = (way: Vector): Rational => upToStep(add(far(way), far(opposite(way))), ruler);
  const [a, b] = [side(along), side(across)];
  return compare(a, b) <= 0 ? { width: a, height: b } : { width: b, height: a };
}

/**
 * @returns the outline to cut along, exactly, clockwise on screen: for each corner of the finished outline the places round it, one, or
 * several where the tip is trimmed
 * @param trims the tips that are trimmed to what they are sewn to; an empty list where a corner has none
 * @throws RangeError when a number leaves what can be held exactly
 */
export function cutOutline(outline: readonly Point[], step: Rational, seam: Rational, trims?: Trims): readonly (readonly Place[])[] {
  const shape = inWholeNumbers(outline);
  return shape.corners.map((_, i) => allowanceAt(shape, i, step, seam, trims?.[i]));
}

/** @returns the direction of the straight grain on a template: the longest edge, those along the block's sides before slanted ones */
export const grainAlong = (outline: readonly Point[]): Vector => grainOf(inWholeNumbers(outline));

/** @returns the outline moved by whole lattice steps so that its box starts in the first step both ways: at 0, 0 for lattice points */
export function atOrigin(outline: readonly Point[]): readonly Point[] {
  const dx = Math.min(...outline.map((p) => Math.floor(p.x / p.w)));
  const dy = Math.min(...outline.map((p) => Math.floor(p.y / p.w)));
  return outline.map((p) => moved(p, -dx, -dy));
}

/** @returns a text that two outlines share exactly when a quarter turn (or none) and a move lay one on the other */
export function templateKey(outline: readonly Point[]): string {
  const turns: (readonly Point[])[] = [outline];
  while (turns.length < 4) turns.push(turns[turns.length - 1]!.map(turned));
  const texts = turns.map((points) => {
    const { left, top } = box(points);
    const [x0, y0] = [rational(left.x, left.w), rational(top.y, top.w)];
    const place = (p: Point): string => `${text(subtract(rational(p.x, p.w), x0))},${text(subtract(rational(p.y, p.w), y0))}`;
    return fromLeastCorner(points).map(place).join(' ');
  });
  return texts.reduce((a, b) => (a <= b ? a : b));
}

const text = (x: Rational): string => `${x.n}/${x.d}`;

/** The template's corners at one finished corner: where the two edges meet, or both ends of the cut across a sharp tip. */
function allowanceAt(shape: Outline, i: number, step: Rational, seam: Rational, trims: readonly Vector[] = []): readonly Place[] {
  const n = shape.corners.length;
  const [arriving, leaving] = [shape.edges[(i + n - 1) % n]!, shape.edges[i]!];
  const corner: Term = { k: multiply(step, ratio(1n, shape.over)), m: ONE, v: shape.corners[i]! };
  const [a, b] = [dot(arriving, arriving), dot(leaving, leaving)];
  if (trims.length > 0) {
    const lines = [outward(arriving), ...trims, outward(leaving)];
    return lines.slice(1).map((next, j) => [corner, ...allowancesFrom(lines[j]!, next, seam)]);
  }
  // Interior angle sharper than arccos 3/5.
  const towards = -dot(arriving, leaving);
  if (towards > 0n && 25n * towards * towards > 9n * a * b) {
    return [
      [corner, { k: seam, m: ratio(1n, a), v: onPast(arriving, arriving) }],
      [corner, { k: seam, m: ratio(1n, b), v: onPast(leaving, opposite(leaving)) }],
    ];
  }
  return [[corner, ...allowancesFrom(outward(arriving), outward(leaving), seam)]];
}

/** From a corner to the place s from two lines through it of normals n₁, n₂: s/det · (|n₁|·(n₂y, −n₂x) − |n₂|·(n₁y, −n₁x)). */
function allowancesFrom(n1: Vector, n2: Vector, seam: Rational): readonly Term[] {
  const k = multiply(seam, ratio(1n, cross(n1, n2)));
  return [
    { k, m: whole(dot(n1, n1)), v: outward(n2) },
    { k, m: whole(dot(n2, n2)), v: opposite(outward(n1)) },
  ];
}

/** One allowance out of an edge, two allowances on past its end. */
const onPast = (edge: Vector, on: Vector): Vector => [outward(edge)[0] + 2n * on[0], outward(edge)[1] + 2n * on[1]];

/** How far a summand reaches along a direction. */
const reach = ({ k, m, v }: Term, way: Vector): Surd =>
  times(rootOf(multiply(m, ratio(1n, dot(way, way)))), ratio(BigInt(k.n) * dot(v, way), BigInt(k.d)));

/** At least the sum, and more than it only by rounding its irrational parts, and fractions finer than the grain, up to the grain. */
function sumUp(parts: readonly Surd[], grain: Rational): Rational {
  const byRoot = new Map<number, Surd>();
  for (const part of parts) byRoot.set(part.r, addSurds(byRoot.get(part.r) ?? surd(rational(0)), part));
  return [...byRoot.values()].map((sum) => (sum.r === 0 && sum.p.d < FINE.d ? sum.p : ceilToStep(sum, grain))).reduce(add);
}

function inWholeNumbers(outline: readonly Point[]): Outline {
  const over = outline.reduce((lcm, p) => (lcm / gcd(lcm, BigInt(p.w))) * BigInt(p.w), 1n);
  const corners = outline.map((p): Vector => [(BigInt(p.x) * over) / BigInt(p.w), (BigInt(p.y) * over) / BigInt(p.w)]);
  const spans = corners.map(([x, y], i): Vector => [corners[(i + 1) % corners.length]![0] - x, corners[(i + 1) % corners.length]![1] - y]);
  const edges = spans.map(([x, y]): Vector => [x / gcd(x, y), y / gcd(x, y)]);
  return { corners, over, edges, lengths: spans.map((span) => dot(span, span)) };
}

/** The direction of the longest edge, level and upright ones before slanted ones. */
function grainOf({ edges, lengths }: Outline): Vector {
  const isLevel = ([x, y]: Vector): boolean => x === 0n || y === 0n;
  const order = edges
    .map((_, i) => i)
    .sort((i, j) => {
      const [levelI, levelJ] = [isLevel(edges[i]!), isLevel(edges[j]!)];
      if (levelI !== levelJ) return levelI ? -1 : 1;
      return lengths[i]! === lengths[j]! ? i - j : lengths[i]! > lengths[j]! ? -1 : 1;
    });
  return edges[order[0]!]!;
}

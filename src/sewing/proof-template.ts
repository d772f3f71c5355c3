import type { Cut } from '../cutting/cut.ts';
import { compareRoots, exactly, fraction, minus, order, over, plus, root, say, scaled, straight, times } from './proof-number.ts';
import type { Fraction, Roots } from './proof-number.ts';
import { dot, spot, spotOf, squaredDistance, turnedBy, vector } from './proof-outline.ts';
import type { Outline, Spot } from './proof-outline.ts';
import type { Plan } from './proof-table.ts';

const ORIGIN = spot(0n, 0n);
const UPRIGHT = spot(1n, 0n);

/** @returns what is wrong with a template for a part, or null */
export function templateFault(plan: Plan, cut: Cut, outline: Outline): string | null {
  if (!cut.template) return 'is cut round a template, but the line has none';
  const template = cut.template.map(spotOf);
  if (!congruent(template, outline)) return 'does not have the outline of its template';
  const size = [exactly(cut.width), exactly(cut.height)];
  const shorter = size.map((side) => minus(side, exactly(plan.ruler)));
  const isAtMost = (length: Roots, side: Fraction): boolean => compareRoots(length, straight(side)) <= 0;
  let holds = false;
  // Upright, or lying on one of its edges: width and height of the outline along and across that direction. All cloth within the
  // allowance is asked for; what of a sharp tip reaches further is trimmed off to fit the neighbour. But no side need be a whole step of
  // the ruler longer than the template with its tips.
  for (const along of [UPRIGHT, ...template.map((p, i) => vector(p, template[(i + 1) % template.length]))]) {
    const ways = [along, turnedBy(along, 1)];
    const held = ways.map((way) => heldAlong(template, way, plan));
    for (const [first, second] of [
      [0, 1],
      [1, 0],
    ]) {
      if (!isAtMost(held[first], size[0]) || !isAtMost(held[second], size[1])) continue;
      holds = true;
      const reaches = [first, second].map((way) => reachAlong(template, ways[way], plan));
      if (!reaches.some((length, side) => isAtMost(length, shorter[side]))) return null;
    }
  }
  const said = `is cut from ${size.map(say).join(' by ')}, too`;
  return holds ? `${said} large for the ruler and the template with its tips` : `${said} small for the template with its allowance`;
}

/** @returns how wide the finished outline is along a direction, with the allowance on both sides */
function heldAlong(outline: Outline, way: Spot, { step, seam }: Plan): Roots {
  const along = outline.map((p) => dot(ORIGIN, way, p)).sort(order);
  const norm = squaredDistance(ORIGIN, way);
  const reach = times(minus(along[along.length - 1], along[0]), exactly(step));
  return [...root(over(reach, norm), norm), ...straight(scaled(2, exactly(seam)))];
}

/** @returns how wide the template is along a direction when its raw edges run on to their tips */
function reachAlong(outline: Outline, way: Spot, plan: Plan): Roots {
  const furthest = (u: Spot): Roots =>
    outline.flatMap((_, i) => tipsAlong(outline, i, u, plan)).reduce((most, here) => (compareRoots(here, most) > 0 ? here : most));
  return [...furthest(way), ...furthest(turnedBy(way, 2))];
}

/**
 * How far a template's tip at one corner reaches along a direction u. Raw edges lie one allowance s out from the finished ones. With a
 * and b the edges that arrive and leave, as vectors, they meet at s·(|b|·a − |a|·b)/(a × b) from the corner, for that lies s from both
 * lines. A tip that would reach more than 2s past the corner, where the cosine of its angle is above 3/5, is cut straight across there.
 */
function tipsAlong(outline: Outline, i: number, u: Spot, { step, seam }: Plan): Roots[] {
  const n = outline.length;
  const [before, corner, next] = [outline[(i + n - 1) % n], outline[i], outline[(i + 1) % n]];
  const [a, b] = [vector(before, corner), vector(corner, next)];
  const [s, norm] = [exactly(seam), squaredDistance(ORIGIN, u)];
  const onto = (v: Spot, w: Spot): Fraction => dot(ORIGIN, v, w);
  const [aa, bb] = [onto(a, a), onto(b, b)];
  const here = root(over(times(onto(corner, u), exactly(step)), norm), norm);
  // k·√(m/N), N being u's own square
  const term = (k: Fraction, m: Fraction): Roots => root(over(k, norm), times(m, norm));
  const back = minus(fraction(0n), onto(a, b));
  if (back.n > 0n && order(scaled(25, times(back, back)), scaled(9, times(aa, bb))) > 0) {
    const past = (edge: Spot, on: Spot): Roots => {
      const far = plus(onto(turnedBy(edge, 3), u), scaled(2, onto(on, u)));
      const length = squaredDistance(ORIGIN, edge);
      return [...here, ...term(over(times(s, far), length), length)];
    };
    return [past(a, a), past(b, turnedBy(b, 2))];
  }
  const k = over(s, onto(turnedBy(a, 1), b));
  return [[...here, ...term(times(k, onto(a, u)), bb), ...term(minus(fraction(0n), times(k, onto(b, u))), aa)]];
}

/** @returns whether one outline is the other after some turn and shift (not mirrored: cloth has a right side) */
function congruent(a: Outline, b: Outline): boolean {
  if (a.length !== b.length) return false;
  const corner = (outline: Outline, i: number): readonly [Fraction, Fraction] => {
    const n = outline.length;
    const [p, q, r] = [outline[(i + n - 1) % n], outline[i], outline[(i + 1) % n]];
    return [squaredDistance(q, r), dot(q, p, r)];
  };
  const [one, other] = [a, b].map((outline) => outline.map((_, i) => corner(outline, i)));
  // A clockwise convex outline is settled by its edges and the angles between them, in order.
  return other.some((_, start) =>
    one.every((mine, i) => {
      const theirs = other[(start + i) % other.length];
      return order(mine[0], theirs[0]) === 0 && order(mine[1], theirs[1]) === 0;
    }),
  );
}

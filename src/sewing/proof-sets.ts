import type { Cut, StripSet } from '../cutting/cut.ts';
import { compareRoots, exactly, fraction, minus, order, over, plus, root, say, scaled, straight, times } from './proof-number.ts';
import type { Fraction, Roots } from './proof-number.ts';
import { dot, spot, spotOf, squaredDistance, turnedBy, vector } from './proof-outline.ts';
import type { Outline, Spot } from './proof-outline.ts';
import type { Plan, SewnStep, Tell } from './proof-table.ts';

const ORIGIN = spot(0n, 0n);

/** How far an outline reaches along a direction: from where to where, in steps times the direction's own length. */
function reach(outline: Outline, way: Spot): readonly [Fraction, Fraction] {
  const [first, ...others] = outline.map((p) => dot(ORIGIN, way, p));
  return others.reduce<readonly [Fraction, Fraction]>(
    ([least, most], at) => [order(at, least) < 0 ? at : least, order(at, most) > 0 ? at : most],
    [first, first],
  );
}

/** A length along a direction, in the block's unit. */
function length([least, most]: readonly [Fraction, Fraction], way: Spot, { step }: Plan): Roots {
  const norm = squaredDistance(ORIGIN, way);
  return root(over(times(minus(most, least), exactly(step)), norm), norm);
}

/** The direction in which a set's strips run: that of every seam of its step. */
function seamsRun({ step }: SewnStep): Spot | null {
  const ways = step.joins.map(({ from, to }) => vector(spotOf(from), spotOf(to)));
  const [way] = ways;
  return way && ways.every(({ x, y }) => x * way.y === y * way.x) ? way : null;
}

/** @returns how many segments a strip gives once its ends are straight: as often as one goes into what is left */
function segmentsOf({ length: long, segment }: StripSet, straighten: Fraction): bigint {
  const times = over(minus(exactly(long), straighten), exactly(segment));
  return times.n < 0n ? 0n : times.n / times.d;
}

/**
 * Checks what is sewn of long strips and cut across: every part is a strip that runs right through the unit along its seams; all strips of
 * a set are equally long and are cut alike; a strip is as wide as its patch and a segment as wide as the unit with an allowance on either
 * side, rounded up to the ruler; and the strips are as long as the segments they are to give and the straightening take.
 */
export function checkSet(plan: Plan, table: SewnStep, tell: Tell): void {
  const { step, name, parts, result } = table;
  if (step.method !== 'strip-sets') return;
  const way = seamsRun(table);
  if (!way) return tell(`${name} is cut from strip sets, but its seams do not all run one way.`);
  if (!result) return;
  const whole = reach(result, way);
  let first: { readonly id: string; readonly set: StripSet } | null = null;
  step.parts.forEach((part, i) => {
    const which = `${name}, part ${i + 1}`;
    if (!('cut' in part.from)) return tell(`${which} is a unit, of which there is no strip.`);
    const { cut: id } = part.from;
    const [cut, outline] = [plan.cuts.find((line) => line.id === id), parts[i]];
    if (!cut || !outline) return;
    const { set } = cut;
    if (!set) return tell(`${which} (line ${id}) comes from a strip set, but its line does not say how the strip is cut.`);
    const [from, to] = reach(outline, way);
    if (!isAlong(outline, way) || order(from, whole[0]) !== 0 || order(to, whole[1]) !== 0)
      tell(`${which} (line ${id}) does not run right through its unit, as a strip does.`);
    first ??= { id, set };
    if (!isCutAlike(first.set, set)) tell(`${which} (line ${id}) comes from strips cut otherwise than those of line ${first.id}, which are sewn to them.`);
    const fault = stripFault(plan, cut, set, length([from, to], way, plan), length(reach(outline, turnedBy(way, 1)), turnedBy(way, 1), plan));
    if (fault) tell(`${which} (line ${id}) ${fault}.`);
  });
}

/** @returns whether an outline is a rectangle of which two sides lie along a direction */
function isAlong(outline: Outline, way: Spot): boolean {
  const across = turnedBy(way, 1);
  const level = (p: Spot, q: Spot, on: Spot): boolean => order(dot(ORIGIN, on, p), dot(ORIGIN, on, q)) === 0;
  return outline.length === 4 && outline.every((p, i) => [way, across].some((on) => level(p, outline[(i + 1) % 4], on)));
}

function isCutAlike(one: StripSet, other: StripSet): boolean {
  const equal = (a: StripSet['length'], b: StripSet['length']): boolean => order(exactly(a), exactly(b)) === 0;
  return one.segments === other.segments && equal(one.length, other.length) && equal(one.segment, other.segment);
}

function stripFault(plan: Plan, cut: Cut, set: StripSet, along: Roots, across: Roots): string | null {
  const [s, ruler, straighten] = [plan.seam, plan.ruler, plan.straighten ?? { n: 0, d: 1 }].map(exactly);
  const [wide, long, segment] = [set.across, set.length, set.segment].map(exactly);
  const sides = [cut.width, cut.height].map(exactly);
  const fits = (a: Fraction, b: Fraction): boolean => order(sides[0], a) === 0 && order(sides[1], b) === 0;
  if (!fits(wide, long) && !fits(long, wide)) return `comes from strips ${say(wide)} by ${say(long)}, but its line says ${sides.map(say).join(' by ')}`;
  for (const [what, has, finished] of [['strips', wide, across], ['segments', segment, along]] as const) {
    const least: Roots = [...finished, ...straight(scaled(2, s))];
    if (over(has, ruler).d !== 1n) return `comes from ${what} ${say(has)} wide, which the ruler does not show`;
    if (compareRoots(straight(has), least) < 0) return `comes from ${what} ${say(has)} wide, too narrow for what is sewn from them`;
    if (compareRoots(straight(minus(has, ruler)), least) >= 0) return `comes from ${what} ${say(has)} wide, wider than the ruler asks for`;
  }
  const given = segmentsOf(set, straighten);
  if (!Number.isInteger(set.segments) || set.segments < 1 || given !== BigInt(set.segments))
    return `comes from strips ${say(long)} long, which give ${given} segments ${say(segment)} wide, not ${set.segments}`;
  const needed = plus(times(fraction(given), segment), straighten);
  if (order(minus(long, ruler), needed) >= 0) return `comes from strips ${say(long)} long, longer than their segments and straightening ask for`;
  return null;
}

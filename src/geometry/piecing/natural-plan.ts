import { framesOf, regularity, type Frame } from './frames.ts';
import { same, searcher, type Counts, type Joined, type Plan } from './grid-search.ts';
import type { Leaves } from './leaves.ts';
import { sideBySide, type Pictures } from './pictures.ts';
import { together } from './pins.ts';
import { clothNovelty, handling, isPlain, sizeNovelty, type Weights } from './price.ts';
import { rectCount } from './rect-id.ts';
import { NO_RINGS, ringsWorthwhile, type RingsAt } from './rings.ts';
import { last } from './steps.ts';

/** How often a search learns from its own plan. */
const ROUNDS = 3;

/** In fields of more rectangles, rings are looked for only where there is no other way. */
const RINGS_BELOW = 400_000;

/** How many cuts may be weighed in all, whatever the size of the drawing; but a search, and one that has learnt from it, are always made. */
const EFFORT = 150_000_000;

/** @returns the cost of a plan with every novelty paid once */
function fullCost(plan: Plan, leaves: Leaves, weights: Weights): number {
  let cost = plan.joined.size * weights.join + plan.rings * weights.unit['partial-seam ring'];
  const sizes = new Set<string>();
  const kinds = new Set<string>();
  for (const [c, count] of plan.used) {
    const leaf = leaves.classes[c]!;
    cost += count * handling(leaf, weights) + clothNovelty(leaf, weights);
    if (!sizes.has(leaf.size)) cost += sizeNovelty(leaf, weights);
    if (!sizes.has(leaf.size) && kinds.has(leaf.kind)) cost += weights.anotherUnitSize * (leaf.alone ? weights.alone : 1);
    sizes.add(leaf.size);
    if (!isPlain(leaf)) kinds.add(leaf.kind);
  }
  return cost;
}

/**
 * Several views of the whole block, each an expectation of how often every leaf is used: as often as it can be found;
 * and, for each size that units have here, as if the units of that size were the ones the block is made of.
 */
function readings(leaves: Leaves, occurrences: readonly number[]): readonly (readonly number[])[] {
  const modules = new Set(leaves.classes.filter((leaf) => !isPlain(leaf)).map((leaf) => leaf.module));
  const asModule = (module: number): readonly number[] =>
    leaves.classes.map((leaf, c) => (isPlain(leaf) || leaf.module === module ? occurrences[c]! : 0));
  return [occurrences, ...[...modules].sort((a, b) => a - b).map(asModule)];
}

/** One search: within which frame, from which expectation. */
interface Attempt {
  readonly kept: Uint8Array | null;
  readonly start: Counts;
}

/** The searches worth making, the most promising first. */
function attempts(leaves: Leaves, frames: readonly Frame[], pictures: Pictures): readonly Attempt[] {
  const [often, ...others] = readings(leaves, sideBySide(leaves.field, leaves.classOf, leaves.classes.length));
  // Joins shared as widely as they could be, or not minded at all.
  const unminded = pictures.counts.map(() => Infinity);
  const within = (kept: Uint8Array | null, hope: readonly number[]): readonly Attempt[] => [
    { kept, start: { leaves: hope, joins: pictures.counts } },
    { kept, start: { leaves: hope, joins: unminded } },
  ];
  return [...within(null, often!), ...frames.flatMap(({ kept }) => within(kept, often!)), ...others.flatMap((hope) => within(null, hope))];
}

/** What every plan of a search must keep to. */
export interface Bounds {
  /** How rectangles lie to parts that must be made by themselves; null: there are none. */
  readonly parts: Uint8Array | null;
  /** What the block is to be joined from; null: whatever is best. */
  readonly last: Joined;
  /** Whether frames of equal modules are looked for. */
  readonly framed: boolean;
}

/** The best plan after so many searches. */
export interface Looked {
  readonly plan: Plan;
  /** What it costs as a whole. */
  readonly cost: number;
  /** How many searches may still be made, for each that was made. */
  readonly left: number;
}

/**
 * The construction an experienced pattern writer would choose. A seam sewn in two goes is taken only where every way
 * with through-seams has more pieces.
 * @yields after every search the best plan so far: the same one, or one that costs less
 * @returns null when every way would divide a whole patch
 */
export function* naturalPlans(leaves: Leaves, weights: Weights, pictures: Pictures, bounds: Bounds): Generator<Looked, Looked | null> {
  const cheapest = (ringsAt: RingsAt): Generator<Looked, Looked | null> => cheaperAndCheaper(leaves, weights, pictures, bounds, ringsAt);
  const straight = yield* cheapest(NO_RINGS);
  if (straight && rectCount(leaves.field) > RINGS_BELOW) return straight;
  const ringsAt = ringsWorthwhile(leaves);
  if (ringsAt.size === 0) return straight;
  const turning = last(cheapest(ringsAt));
  return turning && (!straight || piecesIn(turning.plan, leaves) < piecesIn(straight.plan, leaves)) ? turning : straight;
}

const piecesIn = (plan: Plan, { classes }: Leaves): number => [...plan.used].reduce((sum, [c, count]) => sum + count * classes[c]!.pieces, 0);

const halves = (hopes: readonly number[]): readonly number[] => hopes.map((hope) => hope / 2);

/**
 * @param otherwise how often to expect what is not used at all: half as often as was hoped for
 * @returns how often each thing is used
 */
function learnt(used: ReadonlyMap<number, number>, otherwise: readonly number[]): readonly number[] {
  const counts = otherwise.slice();
  for (const [c, count] of used) counts[c] = count;
  return counts;
}

/**
 * Searches under several expectations of how often each thing is used, learns from each plan what is really used, and
 * keeps the plan that costs least as a whole.
 */
function* cheaperAndCheaper(
  leaves: Leaves,
  weights: Weights,
  pictures: Pictures,
  bounds: Bounds,
  ringsAt: RingsAt,
): Generator<Looked, Looked | null> {
  const { field } = leaves;
  const { parts, last: joined } = bounds;
  const frames = bounds.framed ? framesOf(field, pictures, weights) : [];
  const within = (kept: Uint8Array | null): Uint8Array | null => (kept && parts ? together(parts, kept) : (kept ?? parts));
  const search = searcher(leaves, weights, pictures.contents, ringsAt);
  let passes = Math.max(2, Math.floor(EFFORT / (rectCount(field) * (field.xs.length + field.ys.length))));
  let best = null as Looked | null;
  let made = 0;
  const tries = attempts(leaves, frames, pictures);
  const halfOfJoins = halves(pictures.counts);
  for (const [i, { kept, start }] of tries.entries()) {
    const keep = within(kept);
    let counts = start;
    const otherwise = halves(start.leaves);
    for (let round = 0; round < ROUNDS && passes > 0; round++, passes--) {
      const plan = search(counts, keep, joined);
      if (!plan) break;
      const cost = fullCost(plan, leaves, weights) * regularity(plan, field, frames);
      const rest = Math.min(passes - 1, (tries.length - i) * ROUNDS - round - 1);
      made++;
      const left = rest / made;
      best = best !== null && cost >= best.cost - 1e-9 ? { ...best, left } : { plan, cost, left };
      yield best;
      const next: Counts = { leaves: learnt(plan.used, otherwise), joins: learnt(plan.joined, halfOfJoins) };
      if (same(next.leaves, counts.leaves) && same(next.joins, counts.joins)) break;
      counts = next;
    }
  }
  return best;
}

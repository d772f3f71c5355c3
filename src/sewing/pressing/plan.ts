import type { Pressed, SeamPoint } from '../step.ts';
import { tableOf, type Meeting, type SewnJoin, type Table } from './meetings.ts';
import { Pairs, pressedBest, type Way } from './spins.ts';
import { besides, isLeftOpen, sidesOf, type Darkness } from './trouble.ts';
import type { Unworded } from '../wording.ts';

/*
 * Where every seam is pressed: to one side, to the other, or open; once for each seam of each step, since a step makes all its copies
 * alike. Seams that meet across a third nest where they lie opposite ways. First of all as many as can be nest, over all copies in the
 * block; of the plans that leave the fewest, the one with the least trouble (`trouble.ts`). Open are the last seam of an hourglass, what
 * the maker asks for, and a seam on which eight pieces come together at one point, where nothing has to nest with it later.
 */

export interface PressingPlan {
  /** By step and join; a finish lies as its beginning does. */
  readonly pressed: readonly (readonly Pressed[])[];
  /** By step, along its joins in their order. */
  readonly points: readonly (readonly SeamPoint[])[];
  /** Pairs of seams that meet and do not nest, over all copies: in this plan, and the fewest that any plan can leave. */
  readonly apart: number;
  readonly apartAtLeast: number;
  /** Whether no plan leaves fewer, and none that leaves as few has less trouble. */
  readonly proved: boolean;
}

/** Seam ends at one point of a join from which on it lies open: eight pieces come together there (common practice). */
const MANY_ENDS = 6;

/** @param forced how the maker wants a join pressed, where there is a wish */
export function pressingPlan(
  steps: readonly Unworded[],
  darkness: Darkness,
  forced: (step: number, join: number) => Pressed | undefined = () => undefined,
): PressingPlan {
  const table = tableOf(steps);
  const solved = solve(steps, table, darkness, forced);
  const toward = (seam: number): Pressed => solved.ways[seam]!;
  const pressed = table.joins.map((joins) => joins.map(({ seam }) => toward(seam)));
  return {
    ...solved,
    pressed,
    points: pointsOf(steps.length, table.meetings, toward),
  };
}

const RANK: Readonly<Record<SeamPoint['lie'], number>> = { open: 0, 'opposite ways': 1, 'the same way': 2 };

function pointsOf(steps: number, meetings: readonly Meeting[], toward: (seam: number) => Pressed): readonly (readonly SeamPoint[])[] {
  const points: Map<string, SeamPoint>[] = Array.from({ length: steps }, () => new Map());
  for (const { step, join, at, one, other, sign } of meetings) {
    const [a, b] = [toward(one), toward(other)];
    const lie = a === 'open' || b === 'open' ? 'open' : (a === b) === (sign === 1) ? 'opposite ways' : 'the same way';
    const name = `${join} ${at.x} ${at.y} ${at.w}`;
    const before = points[step]!.get(name)?.lie;
    // Of several pairs at one point, one that lies the same way is in the way of all; one that nests holds those beside it that are open.
    if (before === undefined || RANK[lie] > RANK[before]) points[step]!.set(name, { join, at, lie });
  }
  return points.map((found) => [...found.values()].sort((a, b) => a.join - b.join));
}

function solve(
  steps: readonly Unworded[],
  { joins, seams, meetings }: Table,
  darkness: Darkness,
  forced: (step: number, join: number) => Pressed | undefined,
): Pick<PressingPlan, 'apart' | 'apartAtLeast' | 'proved'> & { readonly ways: readonly Pressed[] } {
  const meets = new Set(meetings.flatMap(({ one, other }) => [one, other]));
  const given = seams.map(({ step, join }, seam): Way | null | undefined => {
    const wish = forced(step, join);
    if (wish) return WAY_OF[wish];
    return isLeftOpen(steps[step]!, join) || (!meets.has(seam) && comeTogether(joins[step]![join]!)) ? null : undefined;
  });
  const single = seams.map(({ step, join }): [number, number] => {
    const { gatherings } = joins[step]![join]!;
    const ends = ([0, 1] as const).map((side) => gatherings.reduce((sum, each) => sum + each.ends[side].length, 0));
    const { count } = steps[step]!;
    return sidesOf(steps[step]!, join, ends as [number, number], darkness).map((trouble) => trouble * count) as [number, number];
  });
  const [apart, uneven] = [new Pairs(seams.length), new Pairs(seams.length)];
  // A unit beside its own copy may be pressed as it likes: its seam lies as it lies.
  let always = 0;
  for (const { one, other, sign, step } of meetings) {
    if (given[one] === null || given[other] === null) continue;
    const { count } = steps[step]!;
    if (one !== other) apart.add(one, other, sign === 1 ? 0 : count, sign === 1 ? count : 0);
    else if (sign === -1) always += count;
  }
  steps.forEach((step, s) => {
    for (const { one, other, sameSide, trouble } of besides(step)) {
      const [a, b] = [joins[s]![one]!.seam, joins[s]![other]!.seam];
      if (given[a] === null || given[b] === null || a === b) continue;
      uneven.add(a, b, sameSide ? 0 : trouble * step.count, sameSide ? trouble * step.count : 0);
    }
  });
  const { ways, ...found } = pressedBest({ given, single, apart, uneven });
  return {
    proved: found.proved,
    apart: found.apart + always,
    apartAtLeast: found.apartAtLeast + always,
    ways: ways.map((way) => (way === null ? 'open' : way === 1 ? 'second' : 'first')),
  };
}

const WAY_OF: Readonly<Record<Pressed, Way | null>> = { first: 0, second: 1, open: null };

const comeTogether = ({ gatherings }: SewnJoin): boolean =>
  gatherings.some(({ ends: [first, second] }) => first.length + second.length >= MANY_ENDS);

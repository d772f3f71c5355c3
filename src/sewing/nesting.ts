import { box } from '../geometry/convex.ts';
import { placed, type Turn } from '../geometry/piecing/congruence.ts';
import { compareAlong, lineThrough, moved, samePoint, side, type Point } from '../geometry/point.ts';
import type { Join, Pressed, StepPart } from './step.ts';

/** What a step lays down and sews, before anything is pressed. */
export interface Laid {
  readonly makes: string;
  readonly count: number;
  readonly parts: readonly StepPart[];
  readonly joins: readonly Join[];
}

/**
 * How a join would be pressed if no other seam met it. A hard wish is always kept; the others give way to seams that nest, and the
 * larger weight to the smaller.
 */
export interface Wish {
  readonly toward: Pressed;
  readonly weight: number | 'hard';
}

/** Where seams of both things that a step joins meet on the seam between them, square to it. */
export interface Crossings {
  readonly met: number;
  /** Of these, where the two lie opposite ways, so that they lock. */
  readonly nested: number;
}

export interface PressingPlan {
  /** By step and join. */
  readonly pressed: readonly (readonly Pressed[])[];
  /** By step, in one of what it makes. */
  readonly crossings: readonly Crossings[];
}

/** An end of a seam on the outside of something sewn. */
interface End {
  readonly at: Point;
  /** Number of the seam among those of all steps. */
  readonly seam: number;
  readonly runs: 'upright' | 'level' | 'slanted';
  /** 1: when the seam is pressed toward its second thing, its allowances lie to the right or down; −1: to the left or up. */
  readonly lies: 1 | -1;
}

/** Two seams that meet: opposite ways when way(one) · way(other) = sign. */
interface Meeting {
  readonly one: number;
  readonly other: number;
  readonly sign: 1 | -1;
  readonly step: number;
}

/**
 * Chooses for every seam the side it is pressed to, the same in all copies of a unit: as many seams as can be lie opposite ways
 * where they meet, those that meet most often first; after that the wishes decide.
 * @param wishes for one join of one step, told how many seams end along its first and its second thing
 */
export function nestingPlan(
  steps: readonly Laid[],
  wishes: (step: number, join: number, ends: readonly [number, number]) => Wish,
): PressingPlan {
  const made = new Map<string, Outside>();
  const meetings: Meeting[] = [];
  const wished: Wish[] = [];
  const seamOf: number[][] = [];
  steps.forEach((step, s) => {
    const sewn = sewOnTable(step, made, wished.length);
    made.set(step.makes, { ends: sewn.ends, parts: step.parts });
    seamOf.push(sewn.seams);
    step.joins.forEach(({ sew }, j) => {
      if (sew !== 'finish') wished.push(wishes(s, j, sewn.along[j]!));
    });
    meetings.push(...sewn.meetings.map((meeting) => ({ ...meeting, step: s })));
  });
  const ways = solved(wished, meetings, steps, seamOf);
  const toward = (seam: number): Pressed => (wished[seam]!.toward === 'open' ? 'open' : ways[seam] === 1 ? 'second' : 'first');
  return {
    pressed: seamOf.map((seams) => seams.map(toward)),
    crossings: steps.map((_, s) => {
      const here = meetings.filter((meeting) => meeting.step === s);
      return { met: here.length, nested: here.filter(({ one, other, sign }) => ways[one]! * ways[other]! === sign).length };
    }),
  };
}

/** A unit as later steps take it up. */
interface Outside {
  readonly ends: readonly End[];
  readonly parts: readonly StepPart[];
}

interface Sewn {
  readonly ends: readonly End[];
  /** The number of each join's seam; a finish has its beginning's. */
  readonly seams: number[];
  /** By join: how many seams end along it on its first and its second thing. */
  readonly along: readonly (readonly [number, number])[];
  readonly meetings: readonly Omit<Meeting, 'step'>[];
}

function sewOnTable({ parts, joins }: Laid, made: ReadonlyMap<string, Outside>, firstSeam: number): Sewn {
  const things: End[][] = parts.map((part) => endsOf(part, made));
  const members: number[][] = parts.map((_, i) => [i]);
  const seams: number[] = [];
  const along: [number, number][] = [];
  const meetings: Omit<Meeting, 'step'>[] = [];
  let next = firstSeam;
  for (const join of joins) {
    const { sew, first, second, from, to } = join;
    // What ends at an end of the seam stays on the outside; a finish begins where its beginning stopped.
    const isOn = ({ at }: End): boolean => isBetween(at, from, to) && !samePoint(at, to) && (sew === 'finish' || !samePoint(at, from));
    const seam = sew === 'finish' ? seams[first - parts.length]! : next++;
    // What a finish closes against holds both sides of it.
    const [one, other] = sew === 'finish' ? [things[second]!, []] : [things[first]!, things[second]!];
    const [met, across] = [one.filter(isOn), other.filter(isOn)];
    along.push([one, other].map((ends) => ends.filter(({ at }) => isBetween(at, from, to)).length) as [number, number]);
    const runs = runOf(join);
    met.forEach((a, i) => {
      for (const b of sew === 'finish' ? met.slice(i + 1) : across) {
        const square = a.runs !== 'slanted' && a.runs === b.runs && a.runs !== runs && runs !== 'slanted';
        if (square && compareAlong(a.at, b.at) === 0) meetings.push({ one: a.seam, other: b.seam, sign: a.lies === b.lies ? -1 : 1 });
      }
    });
    const rest = [...one, ...other].filter((end) => !isOn(end));
    if (sew !== 'finish') {
      // A part lies on one side of its seam; an unfinished ring may not.
      const lies = second < parts.length ? liesOf(join, parts[second]!, runs) : opposite(liesOf(join, parts[members[first]![0]!]!, runs));
      rest.push({ at: from, seam, runs, lies }, { at: to, seam, runs, lies });
    }
    things.push(rest);
    members.push([...members[first]!, ...members[second]!]);
    seams.push(seam);
  }
  return { ends: things.at(-1)!, seams, along, meetings };
}

/** @returns the ends of a unit's seams where the unit lies in a step */
function endsOf({ from, turn, outline }: StepPart, made: ReadonlyMap<string, Outside>): End[] {
  const unit = 'unit' in from ? made.get(from.unit) : undefined;
  if (!unit) return [];
  const turned = box(unit.parts.flatMap((part) => part.outline.map((p) => placed(p, { turn, dx: 0, dy: 0 }))));
  const here = box(outline);
  // Units lie on whole steps.
  const [dx, dy] = [here.left.x / here.left.w - turned.left.x / turned.left.w, here.top.y / here.top.w - turned.top.y / turned.top.w];
  return unit.ends.map(({ at, seam, runs, lies }) => ({
    at: moved(placed(at, { turn, dx: 0, dy: 0 }), dx, dy),
    seam,
    ...turnedRun(runs, lies, turn),
  }));
}

/** A quarter turn clockwise brings right to down and down to left. */
function turnedRun(runs: End['runs'], lies: End['lies'], turn: Turn): Pick<End, 'runs' | 'lies'> {
  if (turn === 0 || runs === 'slanted') return { runs, lies };
  const next = runs === 'upright' ? ({ runs: 'level', lies } as const) : ({ runs: 'upright', lies: opposite(lies) } as const);
  return turnedRun(next.runs, next.lies, (turn - 1) as Turn);
}

function runOf({ from, to }: Join): End['runs'] {
  if (from.x * to.w === to.x * from.w) return 'upright';
  return from.y * to.w === to.y * from.w ? 'level' : 'slanted';
}

const opposite = (lies: End['lies']): End['lies'] => (lies === 1 ? -1 : 1);

/** @returns 1 where a part lies to the right of a join or below it, −1 where it lies to the left or above */
function liesOf({ from, to }: Join, part: StepPart, runs: End['runs']): End['lies'] {
  const [start, end] = compareAlong(from, to) < 0 ? [from, to] : [to, from];
  const line = lineThrough(start, end);
  // The front of a line is to the right of its direction: below one that runs right, to the left of one that runs down.
  const inFront = part.outline.map((p) => side(line, p)).find((s) => s !== 0)! > 0;
  return (runs === 'upright' ? !inFront : inFront) ? 1 : -1;
}

/** @returns whether a point lies on a seam, its ends among it */
function isBetween(p: Point, from: Point, to: Point): boolean {
  return side(lineThrough(from, to), p) === 0 && compareAlong(from, p) * compareAlong(p, to) >= 0;
}

/** @returns for each seam 1 (toward its second thing) or −1 */
function solved(
  wished: readonly Wish[],
  meetings: readonly Meeting[],
  steps: readonly Laid[],
  seamOf: readonly (readonly number[])[],
): readonly (1 | -1)[] {
  const ties = new Ties(wished.length);
  const way = (seam: number): 1 | -1 => (wished[seam]!.toward === 'first' ? -1 : 1);
  wished.forEach(({ weight }, seam) => {
    if (weight === 'hard') ties.tie(ties.fixed, seam, way(seam));
  });
  const times = new Map<string, { readonly one: number; readonly other: number; readonly sign: 1 | -1; often: number }>();
  for (const { one, other, sign, step } of meetings) {
    if (wished[one]!.toward === 'open' || wished[other]!.toward === 'open') continue;
    const key = `${Math.min(one, other)} ${Math.max(one, other)} ${sign}`;
    const found = times.get(key) ?? { one, other, sign, often: 0 };
    times.set(key, { ...found, often: found.often + steps[step]!.count });
  }
  for (const { one, other, sign } of [...times.values()].sort((a, b) => b.often - a.often)) ties.tie(one, other, sign);
  // A seam that nothing else decides goes the same way as the one beside it.
  for (const seams of seamOf) {
    seams.forEach((seam, i) => {
      const beside = seams[i > 0 ? i - 1 : 1];
      if (wished[seam]!.weight === 0 && beside !== undefined) ties.tie(beside, seam, 1);
    });
  }
  const votes = new Map<number, number>();
  seamOf.forEach((seams, s) =>
    seams.forEach((seam) => {
      const { weight } = wished[seam]!;
      if (weight === 'hard') return;
      const { root, sign } = ties.find(seam);
      votes.set(root, (votes.get(root) ?? 0) + weight * steps[s]!.count * way(seam) * sign);
    }),
  );
  const fixed = ties.find(ties.fixed);
  return wished.map((_, seam) => {
    const { root, sign } = ties.find(seam);
    const of = root === fixed.root ? fixed.sign : (votes.get(root) ?? 0) < 0 ? -1 : 1;
    return (of * sign) as 1 | -1;
  });
}

/** Seams whose ways are known relative to each other. */
class Ties {
  /** Stands for a way that is given: 1. */
  readonly fixed: number;
  private readonly parent: number[];
  private readonly sign: (1 | -1)[];
  constructor(count: number) {
    this.fixed = count;
    this.parent = Array.from({ length: count + 1 }, (_, i) => i);
    this.sign = this.parent.map(() => 1);
  }

  /** @returns what a seam's way is known by: its way is that one's times the sign */
  find(seam: number): { readonly root: number; readonly sign: 1 | -1 } {
    let [root, sign] = [seam, 1];
    while (this.parent[root] !== root) {
      sign *= this.sign[root]!;
      root = this.parent[root]!;
    }
    this.parent[seam] = root;
    this.sign[seam] = sign as 1 | -1;
    return { root, sign: sign as 1 | -1 };
  }

  /** Ties two seams so that the product of their ways is the sign, unless they are tied already. */
  tie(one: number, other: number, sign: 1 | -1): void {
    const [a, b] = [this.find(one), this.find(other)];
    if (a.root === b.root) return;
    this.parent[a.root] = b.root;
    this.sign[a.root] = (a.sign * b.sign * sign) as 1 | -1;
  }
}

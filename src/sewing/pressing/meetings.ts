import { box } from '../../geometry/convex.ts';
import { placed, type Turn } from '../../geometry/piecing/congruence.ts';
import { compareAlong, gcd, lineThrough, samePoint, side, signOfProducts, type Point } from '../../geometry/point.ts';
import type { Join, StepPart } from '../step.ts';

/** What a step lays down and sews, before anything is pressed. */
export interface Laid {
  readonly makes: string;
  readonly count: number;
  readonly parts: readonly StepPart[];
  readonly joins: readonly Join[];
}

/** An end of a seam on the outside of something sewn, as it lies there. */
export interface End {
  readonly at: Point;
  /** Number of the seam among those of all steps. */
  readonly seam: number;
  /** From the end into the seam, the least whole steps. */
  readonly dx: number;
  readonly dy: number;
  /** 1: pressed toward its second thing, its allowances lie clockwise of it about the end; −1: counter-clockwise. A turn changes nothing. */
  readonly spin: 1 | -1;
}

/**
 * Two seams that meet from the two sides of a third: they lie on each other when that one is pinned (each is the other's mirror image),
 * or run on into each other. They lie opposite ways along it, and nest, where both are pressed clockwise about the point or both
 * counter-clockwise: where way(one) · way(other) = sign.
 */
export interface Meeting {
  readonly one: number;
  readonly other: number;
  readonly sign: 1 | -1;
  readonly step: number;
  readonly join: number;
  readonly at: Point;
}

/** The seams that end at one point of a join: on the side of its first thing, and of its second. */
export interface Gathering {
  readonly at: Point;
  readonly ends: readonly [readonly End[], readonly End[]];
}

/** One join as it was sewn. */
export interface SewnJoin {
  /** The number of its seam; a finish has its beginning's. */
  readonly seam: number;
  /** Least whole steps along the join, from `from` to `to`. */
  readonly dx: number;
  readonly dy: number;
  /** 1: its second thing lies clockwise of it, −1: counter-clockwise. */
  readonly spin: 1 | -1;
  /** Where earlier seams end along it, its own ends among these points. */
  readonly gatherings: readonly Gathering[];
}

/** Everything that is to be known of the seams of a block before they are pressed. */
export interface Table {
  /** By step and join. */
  readonly joins: readonly (readonly SewnJoin[])[];
  /** The seam's step and join, by its number. */
  readonly seams: readonly { readonly step: number; readonly join: number }[];
  readonly meetings: readonly Meeting[];
}

/** A unit as later steps take it up. */
interface Outside {
  readonly ends: readonly End[];
  readonly parts: readonly StepPart[];
}

/** @returns all seams of the steps, and where they meet */
export function tableOf(steps: readonly Laid[]): Table {
  const made = new Map<string, Outside>();
  const seams: { step: number; join: number }[] = [];
  const meetings: Meeting[] = [];
  const joins = steps.map((laid, step) => {
    const first = seams.length;
    laid.joins.forEach(({ sew }, join) => sew === 'finish' || seams.push({ step, join }));
    const { sewn, ends } = sewOnTable(laid, made, first, (meeting) => meetings.push({ ...meeting, step }));
    made.set(laid.makes, { ends, parts: laid.parts });
    return sewn;
  });
  return { joins, seams, meetings };
}

function sewOnTable(
  { parts, joins }: Laid,
  made: ReadonlyMap<string, Outside>,
  firstSeam: number,
  found: (meeting: Omit<Meeting, 'step'>) => void,
): { readonly sewn: readonly SewnJoin[]; readonly ends: readonly End[] } {
  const things: (readonly End[])[] = parts.map((part) => endsOf(part, made));
  /** A part of each thing: of what a join made, its first. */
  const member: number[] = parts.map((_, i) => i);
  const sewn: SewnJoin[] = [];
  let next = firstSeam;
  joins.forEach((join, j) => {
    const { sew, first, second, from, to } = join;
    const line = lineThrough(from, to);
    const common = gcd(line.a, line.b);
    const [dx, dy] = [line.b / common, line.a === 0 ? 0 : -line.a / common];
    const seam = sew === 'finish' ? sewn[first - parts.length]!.seam : next++;
    // A part lies on one side of its seam; an unfinished ring may not. In front of a line is right of it, which is clockwise.
    const inFront = (part: number): boolean => parts[part]!.outline.map((p) => side(line, p)).find((s) => s !== 0)! > 0;
    const spin = (second < parts.length ? inFront(second) : !inFront(member[first]!)) ? 1 : -1;
    const byPoint: { at: Point; ends: [End[], End[]] }[] = [];
    const rest: End[] = [];
    // What a finish closes against holds both sides of it.
    for (const end of sew === 'finish' ? things[second]! : [...things[first]!, ...things[second]!]) {
      const { at } = end;
      if (!isBetween(at, from, to)) {
        rest.push(end);
        continue;
      }
      // What ends at an end of the seam stays on the outside; a finish begins where its beginning stopped.
      if (samePoint(at, to) || (sew !== 'finish' && samePoint(at, from))) rest.push(end);
      const turn = dx * end.dy - dy * end.dx;
      if (turn === 0) continue;
      let gathering = byPoint.find((each) => samePoint(each.at, at));
      if (!gathering) byPoint.push((gathering = { at, ends: [[], []] }));
      gathering.ends[turn > 0 === spin > 0 ? 1 : 0].push(end);
    }
    for (const { at, ends } of byPoint) {
      if (samePoint(at, to) || (sew !== 'finish' && samePoint(at, from))) continue;
      for (const a of ends[0]) {
        for (const b of ends[1]) {
          if (meet(a, b, dx, dy)) found({ one: a.seam, other: b.seam, sign: a.spin === b.spin ? 1 : -1, join: j, at });
        }
      }
    }
    if (sew !== 'finish') {
      rest.push({ at: from, seam, dx, dy, spin }, { at: to, seam, dx: dx === 0 ? 0 : -dx, dy: dy === 0 ? 0 : -dy, spin: spin === 1 ? -1 : 1 });
    }
    things.push(rest);
    member.push(member[first]!);
    sewn.push({ seam, dx, dy, spin, gatherings: byPoint });
  });
  return { sewn, ends: things.at(-1)! };
}

/** @returns whether two ends on the two sides of a line in direction dx, dy run on into each other, or are mirror images in it */
function meet(a: End, b: End, dx: number, dy: number): boolean {
  if (signOfProducts(a.dx, b.dy, -a.dy, b.dx, 0, 0) === 0) return true;
  const [crossA, crossB] = [dx * a.dy - dy * a.dx, dx * b.dy - dy * b.dx];
  const [alongA, alongB] = [dx * a.dx + dy * a.dy, dx * b.dx + dy * b.dy];
  return signOfProducts(crossA, alongB, crossB, alongA, 0, 0) === 0;
}

/** @returns the ends of a unit's seams where the unit lies in a step */
function endsOf({ from, turn, outline }: StepPart, made: ReadonlyMap<string, Outside>): readonly End[] {
  const unit = 'unit' in from ? made.get(from.unit) : undefined;
  if (!unit) return [];
  const turned = box(unit.parts.flatMap((part) => part.outline.map((p) => placed(p, { turn, dx: 0, dy: 0 }))));
  const here = box(outline);
  // Units lie on whole steps.
  const placement = { turn, dx: here.left.x / here.left.w - turned.left.x / turned.left.w, dy: here.top.y / here.top.w - turned.top.y / turned.top.w };
  return unit.ends.map((end) => ({ ...end, at: placed(end.at, placement), ...turnedWay(end.dx, end.dy, turn) }));
}

function turnedWay(dx: number, dy: number, turn: Turn): Pick<End, 'dx' | 'dy'> {
  const { x, y } = placed({ x: dx, y: dy, w: 1 }, { turn, dx: 0, dy: 0 });
  return { dx: x, dy: y };
}

/** @returns whether a point lies on a seam, its ends among it */
function isBetween(p: Point, from: Point, to: Point): boolean {
  return compareAlong(from, p) * compareAlong(p, to) >= 0 && side(lineThrough(from, to), p) === 0;
}

import type { Join } from './step.ts';
import { order, plus } from './proof-number.ts';
import { apart, area, compareAlong, corners, hull, isConvex, same, side, spotOf } from './proof-outline.ts';
import type { Outline, Spot } from './proof-outline.ts';

/** Something that lies on the table while a step is sewn. */
interface Thing {
  /** One convex outline; of a ring that is not finished yet, every part of it that was sewn on. */
  readonly members: readonly Outline[];
  /** Only on an unfinished ring: the seam that was sewn part of the way. */
  readonly open?: OpenSeam;
  /** Numbers of the parts and joins that went into an unfinished ring, the flap excepted. */
  readonly holds: readonly number[];
}

interface OpenSeam {
  readonly join: number;
  /** Index of the part with the longer edge among the members. */
  readonly flap: number;
  /** Where both parts have a corner: sewing begins here. */
  readonly start: Spot;
  /** The far end of the flap's edge: sewing ends here. */
  readonly end: Spot;
}

type Tell = (fault: string) => void;

/** An edge p → q of a clockwise outline: its cloth lies to the right. */
type Edge = readonly [Spot, Spot];

const edgesOf = (outline: Outline): Edge[] => outline.map((p, i) => [p, outline[(i + 1) % outline.length]]);
const edgeOnLine = (outline: Outline, p: Spot, q: Spot): Edge | undefined =>
  edgesOf(outline).find(([a, b]) => side(p, q, a) === 0 && side(p, q, b) === 0);
const isEdge = (edge: Edge, p: Spot, q: Spot): boolean => (same(edge[0], p) && same(edge[1], q)) || (same(edge[0], q) && same(edge[1], p));
const within = (p: Spot, a: Spot, b: Spot): boolean => compareAlong(p, a) * compareAlong(p, b) <= 0;

/**
 * Joins two convex outlines by a seam that is the whole of an edge of both.
 * @returns the outline of both together, or the reason why they cannot be joined
 */
export function joined(first: Outline, second: Outline, from: Spot, to: Spot): Outline | string {
  const one = edgeOnLine(first, from, to);
  const other = edgeOnLine(second, from, to);
  if (!one || !other) return 'does not lie along an edge of both things it joins';
  if (!same(one[0], other[1]) || !same(one[1], other[0])) {
    return same(one[0], other[0]) || same(one[1], other[1])
      ? 'joins two things that lie on the same side of it'
      : 'joins two edges that do not match in length and place';
  }
  if (!isEdge(one, from, to)) return 'is not the whole of the edge it is sewn along';
  const begin = first.indexOf(one[1]);
  const around = [...first.slice(begin), ...first.slice(0, begin)];
  const beginOther = second.indexOf(other[1]);
  const aroundOther = [...second.slice(beginOther), ...second.slice(0, beginOther)];
  const union = corners([...around, ...aroundOther.slice(1, -1)]);
  return isConvex(union) ? union : 'leaves an inner corner, so that what it makes cannot be sewn on by straight seams';
}

/** @returns the edges of some outlines that lie on the line and face its left or right side, in order along it */
function facing(outlines: readonly Outline[], p: Spot, q: Spot, clothOnRight: boolean): Edge[] {
  const sense = compareAlong(p, q) * (clothOnRight ? 1 : -1);
  return outlines
    .map((outline) => edgeOnLine(outline, p, q))
    .filter((edge): edge is Edge => edge !== undefined && compareAlong(edge[0], edge[1]) === sense)
    .map(([a, b]): Edge => (compareAlong(a, b) < 0 ? [a, b] : [b, a]))
    .sort((a, b) => compareAlong(a[0], b[0]));
}

/** @returns whether edges, in order along their line, fill exactly what lies between p and q */
function fill(edges: readonly Edge[], p: Spot, q: Spot): boolean {
  const [low, high] = compareAlong(p, q) < 0 ? [p, q] : [q, p];
  if (edges.length === 0) return false;
  return (
    same(edges[0][0], low) && same(edges[edges.length - 1][1], high) && edges.every((edge, i) => i === 0 || same(edges[i - 1][1], edge[0]))
  );
}

/** Begins a ring: two convex parts meet at one end of their edges, and one edge runs on beyond the other. */
function sewnPartWay(first: Outline, second: Outline, from: Spot, to: Spot, join: number): Thing | string {
  const one = edgeOnLine(first, from, to);
  const other = edgeOnLine(second, from, to);
  if (!one || !other) return 'does not lie along an edge of both things it joins';
  if (compareAlong(one[0], one[1]) === compareAlong(other[0], other[1])) return 'joins two things that lie on the same side of it';
  const [meetAtEnd, meetAtBegin] = [same(one[1], other[0]), same(one[0], other[1])];
  if (meetAtEnd && meetAtBegin) return 'is sewn part of the way although its edges match: it can be sewn right through';
  if (!meetAtEnd && !meetAtBegin) return 'cannot be begun: its two edges have no end in common';
  const start = meetAtEnd ? one[1] : one[0];
  const [oneEnd, otherEnd] = meetAtEnd ? [one[0], other[1]] : [one[1], other[0]];
  // Both edges run away from the common corner; they must run the same way to lie on one another.
  if (compareAlong(start, oneEnd) !== compareAlong(start, otherEnd)) return 'joins two edges that only touch at a corner';
  const flap = within(oneEnd, start, otherEnd) ? 1 : 0;
  const end = flap === 1 ? otherEnd : oneEnd;
  const tip = same(from, start) ? to : same(to, start) ? from : null;
  if (!tip || same(tip, start) || !within(tip, start, end)) return 'is not the beginning of the edge it is sewn along';
  return { members: [first, second], open: { join, flap, start, end }, holds: [] };
}

/** Sews one more part to an unfinished ring, along the whole of that part's edge. */
function sewnToRing(ring: Thing, open: OpenSeam, part: Outline, from: Spot, to: Spot): Thing | string {
  const edge = edgeOnLine(part, from, to);
  if (!edge || !isEdge(edge, from, to)) return 'is not the whole of the edge of the part it adds';
  const onRight = compareAlong(edge[0], edge[1]) === compareAlong(from, to);
  const [low, high] = compareAlong(from, to) < 0 ? [from, to] : [to, from];
  const across = facing(ring.members, from, to, !onRight).filter(([a, b]) => compareAlong(a, high) < 0 && compareAlong(low, b) < 0);
  if (!fill(across, from, to)) return 'joins two edges that do not match in length and place';
  const flap = ring.members[open.flap];
  const flapEdge = edgeOnLine(flap, from, to);
  const flapTakesPart = flapEdge !== undefined && across.some(([a, b]) => isEdge(flapEdge, a, b));
  // Only the end of the flap that is already sewn lies firm; the other end still swings free.
  if (flapTakesPart && !flapEdge.some((p) => same(p, open.start)))
    return 'takes in the loose end of a seam that is sewn only part of the way';
  const wrong = onRight ? 1 : -1;
  const body = ring.members.filter((_, i) => i !== open.flap || flapTakesPart);
  if (body.some((member) => member.some((p) => side(from, to, p) === wrong)))
    return 'would have to turn a corner: what it joins lies on both sides of it';
  if (ring.members.some((member) => !apart(member, part))) return 'joins things that overlap';
  return { ...ring, members: [...ring.members, part] };
}

/** Sews the open seam to its end and checks that the ring has closed. */
function finished(ring: Thing, open: OpenSeam, from: Spot, to: Spot): Thing | string {
  if (side(open.start, open.end, from) !== 0 || side(open.start, open.end, to) !== 0) return 'does not follow the seam it is to finish';
  if (
    same(from, to) ||
    (!same(from, open.end) && !same(to, open.end)) ||
    !within(from, open.start, open.end) ||
    !within(to, open.start, open.end)
  ) {
    return 'does not end where the seam it finishes ends';
  }
  const flapEdge = edgeOnLine(ring.members[open.flap], open.start, open.end) as Edge;
  const flapOnRight = compareAlong(flapEdge[0], flapEdge[1]) === compareAlong(open.start, open.end);
  const others = ring.members.filter((_, i) => i !== open.flap);
  if (!fill(facing(others, open.start, open.end, !flapOnRight), open.start, open.end))
    return 'joins two edges that do not match in length and place';
  const outline = hull(ring.members.flat());
  const areas = ring.members.map(area).reduce(plus);
  if (order(areas, area(outline)) !== 0) return 'closes a ring that is not a convex whole without gap';
  for (let i = 0; i < ring.members.length; i++) {
    if (ring.members.some((member, j) => j > i && !apart(ring.members[i], member))) return 'closes a ring whose parts overlap';
  }
  return { members: [outline], holds: [] };
}

/**
 * Sews the joins of one step in order.
 *
 * - `through`: two convex outlines on opposite sides of the seam; the seam is the whole of one edge of each; what it makes is convex.
 * - `part-way`: two convex outlines on opposite sides of the seam with one corner in common, where the seam begins; one of the two
 *   edges (the flap's) runs on beyond the other. `from`–`to` begins at the common corner and stays on the flap's edge.
 *   What it makes is an unfinished ring and need not be convex.
 * - `through` with an unfinished ring on one side: the seam is the whole of an edge of the added convex outline; across it edges of
 *   the ring's parts fill it exactly; every part but the flap lies across it; the flap takes part in it only with its firm end,
 *   or else is folded away and overlaps nothing.
 * - `finish`: edges of the ring's other parts fill the flap's whole edge exactly; all parts together fill a convex outline:
 *   their areas sum to it and no two overlap.
 *
 * @returns the outline of the one thing that remains, or null when there is none; every fault is told
 */
export function sewn(parts: readonly Outline[], joins: readonly Join[], tell: Tell): Outline | null {
  const things: (Thing | null)[] = parts.map((outline) => ({ members: [outline], holds: [] }));
  const gone = new Set<number>();
  const name = (thing: number): string => (thing < parts.length ? `part ${thing + 1}` : `what seam ${thing - parts.length + 1} made`);

  /** A fault as text; null for what follows from a fault already told. */
  type Made = Thing | string | null;

  const take = (thing: number): Made => {
    if (!Number.isInteger(thing) || thing < 0 || thing >= things.length) return 'joins something that is not on the table yet';
    if (gone.has(thing)) return `joins ${name(thing)}, which is already sewn into something else`;
    gone.add(thing);
    return things[thing];
  };

  const finish = (join: Join, from: Spot, to: Spot): Made => {
    const at = things.findIndex(
      (thing, i) =>
        !gone.has(i) && thing?.open !== undefined && (thing.open.join === join.first || thing.open.join + parts.length === join.first),
    );
    const ring = at < 0 ? null : things[at];
    if (!ring?.open) return 'finishes a seam that was not begun';
    if (join.second !== at && !ring.holds.includes(join.second)) return 'closes the ring against something that is not in it';
    gone.add(at);
    return finished(ring, ring.open, from, to);
  };

  const begin = (first: Thing, second: Thing, join: Join, seam: number, from: Spot, to: Spot): Made => {
    if (first.open || second.open) return 'begins a second ring before the first is finished';
    const ring = sewnPartWay(first.members[0], second.members[0], from, to, seam);
    return typeof ring === 'string' ? ring : { ...ring, holds: [ring.open?.flap === 0 ? join.second : join.first] };
  };

  const addToRing = (ring: Thing, open: OpenSeam, added: Thing, number: number, from: Spot, to: Spot): Made => {
    if (added.open) return 'joins two rings that are not finished';
    const grown = sewnToRing(ring, open, added.members[0], from, to);
    return typeof grown === 'string' ? grown : { ...grown, holds: [...ring.holds, number] };
  };

  const sew = (join: Join, seam: number): Made => {
    const [from, to] = [spotOf(join.from), spotOf(join.to)];
    if (same(from, to)) return 'has no length';
    if (join.sew === 'finish') return finish(join, from, to);
    const first = take(join.first);
    const second = take(join.second);
    if (typeof first === 'string') return first;
    if (typeof second === 'string') return second;
    if (!first || !second) return null;
    if (join.sew === 'part-way') return begin(first, second, join, seam, from, to);
    if (first.open) return addToRing(first, first.open, second, join.second, from, to);
    if (second.open) return addToRing(second, second.open, first, join.first, from, to);
    const union = joined(first.members[0], second.members[0], from, to);
    return typeof union === 'string' ? union : { members: [union], holds: [] };
  };

  joins.forEach((join, seam) => {
    const made = sew(join, seam);
    if (typeof made === 'string') tell(`seam ${seam + 1} ${made}`);
    things.push(typeof made === 'string' ? null : made);
  });

  const left = things.map((_, i) => i).filter((i) => !gone.has(i));
  const unsewn = left.filter((i) => i < parts.length).map((i) => `part ${i + 1}`);
  if (parts.length === 0) {
    tell('it has no parts to sew');
    return null;
  }
  if (left.length !== 1) {
    tell(
      unsewn.length > 0
        ? `${unsewn.join(' and ')} ${unsewn.length > 1 ? 'are' : 'is'} never sewn on`
        : 'its seams leave more than one thing',
    );
    return null;
  }
  const result = things[left[0]];
  if (result?.open) {
    tell(`seam ${result.open.join + 1} is sewn only part of the way and never finished`);
    return null;
  }
  return result?.members[0] ?? null;
}

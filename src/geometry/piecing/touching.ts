import { compareAlong, lineKey, lineThrough, samePoint, type Point } from '../point.ts';

/** For each outline, by index: which others it touches along an edge of some length, and which at a corner alone. */
export interface Touching {
  readonly along: readonly ReadonlySet<number>[];
  readonly atCorner: readonly ReadonlySet<number>[];
}

/** An edge on its line: its ends in the line's order, and whether the outline runs that way. */
interface Edge {
  readonly of: number;
  readonly from: Point;
  readonly to: Point;
  readonly forward: boolean;
}

/**
 * Finds, exactly, which outlines touch. They must lie beside each other, as the pieces of a block do: no two share area, and together
 * they leave no gap, so that where a corner lies on an edge other corners on that edge's line lie there too.
 * @param outlines convex, all the same way round
 */
export function touching(outlines: readonly (readonly Point[])[]): Touching {
  const along = outlines.map(() => new Set<number>());
  const atCorner = outlines.map(() => new Set<number>());
  const lines = new Map<string, Edge[]>();
  /** Who has a corner, or the inside of an edge, at each place. */
  const meeting = new Map<string, Set<number>>();
  outlines.forEach((outline, of) => {
    outline.forEach((p, i) => {
      const q = outline[(i + 1) % outline.length]!;
      const forward = compareAlong(p, q) < 0;
      const edge = forward ? { of, from: p, to: q, forward } : { of, from: q, to: p, forward };
      gather(lines, lineKey(lineThrough(p, q)), edge);
      meetingAt(meeting, p).add(of);
    });
  });
  for (const edges of lines.values()) {
    edges.sort((a, b) => compareAlong(a.from, b.from));
    const ends = edges.flatMap(({ from, to }) => [from, to]).sort(compareAlong).filter((p, i, all) => i === 0 || !samePoint(p, all[i - 1]!));
    let open: Edge[] = [];
    for (const edge of edges) {
      open = open.filter(({ to }) => compareAlong(to, edge.from) > 0);
      for (const other of open) if (other.forward !== edge.forward) join(along, edge.of, other.of);
      open.push(edge);
      for (let i = after(ends, edge.from); i < ends.length && compareAlong(ends[i]!, edge.to) < 0; i++) meetingAt(meeting, ends[i]!).add(edge.of);
    }
  }
  for (const there of meeting.values()) {
    const all = [...there];
    all.forEach((a, i) => {
      for (const b of all.slice(i + 1)) if (!along[a]!.has(b)) join(atCorner, a, b);
    });
  }
  return { along, atCorner };
}

function join(sets: readonly Set<number>[], a: number, b: number): void {
  sets[a]!.add(b);
  sets[b]!.add(a);
}

function gather(lines: Map<string, Edge[]>, key: string, edge: Edge): void {
  const there = lines.get(key);
  if (there) there.push(edge);
  else lines.set(key, [edge]);
}

function meetingAt(meeting: Map<string, Set<number>>, { x, y, w }: Point): Set<number> {
  const key = `${x},${y},${w}`;
  let there = meeting.get(key);
  if (!there) meeting.set(key, (there = new Set()));
  return there;
}

/** @returns the index of the first of these places, in order, that comes after a place */
function after(places: readonly Point[], at: Point): number {
  let [low, high] = [0, places.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (compareAlong(places[middle]!, at) <= 0) low = middle + 1;
    else high = middle;
  }
  return low;
}

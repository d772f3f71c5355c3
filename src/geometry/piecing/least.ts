import { split, type Convex } from '../convex.ts';
import { compareAlong, lineKey, lineThrough, meet, side, type Line, type Point } from '../point.ts';
import { boundariesOf } from '../patchwork/boundaries.ts';
import { labelsIn, type Patchwork } from '../patchwork/patchwork.ts';
import { brokenWholes } from '../patchwork/wholes.ts';
import { dividesWhole, regionKey, type Drawn } from './free-search.ts';
import type { Tree } from './tree.ts';

/** A drawn stretch between two corners of the drawing, nothing meeting it in between; whether its ends lie on the region's edge. */
interface Edge {
  readonly line: Line;
  readonly key: string;
  readonly from: Point;
  readonly to: Point;
  readonly fromEnds: boolean;
  readonly toEnds: boolean;
}

/** A convex region with what is drawn inside it. */
interface Part {
  readonly region: Convex;
  readonly edges: readonly Edge[];
  readonly low: number;
}

/** What is known of a region: it takes at least `low` pieces, and `tree` does it with `pieces`. */
interface Known {
  low: number;
  pieces: number;
  tree: Tree | null;
}

/** How far the search has come. */
export interface Deepened {
  /** No way by straight through-seams along drawn lines has fewer pieces than this. */
  readonly bound: number;
  /** How much effort is left, for what was spent. */
  readonly left: number;
}

/** What the search found out. */
export interface Least {
  /** No way by straight through-seams along drawn lines has fewer pieces than this. */
  readonly bound: number;
  /** A way with fewer pieces than were known; null when there is none, or none was found. */
  readonly better: { readonly tree: Tree; readonly pieces: number } | null;
}

const pointKey = (p: Point): string => `${p.x},${p.y},${p.w}`;

class OutOfEffort extends Error {}

/**
 * Looks for a way with fewer pieces than are known, and proves how few there can be: iterative deepening over all cuts
 * along drawn lines, each region at most as deep as its lower bound allows.
 * @param drawn what is drawn inside the region
 * @param known pieces of the best way known
 * @param effort how many edges may be looked at in all before the search ends with what it has
 * @yields the bound each time that it rises
 */
export function* leastPieces(
  patchwork: Patchwork,
  region: Convex,
  drawn: readonly Drawn[],
  known: number,
  effort: number,
): Generator<Deepened, Least> {
  const edges = edgesOf(region, drawn);
  const whole: Part = { region, edges, low: lowerBound(edges) };
  const wholes = patchwork.drawing.patches.some((patch) => patch.whole);
  const table = new Map<string, Known>();
  // The search takes a whole patch for one area; where one shows in several, it would leave out cuts between them and prove too much.
  let left = wholes && brokenWholes(patchwork, boundariesOf(patchwork)).length > 0 ? 0 : effort;

  /** Finds a way with at most `limit` pieces; null when there is none. */
  const sew = (part: Part, limit: number): Known | null => {
    if (part.low > limit) return null;
    if (part.edges.length === 0) return { low: 1, pieces: 1, tree: { form: 'piece', region: part.region, label: labelsIn(patchwork, part.region)[0]! } };
    const key = regionKey(part.region);
    let entry = table.get(key);
    if (!entry) table.set(key, (entry = { low: part.low, pieces: Infinity, tree: null }));
    if (entry.pieces <= limit) return entry;
    if (entry.low > limit) return null;
    const byLine = new Map<string, Edge[]>();
    for (const edge of part.edges) byLine.set(edge.key, [...(byLine.get(edge.key) ?? []), edge]);
    const through = [...byLine.values()].find(reachesAcross);
    const lines = through ? [through[0]!.line] : [...byLine.values()].map(([edge]) => edge!.line);
    const cuts = lines
      .filter((line) => through !== undefined || !wholes || !dividesWhole(part.region, line, patchwork))
      .map((line) => {
        left -= part.edges.length;
        return { line, ...cut(part, line) };
      })
      .sort((a, b) => a.front.low + a.back.low - (b.front.low + b.back.low));
    if (left <= 0) throw new OutOfEffort();
    for (const { line, front, back } of cuts) {
      if (front.low + back.low > limit) break;
      const a = sew(front, limit - back.low);
      const b = a && sew(back, limit - a.pieces);
      if (!a || !b) continue;
      entry.pieces = a.pieces + b.pieces;
      entry.tree = { form: 'cut', region: part.region, line, front: a.tree!, back: b.tree! };
      return entry;
    }
    entry.low = limit + 1;
    return null;
  };

  let bound = whole.low;
  try {
    for (; bound < known; bound++) {
      yield { bound, left: left / Math.max(1, effort - left) };
      const found = sew(whole, bound);
      if (found) return { bound: found.pieces, better: { tree: found.tree!, pieces: found.pieces } };
    }
  } catch (error) {
    if (!(error instanceof OutOfEffort)) throw error;
  }
  return { bound: Math.min(bound, known), better: null };
}

/** Divides what is drawn in a region at every corner. */
function edgesOf(region: Convex, drawn: readonly Drawn[]): readonly Edge[] {
  const onEdge = (p: Point): boolean => region.lines.some((line) => side(line, p) === 0);
  const edges: Edge[] = [];
  for (const { line, stretches } of drawn) {
    const key = lineKey(line);
    for (const { from, to } of stretches) {
      const inside = new Map<string, Point>();
      for (const other of drawn) {
        if (other.line === line) continue;
        for (const s of other.stretches) {
          const [p, q] = [side(line, s.from), side(line, s.to)];
          if (p * q > 0 || (p === 0 && q === 0)) continue;
          const crossing = p === 0 ? s.from : q === 0 ? s.to : meet(line, other.line);
          if (between(from, to, crossing)) inside.set(pointKey(crossing), crossing);
        }
      }
      const points = [from, ...[...inside.values()].sort(alongFrom(from, to)), to];
      for (let i = 0; i + 1 < points.length; i++) {
        const [p, q] = [points[i]!, points[i + 1]!];
        edges.push({ line, key, from: p, to: q, fromEnds: onEdge(p), toEnds: onEdge(q) });
      }
    }
  }
  return edges;
}

/** @returns how to compare positions on the way from … to */
function alongFrom(from: Point, to: Point): (p: Point, q: Point) => number {
  const forward = compareAlong(from, to);
  return (p, q) => compareAlong(p, q) * -forward;
}

/** @returns whether a point of the line lies strictly between two others */
function between(from: Point, to: Point, p: Point): boolean {
  const order = alongFrom(from, to);
  return order(from, p) < 0 && order(p, to) < 0;
}

/** @returns whether edges of one line run from one side of the region to the other without a gap */
function reachesAcross(edges: readonly Edge[]): boolean {
  const ends = edges.reduce((n, e) => n + (e.fromEnds ? 1 : 0) + (e.toEnds ? 1 : 0), 0);
  if (ends !== 2) return false;
  const inner = new Set(edges.flatMap((e) => [...(e.fromEnds ? [] : [pointKey(e.from)]), ...(e.toEnds ? [] : [pointKey(e.to)])]));
  return inner.size === edges.length - 1;
}

/** Cuts a region and what is drawn in it. */
function cut(part: Part, line: Line): { readonly front: Part; readonly back: Part } {
  const { front, back } = split(part.region, line);
  const [before, behind]: [Edge[], Edge[]] = [[], []];
  for (const edge of part.edges) {
    const [p, q] = [side(line, edge.from), side(line, edge.to)];
    if (p === 0 && q === 0) continue;
    const touching: Edge = p === 0 ? { ...edge, fromEnds: true } : q === 0 ? { ...edge, toEnds: true } : edge;
    if (p >= 0 && q >= 0) before.push(touching);
    else if (p <= 0 && q <= 0) behind.push(touching);
    else {
      const at = meet(edge.line, line);
      const [first, second]: [Edge, Edge] = [
        { ...edge, to: at, toEnds: true },
        { ...edge, from: at, fromEnds: true },
      ];
      (p > 0 ? before : behind).push(first);
      (p > 0 ? behind : before).push(second);
    }
  }
  return {
    front: { region: front!, edges: before, low: lowerBound(before) },
    back: { region: back!, edges: behind, low: lowerBound(behind) },
  };
}

/**
 * The least number of convex pieces that edges can leave: every area is at least one piece, and every two inward
 * corners of the areas ask for one more, less one for every island (the classical bound for convex partitions).
 */
function lowerBound(edges: readonly Edge[]): number {
  if (edges.length === 0) return 1;
  const corners = new Map<string, { point: Point; toward: Point[]; group: string }>();
  const EDGE = 'edge of the region';
  const find = (name: string): string => {
    let at = name;
    while (at !== EDGE && corners.get(at)!.group !== at) at = corners.get(at)!.group;
    return at;
  };
  for (const { from, to, fromEnds, toEnds } of edges) {
    const names = ([[from, to, fromEnds], [to, from, toEnds]] as const).map(([point, other, ends]) => {
      if (ends) return EDGE;
      const name = pointKey(point);
      const corner = corners.get(name);
      if (corner) corner.toward.push(other);
      else corners.set(name, { point, toward: [other], group: name });
      return name;
    });
    const [a, b] = names.map(find) as [string, string];
    if (a !== b) {
      if (a === EDGE) corners.get(b)!.group = EDGE;
      else corners.get(a)!.group = b;
    }
  }
  const islands = new Set([...corners.keys()].map(find).filter((name) => name !== EDGE)).size;
  const inward = [...corners.values()].filter(({ point, toward }) => isInward(point, toward)).length;
  const areas = edges.length - corners.size + 1 + islands;
  return Math.max(areas, areas - islands + Math.ceil(inward / 2));
}

/** @returns whether the edges that leave a corner all lie strictly on one side of some line through it, so that an area turns in there */
function isInward(point: Point, toward: readonly Point[]): boolean {
  if (toward.length === 1) return true;
  // Some edge has all the others strictly to its right.
  return toward.some((first) => {
    const line = lineThrough(point, first);
    return toward.every((other) => other === first || side(line, other) > 0);
  });
}

import { chord, split, type Convex } from '../convex.ts';
import { meet, parallel, sameLine, side, type Line, type Point } from '../point.ts';
import type { Boundary } from '../patchwork/boundaries.ts';
import { covers, within, type Stretch } from '../patchwork/stretches.ts';
import { labelOf, labelsIn, type Patchwork } from '../patchwork/patchwork.ts';
import type { Tree } from './tree.ts';

/** How many choices more may be examined while there is no way at all before giving up: only wholes that lock lead so far. */
const GIVE_UP = 5_000;

/** What is drawn inside a region, line by line. */
export interface Drawn {
  readonly line: Line;
  readonly stretches: readonly Stretch[];
}

/** What the search found in a region. */
export interface Found {
  readonly tree: Tree;
  readonly cost: number;
}

interface Search {
  readonly patchwork: Patchwork;
  readonly cost: (region: Convex) => number;
  readonly memo: Map<string, Found | null>;
  /** How many more choices may be tried before the nearest one is taken. */
  budget: number;
}

/**
 * Finds how a convex region comes apart by straight through-seams, along lines that are drawn in it.
 * Where a line is drawn right across, cutting there divides no cloth and loses nothing; otherwise every drawn line is
 * tried, those that divide least first.
 * @param cost what one piece of this outline costs (> 0)
 * @param budget how many regions to examine with all their choices before settling for the first
 * @returns null when no way was found that leaves every whole patch in one piece
 */
export function searchFreely(
  patchwork: Patchwork,
  boundaries: Iterable<Boundary>,
  region: Convex,
  cost: (region: Convex) => number,
  budget: number,
): Found | null {
  return solve(region, drawnIn(region, boundaries), { patchwork, cost, memo: new Map(), budget });
}

/**
 * Takes a region apart along given lines.
 * @param lines the seam that is sewn last first; each is drawn right across what is left when its turn comes
 */
export function cutInOrder(patchwork: Patchwork, region: Convex, drawn: readonly Drawn[], lines: readonly Line[]): Tree {
  const next = lines.find((line) => drawn.some((d) => sameLine(d.line, line)));
  if (!next) return { form: 'piece', region, label: labelOf(patchwork, region) };
  const { front, back } = split(region, next);
  const half = (part: Convex, wanted: 1 | -1): Tree => cutInOrder(patchwork, part, onSide(drawn, next, wanted), lines);
  return { form: 'cut', region, line: next, front: half(front!, 1), back: half(back!, -1) };
}

/**
 * Finds a sequence in which patch after patch can be sewn to what is there: the fewest such sections, joined by
 * straight seams, with no cloth divided.
 * @returns null when some cloth would have to be divided, or when the budget of regions is used up
 */
export function searchSections(
  patchwork: Patchwork,
  boundaries: Iterable<Boundary>,
  region: Convex,
  budget: number,
): { readonly tree: Tree; readonly sections: number } | null {
  const memo = new Map<string, { tree: Tree; sections: number } | null>();
  let left = budget;
  const sew = (part: Convex, drawn: readonly Drawn[]): { tree: Tree; sections: number } | null => {
    if (drawn.length === 0) return { tree: { form: 'piece', region: part, label: labelOf(patchwork, part) }, sections: 0 };
    const key = regionKey(part);
    const known = memo.get(key);
    if (known !== undefined) return known;
    let best: { tree: Tree; sections: number } | null = null;
    for (const { line, stretches } of drawn) {
      if (!covers(stretches, ...chord(part, line)!)) continue;
      if (left-- <= 0) break;
      const { front, back } = split(part, line);
      const [a, b] = [sew(front!, onSide(drawn, line, 1)), sew(back!, onSide(drawn, line, -1))];
      if (!a || !b) break;
      // A single patch goes on with the section it is sewn to; two sections stay two.
      const sections = Math.max(1, a.sections + b.sections);
      if (best === null || sections < best.sections) best = { tree: { form: 'cut', region: part, line, front: a.tree, back: b.tree }, sections };
      if (best.sections === 1) break;
    }
    memo.set(key, best);
    return best;
  };
  return sew(region, drawnIn(region, boundaries));
}

/** @returns a name that only this region has */
export const regionKey = (region: Convex): string => region.points.map((p) => `${p.x},${p.y},${p.w}`).join(' ');

/** @returns what is drawn strictly inside a region */
export function drawnIn(region: Convex, boundaries: Iterable<Boundary>): readonly Drawn[] {
  const found: Drawn[] = [];
  for (const { line, drawn } of boundaries) {
    if (drawn.length === 0) continue;
    const across = chord(region, line);
    if (!across) continue;
    const stretches = within(drawn, ...across);
    if (stretches.length > 0) found.push({ line, stretches });
  }
  return found;
}

function solve(region: Convex, drawn: readonly Drawn[], search: Search): Found | null {
  if (drawn.length === 0) {
    const label = labelOf(search.patchwork, region);
    return { tree: { form: 'piece', region, label }, cost: search.cost(region) };
  }
  const key = regionKey(region);
  const known = search.memo.get(key);
  if (known !== undefined) return known;
  const found = bestCut(region, drawn, search);
  search.memo.set(key, found);
  return found;
}

function bestCut(region: Convex, drawn: readonly Drawn[], search: Search): Found | null {
  const through = drawn.filter(({ line, stretches }) => covers(stretches, ...chord(region, line)!));
  if (through.length > 0) return cutAlong(region, drawn, balanced(through, drawn), search);
  const choices = drawn
    .map((d) => ({ line: d.line, divided: divisions(region, d, drawn) }))
    .filter(({ line }) => !dividesWhole(region, line, search.patchwork))
    .sort((a, b) => a.divided - b.divided || a.line.a - b.line.a || a.line.b - b.line.b || a.line.c - b.line.c);
  let best: Found | null = null;
  for (const { line } of choices) {
    if (search.budget <= (best === null ? -GIVE_UP : 0)) break;
    search.budget--;
    const found = cutAlong(region, drawn, line, search);
    if (found !== null && (best === null || found.cost < best.cost)) best = found;
  }
  return best;
}

function cutAlong(region: Convex, drawn: readonly Drawn[], line: Line, search: Search): Found | null {
  const { front, back } = split(region, line);
  const inFront = solve(front!, onSide(drawn, line, 1), search);
  if (inFront === null) return null;
  const behind = solve(back!, onSide(drawn, line, -1), search);
  if (behind === null) return null;
  return { tree: { form: 'cut', region, line, front: inFront.tree, back: behind.tree }, cost: inFront.cost + behind.cost };
}

/** Of lines that are drawn right across, the one that leaves the two sides most alike in number of drawn lines. */
function balanced(through: readonly Drawn[], drawn: readonly Drawn[]): Line {
  let [best, least] = [through[0]!.line, Infinity];
  for (const { line } of through) {
    const unevenness = Math.abs(onSide(drawn, line, 1).length - onSide(drawn, line, -1).length);
    // Seams along the block's own directions come last in sewing order, so they come first here.
    const score = unevenness + (line.a === 0 || line.b === 0 ? 0 : 0.5);
    if (score < least) [best, least] = [line, score];
  }
  return best;
}

/** @returns what is drawn on one side (1 front, −1 back) of a cut */
function onSide(drawn: readonly Drawn[], cut: Line, wanted: 1 | -1): readonly Drawn[] {
  const result: Drawn[] = [];
  for (const { line, stretches } of drawn) {
    if (parallel(line, cut)) {
      if (side(cut, stretches[0]!.from) === wanted) result.push({ line, stretches });
      continue;
    }
    const kept: Stretch[] = [];
    for (const s of stretches) {
      const [p, q] = [side(cut, s.from), side(cut, s.to)];
      if (p !== -wanted && q !== -wanted) kept.push(s);
      else if (p === wanted || q === wanted) {
        const crossing = meet(line, cut);
        kept.push(p === wanted ? { from: s.from, to: crossing } : { from: crossing, to: s.to });
      }
    }
    if (kept.length > 0) result.push({ line, stretches: kept });
  }
  return result;
}

/** @returns how many pieces of cloth a cut divides: the undrawn runs of its chord, counted once more wherever another line crosses one */
function divisions(region: Convex, along: Drawn, drawn: readonly Drawn[]): number {
  const [from, to] = chord(region, along.line)!;
  const crossings = drawn.filter((d) => d !== along && !parallel(d.line, along.line) && crossesUndrawn(d, along)).length;
  const ends = [from, to].filter((p) => !along.stretches.some((s) => same(s.from, p) || same(s.to, p))).length;
  return along.stretches.length - 1 + ends + crossings;
}

const same = (p: Point, q: Point): boolean => p.x === q.x && p.y === q.y && p.w === q.w;

function crossesUndrawn(other: Drawn, along: Drawn): boolean {
  return other.stretches.some((s) => {
    const [p, q] = [side(along.line, s.from), side(along.line, s.to)];
    if (p * q >= 0) return false;
    const crossing = meet(other.line, along.line);
    return !covers(along.stretches, crossing, crossing);
  });
}

/** @returns whether a cut would leave parts of one whole patch on both sides */
export function dividesWhole(region: Convex, line: Line, patchwork: Patchwork): boolean {
  if (!patchwork.anyWhole) return false;
  const { front, back } = split(region, line);
  const wholes = new Set(labelsIn(patchwork, front!).filter((l) => l.whole >= 0).map((l) => l.whole));
  return wholes.size > 0 && labelsIn(patchwork, back!).some((l) => wholes.has(l.whole));
}

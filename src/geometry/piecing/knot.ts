import { chord, rectangle } from '../convex.ts';
import { boundariesOf, type Boundary } from '../patchwork/boundaries.ts';
import { covers, type Stretch } from '../patchwork/stretches.ts';
import type { Drawing, Lattice } from '../patchwork/drawing.ts';
import { patchworkOf, type Patchwork } from '../patchwork/patchwork.ts';
import { shownHalves, shownOutline, throughPatch } from '../patchwork/shown.ts';
import { brokenWholes, type BrokenWhole } from '../patchwork/wholes.ts';
import { compareAlong, samePoint, type Point } from '../point.ts';
import type { Assembly, Piecing } from './assembly.ts';

/** A way to free whole patches, with the plan that it leads to. */
export interface WayOut {
  /** Patches that need not stay whole any more. */
  readonly freed: readonly number[];
  /** The two outlines that take the place of the one patch, each to stay whole; null where the plan divides as it likes. */
  readonly parts: readonly [readonly Point[], readonly Point[]] | null;
  /** Where the plan divides the freed patches. */
  readonly divided: readonly Stretch[];
  /** Seams of the plan that are sewn in two goes. */
  readonly partial: readonly Stretch[];
  readonly piecing: Piecing;
}

/** A whole patch that can be set in last, when all the rest is sewn round its place by straight seams. */
export interface SetIn {
  readonly patch: number;
  /** Where its seams turn a corner. */
  readonly corners: readonly Point[];
  /** Pieces of cloth in the block, this patch one of them. */
  readonly pieces: number;
}

/** Whole patches that cannot all stay whole, and what frees them. */
export interface Knot {
  /** As few as were found that lock each other, in painting order. */
  readonly patches: readonly number[];
  /** Whole patches that no seams at all leave in one piece, and why. */
  readonly broken: readonly BrokenWhole[];
  /** Every one was tried; the cheapest first. */
  readonly waysOut: readonly WayOut[];
  readonly setIn: SetIn | null;
}

/** How drawings are tried. */
export interface Trial {
  /** Whether a drawing can be sewn, found out without a plan; where it says yes, there is hardly ever no plan. */
  readonly sewable: (drawing: Drawing) => boolean;
  /** The plan of a drawing whose figures are the price; null where it cannot be sewn. */
  readonly plan: (drawing: Drawing) => Piecing | null;
}

/** Plans made to find out which patches lock each other, at most; with fewer, more patches are named than need be. */
const PLANS_FOR_KNOT = 48;
/** Plans made to free a knot, at most, in a drawing of up to LIGHT patches and cells together; in larger ones fewer, but at least FEW. */
const PLANS_TO_FREE = 40;
const LIGHT = 300;
const FEW = 6;
/** Places of one patch that are offered, and ways out in all. */
const PLACES = 2;
const OFFERED = 8;

/** @returns the drawing with only these patches marked whole */
function withWholes(drawing: Drawing, wholes: readonly number[]): Drawing {
  const kept = new Set(wholes);
  return { ...drawing, patches: drawing.patches.map((patch, i) => ({ ...patch, whole: kept.has(i) })) };
}

/** @returns the drawing with two whole patches in the place of one */
function withParts(drawing: Drawing, patch: number, parts: readonly (readonly Point[])[]): Drawing {
  const { fabric } = drawing.patches[patch]!;
  const placed = parts.map((points) => ({ fabric, points: points.map(({ x, y }): Lattice => [x, y]), whole: true }));
  return { ...drawing, patches: drawing.patches.toSpliced(patch, 1, ...placed) };
}

const wholesOf = (drawing: Drawing): readonly number[] => drawing.patches.flatMap(({ whole }, i) => (whole ? [i] : []));

/**
 * Finds whole patches that cannot all stay whole, as few as possible: with all but any one of them the drawing can be sewn,
 * as far as they are concerned (Junker, QuickXplain, AAAI 2004).
 * @param drawing one that cannot be sewn
 * @returns indices of the drawing's patches, in painting order
 */
function lockedIn(drawing: Drawing, sewable: Trial['sewable']): readonly number[] {
  let left = PLANS_FOR_KNOT;
  const locks = (wholes: readonly number[]): boolean => left-- > 0 && !sewable(withWholes(drawing, wholes));
  const needed = (given: readonly number[], grown: boolean, among: readonly number[]): readonly number[] => {
    if (left <= 0) return among;
    if (grown && locks(given)) return [];
    if (among.length === 1) return among;
    const [first, second] = halves(among);
    const late = needed([...given, ...first], true, second);
    return [...needed([...given, ...late], late.length > 0, first), ...late];
  };
  return needed([], false, wholesOf(drawing));
}

const halves = <T>(all: readonly T[]): readonly [readonly T[], readonly T[]] => [all.slice(0, all.length >> 1), all.slice(all.length >> 1)];

/**
 * Finds what keeps a drawing from being sewn, and what frees it. Every way out was tried: it comes with its plan.
 * @param drawing one that cannot be sewn as it is, or in which a patch marked whole cannot be one piece
 */
export function knotIn(drawing: Drawing, { sewable, plan: sew }: Trial): Knot {
  const patchwork = patchworkOf(drawing);
  const boundaries = boundariesOf(patchwork);
  const wholes = wholesOf(drawing);
  const without = (freed: readonly number[]): readonly number[] => wholes.filter((patch) => !freed.includes(patch));
  const contradictions = brokenWholes(patchwork, boundaries);
  const broken = contradictions.map(({ patch }) => patch);
  // Where the quick answer is of another mind about this drawing, the plans themselves are asked.
  const canBeSewn = broken.length === 0 && sewable(drawing) ? (changed: Drawing): boolean => sew(changed) !== null : sewable;
  const patches = broken.length > 0 ? broken : lockedIn(drawing, canBeSewn);

  const size = drawing.patches.length + (drawing.columns.length - 1) * (drawing.rows.length - 1);
  let left = Math.max(FEW, Math.min(PLANS_TO_FREE, Math.floor((PLANS_TO_FREE * LIGHT) / size)));
  const plan = (changed: Drawing): Piecing | null => (left-- > 0 ? sew(changed) : null);

  const waysOut: WayOut[] = [];
  const offer = (freed: readonly number[], piecing: Piecing | null): boolean => {
    if (!piecing) return false;
    const inPatches = (stretch: Stretch): readonly Stretch[] => freed.flatMap((patch) => throughPatch(patchwork, boundaries, patch, stretch));
    const drawn = drawing.seams.flatMap(([[x, y], [u, v]]) => inPatches(inOrder({ from: { x, y, w: 1 }, to: { x: u, y: v, w: 1 } })));
    const divided = [...drawn, ...piecing.divisions.flatMap(inPatches)];
    waysOut.push({ freed, parts: null, divided, partial: partialSeams(piecing.root), piecing });
    return true;
  };

  // What contradicts the drawing must go in any case; of patches that lock each other, one may be enough.
  const few = broken.length > 0 ? [broken] : patches.map((patch) => [patch]);
  const enough = few.filter((freed) => offer(freed, plan(withWholes(drawing, without(freed)))));
  for (const [patch, another] of enough) {
    if (another !== undefined) continue;
    for (const { stretch, parts } of placesToDivide(patchwork, boundaries, patch!)) {
      const piecing = plan(withParts(drawing, patch!, parts));
      if (piecing) waysOut.push({ freed: [patch!], parts, divided: [stretch], partial: partialSeams(piecing.root), piecing });
    }
  }
  if (enough.length === 0) {
    // There are more knots than this one: each gives up a patch.
    const freed = without(keptWhole(without(broken), (kept) => left-- > 0 && canBeSewn(withWholes(drawing, kept))));
    if (!offer(freed, sew(withWholes(drawing, without(freed))))) offer(wholes, sew(withWholes(drawing, [])));
    const others = freed.filter((patch) => !patches.includes(patch));
    for (const patch of broken.length > 0 ? [] : without(freed).filter((each) => patches.includes(each))) {
      const instead = [patch, ...others].sort((p, q) => p - q);
      offer(instead, plan(withWholes(drawing, without(instead))));
    }
  }
  // Where a drawn seam runs through a patch, no sewing leaves it whole.
  const whole = enough.flatMap((freed) => (freed.length === 1 && !contradictions.some(({ why }) => why === 'seam') ? freed : []));
  const [setIn] = whole.flatMap((patch) => setInLast(drawing, patchwork, patch)).sort((a, b) => a.corners.length - b.corners.length);
  return { patches, broken: contradictions, waysOut: cheapest(waysOut), setIn: setIn ? priced(setIn, drawing, without([setIn.patch]), sew) : null };
}

/** @returns of patches those that can stay whole together: taken as many at a time as possible */
function keptWhole(wholes: readonly number[], sewable: (kept: readonly number[]) => boolean): readonly number[] {
  const grown = (base: readonly number[], among: readonly number[]): readonly number[] => {
    if (among.length === 0) return base;
    if (sewable([...base, ...among])) return [...base, ...among];
    if (among.length === 1) return base;
    const [first, second] = halves(among);
    return grown(grown(base, first), second);
  };
  return grown([], wholes);
}

/** @returns where a patch could be divided in two by a seam that ends at its edge and runs on through it, the likeliest first */
function placesToDivide(patchwork: Patchwork, boundaries: ReadonlyMap<string, Boundary>, patch: number) {
  const block = rectangle(0, 0, patchwork.width, patchwork.height);
  const found: { readonly stretch: Stretch; readonly parts: readonly [readonly Point[], readonly Point[]]; readonly ends: number }[] = [];
  for (const { line, drawn } of boundaries.values()) {
    const [from, to] = chord(block, line)!;
    const [stretch, another] = throughPatch(patchwork, boundaries, patch, { from, to });
    if (!stretch || another) continue;
    const ends = [stretch.from, stretch.to].filter((p) => covers(drawn, p, p)).length;
    const parts = ends > 0 ? shownHalves(patchwork, patch, line) : null;
    // Patches have their corners on whole steps.
    if (parts?.every((outline) => outline.every(({ w }) => w === 1))) found.push({ stretch, parts, ends });
  }
  return found.sort((a, b) => b.ends - a.ends);
}

const sameStretch = (a: Stretch, b: Stretch): boolean => samePoint(a.from, b.from) && samePoint(a.to, b.to);

const inOrder = ({ from, to }: Stretch): Stretch => (compareAlong(from, to) < 0 ? { from, to } : { from: to, to: from });

/** @returns the seams of an assembly that are sewn in two goes */
function partialSeams(node: Assembly): readonly Stretch[] {
  const own = node.seams.filter(({ partial }) => partial);
  return [...own.map(inOrder), ...node.parts.flatMap(partialSeams)];
}

/** Fewer pieces first; then fewer seams sewn in two goes, fewer patches freed, fewer templates, fewer places; then as they were found. */
const PRICES: readonly ((out: WayOut) => number)[] = [
  ({ piecing }) => piecing.figures.pieces,
  ({ piecing }) => piecing.figures.partialSeams,
  ({ freed }) => freed.length,
  ({ piecing }) => piecing.figures.templates,
  ({ divided }) => divided.length,
];

/**
 * @returns the ways out in the order of their price, no more than can be looked through; without those that divide a patch
 * just where another one does it at no higher price and keeps the parts whole
 */
function cheapest(waysOut: readonly WayOut[]): readonly WayOut[] {
  const [inTwo, freely] = [waysOut.filter(({ parts }) => parts), waysOut.filter(({ parts }) => !parts)];
  const told = freely.filter(({ freed, divided, piecing }) => {
    const there = inTwo.find((out) => out.freed[0] === freed[0] && divided.every((stretch) => sameStretch(stretch, out.divided[0]!)));
    return freed.length > 1 || !there || piecing.figures.pieces < there.piecing.figures.pieces;
  });
  const sorted = [...inTwo, ...told].sort((a, b) => PRICES.map((price) => price(a) - price(b)).find((d) => d !== 0) ?? 0);
  const places = new Map<string, number>();
  return sorted
    .filter(({ freed }) => {
      const key = freed.join();
      places.set(key, (places.get(key) ?? 0) + 1);
      return places.get(key)! <= PLACES;
    })
    .slice(0, OFFERED);
}

/** @returns how a patch could be set in last: its corners inside the block, at which seams that run round it would turn */
function setInLast({ width, height }: Drawing, patchwork: Patchwork, patch: number): readonly SetIn[] {
  const outline = shownOutline(patchwork, patch);
  if (!outline) return [];
  const corners = outline.filter(({ x, y, w }) => x > 0 && y > 0 && x < width * w && y < height * w);
  return corners.length === 0 ? [] : [{ patch, corners, pieces: 0 }];
}

/**
 * Counts the pieces where a patch is left out and set in last. Left out, its place may be divided like any other: seams
 * that end at its edges are sewn as far as they go.
 */
function priced(setIn: SetIn, drawing: Drawing, wholes: readonly number[], sew: Trial['plan']): SetIn | null {
  const left = withWholes(drawing, wholes);
  const hole = `left out ${setIn.patch}`;
  const piecing = sew({ ...left, patches: left.patches.map((patch, i) => (i === setIn.patch ? { ...patch, fabric: hole } : patch)) });
  return piecing && { ...setIn, pieces: piecing.pieces.filter(({ fabric }) => fabric !== hole).length + 1 };
}

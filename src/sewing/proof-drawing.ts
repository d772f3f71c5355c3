import type { Drawing } from '../geometry/patchwork/drawing.ts';
import { fraction, NOTHING, order, plus } from './proof-number.ts';
import type { Fraction } from './proof-number.ts';
import { area, bounds, compareAlong, compareY, hull, side, split, spot } from './proof-outline.ts';
import type { Outline, Spot } from './proof-outline.ts';

/** A patch of the drawing, ready to be laid over pieces; bounds in whole steps. */
export interface DrawnPatch {
  readonly index: number;
  readonly fabric: string;
  readonly whole: boolean;
  readonly edges: readonly DrawnEdge[];
  readonly box: Box;
}

interface DrawnEdge {
  readonly from: Spot;
  readonly to: Spot;
  readonly box: Box;
}

/** Whole steps that hold a shape; a little too large where its corners lie between steps. */
export interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** What shows of one patch (−1: the ground) inside a piece: convex regions without overlap. */
export interface Shown {
  readonly patch: number;
  readonly regions: readonly Outline[];
}

/** @returns whole steps that hold the outline */
export function boxOf(outline: readonly Spot[]): Box {
  const box = bounds(outline);
  const below = (f: Fraction): number => Number(f.n / f.d) - (f.d === 1n ? 0 : 1);
  const above = (f: Fraction): number => Number(f.n / f.d) + (f.d === 1n ? 0 : 1);
  return { left: below(box.left), top: below(box.top), right: above(box.right), bottom: above(box.bottom) };
}

/** @returns whether two boxes have more than an edge in common */
export const meets = (a: Box, b: Box): boolean => a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;

/** @returns the drawing's patches, the topmost first */
export function drawnPatches(drawing: Drawing): DrawnPatch[] {
  return drawing.patches
    .map((patch, index) => {
      const corners = patch.points.map(([x, y]) => spot(BigInt(x), BigInt(y)));
      const edges = corners.map((from, i): DrawnEdge => {
        const to = corners[(i + 1) % corners.length];
        return { from, to, box: boxOf([from, to]) };
      });
      return { index, fabric: patch.fabric, whole: patch.whole === true, edges, box: boxOf(corners) };
    })
    .reverse();
}

/** @returns whether the segment a–b runs through the inside of a convex region */
export function crosses(region: Outline, a: Spot, b: Spot): boolean {
  const { right, left } = split(region, a, b);
  if (!right || !left) return false;
  const chord = right.filter((p) => side(a, b, p) === 0).sort(compareAlong);
  const [low, high] = compareAlong(a, b) < 0 ? [a, b] : [b, a];
  return compareAlong(chord[0], high) < 0 && compareAlong(low, chord[chord.length - 1]) < 0;
}

/** @returns a point inside a convex region: the middle of its first three corners */
function inside([p, q, r]: Outline): Spot {
  const [a, b, c] = [q.w * r.w, p.w * r.w, p.w * q.w];
  return spot(p.x * a + q.x * b + r.x * c, p.y * a + q.y * b + r.y * c, 3n * p.w * q.w * r.w);
}

/** @returns whether a point that is on no edge lies inside any simple outline: a ray to the right crosses it an odd number of times */
function holds(edges: readonly DrawnEdge[], p: Spot): boolean {
  let odd = false;
  const level = Number(p.y / p.w);
  for (const { from, to, box } of edges) {
    if (box.bottom < level - 1 || box.top > level + 1) continue;
    const [above, below] = [compareY(from, p) <= 0, compareY(to, p) <= 0];
    // An edge that goes down the screen has p to its right when it passes to the right of p, one that goes up to its left.
    if (above !== below && side(from, to, p) > 0 === above) odd = !odd;
  }
  return odd;
}

/**
 * Divides a convex region along the edges of a patch of any simple shape: each edge that runs through the inside divides
 * what it runs through, until every part lies wholly in or wholly out of the patch. No triangulation is needed.
 * @returns the parts in the patch and the parts out of it
 */
export function divide(region: Outline, patch: DrawnPatch): { readonly within: Outline[]; readonly without: Outline[] } {
  const within: Outline[] = [];
  const without: Outline[] = [];
  const from = (part: Outline, first: number): void => {
    const box = boxOf(part);
    for (let i = first; i < patch.edges.length; i++) {
      const edge = patch.edges[i];
      if (!meets(box, edge.box) || !crosses(part, edge.from, edge.to)) continue;
      const { right, left } = split(part, edge.from, edge.to);
      if (right) from(right, i + 1);
      if (left) from(left, i + 1);
      return;
    }
    (holds(patch.edges, inside(part)) ? within : without).push(part);
  };
  from(region, 0);
  return { within, without };
}

/** @returns what shows in a convex outline when later patches cover earlier ones and all cover the ground */
export function shownIn(outline: Outline, patches: readonly DrawnPatch[]): Shown[] {
  const shown: Shown[] = [];
  const box = boxOf(outline);
  let bare: readonly Outline[] = [outline];
  for (const patch of patches) {
    if (bare.length === 0) break;
    if (!meets(box, patch.box)) continue;
    const divided = bare.map((region) => divide(region, patch));
    const regions = divided.flatMap((d) => d.within);
    if (regions.length > 0) shown.push({ patch: patch.index, regions });
    bare = divided.flatMap((d) => d.without);
  }
  return bare.length > 0 ? [...shown, { patch: -1, regions: bare }] : shown;
}

/** @returns the sum of the areas, in steps squared */
export const areaOf = (regions: readonly Outline[]): Fraction => regions.map(area).reduce(plus, NOTHING);

/** @returns whether convex regions without overlap fill one convex outline */
export const fillsConvex = (regions: readonly Outline[]): boolean => order(areaOf(regions), area(hull(regions.flat()))) === 0;

/** @returns the block's outline, in steps */
export function blockOutline(drawing: Drawing): Outline {
  const [w, h] = [BigInt(drawing.width), BigInt(drawing.height)];
  return [spot(0n, 0n), spot(w, 0n), spot(w, h), spot(0n, h)];
}

/** @returns a whole number of steps squared */
export const blockArea = (drawing: Drawing): Fraction => fraction(BigInt(drawing.width) * BigInt(drawing.height));

import { good, type Result } from '../measure/problem.ts';
import type { Block, DrawnSeam, LatticePoint, Patch } from './block.ts';
import { dividedBy, divisionFactor } from './divided.ts';
import { toDrawing } from './drawing.ts';
import { coarsest, leastCommonMultiple, onLattice } from './lattice.ts';
import { MAX_PATCHES, MAX_STEPS } from './limits.ts';
import { boundsOf, boundsOverlap, turn, type Outline } from './outline.ts';
import { joined, regionOf } from './overlay.ts';
import { drawSeam, hasSeam, toggleSeam } from './seams.ts';

/**
 * Divides the cloth along lines: each becomes a drawn seam, and a patch that seams now pass right through becomes two of the same
 * fabric. Where the first of the lines is a drawn seam already, all are taken away instead, and patches that only they divide are
 * one again. A whole patch is never divided; that it contradicts the seam is for the pattern to say.
 * @param lines two points each, in steps of 1/denominator of a grid unit
 */
export function divide(block: Block, lines: readonly DrawnSeam[], denominator: number): Result<Block> {
  const away = lines[0] !== undefined && hasSeam(block, lines[0], denominator);
  const concerned = lines.filter((line) => hasSeam(block, line, denominator) === away);
  let next: Result<Block> = good(block);
  for (const line of concerned) if (next.ok) next = (away ? toggleSeam : drawSeam)(next.value, line, denominator);
  if (!next.ok) return next;
  const times = next.value.denominator / denominator;
  const seams = concerned.map(([[a, b], [c, d]]): DrawnSeam => [[a * times, b * times], [c * times, d * times]]);
  return good(away ? coarsest(withPatchesJoined(next.value, seams)) : withPatchesDivided(next.value, seams));
}

/** @returns the block with the patches that some of its seams cross divided by all of its seams, as far as that can be held exactly */
function withPatchesDivided(block: Block, crossing: readonly DrawnSeam[]): Block {
  const crossed = new Set(
    block.patches.filter(({ whole, points }) => !whole && crossing.some((seam) => boundsOverlap(boundsOf(seam), boundsOf(points)))),
  );
  const factorOf = (patch: Patch): number | null => divisionFactor(regionOf(patch.points), block.seams);
  const factor = [...crossed].reduce((common: number | null, patch) => {
    const own = common && factorOf(patch);
    return own && common && common <= MAX_STEPS ? leastCommonMultiple(common, own) : null;
  }, 1);
  const finer = factor && onLattice(block, block.denominator * factor);
  const all = finer && finer.ok ? divided(finer.value, new Set(finer.value.patches.filter((_, i) => crossed.has(block.patches[i]!)))) : null;
  if (all && toDrawing(all).ok) return all;
  return divided(block, new Set([...crossed].filter((patch) => factorOf(patch) === 1)));
}

function divided(block: Block, crossed: ReadonlySet<Patch>): Block {
  const patches = block.patches.flatMap((patch): readonly Patch[] => {
    if (!crossed.has(patch)) return [patch];
    const parts = dividedBy(regionOf(patch.points), block.seams);
    // What a ring of seams cuts out of its middle leaves no simple outline; the patch stays as it is.
    if (parts.length < 2 || parts.some(({ holes }) => holes.length > 0)) return [patch];
    return parts.map(({ outer }) => ({ ...patch, points: outer }));
  });
  return patches.length > MAX_PATCHES ? block : { ...block, patches };
}

/** @returns the block with patches of one fabric joined where they follow one another in it and touch along one of the lines */
function withPatchesJoined(block: Block, lines: readonly DrawnSeam[]): Block {
  const patches: Patch[] = [];
  for (const patch of block.patches) {
    let last = patch;
    for (let i = patches.length - 1; i >= 0 && patches[i]!.fabric === patch.fabric; i--) {
      const one = joinedAlong(patches[i]!, last, lines);
      if (!one) continue;
      patches.splice(i, 1);
      last = one;
    }
    patches.push(last);
  }
  return { ...block, patches };
}

/** @returns two patches as one, if they touch along one of the lines and make a simple outline; else null */
function joinedAlong(a: Patch, b: Patch, lines: readonly DrawnSeam[]): Patch | null {
  if (a.whole || b.whole || !lines.some((line) => touchAlong(line, a.points, b.points))) return null;
  const whole = joined([regionOf(a.points), regionOf(b.points)]);
  return whole?.length === 1 && whole[0]!.holes.length === 0 ? { ...a, points: whole[0]!.outer } : null;
}

/** @returns whether edges of two outlines lie on each other within a line */
function touchAlong([from, to]: DrawnSeam, a: Outline, b: Outline): boolean {
  const along = ([x, y]: LatticePoint): number => (x - from[0]) * (to[0] - from[0]) + (y - from[1]) * (to[1] - from[1]);
  const stretches = (outline: Outline): readonly (readonly [number, number])[] =>
    outline.flatMap((p, i) => {
      const q = outline[(i + 1) % outline.length]!;
      if (turn(from, to, p) !== 0 || turn(from, to, q) !== 0) return [];
      const [one, other] = [along(p), along(q)];
      const stretch = [Math.max(0, Math.min(one, other)), Math.min(along(to), Math.max(one, other))] as const;
      return stretch[0] < stretch[1] ? [stretch] : [];
    });
  const others = stretches(b);
  return stretches(a).some(([start, end]) => others.some(([from, to]) => start < to && from < end));
}

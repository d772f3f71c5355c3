import { good, type Result } from '../measure/problem.ts';
import type { Block, DrawnSeam, Patch } from './block.ts';
import { nearby } from './boxes.ts';
import { crossingFactor } from './crossings.ts';
import { toDrawing } from './drawing.ts';
import { leastCommonMultiple, onLattice } from './lattice.ts';
import { liesOn, refined, type Lifted } from './lifted.ts';
import { MAX_PATCHES, MAX_SEAMS, MAX_STEPS } from './limits.ts';
import { boundsOf, type Outline } from './outline.ts';
import { doubleAreaOf, regionOf, without } from './overlay.ts';
import { refused, tooManyPatches, tooManySeams } from './problems.ts';
import { cutTooFine, offTheBlock, laidTooFine } from './selection-problems.ts';

/** A block on which patches from the hand lie. */
export interface Laid {
  readonly block: Block;
  /** The patches that were laid, as they stand in the block. */
  readonly patches: readonly Patch[];
  /** Whether something of them lay beyond the block's edge and was cut off. */
  readonly cut: boolean;
}

/**
 * Lays patches from the hand over what is there, as painting does: what they cover is dropped, what they cover in part gives up that
 * area where its outlines stay exact, and otherwise stays whole underneath. What lies beyond the block's edge is cut off.
 */
export function lay(block: Block, lifted: Lifted): Result<Laid> {
  const { columns, rows } = block.grid;
  const factor = liesOn(lifted, block.grid) ? 1 : edgeFactor(lifted, columns, rows);
  if (factor === null) return refused(cutTooFine());
  const fine = onLattice(block, lifted.denominator * factor);
  if (!fine.ok) return refused(laidTooFine());
  const { denominator } = fine.value;
  const held = refined(lifted, denominator);
  const [right, bottom] = [columns * denominator, rows * denominator];
  const laid: Patch[] = [];
  let cut = false;
  for (const patch of held.patches) {
    const kept = onBlock(patch.points, right, bottom);
    if (kept === null) return refused(cutTooFine());
    if (kept.length !== 1 || kept[0]! !== patch.points) cut = true;
    laid.push(...kept.map((points) => ({ ...patch, points })));
  }
  if (laid.length === 0) return refused(offTheBlock());
  const patches = [...covered(fine.value, laid), ...laid];
  if (patches.length > MAX_PATCHES) return refused(tooManyPatches(patches.length));
  const seams = withSeams(fine.value, held.seams.filter((seam) => seam.every(([x, y]) => x >= 0 && y >= 0 && x <= right && y <= bottom)));
  if (seams.length > MAX_SEAMS) return refused(tooManySeams(seams.length));
  const after: Block = { ...fine.value, patches, seams };
  return toDrawing(after).ok ? good({ block: after, patches: laid, cut }) : refused(laidTooFine());
}

/** @returns how much finer the lattice must be for the block's edge to cut patches at lattice points; null beyond what can be held */
function edgeFactor({ denominator, patches }: Lifted, columns: number, rows: number): number | null {
  const edge: Outline = [[0, 0], [columns * denominator, 0], [columns * denominator, rows * denominator], [0, rows * denominator]];
  const grid = { columns, rows };
  let factor = 1;
  for (const patch of patches) {
    const own = crossingFactor({ grid, denominator, patches: [patch, { fabric: '', points: edge }] });
    if (own === null) return null;
    factor = leastCommonMultiple(factor, own);
    if (factor * denominator * Math.max(columns, rows) > MAX_STEPS) return null;
  }
  return factor;
}

/** @returns what of an outline lies on the block: itself, its parts, or nothing; null where that is not exact */
function onBlock(points: Outline, right: number, bottom: number): readonly Outline[] | null {
  const box = boundsOf(points);
  if (box.left >= 0 && box.top >= 0 && box.right <= right && box.bottom <= bottom) return [points];
  if (box.right <= 0 || box.bottom <= 0 || box.left >= right || box.top >= bottom) return [];
  const far = {
    left: Math.min(box.left, 0) - 1,
    top: Math.min(box.top, 0) - 1,
    right: Math.max(box.right, right) + 1,
    bottom: Math.max(box.bottom, bottom) + 1,
  };
  const beyond: readonly Outline[] = [
    [[far.left, far.top], [0, far.top], [0, far.bottom], [far.left, far.bottom]],
    [[right, far.top], [far.right, far.top], [far.right, far.bottom], [right, far.bottom]],
    [[0, far.top], [right, far.top], [right, 0], [0, 0]],
    [[0, bottom], [right, bottom], [right, far.bottom], [0, far.bottom]],
  ];
  return without([regionOf(points)], beyond.map(regionOf))?.map(({ outer }) => outer) ?? null;
}

/** @returns what becomes of a block's patches under others laid over them all at once */
function covered(block: Block, laid: readonly Patch[]): readonly Patch[] {
  const near = nearby(laid.map(({ points }) => points), Math.max(block.grid.columns, block.grid.rows) * block.denominator);
  return block.patches.flatMap((patch) => {
    const over = near(boundsOf(patch.points)).map((i) => laid[i]!);
    if (over.length === 0) return [patch];
    const before = [regionOf(patch.points)];
    if (without(before, over.map(({ points }) => regionOf(points)))?.length === 0) return [];
    // Cutting a patch of the same fabric would change nothing that can be seen.
    const others = over.filter(({ fabric }) => fabric !== patch.fabric);
    const rest = without(before, others.map(({ points }) => regionOf(points)));
    if (rest === null || rest.some(({ holes }) => holes.length > 0) || doubleAreaOf(rest) === doubleAreaOf(before)) return [patch];
    return rest.map(({ outer }) => ({ ...patch, points: outer }));
  });
}

/** @returns a block's seams and others with them, each once */
function withSeams({ seams }: Block, others: readonly DrawnSeam[]): readonly DrawnSeam[] {
  if (others.length === 0) return seams;
  const name = ([from, to]: DrawnSeam): string => [String(from), String(to)].sort().join(' ');
  const drawn = new Set(seams.map(name));
  return [...seams, ...others.filter((seam) => !drawn.has(name(seam)))];
}

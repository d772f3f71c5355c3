import type { Point } from '../geometry/point.ts';
import { good, type Result } from '../measure/problem.ts';
import type { Block, DrawnSeam, Patch } from './block.ts';
import { crossingFactor } from './crossings.ts';
import { divisionFactor, dividedBy } from './divided.ts';
import { onLattice } from './lattice.ts';
import { MAX_PATCHES, MAX_STEPS } from './limits.ts';
import { boundsOf, boundsOverlap, whereIs, type Outline } from './outline.ts';
import { joined, regionOf, without, type Region } from './overlay.ts';
import { paint } from './painting.ts';
import { patchAt } from './patches.ts';
import { areaTooFine, refused, tooManyPatches } from './problems.ts';

/** A connected area of one fabric as the drawing shows it, as far as the drawn seams. */
export interface Area {
  readonly fabric: string;
  readonly region: Region;
  /** Steps to a grid unit in which the region's corners are given. */
  readonly denominator: number;
}

/**
 * Finds the area that a pointer means: everything of one fabric that hangs together there, whichever patches it is of,
 * as far as the drawn seams.
 * @param at in grid units from the top-left corner: x/w across, y/w down
 */
export function areaAt(block: Block, at: Point): Result<Area> {
  const fine = onCrossings(block);
  return fine.ok ? areaOn(fine.value, at) : fine;
}

/**
 * Paints the area that a pointer means in one fabric; what the area surrounds stays.
 * @param at in grid units from the top-left corner: x/w across, y/w down
 */
export function fill(block: Block, fabric: string, at: Point): Result<Block> {
  const fine = onCrossings(block);
  if (!fine.ok) return fine;
  const area = areaOn(fine.value, at);
  if (!area.ok) return area;
  if (area.value.fabric === fabric) return good(block);
  const { region, denominator } = area.value;
  const finer = onLattice(fine.value, denominator);
  if (!finer.ok) return finer;
  const painted = paint(finer.value, fabric, { points: region.outer, denominator });
  if (!painted.ok) return painted;
  const again: Patch[] = [];
  for (const hole of region.holes) {
    const content = contentOf(finer.value, hole);
    if (content === null) return refused(areaTooFine());
    again.push(...content.filter((patch) => patch.whole || patch.fabric !== fabric));
  }
  const patches = [...painted.value.patches, ...again];
  return patches.length > MAX_PATCHES ? refused(tooManyPatches(patches.length)) : good({ ...painted.value, patches });
}

/** @returns the block on a lattice on which all its outlines cross at lattice points */
function onCrossings(block: Block): Result<Block> {
  const factor = crossingFactor(block);
  return factor === null ? refused(areaTooFine()) : onLattice(block, factor * block.denominator);
}

/** `areaAt` on a block whose outlines cross at lattice points. */
function areaOn(block: Block, at: Point): Result<Area> {
  const top = patchAt(block, at);
  const fabric = top < 0 ? block.ground : block.patches[top]!.fabric;
  const parts: Region[] = [];
  const shown = [
    ...(fabric === block.ground ? [uncovered(block, wholeBlock(block), -1)] : []),
    ...block.patches.map((patch, i) => (patch.fabric === fabric ? uncovered(block, patch.points, i) : [])),
  ];
  for (const regions of shown) {
    if (regions === null) return refused(areaTooFine());
    parts.push(...regions);
  }
  const scaled = { x: at.x * block.denominator, y: at.y * block.denominator, w: at.w };
  const region = joined(parts)?.find((one) => holds(one, scaled));
  return region ? asFarAsSeams(block, { fabric, region, denominator: block.denominator }, at) : refused(areaTooFine());
}

/** @returns the part of an area that a pointer means when the block's drawn seams divide it */
function asFarAsSeams(block: Block, area: Area, at: Point): Result<Area> {
  const factor = divisionFactor(area.region, block.seams);
  const denominator = area.denominator * (factor ?? Infinity);
  if (factor === null || Math.max(block.grid.columns, block.grid.rows) * denominator > MAX_STEPS) return refused(areaTooFine());
  const finer = (outline: Outline): Outline => outline.map(([x, y]) => [x * factor, y * factor] as const);
  const region = { outer: finer(area.region.outer), holes: area.region.holes.map(finer) };
  const seams = block.seams.map(([from, to]): DrawnSeam => [[from[0] * factor, from[1] * factor], [to[0] * factor, to[1] * factor]]);
  const scaled = { x: at.x * denominator, y: at.y * denominator, w: at.w };
  const part = dividedBy(region, seams).find((one) => holds(one, scaled));
  if (!part) return refused(areaTooFine());
  return good(part === region ? area : { fabric: area.fabric, region: part, denominator });
}

/**
 * A patch has no holes, so what shows inside its outline was laid after it: the order of the patches is kept.
 * @returns what a hole shows, as patches that reproduce it; null where that is not exact
 */
function contentOf(block: Block, hole: Outline): readonly Patch[] | null {
  const content: Patch[] = [];
  const bounds = boundsOf(hole);
  const ground = uncovered(block, hole, -1);
  if (ground === null) return null;
  content.push(...ground.map(({ outer }) => ({ fabric: block.ground, points: outer })));
  for (const [i, patch] of block.patches.entries()) {
    if (!boundsOverlap(boundsOf(patch.points), bounds)) continue;
    for (const region of uncovered(block, patch.points, i) ?? [null]) {
      const outside = region && without([region], [regionOf(hole)]);
      const inside = region && outside && without([region], outside);
      if (inside === null) return null;
      content.push(...inside.map(({ outer }) => ({ ...patch, points: outer })));
    }
  }
  return content;
}

/** @returns the parts of an outline that no patch after the one with this index covers; null where that is not exact */
function uncovered(block: Block, outline: Outline, index: number): readonly Region[] | null {
  const bounds = boundsOf(outline);
  const covering = block.patches.filter((patch, i) => i > index && boundsOverlap(boundsOf(patch.points), bounds));
  return without([regionOf(outline)], covering.map((patch) => regionOf(patch.points)));
}

function wholeBlock({ grid, denominator }: Block): Outline {
  const [right, bottom] = [grid.columns * denominator, grid.rows * denominator];
  return [[0, 0], [right, 0], [right, bottom], [0, bottom]];
}

const holds = ({ outer, holes }: Region, at: Point): boolean =>
  whereIs(at, outer) !== 'outside' && holes.every((hole) => whereIs(at, hole) !== 'inside');

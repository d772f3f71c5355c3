import { good, type Result } from '../measure/problem.ts';
import type { Block, DrawnSeam, Patch } from './block.ts';
import { checkFabricKnown } from './checks.ts';
import { seamsInside } from './inner-seams.ts';
import { leastCommonMultiple } from './lattice.ts';
import { coarsened, type Lifted } from './lifted.ts';
import { MAX_STEPS } from './limits.ts';
import { boundsOf } from './outline.ts';
import { regionOf, type Region } from './overlay.ts';
import { refused } from './problems.ts';
import { finer, seenOf, type Seen } from './seen.ts';
import { nothingSelected, tooFineToLift } from './selection-problems.ts';
import { withoutHoles } from './unholed.ts';

/*
 * Patches are selected as they are seen. Taken up, they leave what lies under them; laid again, they are painted over what is there.
 */

/** Indices of the patches selected, in order. */
export type Selection = readonly number[];

/** @returns all patches of which anything is seen, or those of one fabric */
export const all = (block: Block, fabric?: string): Selection =>
  block.patches.flatMap((patch, i) => ((fabric === undefined || patch.fabric === fabric) && isSeen(seenOf(block, i)) ? [i] : []));

/**
 * @param frame two opposite corners, in grid units; a pointer's places, so doubles will do
 * @returns the patches of which everything seen lies inside a frame
 */
export function within(block: Block, [ax, ay]: readonly [number, number], [bx, by]: readonly [number, number]): Selection {
  const [left, right, top, bottom] = [Math.min(ax, bx), Math.max(ax, bx), Math.min(ay, by), Math.max(ay, by)];
  return block.patches.flatMap(({ points }, i) => {
    const whole = boundsOf(points);
    const { denominator } = block;
    // A look at the whole patch spares most of them the closer one.
    if (whole.right < left * denominator || whole.left > right * denominator) return [];
    if (whole.bottom < top * denominator || whole.top > bottom * denominator) return [];
    const seen = seenOf(block, i) ?? { denominator, regions: [regionOf(points)] };
    if (!isSeen(seen)) return [];
    const box = boundsOf(seen.regions.flatMap(({ outer }) => outer));
    const fits = box.left >= left * seen.denominator && box.right <= right * seen.denominator;
    return fits && box.top >= top * seen.denominator && box.bottom <= bottom * seen.denominator ? [i] : [];
  });
}

const isSeen = (seen: Seen | null): boolean => seen === null || seen.regions.length > 0;

/** @returns the block without patches, so that what lies under them shows; the seams drawn inside them go too */
export function takeUp(block: Block, selection: Selection): Block {
  const gone = new Set(selection);
  const seams = new Set(seamsOf(block, selection));
  return {
    ...block,
    patches: block.patches.filter((_, i) => !gone.has(i)),
    ...(seams.size > 0 && { seams: block.seams.filter((_, i) => !seams.has(i)) }),
  };
}

/** @returns the block with patches in another fabric */
export function recolour(block: Block, selection: Selection, fabric: string): Result<Block> {
  const fault = checkFabricKnown('The paint', fabric, block.fabrics);
  if (fault) return refused(fault);
  const meant = new Set(selection);
  const patches = block.patches.map((patch, i) => (meant.has(i) && patch.fabric !== fabric ? { ...patch, fabric } : patch));
  return good({ ...block, patches });
}

/** @returns indices of the drawn seams that lie inside what is seen of patches */
function seamsOf(block: Block, selection: Selection): readonly number[] {
  if (block.seams.length === 0) return [];
  const seen = selection.map((i) => seenOf(block, i) ?? { denominator: block.denominator, regions: [regionOf(block.patches[i]!.points)] });
  const common = seen.reduce((steps, { denominator }) => leastCommonMultiple(steps, denominator), block.denominator);
  const area = seen.flatMap(({ regions, denominator }) => regions.map((region) => finerRegion(region, common / denominator)));
  return seamsInside(block.seams.map(finerSeam(common / block.denominator)), area);
}

const finerRegion = ({ outer, holes }: Region, times: number): Region => ({
  outer: finer(outer, times),
  holes: holes.map((hole) => finer(hole, times)),
});

const finerSeam = (times: number) => ([[a, b], [c, d]]: DrawnSeam): DrawnSeam => [[a * times, b * times], [c * times, d * times]];

/**
 * Takes what is seen of patches in the hand, with the seams drawn inside it. A patch seen in several parts, or round others, comes as
 * several; if it must stay one piece, each of these must. Pins stay where they are.
 * @returns a problem where nothing is selected, or where patches are covered along points finer than can be held exactly
 */
export function lift(block: Block, selection: Selection): Result<Lifted> {
  const parts: { readonly patch: Patch; readonly seen: Seen }[] = [];
  let common = block.denominator;
  for (const i of selection) {
    const seen = seenOf(block, i);
    const outlines = seen && withoutHoles(seen, block.grid);
    if (outlines === null) return refused(tooFineToLift(i + 1));
    parts.push({ patch: block.patches[i]!, seen: outlines });
    common = leastCommonMultiple(common, outlines.denominator);
    if (common * Math.max(block.grid.columns, block.grid.rows) > MAX_STEPS) return refused(tooFineToLift(i + 1));
  }
  const patches = parts.flatMap(({ patch, seen: { regions, denominator } }) =>
    regions.map(({ outer }): Patch => ({ ...patch, points: finer(outer, common / denominator) })),
  );
  if (patches.length === 0) return refused(nothingSelected());
  const seams = seamsOf(block, selection).map((i) => finerSeam(common / block.denominator)(block.seams[i]!));
  return good(coarsened({ denominator: common, patches, seams }));
}

import type { Block } from './block.ts';
import { crossingFactor } from './crossings.ts';
import { boundsOf, type Outline } from './outline.ts';
import { without, type Region } from './overlay.ts';
import { finer, type Seen } from './seen.ts';

/**
 * Divides what is seen of a patch by level lines until no part has a hole, so that each part is an outline by itself.
 * @returns the same areas, on a finer lattice where a line meets an edge between two points; null where that has no exact answer
 */
export function withoutHoles(seen: Seen, grid: Block['grid']): Seen | null {
  if (seen.regions.every(({ holes }) => holes.length === 0)) return seen;
  for (const times of [1, 2]) {
    const regions = divided(fine(seen, times).regions);
    if (regions) return { denominator: seen.denominator * times, regions };
  }
  const twice = fine(seen, 2);
  const factor = crossingFactor({
    grid,
    denominator: twice.denominator,
    patches: twice.regions.flatMap(({ outer, holes }) => [outer, ...holes, ...holes.map((hole) => above(outer, middle(hole)))])
      .map((points) => ({ fabric: '', points })),
  });
  if (factor === null || factor === 1) return null;
  const regions = divided(fine(twice, factor).regions);
  return regions && { denominator: twice.denominator * factor, regions };
}

const fine = ({ denominator, regions }: Seen, times: number): Seen => ({
  denominator: denominator * times,
  regions: regions.map(({ outer, holes }) => ({ outer: finer(outer, times), holes: holes.map((hole) => finer(hole, times)) })),
});

function divided(regions: readonly Region[]): readonly Region[] | null {
  const parts: Region[] = [];
  for (const region of regions) {
    const some = region.holes.length === 0 ? [region] : dividedOnce(region);
    if (some === null) return null;
    parts.push(...some);
  }
  return parts;
}

/** A line through the middle of a hole always opens it; one along its edge does so without a finer lattice. */
function dividedOnce(region: Region): readonly Region[] | null {
  const [hole] = region.holes;
  const levels = [...new Set(hole!.map(([, y]) => y))].sort((a, b) => a - b);
  for (const level of [...levels, middle(hole!)]) {
    if (!Number.isInteger(level)) continue;
    const lower = without([region], [{ outer: above(region.outer, level), holes: [] }]);
    const upper = lower && without([region], [{ outer: below(region.outer, level), holes: [] }]);
    if (!lower || !upper) continue;
    const count = [...lower, ...upper].reduce((holes, part) => holes + part.holes.length, 0);
    if (count >= region.holes.length) continue;
    const parts = divided([...upper, ...lower]);
    if (parts) return parts;
  }
  return null;
}

const middle = (hole: Outline): number => {
  const { top, bottom } = boundsOf(hole);
  return (top + bottom) / 2;
};

function above(outer: Outline, level: number): Outline {
  const { left, right, top } = boundsOf(outer);
  return [[left - 1, top - 1], [right + 1, top - 1], [right + 1, level], [left - 1, level]];
}

function below(outer: Outline, level: number): Outline {
  const { left, right, bottom } = boundsOf(outer);
  return [[left - 1, level], [right + 1, level], [right + 1, bottom + 1], [left - 1, bottom + 1]];
}

import clipping, { type MultiPolygon, type Polygon } from 'polygon-clipping';
import type { LatticePoint } from './block.ts';
import { doubleArea, outlineFault, tidyOutline, type Outline } from './outline.ts';

/** A connected area: an outline less the outlines of its holes. Lattice steps. */
export interface Region {
  readonly outer: Outline;
  readonly holes: readonly Outline[];
}

/** @returns the area inside an outline as a region */
export const regionOf = (outer: Outline): Region => ({ outer, holes: [] });

/** @returns twice the area of regions, in square steps */
export const doubleAreaOf = (regions: readonly Region[]): number =>
  regions.reduce((sum, { outer, holes }) => sum + doubleArea(outer) - holes.reduce((inner, hole) => inner + doubleArea(hole), 0), 0);

/*
 * polygon-clipping works in doubles. Here it sees whole numbers only, and an answer counts only when all its corners
 * are whole numbers and its areas add up exactly; where outlines cross between lattice points the answer is null.
 */

/** @returns what is left of regions where others are taken away; null where that has no exact answer on this lattice */
export function without(subject: readonly Region[], taken: readonly Region[]): readonly Region[] | null {
  if (subject.length === 0 || taken.length === 0) return subject;
  const rest = exactly(() => clipping.difference(polygons(subject), polygons(taken)));
  const shared = exactly(() => clipping.intersection(polygons(subject), polygons(taken)));
  if (rest === null || shared === null) return null;
  return doubleAreaOf(rest) + doubleAreaOf(shared) === doubleAreaOf(subject) ? rest : null;
}

/** @returns the regions that others cover together when no two of them share area; null as for `without` */
export function joined(parts: readonly Region[]): readonly Region[] | null {
  if (parts.length === 0) return parts;
  const whole = exactly(() => clipping.union(polygons(parts)));
  return whole !== null && doubleAreaOf(whole) === doubleAreaOf(parts) ? whole : null;
}

const polygons = (regions: readonly Region[]): MultiPolygon =>
  regions.map(({ outer, holes }): Polygon => [outer, ...holes].map((ring) => ring.map(([x, y]): [number, number] => [x, y])));

/** @returns the regions that an operation finds, if all corners are lattice points and all outlines simple */
function exactly(operation: () => MultiPolygon): readonly Region[] | null {
  let found: MultiPolygon;
  try {
    found = operation();
  } catch {
    // The library throws when its sweep loses its way; no answer is then as good as an inexact one.
    return null;
  }
  const regions: Region[] = [];
  for (const polygon of found) {
    const rings: Outline[] = [];
    for (const ring of polygon) {
      if (!ring.every(([x, y]) => Number.isInteger(x) && Number.isInteger(y))) return null;
      const outline = tidyOutline(ring.map(([x, y]): LatticePoint => [x, y]));
      if (outlineFault(outline) !== null) return null;
      rings.push(outline);
    }
    regions.push({ outer: rings[0]!, holes: rings.slice(1) });
  }
  return regions;
}

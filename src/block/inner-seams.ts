import type { DrawnSeam, LatticePoint } from './block.ts';
import { whereIs, type Outline } from './outline.ts';
import { joined, type Region } from './overlay.ts';

/**
 * Tells which drawn seams belong to an area: those that lie inside it from end to end, along its edge at most for a part.
 * A seam that leaves it, or only follows its edge, belongs to its neighbours as much.
 * @param area parts without common area, in the seams' steps
 * @returns their indices
 */
export function seamsInside(seams: readonly DrawnSeam[], area: readonly Region[]): readonly number[] {
  if (seams.length === 0 || area.length === 0) return [];
  // Where the parts do not join exactly, a seam belongs if it lies inside one of them.
  const regions = joined(area) ?? area;
  return seams.flatMap((seam, i) => (regions.some((region) => liesInside(seam, region)) ? [i] : []));
}

function liesInside([from, to]: DrawnSeam, { outer, holes }: Region): boolean {
  const rings = [outer, ...holes];
  if (rings.some((ring) => crosses(from, to, ring))) return false;
  // The seam can change sides only where it meets a corner, which is a lattice point: look half way between any two of these.
  const along = ([x, y]: LatticePoint): number => (x - from[0]) * (to[0] - from[0]) + (y - from[1]) * (to[1] - from[1]);
  const met = rings.flat().filter((corner) => turn(from, to, corner) === 0 && along(corner) > 0 && along(corner) < along(to));
  const stops = [from, ...met, to].sort((a, b) => along(a) - along(b));
  let inside = false;
  for (const [i, stop] of stops.slice(1).entries()) {
    const before = stops[i]!;
    const middle = { x: before[0] + stop[0], y: before[1] + stop[1], w: 2 };
    const place = whereIs(middle, outer);
    const inHole = holes.some((hole) => whereIs(middle, hole) === 'inside');
    if (place === 'outside' || inHole) return false;
    if (place === 'inside' && holes.every((hole) => whereIs(middle, hole) === 'outside')) inside = true;
  }
  return inside;
}

/** @returns whether a line crosses an edge in the middle of both, or ends in the middle of an edge and goes on to both sides */
function crosses(from: LatticePoint, to: LatticePoint, ring: Outline): boolean {
  return ring.some((p, i) => {
    const q = ring[(i + 1) % ring.length]!;
    return turn(from, to, p) * turn(from, to, q) < 0 && turn(p, q, from) * turn(p, q, to) < 0;
  });
}

const turn = (p: LatticePoint, q: LatticePoint, r: LatticePoint): number => (q[0] - p[0]) * (r[1] - p[1]) - (q[1] - p[1]) * (r[0] - p[0]);

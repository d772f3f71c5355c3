import { within, type Boundary, type Stretch } from '../patchwork/boundaries.ts';
import { compareAlong, lineKey, lineThrough } from '../point.ts';
import type { Assembly } from './assembly.ts';

/**
 * Finds where seams run through one cloth, though nothing is drawn there: each such stretch divides an area in two pieces.
 * @param boundaries what is drawn, by line key, in the same view as the assembly
 * @returns the undrawn stretches of all seams, in sewing order
 */
export function divisionsOf(root: Assembly, boundaries: ReadonlyMap<string, Boundary>): readonly Stretch[] {
  const found: Stretch[] = [];
  const walk = (node: Assembly): void => {
    node.parts.forEach(walk);
    for (const seam of node.seams) {
      const [from, to] = compareAlong(seam.from, seam.to) < 0 ? [seam.from, seam.to] : [seam.to, seam.from];
      const drawn = boundaries.get(lineKey(lineThrough(from, to)))?.drawn ?? [];
      let at = from;
      for (const stretch of within(drawn, from, to)) {
        if (compareAlong(at, stretch.from) < 0) found.push({ from: at, to: stretch.from });
        at = stretch.to;
      }
      if (compareAlong(at, to) < 0) found.push({ from: at, to });
    }
  };
  walk(root);
  return found;
}

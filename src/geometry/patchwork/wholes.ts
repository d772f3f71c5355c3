import { chord } from '../convex.ts';
import { compareAlong, latticePoint, lineKey, lineThrough, reversed, side } from '../point.ts';
import type { Boundary } from './boundaries.ts';
import { covers, merged, within, type Stretch } from './stretches.ts';
import { atomEdges, type Atom, type Patchwork } from './patchwork.ts';

/** Why a patch that is marked whole can never be one piece of cloth. */
export interface BrokenWhole {
  readonly patch: number;
  /** parts: it shows in several parts, or with an inner corner. seam: a drawn seam runs through it. */
  readonly why: 'parts' | 'seam';
}

/**
 * Finds the whole patches that contradict the drawing itself: a piece of cloth sewn by straight seams is convex.
 * @returns one entry for each such patch, in painting order; a patch of which nothing shows is no contradiction
 */
export function brokenWholes(patchwork: Patchwork, boundaries: ReadonlyMap<string, Boundary>): readonly BrokenWhole[] {
  return patchwork.drawing.patches.flatMap((patch, index): BrokenWhole[] => {
    if (!patch.whole) return [];
    const shown = patchwork.panes.flatMap((pane) => pane.filter((atom) => atom.label.patch === index));
    if (!isConvex(shown)) return [{ patch: index, why: 'parts' }];
    return isCrossed(shown, patchwork, boundaries) ? [{ patch: index, why: 'seam' }] : [];
  });
}

/** @returns whether an area lies wholly in front of each edge at which it ends */
function isConvex(atoms: readonly Atom[]): boolean {
  const byDirection = new Map<string, Stretch[]>();
  const edges = atoms.flatMap(atomEdges);
  const name = (line: Parameters<typeof side>[0]): string => `${line.a},${line.b},${line.c}`;
  for (const { line, from, to } of edges) byDirection.set(name(line), [...(byDirection.get(name(line)) ?? []), { from, to }]);
  return edges.every(({ line, from, to }) => {
    const beyond = merged(byDirection.get(name(reversed(line))) ?? []);
    return covers(beyond, from, to) || atoms.every((atom) => atom.shape.points.every((p) => side(line, p) >= 0));
  });
}

/** @returns whether a drawn seam runs through the inside of an area */
function isCrossed(atoms: readonly Atom[], { drawing }: Patchwork, boundaries: ReadonlyMap<string, Boundary>): boolean {
  return drawing.seams.some(([[x0, y0], [x1, y1]]) => {
    const [p, q] = [latticePoint(x0, y0), latticePoint(x1, y1)];
    const line = lineThrough(p, q);
    const [from, to] = compareAlong(p, q) < 0 ? [p, q] : [q, p];
    const meets = (stretch: Stretch): boolean => within([stretch], from, to).length > 0;
    const throughAtom = atoms.some((atom) => {
      const across = chord(atom.shape, line);
      return across !== null && meets({ from: across[0], to: across[1] });
    });
    const alongAtoms = (boundaries.get(lineKey(line))?.locked ?? []).filter(meets);
    return throughAtom || alongAtoms.some((s) => atoms.some((atom) => atomEdges(atom).some((e) => within([s], e.from, e.to).length > 0 && lineKey(e.line) === lineKey(line))));
  });
}

import { boundariesOf } from '../../geometry/patchwork/boundaries.ts';
import { patchworkOf } from '../../geometry/patchwork/patchwork.ts';
import { exchanges } from '../../geometry/patchwork/self-symmetry.ts';
import { good, type Result } from '../../measure/problem.ts';
import type { Block } from '../block.ts';
import { toDrawing } from '../drawing.ts';
import { exchangesOfPlaces, type Roles } from './colourings.ts';

/** Where two roles meet, and how long their common edge is, in lattice steps, as ink. */
export interface CommonEdge {
  readonly roles: readonly [number, number];
  readonly length: number;
}

/** @returns the roles of a block's fabrics, those that show alone, in the order of its swatches; a problem where it cannot be held exactly */
export function rolesOf(block: Block): Result<Roles & { readonly edges: readonly CommonEdge[] }> {
  const placed = toDrawing(block);
  if (!placed.ok) return placed;
  const patchwork = patchworkOf(placed.value.drawing);
  const boundaries = boundariesOf(patchwork);
  const shown = new Set(patchwork.panes.flatMap((pane) => pane.map(({ label }) => label.fabric)));
  const ids = block.fabrics.flatMap(({ id }) => (shown.has(id) ? [id] : []));
  const lengths = new Map<string, number>();
  for (const { between } of boundaries.values()) {
    for (const { from, to, front, back } of between) {
      if (front === back) continue;
      const pair = [ids.indexOf(front), ids.indexOf(back)].sort((a, b) => a - b).join(' ');
      lengths.set(pair, (lengths.get(pair) ?? 0) + Math.hypot(to.x / to.w - from.x / from.w, to.y / to.w - from.y / from.w));
    }
  }
  const edges = [...lengths].map(([pair, length]): CommonEdge => ({ roles: pair.split(' ').map(Number) as [number, number], length }));
  return good({
    ids,
    edges,
    neighbours: edges.map(({ roles }) => roles),
    exchanges: exchangesOfPlaces(ids, exchanges(ids, patchwork.width, patchwork.height, boundaries)),
  });
}

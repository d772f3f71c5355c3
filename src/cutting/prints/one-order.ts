import type { Point } from '../../geometry/point.ts';
import type { Piece, Piecing } from '../../geometry/piecing/assembly.ts';
import { fromLeastCorner } from '../../geometry/convex.ts';
import { symmetriesOf, takenOutline } from '../../geometry/patchwork/symmetry.ts';

/**
 * @returns a block's pieces in an order that depends on the picture alone: turned or mirrored, the same pieces come in the same order,
 * so that what chance does with them turns with the block
 */
export function inOneOrder({ root, pieces }: Piecing): readonly Piece[] {
  const corners = root.outline.map(({ x, y }) => [x, y] as const);
  const [width, height] = [Math.max(...corners.map(([x]) => x)), Math.max(...corners.map(([, y]) => y))];
  const views = symmetriesOf(width, height).map((symmetry) => {
    const named = pieces.map((piece) => ({ piece, name: nameOf(piece.fabric, fromLeastCorner(takenOutline(symmetry, piece.outline))) }));
    named.sort((a, b) => (a.name < b.name ? -1 : 1));
    return { named, text: named.map(({ name }) => name).join(';') };
  });
  const least = views.reduce((best, view) => (view.text < best.text ? view : best));
  return least.named.map(({ piece }) => piece);
}

const nameOf = (fabric: string, outline: readonly Point[]): string =>
  `${outline.map(({ x, y, w }) => `${x}/${w},${y}/${w}`).join(' ')} ${fabric}`;

import type { Drawing, Lattice } from '../../src/geometry/patchwork/drawing.ts';
import type { Piecing } from '../../src/geometry/piecing/assembly.ts';
import { outlineText } from './exact.ts';
import { outlineOf } from './sewn.ts';

/** A view of a drawing: where a point of a block this wide and high goes. */
export interface View {
  readonly name: string;
  readonly swaps: boolean;
  readonly take: (p: Lattice, width: number, height: number) => Lattice;
}

/** The eight symmetries of the square, written out one by one. */
export const VIEWS: readonly View[] = [
  { name: 'as it is', swaps: false, take: ([x, y]) => [x, y] },
  { name: 'a quarter turn', swaps: true, take: ([x, y], _, h) => [h - y, x] },
  { name: 'a half turn', swaps: false, take: ([x, y], w, h) => [w - x, h - y] },
  { name: 'three quarter turns', swaps: true, take: ([x, y], w) => [y, w - x] },
  { name: 'left and right exchanged', swaps: false, take: ([x, y], w) => [w - x, y] },
  { name: 'top and bottom exchanged', swaps: false, take: ([x, y], _, h) => [x, h - y] },
  { name: 'mirrored in one diagonal', swaps: true, take: ([x, y]) => [y, x] },
  { name: 'mirrored in the other', swaps: true, take: ([x, y], w, h) => [h - y, w - x] },
];

/** @returns the drawing as the view shows it */
export function seenIn({ swaps, take }: View, drawing: Drawing): Drawing {
  const { width, height, columns, rows, patches, seams } = drawing;
  const at = (p: Lattice): Lattice => take(p, width, height);
  const across = columns.map((x) => at([x, 0])[swaps ? 1 : 0]).sort((a, b) => a - b);
  const down = rows.map((y) => at([0, y])[swaps ? 0 : 1]).sort((a, b) => a - b);
  return {
    ...drawing,
    width: swaps ? height : width,
    height: swaps ? width : height,
    columns: swaps ? down : across,
    rows: swaps ? across : down,
    patches: patches.map((patch) => ({ ...patch, points: patch.points.map(at) })),
    seams: seams.map(([p, r]) => [at(p), at(r)] as const),
  };
}

/** @returns a way's figures and how many there are of each of its units, by kind: what turning the drawing must not change */
export const counts = ({ way, figures, units }: Piecing): unknown => ({
  way,
  figures,
  units: units.map((unit) => `${unit.places.length} × ${unit.kind}`).sort(),
});

/** @returns everything about a way but the numbers of its patches: what painting the same picture otherwise must not change */
export const everything = (piecing: Piecing): unknown => ({
  ...(counts(piecing) as object),
  pieces: piecing.pieces.map((piece) => `${piece.fabric}: ${outlineText(outlineOf(piece))}`).sort(),
  places: piecing.units
    .map(
      (unit) =>
        `${unit.kind}: ${unit.places
          .map(({ assembly }) => outlineText(outlineOf(assembly)))
          .sort()
          .join('; ')}`,
    )
    .sort(),
});

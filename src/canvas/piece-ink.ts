import type { Pattern } from '../pattern/pattern.ts';
import type { GridOutline } from './gesture.ts';

/** A piece of the pattern as the drawing table shows it: grid units, for ink and for pointing only. */
export interface PieceInk {
  readonly id: number;
  readonly fabric: string;
  readonly outline: GridOutline;
}

/** @returns the pattern's pieces in the grid units of the block they were made from */
export function pieceInks(pattern: Pattern, grid: { readonly columns: number; readonly rows: number }): PieceInk[] {
  const perColumn = grid.columns / pattern.lattice.width;
  const perRow = grid.rows / pattern.lattice.height;
  return pattern.pieces.map(({ id, fabric, outline }) => ({
    id,
    fabric,
    outline: outline.map((point) => [(point.x / point.w) * perColumn, (point.y / point.w) * perRow] as const),
  }));
}

/** @returns whether a place lies in a convex clockwise outline */
function within(outline: GridOutline, x: number, y: number): boolean {
  return outline.every(([ax, ay], i) => {
    const [bx, by] = outline[(i + 1) % outline.length]!;
    return (bx - ax) * (y - ay) - (by - ay) * (x - ax) >= 0;
  });
}

/** @returns the ids of the pieces that lie under any of the places */
export function piecesUnder(pieces: readonly PieceInk[], places: readonly (readonly [number, number])[]): number[] {
  return pieces.filter(({ outline }) => places.some(([x, y]) => within(outline, x, y))).map(({ id }) => id);
}

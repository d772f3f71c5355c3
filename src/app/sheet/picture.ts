import type { Assembly, Piece } from '../../geometry/piecing/assembly.ts';
import type { Point } from '../../geometry/point.ts';

/** A rectangle in lattice steps, for ink only. */
export interface Frame {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

/** @returns the nearest doubles to a point's coordinates, for ink only */
export const inkOf = (point: Point): readonly [number, number] => [point.x / point.w, point.y / point.w];

/** @returns every piece sewn into an assembly */
export function allPieces(assembly: Assembly): Piece[] {
  return assembly.piece ? [assembly.piece] : assembly.parts.flatMap(allPieces);
}

/** @returns the smallest upright rectangle that holds the outline */
export function frameOf(outline: readonly Point[]): Frame {
  const xs = outline.map((point) => inkOf(point)[0]);
  const ys = outline.map((point) => inkOf(point)[1]);
  const left = Math.min(...xs);
  const top = Math.min(...ys);
  return { left, top, width: Math.max(...xs) - left, height: Math.max(...ys) - top };
}

/** @returns the mean of the corners: inside, for a convex outline */
export function middleOf(outline: readonly Point[]): readonly [number, number] {
  let x = 0;
  let y = 0;
  for (const point of outline) {
    const [px, py] = inkOf(point);
    x += px;
    y += py;
  }
  return [x / outline.length, y / outline.length];
}

/** @returns whether a place lies inside a convex clockwise outline or on its edge, as far as ink can tell */
export function inkInside(outline: readonly Point[], x: number, y: number): boolean {
  return outline.every((point, i) => {
    const [ax, ay] = inkOf(point);
    const [bx, by] = inkOf(outline[(i + 1) % outline.length]!);
    return (bx - ax) * (y - ay) - (by - ay) * (x - ax) >= 0;
  });
}

/** @returns an outline as the `points` of an SVG polygon, moved by dx, dy */
export function svgPoints(outline: readonly Point[], dx = 0, dy = 0): string {
  return outline.map((point) => inkOf(point)).map(([x, y]) => `${+(x + dx).toFixed(4)},${+(y + dy).toFixed(4)}`).join(' ');
}

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

/** @returns whether something is so wide that its picture needs a line of its own */
export const isWide = ({ width, height }: Pick<Frame, 'width' | 'height'>): boolean => width >= 3.5 * height;

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

/** A piece to draw, and how far it is moved from its place. */
export interface Placed {
  readonly piece: Pick<Piece, 'fabric' | 'outline'>;
  readonly dx: number;
  readonly dy: number;
}

/** @returns for each fabric the one SVG path of all its pieces: a block of thousands of pieces stays a handful of elements */
export function pathsByFabric(placed: readonly Placed[]): ReadonlyMap<string, string> {
  const paths = new Map<string, string>();
  for (const { piece, dx, dy } of placed) {
    const corners = piece.outline.map(inkOf).map(([x, y]) => `${+(x + dx).toFixed(4)} ${+(y + dy).toFixed(4)}`);
    paths.set(piece.fabric, `${paths.get(piece.fabric) ?? ''}M${corners.join('L')}Z`);
  }
  return paths;
}

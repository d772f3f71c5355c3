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

/** A piece to draw, where it lies. */
export interface Placed {
  readonly fabric: string;
  readonly outline: readonly (readonly [x: number, y: number])[];
}

/** @returns for each fabric the one SVG path of all its pieces: a block of thousands of pieces stays a handful of elements */
export function pathsByFabric(placed: readonly Placed[]): ReadonlyMap<string, string> {
  const paths = new Map<string, string>();
  for (const { fabric, outline } of placed) {
    const corners = outline.map(([x, y]) => `${+x.toFixed(4)} ${+y.toFixed(4)}`);
    paths.set(fabric, `${paths.get(fabric) ?? ''}M${corners.join('L')}Z`);
  }
  return paths;
}

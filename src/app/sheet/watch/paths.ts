import type { Spot } from '../../../pattern/diagrams/diagram.ts';
import type { MovedPiece } from '../../../pattern/diagrams/play-through.ts';

const spot = ([x, y]: Spot): string => `${+x.toFixed(3)} ${+y.toFixed(3)}`;

/** @returns for each fabric one SVG path of all its pieces: a frame stays a handful of elements */
export function pathsOf(pieces: readonly MovedPiece[]): ReadonlyMap<string, string> {
  const paths = new Map<string, string>();
  for (const { fabric, outline } of pieces) paths.set(fabric, `${paths.get(fabric) ?? ''}M${outline.map(spot).join('L')}Z`);
  return paths;
}

import type { Spot } from '../../../pattern/polygons.ts';

/** @returns an arrow as an SVG path, with a filled head; with a head at either end where it points both ways */
export function arrowPath({ from, to }: { readonly from: Spot; readonly to: Spot }, bothWays: boolean): string {
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  const share = bothWays ? 0.3 : 0.4;
  const head = (tip: Spot, way: 1 | -1): string => {
    const back: Spot = [tip[0] - way * dx * share, tip[1] - way * dy * share];
    const wide = share * 0.55;
    return `M${at(tip)}L${at([back[0] - dy * wide, back[1] + dx * wide])}L${at([back[0] + dy * wide, back[1] - dx * wide])}Z`;
  };
  return `M${at(from)}L${at(to)}${head(to, 1)}${bothWays ? head(from, -1) : ''}`;
}

const at = ([x, y]: Spot): string => `${+x.toFixed(4)} ${+y.toFixed(4)}`;

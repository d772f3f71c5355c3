/*
 * Convex polygons as ink: clockwise as seen on screen (y down). Everything that decides about cloth is exact and done before; this only
 * finds places on paper.
 */

/** A place in the nearest doubles. */
export type Spot = readonly [x: number, y: number];

export type Polygon = readonly Spot[];

/** What counts as touching, in points: a millionth of what a printer can show. */
const TOUCH = 1e-6;

/** @returns the smallest convex polygon round some spots */
export function hullOf(spots: readonly Spot[]): Polygon {
  const sorted = [...spots].sort((a, b) => a[0] - b[0] || a[1] - b[1]);
  const chain = (run: readonly Spot[]): Spot[] => {
    const kept: Spot[] = [];
    for (const p of run) {
      while (kept.length > 1 && turn(kept[kept.length - 2]!, kept[kept.length - 1]!, p) <= TOUCH) kept.pop();
      kept.push(p);
    }
    return kept.slice(0, -1);
  };
  return [...chain(sorted), ...chain([...sorted].reverse())];
}

/** Above 0 where a → b → p turns clockwise as seen on screen. */
const turn = (a: Spot, b: Spot, p: Spot): number => (b[0] - a[0]) * (p[1] - a[1]) - (b[1] - a[1]) * (p[0] - a[0]);

export interface Extent {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** @returns how far spots reach */
export function extentOf(spots: readonly Spot[]): Extent {
  const [xs, ys] = [spots.map(([x]) => x), spots.map(([, y]) => y)];
  return { left: Math.min(...xs), top: Math.min(...ys), right: Math.max(...xs), bottom: Math.max(...ys) };
}

/** @returns the corners of a rectangle */
export const cornersOf = ({ left, top, right, bottom }: Extent): Polygon => [
  [left, top],
  [right, top],
  [right, bottom],
  [left, bottom],
];

/** @returns the area inside */
export function areaOf(polygon: Polygon): number {
  return polygon.reduce((sum, [x, y], i) => {
    const [nextX, nextY] = polygon[(i + 1) % polygon.length]!;
    return sum + (x * nextY - nextX * y) / 2;
  }, 0);
}

/** @returns the polygon moved */
export const movedBy = (polygon: Polygon, [dx, dy]: Spot): Polygon => polygon.map(([x, y]) => [x + dx, y + dy]);

/** @returns a spot turned clockwise (as seen on screen) about the origin; quarter turns exactly */
export function turnedBy(degrees: number): (spot: Spot) => Spot {
  const exact: Readonly<Record<number, Spot>> = { 0: [1, 0], 90: [0, 1], 180: [-1, 0], 270: [0, -1] };
  const radians = (degrees * Math.PI) / 180;
  const [cos, sin] = exact[degrees] ?? [Math.cos(radians), Math.sin(radians)];
  return ([x, y]) => [x * cos - y * sin, x * sin + y * cos];
}

/** @returns the mean of the corners: inside, for a convex polygon */
export function middleOf(polygon: Polygon): Spot {
  const [x, y] = polygon.reduce(([a, b], [p, q]): Spot => [a + p, b + q], [0, 0] as Spot);
  return [x / polygon.length, y / polygon.length];
}

/** @returns how deep inside a polygon a spot lies: its distance from the nearest edge, below 0 outside */
export const depthIn = (polygon: Polygon, [x, y]: Spot): number =>
  Math.min(
    ...polygon.map((a, i) => {
      const b = polygon[(i + 1) % polygon.length]!;
      return turn(a, b, [x, y]) / Math.hypot(b[0] - a[0], b[1] - a[1]);
    }),
  );

/** @returns the part of a line (a spot and a direction of length 1) inside a polygon, at least `inset` from its edges; null if none */
export function chordIn(polygon: Polygon, [x, y]: Spot, [dx, dy]: Spot, inset: number): readonly [Spot, Spot] | null {
  let [from, to] = [-Infinity, Infinity];
  for (const [i, a] of polygon.entries()) {
    const b = polygon[(i + 1) % polygon.length]!;
    const size = Math.hypot(b[0] - a[0], b[1] - a[1]);
    const [nx, ny] = [-(b[1] - a[1]) / size, (b[0] - a[0]) / size];
    const [depth, gain] = [(x - a[0]) * nx + (y - a[1]) * ny - inset, dx * nx + dy * ny];
    if (Math.abs(gain) < TOUCH) {
      if (depth < 0) return null;
    } else if (gain > 0) from = Math.max(from, -depth / gain);
    else to = Math.min(to, -depth / gain);
  }
  return from < to
    ? [
        [x + from * dx, y + from * dy],
        [x + to * dx, y + to * dy],
      ]
    : null;
}

/** @returns the part of a polygon that lies within a rectangle; fewer than three corners where there is none */
export function partWithin(polygon: Polygon, { left, top, right, bottom }: Extent): Polygon {
  const sides: readonly ((spot: Spot) => number)[] = [([x]) => x - left, ([, y]) => y - top, ([x]) => right - x, ([, y]) => bottom - y];
  return sides.reduce(partBeside, polygon);
}

/**
 * @param depth how far a spot lies beyond a line; below 0 on its other side
 * @returns the part of a convex polygon on one side of that line; fewer than three corners where there is none
 * (Sutherland and Hodgman, Reentrant polygon clipping, CACM 17, 1974)
 */
export function partBeside(polygon: Polygon, depth: (spot: Spot) => number): Polygon {
  return polygon.flatMap((p, i): Spot[] => {
    const q = polygon[(i + 1) % polygon.length]!;
    const [a, b] = [depth(p), depth(q)];
    const crossing: Spot[] = a * b < 0 ? [[p[0] + ((q[0] - p[0]) * a) / (a - b), p[1] + ((q[1] - p[1]) * a) / (a - b)]] : [];
    return a >= 0 ? [p, ...crossing] : crossing;
  });
}

/**
 * @returns where the moving polygon's origin must not come, so that the two do not overlap: the set of all p − q for p in the one that
 * stands and q in the one that moves
 */
export const forbiddenFor = (standing: Polygon, moving: Polygon): Polygon =>
  hullOf(standing.flatMap(([x, y]) => moving.map(([p, q]): Spot => [x - p, y - q])));

/** @returns whether a spot lies inside, not merely on the edge */
export const isInside = (polygon: Polygon, spot: Spot): boolean => {
  for (let i = 0; i < polygon.length; i++) if (turn(polygon[i]!, polygon[(i + 1) % polygon.length]!, spot) <= 1e-4) return false;
  return true;
};

import { areaOf, extentOf, forbiddenFor, isInside, movedBy, type Extent, type Polygon, type Spot } from '../polygons.ts';

/*
 * Places convex shapes on sheets: the largest first, each in the first sheet that has room, as far up and then as far left as it goes, in
 * whichever of its turns reaches least far down. All places that can be the best are tried: corners of the free space, which are crossings
 * of the edges of what is forbidden (Minkowski sums of convex shapes; E. Burke, R. Hellier, G. Kendall, G. Whitwell, Complete and robust
 * no-fit polygon generation for the irregular stock cutting problem, Eur. J. Oper. Res. 179, 2007).
 */

/** One thing to place, in each turn it may have; the outlines count from an origin of its own. */
export interface Loose {
  readonly turns: readonly Polygon[];
}

export interface Laid {
  readonly item: number;
  readonly turn: number;
  readonly at: Spot;
}

export interface Room {
  readonly width: number;
  readonly height: number;
  /** What is taken on every sheet. */
  readonly taken: readonly Polygon[];
}

/** So many places on a sheet are looked at edge by edge; beyond, only corners are. */
const FEW = 24;

/**
 * @param least no fewer sheets can do; where one order needs more, others are tried
 * @returns for each sheet what lies where on it; null where something fits on no sheet
 */
export function packed(items: readonly Loose[], room: Room, least: number): readonly (readonly Laid[])[] | null {
  const size = ({ turns: [first] }: Loose): number => areaOf(first!);
  const span = ({ turns: [first] }: Loose): number => {
    const { left, right, top, bottom } = extentOf(first!);
    return Math.max(right - left, bottom - top);
  };
  const [bySize, bySpan] = [size, span].map((by) => items.map((_, i) => i).sort((a, b) => by(items[b]!) - by(items[a]!) || a - b));
  let best: readonly (readonly Laid[])[] | null = null;
  let order = bySize!;
  for (let tries = 0; tries < (items.length > FEW ? 1 : 5); tries++) {
    const sheets = inOrder(items, order, room);
    if (sheets === null) return null;
    if (best === null || sheets.length < best.length) best = sheets;
    if (best.length <= least) break;
    // What found its place last goes first.
    order = tries === 0 ? bySpan! : [...sheets].reverse().flatMap((sheet) => sheet.map(({ item }) => item));
  }
  return best;
}

interface Sheet {
  readonly laid: Laid[];
  readonly standing: Polygon[];
  /** Area that nothing stands on yet. */
  free: number;
}

function inOrder(items: readonly Loose[], order: readonly number[], room: Room): readonly (readonly Laid[])[] | null {
  const sheets: Sheet[] = [];
  const free = room.width * room.height - room.taken.reduce((sum, polygon) => sum + areaOf(polygon), 0);
  for (const item of order) {
    const { turns } = items[item]!;
    const size = Math.min(...turns.map(areaOf));
    const lay = (sheet: Sheet): boolean => {
      if (size > sheet.free) return false;
      const found = bestPlace(turns, sheet.standing, room);
      if (found === null) return false;
      sheet.laid.push({ item, ...found });
      sheet.standing.push(movedBy(turns[found.turn]!, found.at));
      sheet.free -= size;
      return true;
    };
    if (sheets.some(lay)) continue;
    const sheet: Sheet = { laid: [], standing: [...room.taken], free };
    if (!lay(sheet)) return null;
    sheets.push(sheet);
  }
  return sheets.map(({ laid }) => laid);
}

function bestPlace(turns: readonly Polygon[], standing: readonly Polygon[], room: Room): Pick<Laid, 'turn' | 'at'> | null {
  let best: (Pick<Laid, 'turn' | 'at'> & { readonly reach: Spot }) | null = null;
  for (const [turn, shape] of turns.entries()) {
    const extent = extentOf(shape);
    const free: Extent = { left: -extent.left, top: -extent.top, right: room.width - extent.right, bottom: room.height - extent.bottom };
    if (free.right < free.left || free.bottom < free.top) continue;
    const forbidden = standing.map((other) => forbiddenFor(other, shape));
    for (const at of candidates(forbidden, free)) {
      const reach: Spot = [at[0] + extent.right, at[1] + extent.bottom];
      if (best !== null && !comesBefore(reach, best.reach)) continue;
      if (forbidden.some((polygon) => isInside(polygon, at))) continue;
      best = { turn, at, reach };
    }
  }
  return best && { turn: best.turn, at: best.at };
}

/** A hundredth of a point up or down is no reason to go to the right. */
const comesBefore = (a: Spot, b: Spot): boolean => (Math.abs(a[1] - b[1]) > 0.01 ? a[1] < b[1] : a[0] < b[0] - 0.01);

function candidates(forbidden: readonly Polygon[], free: Extent): readonly Spot[] {
  const border: readonly (readonly [Spot, Spot])[] = [
    [[free.left, free.top], [free.right, free.top]],
    [[free.right, free.top], [free.right, free.bottom]],
    [[free.right, free.bottom], [free.left, free.bottom]],
    [[free.left, free.bottom], [free.left, free.top]],
  ];
  const edges = forbidden.map((polygon) => polygon.map((p, i) => [p, polygon[(i + 1) % polygon.length]!] as const));
  const spots: Spot[] = [...border.map(([p]) => p), ...forbidden.flat()];
  for (const edge of edges.flat()) for (const side of border) addCrossing(spots, edge, side);
  if (forbidden.length <= FEW) {
    for (const [i, some] of edges.entries()) {
      for (const others of edges.slice(i + 1)) for (const edge of some) for (const other of others) addCrossing(spots, edge, other);
    }
  }
  return spots.flatMap(([x, y]): Spot[] => {
    if (x < free.left - 1e-7 || x > free.right + 1e-7 || y < free.top - 1e-7 || y > free.bottom + 1e-7) return [];
    return [[Math.min(Math.max(x, free.left), free.right), Math.min(Math.max(y, free.top), free.bottom)]];
  });
}

function addCrossing(spots: Spot[], [a, b]: readonly [Spot, Spot], [c, d]: readonly [Spot, Spot]): void {
  const [ux, uy, vx, vy] = [b[0] - a[0], b[1] - a[1], d[0] - c[0], d[1] - c[1]];
  const det = ux * vy - uy * vx;
  if (Math.abs(det) < 1e-9) return;
  const [s, t] = [((c[0] - a[0]) * vy - (c[1] - a[1]) * vx) / det, ((c[0] - a[0]) * uy - (c[1] - a[1]) * ux) / det];
  if (s >= -1e-9 && s <= 1 + 1e-9 && t >= -1e-9 && t <= 1 + 1e-9) spots.push([a[0] + s * ux, a[1] + s * uy]);
}

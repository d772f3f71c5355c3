import type { Polygon, Spot } from '../polygons.ts';
import { closedPath, type PathStep } from './page.ts';

/*
 * Fabrics without colour: lines and small diamonds over paper. They lie still on the picture, so that neighbours of one fabric look like
 * one cloth.
 */

/** Parallel lines: their angle in degrees, clockwise from level, and the way from one to the next in points. */
interface Lines {
  readonly angle: number;
  readonly gap: number;
  readonly width: number;
  readonly dash?: readonly number[];
}

/** Diamonds in a staggered grid, by half their height; `plus`: small crosses instead. */
interface Dots {
  readonly gap: number;
  readonly reach: number;
  readonly plus?: true;
}

export interface Hatch {
  readonly ground?: string;
  readonly lines?: readonly Lines[];
  readonly dots?: Dots;
}

/** From the lightest to the darkest; neighbours in this order differ in direction or kind, not only in weight. */
export const HATCHES: readonly Hatch[] = [
  {},
  { dots: { gap: 6.4, reach: 0.75 } },
  { dots: { gap: 6.2, reach: 1.25, plus: true } },
  { lines: [{ angle: -45, gap: 6, width: 0.4 }] },
  { lines: [{ angle: 0, gap: 4, width: 0.45 }] },
  { lines: [{ angle: 45, gap: 3.6, width: 0.5 }] },
  { lines: [{ angle: 90, gap: 3, width: 0.5 }] },
  {
    lines: [
      { angle: 0, gap: 4.4, width: 0.5 },
      { angle: 90, gap: 4.4, width: 0.5 },
    ],
  },
  { lines: [{ angle: -45, gap: 2.3, width: 0.6 }] },
  {
    lines: [
      { angle: 45, gap: 3.6, width: 0.55 },
      { angle: -45, gap: 3.6, width: 0.55 },
    ],
  },
  { dots: { gap: 3, reach: 1.9 } },
  { lines: [{ angle: 0, gap: 1.9, width: 0.85 }] },
  { ground: '#4d4d4d' },
];

/**
 * @param round 0 for the first thirteen fabrics, 1 for those after them, and so on
 * @returns a hatch in its later round: everything wider apart; plain white has a few dots, plain grey is lighter
 */
export function inRound(hatch: Hatch, round: number): Hatch {
  if (round === 0) return hatch;
  const { ground, lines, dots } = hatch;
  const by = 1 + 0.7 * round;
  if (ground !== undefined) return { ground: GREYS[(round - 1) % GREYS.length]! };
  if (lines) return { lines: lines.map((each) => ({ ...each, gap: each.gap * by })) };
  return { dots: dots ? { ...dots, gap: dots.gap * by, reach: dots.reach * (1 + 0.35 * round) } : { gap: 7 * by, reach: 0.6 } };
}

const GREYS = ['#767676', '#969696', '#b2b2b2', '#cacaca'];

/** Paths of one look. */
export interface HatchInk {
  readonly steps: readonly PathStep[];
  readonly width?: number;
  readonly dash?: readonly number[];
}

/** @returns a hatch over some outlines in points, lines and diamonds apart; everything lies inside the outlines */
export function hatchInk({ lines = [], dots }: Hatch, outlines: readonly Polygon[], origin: Spot): readonly HatchInk[] {
  return [
    ...lines.map(({ width, dash, ...each }): HatchInk => {
      const steps = outlines.flatMap((outline) => linesIn(outline, each, origin));
      return { steps, width, ...(dash && { dash }) };
    }),
    ...(dots ? [{ steps: outlines.flatMap((outline) => dotsIn(outline, dots, origin)), ...(dots.plus && { width: 0.45 }) }] : []),
  ].filter(({ steps }) => steps.length > 0);
}

/** @returns parallel lines all over an outline */
export function linesIn(outline: Polygon, { angle, gap }: Pick<Lines, 'angle' | 'gap'>, origin: Spot): readonly PathStep[] {
  const [cos, sin] = unitAt(angle);
  const offset = origin[1] * cos - origin[0] * sin;
  let [low, high] = [Infinity, -Infinity];
  for (const [x, y] of outline) {
    const place = y * cos - x * sin - offset;
    low = Math.min(low, place);
    high = Math.max(high, place);
  }
  const steps: PathStep[] = [];
  for (let k = Math.ceil(low / gap); k * gap < high; k++) {
    const place = k * gap + offset;
    const ends = crossingsOf(outline, place, cos, sin);
    for (let i = 0; i + 1 < ends.length; i += 2) {
      const [from, to] = [ends[i]!, ends[i + 1]!];
      if (to - from < SHORTEST) continue;
      steps.push(['M', from * cos - place * sin, from * sin + place * cos], ['L', to * cos - place * sin, to * sin + place * cos]);
    }
  }
  return steps;
}

/** Shorter lines are not drawn, in points. */
const SHORTEST = 0.05;

/** Cosine and sine; of quarter turns exactly, so that level lines are level. */
function unitAt(degrees: number): readonly [number, number] {
  if (degrees === 0) return [1, 0];
  if (degrees === 90) return [0, 1];
  return [Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180)];
}

/** @returns where a line crosses the edges of an outline of any simple shape, along it: inside from the first to the second, and so on */
function crossingsOf(outline: Polygon, place: number, cos: number, sin: number): readonly number[] {
  const crossings: number[] = [];
  let before = outline[outline.length - 1]!;
  let was = before[1] * cos - before[0] * sin - place;
  for (const spot of outline) {
    const is = spot[1] * cos - spot[0] * sin - place;
    if (was < 0 !== is < 0) {
      const t = was / (was - is);
      crossings.push((before[0] + (spot[0] - before[0]) * t) * cos + (before[1] + (spot[1] - before[1]) * t) * sin);
    }
    before = spot;
    was = is;
  }
  return crossings.length > 2
    ? crossings.sort((a, b) => a - b)
    : crossings[0]! > crossings[1]!
      ? [crossings[1]!, crossings[0]!]
      : crossings;
}

function dotsIn(outline: Polygon, { gap, reach, plus }: Dots, [left, top]: Spot): readonly PathStep[] {
  const ys = outline.map(([, y]) => y);
  const [low, high] = [Math.min(...ys), Math.max(...ys)];
  const steps: PathStep[] = [];
  for (let k = Math.ceil((low - top) / gap); top + k * gap < high; k++) {
    const y = top + k * gap;
    const rows = [y, y - reach, y + reach].map((at) => crossingsOf(outline, at, 1, 0));
    const isIn = (row: number, x: number, room: number): boolean =>
      rows[row]!.some((from, i, ends) => i % 2 === 0 && x - room >= from && x + room <= (ends[i + 1] ?? from));
    const shift = k % 2 === 0 ? 0 : gap;
    for (let i = 0; i + 1 < rows[0]!.length; i += 2) {
      const [from, to] = [rows[0]![i]!, rows[0]![i + 1]!];
      for (let x = left + shift + Math.ceil((from - left - shift) / (2 * gap)) * 2 * gap; x < to; x += 2 * gap) {
        if (!isIn(0, x, reach) || !isIn(1, x, 0) || !isIn(2, x, 0)) continue;
        if (plus) steps.push(['M', x - reach, y], ['L', x + reach, y], ['M', x, y - reach], ['L', x, y + reach]);
        else
          steps.push(
            ...closedPath([
              [x, y - reach],
              [x + reach, y],
              [x, y + reach],
              [x - reach, y],
            ]),
          );
      }
    }
  }
  return steps;
}

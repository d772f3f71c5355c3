import { lightness } from '../../block/colour/lightness.ts';
import type { Picture } from '../../block/publication.ts';
import type { HouseStyle } from '../house-style.ts';
import type { Polygon, Spot } from '../polygons.ts';
import { hatchInk, HATCHES, inRound, linesIn, type Hatch } from './hatches.ts';
import { INK } from './looks.ts';
import { closedPath, type InFigure, type PathItem, type PhotoFill } from './page.ts';

/** How each fabric is shown: as its colour, or as a hatch of its own on white. */
export interface ClothLook {
  readonly ink: HouseStyle['ink'];
  /** Colours by fabric; of fabrics that are not in it the cloth is left white. */
  readonly colors: ReadonlyMap<string, string>;
  readonly hatches: ReadonlyMap<string, Hatch>;
  /** By fabric, its photo: for swatches, where colours are printed. */
  readonly photos: ReadonlyMap<string, Picture>;
}

/** Fabrics are hardly darker than L* = 20, or lighter than 97: from there on they take the outermost hatches. */
const darkness = (light: number): number => Math.min(1, Math.max(0, (97 - light) / 77));

/** @returns the look of some fabrics; hatches are as dark as the colours are, as far as each has one of its own */
export function clothLook(
  fabrics: readonly string[],
  colors: ReadonlyMap<string, string>,
  ink: HouseStyle['ink'],
  photos: ReadonlyMap<string, Picture> = new Map(),
): ClothLook {
  const light = (fabric: string): number => lightness(colors.get(fabric) ?? '#ffffff');
  const order = [...fabrics].sort((a, b) => light(b) - light(a));
  const rounds = Math.max(1, Math.ceil(order.length / HATCHES.length));
  const slots = rounds * HATCHES.length;
  const taken: number[] = [];
  for (const fabric of order) taken.push(Math.max((taken.at(-1) ?? -1) + 1, Math.round(darkness(light(fabric)) * (slots - 1))));
  for (let i = taken.length - 1, most = slots - 1; i >= 0; i--, most--) taken[i] = Math.min(taken[i]!, most, (taken[i + 1] ?? slots) - 1);
  const hatchOf = (slot: number): Hatch => inRound(HATCHES[Math.floor(slot / rounds)]!, slot % rounds);
  return { ink, colors, photos, hatches: new Map(order.map((fabric, i) => [fabric, hatchOf(taken[i]!)])) };
}

const PAPER = '#ffffff';
/** Between two pieces. */
const EDGE = 0.45;
/** The back of cloth is paler, and threads run across it the way no hatch does. */
const BACK = { angle: 70, gap: 6 };

/**
 * @param outlines in points, none on another
 * @returns pieces of one fabric with the same side up
 */
export function clothItems(
  outlines: readonly Polygon[],
  {
    fabric,
    side,
    origin,
    figure,
    photo,
  }: {
    readonly fabric: string;
    readonly side: 'right' | 'wrong';
    readonly origin: Spot;
    readonly figure?: InFigure;
    /** Of the cloth, where it is shown and colours are printed. */
    readonly photo?: PhotoFill;
  },
  look: ClothLook,
): readonly PathItem[] {
  const steps = outlines.flatMap((outline) => closedPath(outline));
  const back = side === 'wrong';
  const of = { ...(figure && { figure }) };
  const edge: PathItem = { kind: 'path', what: `edge of cloth ${fabric}`, steps, stroke: { color: INK, width: EDGE }, ...of };
  const weave = outlines.flatMap((outline) => linesIn(outline, BACK, origin));
  const weaveOn = (color: string): readonly PathItem[] =>
    back && weave.length > 0 ? [{ kind: 'path', what: 'wrong side', steps: weave, stroke: { color, width: 0.4 }, ...of }] : [];
  const what = back ? `cloth ${fabric}, wrong side` : `cloth ${fabric}`;
  const color = look.colors.get(fabric);
  if (look.ink === 'colours' || color === undefined) {
    const fill = color === undefined ? PAPER : back ? mixed(color, PAPER, 0.34) : color;
    if (!back) return [{ kind: 'path', what, steps, fill, stroke: { color: INK, width: EDGE }, ...(photo && { photo }), ...of }];
    return [{ kind: 'path', what, steps, fill, ...of }, ...weaveOn(color === undefined ? '#9a9a9a' : mixed(color, '#555555', 0.35)), edge];
  }
  const hatch = look.hatches.get(fabric) ?? {};
  const ink = back ? '#c4c4c4' : INK;
  const ground = hatch.ground === undefined ? PAPER : back ? '#d0d0d0' : hatch.ground;
  const hatched = hatchInk(hatch, outlines, origin).map((each): PathItem => ({
    kind: 'path',
    what: `hatch of ${fabric}`,
    steps: each.steps,
    ...(each.width === undefined ? { fill: ink } : { stroke: { color: ink, width: each.width, ...(each.dash && { dash: each.dash }) } }),
    ...of,
  }));
  return [{ kind: 'path', what, steps, fill: ground, ...of }, ...hatched, ...weaveOn('#555555'), edge];
}

/** @returns a colour mixed with another, of which `share` is the first */
export function mixed(one: string, other: string, share: number): string {
  const parts = (color: string): readonly number[] => [1, 3, 5].map((at) => Number.parseInt(color.slice(at, at + 2), 16));
  const [a, b] = [parts(one), parts(other)];
  return `#${a
    .map((part, i) =>
      Math.round(part * share + b[i]! * (1 - share))
        .toString(16)
        .padStart(2, '0'),
    )
    .join('')}`;
}

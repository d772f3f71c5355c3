import type { Fabric } from '../block/block.ts';
import type { Part } from './part.ts';

/** A hatch: strokes in a square tile of side 1 that repeats, and dots by their middle. */
interface Hatch {
  readonly strokes: readonly (readonly [number, number, number, number])[];
  readonly dots: readonly (readonly [number, number])[];
}

/** Ten ways to hatch, the plain one first; each is told from the others by its direction, not by its weight. */
const HATCHES: readonly Hatch[] = [
  { strokes: [], dots: [] },
  { strokes: [[-0.1, 1.1, 1.1, -0.1], [-0.1, 0.1, 0.1, -0.1], [0.9, 1.1, 1.1, 0.9]], dots: [] },
  { strokes: [], dots: [[0.25, 0.25], [0.75, 0.75]] },
  { strokes: [[0, 0.5, 1, 0.5]], dots: [] },
  { strokes: [[0.5, 0, 0.5, 1]], dots: [] },
  { strokes: [[-0.1, -0.1, 1.1, 1.1], [0.9, -0.1, 1.1, 0.1], [-0.1, 0.9, 0.1, 1.1]], dots: [] },
  { strokes: [[0, 0.5, 1, 0.5], [0.5, 0, 0.5, 1]], dots: [] },
  { strokes: [[0, 0, 1, 1], [0, 1, 1, 0]], dots: [] },
  { strokes: [[0, 0.75, 0.25, 0.25], [0.25, 0.25, 0.75, 0.75], [0.75, 0.75, 1, 0.25], [1, 0.25, 1.1, 0.45], [-0.1, 0.95, 0, 0.75]], dots: [] },
  { strokes: [[0.3, 0.5, 0.7, 0.5], [0.5, 0.3, 0.5, 0.7]], dots: [] },
];

/** Side of a tile in CSS pixels: of the first ten fabrics, and of those after them. */
const TILES = [11, 19, 7];
const DOT = 0.09;
/** A fabric lighter than this, of 1, is hatched in dark. */
const LIGHT = 0.32;

/** How every fabric is hatched; ratio = device pixels to a CSS pixel. */
export interface Hatching {
  readonly fabrics: readonly Fabric[];
  readonly lightness: (color: string) => number;
  readonly ratio: number;
}

const tiles = new WeakMap<Hatching, Map<string, HTMLCanvasElement | null>>();

/** @returns the hatching of a drawing's fabrics, each by its place among them */
export const hatchingOf = (fabrics: readonly Fabric[], lightness: (color: string) => number, ratio: number): Hatching => ({ fabrics, lightness, ratio });

/** @returns one tile of a fabric's hatch in device pixels, null for a plain one */
export function tileOf(hatching: Hatching, id: string): HTMLCanvasElement | null {
  const known = tiles.get(hatching) ?? new Map<string, HTMLCanvasElement | null>();
  tiles.set(hatching, known);
  const drawn = known.get(id);
  if (drawn !== undefined) return drawn;
  const index = hatching.fabrics.findIndex((fabric) => fabric.id === id);
  const hatch = HATCHES[Math.max(0, index) % HATCHES.length]!;
  const side = Math.max(2, Math.round(TILES[Math.floor(Math.max(0, index) / HATCHES.length) % TILES.length]! * hatching.ratio));
  const tile = hatch.strokes.length + hatch.dots.length === 0 ? null : draw(hatch, side, hatching, hatching.fabrics[index]!.color);
  known.set(id, tile);
  return tile;
}

function draw({ strokes, dots }: Hatch, side: number, { lightness, ratio }: Hatching, color: string): HTMLCanvasElement {
  const tile = document.createElement('canvas');
  [tile.width, tile.height] = [side, side];
  const pen = tile.getContext('2d')!;
  const ink = lightness(color) > LIGHT ? 'rgb(0 0 0 / 58%)' : 'rgb(255 255 255 / 66%)';
  [pen.strokeStyle, pen.fillStyle, pen.lineWidth] = [ink, ink, 1.3 * ratio];
  pen.beginPath();
  for (const [ax, ay, bx, by] of strokes) {
    pen.moveTo(ax * side, ay * side);
    pen.lineTo(bx * side, by * side);
  }
  pen.stroke();
  for (const [x, y] of dots) {
    pen.beginPath();
    pen.arc(x * side, y * side, Math.max(1.1 * ratio, DOT * side), 0, 2 * Math.PI);
    pen.fill();
  }
  return tile;
}

/** @returns a fabric's hatch as a fill that lies still on the block whatever part of it is seen, null for a plain fabric */
export function patternOf(pen: CanvasRenderingContext2D, hatching: Hatching, id: string, part: Part): CanvasPattern | null {
  const tile = tileOf(hatching, id);
  const pattern = tile && pen.createPattern(tile, 'repeat');
  pattern?.setTransform(new DOMMatrix([1, 0, 0, 1, -part.left, -part.top]));
  return pattern;
}

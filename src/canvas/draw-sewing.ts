import type { Block } from '../block/block.ts';
import type { Point } from '../geometry/point.ts';
import type { Pattern } from '../pattern/pattern.ts';
import type { GridOutline, GridPoint } from './gesture.ts';
import type { InkColors } from './ink.ts';
import { middleOf, traceOutline, type Pen, type Pixel } from './pen.ts';
import { pixelOf, type View } from './view.ts';

/** A patch that whole patches lock, with the number the sheet calls it by. */
export interface KnotInk {
  readonly number: number;
  readonly outline: GridOutline;
}

/** @returns the patches of a drawing with these indices, for ink; indices of no patch are passed over */
export function knotInks({ patches, denominator }: Block, indices: readonly number[]): KnotInk[] {
  return indices.flatMap((index) => {
    const patch = patches[index];
    return patch ? [{ number: index + 1, outline: patch.points.map(([x, y]) => [x / denominator, y / denominator] as const) }] : [];
  });
}

/** What the pattern makes of the drawing, over what the drawing asks for. */
export interface SewnInk {
  /** Where seams run through one fabric: both ends of each, in grid units. */
  readonly divisions: readonly GridOutline[];
  /** Indices of the pins that are not honoured. */
  readonly refused: ReadonlySet<number>;
}

export const NOTHING_SEWN: SewnInk = { divisions: [], refused: new Set() };

/**
 * @param divided whether seams that run through one fabric are to be shown
 * @returns what a pattern makes of its drawing, for ink; nothing where there is no pattern
 */
export function sewnInk(pattern: Pattern | null, grid: Block['grid'], divided: boolean): SewnInk {
  if (!pattern) return NOTHING_SEWN;
  return { divisions: divided ? divisionInks(pattern, grid) : [], refused: new Set(pattern.refusedPins.map(({ pin }) => pin)) };
}

/** @returns where seams of a pattern run through one fabric, in the grid units of the block it was made from */
export function divisionInks({ divisions, lattice }: Pattern, { columns, rows }: Block['grid']): GridOutline[] {
  const at = ({ x, y, w }: Point): GridPoint => [(x * columns) / (lattice.width * w), (y * rows) / (lattice.height * w)];
  return divisions.flatMap(({ places }) => places.map(({ from, to }) => [at(from), at(to)]));
}

/** Distance of the stitches from a patch's edge, in pixels. */
const INSET = 5;

/** @returns the corners of an outline moved inwards, each along both its edges; of a small outline less far */
function inset(corners: readonly Pixel[]): Pixel[] {
  const [mx, my] = middleOf(corners);
  const edges = corners.map(([ax, ay], i) => {
    const [bx, by] = corners[(i + 1) % corners.length]!;
    const length = Math.hypot(bx - ax, by - ay);
    const [nx, ny] = [(ay - by) / length, (bx - ax) / length];
    const room = (mx - ax) * nx + (my - ay) * ny;
    return { nx: nx * Math.sign(room), ny: ny * Math.sign(room), c: (ax * nx + ay * ny) * Math.sign(room), room: Math.abs(room) };
  });
  const by = Math.min(INSET, 0.4 * Math.min(...edges.map(({ room }) => room)));
  // A corner lies where the lines of its two edges meet, both moved inwards.
  return edges.map((f, i) => {
    const e = edges[(i + edges.length - 1) % edges.length]!;
    const cross = e.nx * f.ny - e.ny * f.nx;
    const [p, q] = [e.c + by, f.c + by];
    return [(p * f.ny - q * e.ny) / cross, (q * e.nx - p * f.nx) / cross];
  });
}

/** Draws a small stitched outline inside every patch that must stay whole. */
export function drawWholes(pen: Pen, view: View, ink: InkColors, { patches, denominator }: Block): void {
  for (const { points, whole } of patches) {
    if (!whole) continue;
    const corners = points.map(([x, y]) => pixelOf(view, x / denominator, y / denominator));
    pen.beginPath();
    traceOutline(pen, inset(corners));
    pen.lineJoin = 'round';
    pen.strokeStyle = ink.paper;
    pen.lineWidth = 3.5;
    pen.stroke();
    pen.setLineDash([4, 3.5]);
    pen.strokeStyle = ink.ink;
    pen.lineWidth = 1.5;
    pen.stroke();
    pen.setLineDash([]);
  }
}

/** Radius of a pin's head, in pixels. */
const HEAD = 8.5;

/** Draws seams that run through one fabric: dash and dot on a light band, unlike the plain line of every other seam. */
export function drawDivisions(pen: Pen, view: View, ink: InkColors, divisions: readonly GridOutline[]): void {
  if (divisions.length === 0) return;
  pen.beginPath();
  for (const [from, to] of divisions) {
    pen.moveTo(...pixelOf(view, ...from!));
    pen.lineTo(...pixelOf(view, ...to!));
  }
  pen.lineCap = 'butt';
  pen.strokeStyle = ink.paper;
  pen.lineWidth = 3.5;
  pen.stroke();
  pen.setLineDash([9, 3, 2, 3]);
  pen.strokeStyle = ink.ink;
  pen.lineWidth = 1.75;
  pen.stroke();
  pen.setLineDash([]);
}

/** Radius of the ring round a corner that is pointed at, in pixels. */
const RING = 9;

/** Draws the places that a line of the sheet points at: a stretch of a seam with a bar across each end, or a ring round a corner. */
export function drawPlaces(pen: Pen, view: View, ink: InkColors, places: readonly GridOutline[]): void {
  if (places.length === 0) return;
  pen.beginPath();
  for (const place of places) {
    const [[ax, ay], end] = place.map(([x, y]) => pixelOf(view, x, y)) as [Pixel, Pixel?];
    if (!end) {
      pen.moveTo(ax + RING, ay);
      pen.arc(ax, ay, RING, 0, 2 * Math.PI);
      continue;
    }
    const [bx, by] = end;
    const length = Math.hypot(bx - ax, by - ay) || 1;
    const [nx, ny] = [((ay - by) / length) * RING * 0.7, ((bx - ax) / length) * RING * 0.7];
    pen.moveTo(ax, ay);
    pen.lineTo(bx, by);
    for (const [x, y] of [[ax, ay], [bx, by]] as const) {
      pen.moveTo(x - nx, y - ny);
      pen.lineTo(x + nx, y + ny);
    }
  }
  pen.lineCap = 'round';
  for (const [color, width] of [[ink.paper, 8], [ink.accent, 4]] as const) {
    pen.strokeStyle = color;
    pen.lineWidth = width;
    pen.stroke();
  }
  pen.lineCap = 'butt';
}

/**
 * Draws every pin: a dashed line or frame, and a head with its number. A pin that is not honoured is a thin dotted line, and its
 * head is crossed through.
 * @param refused indices of the pins that are not honoured
 */
export function drawPins(
  pen: Pen,
  view: View,
  ink: InkColors,
  { pins = [], denominator }: Block,
  family: string,
  refused: SewnInk['refused'] = NOTHING_SEWN.refused,
): void {
  const place = ([x, y]: readonly [number, number]): Pixel => pixelOf(view, x / denominator, y / denominator);
  pins.forEach(({ pin, from, to }, i) => {
    const [[ax, ay], [bx, by]] = [place(from), place(to)];
    pen.beginPath();
    if (pin === 'one unit') {
      pen.roundRect(Math.min(ax, bx) + 3, Math.min(ay, by) + 3, Math.abs(bx - ax) - 6, Math.abs(by - ay) - 6, 6);
    } else {
      pen.moveTo(ax, ay);
      pen.lineTo(bx, by);
    }
    pen.lineCap = 'butt';
    pen.strokeStyle = ink.paper;
    pen.lineWidth = refused.has(i) ? 3 : 4.5;
    pen.stroke();
    pen.setLineDash(refused.has(i) ? [1.5, 4] : pin === 'one unit' ? [6, 5] : [14, 5, 3, 5]);
    pen.strokeStyle = refused.has(i) ? ink.quiet : ink.accent;
    pen.lineWidth = refused.has(i) ? 1.5 : 2;
    pen.stroke();
    pen.setLineDash([]);
  });
  pins.forEach(({ pin, from, to }, i) => {
    const [[ax, ay], [bx, by]] = [place(from), place(to)];
    const [x, y] = [Math.min(ax, bx), Math.min(ay, by)];
    const head: Pixel = pin === 'one unit' ? [x + 3 + HEAD * 0.7, y + 3 + HEAD * 0.7] : [x, y];
    drawHead(pen, ink, head, HEAD);
    if (refused.has(i)) crossOut(pen, ink, head, HEAD + 4);
    writeNumber(pen, ink, head, HEAD, String(i + 1), family);
  });
}

/** Draws a stroke across a pin's head, under its number, so that it is plainly struck out and can still be read. */
function crossOut(pen: Pen, ink: InkColors, [x, y]: Pixel, reach: number): void {
  pen.beginPath();
  pen.moveTo(x - reach, y + reach);
  pen.lineTo(x + reach, y - reach);
  for (const [color, width] of [[ink.paper, 3.5], [ink.ink, 2]] as const) {
    pen.strokeStyle = color;
    pen.lineWidth = width;
    pen.stroke();
  }
}

/** Draws the patches that lock each other: hatched, outlined, each with its number. */
export function drawKnot(pen: Pen, view: View, ink: InkColors, knot: readonly KnotInk[], family: string): void {
  for (const { outline } of knot) {
    const corners = outline.map(([x, y]: GridPoint) => pixelOf(view, x, y));
    const [left, right] = [Math.min(...corners.map(([x]) => x)), Math.max(...corners.map(([x]) => x))];
    const [top, bottom] = [Math.min(...corners.map(([, y]) => y)), Math.max(...corners.map(([, y]) => y))];
    pen.save();
    pen.beginPath();
    traceOutline(pen, corners);
    pen.clip();
    for (const [color, width] of [[ink.paper, 3], [ink.accent, 1.25]] as const) {
      pen.beginPath();
      for (let x = left - (bottom - top); x < right; x += 16) {
        pen.moveTo(x, bottom);
        pen.lineTo(x + (bottom - top), top);
      }
      pen.strokeStyle = color;
      pen.lineWidth = width;
      pen.stroke();
    }
    pen.restore();
    pen.beginPath();
    traceOutline(pen, corners);
    pen.lineJoin = 'round';
    pen.strokeStyle = ink.paper;
    pen.lineWidth = 5;
    pen.stroke();
    pen.strokeStyle = ink.accent;
    pen.lineWidth = 2.5;
    pen.stroke();
  }
  for (const { number, outline } of knot) {
    drawNumber(pen, ink, middleOf(outline.map(([x, y]) => pixelOf(view, x, y))), HEAD * 1.3, String(number), family);
  }
}

function drawNumber(pen: Pen, ink: InkColors, at: Pixel, radius: number, text: string, family: string): void {
  drawHead(pen, ink, at, radius);
  writeNumber(pen, ink, at, radius, text, family);
}

function drawHead(pen: Pen, ink: InkColors, [x, y]: Pixel, radius: number): void {
  pen.beginPath();
  pen.arc(x, y, radius, 0, 2 * Math.PI);
  pen.fillStyle = ink.paper;
  pen.fill();
  pen.strokeStyle = ink.accent;
  pen.lineWidth = 2;
  pen.stroke();
}

/** Writes a number in ink with a rim of paper, so that it can be read over a stroke. */
function writeNumber(pen: Pen, ink: InkColors, [x, y]: Pixel, radius: number, text: string, family: string): void {
  pen.font = `700 ${Math.round(radius * (text.length > 1 ? 1.05 : 1.3))}px ${family}`;
  pen.textAlign = 'center';
  pen.textBaseline = 'middle';
  pen.lineJoin = 'round';
  pen.strokeStyle = ink.paper;
  pen.lineWidth = 3;
  pen.strokeText(text, x, y + radius * 0.08);
  pen.fillStyle = ink.ink;
  pen.fillText(text, x, y + radius * 0.08);
}

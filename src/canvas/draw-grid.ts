import type { GridPoint } from './gesture.ts';
import type { InkColors } from './ink.ts';
import type { PieceInk } from './piece-ink.ts';
import { GAP, TICK } from './ruler-marks.ts';
import { pixelOf, type View } from './view.ts';

/** A mark on the tape, ready to be written. */
export interface TapeMark {
  /** Grid units from the beginning of the tape. */
  readonly at: number;
  readonly label: string;
}

type Pen = CanvasRenderingContext2D;

/** Draws the cloth's edge and the shadow it throws on the table. */
export function drawCloth(pen: Pen, view: View, ink: InkColors, picture: HTMLCanvasElement): void {
  const { left, top, width, height } = view;
  pen.save();
  pen.shadowColor = ink.shade;
  pen.shadowBlur = 14;
  pen.shadowOffsetY = 4;
  pen.fillStyle = ink.paper;
  pen.fillRect(left, top, width, height);
  pen.restore();
  pen.drawImage(picture, left, top, width, height);
  pen.strokeStyle = ink.quiet;
  pen.lineWidth = 1;
  pen.strokeRect(left - 0.5, top - 0.5, width + 1, height + 1);
}

/** Draws the grid over the cloth: a dark and a light hair side by side, so that it shows on any fabric. */
export function drawGrid(pen: Pen, view: View): void {
  const { left, top, width, height, cells } = view;
  const upright = inner(cells.across).map((line) => Math.round(pixelOf(view, line / cells.denominator, 0)[0]));
  const level = inner(cells.down).map((line) => Math.round(pixelOf(view, 0, line / cells.denominator)[1]));
  const lines = (shift: number): void => {
    pen.beginPath();
    for (const x of upright) {
      pen.moveTo(x + shift, top);
      pen.lineTo(x + shift, top + height);
    }
    for (const y of level) {
      pen.moveTo(left, y + shift);
      pen.lineTo(left + width, y + shift);
    }
    pen.stroke();
  };
  const dense = Math.min(width / (upright.length + 1), height / (level.length + 1)) < 9;
  pen.lineWidth = 1;
  pen.strokeStyle = dense ? 'rgb(0 0 0 / 12%)' : 'rgb(0 0 0 / 20%)';
  lines(0.5);
  pen.strokeStyle = dense ? 'rgb(255 255 255 / 14%)' : 'rgb(255 255 255 / 26%)';
  lines(1.5);
}

const inner = (lines: readonly number[]): readonly number[] => lines.slice(1, -1);

/** Draws the seams the designer asked for, as a running stitch. Ends in grid units. */
export function drawSeams(pen: Pen, view: View, ink: InkColors, seams: readonly (readonly [GridPoint, GridPoint])[]): void {
  if (seams.length === 0) return;
  pen.beginPath();
  for (const [from, to] of seams) {
    pen.moveTo(...pixelOf(view, ...from));
    pen.lineTo(...pixelOf(view, ...to));
  }
  pen.lineCap = 'round';
  pen.strokeStyle = ink.paper;
  pen.lineWidth = 4;
  pen.stroke();
  pen.strokeStyle = ink.ink;
  pen.lineWidth = 2;
  pen.setLineDash([8, 6]);
  pen.stroke();
  pen.setLineDash([]);
}

/** Draws the tape along the top and the left edge, in finished lengths. */
export function drawTape(pen: Pen, view: View, ink: InkColors, font: string, along: readonly TapeMark[], down: readonly TapeMark[]): void {
  pen.strokeStyle = ink.quiet;
  pen.fillStyle = ink.quiet;
  pen.lineWidth = 1;
  pen.font = font;
  pen.beginPath();
  for (const { at } of along) {
    const x = Math.round(view.left + (at * view.width) / view.columns) + 0.5;
    pen.moveTo(x, view.top - GAP / 2);
    pen.lineTo(x, view.top - GAP / 2 - TICK);
  }
  for (const { at } of down) {
    const y = Math.round(view.top + (at * view.height) / view.rows) + 0.5;
    pen.moveTo(view.left - GAP / 2, y);
    pen.lineTo(view.left - GAP / 2 - TICK, y);
  }
  pen.stroke();
  pen.textAlign = 'center';
  pen.textBaseline = 'alphabetic';
  for (const { at, label } of along) pen.fillText(label, pixelOf(view, at, 0)[0], view.top - GAP - TICK);
  pen.textAlign = 'right';
  pen.textBaseline = 'middle';
  for (const { at, label } of down) pen.fillText(label, view.left - GAP - TICK, pixelOf(view, 0, at)[1]);
}

/** Radius of the smallest disc that a letter can be read on, in pixels. */
const SMALLEST_DISC = 6;

/** Draws every piece's fabric letter in its middle, where there is room for one. */
export function drawLetters(pen: Pen, view: View, pieces: readonly PieceInk[], letters: ReadonlyMap<string, string>, family: string): void {
  pen.textAlign = 'center';
  pen.textBaseline = 'middle';
  for (const { outline, fabric } of pieces) {
    const corners = outline.map(([x, y]) => pixelOf(view, x, y));
    const x = corners.reduce((sum, corner) => sum + corner[0], 0) / corners.length;
    const y = corners.reduce((sum, corner) => sum + corner[1], 0) / corners.length;
    const radius = Math.min(13, roomAround(corners, x, y) * 0.8);
    if (radius < SMALLEST_DISC) continue;
    pen.beginPath();
    pen.arc(x, y, radius, 0, 2 * Math.PI);
    pen.fillStyle = 'rgb(255 255 255 / 92%)';
    pen.fill();
    pen.font = `700 ${radius * 1.2}px ${family}`;
    pen.fillStyle = '#16202a';
    pen.fillText(letters.get(fabric) ?? '', x, y + radius * 0.08);
  }
}

/** @returns the distance in pixels from a place to the nearest edge of an outline */
function roomAround(corners: readonly (readonly [number, number])[], x: number, y: number): number {
  let room = Infinity;
  corners.forEach(([ax, ay], i) => {
    const [bx, by] = corners[(i + 1) % corners.length]!;
    const length = Math.hypot(bx - ax, by - ay);
    if (length > 0) room = Math.min(room, Math.abs((bx - ax) * (y - ay) - (by - ay) * (x - ax)) / length);
  });
  return room;
}

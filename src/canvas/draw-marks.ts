import type { GridOutline, GridPoint } from './gesture.ts';
import type { InkColors } from './ink.ts';
import type { PieceInk } from './piece-ink.ts';
import { pixelOf, type View } from './view.ts';

type Pen = CanvasRenderingContext2D;

/** Everything that lies on top of the drawing for a moment and is not part of it. */
export interface Marks {
  /** What a click or a key would lay now. */
  readonly ghost: { readonly outlines: readonly GridOutline[]; readonly color: string } | null;
  /** What a click or a key would ask of the sewing now: lines, or outlines of three corners and more. */
  readonly basting: readonly GridOutline[] | null;
  /** The cell the keyboard is at. */
  readonly cursor: readonly [number, number] | null;
  /** Corners of an outline begun, and the point the next corner would take. */
  readonly corners: GridOutline;
  readonly next: GridPoint | null;
  /** Pieces lit up from the pattern sheet. */
  readonly lit: readonly PieceInk[];
}

export const NO_MARKS: Marks = { ghost: null, basting: null, cursor: null, corners: [], next: null, lit: [] };

function trace(pen: Pen, view: View, outline: GridOutline): void {
  outline.forEach(([x, y], i) => {
    const [px, py] = pixelOf(view, x, y);
    if (i === 0) pen.moveTo(px, py);
    else pen.lineTo(px, py);
  });
  pen.closePath();
}

/** Draws with a light line under a dark one, so that it shows on any fabric. */
function strokeTwice(pen: Pen, ink: InkColors, color: string, width: number): void {
  pen.strokeStyle = ink.paper;
  pen.lineWidth = width + 3;
  pen.stroke();
  pen.strokeStyle = color;
  pen.lineWidth = width;
  pen.stroke();
}

/** Veils the drawing but for the lit pieces, and draws round them. */
function drawLit(pen: Pen, view: View, ink: InkColors, lit: readonly PieceInk[]): void {
  if (lit.length === 0) return;
  pen.beginPath();
  pen.rect(view.left, view.top, view.width, view.height);
  for (const { outline } of lit) trace(pen, view, outline);
  pen.fillStyle = ink.linen;
  pen.globalAlpha = 0.62;
  pen.fill('evenodd');
  pen.globalAlpha = 1;
  pen.beginPath();
  for (const { outline } of lit) trace(pen, view, outline);
  pen.lineJoin = 'round';
  strokeTwice(pen, ink, ink.accent, 3);
}

/** Draws all marks. */
export function drawMarks(pen: Pen, view: View, ink: InkColors, marks: Marks): void {
  drawLit(pen, view, ink, marks.lit);
  if (marks.ghost) {
    pen.beginPath();
    for (const outline of marks.ghost.outlines) trace(pen, view, outline);
    pen.globalAlpha = 0.72;
    pen.fillStyle = marks.ghost.color;
    pen.fill();
    pen.globalAlpha = 1;
    pen.lineJoin = 'round';
    pen.setLineDash([]);
    pen.strokeStyle = ink.paper;
    pen.lineWidth = 4;
    pen.stroke();
    pen.setLineDash([7, 4]);
    pen.strokeStyle = ink.accent;
    pen.lineWidth = 2;
    pen.stroke();
    pen.setLineDash([]);
  }
  if (marks.basting) drawBasting(pen, view, ink, marks.basting);
  if (marks.cursor) {
    const [column, row] = marks.cursor;
    const { across, down, denominator } = view.cells;
    const [left, top] = pixelOf(view, across[column]! / denominator, down[row]! / denominator);
    const [right, bottom] = pixelOf(view, across[column + 1]! / denominator, down[row + 1]! / denominator);
    pen.beginPath();
    pen.rect(left, top, right - left, bottom - top);
    pen.lineJoin = 'miter';
    strokeTwice(pen, ink, ink.accent, 3);
  }
  drawOutlineBegun(pen, view, ink, marks.corners, marks.next);
}

function drawBasting(pen: Pen, view: View, ink: InkColors, outlines: readonly GridOutline[]): void {
  pen.beginPath();
  for (const outline of outlines) {
    if (outline.length > 2) {
      trace(pen, view, outline);
    } else {
      pen.moveTo(...pixelOf(view, ...outline[0]!));
      pen.lineTo(...pixelOf(view, ...outline[1]!));
    }
  }
  pen.lineJoin = 'round';
  pen.strokeStyle = ink.paper;
  pen.lineWidth = 6;
  pen.stroke();
  pen.setLineDash([9, 5]);
  pen.strokeStyle = ink.accent;
  pen.lineWidth = 3;
  pen.stroke();
  pen.setLineDash([]);
}

function drawOutlineBegun(pen: Pen, view: View, ink: InkColors, corners: GridOutline, next: GridPoint | null): void {
  const points = next ? [...corners, next] : corners;
  if (points.length === 0) return;
  pen.beginPath();
  points.forEach(([x, y], i) => {
    const [px, py] = pixelOf(view, x, y);
    if (i === 0) pen.moveTo(px, py);
    else pen.lineTo(px, py);
  });
  pen.lineJoin = 'round';
  strokeTwice(pen, ink, ink.accent, 2.5);
  for (const [x, y] of points) {
    const [px, py] = pixelOf(view, x, y);
    pen.beginPath();
    pen.arc(px, py, 5, 0, 2 * Math.PI);
    pen.fillStyle = ink.paper;
    pen.fill();
    pen.strokeStyle = ink.accent;
    pen.lineWidth = 2.5;
    pen.stroke();
  }
}

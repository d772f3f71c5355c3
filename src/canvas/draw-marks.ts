import type { Axes } from '../block/symmetry.ts';
import { drawSelection, type SelectionInk } from './draw-selection.ts';
import type { GridOutline, GridPoint } from './gesture.ts';
import type { InkColors } from './ink.ts';
import type { PieceInk } from './piece-ink.ts';
import { strokeDashed, traceLine, traceOutline, type Pen, type Pixel } from './pen.ts';
import { pixelOf, type View } from './view.ts';

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
  /** Where else the symmetry brings what is begun: lines from point to point. */
  readonly echoes: readonly GridOutline[];
  /** What the symmetry mirrors in and turns about; null where there is none. */
  readonly axes: Axes | null;
  /** The patches that are chosen, and what is being done to choose or carry them. */
  readonly selection: SelectionInk | null;
  /** Pieces lit up from the pattern sheet. */
  readonly lit: readonly PieceInk[];
}

export const NO_MARKS: Marks = {
  ghost: null, basting: null, cursor: null, corners: [], next: null, echoes: [], axes: null, selection: null, lit: [],
};

const pixelsOf = (view: View, outline: GridOutline): Pixel[] => outline.map(([x, y]) => pixelOf(view, x, y));

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
  for (const { outline } of lit) traceOutline(pen, pixelsOf(view, outline));
  pen.fillStyle = ink.linen;
  pen.globalAlpha = 0.62;
  pen.fill('evenodd');
  pen.globalAlpha = 1;
  pen.beginPath();
  for (const { outline } of lit) traceOutline(pen, pixelsOf(view, outline));
  pen.lineJoin = 'round';
  strokeTwice(pen, ink, ink.accent, 3);
}

/** Draws all marks. */
export function drawMarks(pen: Pen, view: View, ink: InkColors, marks: Marks): void {
  drawLit(pen, view, ink, marks.lit);
  if (marks.axes) drawAxes(pen, view, ink, marks.axes);
  if (marks.selection) drawSelection(pen, view, ink, marks.selection);
  if (marks.ghost) {
    pen.beginPath();
    for (const outline of marks.ghost.outlines) traceOutline(pen, pixelsOf(view, outline));
    pen.globalAlpha = 0.72;
    pen.fillStyle = marks.ghost.color;
    pen.fill();
    pen.globalAlpha = 1;
    strokeDashed(pen, ink, [7, 4], 2);
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
  for (const echo of marks.echoes) drawEcho(pen, view, ink, echo);
  drawOutlineBegun(pen, view, ink, marks.corners, marks.next);
}

/** How far a mirror's line reaches beyond the block, and the size of the mark that something turns about, in pixels. */
const BEYOND = 10;
const TURNING = 9;

/** Draws the mirrors as fine lines of dashes and dots, and in the middle what turns: two or four wings. */
function drawAxes(pen: Pen, view: View, ink: InkColors, { lines, turns }: Axes): void {
  pen.beginPath();
  for (const [from, to] of lines) {
    const [ax, ay] = pixelOf(view, ...from);
    const [bx, by] = pixelOf(view, ...to);
    const share = BEYOND / Math.hypot(bx - ax, by - ay);
    pen.moveTo(ax - (bx - ax) * share, ay - (by - ay) * share);
    pen.lineTo(bx + (bx - ax) * share, by + (by - ay) * share);
  }
  pen.lineCap = 'butt';
  pen.globalAlpha = 0.55;
  pen.strokeStyle = ink.paper;
  pen.lineWidth = 3;
  pen.stroke();
  pen.globalAlpha = 0.8;
  pen.setLineDash([14, 4, 2, 4]);
  pen.strokeStyle = ink.accent;
  pen.lineWidth = 1.25;
  pen.stroke();
  pen.setLineDash([]);
  if (turns > 1) {
    const [x, y] = pixelOf(view, view.columns / 2, view.rows / 2);
    pen.beginPath();
    for (let wing = 0; wing < turns; wing++) {
      const angle = (wing / turns) * 2 * Math.PI;
      const [ux, uy] = [Math.cos(angle) * TURNING, Math.sin(angle) * TURNING];
      pen.moveTo(x, y);
      pen.lineTo(x + ux, y + uy);
      pen.lineTo(x + (ux - uy) / 2, y + (uy + ux) / 2);
      pen.closePath();
    }
    pen.fillStyle = ink.accent;
    pen.lineJoin = 'round';
    pen.strokeStyle = ink.paper;
    pen.lineWidth = 2;
    pen.stroke();
    pen.fill();
  }
  pen.globalAlpha = 1;
}

/** Draws what the symmetry makes of an outline or a seam begun. */
function drawEcho(pen: Pen, view: View, ink: InkColors, points: GridOutline): void {
  pen.beginPath();
  traceLine(pen, pixelsOf(view, points));
  pen.lineJoin = 'round';
  pen.globalAlpha = 0.75;
  pen.setLineDash([6, 4]);
  strokeTwice(pen, ink, ink.accent, 1.5);
  pen.setLineDash([]);
  pen.fillStyle = ink.accent;
  for (const [x, y] of points) {
    const [px, py] = pixelOf(view, x, y);
    pen.beginPath();
    pen.arc(px, py, 2.5, 0, 2 * Math.PI);
    pen.fill();
  }
  pen.globalAlpha = 1;
}

function drawBasting(pen: Pen, view: View, ink: InkColors, outlines: readonly GridOutline[]): void {
  pen.beginPath();
  for (const outline of outlines) {
    const add = outline.length > 2 ? traceOutline : traceLine;
    add(pen, pixelsOf(view, outline));
  }
  strokeDashed(pen, ink, [9, 5], 3);
}

function drawOutlineBegun(pen: Pen, view: View, ink: InkColors, corners: GridOutline, next: GridPoint | null): void {
  const points = next ? [...corners, next] : corners;
  if (points.length === 0) return;
  pen.beginPath();
  traceLine(pen, pixelsOf(view, points));
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

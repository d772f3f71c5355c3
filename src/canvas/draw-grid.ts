import type { GridPoint } from './gesture.ts';
import type { InkColors } from './ink.ts';
import { GAP, TICK } from './ruler-marks.ts';
import { drawPart } from './part.ts';
import type { Pen } from './pen.ts';
import { pixelOf, seenPart, type Box, type View } from './view.ts';

/** A mark on the tape, ready to be written. */
export interface TapeMark {
  /** Grid units from the beginning of the tape. */
  readonly at: number;
  readonly label: string;
}

/** How far round its window the block and the shadow it throws can be seen, in pixels. */
const SHADOW = 24;

/** @returns a view's block as a rectangle no larger than the shadow needs: one far larger than the canvas would be slow to blur */
function nearPart({ left, top, width, height, window }: View): Box {
  return {
    left: Math.max(left, window.left - SHADOW),
    top: Math.max(top, window.top - SHADOW),
    right: Math.min(left + width, window.right + SHADOW),
    bottom: Math.min(top + height, window.bottom + SHADOW),
  };
}

/** Keeps what is drawn next to the window, as far as the view is larger than it. */
export function clipToWindow(pen: Pen, { left, top, width, height, window }: View): void {
  const open = { left: left >= window.left ? SHADOW : 0, top: top >= window.top ? SHADOW : 0 };
  pen.beginPath();
  pen.rect(
    window.left - open.left,
    window.top - open.top,
    window.right - window.left + open.left + (left + width <= window.right ? SHADOW : 0),
    window.bottom - window.top + open.top + (top + height <= window.bottom ? SHADOW : 0),
  );
  pen.clip();
}

/** Draws the cloth's edge and the shadow it throws on the table; between paper and cloth what lies under the cloth, if anything does. */
export function drawCloth(pen: Pen, view: View, ink: InkColors, picture: HTMLCanvasElement, opacity: number, under: ((pen: Pen) => void) | null): void {
  const { left, top, right, bottom } = nearPart(view);
  pen.save();
  pen.shadowColor = ink.shade;
  pen.shadowBlur = 14;
  pen.shadowOffsetY = 4;
  pen.fillStyle = ink.paper;
  pen.fillRect(left, top, right - left, bottom - top);
  pen.restore();
  under?.(pen);
  pen.globalAlpha = opacity;
  drawPart(pen, view, picture);
  pen.globalAlpha = 1;
  pen.strokeStyle = ink.quiet;
  pen.lineWidth = 1;
  pen.strokeRect(left - 0.5, top - 0.5, right - left + 1, bottom - top + 1);
}

/** Draws the grid over the cloth: a dark and a light hair side by side, so that it shows on any fabric. */
export function drawGrid(pen: Pen, view: View): void {
  const { width, height, cells } = view;
  const { left, top, right, bottom } = seenPart(view);
  const uprights = inner(cells.across).map((line) => Math.round(pixelOf(view, line / cells.denominator, 0)[0]));
  const levels = inner(cells.down).map((line) => Math.round(pixelOf(view, 0, line / cells.denominator)[1]));
  const upright = uprights.filter((x) => x > left && x < right);
  const level = levels.filter((y) => y > top && y < bottom);
  const lines = (shift: number): void => {
    pen.beginPath();
    for (const x of upright) {
      pen.moveTo(x + shift, top);
      pen.lineTo(x + shift, bottom);
    }
    for (const y of level) {
      pen.moveTo(left, y + shift);
      pen.lineTo(right, y + shift);
    }
    pen.stroke();
  };
  const dense = Math.min(width / (uprights.length + 1), height / (levels.length + 1)) < 9;
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

/** Draws the tape along the top and the left edge, in finished lengths; what is not in the window is left out. */
export function drawTape(pen: Pen, view: View, ink: InkColors, font: string, along: readonly TapeMark[], down: readonly TapeMark[]): void {
  const { left, top, right, bottom } = seenPart(view);
  pen.strokeStyle = ink.quiet;
  pen.fillStyle = ink.quiet;
  pen.lineWidth = 1;
  pen.font = font;
  const placed = (marks: readonly TapeMark[], place: (at: number) => number, low: number, high: number) =>
    marks.map(({ at, label }) => ({ at: place(at), label })).filter(({ at }) => at >= low - 1 && at <= high + 1);
  const above = placed(along, (at) => pixelOf(view, at, 0)[0], left, right);
  const beside = placed(down, (at) => pixelOf(view, 0, at)[1], top, bottom);
  pen.beginPath();
  for (const { at } of above) {
    const x = Math.round(at) + 0.5;
    pen.moveTo(x, top - GAP / 2);
    pen.lineTo(x, top - GAP / 2 - TICK);
  }
  for (const { at } of beside) {
    const y = Math.round(at) + 0.5;
    pen.moveTo(left - GAP / 2, y);
    pen.lineTo(left - GAP / 2 - TICK, y);
  }
  pen.stroke();
  pen.textAlign = 'center';
  pen.textBaseline = 'alphabetic';
  for (const { at, label } of above) pen.fillText(label, at, top - GAP - TICK);
  pen.textAlign = 'right';
  pen.textBaseline = 'middle';
  for (const { at, label } of beside) pen.fillText(label, left - GAP - TICK, at);
}

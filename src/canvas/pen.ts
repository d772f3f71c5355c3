import type { InkColors } from './ink.ts';

/** What the table is drawn with, in CSS pixels. */
export type Pen = CanvasRenderingContext2D;

/** A place on the canvas, in CSS pixels. */
export type Pixel = readonly [number, number];

/** Adds a line from corner to corner to what the pen is about to draw. */
export function traceLine(pen: Pen, corners: readonly Pixel[]): void {
  corners.forEach(([x, y], i) => (i === 0 ? pen.moveTo(x, y) : pen.lineTo(x, y)));
}

/** Adds an outline, closed, to what the pen is about to draw. */
export function traceOutline(pen: Pen, corners: readonly Pixel[]): void {
  traceLine(pen, corners);
  pen.closePath();
}

/** @returns the mean of some corners: inside, where they are those of a convex outline */
export function middleOf(corners: readonly Pixel[]): Pixel {
  const sum = corners.reduce(([x, y], corner) => [x + corner[0], y + corner[1]] as const, [0, 0] as const);
  return [sum[0] / corners.length, sum[1] / corners.length];
}

/** Draws dashes on a light line twice as wide, so that they show on any fabric. */
export function strokeDashed(pen: Pen, ink: InkColors, dash: readonly number[], width: number): void {
  pen.lineJoin = 'round';
  pen.strokeStyle = ink.paper;
  pen.lineWidth = 2 * width;
  pen.stroke();
  pen.setLineDash([...dash]);
  pen.strokeStyle = ink.accent;
  pen.lineWidth = width;
  pen.stroke();
  pen.setLineDash([]);
}

import type { Stroke } from '../block/painting.ts';
import { outlineOf } from './gesture.ts';
import type { View } from './view.ts';

/** The patches a sweep has laid so far, over the untouched drawing. */
export interface SweepBitmap {
  readonly canvas: HTMLCanvasElement;
  /** Clears it to the size of a view; ratio = device pixels to a CSS pixel. */
  readonly begin: (view: View, ratio: number) => void;
  /** Adds one patch. */
  readonly lay: (stroke: Stroke, color: string) => void;
  readonly clear: () => void;
}

/** @returns an empty picture of a sweep */
export function createSweepBitmap(): SweepBitmap {
  const canvas = document.createElement('canvas');
  const context = canvas.getContext('2d')!;
  let cellWidth = 1;
  let cellHeight = 1;
  return {
    canvas,
    begin: (view, ratio) => {
      // Setting the size clears it.
      canvas.width = Math.max(1, Math.round(view.width * ratio));
      canvas.height = Math.max(1, Math.round(view.height * ratio));
      cellWidth = canvas.width / view.columns;
      cellHeight = canvas.height / view.rows;
    },
    lay: (stroke, color) => {
      context.fillStyle = color;
      context.beginPath();
      for (const [x, y] of outlineOf(stroke)) context.lineTo(x * cellWidth, y * cellHeight);
      context.fill();
    },
    clear: () => context.clearRect(0, 0, canvas.width, canvas.height),
  };
}

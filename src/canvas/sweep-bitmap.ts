import type { Stroke } from '../block/painting.ts';
import { outlineOf } from './gesture.ts';
import { partOf, type Part } from './part.ts';
import type { View } from './view.ts';

/** The patches a sweep has laid so far, over the untouched drawing. */
export interface SweepBitmap {
  readonly canvas: HTMLCanvasElement;
  /** Begins a sweep of one colour as it is seen in a view; ratio = device pixels to a CSS pixel. */
  readonly begin: (view: View, ratio: number, color: string) => void;
  /** Shows the same sweep in another view. */
  readonly look: (view: View, ratio: number) => void;
  /** Adds one patch. */
  readonly lay: (stroke: Stroke) => void;
  readonly clear: () => void;
}

/** @returns an empty picture of a sweep */
export function createSweepBitmap(): SweepBitmap {
  const canvas = document.createElement('canvas');
  const context = canvas.getContext('2d')!;
  let part: Part | null = null;
  let laid: Stroke[] = [];
  let color = '';

  const draw = (stroke: Stroke): void => {
    if (!part) return;
    context.fillStyle = color;
    context.beginPath();
    for (const [x, y] of outlineOf(stroke)) context.lineTo(x * part.unitAcross - part.left, y * part.unitDown - part.top);
    context.fill();
  };
  const look: SweepBitmap['look'] = (view, ratio) => {
    part = partOf(view, ratio);
    // Setting the size clears it.
    [canvas.width, canvas.height] = [part.width, part.height];
    laid.forEach(draw);
  };
  return {
    canvas,
    look,
    begin: (view, ratio, next) => {
      [laid, color] = [[], next];
      look(view, ratio);
    },
    lay: (stroke) => {
      laid.push(stroke);
      draw(stroke);
    },
    clear: () => {
      laid = [];
      context.clearRect(0, 0, canvas.width, canvas.height);
    },
  };
}

import { seenPart, type Box, type View } from './view.ts';

/** The part of the block that is seen, in device pixels of a picture of just this part. */
export interface Part {
  /** Size of the picture, at least one pixel each way. */
  readonly width: number;
  readonly height: number;
  /** How far the picture lies from the block's top-left corner. */
  readonly left: number;
  readonly top: number;
  /** Size of one grid unit. */
  readonly unitAcross: number;
  readonly unitDown: number;
  /** The same part in grid units. */
  readonly units: Box;
}

/** @returns the part of the block that is seen; ratio = device pixels to a CSS pixel */
export function partOf(view: View, ratio: number): Part {
  const seen = seenPart(view);
  const [wide, high] = [Math.max(1, Math.round(view.width * ratio)), Math.max(1, Math.round(view.height * ratio))];
  const [unitAcross, unitDown] = [wide / view.columns, high / view.rows];
  const left = Math.round((seen.left - view.left) * ratio);
  const top = Math.round((seen.top - view.top) * ratio);
  const width = Math.max(1, Math.round((seen.right - seen.left) * ratio));
  const height = Math.max(1, Math.round((seen.bottom - seen.top) * ratio));
  return {
    width, height, left, top, unitAcross, unitDown,
    units: { left: left / unitAcross, top: top / unitDown, right: (left + width) / unitAcross, bottom: (top + height) / unitDown },
  };
}

/** Lays the picture of the seen part where it belongs on the canvas. */
export function drawPart(pen: CanvasRenderingContext2D, view: View, picture: HTMLCanvasElement): void {
  const { left, top, right, bottom } = seenPart(view);
  if (right > left && bottom > top) pen.drawImage(picture, left, top, right - left, bottom - top);
}

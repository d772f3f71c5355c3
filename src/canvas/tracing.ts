import { seenPart, type View } from './view.ts';

/** How a picture lies under the block: a similarity, so it is never bent. */
export interface Lie {
  /** Its middle, as shares of the block's width and height. */
  readonly x: number;
  readonly y: number;
  /** Its width as a share of the block's width. */
  readonly width: number;
  /** Degrees clockwise. */
  readonly turn: number;
}

/** A photograph or scan that lies under the cloth to be traced. */
export interface Tracing {
  readonly picture: ImageBitmap;
  readonly lie: Lie;
  /** How much of the cloth covers it, 0 to 1. */
  readonly cover: number;
  /** Whether it is just being laid, and so seen beyond the block too. */
  readonly laying: boolean;
}

type Pixel = readonly [number, number];

/** @returns how a picture lies that just covers the block: its width for its height is `shape`, the block's in pixels is the view's */
export function covering(shape: number, view: Pick<View, 'width' | 'height'>): Lie {
  return { x: 0.5, y: 0.5, width: Math.min(1, (view.height * shape) / view.width), turn: 0 };
}

/** @returns the corners of a picture on the canvas, clockwise from its top left; shape = its width for its height */
export function cornersOf(lie: Lie, shape: number, view: View): readonly [Pixel, Pixel, Pixel, Pixel] {
  const [mx, my] = [view.left + lie.x * view.width, view.top + lie.y * view.height];
  const [w, h] = [(lie.width * view.width) / 2, (lie.width * view.width) / shape / 2];
  const [cos, sin] = [Math.cos((lie.turn * Math.PI) / 180), Math.sin((lie.turn * Math.PI) / 180)];
  const corner = (x: number, y: number): Pixel => [mx + x * cos - y * sin, my + x * sin + y * cos];
  return [corner(-w, -h), corner(w, -h), corner(w, h), corner(-w, h)];
}

/** @returns how the picture lies when its top-left corner is at one pixel and its bottom-right corner at another */
export function lieBetween(topLeft: Pixel, bottomRight: Pixel, shape: number, view: View): Lie {
  const [dx, dy] = [bottomRight[0] - topLeft[0], bottomRight[1] - topLeft[1]];
  const diagonal = Math.hypot(dx, dy);
  const turn = ((Math.atan2(dy, dx) - Math.atan2(1, shape)) * 180) / Math.PI;
  return {
    x: ((topLeft[0] + bottomRight[0]) / 2 - view.left) / view.width,
    y: ((topLeft[1] + bottomRight[1]) / 2 - view.top) / view.height,
    width: (diagonal * shape) / Math.hypot(1, shape) / view.width,
    turn: turn > 180 ? turn - 360 : turn <= -180 ? turn + 360 : turn,
  };
}

/** Draws the picture under the block: only there, unless it is just being laid. */
export function drawTracing(pen: CanvasRenderingContext2D, view: View, { picture, lie, laying }: Tracing): void {
  const [x, y] = [view.left + lie.x * view.width, view.top + lie.y * view.height];
  const width = lie.width * view.width;
  const height = (width * picture.height) / picture.width;
  const part = laying ? view.window : seenPart(view);
  pen.save();
  pen.beginPath();
  pen.rect(part.left, part.top, part.right - part.left, part.bottom - part.top);
  pen.clip();
  pen.translate(x, y);
  pen.rotate((lie.turn * Math.PI) / 180);
  pen.imageSmoothingQuality = 'high';
  pen.drawImage(picture, -width / 2, -height / 2, width, height);
  pen.restore();
}

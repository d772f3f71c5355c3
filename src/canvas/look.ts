import type { Box, View } from './view.ts';

/** How near the block is looked at, and where. */
export interface Look {
  /** Times the size at which the whole block just fits its place. */
  readonly zoom: number;
  /** The place in the middle of the window, as shares of the block's width and height. */
  readonly x: number;
  readonly y: number;
}

/** The whole block. */
export const WHOLE: Look = { zoom: 1, x: 0.5, y: 0.5 };

/** The nearest look: a cell of 64 beside each other is then about as wide as half the table. */
export const NEAREST = 40;
/** A look this close to the whole block is the whole block. */
const NEARLY = 0.02;
/** How far a block that is larger than its window may be moved beyond the window's right and lower edge, in pixels. */
const HEM = 14;
/** How far from the window's edge what is brought into sight comes to lie at least, in pixels. */
const CLEAR = 10;

const kept = (value: number, least: number, most: number): number => Math.min(most, Math.max(least, value));

const middleAcross = ({ left, right }: Box): number => (left + right) / 2;
const middleDown = ({ top, bottom }: Box): number => (top + bottom) / 2;

/** The block as it would be seen if pixels had parts. */
interface Place {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

/** @returns where the block lies when its top-left corner is wanted at a place: as near to it as it may be moved */
function placed({ window, width: fitWidth, height: fitHeight }: View, zoom: number, left: number, top: number): Place {
  const [width, height] = [fitWidth * zoom, fitHeight * zoom];
  const wide = window.right - HEM - window.left;
  const high = window.bottom - HEM - window.top;
  return {
    width,
    height,
    left: width <= wide ? window.left + (wide - width) / 2 : kept(left, window.right - HEM - width, window.left),
    top: height <= high ? window.top : kept(top, window.bottom - HEM - height, window.top),
  };
}

function placeOf(fit: View, { zoom, x, y }: Look): Place {
  if (zoom === 1) return fit;
  return placed(fit, zoom, middleAcross(fit.window) - x * fit.width * zoom, middleDown(fit.window) - y * fit.height * zoom);
}

/** @returns the block as it is seen, from the view of the whole of it; the view itself where the whole is looked at */
export function viewThrough(fit: View, look: Look): View {
  if (look.zoom === 1) return fit;
  const { left, top, width, height } = placeOf(fit, look);
  return { ...fit, left: Math.round(left), top: Math.round(top), width: Math.max(1, Math.round(width)), height: Math.max(1, Math.round(height)) };
}

/** @returns the look under which the block's top-left corner lies at a place, as far as the block may be moved; `now` if it is the same */
function lookFrom(fit: View, now: Look, zoom: number, wantedLeft: number, wantedTop: number): Look {
  const { left, top, width, height } = placed(fit, zoom, wantedLeft, wantedTop);
  const before = placeOf(fit, now);
  if (zoom === now.zoom && left === before.left && top === before.top) return now;
  return { zoom, x: (middleAcross(fit.window) - left) / Math.max(1, width), y: (middleDown(fit.window) - top) / Math.max(1, height) };
}

/**
 * @returns the look that is so many times nearer and leaves what lies under a pixel where it is, as far as it can; never farther than the
 * whole block, or than `now`
 */
export function nearer(fit: View, now: Look, times: number, [px, py]: readonly [number, number]): Look {
  const zoom = kept(now.zoom * times, Math.min(1, now.zoom), NEAREST);
  if (Math.abs(zoom - 1) < NEARLY && Math.abs(zoom - 1) <= Math.abs(now.zoom - 1)) return WHOLE;
  const { left, top } = placeOf(fit, now);
  const grown = zoom / now.zoom;
  return lookFrom(fit, now, zoom, px - (px - left) * grown, py - (py - top) * grown);
}

/** @returns the look that shows the block so many pixels further right and further down; `now` where it can be moved no further */
export function moved(fit: View, now: Look, dx: number, dy: number): Look {
  if (now.zoom === 1) return now;
  const { left, top } = placeOf(fit, now);
  const next = lookFrom(fit, now, now.zoom, left + dx, top + dy);
  // Sums of parts of pixels do not come out even: what cannot be seen is not a move.
  return Math.hypot((next.x - now.x) * fit.width, (next.y - now.y) * fit.height) * now.zoom < 1e-6 ? now : next;
}

/** @returns the look, moved no further than it takes to see a rectangle of the block; its sides in shares of the block's width and height */
export function inSight(fit: View, now: Look, { left, top, right, bottom }: Box): Look {
  const view = viewThrough(fit, now);
  const shift = (from: number, to: number, low: number, high: number): number => {
    if (to > high - CLEAR && from > low + CLEAR) return Math.max(high - CLEAR - to, low + CLEAR - from);
    return from < low + CLEAR && to < high - CLEAR ? Math.min(low + CLEAR - from, high - CLEAR - to) : 0;
  };
  const { window } = fit;
  const dx = shift(view.left + left * view.width, view.left + right * view.width, window.left, window.right);
  const dy = shift(view.top + top * view.height, view.top + bottom * view.height, window.top, window.bottom);
  return dx === 0 && dy === 0 ? now : moved(fit, now, dx, dy);
}

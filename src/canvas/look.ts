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

/** @returns the block as it is seen, from the view of the whole of it; the view itself where the whole is looked at */
export function viewThrough(fit: View, { zoom, x, y }: Look): View {
  if (zoom === 1) return fit;
  const { window } = fit;
  const width = Math.max(1, Math.round(fit.width * zoom));
  const height = Math.max(1, Math.round(fit.height * zoom));
  const wide = window.right - HEM - window.left;
  const high = window.bottom - HEM - window.top;
  const left = width <= wide ? window.left + (wide - width) / 2 : kept(middleAcross(window) - x * width, window.right - HEM - width, window.left);
  const top = height <= high ? window.top : kept(middleDown(window) - y * height, window.bottom - HEM - height, window.top);
  return { ...fit, left: Math.round(left), top: Math.round(top), width, height };
}

const middleAcross = ({ left, right }: Box): number => (left + right) / 2;
const middleDown = ({ top, bottom }: Box): number => (top + bottom) / 2;

/** @returns the look under which the block's top-left corner would lie at a place, as far as the block may be moved; `now` if it is the same */
function lookFrom(fit: View, now: Look, zoom: number, left: number, top: number): Look {
  const [width, height] = [Math.max(1, fit.width * zoom), Math.max(1, fit.height * zoom)];
  const wanted = { zoom, x: (middleAcross(fit.window) - left) / width, y: (middleDown(fit.window) - top) / height };
  const view = viewThrough(fit, wanted);
  const [before, sameZoom] = [viewThrough(fit, now), zoom === now.zoom];
  if (sameZoom && view.left === before.left && view.top === before.top) return now;
  // Where the block may not be moved so far, the look stays at what is seen.
  const x = view.left === Math.round(left) ? wanted.x : (middleAcross(fit.window) - view.left) / view.width;
  const y = view.top === Math.round(top) ? wanted.y : (middleDown(fit.window) - view.top) / view.height;
  return { zoom, x, y };
}

/**
 * @returns the look that is so many times nearer and leaves what lies under a pixel where it is, as far as it can; never farther than the
 * whole block, or than `now`
 */
export function nearer(fit: View, now: Look, times: number, [px, py]: readonly [number, number]): Look {
  const zoom = kept(now.zoom * times, Math.min(1, now.zoom), NEAREST);
  if (Math.abs(zoom - 1) < NEARLY && Math.abs(zoom - 1) <= Math.abs(now.zoom - 1)) return WHOLE;
  const view = viewThrough(fit, now);
  const grown = zoom / now.zoom;
  return lookFrom(fit, now, zoom, px - (px - view.left) * grown, py - (py - view.top) * grown);
}

/** @returns the look that shows the block so many pixels further right and further down; `now` where it can be moved no further */
export function moved(fit: View, now: Look, dx: number, dy: number): Look {
  if (now.zoom === 1) return now;
  const view = viewThrough(fit, now);
  return lookFrom(fit, now, now.zoom, view.left + dx, view.top + dy);
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

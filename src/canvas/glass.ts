import { toNumber } from '../measure/rational.ts';
import type { Block } from '../block/block.ts';
import { inSight, moved, nearer, NEAREST, viewThrough, WHOLE, type Look } from './look.ts';
import type { Box, View } from './view.ts';

/** What the glass shows: the look, and the view of the whole block that it looks at; null before the table is laid out. */
export interface Seen {
  readonly look: Look;
  readonly fit: View | null;
}

/** The glass over the drawing table: brings the drawing nearer and moves it, for the hand and for whatever lies round the table. */
export interface Glass {
  readonly seen: () => Seen;
  readonly subscribe: (listener: () => void) => () => void;
  /** Says how the whole block lies on the canvas now. */
  readonly lay: (fit: View) => void;
  /** Brings the drawing so many times nearer about a pixel of the canvas, the middle of the window where none is given. */
  readonly nearer: (times: number, about?: readonly [number, number]) => void;
  /** Moves the drawing by pixels. @returns whether it could be moved */
  readonly move: (dx: number, dy: number) => boolean;
  /** Moves the drawing as little as it takes to see a rectangle of it; its sides in shares of the block's width and height. */
  readonly reveal: (box: Box) => void;
  readonly whole: () => void;
  /** Shows the drawing so large that one unit of its finished size takes so many CSS pixels. */
  readonly enlarge: (block: Pick<Block, 'finished'>, pixels: number) => void;
}

/** @returns a glass that shows the whole block */
export function createGlass(): Glass {
  let now: Seen = { look: WHOLE, fit: null };
  const listeners = new Set<() => void>();
  const set = (next: Seen): void => {
    if (next.look === now.look && next.fit === now.fit) return;
    now = next;
    for (const listener of [...listeners]) listener();
  };
  const turn = (verb: (fit: View, look: Look) => Look): void => {
    if (now.fit) set({ ...now, look: verb(now.fit, now.look) });
  };
  const middle = ({ window }: View): readonly [number, number] => [(window.left + window.right) / 2, (window.top + window.bottom) / 2];
  return {
    seen: () => now,
    subscribe: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    lay: (fit) => set({ ...now, fit }),
    nearer: (times, about) => turn((fit, look) => nearer(fit, look, times, about ?? middle(fit))),
    move: (dx, dy) => {
      const before = now.look;
      turn((fit, look) => moved(fit, look, dx, dy));
      return now.look !== before;
    },
    reveal: (box) => turn((fit, look) => inSight(fit, look, box)),
    whole: () => set({ ...now, look: WHOLE }),
    enlarge: ({ finished }, pixels) =>
      turn((fit, look) => ({ ...look, zoom: Math.min(NEAREST, (toNumber(finished.width) * pixels) / Math.max(1, fit.width)) })),
  };
}

/** @returns the view that a glass shows now, null before the table is laid out */
export const viewIn = ({ fit, look }: Seen): View | null => fit && viewThrough(fit, look);

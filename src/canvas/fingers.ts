import { viewIn, type Glass } from './glass.ts';
import type { Hand } from './hand/hand.ts';
import type { Tool } from './tool.ts';

/** What a pointer does, with its place on the canvas in CSS pixels. */
export interface Touch {
  readonly id: number;
  readonly kind: string;
  readonly primary: boolean;
  readonly button: number;
  readonly alt: boolean;
  readonly shift: boolean;
  readonly at: readonly [number, number];
}

/**
 * Tells what pointers mean: one draws, two on the table move the glass, the middle button (or any, while the Space bar is held) moves the
 * drawing. What one finger has begun is dropped when a second one comes.
 */
export interface Fingers {
  /** @returns whether the pointer is to be followed beyond the table */
  readonly down: (touch: Touch) => boolean;
  readonly move: (touch: Touch) => void;
  readonly up: (touch: Touch) => void;
  readonly cancel: (touch: Touch) => void;
  /** Whether a pointer is pressed to draw. */
  readonly drawing: () => boolean;
  /** The Space bar is held down over the table, or let go. @returns whether the drawing was moved meanwhile */
  readonly hold: (held: boolean) => boolean;
}

/** Tools whose stroke can be dropped without a trace, so that it may begin as soon as a finger touches; the others wait until it moves or is lifted. */
const AT_ONCE: ReadonlySet<Tool> = new Set<Tool>(['square', 'half', 'quarter', 'ground', 'rectangle', 'half rectangle', 'peak', 'unit']);
/** A finger that moves less than this, in pixels, is still. */
const STILL = 6;

type Pixel = readonly [number, number];

/**
 * @param toolNow what the hand holds
 * @param scrollPage moves the page where the drawing cannot be moved
 */
export function createFingers(hand: () => Hand, glass: Glass, toolNow: () => Tool, scrollPage: (dx: number, dy: number) => void): Fingers {
  const down = new Map<number, Pixel>();
  /** A single finger that touches: waiting to mean something, drawing, or over. */
  let finger: { readonly state: 'waiting' | 'drawing' | 'over'; readonly from: Pixel; readonly alt: boolean } | null = null;
  let pinch: { readonly middle: Pixel; readonly apart: number } | null = null;
  let pushing: { readonly id: number; readonly at: Pixel } | null = null;
  let pressed = false;
  let held = false;
  let pushedWhileHeld = false;

  /** @returns whether the tape is under a pixel, with a part of the block that is out of sight */
  const onTape = ([x, y]: Pixel): boolean => {
    const view = viewIn(glass.seen());
    return view !== null && ((x < view.window.left && view.left < view.window.left) || (y < view.window.top && view.top < view.window.top));
  };

  const grip = (): { readonly middle: Pixel; readonly apart: number } => {
    const [a, b] = [...down.values()] as [Pixel, Pixel];
    return { middle: [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2], apart: Math.max(1, Math.hypot(a[0] - b[0], a[1] - b[1])) };
  };

  const touched = ({ id, at, alt }: Touch): void => {
    down.set(id, at);
    if (down.size === 2) {
      if (finger?.state === 'drawing') hand().drop();
      hand().pointerLeave();
      finger = null;
      pinch = grip();
    } else if (down.size === 1) {
      const now = AT_ONCE.has(toolNow());
      finger = { state: onTape(at) ? 'over' : now ? 'drawing' : 'waiting', from: at, alt };
      if (finger.state === 'drawing') hand().pointerDown(...at, alt);
    }
  };

  const touchMoved = ({ id, at }: Touch): void => {
    if (!down.has(id)) return;
    down.set(id, at);
    if (pinch && down.size >= 2) {
      const next = grip();
      const times = next.apart / pinch.apart;
      if (Math.abs(times - 1) > 0.002) glass.nearer(times, pinch.middle);
      const [dx, dy] = [next.middle[0] - pinch.middle[0], next.middle[1] - pinch.middle[1]];
      if (!glass.move(dx, dy)) scrollPage(-dx, -dy);
      pinch = next;
      return;
    }
    if (finger?.state === 'waiting' && Math.hypot(at[0] - finger.from[0], at[1] - finger.from[1]) > STILL) {
      hand().pointerDown(...finger.from, finger.alt);
      finger = { ...finger, state: 'drawing' };
    }
    if (finger?.state === 'drawing') hand().pointerMove(...at);
  };

  const touchOver = (id: number, lifted: boolean): void => {
    down.delete(id);
    if (finger && lifted) {
      if (finger.state === 'waiting') hand().pointerDown(...finger.from, finger.alt);
      if (finger.state !== 'over') hand().pointerUp();
    } else if (finger?.state === 'drawing') {
      hand().drop();
    }
    finger = null;
    // The finger that is lifted last after two have moved the drawing draws nothing.
    if (down.size === 0) pinch = null;
  };

  return {
    down: (touch) => {
      const { kind, primary, button, alt, shift, at, id } = touch;
      if (kind === 'touch') {
        touched(touch);
        return true;
      }
      if (button === 1 || (held && button === 0)) {
        pushing = { id, at };
        hand().pointerLeave();
        return true;
      }
      if (!primary || (button !== 0 && button !== 2) || onTape(at)) return false;
      pressed = true;
      hand().pointerDown(...at, button === 2 || alt, shift);
      return true;
    },
    move: (touch) => {
      const { kind, primary, at, id } = touch;
      if (pushing) {
        if (pushing.id !== id) return;
        const [x, y] = pushing.at;
        pushing = { id, at };
        pushedWhileHeld ||= held;
        glass.move(at[0] - x, at[1] - y);
      } else if (kind === 'touch') {
        touchMoved(touch);
      } else if (primary && !held) {
        if (!pressed && onTape(at)) hand().pointerLeave();
        else hand().pointerMove(...at);
      }
    },
    up: (touch) => {
      pressed = false;
      if (pushing) pushing = pushing.id === touch.id ? null : pushing;
      else if (touch.kind === 'touch') touchOver(touch.id, true);
      else if (touch.primary) hand().pointerUp();
    },
    cancel: (touch) => {
      pressed = false;
      if (pushing) pushing = pushing.id === touch.id ? null : pushing;
      else if (touch.kind === 'touch') touchOver(touch.id, false);
      else if (touch.primary) hand().drop();
    },
    drawing: () => pressed || finger?.state === 'drawing',
    hold: (next) => {
      const pushed = pushedWhileHeld;
      if (next && !held) pushedWhileHeld = false;
      held = next;
      return pushed;
    },
  };
}

import type { Block } from '../block/block.ts';
import { paint, type Stroke } from '../block/painting.ts';
import { good, type Result } from '../measure/problem.ts';

/** How long painting ahead may take between two frames, in milliseconds. */
const SHARE = 4;

/**
 * Paints the strokes of a sweep while the hand still draws, in the pauses between frames, so that little is left to do when it
 * lifts: on a block of thousands of patches each stroke takes about a millisecond.
 */
export interface PaintAhead {
  /** More strokes of a sweep over `base`; another base or fabric begins anew. */
  readonly add: (base: Block, fabric: string, strokes: readonly Stroke[]) => void;
  /** @returns `base` with all these strokes painted, of which those painted ahead are not painted again */
  readonly finish: (base: Block, fabric: string, strokes: readonly Stroke[]) => Result<Block>;
  readonly drop: () => void;
}

/** @returns a painter that has nothing to do */
export function createPaintAhead(): PaintAhead {
  let base: Block | null = null;
  let fabric = '';
  let strokes: Stroke[] = [];
  let painted: Result<Block> | null = null;
  let count = 0;
  let pause: ReturnType<typeof setTimeout> | undefined;

  const drop = (): void => {
    clearTimeout(pause);
    [base, strokes, painted, count, pause] = [null, [], null, 0, undefined];
  };

  const paintOne = (): void => {
    if (!painted?.ok) return;
    painted = paint(painted.value, fabric, strokes[count]!);
    count++;
  };

  const paintSome = (): void => {
    pause = undefined;
    const end = performance.now() + SHARE;
    while (painted?.ok && count < strokes.length && performance.now() < end) paintOne();
    if (painted?.ok && count < strokes.length) pause = setTimeout(paintSome);
  };

  return {
    drop,
    add: (on, id, more) => {
      if (base !== on || fabric !== id) {
        drop();
        [base, fabric, painted] = [on, id, good(on)];
      }
      strokes.push(...more);
      pause ??= setTimeout(paintSome);
    },
    finish: (on, id, all) => {
      const ahead = base === on && fabric === id && all.length >= strokes.length && strokes.every((stroke, i) => stroke === all[i]);
      if (!ahead) {
        drop();
        [base, fabric, painted] = [on, id, good(on)];
      }
      strokes = [...all];
      while (painted?.ok && count < strokes.length) paintOne();
      const done = painted ?? good(on);
      drop();
      return done;
    },
  };
}

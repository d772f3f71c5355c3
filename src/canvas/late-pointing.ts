import type { Pointing } from './hand/bench.ts';

/** How long the pointer may go on before whoever listens is told where it is, in milliseconds. */
const PAUSE = 40;

/** Passes on where the hand is when that makes it wait for nothing: what listens may have much to light up. */
export interface LatePointing {
  /** Keys are told of at once, and so is a pointer that leaves; a pointer that moves is told of in its pauses, one that draws when it is lifted. */
  readonly point: (at: Pointing | null) => void;
  /** The pointer is lifted. */
  readonly lifted: () => void;
  /** Nobody listens any more. */
  readonly stop: () => void;
}

/** @param isDrawing whether a pointer is pressed on the table now */
export function createLatePointing(tell: (at: Pointing | null) => void, isDrawing: () => boolean): LatePointing {
  let waiting: Pointing | null = null;
  let pause: ReturnType<typeof setTimeout> | undefined;

  const stop = (): void => {
    clearTimeout(pause);
    [waiting, pause] = [null, undefined];
  };
  const tellWaiting = (): void => {
    const at = waiting;
    stop();
    if (at) tell(at);
  };
  return {
    stop,
    lifted: tellWaiting,
    point: (at) => {
      if (at?.by !== 'pointer') {
        stop();
        tell(at);
        return;
      }
      waiting = at;
      if (isDrawing()) {
        clearTimeout(pause);
        pause = undefined;
      } else {
        pause ??= setTimeout(tellWaiting, PAUSE);
      }
    },
  };
}

import { useEffect, useState } from 'react';

/** How far a play-through has come, and the ways to move it. */
export interface Playing {
  /** Moments that are over; between two, a part of one. */
  readonly done: number;
  readonly playing: boolean;
  /** Stops there. */
  readonly goTo: (done: number) => void;
  /** Goes on; from the beginning where it is over. */
  readonly start: () => void;
  readonly stop: () => void;
}

const isStill = (): boolean => matchMedia('(prefers-reduced-motion: reduce)').matches;

/**
 * Plays moments one after the other. Where the reader wants less motion nothing glides: each moment is shown when it is over.
 * @param last how many there are
 * @param speed moments in a second
 */
export function usePlaying(last: number, speed: number): Playing {
  const [done, setDone] = useState(0);
  const [playing, setPlaying] = useState(false);

  useEffect(() => {
    if (!playing) return;
    if (isStill()) {
      const timer = setInterval(() => setDone((now) => Math.min(last, Math.floor(now) + 1)), 1000 / speed);
      return () => clearInterval(timer);
    }
    let before: number | null = null;
    let frame = requestAnimationFrame(function next(now) {
      const passed = before === null ? 0 : (now - before) / 1000;
      before = now;
      setDone((at) => Math.min(last, at + passed * speed));
      frame = requestAnimationFrame(next);
    });
    return () => cancelAnimationFrame(frame);
  }, [playing, last, speed]);

  useEffect(() => {
    if (done >= last) setPlaying(false);
  }, [done, last]);

  return {
    done,
    playing,
    goTo: (to) => {
      setPlaying(false);
      setDone(Math.min(last, Math.max(0, to)));
    },
    start: () => {
      if (done >= last) setDone(0);
      setPlaying(true);
    },
    stop: () => setPlaying(false),
  };
}

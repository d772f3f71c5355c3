import { useEffect, useState, type RefObject } from 'react';

/** How much room an element has, in whole CSS pixels. */
export interface Room {
  readonly width: number;
  readonly height: number;
  /** Height of its text. */
  readonly text: number;
  /** Device pixels to a CSS pixel. */
  readonly ratio: number;
}

/** @returns the room of an element, followed through every change of its size, of the zoom and of the screen */
export function useRoom(element: RefObject<HTMLElement | null>): Room {
  const [room, setRoom] = useState<Room>({ width: 0, height: 0, text: 16, ratio: 1 });
  useEffect(() => {
    const measured = element.current;
    if (!measured) return;
    const measure = (): void =>
      setRoom((now) => {
        const next: Room = {
          width: measured.clientWidth,
          height: measured.clientHeight,
          text: Number.parseFloat(getComputedStyle(measured).fontSize),
          ratio: window.devicePixelRatio,
        };
        const same = next.width === now.width && next.height === now.height && next.text === now.text && next.ratio === now.ratio;
        return same ? now : next;
      });
    const observer = new ResizeObserver(measure);
    observer.observe(measured);
    // A zoom changes the ratio and usually the size; a move to another screen may change the ratio alone.
    window.addEventListener('resize', measure);
    measure();
    return () => {
      observer.disconnect();
      window.removeEventListener('resize', measure);
    };
  }, [element]);
  return room;
}

/** @returns whether the device is set to dark now, followed through changes */
export function useDarkness(): boolean {
  const [dark, setDark] = useState(() => matchMedia('(prefers-color-scheme: dark)').matches);
  useEffect(() => {
    const query = matchMedia('(prefers-color-scheme: dark)');
    const change = (): void => setDark(query.matches);
    query.addEventListener('change', change);
    return () => query.removeEventListener('change', change);
  }, []);
  return dark;
}

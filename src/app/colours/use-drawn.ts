import { useEffect, type RefObject } from 'react';

/**
 * Draws on a canvas when it is in view, and only after the frame in which it was asked for: what stands beside the drawing never makes the
 * drawing itself wait.
 * @param draw is told the canvas, in device pixels of this size; it draws again whenever another function is given
 */
export function useDrawn(canvas: RefObject<HTMLCanvasElement | null>, [wide, high]: readonly [number, number], draw: (canvas: HTMLCanvasElement, ratio: number) => void): void {
  useEffect(() => {
    const place = canvas.current;
    if (!place) return undefined;
    let [frame, timer] = [0, 0];
    const eye = new IntersectionObserver((entries) => {
      if (!entries.some(({ isIntersecting }) => isIntersecting)) return;
      eye.disconnect();
      frame = requestAnimationFrame(() => {
        timer = window.setTimeout(() => {
          const ratio = Math.min(2, devicePixelRatio);
          place.width = Math.round(wide * ratio);
          place.height = Math.round(high * ratio);
          draw(place, ratio);
        });
      });
    }, { rootMargin: '200px 0px' });
    eye.observe(place);
    return () => {
      eye.disconnect();
      cancelAnimationFrame(frame);
      clearTimeout(timer);
    };
  }, [canvas, wide, high, draw]);
}

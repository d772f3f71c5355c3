import { useRef, useSyncExternalStore, type CSSProperties, type KeyboardEvent, type PointerEvent, type ReactNode } from 'react';
import { viewIn, type Glass } from '../../canvas/glass.ts';
import { cornersOf, lieBetween, type Lie } from '../../canvas/tracing.ts';
import type { View } from '../../canvas/view.ts';
import { useStore } from '../store.ts';
import { changeLaid, setLaying, underlay } from './underlay.ts';

type Pixel = readonly [number, number];
type Part = 'top left' | 'bottom right' | 'picture';

/** How far an arrow key moves a corner, in pixels; with Shift farther. */
const NUDGE = 1;
const FAR_NUDGE = 10;
const ARROWS: Readonly<Record<string, Pixel>> = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1] };
/** A picture never gets smaller than this from corner to corner, in pixels. */
const SMALLEST = 30;

/** A frame round the picture under the cloth: drawn by two corners it is moved, turned and made larger at once; drawn by itself it is moved. */
export default function PictureFrame({ glass }: { readonly glass: Glass }): ReactNode {
  const { laid } = useStore(underlay, (all) => all);
  const view = viewIn(useSyncExternalStore(glass.subscribe, glass.seen));
  const drawn = useRef<{ readonly part: Part; readonly from: Pixel; readonly lie: Lie } | null>(null);
  if (!laid || !view) return null;
  const shape = laid.picture.width / laid.picture.height;

  const moveBy = (part: Part, lie: Lie, [dx, dy]: Pixel, on: View): void => {
    const [topLeft, , bottomRight] = cornersOf(lie, shape, on);
    const by = ([x, y]: Pixel, moves: boolean): Pixel => (moves ? [x + dx, y + dy] : [x, y]);
    const [a, b] = [by(topLeft, part !== 'bottom right'), by(bottomRight, part !== 'top left')];
    if (Math.hypot(b[0] - a[0], b[1] - a[1]) >= SMALLEST) changeLaid({ lie: lieBetween(a, b, shape, on) });
  };
  const hand = (part: Part) => ({
    onPointerDown: (event: PointerEvent<HTMLElement>) => {
      if (event.button !== 0) return;
      event.currentTarget.setPointerCapture(event.pointerId);
      drawn.current = { part, from: [event.clientX, event.clientY], lie: laid.lie };
    },
    onPointerMove: (event: PointerEvent) => {
      const begun = drawn.current;
      if (begun?.part === part) moveBy(part, begun.lie, [event.clientX - begun.from[0], event.clientY - begun.from[1]], view);
    },
    onPointerUp: () => {
      drawn.current = null;
    },
    onPointerCancel: () => {
      drawn.current = null;
    },
    onKeyDown: (event: KeyboardEvent) => {
      const arrow = ARROWS[event.key];
      if (event.key === 'Escape' || event.key === 'Enter') setLaying(false);
      if (!arrow) return;
      event.preventDefault();
      const step = event.shiftKey ? FAR_NUDGE : NUDGE;
      moveBy(part, laid.lie, [arrow[0] * step, arrow[1] * step], view);
    },
  });

  const corners = cornersOf(laid.lie, shape, view);
  const at = ([x, y]: Pixel): CSSProperties => ({ left: `${x}px`, top: `${y}px` });
  const { window } = view;
  const [middleX, middleY] = [(corners[0][0] + corners[2][0]) / 2, (corners[0][1] + corners[2][1]) / 2];
  return (
    <div className="picture-frame" style={{ height: `${window.bottom}px` }}>
      <svg width={window.right} height={window.bottom} aria-hidden="true">
        <polygon points={corners.map((corner) => corner.join()).join(' ')} />
      </svg>
      <button type="button" className="picture-middle" aria-label="Picture: draw it, or press an arrow key" style={at([middleX, middleY])} autoFocus {...hand('picture')} />
      <button type="button" className="picture-corner" aria-label="Top left corner of the picture" style={at(corners[0])} {...hand('top left')} />
      <button type="button" className="picture-corner" aria-label="Bottom right corner of the picture" style={at(corners[2])} {...hand('bottom right')} />
      <button type="button" className="main-act picture-done" onClick={() => setLaying(false)}>
        It lies right
      </button>
    </div>
  );
}

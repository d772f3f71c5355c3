import { useId, useRef, useState, type PointerEvent, type ReactNode } from 'react';
import type { Block, Patch, PhotoPlace as Place } from '../../block/block.ts';
import type { Picture } from '../../block/publication.ts';
import { toNumber } from '../../measure/rational.ts';
import { middleOf } from '../../pattern/photo-places.ts';
import type { Spot } from '../../pattern/polygons.ts';
import { Sheetlet } from '../Sheetlet.tsx';
import '../face/photo-place.css';

const MIDDLE: Place = [500, 500];

/** Moves the photo of a fabric within the patches that are chosen, for a print with pictures: by dragging the patch over it, or by two sliders. */
export default function PhotoPlace({ block, patch, picture, place, close }: {
  readonly block: Block;
  /** One of the patches; it is shown over the photo. */
  readonly patch: Patch;
  readonly picture: Picture;
  /** Lays the photo so; null for as chance has it. */
  readonly place: (at: Place | null) => void;
  readonly close: () => void;
}): ReactNode {
  const name = useId();
  const [at, setAt] = useState<Place>(patch.photoAt ?? MIDDLE);
  const svg = useRef<SVGSVGElement>(null);
  const grip = useRef<Spot | null>(null);
  const across = toNumber(block.fabrics.find(({ id }) => id === patch.fabric)!.photo!.across);
  const down = (across * picture.height) / picture.width;
  const { finished, grid, denominator } = block;
  const [wide, high] = [toNumber(finished.width) / (grid.columns * denominator), toNumber(finished.height) / (grid.rows * denominator)];
  const corners = patch.points.map(([x, y]): Spot => [x * wide, y * high]);
  const middle = middleOf(corners);
  const outline = corners.map(([x, y]): Spot => [x - middle[0], y - middle[1]]);
  const [beyond, below] = [Math.max(...outline.map(([x]) => x)), Math.max(...outline.map(([, y]) => y))];
  const box = { x: -beyond, y: -below, width: across + 2 * beyond, height: down + 2 * below };
  const [x, y] = [(at[0] / 1000) * across, (at[1] / 1000) * down];
  const path = `M${outline.map(([dx, dy]) => `${x + dx} ${y + dy}`).join('L')}Z`;
  const frame = `M${box.x} ${box.y}h${box.width}v${box.height}h${-box.width}Z`;
  const spotOf = (event: PointerEvent): Spot => {
    const { x: px, y: py } = new DOMPoint(event.clientX, event.clientY).matrixTransform(svg.current!.getScreenCTM()!.inverse());
    return [px, py];
  };
  const kept = (share: number): number => Math.min(1000, Math.max(0, Math.round(share * 1000)));
  const slider = (words: string, value: number, set: (value: number) => Place): ReactNode => (
    <label className="photo-place-slider">
      <span>{words}</span>
      <input type="range" min={0} max={1000} step={5} value={value} onChange={(event) => setAt(set(Number(event.target.value)))} />
    </label>
  );
  return (
    <Sheetlet title="Where the photo lies in the patch" doneWords="Done" close={close} done={() => place(at)}>
      <svg
        ref={svg}
        className="photo-place"
        viewBox={`${box.x} ${box.y} ${box.width} ${box.height}`}
        role="img"
        aria-label="The photo of the cloth, and the patch on it"
        onPointerDown={(event) => {
          event.currentTarget.setPointerCapture(event.pointerId);
          const [px, py] = spotOf(event);
          // Pressed beside it, the patch comes to the pointer.
          const near = Math.abs(px - x) <= beyond && Math.abs(py - y) <= below;
          grip.current = near ? [px - x, py - y] : [0, 0];
          if (!near) setAt([kept(px / across), kept(py / down)]);
        }}
        onPointerMove={(event) => {
          if (!grip.current) return;
          const [px, py] = spotOf(event);
          setAt([kept((px - grip.current[0]) / across), kept((py - grip.current[1]) / down)]);
        }}
        onPointerUp={() => { grip.current = null; }}
        onPointerCancel={() => { grip.current = null; }}
      >
        <pattern id={name} patternUnits="userSpaceOnUse" width={across} height={down}>
          <image width={across} height={down} preserveAspectRatio="none" href={`data:image/jpeg;base64,${picture.jpeg}`} />
        </pattern>
        <path d={frame} fill={`url(#${name})`} />
        <path className="photo-place-veil" d={frame + path} fillRule="evenodd" />
        <path className="photo-place-patch" d={path} vectorEffect="non-scaling-stroke" />
      </svg>
      {slider('From the left of the photo', at[0], (value) => [value, at[1]])}
      {slider('From its top', at[1], (value) => [at[0], value])}
      <p className="quiet">Drag the patch over the photo. On the table it is turned as the piece is cut, unless the print has an up and a down.</p>
      {patch.photoAt && (
        <button type="button" className="plain framed" onClick={() => { place(null); close(); }}>
          Anywhere, by chance
        </button>
      )}
    </Sheetlet>
  );
}

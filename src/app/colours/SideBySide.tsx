import { memo, useCallback, useDeferredValue, useEffect, useMemo, useRef, useState, type ReactNode } from 'react';
import type { Block } from '../../block/block.ts';
import { compare, rational, toNumber, type Rational } from '../../measure/rational.ts';
import { parseLength, printLength } from '../../measure/lengths.ts';
import { setOut, sizeSet, type Alternate, type Lie, type SetPlace, type Setting } from '../../quilt/setting-out.ts';
import { demoBlocks } from '../demo-blocks.ts';
import { drawRoles, roleShapes, type RoleShapes } from './role-shapes.ts';
import { useDrawn } from './use-drawn.ts';

const MANY = [2, 3, 4, 5, 6, 7, 8];

const LIES: readonly { readonly lie: Lie; readonly words: string }[] = [
  { lie: 'straight', words: 'All alike' },
  { lie: 'turned', words: 'Turned round every four' },
  { lie: 'mirrored', words: 'Mirrored at every line' },
];

const ALTERNATES: readonly { readonly alternate: Alternate; readonly words: string }[] = [
  { alternate: 'the same', words: 'nothing else' },
  { alternate: 'plain cloth', words: 'plain cloth' },
  { alternate: 'another block', words: 'another block' },
];

/** A wall to hang it on, with a door to compare with, in inches: 12 by 8 feet, 32 by 80 inches (common sizes, from memory). */
const WALL = { width: 144, height: 96, door: { width: 32, height: 80 } };
const INCH = { in: 1, cm: 1 / 2.54 };

interface Painted {
  readonly shapes: RoleShapes;
  readonly colors: ReadonlyMap<string, string>;
}

const painted = (block: Block): Painted | null => {
  const shapes = roleShapes(block);
  return shapes && { shapes, colors: new Map(block.fabrics.map(({ id, color }) => [id, color])) };
};

/** Copies of the block beside each other, to see what they make together; or on a wall, as large as they would be. */
export const SideBySide = memo(function SideBySide({ block, shapes }: { readonly block: Block; readonly shapes: RoleShapes }): ReactNode {
  const { unit } = block.finished;
  const [many, setMany] = useState(4);
  const [lie, setLie] = useState<Lie>('straight');
  const [alternate, setAlternate] = useState<Alternate>('the same');
  const [other, setOther] = useState(demoBlocks[0]!.title);
  const [strips, setStrips] = useState('0');
  const [cloth, setCloth] = useState(block.ground);
  const [onWall, setOnWall] = useState(false);
  const [fetched, setFetched] = useState<Painted | null>(null);
  useEffect(() => {
    if (alternate !== 'another block') return undefined;
    let wanted = true;
    void demoBlocks.find(({ title }) => title === other)?.open().then((opened) => wanted && setFetched(painted(opened)), () => undefined);
    return () => void (wanted = false);
  }, [alternate, other]);
  const read = parseLength(strips);
  const most = rational(unit === 'in' ? 12 : 30);
  const wide = read.ok && (read.value.unit === null || read.value.unit === unit) && compare(read.value.value, most) <= 0 ? read.value.value : null;
  const strip = wide === null ? 'none' : `${wide.n}/${wide.d}`;
  const setting = useMemo((): Setting => ({ across: many, down: many, lie, alternate, sashing: wide ?? rational(0) }), [many, lie, alternate, strip]);
  const { finished, fabrics } = block;
  const size = useMemo(() => sizeSet(setting, finished), [setting, finished]);
  const places = useMemo(() => setOut(setting, finished), [setting, finished]);
  const now = useMemo((): Painted => ({ shapes, colors: new Map(fabrics.map(({ id, color }) => [id, color])) }), [shapes, fabrics]);
  const plain = block.fabrics.find(({ id }) => id === cloth) ?? block.fabrics[0]!;
  return (
    <div className="side-by-side">
      <div className="side-by-side-asks">
        <label className="field">
          <span>How many</span>
          <select value={many} onChange={(event) => setMany(Number(event.target.value))}>
            {MANY.map((n) => (
              <option key={n} value={n}>
                {n} by {n}
              </option>
            ))}
          </select>
        </label>
        <label className="field">
          <span>How they lie</span>
          <select value={lie} onChange={(event) => setLie(event.target.value as Lie)}>
            {LIES.map((each) => (
              <option key={each.lie} value={each.lie}>
                {each.words}
              </option>
            ))}
          </select>
        </label>
        <label className="field">
          <span>By turns with</span>
          <select value={alternate} onChange={(event) => setAlternate(event.target.value as Alternate)}>
            {ALTERNATES.map((each) => (
              <option key={each.alternate} value={each.alternate}>
                {each.words}
              </option>
            ))}
          </select>
        </label>
        {alternate === 'another block' && (
          <label className="field">
            <span>Which block of the sampler</span>
            <select value={other} onChange={(event) => setOther(event.target.value)}>
              {demoBlocks.map(({ title }) => (
                <option key={title}>{title}</option>
              ))}
            </select>
          </label>
        )}
        <label className="field">
          <span>Sashing, finished ({unit === 'in' ? 'inches' : 'cm'})</span>
          <input type="text" inputMode="decimal" value={strips} aria-invalid={wide === null} onChange={(event) => setStrips(event.target.value)} />
        </label>
        {wide === null && (
          <p role="alert" className="quiet">
            Write the sashing's width like 1 1/2, up to {printLength(most, unit)}, or 0 for none.
          </p>
        )}
        {(alternate === 'plain cloth' || setting.sashing.n > 0) && (
          <label className="field">
            <span>Plain cloth and sashing of</span>
            <select value={plain.id} onChange={(event) => setCloth(event.target.value)}>
              {block.fabrics.map(({ id, name }) => (
                <option key={id} value={id}>
                  {name}
                </option>
              ))}
            </select>
          </label>
        )}
        <label className="tick">
          <input type="checkbox" checked={onWall} onChange={(event) => setOnWall(event.target.checked)} />
          On a wall, beside a door
        </label>
        <p className="quiet">
          {printLength(size.width, unit, 'bare')} by {printLength(size.height, unit)} finished, without borders.
        </p>
      </div>
      <SetPicture
        places={places}
        size={size}
        inch={INCH[unit]}
        onWall={onWall}
        plain={plain.color}
        block={useDeferredValue(now)}
        other={fetched}
      />
    </div>
  );
});

/** Longest side of the picture, in CSS pixels. */
const LONG = 520;

function SetPicture({ places, size, inch, onWall, plain, block, other }: {
  readonly places: readonly SetPlace[];
  readonly size: { readonly width: Rational; readonly height: Rational };
  /** Inches to a unit of length. */
  readonly inch: number;
  readonly onWall: boolean;
  readonly plain: string;
  readonly block: Painted;
  readonly other: Painted | null;
}): ReactNode {
  const canvas = useRef<HTMLCanvasElement>(null);
  const [width, height] = [toNumber(size.width), toNumber(size.height)];
  // A quilt larger than the wall makes the wall larger.
  const wall = onWall ? Math.max(1, (width * inch + WALL.door.width + 36) / WALL.width, (height * inch + 12) / WALL.height) : 1;
  const [whole, high] = onWall ? [(WALL.width * wall) / inch, (WALL.height * wall) / inch] : [width, height];
  const scale = LONG / Math.max(whole, high);
  const draw = useCallback((place: HTMLCanvasElement, ratio: number): void => {
    const pen = place.getContext('2d');
    if (!pen) return;
    const k = scale * ratio;
    pen.setTransform(k, 0, 0, k, 0, 0);
    if (onWall) hang(pen, { whole, high, inch, width, height });
    // Each block is drawn once and then laid in all its places.
    const stamps = new Map([block, other].flatMap((each) => (each ? [[each, stampOf(each, places[0]!, k)] as const] : [])));
    for (const each of places) drawPlace(pen, each, plain, stamps.get((each.what === 'other block' ? other : block)!) ?? null);
  }, [places, whole, high, scale, onWall, plain, block, other, inch, width, height]);
  useDrawn(canvas, [whole * scale, high * scale], draw);
  return (
    <canvas ref={canvas} className="set-picture" style={{ width: whole * scale, maxWidth: '100%' }} role="img" aria-label={`${places.filter(({ what }) => what === 'block').length} copies of the block side by side`} />
  );
}

/** Draws the wall with its door, and moves the pen to where the quilt hangs: its middle at the height of the eyes, clear of the door. */
function hang(pen: CanvasRenderingContext2D, { whole, high, inch, width, height }: { readonly whole: number; readonly high: number; readonly inch: number; readonly width: number; readonly height: number }): void {
  const { door } = WALL;
  const [doorWide, doorHigh] = [door.width / inch, door.height / inch];
  pen.fillStyle = '#b4aea2';
  pen.fillRect(0, 0, whole, high);
  pen.fillStyle = '#e4dfd5';
  pen.fillRect(whole - doorWide - 12 / inch, high - doorHigh, doorWide, doorHigh);
  pen.fillStyle = '#6d6659';
  pen.fillRect(0, high - 3 / inch, whole, 3 / inch);
  const [left, free] = [(whole - doorWide - 12 / inch - width) / 2, high - 3 / inch];
  pen.translate(left, Math.min(Math.max(0, high - 60 / inch - height / 2), free - height));
}

/** @returns a block drawn as large as it lies in the picture, of so many pixels to a unit */
function stampOf({ shapes, colors }: Painted, { width, height }: SetPlace, scale: number): HTMLCanvasElement {
  const stamp = document.createElement('canvas');
  [stamp.width, stamp.height] = [width, height].map((side) => Math.max(1, Math.ceil(toNumber(side) * scale))) as [number, number];
  drawRoles(stamp, shapes, (role) => colors.get(role) ?? '#ffffff');
  return stamp;
}

function drawPlace(pen: CanvasRenderingContext2D, { what, left, top, width, height, turn, mirrored }: SetPlace, plain: string, stamp: HTMLCanvasElement | null): void {
  const [x, y, wide, high] = [left, top, width, height].map(toNumber) as [number, number, number, number];
  if ((what !== 'block' && what !== 'other block') || !stamp) {
    pen.fillStyle = plain;
    pen.fillRect(x, y, wide, high);
    return;
  }
  pen.save();
  pen.translate(x + wide / 2, y + high / 2);
  pen.rotate((turn * Math.PI) / 2);
  if (mirrored) pen.scale(-1, 1);
  // A quarter turn comes only where the place is square; another block is made as large as the place.
  pen.drawImage(stamp, -wide / 2, -high / 2, wide, high);
  pen.restore();
}

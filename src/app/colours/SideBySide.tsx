import { useEffect, useRef, useState, type ReactNode } from 'react';
import type { Block } from '../../block/block.ts';
import { compare, rational, toNumber, type Rational } from '../../measure/rational.ts';
import { parseLength, printLength } from '../../measure/lengths.ts';
import { setOut, sizeSet, type Alternate, type Lie, type SetPlace, type Setting } from '../../quilt/setting-out.ts';
import { demoBlocks } from '../demo-blocks.ts';
import { roleShapes, type RoleShapes } from './role-shapes.ts';

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

/** A wall to hang it on, with a door to compare with, in inches: 12 by 8 feet, 32 by 80 inches. */
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
export function SideBySide({ block, shapes }: { readonly block: Block; readonly shapes: RoleShapes }): ReactNode {
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
  const setting: Setting = { across: many, down: many, lie, alternate, sashing: wide ?? rational(0) };
  const size = sizeSet(setting, block.finished);
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
        places={setOut(setting, block.finished)}
        size={size}
        inch={INCH[unit]}
        onWall={onWall}
        plain={plain.color}
        block={{ shapes, colors: new Map(block.fabrics.map(({ id, color }) => [id, color])) }}
        other={fetched}
      />
    </div>
  );
}

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
  useEffect(() => {
    const place = canvas.current;
    const pen = place?.getContext('2d');
    if (!place || !pen) return;
    const ratio = Math.min(2, devicePixelRatio);
    place.width = Math.round(whole * scale * ratio);
    place.height = Math.round(high * scale * ratio);
    const k = scale * ratio;
    pen.setTransform(k, 0, 0, k, 0, 0);
    if (onWall) hang(pen, { whole, high, inch, width, height });
    for (const each of places) drawPlace(pen, each, plain, each.what === 'other block' ? other : block);
  }, [places, whole, high, scale, onWall, plain, block, other, inch, width, height]);
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

function drawPlace(pen: CanvasRenderingContext2D, { what, left, top, width, height, turn, mirrored }: SetPlace, plain: string, whose: Painted | null): void {
  const [x, y, wide, high] = [left, top, width, height].map(toNumber) as [number, number, number, number];
  if ((what !== 'block' && what !== 'other block') || !whose) {
    pen.fillStyle = plain;
    pen.fillRect(x, y, wide, high);
    return;
  }
  pen.save();
  pen.translate(x + wide / 2, y + high / 2);
  pen.rotate((turn * Math.PI) / 2);
  if (mirrored) pen.scale(-1, 1);
  const { shapes, colors } = whose;
  // Another block is made as large as the place; a quarter turn comes only where the place is square.
  pen.translate(-wide / 2, -high / 2);
  pen.scale(wide / shapes.width, high / shapes.height);
  for (const [role, path] of shapes.paths) {
    pen.fillStyle = colors.get(role) ?? plain;
    pen.fill(path);
    pen.strokeStyle = pen.fillStyle;
    pen.lineWidth = 0.004;
    pen.stroke(path);
  }
  pen.restore();
}

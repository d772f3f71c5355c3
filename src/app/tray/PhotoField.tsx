import { useId, useRef, useState, type PointerEvent, type ReactNode } from 'react';
import type { LengthUnit } from '../../block/block.ts';
import type { NewPhoto } from '../../block/colour/photos.ts';
import { parseLength, printLength } from '../../measure/lengths.ts';
import { bad, good, type Result } from '../../measure/problem.ts';
import { compare, multiply, rational, toNumber, ZERO, type Rational } from '../../measure/rational.ts';
import { clothFrom, colourIn, cropped, WHOLE, type Crop } from './cloth-photo.ts';

/** A photo of the cloth, and how much of it that shows from left to right. */
export interface ChosenPhoto {
  readonly picture: NewPhoto;
  readonly across: Rational;
}

/** How much a photo shows before anybody says how much. */
const USUAL: Readonly<Record<LengthUnit, Rational>> = { in: rational(6), cm: rational(15) };
const MOST: Readonly<Record<LengthUnit, number>> = { in: 200, cm: 508 };

const SIDES = ['left', 'right', 'top', 'bottom'] as const;

/** @returns a width as it is typed, or one sentence about what is wrong */
function typedAcross(text: string, unit: LengthUnit): Result<Rational> {
  const read = parseLength(text);
  if (!read.ok) return read;
  const { value } = read.value;
  if ((read.value.unit ?? unit) !== unit) return bad('unit', `The block is in ${unit === 'in' ? 'inches' : 'centimetres'}: write how much the photo shows in that unit.`);
  const fits = compare(value, ZERO) > 0 && compare(value, rational(MOST[unit])) <= 0;
  return fits ? good(value) : bad('photo-across', `The photo must show more than 0 and at most ${printLength(rational(MOST[unit]), unit)} of cloth from left to right.`);
}

/** Lengths that cropping comes to are told in sixteenths of an inch or in millimetres. */
const PARTS: Readonly<Record<LengthUnit, number>> = { in: 16, cm: 10 };
/** What is left at least between two opposite sides, in hundredths. */
const LEFT = 5;

const opposite = { left: 'right', right: 'left', top: 'bottom', bottom: 'top' } as const;

/** Chooses a photo for a fabric, cuts it to size, says how much cloth it shows, and takes a colour from it. */
export function PhotoField({ photo, unit, choose, takeColour, busy }: {
  readonly photo: ChosenPhoto | null;
  readonly unit: LengthUnit;
  readonly choose: (photo: ChosenPhoto | null) => void;
  readonly takeColour: (color: string) => void;
  /** Told while a picture is read or cut. */
  readonly busy: (busy: boolean) => void;
}): ReactNode {
  const hint = useId();
  const [whole, setWhole] = useState<NewPhoto | null>(photo?.picture ?? null);
  const [crop, setCrop] = useState<Crop>(WHOLE);
  const [typed, setTyped] = useState(photo ? printLength(photo.across, unit, 'bare') : '');
  const [said, setSaid] = useState('');
  /** How much the uncut photo shows. */
  const uncut = useRef<Rational>(photo?.across ?? USUAL[unit]);
  const frame = useRef<HTMLDivElement>(null);
  const latest = useRef<ChosenPhoto | null>(photo);
  const wanted = useRef<{ readonly from: NewPhoto; readonly crop: Crop } | null>(null);
  const cutting = useRef(false);
  const chosen = (next: ChosenPhoto | null): void => {
    latest.current = next;
    choose(next);
  };
  /** Cuts as is wanted last, one after the other. */
  const work = async (): Promise<void> => {
    if (cutting.current) return;
    cutting.current = true;
    busy(true);
    for (let wish = wanted.current; wish; wish = wanted.current === wish ? null : wanted.current) {
      const done = await cropped(wish.from, wish.crop);
      if (wanted.current !== wish) continue;
      setSaid(done.ok ? '' : done.problem.sentence);
      if (done.ok) chosen({ picture: done.value, across: latest.current?.across ?? USUAL[unit] });
    }
    wanted.current = null;
    cutting.current = false;
    busy(false);
  };
  const take = async (file: File | undefined): Promise<void> => {
    if (!file) return;
    busy(true);
    const read = await clothFrom(file);
    busy(false);
    if (!read.ok) return setSaid(read.problem.sentence);
    setSaid('');
    setWhole(read.value);
    setCrop(WHOLE);
    const across = latest.current?.across ?? USUAL[unit];
    uncut.current = across;
    setTyped(printLength(across, unit, 'bare'));
    chosen({ picture: read.value, across });
    wanted.current = { from: read.value, crop: WHOLE };
    void work();
    const mean = await colourIn(read.value, null);
    if (mean) takeColour(mean);
  };
  const cut = (side: keyof Crop, value: number): void => {
    const shown = latest.current;
    if (!whole || !shown) return;
    const next = { ...crop, [side]: Math.max(0, Math.min(Math.round(value), 100 - LEFT - crop[opposite[side]])) };
    if (next[side] === crop[side]) return;
    setCrop(next);
    // What is left shows less cloth, at the same scale.
    const parts = PARTS[unit];
    const across = rational(Math.max(1, Math.round((toNumber(uncut.current) * (100 - next.left - next.right) * parts) / 100)), parts);
    setTyped(printLength(across, unit, 'bare'));
    chosen({ ...shown, across });
    wanted.current = { from: whole, crop: next };
    void work();
  };
  const drag = (side: keyof Crop) => (event: PointerEvent<HTMLElement>): void => {
    if (event.type === 'pointerdown') event.currentTarget.setPointerCapture(event.pointerId);
    if (!event.currentTarget.hasPointerCapture(event.pointerId) || !frame.current) return;
    const { left, right, top, bottom, width, height } = frame.current.getBoundingClientRect();
    const share = { left: (event.clientX - left) / width, right: (right - event.clientX) / width, top: (event.clientY - top) / height, bottom: (bottom - event.clientY) / height };
    cut(side, share[side] * 100);
  };
  const inset = `${crop.top}% ${crop.right}% ${crop.bottom}% ${crop.left}%`;
  return (
    <fieldset className="fabric-photo">
      <legend>Its photo</legend>
      <label className="field">
        <span>{photo ? 'Another picture of the cloth' : 'A picture of the cloth'}</span>
        <input type="file" accept="image/*" onChange={(event) => void take(event.target.files?.[0])} />
      </label>
      {said !== '' && (
        <p className="sheetlet-problem" role="alert">
          {said}
        </p>
      )}
      {photo && whole && (
        <>
          <div className="fabric-photo-frame" ref={frame}>
            <button
              type="button"
              className="fabric-photo-shown"
              aria-describedby={hint}
              aria-label="Take the fabric's colour from the photo"
              onClick={(event) => {
                const { left, top, width, height } = event.currentTarget.getBoundingClientRect();
                const byKeys = event.detail === 0;
                const place: readonly [number, number] = [(event.clientX - left) / width, (event.clientY - top) / height];
                void colourIn(byKeys ? photo.picture : whole, byKeys ? null : place).then((color) => color && takeColour(color));
              }}
            >
              <img src={`data:image/jpeg;base64,${whole.jpeg}`} alt="" />
            </button>
            <div className="fabric-photo-kept" style={{ inset }} aria-hidden="true" />
            {SIDES.map((side) => (
              <div key={side} className={`fabric-photo-side ${side}`} style={{ [side]: `${crop[side]}%` }} aria-hidden="true" onPointerDown={drag(side)} onPointerMove={drag(side)} />
            ))}
          </div>
          <p className="quiet" id={hint}>
            Drag its sides, or the sliders, to cut it. Press it where it has the fabric’s colour; by the keyboard its mean is taken.
          </p>
          <div className="fabric-photo-crop" role="group" aria-label="Cut off the photo">
            {SIDES.map((side) => (
              <label key={side}>
                <span>Cut off at the {side}</span>
                <input type="range" min={0} max={95} value={crop[side]} onChange={(event) => cut(side, Number(event.target.value))} />
              </label>
            ))}
          </div>
          <label className="field">
            <span>What is left shows from left to right ({unit === 'in' ? 'inches' : 'cm'})</span>
            <input
              type="text"
              inputMode="decimal"
              value={typed}
              onChange={(event) => {
                setTyped(event.target.value);
                const read = typedAcross(event.target.value, unit);
                setSaid(read.ok ? '' : read.problem.sentence);
                if (!read.ok) return;
                uncut.current = multiply(read.value, rational(100, 100 - crop.left - crop.right));
                chosen({ ...(latest.current ?? photo), across: read.value });
              }}
            />
          </label>
          <button type="button" className="plain framed" onClick={() => { setWhole(null); setCrop(WHOLE); wanted.current = null; chosen(null); }}>
            Without a photo
          </button>
        </>
      )}
    </fieldset>
  );
}

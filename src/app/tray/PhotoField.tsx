import { useId, useState, type ReactNode } from 'react';
import type { LengthUnit } from '../../block/block.ts';
import type { NewPhoto } from '../../block/colour/photos.ts';
import { parseLength, printLength } from '../../measure/lengths.ts';
import { bad, good, type Result } from '../../measure/problem.ts';
import { compare, rational, ZERO, type Rational } from '../../measure/rational.ts';
import { photoFrom } from '../publishing/photo-files.ts';
import { colourIn, cropped, WHOLE, type Crop } from './cloth-photo.ts';

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

/** Chooses a photo for a fabric, cuts it to size, says how much cloth it shows, and takes a colour from it. */
export function PhotoField({ photo, unit, choose, takeColour }: {
  readonly photo: ChosenPhoto | null;
  readonly unit: LengthUnit;
  readonly choose: (photo: ChosenPhoto | null) => void;
  readonly takeColour: (color: string) => void;
}): ReactNode {
  const hint = useId();
  const [whole, setWhole] = useState<NewPhoto | null>(photo?.picture ?? null);
  const [crop, setCrop] = useState<Crop>(WHOLE);
  const [typed, setTyped] = useState(photo ? printLength(photo.across, unit, 'bare') : '');
  const [said, setSaid] = useState('');
  const take = async (file: File | undefined): Promise<void> => {
    if (!file) return;
    const read = await photoFrom(file, 'photo');
    if (!read.ok) return setSaid(read.problem.sentence);
    setSaid('');
    setWhole(read.value);
    setCrop(WHOLE);
    const across = photo?.across ?? USUAL[unit];
    setTyped(printLength(across, unit, 'bare'));
    choose({ picture: read.value, across });
    const mean = await colourIn(read.value, null);
    if (mean) takeColour(mean);
  };
  const cut = async (next: Crop): Promise<void> => {
    setCrop(next);
    if (!whole || !photo) return;
    const done = await cropped(whole, next);
    if (done.ok) choose({ picture: done.value, across: photo.across });
    setSaid(done.ok ? '' : done.problem.sentence);
  };
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
      {photo && (
        <>
          <button
            type="button"
            className="fabric-photo-shown"
            aria-describedby={hint}
            aria-label="Take the fabric's colour from the photo"
            onClick={(event) => {
              const { left, top, width, height } = event.currentTarget.getBoundingClientRect();
              const pressed: readonly [number, number] | null = event.detail === 0 ? null : [(event.clientX - left) / width, (event.clientY - top) / height];
              void colourIn(photo.picture, pressed).then((color) => color && takeColour(color));
            }}
          >
            <img src={`data:image/jpeg;base64,${photo.picture.jpeg}`} alt="" />
          </button>
          <p className="quiet" id={hint}>
            Press the photo where it has the fabric's colour; by the keyboard its mean is taken.
          </p>
          <label className="field">
            <span>It shows from left to right ({unit === 'in' ? 'inches' : 'cm'})</span>
            <input
              type="text"
              inputMode="decimal"
              value={typed}
              onChange={(event) => {
                setTyped(event.target.value);
                const read = typedAcross(event.target.value, unit);
                setSaid(read.ok ? '' : read.problem.sentence);
                if (read.ok) choose({ ...photo, across: read.value });
              }}
            />
          </label>
          <div className="fabric-photo-crop" role="group" aria-label="Cut off the photo">
            {SIDES.map((side) => (
              <label key={side}>
                <span>Cut off at the {side}</span>
                <input type="range" min={0} max={45} value={Math.round(crop[side] * 100)} onChange={(event) => void cut({ ...crop, [side]: Number(event.target.value) / 100 })} />
              </label>
            ))}
          </div>
          <button type="button" className="plain framed" onClick={() => { setWhole(null); choose(null); }}>
            Without a photo
          </button>
        </>
      )}
    </fieldset>
  );
}

import { ImagePlus, Trash2 } from 'lucide-react';
import { useId, useRef, useState, type ReactNode } from 'react';
import type { Block } from '../../block/block.ts';
import type { Lie } from '../../canvas/tracing.ts';
import { toNumber } from '../../measure/rational.ts';
import { FileChooser } from '../FileChooser.tsx';
import { useStore } from '../store.ts';
import { changeLaid, setLaying, takeAway, takePicture, underlay } from './underlay.ts';

/** A picture under the cloth, to be traced: choosing it, and how it lies. */
export default function UnderTheCloth({ block }: { readonly block: Block }): ReactNode {
  const { laid, laying, problem } = useStore(underlay, (all) => all);
  const chooser = useRef<HTMLInputElement>(null);
  const coverId = useId();
  const width = toNumber(block.finished.width);
  const height = toNumber(block.finished.height);
  const { unit } = block.finished;
  const lay = (part: Partial<Lie>): void => laid! && changeLaid({ lie: { ...laid.lie, ...part } });
  const words = unit === 'in' ? 'in.' : 'cm';
  return (
    <div className="underneath">
      {!laid && <p>Lay a photograph or a scan of a sketch under the cloth, and paint over it. It stays in this browser and is not part of the block.</p>}
      {problem && (
        <p className="sheetlet-problem" role="alert">
          {problem}
        </p>
      )}
      {laid && (
        <>
          <label className="showable">
            <input type="checkbox" checked={laid.shown} onChange={(event) => changeLaid({ shown: event.target.checked })} />
            <span>Show the picture</span>
          </label>
          <div className="cover">
            <label htmlFor={coverId}>Cloth over it</label>
            <input
              id={coverId}
              type="range"
              min={0}
              max={100}
              step={5}
              value={Math.round(laid.cover * 100)}
              aria-valuetext={`${Math.round(laid.cover * 100)} percent`}
              onChange={(event) => changeLaid({ cover: Number(event.target.value) / 100 })}
            />
          </div>
          <div className="lie">
            <NumberField label={`Middle across, ${words}`} value={laid.lie.x * width} step={width / 48} take={(x) => lay({ x: x / width })} />
            <NumberField label={`Middle down, ${words}`} value={laid.lie.y * height} step={height / 48} take={(y) => lay({ y: y / height })} />
            <NumberField label={`Wide, ${words}`} value={laid.lie.width * width} step={width / 48} least={width / 50} take={(wide) => lay({ width: wide / width })} />
            <NumberField label="Turned, degrees" value={laid.lie.turn} step={0.5} take={(turn) => lay({ turn })} />
          </div>
        </>
      )}
      <div className="underneath-acts">
        {laid?.shown && (
          <button type="button" className="plain framed" aria-pressed={laying} onClick={() => setLaying(!laying)}>
            Move it by hand
          </button>
        )}
        <button type="button" className="plain framed" onClick={() => chooser.current?.click()}>
          <ImagePlus size={18} aria-hidden="true" /> {laid ? 'Another picture' : 'Choose a picture'}
        </button>
        {laid && (
          <button type="button" className="plain framed" onClick={takeAway}>
            <Trash2 size={18} aria-hidden="true" /> Take it away
          </button>
        )}
        <FileChooser
          chooser={chooser}
          accept="image/png,image/jpeg,image/webp"
          label="Choose a picture to trace"
          take={(file) => void takePicture(file)}
        />
      </div>
    </div>
  );
}

/** A number that can be typed or stepped; while it is typed it is left as it is. */
function NumberField({ label, value, step, least, take }: {
  readonly label: string;
  readonly value: number;
  readonly step: number;
  readonly least?: number;
  readonly take: (value: number) => void;
}): ReactNode {
  const [typed, setTyped] = useState<string | null>(null);
  const round = (number: number): string => String(Math.round(number * 100) / 100);
  return (
    <label className="lie-field">
      <span>{label}</span>
      <input
        type="text"
        inputMode="decimal"
        value={typed ?? round(value)}
        onChange={(event) => {
          setTyped(event.target.value);
          const number = Number(event.target.value.replace(',', '.'));
          if (event.target.value.trim() !== '' && Number.isFinite(number) && number >= (least ?? -1000) && number <= 1000) take(number);
        }}
        onKeyDown={(event) => {
          if (event.key !== 'ArrowUp' && event.key !== 'ArrowDown') return;
          event.preventDefault();
          setTyped(null);
          take(Math.max(least ?? -1000, value + (event.key === 'ArrowUp' ? step : -step)));
        }}
        onBlur={() => setTyped(null)}
      />
    </label>
  );
}

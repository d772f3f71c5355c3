import { useId, useState, type ReactNode } from 'react';
import type { Block, LengthUnit } from '../../block/block.ts';
import { resize } from '../../block/sizing.ts';
import { typedLength, typedSize } from '../../block/typed-size.ts';
import { parseLength, printLength } from '../../measure/lengths.ts';
import type { Doing } from './doing.ts';
import { Notice } from './Notice.tsx';

interface Typed {
  readonly width: string;
  readonly height: string;
  readonly unit: LengthUnit;
}

/** @returns a length that was typed in one unit, in the other; as it stands where it is none or has a unit of its own */
function inOther(text: string, from: LengthUnit, into: LengthUnit): string {
  const typed = parseLength(text);
  if (from === into || !typed.ok || typed.value.unit !== null) return text;
  const length = typedLength(`${text} ${from}`, into);
  return length.ok ? printLength(length.value, into, 'bare') : text;
}

/** The finished size, typed as people type lengths; choosing the other unit turns the figures into it. */
export function FinishedSize({ block, doing }: { readonly block: Block; readonly doing: Doing }): ReactNode {
  const { finished } = block;
  const noticeId = useId();
  const [typed, setTyped] = useState<Typed | null>(null);
  const shown: Typed = typed ?? {
    width: printLength(finished.width, finished.unit, 'bare'),
    height: printLength(finished.height, finished.unit, 'bare'),
    unit: finished.unit,
  };
  const field = (side: 'width' | 'height'): ReactNode => (
    <label className="field">
      <span>{side === 'width' ? 'Width' : 'Height'}</span>
      <input
        type="text"
        value={shown[side]}
        autoComplete="off"
        aria-describedby={noticeId}
        aria-invalid={(typed !== null && doing.said.some(({ place }) => place === 'size') && !parseLength(shown[side]).ok) || undefined}
        onChange={(event) => setTyped({ ...shown, [side]: event.target.value })}
      />
    </label>
  );
  return (
    <form
      className="grid-part"
      onSubmit={(event) => {
        event.preventDefault();
        const done = doing.change('size', 'finished size', (now) => {
          const size = typedSize(shown.width, shown.height, shown.unit);
          return size.ok ? resize(now, size.value) : size;
        });
        if (done) setTyped(null);
      }}
    >
      <h3>Finished size</h3>
      <div className="grid-fields">
        {field('width')}
        {field('height')}
        <label className="field">
          <span>In</span>
          <select
            value={shown.unit}
            onChange={(event) => {
              const unit = event.target.value as LengthUnit;
              setTyped({ width: inOther(shown.width, shown.unit, unit), height: inOther(shown.height, shown.unit, unit), unit });
            }}
          >
            <option value="in">inches</option>
            <option value="cm">centimetres</option>
          </select>
        </label>
        <button type="submit" className="plain framed">
          Set the size
        </button>
      </div>
      <Notice id={noticeId} place="size" said={doing.said} />
    </form>
  );
}

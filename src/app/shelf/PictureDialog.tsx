import { useEffect, useMemo, useState, type ReactNode } from 'react';
import type { Block } from '../../block/block.ts';
import { blockSvg, dotsOf, MAX_DOTS, type PictureChoices } from '../../pattern/block-svg.ts';
import type { Pattern } from '../../pattern/pattern.ts';
import { fileNameOf } from '../block-files.ts';
import { handOver } from '../device-files.ts';
import { say } from '../notice.ts';
import { Area } from '../sheet/Length.tsx';
import { Sheetlet } from '../Sheetlet.tsx';
import { pngPicture } from './png-picture.ts';

/** Dots per inch that printers are usually given. */
const USUAL = 300;

const LINES: readonly (readonly [PictureChoices['lines'], string])[] = [
  ['none', 'none'],
  ['grid', 'the grid'],
  ['seams', 'the seams'],
];

/** Asks for a picture of the drawing to take away, as a drawing (SVG) or in dots (PNG). */
export function PictureDialog({ block, pattern, alarm, close }: {
  readonly block: Block;
  /** The pattern of this very drawing, or null while there is none: then no seams can be shown. */
  readonly pattern: Pattern | null;
  readonly alarm: (sentence: string) => void;
  readonly close: () => void;
}): ReactNode {
  const [kind, setKind] = useState<'svg' | 'png'>('svg');
  const [choices, setChoices] = useState<PictureChoices>({ ground: true, lines: 'none' });
  const [perInch, setPerInch] = useState(String(USUAL));
  const { finished } = block;
  const asked = Number(perInch);
  const dots = asked > 0 ? dotsOf(finished, asked) : null;
  const oneInch = dotsOf(finished, 1000);
  const drawn = useMemo(() => blockSvg(block, choices, pattern), [block, choices, pattern]);
  const [address, setAddress] = useState<string | null>(null);
  useEffect(() => {
    if (!drawn.ok) return undefined;
    const made = URL.createObjectURL(new Blob([drawn.value], { type: 'image/svg+xml' }));
    setAddress(made);
    return () => URL.revokeObjectURL(made);
  }, [drawn]);

  const take = async (svg: string): Promise<void> => {
    const picture = kind === 'svg' ? new Blob([svg], { type: 'image/svg+xml' }) : dots && (await pngPicture(svg, dots));
    const name = fileNameOf(block, `.${kind}`);
    if (!picture) return alarm('This browser cannot draw a picture that large; ask for fewer dots, or take the drawing (SVG).');
    handOver(picture, name);
    say(`${name} is among your downloads.`);
  };

  const problem = !drawn.ok ? drawn.problem.sentence : kind === 'png' && !dots ? 'Say how many dots, as a number above 0.' : null;
  return (
    <Sheetlet
      title="A picture to take away"
      doneWords="Take it"
      problem={problem}
      close={close}
      done={() => {
        if (problem !== null || !drawn.ok) return false;
        void take(drawn.value);
        return true;
      }}
    >
      <div className="take-picture">
        <div className="take-preview" data-clear={!choices.ground || undefined}>
          {address && <img src={address} alt={`The block ${block.name} as the picture shows it`} />}
        </div>
        <div>
          <fieldset className="take-kind">
            <legend>As</legend>
            <label>
              <input type="radio" name="kind" checked={kind === 'svg'} onChange={() => setKind('svg')} /> a drawing with sharp edges at any size (SVG)
            </label>
            <label>
              <input type="radio" name="kind" checked={kind === 'png'} onChange={() => setKind('png')} /> dots (PNG)
            </label>
          </fieldset>
          <label className="field">
            <span>Lines</span>
            <select
              value={choices.lines}
              onChange={(event) => setChoices({ ...choices, lines: event.target.value as PictureChoices['lines'] })}
            >
              {LINES.map(([lines, words]) => (
                <option key={lines} value={lines} disabled={lines === 'seams' && !pattern}>
                  {words}
                </option>
              ))}
            </select>
          </label>
          <label className="take-check">
            <input
              type="checkbox"
              checked={!choices.ground}
              onChange={(event) => setChoices({ ...choices, ground: !event.target.checked })}
            />{' '}
            clear where only ground is
          </label>
          {kind === 'png' && (
            <div className="fields">
              <label className="field">
                <span>Dots per inch</span>
                <input type="number" min={1} max={2400} step="any" value={perInch} onChange={(event) => setPerInch(event.target.value)} />
              </label>
              <label className="field">
                <span>Dots across</span>
                <input
                  type="number"
                  min={1}
                  max={MAX_DOTS}
                  value={dots?.width ?? ''}
                  onChange={(event) => {
                    const wide = Number(event.target.value);
                    // As many decimals as give this very number of dots again.
                    setPerInch(wide > 0 ? String(Math.round((wide * oneInch.perInch * 1000) / oneInch.width) / 1000) : '');
                  }}
                />
              </label>
            </div>
          )}
        </div>
      </div>
      <p className="quiet" role="status">
        Printed at its own size it measures <Area size={finished} unit={finished.unit} />
        {kind === 'png' && dots && `, ${dots.width} × ${dots.height} dots${dots.perInch < asked ? ', the most that works everywhere' : ''}`}.
      </p>
    </Sheetlet>
  );
}

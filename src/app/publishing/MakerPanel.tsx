import { useRef, useState, type ReactNode } from 'react';
import type { Block } from '../../block/block.ts';
import { MAX_NAME, MAX_SAID } from '../../block/limits.ts';
import { setSubtitle } from '../../block/publishing.ts';
import { formatHouseStyle, parseHouseStyle } from '../../files/house-style-file.ts';
import type { HouseStyle } from '../../pattern/house-style.ts';
import { handOver } from '../device-files.ts';
import { FileChooser } from '../FileChooser.tsx';
import type { Acts } from '../table.ts';
import { styleWith } from './house-style-kept.ts';
import { photoFrom } from './photo-files.ts';
import { TypedLine } from './TypedLine.tsx';

/** Whose pattern it is: name, licence, foot and logo; and the house style as a file. */
export function MakerPanel({ block, style, change, setStyle, say }: {
  readonly block: Block;
  readonly style: HouseStyle;
  readonly change: Acts['change'];
  readonly setStyle: (style: HouseStyle) => void;
  readonly say: (words: string) => void;
}): ReactNode {
  const [problem, setProblem] = useState<string | null>(null);
  const logo = useRef<HTMLInputElement>(null);
  const file = useRef<HTMLInputElement>(null);
  const put = (name: 'maker' | 'licence' | 'foot') => (text: string): string | null => {
    const next = styleWith(style, name, text);
    if (next.ok) setStyle(next.value);
    return next.ok ? null : next.problem.sentence;
  };
  const takeLogo = async (given: File): Promise<void> => {
    const read = await photoFrom(given, 'logo');
    setProblem(read.ok ? null : read.problem.sentence);
    if (read.ok) setStyle({ ...style, logo: { id: 'logo', ...read.value } });
  };
  const takeStyle = async (given: File): Promise<void> => {
    const read = parseHouseStyle(await given.text());
    setProblem(read.ok ? null : read.problem.sentence);
    if (!read.ok) return;
    setStyle(read.value);
    say('The house style is that of the file now.');
  };
  const saveStyle = (): void => handOver(new Blob([formatHouseStyle(style)], { type: 'application/json' }), 'house-style.json');
  const subtitle = (text: string): string | null => {
    const made = setSubtitle(block, text);
    if (!made.ok) return made.problem.sentence;
    change(text.trim() === '' ? 'took the subtitle away' : 'wrote the subtitle', (now) => setSubtitle(now, text));
    return null;
  };
  return (
    <>
      <TypedLine words="Subtitle of this pattern" value={block.publication?.subtitle ?? ''} most={MAX_NAME} take={subtitle} />
      <h3>In all my patterns</h3>
      <TypedLine words="Maker" value={style.maker ?? ''} most={MAX_NAME} take={put('maker')} hint="On the cover." />
      <TypedLine words="What others may do with it" value={style.licence ?? ''} most={MAX_SAID} rows={3} take={put('licence')} />
      <TypedLine words="At the foot of every page" value={style.foot ?? ''} most={MAX_NAME} take={put('foot')} />
      <div className="room-logo">
        {style.logo && <img src={`data:image/jpeg;base64,${style.logo.jpeg}`} alt="Your logo" />}
        <div className="room-acts">
          <button type="button" className="plain framed" onClick={() => logo.current?.click()}>
            {style.logo ? 'Another logo' : 'Choose a logo'}
          </button>
          {style.logo && (
            <button type="button" className="plain" onClick={() => setStyle(logoless(style))}>
              Take it out
            </button>
          )}
        </div>
        <FileChooser chooser={logo} accept="image/*" label="Choose a logo" take={(given) => void takeLogo(given)} />
      </div>
      {problem !== null && (
        <p className="sheetlet-problem" role="alert">
          {problem}
        </p>
      )}
      <div className="room-acts">
        <button type="button" className="plain framed" onClick={saveStyle}>
          Save the house style as a file
        </button>
        <button type="button" className="plain framed" onClick={() => file.current?.click()}>
          Open one
        </button>
        <FileChooser chooser={file} accept=".json,application/json" label="Open a house style" take={(given) => void takeStyle(given)} />
      </div>
    </>
  );
}

const logoless = ({ logo: _, ...style }: HouseStyle): HouseStyle => style;

import { useState, type ReactNode } from 'react';
import type { LengthUnit } from '../../block/block.ts';
import { parseLength } from '../../measure/lengths.ts';
import { toNumber } from '../../measure/rational.ts';
import { BAR, barPixels, measureScreen } from './true-size.ts';

/** A bar on the screen, and how long a ruler says it is. */
export default function MeasureScreen({ unit, done }: { readonly unit: LengthUnit; readonly done: () => void }): ReactNode {
  const [typed, setTyped] = useState('');
  const [problem, setProblem] = useState<string | null>(null);
  const take = (): void => {
    const read = parseLength(typed);
    if (!read.ok) return setProblem(read.problem.sentence);
    if (measureScreen(toNumber(read.value.value), read.value.unit ?? unit, unit)) done();
    else setProblem(`The bar cannot be ${typed} long on any screen: lay a ruler on it and type what it shows.`);
  };
  return (
    <form
      className="measure-screen"
      onSubmit={(event) => {
        event.preventDefault();
        take();
      }}
    >
      <p>Screens differ. Lay a ruler on this bar, once for this screen, and the block is as large as it will be sewn.</p>
      <div className="bar" style={{ width: `${barPixels(unit)}px` }} aria-hidden="true" />
      <div className="measure-line">
        <label>
          The bar is{' '}
          <input
            type="text"
            className="short"
            value={typed}
            placeholder={unit === 'in' ? '2 1/2' : String(BAR.cm)}
            onChange={(event) => setTyped(event.target.value)}
            autoFocus
          />{' '}
          {unit === 'in' ? 'in.' : 'cm'} long
        </label>
        <button type="submit" className="plain framed">
          Take this measure
        </button>
      </div>
      {problem && (
        <p className="sheetlet-problem" role="alert">
          {problem}
        </p>
      )}
    </form>
  );
}

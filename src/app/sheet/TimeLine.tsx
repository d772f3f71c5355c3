import { lazy, useEffect, useState, type ReactNode } from 'react';
import type { Pattern } from '../../pattern/pattern.ts';
import { Later } from '../Later.tsx';
import { DialogButton } from './DialogButton.tsx';

const TimeSaid = lazy(() => import('./figures/TimeSaid.tsx'));
const FiguresDialog = lazy(() => import('./figures/FiguresDialog.tsx'));

/** How long everything else goes first when a sheet is new, in ms. */
const AFTER = 1500;

/** About how long the work takes, told when the rest of the sheet stands, and the figures by which to choose. */
export function TimeLine({ pattern, alarm }: { readonly pattern: Pattern; readonly alarm: (sentence: string) => void }): ReactNode {
  const [due, setDue] = useState(false);
  useEffect(() => {
    const timer = setTimeout(() => setDue(true), AFTER);
    return () => clearTimeout(timer);
  }, []);
  return (
    <div className="sheet-time">
      <span className="quiet">
        {due && (
          <Later failed={() => undefined}>
            <TimeSaid pattern={pattern} />
          </Later>
        )}
      </span>
      <DialogButton words="Figures and time" alarm={alarm}>
        {(close) => <FiguresDialog pattern={pattern} close={close} />}
      </DialogButton>
    </div>
  );
}

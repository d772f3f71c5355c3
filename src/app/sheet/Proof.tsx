import { lazy, type ReactNode } from 'react';
import type { Pattern } from '../../pattern/pattern.ts';
import { DialogButton } from './DialogButton.tsx';

const WatchDialog = lazy(() => import('./watch/WatchDialog.tsx'));

/** What the virtual sewing found: one calm line when the pattern holds, every fault out loud when it does not. */
export function ProofLine({ pattern, colors, alarm }: {
  readonly pattern: Pattern;
  readonly colors: ReadonlyMap<string, string>;
  readonly alarm: (sentence: string) => void;
}): ReactNode {
  const { proof } = pattern;
  if (proof.holds) {
    return (
      <div className="proof" data-proof="holds">
        <svg viewBox="0 0 24 24" className="proof-mark" aria-hidden="true" focusable="false">
          <circle cx="12" cy="12" r="10.500" />
          <path d="m7 12.500 3.500 3.500 6.500-7.500" />
        </svg>
        <p>
          Sewn back in exact arithmetic: {proof.seams} {proof.seams === 1 ? 'seam' : 'seams'}, all straight, equal to the drawing.
        </p>
        {proof.seams > 0 && (
          <DialogButton words="Watch it sewn" alarm={alarm}>
            {(close) => <WatchDialog pattern={pattern} colors={colors} close={close} />}
          </DialogButton>
        )}
      </div>
    );
  }
  return (
    <div className="proof-fails" role="alert" data-proof="fails">
      <p>
        <strong>Do not cut yet: sewn back in exact arithmetic, this pattern is not the drawing.</strong>
      </p>
      <ul>
        {proof.faults.map((fault, i) => (
          <li key={i}>{fault}</li>
        ))}
      </ul>
    </div>
  );
}

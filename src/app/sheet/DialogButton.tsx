import { useState, type ReactNode } from 'react';
import { createPortal } from 'react-dom';
import { Later } from '../Later.tsx';

/** A button that lays a sheet over the page, which is fetched when it is first asked for. */
export function DialogButton({ words, className = 'plain framed', alarm, children }: {
  /** What the button says. */
  readonly words: string;
  readonly className?: string;
  /** Told in one sentence where the sheet cannot be fetched. */
  readonly alarm: (sentence: string) => void;
  readonly children: (close: () => void) => ReactNode;
}): ReactNode {
  const [asked, setAsked] = useState(false);
  const close = (): void => setAsked(false);
  return (
    <>
      <button type="button" className={className} aria-haspopup="dialog" onClick={() => setAsked(true)}>
        {words}
      </button>
      {asked && createPortal(
        <Later
          failed={() => {
            alarm('That part of the sheet could not be fetched; check that the app is still being served, then load the page again.');
            close();
          }}
        >
          {children(close)}
        </Later>,
        document.body,
      )}
    </>
  );
}

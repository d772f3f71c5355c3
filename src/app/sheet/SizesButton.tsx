import { lazy, useState, type ReactNode } from 'react';
import { createPortal } from 'react-dom';
import type { Pattern } from '../../pattern/pattern.ts';
import { Later } from '../Later.tsx';
import type { Acts } from '../table.ts';

const Sizes = lazy(() => import('./sizes/Sizes.tsx'));

/** Asks for the block at other finished sizes. */
export function SizesButton({ pattern, acts: { change, alarm } }: { readonly pattern: Pattern; readonly acts: Pick<Acts, 'change' | 'alarm'> }): ReactNode {
  const [asked, setAsked] = useState(false);
  const close = (): void => setAsked(false);
  return (
    <>
      <button type="button" className="plain framed sizes-button" aria-haspopup="dialog" onClick={() => setAsked(true)}>
        Other sizes
      </button>
      {asked && createPortal(
        <Later
          failed={() => {
            alarm('That part of the sheet could not be fetched; check that the app is still being served, then load the page again.');
            close();
          }}
        >
          <Sizes pattern={pattern} change={change} close={close} />
        </Later>,
        document.body,
      )}
    </>
  );
}

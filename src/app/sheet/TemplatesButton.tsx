import { lazy, useState, type ReactNode } from 'react';
import { createPortal } from 'react-dom';
import type { Pattern } from '../../pattern/pattern.ts';
import { Later } from '../Later.tsx';
import type { Acts } from '../table.ts';

const Templates = lazy(() => import('./templates/Templates.tsx'));

/** Asks for the templates of a pattern at full size. */
export function TemplatesButton({ pattern, acts: { alarm } }: { readonly pattern: Pattern; readonly acts: Pick<Acts, 'alarm'> }): ReactNode {
  const [asked, setAsked] = useState(false);
  const close = (): void => setAsked(false);
  return (
    <>
      <button type="button" className="plain framed" aria-haspopup="dialog" onClick={() => setAsked(true)}>
        Print templates
      </button>
      {asked && createPortal(
        <Later
          failed={() => {
            alarm('That part of the sheet could not be fetched; check that the app is still being served, then load the page again.');
            close();
          }}
        >
          <Templates pattern={pattern} alarm={alarm} close={close} />
        </Later>,
        document.body,
      )}
    </>
  );
}

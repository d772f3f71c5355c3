import { lazy, type ReactNode } from 'react';
import type { Pattern } from '../../pattern/pattern.ts';
import type { Acts } from '../table.ts';
import { DialogButton } from './DialogButton.tsx';

const Sizes = lazy(() => import('./sizes/Sizes.tsx'));

/** Asks for the block at other finished sizes. */
export function SizesButton({ pattern, acts: { change, alarm } }: { readonly pattern: Pattern; readonly acts: Pick<Acts, 'change' | 'alarm'> }): ReactNode {
  return (
    <DialogButton words="Other sizes" className="plain framed sizes-button" alarm={alarm}>
      {(close) => <Sizes pattern={pattern} change={change} close={close} />}
    </DialogButton>
  );
}

import { lazy, type ReactNode } from 'react';
import type { Pattern } from '../../pattern/pattern.ts';
import { DialogButton } from './DialogButton.tsx';

const Templates = lazy(() => import('./templates/Templates.tsx'));

/** Asks for the templates of a pattern at full size. */
export function TemplatesButton({ pattern, alarm }: { readonly pattern: Pattern; readonly alarm: (sentence: string) => void }): ReactNode {
  return (
    <DialogButton words="Print templates" alarm={alarm}>
      {(close) => <Templates pattern={pattern} alarm={alarm} close={close} />}
    </DialogButton>
  );
}

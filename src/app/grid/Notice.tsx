import type { ReactNode } from 'react';
import { Prose } from '../sheet/Length.tsx';
import type { Said } from './doing.ts';

/** What is said beside a part of the panel; its place is there before, so that it is read aloud when it comes. */
export function Notice({ id, place, said }: { readonly id?: string; readonly place: string; readonly said: readonly Said[] }): ReactNode {
  const here = said.find((each) => each.place === place);
  return (
    <div role="alert" id={id}>
      {here && (
        <p className="grid-notice" data-kind={here.kind}>
          <Prose text={here.sentence} />
        </p>
      )}
    </div>
  );
}

import type { ReactNode } from 'react';
import type { Fabric } from '../../block/block.ts';
import { directionNotes } from '../../pattern/directions.ts';
import type { Pattern } from '../../pattern/pattern.ts';
import { Prose } from './Length.tsx';

/** Below a fabric whose print has an up and a down: where it does not come to stand upright by itself. */
export default function Directions({ fabric, pattern }: { readonly fabric: Fabric; readonly pattern: Pattern }): ReactNode {
  const notes = directionNotes(fabric, pattern);
  return (
    <div className="directions">
      <p>Its print has an up and a down: no piece is turned on the cloth.</p>
      {notes.map((note) => (
        <p key={note}>
          <Prose text={note} />
        </p>
      ))}
    </div>
  );
}

import type { ReactNode } from 'react';
import { TriangleAlert } from 'lucide-react';
import type { Pattern } from '../../pattern/pattern.ts';
import { Prose } from './Length.tsx';

/** What a maker should know before cutting. */
export function Notes({ pattern: { notes } }: { readonly pattern: Pattern }): ReactNode {
  if (notes.length === 0) return null;
  return (
    <section aria-labelledby="notes-title" className="part notes">
      <h3 id="notes-title">Before you cut</h3>
      <ul>
        {notes.map((note, i) => (
          <li key={i}>
            <Prose text={note} />
          </li>
        ))}
      </ul>
    </section>
  );
}

/** How to keep all ten fingers. */
export function Cautions({ pattern }: { readonly pattern: Pattern }): ReactNode {
  if (pattern.cautions.length === 0) return null;
  return (
    <aside aria-labelledby="cautions-title" className="cautions">
      <h3 id="cautions-title">
        <TriangleAlert aria-hidden="true" size={20} /> Take care
      </h3>
      <ul>
        {pattern.cautions.map((caution, i) => (
          <li key={i}>{caution}</li>
        ))}
      </ul>
    </aside>
  );
}

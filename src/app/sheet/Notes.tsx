import { useId, type ReactNode } from 'react';
import { TriangleAlert } from 'lucide-react';
import type { Pattern } from '../../pattern/pattern.ts';
import { Prose } from './Length.tsx';
import { Lamp, Line } from './Line.tsx';

/** What a maker should know before cutting; what spoils the work comes first, and shows where. */
export function Notes({ pattern: { warnings, notes } }: { readonly pattern: Pattern }): ReactNode {
  if (warnings.length + notes.length === 0) return null;
  return (
    <section aria-labelledby="notes-title" className="part notes">
      <h3 id="notes-title">Before you cut</h3>
      <ul>
        {warnings.map(({ code, says }, i) => (
          <Line key={code + i} name={`warning ${i}`} className="warning">
            <Lamp name={`warning ${i}`} says={`Show where: ${says}`} className="warning-lamp">
              <TriangleAlert aria-hidden="true" size={18} />
            </Lamp>
            <span>
              <Prose text={says} />
            </span>
          </Line>
        ))}
        {notes.map((note, i) => (
          <li key={i}>
            <Prose text={note} />
          </li>
        ))}
      </ul>
    </section>
  );
}

/** How to keep all ten fingers, and the iron from the cloth. */
export function Cautions({ said, title }: { readonly said: readonly string[]; readonly title: string }): ReactNode {
  const titleId = useId();
  if (said.length === 0) return null;
  return (
    <aside aria-labelledby={titleId} className="cautions">
      <h3 id={titleId}>
        <TriangleAlert aria-hidden="true" size={20} /> {title}
      </h3>
      <ul>
        {said.map((caution, i) => (
          <li key={i}>{caution}</li>
        ))}
      </ul>
    </aside>
  );
}

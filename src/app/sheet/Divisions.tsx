import { useEffect, useState, type ReactNode } from 'react';
import { piecesMore } from '../../pattern/divisions.ts';
import type { Pattern } from '../../pattern/pattern.ts';
import { showDivisions } from '../lights.ts';
import { Prose } from './Length.tsx';
import { Lamp, Line } from './Line.tsx';

/** So many lines are unfolded at first; more are folded away. */
const SHOWN = 3;

/** Where seams run through one fabric, and what that costs. */
export function Divisions({ pattern: { divisions } }: { readonly pattern: Pattern }): ReactNode {
  // What she folded or unfolded herself stays so.
  const [asked, setAsked] = useState<boolean | null>(null);
  const open = asked ?? divisions.length <= SHOWN;
  useEffect(() => {
    showDivisions(open);
    return () => showDivisions(false);
  }, [open]);
  const more = piecesMore(divisions);
  return (
    <section aria-labelledby="divisions-title" className="part divisions">
      <h3 id="divisions-title">Seams through one fabric</h3>
      <p className="quiet">
        {more} {more === 1 ? 'piece' : 'pieces'} and as many seams more than there are areas drawn, for the sake of straight seams and equal units.
      </p>
      <details open={open}>
        <summary
          onClick={(event) => {
            event.preventDefault();
            setAsked(!open);
          }}
        >
          Where they run
        </summary>
        <ul>
          {divisions.map(({ says, more: here }, i) => (
            <Line key={i} name={`division ${i}`} className="division">
              <Lamp name={`division ${i}`} says={`Show where: ${says}`} className="division-lamp">
                +{here}
              </Lamp>
              <span>
                <Prose text={says} />
              </span>
            </Line>
          ))}
        </ul>
      </details>
    </section>
  );
}

import type { CSSProperties, ReactNode } from 'react';
import type { Fabric } from '../../block/block.ts';
import { several } from '../../measure/words.ts';
import type { Pattern } from '../../pattern/pattern.ts';
import { cutText } from '../../pattern/size-words.ts';
import { Prose } from '../sheet/Length.tsx';

/** What to buy and to cut, fabric by fabric. */
export function CutList({ pattern }: { readonly pattern: Pattern }): ReactNode {
  const { unit } = pattern.block;
  const lists: readonly (readonly [fabric: Fabric, get: string])[] = [
    ...pattern.fabrics.map(({ fabric, buy }) => [fabric, buy === 'nothing' ? 'nothing to buy' : `buy ${buy}`] as const),
    ...pattern.scraps.map((fabric) => [fabric, `scraps of ${several(fabric.scraps!.prints, 'print')}`] as const),
  ];
  return (
    <div className="cut-list">
      {!pattern.proof.holds && <p role="alert">Do not cut yet: sewn back in exact arithmetic, this is not the drawing.</p>}
      {lists.map(([fabric, get]) => (
        <section key={fabric.id} aria-label={fabric.name}>
          <h4>
            <span className="chip" style={{ '--cloth': fabric.color } as CSSProperties} aria-hidden="true" /> {fabric.name}{' '}
            <span className="quiet">
              <Prose text={get} />
            </span>
          </h4>
          <ul>
            {pattern.cuts
              .filter((cut) => cut.fabric === fabric.id)
              .map((cut) => (
                <li key={cut.id}>
                  <Prose text={cutText(cut, unit)} />
                </li>
              ))}
          </ul>
        </section>
      ))}
    </div>
  );
}

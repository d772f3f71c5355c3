import type { ReactNode } from 'react';
import type { Fabric } from '../../block/block.ts';
import { several } from '../../measure/words.ts';
import type { Pattern } from '../../pattern/pattern.ts';
import { FabricCuts } from '../sheet/FabricCuts.tsx';

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
          <FabricCuts fabric={fabric} get={get} cuts={pattern.cuts.filter((cut) => cut.fabric === fabric.id)} unit={unit} chip="chip" heading="h4" />
        </section>
      ))}
    </div>
  );
}

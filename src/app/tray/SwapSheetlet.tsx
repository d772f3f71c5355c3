import { useState, type CSSProperties, type ReactNode } from 'react';
import type { Block, Fabric } from '../../block/block.ts';
import { exchangeFabrics, replaceFabric } from '../../block/fabrics.ts';
import { Sheetlet } from '../Sheetlet.tsx';
import type { Acts } from '../table.ts';

/** Another fabric for one throughout the block: the two change places, or one replaces the other. */
export default function SwapSheetlet({ block, held, acts, close }: {
  readonly block: Block;
  readonly held: Fabric;
  readonly acts: Acts;
  readonly close: () => void;
}): ReactNode {
  const others = block.fabrics.filter(({ id }) => id !== held.id);
  const [other, setOther] = useState(others[0]!);
  const [both, setBoth] = useState(true);
  const done = (): void => {
    if (both) acts.change(`exchanged ${held.name} and ${other.name}`, (now) => exchangeFabrics(now, held.id, other.id));
    else acts.change(`replaced ${held.name} by ${other.name}`, (now) => replaceFabric(now, held.id, other.id));
  };
  return (
    <Sheetlet title={`Swap ${held.name} throughout`} doneWords="Swap" close={close} done={done}>
      <fieldset className="swap-with">
        <legend>With</legend>
        {others.map((each) => (
          <label key={each.id}>
            <input type="radio" name="swap-with" checked={each === other} onChange={() => setOther(each)} />
            <span className="chip" style={{ '--cloth': each.color } as CSSProperties} aria-hidden="true" />
            {each.name}
          </label>
        ))}
      </fieldset>
      <fieldset className="swap-how">
        <legend>How</legend>
        <label>
          <input type="radio" name="swap-how" checked={both} onChange={() => setBoth(true)} />
          The two change places
        </label>
        <label>
          <input type="radio" name="swap-how" checked={!both} onChange={() => setBoth(false)} />
          {other.name} takes the place of {held.name}, and keeps its own
        </label>
      </fieldset>
    </Sheetlet>
  );
}

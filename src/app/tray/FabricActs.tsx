import { useState, type ReactNode } from 'react';
import type { Block, Fabric } from '../../block/block.ts';
import { deleteFabric, duplicateFabric, moveFabric, setSame } from '../../block/fabrics.ts';
import { MAX_FABRICS } from '../../block/limits.ts';
import type { Acts } from '../table.ts';
import { freshId } from './fresh-id.ts';

/** What else can be done with a fabric: each is done at once, and the sheet is put away. */
export function FabricActs({ block, held, acts, close }: {
  readonly block: Block;
  readonly held: Fabric;
  readonly acts: Acts;
  readonly close: () => void;
}): ReactNode {
  const others = block.fabrics.filter(({ id }) => id !== held.id);
  const [other, setOther] = useState(held.same ?? others[0]?.id ?? '');
  const at = block.fabrics.findIndex(({ id }) => id === held.id);
  const named = others.find(({ id }) => id === other)?.name ?? '';
  const done = (act: () => void) => (): void => {
    act();
    close();
  };
  const move = (to: number) => done(() => acts.change(`moved ${held.name} in the tray`, (now) => moveFabric(now, held.id, to)));
  return (
    <fieldset className="fabric-acts">
      <legend>In the tray</legend>
      <div className="fabric-acts-row">
        <button type="button" className="plain framed" disabled={at === 0} onClick={move(at - 1)}>
          Move before
        </button>
        <button type="button" className="plain framed" disabled={at === block.fabrics.length - 1} onClick={move(at + 1)}>
          Move behind
        </button>
        <button
          type="button"
          className="plain framed"
          disabled={block.fabrics.length === MAX_FABRICS}
          onClick={done(() => acts.change(`added another ${held.name}`, (now) => duplicateFabric(now, held.id, freshId(now.fabrics))))}
        >
          Add another like it
        </button>
      </div>
      {others.length > 0 && (
        <>
          <label className="field">
            <span>Together with</span>
            <select value={other} onChange={(event) => setOther(event.target.value)}>
              {others.map(({ id, name }) => (
                <option key={id} value={id}>
                  {name}
                </option>
              ))}
            </select>
          </label>
          <div className="fabric-acts-row">
            {held.same === undefined ? (
              <button type="button" className="plain framed" disabled={held.scraps !== undefined} onClick={done(() => acts.change(`cut ${held.name} from ${named}`, (now) => setSame(now, held.id, other)))}>
                Cut from its cloth
              </button>
            ) : (
              <button type="button" className="plain framed" onClick={done(() => acts.change(`cut ${held.name} from its own cloth`, (now) => setSame(now, held.id, null)))}>
                Cut from its own cloth again
              </button>
            )}
            <button type="button" className="plain framed" onClick={done(() => { acts.change(`made all ${held.name} ${named}`, (now) => deleteFabric(now, held.id, other)); acts.takeUpFabric(other); })}>
              Become it and leave the tray
            </button>
          </div>
          <p className="quiet">
            Cut from its cloth, it stays a place of its own in the block: seams stay where the two meet, and it can have other cloth later.
          </p>
        </>
      )}
    </fieldset>
  );
}

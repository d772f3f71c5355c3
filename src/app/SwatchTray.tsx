import { ArrowLeftRight, Pencil, Plus } from 'lucide-react';
import { useState, type CSSProperties, type ReactNode } from 'react';
import type { Block, Fabric } from '../block/block.ts';
import { addFabric, exchangeFabrics, recolourFabric, renameFabric, replaceFabric } from '../block/fabrics.ts';
import { MAX_NAME } from '../block/limits.ts';
import type { Acts } from './table.ts';
import { Sheetlet } from './Sheetlet.tsx';
import { useHatches } from './views/use-hatches.ts';

/** The row of fabrics: take one up, add one, rename or recolour the one in the hand. */
export function SwatchTray({ block, fabric, letters, acts }: {
  readonly block: Block;
  readonly fabric: string;
  readonly letters: ReadonlyMap<string, string>;
  readonly acts: Acts;
}): ReactNode {
  const [asked, setAsked] = useState<'new' | 'edit' | 'swap' | null>(null);
  const hatches = useHatches(block.fabrics);
  const held = block.fabrics.find(({ id }) => id === fabric);
  return (
    <div className="tray" role="group" aria-label="Swatch tray">
      <ul className="swatches">
        {block.fabrics.map((each, i) => (
          <li key={each.id}>
            <button
              type="button"
              className="swatch"
              aria-pressed={each.id === fabric}
              onClick={() => acts.takeUpFabric(each.id)}
              title={i < 9 ? `${each.name} (${i + 1} on the table)` : each.name}
            >
              <span className="swatch-cloth" style={{ '--cloth': each.color, '--hatch': hatches.get(each.id) } as CSSProperties} aria-hidden="true">
                <span className="swatch-letter">{letters.get(each.id)}</span>
              </span>
              <span className="swatch-name">
                {each.name}
                {each.id === block.ground && <span className="quiet"> ground</span>}
              </span>
            </button>
          </li>
        ))}
      </ul>
      <div className="tray-acts">
        <button type="button" className="plain" onClick={() => setAsked('new')}>
          <Plus size={20} aria-hidden="true" /> Add<span className="unseen"> fabric</span>
        </button>
        {held && (
          <button type="button" className="plain" onClick={() => setAsked('edit')}>
            <Pencil size={18} aria-hidden="true" /> Change<span className="unseen"> {held.name}</span>
          </button>
        )}
        {held && block.fabrics.length > 1 && (
          <button type="button" className="plain" onClick={() => setAsked('swap')}>
            <ArrowLeftRight size={18} aria-hidden="true" /> Swap<span className="unseen"> {held.name}</span>
          </button>
        )}
      </div>
      {asked === 'new' && (
        <FabricSheetlet
          title="Add a fabric"
          first={{ name: '', color: '#7a9e9f' }}
          done={(name, color) => {
            const id = freshId(block.fabrics);
            acts.change(`added ${name}`, (now) => addFabric(now, { id, name, color }));
            acts.takeUpFabric(id);
          }}
          close={() => setAsked(null)}
        />
      )}
      {asked === 'edit' && held && (
        <FabricSheetlet
          title={`Change ${held.name}`}
          first={held}
          done={(name, color) =>
            acts.change(`changed ${held.name}`, (now) => {
              const renamed = name === held.name ? { ok: true as const, value: now } : renameFabric(now, held.id, name);
              return renamed.ok && color !== held.color ? recolourFabric(renamed.value, held.id, color) : renamed;
            })
          }
          close={() => setAsked(null)}
        />
      )}
      {asked === 'swap' && held && <SwapSheetlet block={block} held={held} acts={acts} close={() => setAsked(null)} />}
    </div>
  );
}

/** Another fabric for one throughout the block: the two change places, or one replaces the other. */
function SwapSheetlet({ block, held, acts, close }: {
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

/** @returns "fabric-4" or the next id that no fabric has */
function freshId(fabrics: readonly Fabric[]): string {
  const known = new Set(fabrics.map(({ id }) => id));
  let n = fabrics.length + 1;
  while (known.has(`fabric-${n}`)) n++;
  return `fabric-${n}`;
}

function FabricSheetlet({ title, first, done, close }: {
  readonly title: string;
  readonly first: Pick<Fabric, 'name' | 'color'>;
  readonly done: (name: string, color: string) => void;
  readonly close: () => void;
}): ReactNode {
  const [name, setName] = useState(first.name);
  const [color, setColor] = useState(first.color);
  return (
    <Sheetlet title={title} doneWords="Done" close={close} done={() => done(name.trim(), color)}>
      <label className="field">
        <span>Name</span>
        <input type="text" value={name} required maxLength={MAX_NAME} onChange={(event) => setName(event.target.value)} />
      </label>
      <label className="field">
        <span>Colour</span>
        <input type="color" value={color} onChange={(event) => setColor(event.target.value)} />
      </label>
    </Sheetlet>
  );
}

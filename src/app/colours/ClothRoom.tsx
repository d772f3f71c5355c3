import { useCallback, useDeferredValue, useMemo, useRef, useState, type CSSProperties, type ReactNode } from 'react';
import type { Block, Look } from '../../block/block.ts';
import { closeNeighbours, lightnessOf, USUAL_APART } from '../../block/colour/contrasts.ts';
import type { Repeats } from '../../block/colour/colourings.ts';
import { inLooks, looksOf, rotated, shuffled } from '../../block/colour/colourways.ts';
import { rolesOf } from '../../block/colour/roles.ts';
import { variationsOf } from '../../block/colour/variations.ts';
import { setFuses } from '../../block/fabrics.ts';
import { listed } from '../../measure/words.ts';
import { Dialog } from '../Dialog.tsx';
import type { Acts } from '../table.ts';
import { useSmallPhotos } from '../tray/use-small-photos.ts';
import { Colourways } from './Colourways.tsx';
import { PALETTES } from './palettes.ts';
import { roleShapes } from './role-shapes.ts';
import { SeenAs } from './SeenAs.tsx';
import { SideBySide } from './SideBySide.tsx';
import { Thumbnails, type Thumbnail } from './Thumbnails.tsx';
import '../face/colours.css';

/** So many are shown at most. */
const MOST = 1_000;

const REPEATS: readonly { readonly repeats: Repeats; readonly words: string }[] = [
  { repeats: 'each once', words: 'No cloth twice' },
  { repeats: 'neighbours differ', words: 'A cloth may come again, but not beside itself' },
  { repeats: 'freely', words: 'Any cloth anywhere' },
];

/** The block in other cloth: all the ways to put some cloths in its places, what is kept of them, and how it reads. */
export default function ClothRoom({ block, acts, close }: { readonly block: Block; readonly acts: Acts; readonly close: () => void }): ReactNode {
  const [held, setHeld] = useState<ReadonlyMap<string, Look>>(new Map());
  const [left, setLeft] = useState<ReadonlySet<string>>(new Set());
  const [palette, setPalette] = useState('');
  const [repeats, setRepeats] = useState<Repeats>('each once');
  const [seed, setSeed] = useState(1);
  const [apart, setApart] = useState(USUAL_APART);
  // The drawing as it came: what is tried here changes its looks alone.
  const first = useRef(block);
  const photos = useSmallPhotos(block);
  // Of the cloths that are tried, the block's own come first.
  const own = useSmallPhotos(first.current);
  const roles = useMemo(() => rolesOf(plainly(first.current)), []);
  const shapes = useMemo(() => roleShapes(first.current), []);
  const cloths = useMemo(() => {
    const own = (roles.ok ? roles.value.ids : []).map((id) => first.current.fabrics.find((fabric) => fabric.id === id)!);
    const more = PALETTES.find(({ name }) => name === palette)?.cloths ?? [];
    return [...own.map(({ id: _, same: __, scraps: ___, ...look }): Look => look), ...more];
  }, [roles, palette]);
  const nameOf = (id: string): string => block.fabrics.find((fabric) => fabric.id === id)?.name ?? id;
  const asked = useDeferredValue(useMemo(() => ({ held, left, cloths, repeats, seed }), [held, left, cloths, repeats, seed]));
  const found = useMemo(() => {
    if (!roles.ok) return null;
    const tried = asked.cloths.filter((_, i) => !asked.left.has(keyOf(asked.cloths[i]!, i)));
    const kept = new Map<number, number>();
    const all = [...tried];
    roles.value.ids.forEach((id, role) => {
      const own = asked.held.get(id);
      if (!own) return;
      const at = all.findIndex(({ name, color }) => name === own.name && color === own.color);
      kept.set(role, at >= 0 ? at : all.push(own) - 1);
    });
    return { cloths: all, ...variationsOf(roles.value, all.map(lightnessOf), { repeats: asked.repeats, held: kept, most: MOST, seed: asked.seed }) };
  }, [roles, asked]);
  const thumbnails = useMemo((): readonly Thumbnail[] => {
    if (!roles.ok || !found) return [];
    return found.shown.map(({ colouring }) => ({
      key: colouring.join(' '),
      colors: new Map(roles.value.ids.map((id, role) => [id, found.cloths[colouring[role]!]!.color])),
      says: roles.value.ids.map((id, role) => `${nameOf(id)}: ${found.cloths[colouring[role]!]!.name}`).join(', '),
    }));
  }, [roles, found]);
  const [pressed, setPressed] = useState<{ readonly of: typeof found; readonly key: string } | null>(null);
  // What was pressed among other ways is none of these.
  const taken = pressed?.of === found ? (pressed?.key ?? null) : null;
  const { change } = acts;
  // Stays the same function, or a thousand pictures are gone through with every change of the block.
  const take = useCallback(
    (key: string): void => {
      if (!roles.ok || !found) return;
      setPressed({ of: found, key });
      change('put the block in other cloth', (now) => inLooks(now, looksOf(roles.value.ids, key.split(' ').map(Number), found.cloths)));
    },
    [roles, found, change],
  );
  // How it reads follows the cloth on the table when there is time.
  const late = useDeferredValue(block);
  if (!roles.ok || !shapes || !found) return null;
  const { ids, edges } = roles.value;
  const light = ids.map((id) => lightnessOf(late.fabrics.find((fabric) => fabric.id === id)!));
  const near = closeNeighbours(edges, light, apart);
  const shared = block.fabrics.some(({ same }) => same !== undefined);
  return (
    <Dialog title="Other cloth" className="wide cloth-room" close={close}>
      <div className="cloth-room-asks">
        <fieldset>
          <legend>Keep as it is</legend>
          {ids.map((id) => (
            <label key={id} className="tick">
              <input type="checkbox" checked={held.has(id)} onChange={() => setHeld(heldToo(held, id, block))} />
              <span className="chip" style={{ '--cloth': photos.get(id) ?? block.fabrics.find((fabric) => fabric.id === id)!.color } as CSSProperties} aria-hidden="true" />
              {nameOf(id)}
            </label>
          ))}
        </fieldset>
        <fieldset>
          <legend>Try with</legend>
          {cloths.map((cloth, i) => (
            <label key={keyOf(cloth, i)} className="tick">
              <input type="checkbox" checked={!left.has(keyOf(cloth, i))} onChange={() => setLeft(toggled(left, keyOf(cloth, i)))} />
              <span className="chip" style={{ '--cloth': own.get(ids[i] ?? '') ?? cloth.color } as CSSProperties} aria-hidden="true" />
              {cloth.name}
            </label>
          ))}
          <label className="field">
            <span>And with</span>
            <select value={palette} onChange={(event) => setPalette(event.target.value)}>
              <option value="">nothing else</option>
              {PALETTES.map(({ name }) => (
                <option key={name}>{name}</option>
              ))}
            </select>
          </label>
        </fieldset>
        <fieldset>
          <legend>How</legend>
          {REPEATS.map((each) => (
            <label key={each.repeats} className="tick">
              <input type="radio" name="repeats" checked={repeats === each.repeats} onChange={() => setRepeats(each.repeats)} />
              {each.words}
            </label>
          ))}
          <div className="cloth-room-acts">
            <button type="button" className="plain framed" onClick={() => acts.change('handed the fabrics round', (now) => inLooks(now, rotated(now, ids.filter((id) => !held.has(id)), 1)))}>
              Hand round
            </button>
            <button
              type="button"
              className="plain framed"
              onClick={() => {
                setSeed(seed + 1);
                acts.change('shuffled the fabrics', (now) => inLooks(now, shuffled(now, ids.filter((id) => !held.has(id)), seed)));
              }}
            >
              Shuffle
            </button>
          </div>
        </fieldset>
      </div>
      <p role="status" className="cloth-room-said">
        {saidOf(found.shown.length, found.total)}
        {found.total !== BigInt(found.shown.length) && found.shown.length > 0 && (
          <button type="button" className="plain" onClick={() => setSeed(seed + 1)}>
            Draw others
          </button>
        )}
      </p>
      {shared && (
        <fieldset className="cloth-room-fuses">
          <legend>Where neighbours are cut from one cloth</legend>
          <label className="tick">
            <input type="radio" name="fuses" checked={!block.fuses} onChange={() => acts.change('kept the seams within one cloth', (now) => ({ ok: true, value: setFuses(now, false) }))} />
            the seam between them stays
          </label>
          <label className="tick">
            <input type="radio" name="fuses" checked={block.fuses === true} onChange={() => acts.change('joined neighbours of one cloth', (now) => ({ ok: true, value: setFuses(now, true) }))} />
            they become one area
          </label>
        </fieldset>
      )}
      <Thumbnails shapes={shapes} all={thumbnails} taken={taken} take={take} />
      <section className="cloth-room-reads" aria-labelledby="reads-title">
        <h3 id="reads-title">How it reads</h3>
        <SeenAs block={late} shapes={shapes} />
        <label className="field apart-field">
          <span>Neighbours should be apart in value by</span>
          <input type="number" min={0} max={100} step={1} value={apart} onChange={(event) => setApart(Math.max(0, Number(event.target.value) || 0))} />
        </label>
        <p className="quiet">Value runs from 0, black, to 100, white.</p>
        <p role="status">
          {near.length === 0
            ? 'Every shape stands out from its neighbours.'
            : `Hardly told apart: ${listed(near.map(({ roles: [a, b], apart: by }) => `${nameOf(ids[a]!)} and ${nameOf(ids[b]!)} (${by.toFixed(0)})`))}.`}
        </p>
      </section>
      <Colourways block={block} acts={acts} />
      <section aria-labelledby="side-by-side-title">
        <h3 id="side-by-side-title">Side by side</h3>
        <SideBySide block={late} shapes={shapes} />
      </section>
    </Dialog>
  );
}

/** Every fabric as a role of its own, whatever it is cut from. */
const plainly = (block: Block): Block => ({ ...block, fabrics: block.fabrics.map(({ same: _, ...fabric }) => fabric) });

const keyOf = (cloth: Look, i: number): string => `${i} ${cloth.name} ${cloth.color}`;

function toggled(some: ReadonlySet<string>, one: string): ReadonlySet<string> {
  const next = new Set(some);
  if (!next.delete(one)) next.add(one);
  return next;
}

/** @returns what is kept with one more fabric as it is now, or without it where it was kept */
function heldToo(held: ReadonlyMap<string, Look>, id: string, block: Block): ReadonlyMap<string, Look> {
  const next = new Map(held);
  const { id: _, same: __, ...look } = block.fabrics.find((fabric) => fabric.id === id)!;
  if (!next.delete(id)) next.set(id, look);
  return next;
}

function saidOf(shown: number, total: bigint | null): string {
  if (shown === 0) return 'There are too few cloths for that: tick more of them, or let a cloth come again.';
  const many = (n: bigint): string => n.toLocaleString('en');
  if (total === null) return `There are more than ${many(BigInt(MOST))} different ways; ${many(BigInt(shown))} of them, drawn by chance. `;
  if (total === BigInt(shown)) return `${many(total)} different ${total === 1n ? 'way' : 'ways'}, turned and mirrored ones told once.`;
  return `${many(total)} different ways, turned and mirrored ones told once; ${many(BigInt(shown))} of them, drawn by chance. `;
}

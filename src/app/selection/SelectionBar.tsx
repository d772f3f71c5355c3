import {
  CaretsToAxisDashedHorizontal, CaretsToAxisDashedVertical, ClipboardPaste, Copy, CopyPlus, Frame, ListChecks, RotateCcw, RotateCw, Scissors,
  SquareDashed, SquareStack, Trash2, type LucideIcon,
} from 'lucide-react';
import { lazy, Suspense, useEffect, useMemo, useState, type CSSProperties, type KeyboardEvent, type ReactNode } from 'react';
import type { Block, Patch } from '../../block/block.ts';
import type { Picture } from '../../block/publication.ts';
import type { Chosen } from '../../canvas/draw-selection.ts';
import type { Handling } from '../../canvas/hand/selecting.ts';
import { useStore } from '../store.ts';
import { scrapText } from './arranger.ts';
import { CHOSEN_KEYS } from './chosen-keys.ts';
import { gathering, scrap } from './taken.ts';
import { isElsewhere } from './use-selection.ts';
import '../face/selection.css';

const PhotoPlace = lazy(() => import('./PhotoPlace.tsx'));

/** Writes what was copied where other windows can read it, if the browser lets it; it is kept in this window anyway. */
function share(): void {
  const text = scrapText();
  if (text) void navigator.clipboard?.writeText(text).catch(() => undefined);
}

/** Lays what was copied in this window; where nothing was, what another one has written, if the browser lets us read it. */
async function paste(handle: (handling: Handling) => void): Promise<void> {
  const text = scrap.get() ? undefined : await navigator.clipboard?.readText().catch(() => undefined);
  handle({ do: 'paste', ...(text !== undefined && { text }) });
}

const nameIn = (block: Block, id: string): string => block.fabrics.find((fabric) => fabric.id === id)?.name ?? id;

/** Names of fabrics, "Teal, Rust and Oat". */
function fabricsInWords(block: Block, ids: readonly string[]): string {
  const names = ids.map((id) => nameIn(block, id));
  if (names.length < 2) return names.join('');
  return names.length > 3 ? `${names.length} fabrics` : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`;
}

/** @returns the first of the chosen patches whose fabric shows a photo, and that */
function picturedIn({ patches, fabrics, photos = [] }: Block, { indices }: Chosen): { readonly patch: Patch; readonly picture: Picture } | null {
  for (const i of indices) {
    const patch = patches[i];
    const shown = fabrics.find(({ id }) => id === patch?.fabric)?.photo;
    const picture = photos.find(({ id }) => id === shown?.picture);
    if (patch && picture) return { patch, picture };
  }
  return null;
}

/** What can be done with the patches that are chosen, and ways to choose many. */
export default function SelectionBar({ block, fabric, chosen, handle }: {
  readonly block: Block;
  /** Id of the fabric in the hand. */
  readonly fabric: string;
  readonly chosen: Chosen;
  readonly handle: (handling: Handling) => void;
}): ReactNode {
  const adds = useStore(gathering, (now) => now);
  const count = chosen.patches.length;
  // In the order they were first met.
  const fabrics = [...new Set(chosen.patches.map((patch) => patch.fabric))];
  const alike = fabrics.length === 1 ? fabrics[0]! : fabric;
  const alikeFabric = block.fabrics.find(({ id }) => id === alike);

  const pictured = useMemo(() => picturedIn(block, chosen), [block, chosen]);
  const [placing, setPlacing] = useState(false);

  useEffect(() => {
    const onKey = (event: globalThis.KeyboardEvent): void => {
      if (!(event.ctrlKey || event.metaKey) || event.altKey || event.shiftKey || isElsewhere(event.target)) return;
      const handling = CHOSEN_KEYS.find(({ key }) => key === event.key.toLowerCase())?.handling;
      if (!handling) return;
      event.preventDefault();
      handle(handling);
    };
    window.addEventListener('keydown', onKey);
    return () => window.removeEventListener('keydown', onKey);
  }, [handle]);

  const onKeyDown = (event: KeyboardEvent): void => {
    if (event.key === 'Escape') handle({ do: 'none' });
    else if (event.key === 'Delete') handle({ do: 'delete' });
    else return;
    event.preventDefault();
  };

  const act = (Icon: LucideIcon, words: string, hint: string, handling: Handling, more?: () => void): ReactNode => (
    <button
      type="button"
      className="plain chosen-act"
      disabled={count === 0}
      title={hint}
      onClick={() => {
        handle(handling);
        more?.();
      }}
    >
      <Icon size={19} aria-hidden="true" /> <span className="chosen-words">{words}</span>
    </button>
  );

  return (
    <>
    <div className="chosen" role="group" aria-label="Chosen patches" onKeyDown={onKeyDown}>
      <div className="chosen-row">
        {act(RotateCw, 'Turn', 'Turn clockwise (T)', { do: 'turn', way: 'right' })}
        {act(RotateCcw, 'Turn back', 'Turn the other way (Shift+T)', { do: 'turn', way: 'left' })}
        {act(CaretsToAxisDashedVertical, 'Mirror across', 'Exchange left and right', { do: 'mirror', exchange: 'left and right' })}
        {act(CaretsToAxisDashedHorizontal, 'Mirror down', 'Exchange top and bottom', { do: 'mirror', exchange: 'top and bottom' })}
        {act(CopyPlus, 'Double', 'Lay the same beside them (Ctrl+D)', { do: 'twin' })}
        {act(Copy, 'Copy', 'Copy (Ctrl+C)', { do: 'copy' }, share)}
        {act(Scissors, 'Cut', 'Copy and take up (Ctrl+X)', { do: 'cut' }, share)}
        <button type="button" className="plain chosen-act" title="Lay what was copied (Ctrl+V)" onClick={() => void paste(handle)}>
          <ClipboardPaste size={19} aria-hidden="true" /> <span className="chosen-words">Paste</span>
        </button>
        {act(Trash2, 'Take up', 'Take the patches off (Delete)', { do: 'delete' })}
      </div>
      <div className="chosen-row">
        <p className="chosen-count">
          {count === 0 && 'Click a patch, or drag a frame round some'}
          {count > 0 && `${count === 1 ? '1 patch' : `${count} patches`}: ${fabricsInWords(block, fabrics)}. A swatch gives ${count === 1 ? 'it' : 'them'} its cloth.`}
        </p>
        {fabrics.length > 1 && (
          <select
            className="chosen-only"
            aria-label="Of these, keep chosen only those of one fabric"
            title="Of these, keep chosen only those of one fabric"
            value=""
            onChange={(event) => handle({ do: 'only', fabric: event.target.value })}
          >
            <option value="" disabled>
              Only …
            </option>
            {fabrics.map((id) => (
              <option key={id} value={id}>
                Only {nameIn(block, id)}
              </option>
            ))}
          </select>
        )}
        <button
          type="button"
          className="plain chosen-act named"
          aria-pressed={adds}
          title="Each click adds a patch or takes it out again, as with Shift"
          onClick={() => gathering.set(!adds)}
        >
          <ListChecks size={19} aria-hidden="true" /> <span>Several</span>
        </button>
        <button type="button" className="plain chosen-act named" title="Choose every patch (Ctrl+A)" onClick={() => handle({ do: 'all' })}>
          <SquareStack size={19} aria-hidden="true" /> <span>All</span>
        </button>
        <button
          type="button"
          className="plain chosen-act named"
          title={`Choose every patch of ${alikeFabric?.name}`}
          onClick={() => handle({ do: 'all of', fabric: alike })}
        >
          <span className="chip" style={{ '--cloth': alikeFabric?.color } as CSSProperties} aria-hidden="true" />
          <span>All {alikeFabric?.name}</span>
        </button>
        {pictured && (
          <button type="button" className="plain chosen-act named" aria-haspopup="dialog" title="Move the photo of the cloth within the patch" onClick={() => setPlacing(true)}>
            <Frame size={19} aria-hidden="true" /> <span>Photo</span>
          </button>
        )}
        <button
          type="button"
          className="plain chosen-act named"
          disabled={count === 0}
          title="Let go of them (Escape)"
          onClick={() => handle({ do: 'none' })}
        >
          <SquareDashed size={19} aria-hidden="true" /> <span>None</span>
        </button>
      </div>
    </div>
    {placing && pictured && (
      <Suspense fallback={null}>
        <PhotoPlace block={block} {...pictured} place={(at) => handle({ do: 'photo', at })} close={() => setPlacing(false)} />
      </Suspense>
    )}
    </>
  );
}

import { ArrowLeftRight, ArrowUp, Palette, Pencil, Plus } from 'lucide-react';
import { lazy, useState, type CSSProperties, type ReactNode } from 'react';
import type { Block } from '../block/block.ts';
import { Later } from './Later.tsx';
import type { Acts } from './table.ts';
import { useSmallPhotos } from './tray/use-small-photos.ts';
import { useHatches } from './views/use-hatches.ts';

const FabricSheetlet = lazy(() => import('./tray/FabricSheetlet.tsx'));
const ClothRoom = lazy(() => import('./colours/ClothRoom.tsx'));
const SwapSheetlet = lazy(() => import('./tray/SwapSheetlet.tsx'));

/** The row of fabrics: take one up, add one, rename or recolour the one in the hand. */
export function SwatchTray({ block, fabric, letters, acts }: {
  readonly block: Block;
  readonly fabric: string;
  readonly letters: ReadonlyMap<string, string>;
  readonly acts: Acts;
}): ReactNode {
  const [asked, setAsked] = useState<'new' | 'edit' | 'swap' | 'other' | null>(null);
  const hatches = useHatches(block.fabrics);
  const photos = useSmallPhotos(block);
  const close = (): void => setAsked(null);
  const failed = (): void => {
    acts.alarm('That part of the app could not be fetched; check that the app is still being served, then load the page again.');
    close();
  };
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
              <span className="swatch-cloth" style={{ '--cloth': each.color, '--hatch': hatches.get(each.id), '--photo': photos.get(each.id) } as CSSProperties} aria-hidden="true">
                <span className="swatch-letter">{letters.get(each.id)}</span>
                {each.directional && <ArrowUp className="swatch-up" size={14} strokeWidth={3} />}
              </span>
              <span className="swatch-name">
                {each.name}
                {each.id === block.ground && <span className="quiet"> ground</span>}
                {each.scraps && <span className="quiet"> {each.scraps.prints} prints</span>}
                {each.directional && <span className="unseen">, runs one way</span>}
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
        <button type="button" className="plain" aria-haspopup="dialog" onClick={() => setAsked('other')}>
          <Palette size={18} aria-hidden="true" /> Other cloth
        </button>
      </div>
      {asked && (
        <Later failed={failed}>
          {asked === 'other' ? (
            <ClothRoom block={block} acts={acts} close={close} />
          ) : asked === 'swap' ? (
            held && <SwapSheetlet block={block} held={held} acts={acts} close={close} />
          ) : (
            <FabricSheetlet block={block} held={asked === 'edit' && held ? held : null} acts={acts} close={close} />
          )}
        </Later>
      )}
    </div>
  );
}

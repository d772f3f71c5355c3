import { useEffect, useRef, useState, type ReactNode } from 'react';
import type { Block } from '../block/block.ts';
import { BlockPicture } from './BlockPicture.tsx';
import { demoBlocks, type DemoBlock } from './demo-blocks.ts';
import type { Acts } from './table.ts';

/** A drawing kept in this browser, beside the one on the table. */
export interface KeptDrawing {
  readonly id: string;
  readonly block: Block;
  readonly savedAt: number;
  readonly unfold: () => void;
}

/** The sampler's blocks, and drawings kept here by another window. */
export function Drawings({ acts, kept, close }: {
  readonly acts: Acts;
  readonly kept: () => Promise<readonly KeptDrawing[]>;
  readonly close: () => void;
}): ReactNode {
  const dialog = useRef<HTMLDialogElement>(null);
  const [others, setOthers] = useState<readonly KeptDrawing[]>([]);
  useEffect(() => {
    const shown = dialog.current;
    shown?.showModal();
    kept().then(setOthers, () => undefined);
    return () => shown?.close();
  }, [kept]);
  return (
    <dialog ref={dialog} className="sheetlet wide" aria-labelledby="drawings-title" onClose={close}>
      <h2 id="drawings-title">Kittiwake Point sampler</h2>
      <p className="quiet">Undo brings back the drawing that is on the table now.</p>
      <ul className="gallery">
        {demoBlocks.map((demo) => (
          <DemoCard key={demo.title} demo={demo} acts={acts} close={close} />
        ))}
      </ul>
      {others.length > 0 && (
        <>
          <h3>Also kept in this browser</h3>
          <ul className="gallery">
            {others.map((drawing) => (
              <Card
                key={drawing.id}
                block={drawing.block}
                title={drawing.block.name}
                more={new Date(drawing.savedAt).toLocaleString()}
                take={() => {
                  drawing.unfold();
                  close();
                }}
              />
            ))}
          </ul>
        </>
      )}
      <div className="sheetlet-acts">
        <button type="button" className="plain" onClick={close}>
          Close
        </button>
      </div>
    </dialog>
  );
}

function DemoCard({ demo, acts, close }: { readonly demo: DemoBlock; readonly acts: Acts; readonly close: () => void }): ReactNode {
  const [block, setBlock] = useState<Block | 'unreachable' | null>(null);
  useEffect(() => {
    demo.open().then(setBlock, () => setBlock('unreachable'));
  }, [demo]);
  const drawn = block === 'unreachable' ? null : block;
  const take = (): void => {
    if (block === 'unreachable') {
      acts.alarm(`The block "${demo.title}" could not be fetched; check that the app is still being served and open the sampler again.`);
    }
    if (drawn) acts.open(drawn);
    if (block) close();
  };
  return <Card block={drawn} title={drawn?.name ?? demo.title} take={take} />;
}

function Card({ block, title, more, take }: {
  /** null while it is fetched. */
  readonly block: Block | null;
  readonly title: string;
  readonly more?: string;
  readonly take: () => void;
}): ReactNode {
  return (
    <li>
      <button type="button" className="card" onClick={take}>
        <span className="card-picture">{block && <BlockPicture block={block} />}</span>
        <span>{title}</span>
        {more !== undefined && <span className="quiet">{more}</span>}
      </button>
    </li>
  );
}

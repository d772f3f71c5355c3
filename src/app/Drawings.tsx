import { useEffect, useRef, useState, type ReactNode } from 'react';
import type { Block } from '../block/block.ts';
import type { Result } from '../measure/problem.ts';
import { demoBlocks } from './demo-blocks.ts';
import type { Acts } from './table.ts';

/** A drawing kept in this browser, beside the one on the table. */
export interface KeptDrawing {
  readonly id: string;
  readonly name: string;
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
  const take = (fetched: Promise<Result<Block>>): void => {
    fetched.then(
      (block) => (block.ok ? acts.open(block.value) : acts.alarm(block.problem.sentence)),
      () => acts.alarm('This block of the sampler could not be fetched; check the connection and open it again.'),
    );
    close();
  };
  return (
    <dialog ref={dialog} className="sheetlet" aria-labelledby="drawings-title" onClose={close}>
      <h2 id="drawings-title">Kittiwake Point sampler</h2>
      <p className="quiet">Undo brings back the drawing that is on the table now.</p>
      <ul className="choose-list">
        {demoBlocks.map((demo) => (
          <li key={demo.title}>
            <button type="button" onClick={() => take(demo.open())}>
              {demo.title}
            </button>
          </li>
        ))}
      </ul>
      {others.length > 0 && (
        <>
          <h3>Also kept in this browser</h3>
          <ul className="choose-list">
            {others.map((drawing) => (
              <li key={drawing.id}>
                <button
                  type="button"
                  onClick={() => {
                    drawing.unfold();
                    close();
                  }}
                >
                  {drawing.name} <span className="quiet">{new Date(drawing.savedAt).toLocaleString()}</span>
                </button>
              </li>
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

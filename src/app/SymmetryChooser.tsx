import { useId, useRef, useState, type ReactNode, type ToggleEvent } from 'react';
import type { Block } from '../block/block.ts';
import { allows, SYMMETRIES, type SymmetryName } from '../block/symmetry.ts';
import { capital } from '../measure/words.ts';
import { SymmetryIcon } from './TradeIcons.tsx';

const REASON = 'Diagonals, quarter turns and every way need a square block with the same lines across and down.';

/** Where else is done what the hand does in one place: one button, and behind it a picture of every symmetry. */
export function SymmetryChooser({ block, symmetry, take }: {
  readonly block: Pick<Block, 'grid' | 'finished'>;
  readonly symmetry: SymmetryName;
  readonly take: (symmetry: SymmetryName) => void;
}): ReactNode {
  const [title, panelId] = [useId(), useId()];
  const button = useRef<HTMLButtonElement>(null);
  const panel = useRef<HTMLFieldSetElement>(null);
  const [open, setOpen] = useState(false);
  /** Whether the choice was pointed at, and is made with that; the arrow keys go on choosing. */
  const pointed = useRef(false);

  const toggled = (event: ToggleEvent<HTMLElement>): void => {
    const shown = event.newState === 'open';
    setOpen(shown);
    if (!shown || !panel.current || !button.current) return;
    // Beside the button, as far as the window has room there.
    const from = button.current.getBoundingClientRect();
    const { offsetWidth: width, offsetHeight: height } = panel.current;
    const within = (at: number, size: number, room: number): number => Math.max(8, Math.min(at, room - size - 8));
    panel.current.style.left = `${within(from.right + 6, width, window.innerWidth)}px`;
    panel.current.style.top = `${within(from.top, height, window.innerHeight)}px`;
    panel.current.querySelector<HTMLInputElement>('input:checked')?.focus();
  };

  return (
    <div className="tool-group" role="group" aria-labelledby={title}>
      <p className="tool-title" id={title}>
        Symmetry
      </p>
      <button
        ref={button}
        type="button"
        className="tool"
        data-on={symmetry !== 'none' || undefined}
        aria-haspopup="true"
        aria-expanded={open}
        popoverTarget={panelId}
        title={`Symmetry: ${symmetry}. What you do in one place is done in all of them (M on the table)`}
      >
        <SymmetryIcon symmetry={symmetry} />
        <span className="tool-name">
          {symmetry === 'none' ? (
            'Symmetry'
          ) : (
            <>
              <span className="unseen">Symmetry: </span>
              {capital(symmetry)}
            </>
          )}
        </span>
      </button>
      <fieldset ref={panel} id={panelId} className="symmetries" popover="auto" onToggle={toggled} onKeyDown={() => (pointed.current = false)}>
        <legend>Symmetry: done here, done there too</legend>
        <div className="symmetry-rows">
          {SYMMETRIES.map((each) => {
            const allowed = allows(block, each);
            return (
              <label key={each} className="symmetry" title={allowed ? undefined : REASON} onPointerDown={() => (pointed.current = true)}>
                <input
                  type="radio"
                  name={panelId}
                  checked={each === symmetry}
                  disabled={!allowed}
                  onChange={() => take(each)}
                  onClick={() => pointed.current && panel.current?.hidePopover()}
                />
                <SymmetryIcon symmetry={each} />
                <span>{capital(each)}</span>
              </label>
            );
          })}
        </div>
        {!SYMMETRIES.every((each) => allows(block, each)) && <p className="quiet">{REASON}</p>}
      </fieldset>
    </div>
  );
}

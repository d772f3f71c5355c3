import { Undo2, X } from 'lucide-react';
import { useEffect, useId, useRef, type ReactNode } from 'react';
import { createPortal } from 'react-dom';
import type { Block } from '../../block/block.ts';
import { countOf } from '../../block/cells.ts';
import { printLength } from '../../measure/lengths.ts';
import { capital } from '../../measure/words.ts';
import type { Pattern } from '../../pattern/pattern.ts';
import { Prose } from '../sheet/Length.tsx';
import type { Acts } from '../table.ts';
import { Cells } from './Cells.tsx';
import { useDoing } from './doing.ts';
import { FinishedSize } from './FinishedSize.tsx';
import { Lines } from './Lines.tsx';
import { RulerNote } from './RulerNote.tsx';
import { Turning } from './Turning.tsx';

/** Windows in which face/grid.css lays the panel along the lower edge. */
const BELOW = '(width < 56.25rem)';

/** Size and grid of the block, beside the drawing that they change; Escape puts the panel away. */
export default function GridPanel({ block, pattern, acts, close }: {
  readonly block: Block;
  /** The pattern of this very drawing, or null while there is none. */
  readonly pattern: Pattern | null;
  readonly acts: Pick<Acts, 'change' | 'undo'>;
  readonly close: () => void;
}): ReactNode {
  const titleId = useId();
  const panel = useRef<HTMLElement>(null);
  const doing = useDoing(block, acts);
  useEffect(() => {
    panel.current?.focus();
    // Where the panel lies below the drawing, the drawing comes up above it.
    if (matchMedia(BELOW).matches) document.querySelector('.table-room')?.scrollIntoView({ block: 'start' });
  }, []);
  return createPortal(
    <section
      ref={panel}
      role="dialog"
      className="grid-panel"
      aria-labelledby={titleId}
      tabIndex={-1}
      onKeyDown={(event) => {
        if (event.key === 'Escape' && !event.defaultPrevented) close();
      }}
    >
      <div className="grid-head">
        <h2 id={titleId}>Size and grid</h2>
        <button type="button" className="plain" onClick={close}>
          <X size={20} aria-hidden="true" /> Put away
        </button>
      </div>
      <div className="grid-parts">
        <FinishedSize block={block} doing={doing} />
        <Cells block={block} doing={doing} />
        <RulerNote block={block} pattern={pattern} doing={doing} />
        <Lines block={block} doing={doing} />
        <Turning doing={doing} />
      </div>
      <div className="grid-foot">
        <p role="status">
          <Prose text={doing.done === null ? nowInWords(block) : `${capital(doing.done)}: ${nowInWords(block)}`} />
        </p>
        {doing.done !== null && (
          <button type="button" className="plain" onClick={acts.undo}>
            <Undo2 size={18} aria-hidden="true" /> Undo
          </button>
        )}
      </div>
    </section>,
    document.body,
  );
}

function nowInWords({ finished, grid }: Block): string {
  const { columns, rows } = countOf(grid);
  return `${printLength(finished.width, finished.unit, 'bare')} × ${printLength(finished.height, finished.unit)}, ${columns} × ${rows} cells`;
}

import { useId, useState, type ReactNode } from 'react';
import { cellSizes, type Axis } from '../../block/axis.ts';
import type { Block } from '../../block/block.ts';
import { evenOut, joinCells, resizeCell, splitCell, type Drawn } from '../../block/lines.ts';
import { typedLength } from '../../block/typed-size.ts';
import { printLength } from '../../measure/lengths.ts';
import type { Rational } from '../../measure/rational.ts';
import type { Doing } from './doing.ts';
import { LinesPicture } from './LinesPicture.tsx';
import { Notice } from './Notice.tsx';

const WORDS = {
  columns: { one: 'column', size: 'Width', title: 'Column widths, from the left', start: 'left' },
  rows: { one: 'row', size: 'Height', title: 'Row heights, from the top', start: 'top' },
} as const;

/** Uneven columns and rows: each size typed over, a line drawn through one, the line after one taken away. */
export function Lines({ block, doing }: { readonly block: Block; readonly doing: Doing }): ReactNode {
  const name = useId();
  const [drawn, setDrawn] = useState<Drawn>('moves along');
  const [chosen, setChosen] = useState<readonly [Axis, number]>(['columns', 0]);
  const uneven = block.grid.across !== undefined || block.grid.down !== undefined;
  const [open, setOpen] = useState(uneven);
  return (
    <details className="grid-part" open={open} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>
        <h3>Uneven columns and rows</h3>
      </summary>
      {open && (
        <>
          <div className="grid-lines-head">
            <LinesPicture block={block} chosen={chosen} />
            <fieldset className="grid-choices">
              <legend>When a line moves, the drawing</legend>
              {(['moves along', 'stays'] as const).map((each) => (
                <label key={each}>
                  <input type="radio" name={name} checked={drawn === each} onChange={() => setDrawn(each)} />
                  <span>{each === 'stays' ? 'stays where it is' : 'moves along with it'}</span>
                </label>
              ))}
            </fieldset>
          </div>
          {(['columns', 'rows'] as const).map((axis) => (
            <AxisLines
              key={axis}
              axis={axis}
              block={block}
              doing={doing}
              drawn={drawn}
              chosen={chosen[0] === axis ? chosen[1] : 0}
              choose={(cell) => setChosen([axis, cell])}
            />
          ))}
        </>
      )}
    </details>
  );
}

function AxisLines({ axis, block, doing, drawn, chosen, choose }: {
  readonly axis: Axis;
  readonly block: Block;
  readonly doing: Doing;
  readonly drawn: Drawn;
  readonly chosen: number;
  readonly choose: (cell: number) => void;
}): ReactNode {
  const noticeId = useId();
  const titleId = useId();
  const [split, setSplit] = useState('');
  const { unit } = block.finished;
  const { one, size, title, start } = WORDS[axis];
  const sizes = cellSizes(block, axis);
  const cell = Math.min(chosen, sizes.length - 1);
  return (
    <div className="grid-axis" role="group" aria-labelledby={titleId}>
      <h4 id={titleId}>{title}</h4>
      <ol className="grid-sizes">
        {sizes.map((each, i) => (
          <li key={i}>
            <CellSize
              label={`${size} of ${one} ${i + 1}`}
              size={each}
              unit={unit}
              chosen={i === cell}
              noticeId={noticeId}
              choose={() => choose(i)}
              take={(text) =>
                doing.change(axis, `${size.toLowerCase()} of ${one} ${i + 1}`, (now) => {
                  const read = typedLength(text, unit);
                  return read.ok ? resizeCell(now, axis, i, read.value, drawn) : read;
                })
              }
            />
          </li>
        ))}
      </ol>
      <form
        className="grid-row"
        onSubmit={(event) => {
          event.preventDefault();
          const done = doing.change(axis, `line in ${one} ${cell + 1}`, (now) => {
            const read = typedLength(split, unit);
            return read.ok ? splitCell(now, axis, cell, read.value) : read;
          });
          if (done) setSplit('');
        }}
      >
        <label className="grid-split">
          <span>
            A line in {one} {cell + 1}, from its {start}
          </span>
          <input type="text" value={split} autoComplete="off" aria-describedby={noticeId} onChange={(event) => setSplit(event.target.value)} />
        </label>
        <button type="submit" className="plain framed">
          Draw it
        </button>
        <button
          type="button"
          className="plain framed"
          disabled={cell + 1 >= sizes.length}
          onClick={() => doing.change(axis, `join ${one}s ${cell + 1} and ${cell + 2}`, (now) => joinCells(now, axis, cell))}
        >
          {cell + 1 < sizes.length ? `Join ${one}s ${cell + 1} and ${cell + 2}` : `No ${one} after ${cell + 1}`}
        </button>
        <button type="button" className="plain framed" onClick={() => doing.change(axis, `equal ${axis}`, (now) => evenOut(now, axis, drawn))}>
          All {axis} equal
        </button>
      </form>
      <Notice id={noticeId} place={axis} said={doing.said} />
    </div>
  );
}

/** The size of one column or row, to be typed over: Enter or leaving the field takes it, Escape gives it up. */
function CellSize({ label, size, unit, chosen, noticeId, choose, take }: {
  readonly label: string;
  readonly size: Rational;
  readonly unit: Block['finished']['unit'];
  readonly chosen: boolean;
  readonly noticeId: string;
  readonly choose: () => void;
  readonly take: (text: string) => boolean;
}): ReactNode {
  const [typed, setTyped] = useState<string | null>(null);
  const [bad, setBad] = useState(false);
  const now = printLength(size, unit, 'bare');
  const finish = (): void => {
    if (typed === null || typed.trim() === now) {
      setTyped(null);
      setBad(false);
      return;
    }
    const taken = take(typed);
    if (taken) setTyped(null);
    setBad(!taken);
  };
  return (
    <input
      type="text"
      aria-label={label}
      aria-describedby={noticeId}
      aria-invalid={(bad && typed !== null) || undefined}
      data-chosen={chosen || undefined}
      autoComplete="off"
      value={typed ?? now}
      onFocus={choose}
      onChange={(event) => setTyped(event.target.value)}
      onBlur={finish}
      onKeyDown={(event) => {
        if (event.key === 'Enter') finish();
        if (event.key !== 'Escape' || typed === null) return;
        event.preventDefault();
        setTyped(null);
        setBad(false);
      }}
    />
  );
}

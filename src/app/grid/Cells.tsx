import { Minus, Plus } from 'lucide-react';
import { useId, useState, type ReactNode } from 'react';
import type { Block } from '../../block/block.ts';
import { countOf } from '../../block/cells.ts';
import { gridOutOfRange, quoted, refused } from '../../block/problems.ts';
import { addCells, axisAt, coarsen, regrid, subdivide, takeCells, type BlockEdge, type Keeping } from '../../block/regridding.ts';
import type { Doing } from './doing.ts';
import { Notice } from './Notice.tsx';

const KEEPING: readonly (readonly [Keeping, string])[] = [
  ['patches in their cells', 'Patches stay in their cells, which change size'],
  ['size of a cell', 'Cells keep their size, and the block grows or shrinks at the right and the bottom'],
  ['picture', 'The picture stays, only the lines change'],
];

const EDGES: readonly (readonly [BlockEdge, string])[] = [
  ['top', 'at the top'], ['left', 'at the left'], ['right', 'at the right'], ['bottom', 'at the bottom'],
];

interface Typed {
  readonly columns: string;
  readonly rows: string;
}

/** How many cells there are, in the senses that can have; one more or less at an edge; finer and coarser. */
export function Cells({ block, doing }: { readonly block: Block; readonly doing: Doing }): ReactNode {
  const noticeId = useId();
  const name = useId();
  const [typed, setTyped] = useState<Typed | null>(null);
  const [keeping, setKeeping] = useState<Keeping>('patches in their cells');
  const count = countOf(block.grid);
  const shown = typed ?? { columns: String(count.columns), rows: String(count.rows) };
  const isCount = (text: string): boolean => /^\s*\d+\s*$/.test(text);
  return (
    <div className="grid-part">
      <h3>Columns and rows</h3>
      <form
        onSubmit={(event) => {
          event.preventDefault();
          const label = `${shown.columns.trim()} by ${shown.rows.trim()} cells`;
          const done = doing.change('cells', label, (now) => {
            for (const axis of ['columns', 'rows'] as const) {
              if (!isCount(shown[axis])) return refused(gridOutOfRange(axis, shown[axis].trim() === '' ? 'no' : quoted(shown[axis])));
            }
            return regrid(now, { columns: Number(shown.columns), rows: Number(shown.rows) }, keeping);
          });
          if (done) setTyped(null);
        }}
      >
        <div className="grid-fields">
          {(['columns', 'rows'] as const).map((axis) => (
            <label className="field" key={axis}>
              <span>{axis === 'columns' ? 'Columns' : 'Rows'}</span>
              <input
                type="text"
                inputMode="numeric"
                autoComplete="off"
                value={shown[axis]}
                aria-describedby={noticeId}
                aria-invalid={(typed !== null && doing.said.some(({ place }) => place === 'cells') && !isCount(shown[axis])) || undefined}
                onChange={(event) => setTyped({ ...shown, [axis]: event.target.value })}
              />
            </label>
          ))}
          <button type="submit" className="plain framed">
            Set the grid
          </button>
        </div>
        <Notice id={noticeId} place="cells" said={doing.said} />
        <fieldset className="grid-choices">
          <legend>What stays</legend>
          {KEEPING.map(([each, words]) => (
            <label key={each}>
              <input type="radio" name={name} checked={keeping === each} onChange={() => setKeeping(each)} />
              <span>{words}</span>
            </label>
          ))}
        </fieldset>
      </form>
      <div className="grid-row" role="group" aria-label="Every cell">
        <span aria-hidden="true">Every cell</span>
        {[2, 3].map((times) => (
          <button
            key={times}
            type="button"
            className="plain framed"
            onClick={() => doing.change('cell acts', `cells divided ${times} by ${times}`, (now) => subdivide(now, times))}
          >
            Divide {times} × {times}
          </button>
        ))}
        {[2, 3].map((times) => (
          <button
            key={times}
            type="button"
            className="plain framed"
            onClick={() => doing.change('cell acts', `cells joined ${times} by ${times}`, (now) => coarsen(now, times))}
          >
            Join {times} × {times}
          </button>
        ))}
      </div>
      <div className="grid-edges">
        <p>One more or fewer at an edge: the block grows or shrinks by it.</p>
        <div className="grid-compass" role="group" aria-label="Columns and rows at the edges">
          {EDGES.map(([edge, words]) => (
            <span key={edge} data-edge={edge}>
              {([['Take', Minus, takeCells], ['Add', Plus, addCells]] as const).map(([what, Sign, verb]) => {
                const label = `${what} a ${axisAt(edge) === 'columns' ? 'column' : 'row'} ${words}`;
                return (
                  <button
                    key={what}
                    type="button"
                    className="plain framed"
                    aria-label={label}
                    title={label}
                    onClick={() => doing.change('cell acts', label.toLowerCase(), (now) => verb(now, edge))}
                  >
                    <Sign size={18} aria-hidden="true" />
                  </button>
                );
              })}
            </span>
          ))}
          <span className="grid-compass-block" aria-hidden="true">
            {count.columns} × {count.rows}
          </span>
        </div>
      </div>
      <Notice place="cell acts" said={doing.said} />
    </div>
  );
}

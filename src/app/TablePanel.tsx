import { useDeferredValue, useEffect, useId, useMemo, useState, type ReactNode } from 'react';
import { cellFabrics, cellInWords, drawingInWords } from '../canvas/cell-fabrics.ts';
import { DrawingTable, type DrawingTableProps } from '../canvas/DrawingTable.tsx';
import type { Pointing } from '../canvas/hand.ts';
import { piecesUnder, pieceInks } from '../canvas/piece-ink.ts';
import type { Block } from '../block/block.ts';
import type { Pattern } from '../pattern/pattern.ts';
import { BlockHead } from './BlockHead.tsx';
import type { Kept } from './keeping.ts';
import { lights, litLine, markLines, threadsOf } from './lights.ts';
import { useStore } from './store.ts';
import { SwatchTray } from './SwatchTray.tsx';
import type { Acts, Table } from './table.ts';
import { TableFoot } from './TableFoot.tsx';
import { ToolRail } from './ToolRail.tsx';

const NOTHING: ReadonlySet<number> = new Set();
const KEPT_WORDS: Readonly<Record<Kept['state'], string>> = {
  kept: 'Kept in this browser',
  waiting: 'Keeping …',
  'not kept': 'Not kept: save a file before you close',
};

/** The drawing table with everything the hand needs round it. */
export function TablePanel({ now, acts, letters, pattern, kept }: {
  readonly now: Table;
  readonly acts: Acts;
  readonly letters: ReadonlyMap<string, string>;
  /** The pattern of this very drawing, or null while there is none. */
  readonly pattern: Pattern | null;
  readonly kept: Kept['state'];
}): ReactNode {
  const { block } = now.work;
  const describedBy = useId();
  const [place, setPlace] = useState<Pick<Pointing, 'cell' | 'by'> | null>(null);
  const [said, setSaid] = useState('');
  const threads = useMemo(() => pattern && threadsOf(pattern), [pattern]);
  const pieces = useMemo(() => (pattern ? pieceInks(pattern, block.grid) : []), [pattern, block.grid]);
  const line = useStore(lights, litLine);
  const lit = (line !== null && threads?.piecesOf.get(line)) || NOTHING;

  const [column, row] = place?.cell ?? [0, 0];
  const here = useMemo(
    () => place && `Row ${row + 1}, column ${column + 1}: ${cellInWords(cellFabrics(block, place.cell), 0, 0, (id) => nameIn(block, id))}`,
    [block, place, column, row],
  );
  // What the keys come to, and what they make of it, is said aloud; what a pointer passes is not.
  useEffect(() => {
    if (here !== null && place?.by === 'keys') setSaid(here);
  }, [here, place]);

  const deeds: DrawingTableProps['deeds'] = {
    lay: acts.lay,
    foresee: acts.foresee,
    fill: acts.fill,
    takeUpTool: acts.takeUpTool,
    say: setSaid,
    takeUpFabric: (id) => {
      acts.takeUpFabric(id);
      setSaid(nameIn(block, id));
    },
    point: (at) => {
      markLines(threads, at ? piecesUnder(pieces, at.places) : []);
      setPlace((known) => (at && known && at.by === known.by && at.cell[0] === known.cell[0] && at.cell[1] === known.cell[1] ? known : at));
    },
  };

  return (
    <section className="table" aria-labelledby="table-title">
      <BlockHead block={block} acts={acts} />
      <ToolRail tool={now.tool} takeUp={acts.takeUpTool} />
      <div className="table-room">
        <DrawingTable
          block={block}
          tool={now.tool}
          fabric={now.fabric}
          pieces={pieces}
          lit={lit}
          letters={now.lettered ? letters : null}
          describedBy={describedBy}
          deeds={deeds}
        />
        <DrawingInWords id={describedBy} block={block} />
        <p className="unseen" aria-live="polite">
          {said}
        </p>
        <p className="unseen" role="status">
          {kept === 'not kept' ? KEPT_WORDS[kept] : ''}
        </p>
      </div>
      <TableFoot now={now} words={here ?? KEPT_WORDS[kept]} acts={acts} />
      <SwatchTray block={block} fabric={now.fabric} letters={letters} acts={acts} />
    </section>
  );
}

const nameIn = (block: Block, id: string): string => block.fabrics.find((fabric) => fabric.id === id)?.name ?? id;

/** The drawing for those who listen: what lies in every row. It follows the hand when there is time. */
function DrawingInWords({ id, block }: { readonly id: string; readonly block: Block }): ReactNode {
  const late = useDeferredValue(block);
  const rows = useMemo(() => drawingInWords(cellFabrics(late), (fabric) => nameIn(late, fabric)), [late]);
  return (
    <div className="unseen">
      <p id={id}>
        Arrow keys move from cell to cell, Space lays cloth, Delete takes it up. S, H, Q, R, O, F, G and P take up a tool, T turns it,
        1 to 9 take up a fabric. Escape drops what was begun.
      </p>
      <h3>The drawing, row by row</h3>
      <ol>
        {rows.map((words, row) => (
          <li key={row}>{words}</li>
        ))}
      </ol>
    </div>
  );
}

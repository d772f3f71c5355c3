import { lazy, Suspense, useDeferredValue, useEffect, useId, useMemo, useState, type ReactNode } from 'react';
import { cellFabrics, cellInWords, drawingInWords } from '../canvas/cell-fabrics.ts';
import { DrawingTable, type DrawingTableProps } from '../canvas/DrawingTable.tsx';
import { knotInks } from '../canvas/draw-sewing.ts';
import { createGlass } from '../canvas/glass.ts';
import type { Pointing } from '../canvas/hand/bench.ts';
import { piecesUnder, pieceInks } from '../canvas/piece-ink.ts';
import type { Block, LatticePoint } from '../block/block.ts';
import { CLOTH_TOOLS, SEWING_TOOLS, type ToolLine } from '../canvas/tool.ts';
import type { Remedy } from '../measure/problem.ts';
import type { Pattern } from '../pattern/pattern.ts';
import { BlockHead } from './BlockHead.tsx';
import type { Kept } from './keeping.ts';
import { useSelection } from './selection/use-selection.ts';
import { lights, litLine, markLines, placesOf, threadsOf } from './lights.ts';
import { pinInWords } from './pin-words.ts';
import { useStore } from './store.ts';
import { SwatchTray } from './SwatchTray.tsx';
import { symmetryOn, type Acts, type Table } from './table.ts';
import { TableFoot } from './TableFoot.tsx';
import { ToolRail } from './ToolRail.tsx';
import { shown } from './views/shown.ts';
import { layUnder, tracingIn, underlay } from './views/underlay.ts';
import { cutsInCell, useOver } from './views/use-over.ts';
import { ViewRow } from './views/ViewRow.tsx';

const SelectionBar = lazy(() => import('./selection/SelectionBar.tsx'));
const PictureFrame = lazy(() => import('./views/PictureFrame.tsx'));

const NOTHING: ReadonlySet<number> = new Set();
const KEPT_WORDS: Readonly<Record<Kept['state'], string>> = {
  kept: 'Kept in this browser',
  waiting: 'Keeping …',
  'not kept': 'Not kept: save a file before you close',
};

/** The drawing table with everything the hand needs round it. */
export function TablePanel({ now, acts, letters, pattern, knot, remedies, kept, drawing }: {
  readonly now: Table;
  readonly acts: Acts;
  readonly letters: ReadonlyMap<string, string>;
  /** The pattern of this very drawing, or null while there is none. */
  readonly pattern: Pattern | null;
  /** Indices of the patches that lock each other in this very drawing. */
  readonly knot: readonly number[];
  /** What would free them. */
  readonly remedies: readonly Remedy[];
  readonly kept: Kept['state'];
  /** Id that the drawing is kept under. */
  readonly drawing: string;
}): ReactNode {
  const { block } = now.work;
  const describedBy = useId();
  const glass = useMemo(createGlass, []);
  const seen = useStore(shown, (all) => all);
  const tracing = useStore(underlay, tracingIn);
  const laying = useStore(underlay, (now) => now.laying);
  useEffect(() => void layUnder(drawing), [drawing]);
  const [place, setPlace] = useState<Pick<Pointing, 'cell' | 'by'> | null>(null);
  const [said, setSaid] = useState('');
  const { chosen, handle } = useSelection(now, acts, setSaid);
  const threads = useMemo(() => pattern && threadsOf(pattern), [pattern]);
  const pieces = useMemo(() => (pattern ? pieceInks(pattern, block.grid) : []), [pattern, block.grid]);
  const over = useOver(block, pattern, pieces, letters, seen);
  const knotted = useMemo(() => knotInks(block, knot), [block, knot]);
  const line = useStore(lights, litLine);
  const places = useMemo(() => placesOf(line, pattern, remedies, block.grid), [line, pattern, remedies, block.grid]);
  const lit = (line !== null && threads?.piecesOf.get(line)) || NOTHING;

  const [column, row] = place?.cell ?? [0, 0];
  const here = useMemo(
    () => {
      if (!place) return null;
      const words = cellInWords(cellFabrics(block, place.cell), 0, 0, (id) => nameIn(block, id));
      return `Row ${row + 1}, column ${column + 1}: ${words}${seen.sizes && pattern ? cutsInCell(block, pattern, pieces, place.cell) : ''}`;
    },
    [block, place, column, row, seen.sizes, pattern, pieces],
  );
  // What the keys come to, and what they make of it, is said aloud; what a pointer passes is not.
  useEffect(() => {
    if (here !== null && place?.by === 'keys' && now.tool !== 'choose') setSaid(here);
  }, [here, place]);
  // What is done with chosen patches is told as it is done; only where the cursor comes to is told as well.
  useEffect(() => {
    if (here !== null && place?.by === 'keys' && now.tool === 'choose') setSaid(here);
  }, [place]);

  // While patches are chosen, a fabric that is taken up is theirs.
  const takeUpFabric = (id: string): void => {
    if (chosen.indices.size > 0) return handle({ do: 'recolour', fabric: id });
    acts.takeUpFabric(id);
    setSaid(nameIn(block, id));
  };

  const deeds: DrawingTableProps['deeds'] = {
    lay: acts.lay,
    foresee: acts.foresee,
    fill: acts.fill,
    divide: (lines) => setSaid(acts.divide(lines)),
    keepWhole: (at) => setSaid(acts.keepWhole(at)),
    pin: (pin, places) => setSaid(acts.pin(pin, places)),
    takeUpTool: acts.takeUpTool,
    takeUpSymmetry: acts.takeUpSymmetry,
    say: setSaid,
    takeUpFabric,
    handle,
    point: (at) => {
      markLines(threads, at ? piecesUnder(pieces, at.places) : []);
      setPlace((known) => (at && known && at.by === known.by && at.cell[0] === known.cell[0] && at.cell[1] === known.cell[1] ? known : at));
    },
  };

  return (
    <section className="table" aria-labelledby="table-title">
      <BlockHead block={block} pattern={pattern} acts={acts} />
      <ToolRail tool={now.tool} takeUp={acts.takeUpTool} block={block} symmetry={symmetryOn(now)} takeUpSymmetry={acts.takeUpSymmetry} />
      <div className="table-room">
        <DrawingTable
          block={block}
          tool={now.tool}
          fabric={now.fabric}
          symmetry={symmetryOn(now)}
          chosen={chosen}
          over={over}
          hatched={seen.hatches}
          greys={seen.greys}
          tracing={tracing}
          glass={glass}
          lit={lit}
          places={places}
          knot={knotted}
          describedBy={describedBy}
          deeds={deeds}
        />
        {laying && tracing && (
          <Suspense fallback={null}>
            <PictureFrame glass={glass} />
          </Suspense>
        )}
        {now.tool === 'choose' && (
          <Suspense fallback={null}>
            <SelectionBar block={block} fabric={now.fabric} chosen={chosen} handle={handle} />
          </Suspense>
        )}
        <DrawingInWords id={describedBy} block={block} />
        <p className="unseen" aria-live="polite">
          {said}
        </p>
        <p className="unseen" role="status">
          {kept === 'not kept' ? KEPT_WORDS[kept] : ''}
        </p>
      </div>
      <div className="table-below">
        <ViewRow block={block} glass={glass} />
        <TableFoot now={now} words={here ?? KEPT_WORDS[kept]} acts={acts} />
      </div>
      <SwatchTray block={block} fabric={now.fabric} letters={letters} acts={chosen.indices.size > 0 ? { ...acts, takeUpFabric } : acts} />
    </section>
  );
}

const nameIn = (block: Block, id: string): string => block.fabrics.find((fabric) => fabric.id === id)?.name ?? id;

/** @returns "S, H and Q" */
const keysOf = (tools: readonly ToolLine[]): string =>
  `${tools.slice(0, -1).map(({ key }) => key).join(', ')} and ${tools.at(-1)!.key}`;

/** @returns what is asked of the sewing: seams, patches kept whole and pins, in words */
function askedInWords(block: Block): string[] {
  const { seams, patches, pins = [], denominator } = block;
  const place = ([x, y]: LatticePoint): string => `${x / denominator} across, ${y / denominator} down`;
  return [
    ...seams.map(([from, to]) => `Seam from ${place(from)} to ${place(to)}.`),
    ...patches.flatMap(({ whole, fabric }, i) => (whole ? [`Patch ${i + 1}, ${nameIn(block, fabric)}, kept whole.`] : [])),
    ...pins.map((pin, i) => `Pin ${i + 1}: ${pin.pin}, ${pinInWords(block, pin)}.`),
  ];
}

/** The drawing for those who listen: what lies in every row. It follows the hand when there is time. */
function DrawingInWords({ id, block }: { readonly id: string; readonly block: Block }): ReactNode {
  const late = useDeferredValue(block);
  // In other cloth the same fabrics lie in the same places.
  const cells = useMemo(() => cellFabrics(late), [late.patches, late.ground, late.grid, late.denominator]);
  const rows = useMemo(() => drawingInWords(cells, (fabric) => nameIn(late, fabric)), [cells, late.fabrics]);
  const asked = useMemo(() => askedInWords(late), [late]);
  return (
    <div className="unseen in-words" aria-busy={late !== block}>
      <p id={id}>
        Arrow keys move from cell to cell, Space lays cloth, Delete takes it up. {keysOf(CLOTH_TOOLS)} take up a tool, T turns it,
        M goes on to the next symmetry, 1 to 9 take up a fabric. {keysOf(SEWING_TOOLS)} take up what tells how to sew: a seam, a patch kept whole, one unit, the seam
        sewn last. Escape drops what was begun. Plus and minus bring the drawing nearer and farther, 0 shows all of it.
      </p>
      <h3>The drawing, row by row</h3>
      <ol>
        {rows.map((words, row) => (
          <li key={row}>{words}</li>
        ))}
      </ol>
      {asked.length > 0 && (
        <>
          <h3>Asked of the sewing</h3>
          <ul className="asked">
            {asked.map((words, i) => (
              <li key={i}>{words}</li>
            ))}
          </ul>
        </>
      )}
    </div>
  );
}

import { useEffect, useLayoutEffect, useMemo, useRef } from 'react';
import type { CSSProperties, KeyboardEvent, PointerEvent, ReactNode } from 'react';
import type { Block } from '../block/block.ts';
import { countOf } from '../block/cells.ts';
import { toNumber } from '../measure/rational.ts';
import type { KnotInk } from './draw-sewing.ts';
import { createEasel } from './easel.ts';
import type { Deeds } from './hand/bench.ts';
import { createHand } from './hand/hand.ts';
import { inkColorsOf } from './ink.ts';
import type { PieceInk } from './piece-ink.ts';
import { tapeFor } from './ruler-marks.ts';
import { tableVerb } from './table-keys.ts';
import { TableLayers } from './TableLayers.tsx';
import type { Tool } from './tool.ts';
import { useDarkness, useRoom } from './use-room.ts';
import { fitView } from './view.ts';

export interface DrawingTableProps {
  readonly block: Block;
  readonly tool: Tool;
  /** Id of the fabric in the hand. */
  readonly fabric: string;
  /** The pattern's pieces, while they are those of this very drawing; none before. */
  readonly pieces: readonly PieceInk[];
  /** Ids of the pieces to light up. */
  readonly lit: ReadonlySet<number>;
  /** Patches that lock each other. */
  readonly knot: readonly KnotInk[];
  /** The fabrics' letters, to write them on the pieces; null to leave them off. */
  readonly letters: ReadonlyMap<string, string> | null;
  /** Id of the element that describes the drawing in words. */
  readonly describedBy: string;
  readonly deeds: Omit<Deeds, 'sweep' | 'redraw'>;
}

/** The drawing table: the block on its grid, painted by pointer or by keys. */
export function DrawingTable({ block, tool, fabric, pieces, lit, knot, letters, describedBy, deeds }: DrawingTableProps): ReactNode {
  const element = useRef<HTMLDivElement>(null);
  const room = useRoom(element);
  const count = countOf(block.grid);
  const dark = useDarkness();
  const easel = useMemo(createEasel, []);
  const { view, tapeText } = useMemo(() => {
    const tape = tapeFor(block, room.width, room.text);
    return { view: fitView(block, room, tape.margins), tapeText: tape.text };
  }, [block.finished, block.grid, room]);
  const litPieces = useMemo(() => pieces.filter(({ id }) => lit.has(id)), [pieces, lit]);

  // What the hand sees: always the latest.
  const now = useRef({ block, tool, fabric, view, deeds });
  now.current = { block, tool, fabric, view, deeds };
  const hand = useMemo(
    () =>
      createHand(() => now.current, {
        lay: (strokes, id) => now.current.deeds.lay(strokes, id),
        foresee: (strokes, id) => now.current.deeds.foresee(strokes, id),
        fill: (at, id) => now.current.deeds.fill(at, id),
        divide: (line) => now.current.deeds.divide(line),
        keepWhole: (at) => now.current.deeds.keepWhole(at),
        pin: (pin, line) => now.current.deeds.pin(pin, line),
        takeUpFabric: (id) => now.current.deeds.takeUpFabric(id),
        takeUpTool: (taken) => now.current.deeds.takeUpTool(taken),
        point: (at) => now.current.deeds.point(at),
        say: (words) => now.current.deeds.say(words),
        sweep: (added, id) => easel.sweep(added, id),
        redraw: () => easel.mark(hand.marks()),
      }),
    [easel],
  );

  useLayoutEffect(() => easel.show({ block, view, ratio: room.ratio, tapeText }), [easel, block, view, room.ratio, tapeText]);
  useLayoutEffect(() => easel.showPieces(pieces, letters), [easel, pieces, letters]);
  useLayoutEffect(() => easel.showKnot(knot), [easel, knot]);
  useLayoutEffect(() => easel.light(litPieces), [easel, litPieces]);
  useLayoutEffect(() => easel.mark(hand.marks()), [easel, hand, tool, fabric, block]);
  useLayoutEffect(() => {
    if (element.current) easel.dress(inkColorsOf(element.current), getComputedStyle(element.current).fontFamily);
  }, [easel, dark]);
  // Another tool, or another block under the hand, ends what was begun with the last one.
  useEffect(() => () => hand.drop(), [hand, tool, block.grid]);

  const onKeyDown = (event: KeyboardEvent): void => {
    const verb = tableVerb(event.nativeEvent);
    if (!verb) return;
    event.preventDefault();
    hand.key(verb);
  };

  const place = (event: PointerEvent): readonly [number, number] => {
    const box = element.current!.getBoundingClientRect();
    return [event.clientX - box.left - element.current!.clientLeft, event.clientY - box.top - element.current!.clientTop];
  };

  return (
    <div
      ref={element}
      className="table-cloth"
      // How high the block is for its width, for tables that are only as high as they need.
      style={{ '--shape': toNumber(block.finished.height) / toNumber(block.finished.width) } as CSSProperties}
      tabIndex={0}
      role="application"
      aria-roledescription="drawing table"
      aria-label={`${block.name}, ${count.columns} by ${count.rows} cells`}
      aria-describedby={describedBy}
      data-lit={litPieces.length}
      data-patches={block.patches.length}
      data-knot={knot.map(({ number }) => number).join(' ')}
      data-grid={`${block.grid.columns} ${block.grid.rows}`}
      data-view={`${view.left} ${view.top} ${view.width} ${view.height}`}
      onKeyDown={onKeyDown}
      onFocus={() => hand.focus(element.current?.matches(':focus-visible') ?? false)}
      onBlur={() => hand.blur()}
      onPointerDown={(event) => {
        if (!event.isPrimary || (event.button !== 0 && event.button !== 2)) return;
        element.current?.setPointerCapture(event.pointerId);
        hand.pointerDown(...place(event), event.button === 2 || event.altKey);
      }}
      onPointerMove={(event) => event.isPrimary && hand.pointerMove(...place(event))}
      onPointerUp={(event) => event.isPrimary && hand.pointerUp()}
      onPointerCancel={(event) => event.isPrimary && hand.drop()}
      onPointerLeave={() => hand.pointerLeave()}
      onContextMenu={(event) => event.preventDefault()}
    >
      <TableLayers width={room.width} height={room.height} painters={easel.painters} keep={easel.keep} />
    </div>
  );
}

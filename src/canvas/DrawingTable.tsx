import { useEffect, useLayoutEffect, useMemo, useRef, useSyncExternalStore } from 'react';
import type { CSSProperties, KeyboardEvent, PointerEvent, ReactNode } from 'react';
import type { Block } from '../block/block.ts';
import { countOf } from '../block/cells.ts';
import type { SymmetryName } from '../block/symmetry.ts';
import { toNumber } from '../measure/rational.ts';
import type { Chosen } from './draw-selection.ts';
import type { KnotInk } from './draw-sewing.ts';
import { createEasel, type Over } from './easel.ts';
import { createFingers, type Touch } from './fingers.ts';
import type { GridOutline } from './gesture.ts';
import type { Glass } from './glass.ts';
import type { Deeds } from './hand/bench.ts';
import { createHand } from './hand/hand.ts';
import { inkColorsOf } from './ink.ts';
import { createLatePointing } from './late-pointing.ts';
import { viewThrough } from './look.ts';
import { tapeFor } from './ruler-marks.ts';
import { tableVerb } from './table-keys.ts';
import { TableLayers } from './TableLayers.tsx';
import type { Tool } from './tool.ts';
import type { Tracing } from './tracing.ts';
import { useDarkness, useRoom } from './use-room.ts';
import { useWheel } from './use-wheel.ts';
import { inGreys } from './values.ts';
import { fitView } from './view.ts';
import { viewVerb, type ViewVerb } from './view-keys.ts';

export interface DrawingTableProps {
  readonly block: Block;
  readonly tool: Tool;
  /** Id of the fabric in the hand. */
  readonly fabric: string;
  /** Where else is done what the hand does in one place. */
  readonly symmetry: SymmetryName;
  /** The patches that are chosen. */
  readonly chosen: Chosen;
  /** What is drawn over the cloth. */
  readonly over: Over;
  /** Whether every fabric is shown hatched in its own way, and whether in the grey of its value. */
  readonly hatched: boolean;
  readonly greys: boolean;
  /** The picture under the cloth. */
  readonly tracing: Tracing | null;
  readonly glass: Glass;
  /** Ids of the pieces to light up. */
  readonly lit: ReadonlySet<number>;
  /** Places to light up, in grid units: the two ends of a seam, or a corner. */
  readonly places: readonly GridOutline[];
  /** Patches that lock each other. */
  readonly knot: readonly KnotInk[];
  /** Id of the element that describes the drawing in words. */
  readonly describedBy: string;
  readonly deeds: Omit<Deeds, 'sweep' | 'redraw'>;
}

/** How much nearer one press of a key brings the drawing, and how far one moves it, in pixels. */
const KEY_STEP = 1.25;
const KEY_PUSH = 60;

/** The drawing table: the block on its grid, painted by pointer or by keys. */
export function DrawingTable(props: DrawingTableProps): ReactNode {
  const { block: drawn, tool, fabric, symmetry, chosen, over, hatched, greys, tracing, glass, lit, places, knot, describedBy, deeds } = props;
  const greyed = useMemo(() => (greys ? inGreys(drawn.fabrics) : drawn.fabrics), [greys, drawn.fabrics]);
  const block = useMemo(() => (greyed === drawn.fabrics ? drawn : { ...drawn, fabrics: greyed }), [drawn, greyed]);
  const element = useRef<HTMLDivElement>(null);
  const room = useRoom(element);
  const count = countOf(block.grid);
  const dark = useDarkness();
  const easel = useMemo(createEasel, []);
  const { fit, tapeText } = useMemo(() => {
    const tape = tapeFor(block, room.width, room.text);
    return { fit: fitView(block, room, tape.margins), tapeText: tape.text };
  }, [block.finished, block.grid, room]);
  const look = useSyncExternalStore(glass.subscribe, () => glass.seen().look);
  const view = useMemo(() => viewThrough(fit, look), [fit, look]);
  const litPieces = useMemo(() => over.pieces.filter(({ id }) => lit.has(id)), [over.pieces, lit]);

  // What the hand sees: always the latest.
  const now = useRef({ block, tool, fabric, symmetry, chosen, view, deeds });
  now.current = { block, tool, fabric, symmetry, chosen, view, deeds };
  const reveal = (column: number, row: number): void => {
    const { cells, columns, rows } = now.current.view;
    const share = (lines: readonly number[], line: number, units: number): number => lines[line]! / cells.denominator / units;
    glass.reveal({
      left: share(cells.across, column, columns),
      top: share(cells.down, row, rows),
      right: share(cells.across, column + 1, columns),
      bottom: share(cells.down, row + 1, rows),
    });
  };
  const draws = useRef<() => boolean>(() => false);
  const pointing = useMemo(() => createLatePointing((at) => now.current.deeds.point(at), () => draws.current()), []);
  useEffect(() => pointing.stop, [pointing]);
  const hand = useMemo(
    () =>
      createHand(() => now.current, {
        lay: (strokes, id) => now.current.deeds.lay(strokes, id),
        foresee: (strokes, id) => now.current.deeds.foresee(strokes, id),
        fill: (at, reach, id) => now.current.deeds.fill(at, reach, id),
        divide: (lines) => now.current.deeds.divide(lines),
        keepWhole: (at) => now.current.deeds.keepWhole(at),
        pin: (pin, places) => now.current.deeds.pin(pin, places),
        handle: (handling) => now.current.deeds.handle(handling),
        takeUpFabric: (id) => now.current.deeds.takeUpFabric(id),
        takeUpTool: (taken) => now.current.deeds.takeUpTool(taken),
        takeUpSymmetry: (taken) => now.current.deeds.takeUpSymmetry(taken),
        point: (at) => {
          if (at?.by === 'keys') reveal(...at.cell);
          pointing.point(at);
        },
        say: (words) => now.current.deeds.say(words),
        sweep: (added, id) => easel.sweep(added, id),
        redraw: () => easel.mark(hand.marks()),
      }),
    [easel],
  );

  const fingers = useMemo(
    () => createFingers(() => hand, glass, () => now.current.tool, (dx, dy) => window.scrollBy(dx, dy)),
    [hand, glass],
  );
  draws.current = fingers.drawing;
  useWheel(element, glass);

  useLayoutEffect(() => glass.lay(fit), [glass, fit]);
  useLayoutEffect(() => easel.trace(tracing), [easel, tracing]);
  useLayoutEffect(() => easel.hatch(hatched), [easel, hatched]);
  useLayoutEffect(() => easel.show({ block, view, ratio: room.ratio, tapeText }), [easel, block, view, room.ratio, tapeText]);
  useLayoutEffect(() => easel.layOver(over), [easel, over]);
  useLayoutEffect(() => easel.showKnot(knot), [easel, knot]);
  useLayoutEffect(() => easel.light(litPieces, places), [easel, litPieces, places]);
  useLayoutEffect(() => easel.mark(hand.marks()), [easel, hand, tool, fabric, symmetry, chosen, block]);
  useLayoutEffect(() => {
    if (element.current) easel.dress(inkColorsOf(element.current), getComputedStyle(element.current).fontFamily);
  }, [easel, dark]);
  // Another tool, or another block under the hand, ends what was begun with the last one.
  useEffect(() => () => hand.drop(), [hand, tool, block.grid]);

  // Another grid is another drawing: it is first shown whole.
  const grid = useRef(block.grid);
  useEffect(() => {
    if (grid.current !== block.grid) glass.whole();
    grid.current = block.grid;
  }, [glass, block.grid]);

  /** Whether a mouse was the last to do something here, so that the Space bar waits: it may be held to move the drawing. */
  const byMouse = useRef(false);
  const held = useRef(false);
  const hold = (next: boolean): void => {
    if (held.current === next) return;
    held.current = next;
    if (!fingers.hold(next) && !next) hand.key({ verb: 'use' });
  };

  const turnGlass = (asked: ViewVerb): void => {
    if (asked.verb === 'nearer') glass.nearer(KEY_STEP);
    else if (asked.verb === 'farther') glass.nearer(1 / KEY_STEP);
    else if (asked.verb === 'whole') glass.whole();
    else glass.move(asked.dx * KEY_PUSH, asked.dy * KEY_PUSH);
  };

  const onKeyDown = (event: KeyboardEvent): void => {
    const asked = viewVerb(event.nativeEvent);
    const verb = asked ? null : tableVerb(event.nativeEvent);
    if (!asked && !verb) return;
    event.preventDefault();
    if (asked) return turnGlass(asked);
    if (verb!.verb === 'use' && byMouse.current) return hold(true);
    byMouse.current = false;
    hand.key(verb!);
  };

  const touch = (event: PointerEvent): Touch => {
    const box = element.current!.getBoundingClientRect();
    byMouse.current = event.pointerType === 'mouse';
    return {
      id: event.pointerId,
      kind: event.pointerType,
      primary: event.isPrimary,
      button: event.button,
      alt: event.altKey,
      shift: event.shiftKey,
      at: [event.clientX - box.left - element.current!.clientLeft, event.clientY - box.top - element.current!.clientTop],
    };
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
      data-places={places.length}
      data-divisions={over.sewn.divisions.length}
      data-refused={[...over.sewn.refused].map((pin) => pin + 1).join(' ')}
      data-patches={block.patches.length}
      data-chosen={chosen.indices.size}
      data-knot={knot.map(({ number }) => number).join(' ')}
      data-grid={`${block.grid.columns} ${block.grid.rows}`}
      data-view={`${view.left} ${view.top} ${view.width} ${view.height}`}
      data-zoom={look.zoom}
      onKeyDown={onKeyDown}
      onKeyUp={(event) => event.key === ' ' && hold(false)}
      onFocus={() => hand.focus(element.current?.matches(':focus-visible') ?? false)}
      onBlur={() => {
        held.current = false;
        fingers.hold(false);
        hand.blur();
      }}
      onPointerDown={(event) => fingers.down(touch(event)) && element.current?.setPointerCapture(event.pointerId)}
      onPointerMove={(event) => fingers.move(touch(event))}
      onPointerUp={(event) => {
        fingers.up(touch(event));
        pointing.lifted();
      }}
      onPointerCancel={(event) => {
        fingers.cancel(touch(event));
        pointing.lifted();
      }}
      onPointerLeave={() => hand.pointerLeave()}
      // The middle button would scroll the page.
      onMouseDown={(event) => event.button === 1 && event.preventDefault()}
      onContextMenu={(event) => event.preventDefault()}
    >
      <TableLayers width={room.width} height={room.height} painters={easel.painters} keep={easel.keep} />
    </div>
  );
}

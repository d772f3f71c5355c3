import { actsOn, symmetryOn, tableWith, type Acts, type Table } from '../../src/app/table.ts';
import { createRest } from '../../src/app/rest.ts';
import { chosenIn, createArranger } from '../../src/app/selection/arranger.ts';
import { letGo, taken } from '../../src/app/selection/taken.ts';
import { createStore, type Store } from '../../src/app/store.ts';
import type { Block } from '../../src/block/block.ts';
import { begun } from '../../src/block/history.ts';
import { NOTHING_CHOSEN } from '../../src/canvas/draw-selection.ts';
import type { Deeds } from '../../src/canvas/hand/bench.ts';
import { createHand, type Hand } from '../../src/canvas/hand/hand.ts';
import { fitView, pixelOf, type View } from '../../src/canvas/view.ts';

/** The drawing table without a screen: a hand, what it holds, and what it does. */
export interface AtTheTable {
  readonly table: Store<Table>;
  readonly acts: Acts;
  readonly hand: Hand;
  readonly block: () => Block;
  readonly view: () => View;
  /** Draws one stroke through places given in grid units; a single one is a tap. */
  readonly draw: (...places: readonly (readonly [number, number])[]) => void;
  /** Does something with the patches that are chosen. */
  readonly handle: Deeds['handle'];
  /** Hears what the hand does to the drawing. */
  readonly heard: Heard;
}

type Told = Parameters<Deeds['lay']>;
interface Heard {
  laid: Told | null;
  filled: Parameters<Deeds['fill']> | null;
  /** Whether anything else was done to the drawing. */
  sewn: boolean;
  swept: number;
  said: string;
}

/** @returns a table with a block on it, as the page puts it together */
export function atTheTable(start: Block): AtTheTable {
  const table = createStore<Table>(tableWith(begun(start)));
  const acts = actsOn(table, createRest());
  letGo();
  const arranger = createArranger({ block: () => table.get().work.block, acts });
  const heard: Heard = { laid: null, filled: null, sewn: false, swept: 0, said: '' };
  const view = (): View => fitView(table.get().work.block, { width: 700, height: 640 }, { left: 40, top: 30, free: 10 });
  const sewn = (words: string): void => {
    heard.sewn = true;
    heard.said = words;
  };
  const hand = createHand(
    () => {
      const now = table.get();
      const chosen = now.tool === 'choose' ? chosenIn(now.work.block, taken.get()) : NOTHING_CHOSEN;
      return { block: now.work.block, view: view(), tool: now.tool, fabric: now.fabric, symmetry: symmetryOn(now), chosen };
    },
    {
      lay: (...told) => {
        heard.laid = told;
        acts.lay(...told);
      },
      foresee: acts.foresee,
      fill: (...told) => {
        heard.filled = told;
        acts.fill(...told);
      },
      divide: (lines) => sewn(acts.divide(lines)),
      keepWhole: (at) => sewn(acts.keepWhole(at)),
      pin: (pin, places) => sewn(acts.pin(pin, places)),
      handle: (handling) => sewn(arranger.handle(handling)),
      takeUpFabric: acts.takeUpFabric,
      takeUpTool: acts.takeUpTool,
      takeUpSymmetry: acts.takeUpSymmetry,
      point: () => undefined,
      say: (words) => void (heard.said = words),
      sweep: (added) => void (heard.swept += added?.length ?? 0),
      redraw: () => void hand.marks(),
    } satisfies Deeds,
  );
  return {
    table, acts, hand, heard, view,
    handle: (handling) => sewn(arranger.handle(handling)),
    block: () => table.get().work.block,
    draw: (first, ...others) => {
      hand.pointerMove(...pixelOf(view(), ...first!));
      hand.pointerDown(...pixelOf(view(), ...first!), false);
      for (const place of others) hand.pointerMove(...pixelOf(view(), ...place));
      hand.pointerUp();
    },
  };
}

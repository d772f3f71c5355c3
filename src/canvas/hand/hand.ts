import { cellsOf } from '../../block/cells.ts';
import { allows, SYMMETRIES } from '../../block/symmetry.ts';
import { fabricAt, QUARTER_MIDDLES } from '../cell-fabrics.ts';
import { NO_MARKS, type Marks } from '../draw-marks.ts';
import { strokeInCell, type GridPoint } from '../gesture.ts';
import { nearestCellTo, type Cell } from '../stride.ts';
import type { TableVerb } from '../table-keys.ts';
import { TOOLS, turnAt, turnName, type Tool, type Turn } from '../tool.ts';
import { cellAt, gridPointAt, gridPointIn, nearestCell } from '../view.ts';
import type { Bench, Deeds } from './bench.ts';
import { laying } from './laying.ts';
import { outlining } from './outlining.ts';
import { repeatedMarks, repeating } from './repeating.ts';
import { seaming } from './seaming.ts';
import { selecting } from './selecting.ts';
import { spanning } from './spanning.ts';
import { tapping } from './tapping.ts';
import type { Grip, Use } from './use.ts';

/** The hand over the table: turns pointer moves and keys into patches. It keeps only the gesture under way. */
export interface Hand {
  readonly marks: () => Marks;
  readonly pointerDown: (px: number, py: number, picking: boolean, shifted?: boolean) => void;
  readonly pointerMove: (px: number, py: number) => void;
  readonly pointerUp: () => void;
  readonly pointerLeave: () => void;
  /** Drops the gesture under way; nothing is laid. */
  readonly drop: () => void;
  readonly key: (verb: TableVerb) => void;
  readonly focus: (byKeys: boolean) => void;
  readonly blur: () => void;
}

/** @returns a hand that rests beside the table */
export function createHand(bench: () => Bench, world: Deeds): Hand {
  const deeds = repeating(bench, world);
  let by: 'pointer' | 'keys' | null = null;
  let at: GridPoint = [0.5, 0.5];
  let turn: Turn = 0;
  let shifted = false;

  const cells = () => cellsOf(bench().block.grid);
  const cell = (): Cell => nearestCellTo(cells(), at);
  /** The middle of a cell, or of one of its quarters. */
  const placeIn = ([column, row]: Cell, [u, v]: GridPoint): GridPoint => gridPointIn(cells(), { column, row, u, v });
  const middleOf = (here: Cell): GridPoint => placeIn(here, [0.5, 0.5]);

  const grip: Grip = {
    bench,
    cells,
    cell,
    deeds,
    by: () => by,
    at: () => at,
    aim: () => (by === 'keys' ? placeIn(cell(), QUARTER_MIDDLES[turn]!) : at),
    turn: () => turn,
    shifted: () => shifted,
    fabric: () => (bench().tool === 'ground' ? bench().block.ground : bench().fabric),
  };
  const [lay, span, outline, seam, tap] = [laying(grip), spanning(grip), outlining(grip), seaming(grip), tapping(grip)];
  const choose = selecting(grip);
  const uses: Readonly<Record<Tool, Use>> = {
    square: lay, half: lay, quarter: lay, ground: lay, rectangle: span, 'half rectangle': span, peak: span, unit: span, outline, seam, fill: tap, pick: tap, whole: tap, last: tap,
    choose,
  };
  const inUse = (): Use => uses[bench().tool];

  const idle = (): boolean => by === null && !inUse().busy() && bench().chosen.indices.size === 0;
  const marks = (): Marks => repeatedMarks(bench(), idle() ? NO_MARKS : { ...NO_MARKS, ...inUse().marks() });

  const pointHere = (): void => {
    const here = cell();
    const places = by === 'keys' ? QUARTER_MIDDLES.map((middle) => placeIn(here, middle)) : [at];
    deeds.point({ by: by ?? 'keys', cell: here, places });
    deeds.redraw();
  };

  const pointerDown: Hand['pointerDown'] = (px, py, picking, withShift = false) => {
    const { view, tool, block } = bench();
    const place = cellAt(view, px, py);
    const reaches = inUse().reaches && !picking;
    if (!place && !reaches) return;
    by = 'pointer';
    shifted = withShift;
    at = reaches ? gridPointIn(view.cells, nearestCell(view, px, py)) : gridPointAt(view, px, py);
    if (picking) return deeds.takeUpFabric(fabricAt(block, at));
    turn = turnAt(tool, place ?? nearestCell(view, px, py));
    inUse().press();
    pointHere();
  };

  const pointerMove: Hand['pointerMove'] = (px, py) => {
    const { view, tool } = bench();
    if (!inUse().busy() && cellAt(view, px, py) === null) return pointerLeave();
    const near = nearestCell(view, px, py);
    by = 'pointer';
    at = gridPointIn(view.cells, near);
    if (inUse().busy()) inUse().draw(gridPointAt(view, px, py));
    else turn = turnAt(tool, near);
    pointHere();
  };

  const pointerUp: Hand['pointerUp'] = () => {
    inUse().lift();
    deeds.redraw();
  };

  const pointerLeave: Hand['pointerLeave'] = () => {
    if (by !== 'pointer' || inUse().busy()) return;
    by = null;
    deeds.point(null);
    deeds.redraw();
  };

  const drop: Hand['drop'] = () => {
    for (const use of new Set(Object.values(uses))) use.drop();
    deeds.redraw();
  };

  const takeToKeys = (): void => {
    if (by !== 'keys') at = middleOf(cell());
    by = 'keys';
  };

  const walk = (dx: number, dy: number, half = false): void => {
    const led = inUse().walk(dx, dy, half);
    if (led === 'here') return deeds.redraw();
    if (led) {
      at = led;
      deeds.point({ by: 'keys', cell: cell(), places: [at] });
      deeds.say(`${at[0]} across, ${at[1]} down.`);
      return deeds.redraw();
    }
    const [column, row] = cell();
    const { across, down } = cells();
    const kept = (value: number, count: number): number => Math.min(count - 1, Math.max(0, value));
    at = middleOf([kept(column + dx, across.length - 1), kept(row + dy, down.length - 1)]);
    pointHere();
  };

  const key: Hand['key'] = (asked) => {
    const { tool, block } = bench();
    takeToKeys();
    switch (asked.verb) {
      case 'move':
        return walk(asked.dx, asked.dy, asked.half === true);
      case 'edge':
        return walk(asked.dx * cells().across.length * 2, asked.dy * cells().down.length * 2);
      case 'use':
        inUse().use();
        return deeds.redraw();
      case 'close':
        inUse().close();
        return deeds.redraw();
      case 'cancel':
        if (inUse().drop()) deeds.say('Dropped.');
        else inUse().leave();
        return deeds.redraw();
      case 'erase':
        if (!inUse().back()) deeds.lay([strokeInCell(cells(), 'square', cell(), 0)], block.ground);
        return deeds.redraw();
      case 'turn':
        if (inUse().turn(asked.by)) return deeds.redraw();
        turn = ((turn + asked.by) % 4) as Turn;
        deeds.say(turnName(tool, turn) || 'This tool does not turn.');
        return deeds.redraw();
      case 'take': {
        if (asked.tool !== tool) drop();
        deeds.takeUpTool(asked.tool);
        const taken = TOOLS.find((each) => each.tool === asked.tool)!;
        deeds.say([taken.name, turnName(asked.tool, turn)].filter((words) => words !== '').join(', '));
        return;
      }
      case 'symmetry': {
        const allowed = SYMMETRIES.filter((each) => allows(block, each));
        const next = allowed.at((allowed.indexOf(bench().symmetry) + asked.by) % allowed.length)!;
        deeds.takeUpSymmetry(next);
        deeds.say(`Symmetry: ${next}.`);
        return deeds.redraw();
      }
      case 'fabric': {
        const fabric = block.fabrics[asked.index];
        if (fabric) deeds.takeUpFabric(fabric.id);
        else deeds.say(`There is no fabric ${asked.index + 1}.`);
        return deeds.redraw();
      }
    }
  };

  return {
    marks, pointerDown, pointerMove, pointerUp, pointerLeave, drop, key,
    focus: (byKeys) => {
      if (!byKeys) return;
      takeToKeys();
      pointHere();
    },
    blur: () => {
      if (by !== 'keys') return;
      by = null;
      drop();
      deeds.point(null);
    },
  };
}

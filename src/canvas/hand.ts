import type { Block } from '../block/block.ts';
import type { Stroke } from '../block/painting.ts';
import type { Pin } from '../geometry/patchwork/drawing.ts';
import { patchAt } from '../block/patches.ts';
import { fabricAt, pointNear, QUARTER_MIDDLES } from './cell-fabrics.ts';
import { NO_MARKS, type Marks } from './draw-marks.ts';
import {
  addCorner, beginSweep, extendSweep, lineAlong, lineNear, outlineOf, rectangleBetween, snapToHalfGrid, strokeAlong,
  strokeInCell, type GridOutline, type GridPoint, type Sweep,
} from './gesture.ts';
import type { Cell } from './stride.ts';
import type { TableVerb } from './table-keys.ts';
import { TOOLS, turnAt, turnName, type Tool, type Turn } from './tool.ts';
import { cellAt, gridPointAt, nearestCell, type View } from './view.ts';

/** What the hand works on and with, as it stands now. */
export interface Bench {
  readonly block: Block;
  readonly view: View;
  readonly tool: Tool;
  /** Id of the fabric the hand holds. */
  readonly fabric: string;
}

/** The place the pointer or the cell cursor is at. */
export interface Pointing {
  readonly by: 'pointer' | 'keys';
  readonly cell: Cell;
  /** The places meant, in grid units: the very point, or the middles of the cell's quarters. */
  readonly places: readonly GridPoint[];
}

/** What the hand does to the world. */
export interface Deeds {
  /** Lays patches of one fabric, as one change of the drawing. */
  readonly lay: (strokes: readonly Stroke[], fabric: string) => void;
  /** What the sweep under way will lay for certain, as it grows; null when it is dropped. */
  readonly foresee: (strokes: readonly Stroke[] | null, fabric: string) => void;
  /** Gives the whole area of one fabric at a place another fabric, as one change of the drawing. */
  readonly fill: (at: GridPoint, fabric: string) => void;
  /** Draws a seam between two points of the half grid, or takes the same one away. */
  readonly divide: (from: GridPoint, to: GridPoint) => void;
  /** Keeps the patch at a place whole, or lets it be divided again. */
  readonly keepWhole: (at: GridPoint) => void;
  /** Sets a pin between two points of the grid, or takes the same one away. */
  readonly pin: (pin: Pin['pin'], from: GridPoint, to: GridPoint) => void;
  readonly takeUpFabric: (fabric: string) => void;
  readonly takeUpTool: (tool: Tool) => void;
  readonly point: (at: Pointing | null) => void;
  /** Something to hear for those who work by ear. */
  readonly say: (words: string) => void;
  /** A sweep begins or grows by some patches, or (null) is over. */
  readonly sweep: (added: readonly Stroke[] | null, fabric: string) => void;
  /** The marks changed. */
  readonly redraw: () => void;
}

/** The hand over the table: turns pointer moves and keys into patches. It keeps only the gesture under way. */
export interface Hand {
  readonly marks: () => Marks;
  readonly pointerDown: (px: number, py: number, picking: boolean) => void;
  readonly pointerMove: (px: number, py: number) => void;
  readonly pointerUp: () => void;
  readonly pointerLeave: () => void;
  /** Drops the gesture under way; nothing is laid. */
  readonly drop: () => void;
  readonly key: (verb: TableVerb) => void;
  readonly focus: (byKeys: boolean) => void;
  readonly blur: () => void;
}

/** Tools that set points of the half grid, one after the other. */
const isPointed = (tool: Tool): boolean => tool === 'outline' || tool === 'seam';

/** Tools that span cells from corner to corner. */
const isSpanned = (tool: Tool): boolean => tool === 'rectangle' || tool === 'unit';

/** Tools that do what they do at once, where they point. */
const isTapped = (tool: Tool): boolean => tool === 'pick' || tool === 'fill' || tool === 'whole' || tool === 'last';

/** @returns a hand that rests beside the table */
export function createHand(bench: () => Bench, deeds: Deeds): Hand {
  let by: 'pointer' | 'keys' | null = null;
  let at: GridPoint = [0.5, 0.5];
  let turn: Turn = 0;
  let sweep: Sweep | null = null;
  let spanFrom: Cell | null = null;
  let corners: GridOutline = [];
  let seamJustBegun = false;

  const cell = (): Cell => {
    const { columns, rows } = bench().block.grid;
    return [Math.min(columns - 1, Math.max(0, Math.floor(at[0]))), Math.min(rows - 1, Math.max(0, Math.floor(at[1])))];
  };
  const fabricHeld = (): string => (bench().tool === 'ground' ? bench().block.ground : bench().fabric);
  const nextCorner = (): GridPoint => snapToHalfGrid(at, bench().block.grid.columns, bench().block.grid.rows);

  /** The place meant: where the pointer is, or the quarter of the cell cursor's cell that the turn says. */
  const aim = (): GridPoint => {
    if (by !== 'keys') return at;
    const [column, row] = cell();
    const [u, v] = QUARTER_MIDDLES[turn]!;
    return [column + u, row + v];
  };
  const lineHere = (): readonly [GridPoint, GridPoint] | null => {
    const { grid } = bench().block;
    return by === 'keys' ? lineAlong(cell(), turn, grid) : lineNear(at, grid);
  };
  const span = (): Stroke => rectangleBetween(spanFrom ?? cell(), cell());

  const ghost = (): Stroke | null => {
    const { tool } = bench();
    if (by === null || sweep || isTapped(tool) || isPointed(tool) || tool === 'unit') return null;
    return tool === 'rectangle' ? span() : strokeInCell(tool, cell(), turn);
  };

  const basting = (): GridOutline | null => {
    const { tool, block } = bench();
    if (by === null) return null;
    if (tool === 'unit') return outlineOf(span());
    if (tool === 'last') return lineHere();
    if (tool !== 'whole') return null;
    const patch = block.patches[patchAt(block, pointNear(aim()))];
    return patch ? outlineOf({ points: patch.points, denominator: block.denominator }) : null;
  };

  const marks = (): Marks => {
    if (by === null && corners.length === 0) return NO_MARKS;
    const { block, tool } = bench();
    const stroke = ghost();
    const color = block.fabrics.find((fabric) => fabric.id === fabricHeld())?.color ?? '#ffffff';
    return {
      ...NO_MARKS,
      ghost: stroke && { outline: outlineOf(stroke), color },
      basting: basting(),
      cursor: (by === 'keys' && !isPointed(tool)) || (by === 'pointer' && (tool === 'pick' || tool === 'fill')) ? cell() : null,
      corners: isPointed(tool) ? corners : [],
      next: isPointed(tool) && by !== null ? nextCorner() : null,
    };
  };

  const pointHere = (): void => {
    const [column, row] = cell();
    const places = by === 'keys' ? QUARTER_MIDDLES.map(([u, v]) => [column + u, row + v] as const) : [at];
    deeds.point({ by: by ?? 'keys', cell: [column, row], places });
    deeds.redraw();
  };

  const layOutline = (): void => {
    if (corners.length < 3) {
      deeds.say('An outline needs at least three corners.');
      return;
    }
    const stroke = strokeAlong(corners);
    corners = [];
    deeds.lay([stroke], fabricHeld());
    deeds.redraw();
  };

  const setCorner = (): void => {
    const corner = nextCorner();
    const first = corners[0];
    if (first && corners.length > 2 && first[0] === corner[0] && first[1] === corner[1]) {
      layOutline();
      return;
    }
    corners = addCorner(corners, corner);
    deeds.say(`Corner ${corners.length}: ${corner[0]} across, ${corner[1]} down.`);
    deeds.redraw();
  };

  /** Sets the first end of a seam, or sews to the second one. */
  const setEnd = (): void => {
    const end = nextCorner();
    const [start] = corners;
    if (!start) {
      corners = [end];
      deeds.say(`The seam begins ${end[0]} across, ${end[1]} down; go to its other end and press Space.`);
    } else if (start[0] !== end[0] || start[1] !== end[1]) {
      corners = [];
      deeds.divide(start, end);
    }
    deeds.redraw();
  };

  /** Lays or pins what was spanned. */
  const endSpan = (): void => {
    const stroke = span();
    spanFrom = null;
    if (bench().tool === 'unit') deeds.pin('one unit', stroke.points[0]!, stroke.points[2]!);
    else deeds.lay([stroke], fabricHeld());
  };

  const pick = (): void => deeds.takeUpFabric(fabricAt(bench().block, at));

  /** Does at once what a tapped tool does where the hand points. */
  const tap = (): void => {
    const { tool } = bench();
    if (tool === 'pick') return pick();
    if (tool === 'fill') return deeds.fill(at, fabricHeld());
    if (tool === 'whole') return deeds.keepWhole(aim());
    const line = lineHere();
    if (line) deeds.pin('sewn last', ...line);
    else deeds.say('The edge of the block is no seam; point at a grid line inside it.');
  };

  /** Shows what a sweep has grown by. */
  const grow = (added: readonly Stroke[]): void => {
    deeds.sweep(added, fabricHeld());
    deeds.foresee(added, fabricHeld());
  };

  const pointerDown: Hand['pointerDown'] = (px, py, picking) => {
    const { view, tool } = bench();
    by = 'pointer';
    at = gridPointAt(view, px, py);
    const place = cellAt(view, px, py);
    if (isPointed(tool) && !picking) {
      const near = nearestCell(view, px, py);
      at = [near.column + near.u, near.row + near.v];
      if (tool === 'outline') return setCorner();
      seamJustBegun = corners.length === 0;
      if (seamJustBegun) corners = [nextCorner()];
      return deeds.redraw();
    }
    if (!place) return;
    if (picking) return pick();
    turn = turnAt(tool, place);
    if (isTapped(tool)) {
      tap();
    } else if (isSpanned(tool)) {
      spanFrom = cell();
    } else {
      sweep = beginSweep(tool, turn, at);
      grow(sweep.strokes);
    }
    pointHere();
  };

  const pointerMove: Hand['pointerMove'] = (px, py) => {
    const { view, tool, block } = bench();
    const near = nearestCell(view, px, py);
    const busy = sweep !== null || spanFrom !== null || corners.length > 0;
    if (!busy && cellAt(view, px, py) === null) {
      pointerLeave();
      return;
    }
    by = 'pointer';
    if (sweep) {
      const grown = extendSweep(sweep, gridPointAt(view, px, py), block.grid);
      sweep = grown.sweep;
      if (grown.added.length > 0) grow(grown.added);
    } else {
      turn = turnAt(tool, near);
    }
    at = [near.column + near.u, near.row + near.v];
    pointHere();
  };

  const pointerUp: Hand['pointerUp'] = () => {
    if (sweep) {
      const { strokes } = sweep;
      sweep = null;
      deeds.lay(strokes, fabricHeld());
      deeds.sweep(null, fabricHeld());
    } else if (spanFrom && by === 'pointer') {
      endSpan();
    } else if (bench().tool === 'seam' && corners.length > 0) {
      // Drawn in one go, or tapped at one end and then at the other; tapped twice at one place it is dropped.
      const [start, end] = [corners[0]!, nextCorner()];
      if (start[0] !== end[0] || start[1] !== end[1]) setEnd();
      else if (!seamJustBegun) corners = [];
    }
    deeds.redraw();
  };

  const pointerLeave: Hand['pointerLeave'] = () => {
    if (by !== 'pointer' || sweep || spanFrom) return;
    by = null;
    deeds.point(null);
    deeds.redraw();
  };

  const drop: Hand['drop'] = () => {
    if (sweep) {
      deeds.sweep(null, fabricHeld());
      deeds.foresee(null, fabricHeld());
    }
    sweep = null;
    spanFrom = null;
    corners = [];
    deeds.redraw();
  };

  const takeToKeys = (): void => {
    if (by !== 'keys') at = [cell()[0] + 0.5, cell()[1] + 0.5];
    by = 'keys';
  };

  const move = (dx: number, dy: number): void => {
    const { tool, block } = bench();
    const { columns, rows } = block.grid;
    if (isPointed(tool)) {
      const [x, y] = nextCorner();
      at = snapToHalfGrid([x + dx / 2, y + dy / 2], columns, rows);
      deeds.point({ by: 'keys', cell: cell(), places: [at] });
      deeds.say(`${at[0]} across, ${at[1]} down.`);
      deeds.redraw();
      return;
    }
    const [column, row] = cell();
    at = [Math.min(columns - 1, Math.max(0, column + dx)) + 0.5, Math.min(rows - 1, Math.max(0, row + dy)) + 0.5];
    pointHere();
  };

  const use = (): void => {
    const { tool } = bench();
    if (tool === 'outline') setCorner();
    else if (tool === 'seam') setEnd();
    else if (isTapped(tool)) tap();
    else if (!isSpanned(tool)) deeds.lay([strokeInCell(tool, cell(), turn)], fabricHeld());
    else if (spanFrom) endSpan();
    else {
      spanFrom = cell();
      deeds.say(`First corner of the ${tool === 'unit' ? 'unit' : 'rectangle'}; go to the other one and press Space.`);
    }
    deeds.redraw();
  };

  const key: Hand['key'] = (asked) => {
    const { tool, block } = bench();
    takeToKeys();
    switch (asked.verb) {
      case 'move':
        return move(asked.dx, asked.dy);
      case 'edge':
        return move(asked.dx * block.grid.columns * 2, asked.dy * block.grid.rows * 2);
      case 'use':
        return use();
      case 'close':
        return tool === 'outline' && corners.length > 0 ? layOutline() : use();
      case 'cancel':
        if (corners.length > 0 || spanFrom) deeds.say('Dropped.');
        return drop();
      case 'erase':
        if (corners.length > 0) {
          corners = corners.slice(0, -1);
          deeds.say(`${corners.length} ${corners.length === 1 ? 'corner' : 'corners'} left.`);
          return deeds.redraw();
        }
        deeds.lay([strokeInCell('square', cell(), 0)], block.ground);
        return deeds.redraw();
      case 'turn':
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

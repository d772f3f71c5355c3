import type { Cells } from '../../block/cells.ts';
import type { Marks } from '../draw-marks.ts';
import type { GridPoint } from '../gesture.ts';
import type { Cell } from '../stride.ts';
import type { Turn } from '../tool.ts';
import type { Bench, Deeds } from './bench.ts';

/** What a tool knows while the hand holds it. */
export interface Grip {
  readonly bench: () => Bench;
  readonly cells: () => Cells;
  readonly by: () => 'pointer' | 'keys' | null;
  /** The place the hand is at, in grid units, never beside the block. */
  readonly at: () => GridPoint;
  /** The place meant: where the pointer is, or the quarter of the cell cursor's cell that the turn says. */
  readonly aim: () => GridPoint;
  readonly cell: () => Cell;
  readonly turn: () => Turn;
  /** Whether the pointer was pressed with Shift. */
  readonly shifted: () => boolean;
  /** Id of the fabric that is laid: the one held, or the ground. */
  readonly fabric: () => string;
  readonly deeds: Deeds;
}

/** How tools of one family are used: by a pointer pressed, drawn and lifted, or by keys. Each keeps its own gesture under way. */
export interface Use {
  /** Whether it can be pressed down beside the block, and means the nearest point on it. */
  readonly reaches: boolean;
  /** What the gesture, or the next one, shows. */
  readonly marks: () => Partial<Marks>;
  /** Whether a gesture is under way that a pointer beside the block still belongs to. */
  readonly busy: () => boolean;
  readonly press: () => void;
  /** @param to where the pointer is, in grid units, perhaps beside the block */
  readonly draw: (to: GridPoint) => void;
  readonly lift: () => void;
  /** Space: does here and now what the tool does. */
  readonly use: () => void;
  /** Enter: ends what was begun. */
  readonly close: () => void;
  /** Delete: takes back the last step of what was begun. @returns false where nothing was */
  readonly back: () => boolean;
  /** An arrow key, `half` with Shift. @returns where it leads, null for the next cell, 'here' where it did something else */
  readonly walk: (dx: number, dy: number, half: boolean) => GridPoint | 'here' | null;
  /** Drops what was begun. @returns whether something was */
  readonly drop: () => boolean;
  /** T: turns what the hand holds but the tool itself. @returns false where it holds nothing */
  readonly turn: (quarters: 1 | 3) => boolean;
  /** Escape where nothing was begun. */
  readonly leave: () => void;
}

const nothing = (): void => undefined;

/** A tool that does what it does at once, and keeps nothing under way. */
export const AT_ONCE: Omit<Use, 'marks' | 'press' | 'use' | 'close'> = {
  reaches: false,
  busy: () => false,
  draw: nothing,
  lift: nothing,
  back: () => false,
  walk: () => null,
  drop: () => false,
  turn: () => false,
  leave: nothing,
};

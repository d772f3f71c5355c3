import type { Block } from '../../block/block.ts';
import type { Stroke } from '../../block/painting.ts';
import type { Pin } from '../../geometry/patchwork/drawing.ts';
import type { GridPoint } from '../gesture.ts';
import type { Cell } from '../stride.ts';
import type { Tool } from '../tool.ts';
import type { View } from '../view.ts';

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
  /** Draws a seam between two points, or takes the same one away. */
  readonly divide: (line: Stroke) => void;
  /** Keeps the patch at a place whole, or lets it be divided again. */
  readonly keepWhole: (at: GridPoint) => void;
  /** Sets a pin along a line or over a rectangle, or takes the same one away. */
  readonly pin: (pin: Pin['pin'], place: Stroke) => void;
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

import type { Block } from '../../block/block.ts';
import type { Stroke } from '../../block/painting.ts';
import type { SymmetryName } from '../../block/symmetry.ts';
import type { Pin } from '../../geometry/patchwork/drawing.ts';
import type { Point } from '../../geometry/point.ts';
import type { Chosen } from '../draw-selection.ts';
import type { GridPoint } from '../gesture.ts';
import type { Cell } from '../stride.ts';
import type { Tool } from '../tool.ts';
import type { View } from '../view.ts';
import type { Handling } from './selecting.ts';

/** What the hand works on and with, as it stands now. */
export interface Bench {
  readonly block: Block;
  readonly view: View;
  readonly tool: Tool;
  /** Id of the fabric the hand holds. */
  readonly fabric: string;
  /** Where else is done what is done in one place; one that the block allows. */
  readonly symmetry: SymmetryName;
  /** The patches that are chosen. */
  readonly chosen: Chosen;
}

/** The place the pointer or the cell cursor is at. */
export interface Pointing {
  readonly by: 'pointer' | 'keys';
  readonly cell: Cell;
  /** The places meant, in grid units: the very point, or the middles of the cell's quarters. */
  readonly places: readonly GridPoint[];
}

/** How far a fabric reaches that is filled in: over an area as the drawing shows it, or over one patch. */
export type Reach = 'area' | 'patch';

/** What the hand does to the world. */
export interface Deeds {
  /** Lays patches of one fabric, as one change of the drawing. */
  readonly lay: (strokes: readonly Stroke[], fabric: string) => void;
  /** What the sweep under way will lay for certain, as it grows; null when it is dropped. */
  readonly foresee: (strokes: readonly Stroke[] | null, fabric: string) => void;
  /** Gives the areas at some places, or the one patch at each, another fabric, as one change of the drawing. */
  readonly fill: (at: readonly Point[], reach: Reach, fabric: string) => void;
  /** Divides the cloth along lines of two points, or takes the same seams away where the first of them is drawn. */
  readonly divide: (lines: readonly Stroke[]) => void;
  /** Keeps the patches at some places whole, or lets them be divided again where the first of them is whole. */
  readonly keepWhole: (at: readonly Point[]) => void;
  /** Sets pins along lines or over rectangles, or takes the same ones away where the first of them is set. */
  readonly pin: (pin: Pin['pin'], places: readonly Stroke[]) => void;
  /** Chooses patches, or does something with those that are chosen. */
  readonly handle: (handling: Handling) => void;
  readonly takeUpSymmetry: (symmetry: SymmetryName) => void;
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

import { nearestCorner, nearestSide, type Corner, type Side } from '../block/patch-shapes.ts';
import type { CellPlace } from './view.ts';

/** What the hand holds to lay cloth or take it up. */
export type ClothTool =
  | 'square' | 'half' | 'quarter' | 'rectangle' | 'half rectangle' | 'peak' | 'outline'
  | 'choose' | 'fill' | 'ground' | 'pick';

/** What the hand holds to say how the block is to be sewn. */
export type SewingTool = 'seam' | 'whole' | 'unit' | 'last';

export type Tool = ClothTool | SewingTool;

/** A tool as it lies on the table, with the key that takes it up and what it does. */
export interface ToolLine<T extends Tool = Tool> {
  readonly tool: T;
  readonly key: string;
  readonly name: string;
  readonly does: string;
}

/** The shapes of cloth, in the order they lie on the table. */
export const SHAPE_TOOLS: readonly ToolLine<ClothTool>[] = [
  { tool: 'square', key: 'S', name: 'Square', does: 'Lays a whole cell' },
  { tool: 'half', key: 'H', name: 'Half-square', does: 'Lays half a cell, in the corner you point at' },
  { tool: 'quarter', key: 'Q', name: 'Quarter-square', does: 'Lays a quarter of a cell, at the side you point at' },
  { tool: 'rectangle', key: 'R', name: 'Rectangle', does: 'Drag from corner to corner' },
  { tool: 'half rectangle', key: 'N', name: 'Half-rectangle', does: 'Drag over cells: lays half of them, in the corner you first point at' },
  { tool: 'peak', key: 'A', name: 'Peak', does: 'Drag over cells: lays a peak, its base on the side you first point at' },
  { tool: 'outline', key: 'O', name: 'Outline', does: 'Set corner after corner; close it with Enter' },
];

/** What is done with cloth that lies there. */
export const CHANGING_TOOLS: readonly ToolLine<ClothTool>[] = [
  { tool: 'choose', key: 'C', name: 'Choose', does: 'Takes patches in the hand, to move, turn, mirror or copy them' },
  { tool: 'fill', key: 'F', name: 'Fill', does: 'Changes the fabric of the area you point at, as far as its seams; with Shift, of that one patch' },
  { tool: 'ground', key: 'G', name: 'Ground', does: 'Takes cells back to the ground' },
  { tool: 'pick', key: 'P', name: 'Pick up', does: 'Takes up the fabric you point at' },
];

/** The tools for cloth, in the order they lie on the table. */
export const CLOTH_TOOLS: readonly ToolLine<ClothTool>[] = [...SHAPE_TOOLS, ...CHANGING_TOOLS];

/** The tools for sewing; each takes away again what it has set. */
export const SEWING_TOOLS: readonly ToolLine<SewingTool>[] = [
  { tool: 'seam', key: 'D', name: 'Seam', does: 'Divides every patch it passes through, from point to point' },
  { tool: 'whole', key: 'K', name: 'Keep whole', does: 'Keeps the patch you point at in one piece' },
  { tool: 'unit', key: 'U', name: 'One unit', does: 'Drag over cells that are to be made by themselves' },
  { tool: 'last', key: 'L', name: 'Sewn last', does: 'Makes the grid line you point at the last seam' },
];

export const TOOLS: readonly ToolLine[] = [...CLOTH_TOOLS, ...SEWING_TOOLS];

/** Quarter turns clockwise. Of a half: which corner it fills, from the top left. Of what is meant by sides: which side, from the top. */
export type Turn = 0 | 1 | 2 | 3;

export const CORNERS: readonly [Corner, Corner, Corner, Corner] = ['top left', 'top right', 'bottom right', 'bottom left'];
export const SIDES: readonly [Side, Side, Side, Side] = ['top', 'right', 'bottom', 'left'];

/** Tools that mean a corner of a cell. */
const MEANT_BY_CORNERS: ReadonlySet<Tool> = new Set<Tool>(['half', 'half rectangle']);
/** Tools that mean a quarter of a cell, or the side it lies at. */
const MEANT_BY_SIDES: ReadonlySet<Tool> = new Set<Tool>(['quarter', 'peak', 'choose', 'fill', 'pick', 'whole', 'last']);

/** @returns how a tool would lie if it were used at a place of its cell */
export function turnAt(tool: Tool, { u, v }: Pick<CellPlace, 'u' | 'v'>): Turn {
  if (MEANT_BY_CORNERS.has(tool)) return CORNERS.indexOf(nearestCorner(u, v)) as Turn;
  return MEANT_BY_SIDES.has(tool) ? (SIDES.indexOf(nearestSide(u, v)) as Turn) : 0;
}

/** @returns "top left", "right": how a turned tool lies; empty for tools that lie only one way */
export function turnName(tool: Tool, turn: Turn): string {
  if (MEANT_BY_CORNERS.has(tool)) return CORNERS[turn];
  return MEANT_BY_SIDES.has(tool) ? SIDES[turn] : '';
}

import { nearestCorner, nearestSide, type Corner, type Side } from '../block/patch-shapes.ts';
import type { CellPlace } from './view.ts';

/** What the hand holds: shapes of cloth to lay, or a way to take them up. */
export type Tool = 'square' | 'half' | 'quarter' | 'rectangle' | 'outline' | 'fill' | 'ground' | 'pick';

/** The tools in the order they lie on the table, with the key that takes each one up and what it does. */
export const TOOLS: readonly { readonly tool: Tool; readonly key: string; readonly name: string; readonly does: string }[] = [
  { tool: 'square', key: 'S', name: 'Square', does: 'Lays a whole cell' },
  { tool: 'half', key: 'H', name: 'Half-square', does: 'Lays half a cell, in the corner you point at' },
  { tool: 'quarter', key: 'Q', name: 'Quarter-square', does: 'Lays a quarter of a cell, at the side you point at' },
  { tool: 'rectangle', key: 'R', name: 'Rectangle', does: 'Drag from corner to corner' },
  { tool: 'outline', key: 'O', name: 'Outline', does: 'Set corner after corner; close it with Enter' },
  { tool: 'fill', key: 'F', name: 'Fill', does: 'Changes the fabric of the whole area you point at' },
  { tool: 'ground', key: 'G', name: 'Ground', does: 'Takes cells back to the ground' },
  { tool: 'pick', key: 'P', name: 'Pick up', does: 'Takes up the fabric you point at' },
];

/** Quarter turns clockwise. Of a half-square: which corner it fills, from the top left. Of a quarter-square: which side, from the top. */
export type Turn = 0 | 1 | 2 | 3;

export const CORNERS: readonly [Corner, Corner, Corner, Corner] = ['top left', 'top right', 'bottom right', 'bottom left'];
export const SIDES: readonly [Side, Side, Side, Side] = ['top', 'right', 'bottom', 'left'];

/** @returns how a tool would lie if it were used at a place of its cell */
export function turnAt(tool: Tool, { u, v }: Pick<CellPlace, 'u' | 'v'>): Turn {
  if (tool === 'half') return CORNERS.indexOf(nearestCorner(u, v)) as Turn;
  return tool === 'quarter' ? (SIDES.indexOf(nearestSide(u, v)) as Turn) : 0;
}

/** @returns "top left", "right": how a turned tool lies; empty for tools that lie only one way */
export function turnName(tool: Tool, turn: Turn): string {
  if (tool === 'half') return CORNERS[turn];
  return tool === 'quarter' ? SIDES[turn] : '';
}

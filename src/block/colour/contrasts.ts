import type { Fabric } from '../block.ts';
import type { Colouring } from './colourings.ts';
import { lightness, type Value } from './lightness.ts';
import type { CommonEdge } from './roles.ts';

/** The middle of each third of L*: what a fabric counts as whose value its maker says. */
const MIDDLES: Readonly<Record<Value, number>> = { light: 500 / 6, medium: 50, dark: 100 / 6 };

/** @returns how light a fabric counts as, 0 to 100: by its colour, or by the value its maker gave it */
export const lightnessOf = ({ color, value }: Pick<Fabric, 'color' | 'value'>): number => (value === undefined ? lightness(color) : MIDDLES[value]);

/** Neighbours less apart than this in L* hardly read as two shapes from across a room: from memory, and the maker may change it. */
export const USUAL_APART = 10;

/** Two fabrics that meet and are nearly as light as each other. */
export interface CloseNeighbours {
  /** By their places among the roles. */
  readonly roles: readonly [number, number];
  /** In L*. */
  readonly apart: number;
}

/** @returns the neighbours that are less apart in value than asked for, the closest first */
export const closeNeighbours = (edges: readonly CommonEdge[], light: readonly number[], least: number): readonly CloseNeighbours[] =>
  edges
    .map(({ roles: [a, b] }) => ({ roles: [a, b] as const, apart: Math.abs(light[a]! - light[b]!) }))
    .filter(({ apart }) => apart < least)
    .sort((one, other) => one.apart - other.apart);

/** How far the shapes of a colouring stand out from each other, in L*. */
export interface Contrasts {
  /** Between the two neighbours that are closest; 100 where nothing meets. */
  readonly least: number;
  /** Over all edges, the longer counting for more; 0 where nothing meets. */
  readonly mean: number;
}

/** @returns how a colouring contrasts, its cloths being so light */
export function contrastsOf(edges: readonly CommonEdge[], colouring: Colouring, light: readonly number[]): Contrasts {
  let [least, sum, length] = [100, 0, 0];
  for (const edge of edges) {
    const [a, b] = edge.roles;
    const apart = Math.abs(light[colouring[a]!]! - light[colouring[b]!]!);
    least = Math.min(least, apart);
    sum += apart * edge.length;
    length += edge.length;
  }
  return { least, mean: length === 0 ? 0 : sum / length };
}

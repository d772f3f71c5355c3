import { mirrors, symmetriesOf, taken, takenOutline, type Symmetry } from '../geometry/patchwork/symmetry.ts';
import type { Point } from '../geometry/point.ts';
import { equals } from '../measure/rational.ts';
import type { Block, Grid } from './block.ts';
import { cellsOf } from './cells.ts';
import type { Stroke } from './painting.ts';

/**
 * How what is done in one place of a block is done in others too: every set of mirrors and turns of a square that leads to no
 * place beyond its own, however often they are carried out one after another. There are these ten and no more.
 */
export type SymmetryName =
  | 'none'
  | 'left and right'
  | 'top and bottom'
  | 'both ways'
  | 'half turn'
  | 'quarter turns'
  | 'falling diagonal'
  | 'rising diagonal'
  | 'both diagonals'
  | 'every way';

/** In the order of `symmetriesOf`: which of the eight belong together. The first leaves everything where it is. */
const MEMBERS: Readonly<Record<SymmetryName, readonly number[]>> = {
  none: [0],
  'left and right': [0, 1],
  'top and bottom': [0, 2],
  'both ways': [0, 1, 2, 3],
  'half turn': [0, 3],
  'quarter turns': [0, 3, 5, 6],
  'falling diagonal': [0, 4],
  'rising diagonal': [0, 7],
  'both diagonals': [0, 3, 4, 7],
  'every way': [0, 1, 2, 3, 4, 5, 6, 7],
};

/** All of them, those that any block can have first. */
export const SYMMETRIES = Object.keys(MEMBERS) as readonly SymmetryName[];

/** From here on they exchange across and down. */
const FIRST_THAT_EXCHANGES = 4;

/** @returns whether a symmetry exchanges across and down */
const exchangesSides = (name: SymmetryName): boolean => MEMBERS[name].some((member) => member >= FIRST_THAT_EXCHANGES);

/** @returns whether a block is square and has the same lines across and down */
export function isSquare({ grid, finished }: Pick<Block, 'grid' | 'finished'>): boolean {
  if (grid.columns !== grid.rows || !equals(finished.width, finished.height)) return false;
  const { across, down } = cellsOf(grid);
  return across.length === down.length && across.every((line, i) => line === down[i]);
}

/** @returns whether a block can be drawn with a symmetry: what exchanges across and down needs a square block with the same lines both ways */
export const allows = (block: Pick<Block, 'grid' | 'finished'>, name: SymmetryName): boolean => !exchangesSides(name) || isSquare(block);

const motions = (name: SymmetryName, width: number, height: number): readonly Symmetry[] => {
  const all = symmetriesOf(width, height);
  return MEMBERS[name].map((member) => all[member]!);
};

/** @returns an outline or a line wherever a symmetry brings it, each place once, itself first; exactly, whether or not a grid line lies there */
export function strokeImages({ columns, rows }: Grid, name: SymmetryName, stroke: Stroke): readonly Stroke[] {
  const { denominator, points } = stroke;
  const [, ...others] = motions(name, columns * denominator, rows * denominator);
  const found = new Map([[shapeOf(stroke), stroke]]);
  const corners = points.map(([x, y]): Point => ({ x, y, w: 1 }));
  for (const motion of others) {
    const image: Stroke = { denominator, points: takenOutline(motion, corners).map(({ x, y }) => [x, y] as const) };
    const shape = shapeOf(image);
    if (!found.has(shape)) found.set(shape, image);
  }
  return [...found.values()];
}

/** @returns what two strokes have in common exactly when they are the same outline or line, wherever it begins and whichever way it runs */
export function shapeOf({ points, denominator }: Stroke): string {
  const edges = points.map(([x, y], i) => {
    const [toX, toY] = points[(i + 1) % points.length]!;
    return x < toX || (x === toX && y < toY) ? `${x},${y},${toX},${toY}` : `${toX},${toY},${x},${y}`;
  });
  return `${denominator}:${edges.sort().join(' ')}`;
}

/** @returns the places that a symmetry brings a place to, each once, itself first. Grid units, x/w and y/w */
export function pointImages({ columns, rows }: Grid, name: SymmetryName, at: Point): readonly Point[] {
  const found = new Map<string, Point>();
  for (const motion of motions(name, columns, rows)) {
    const image = taken(motion, at);
    found.set(`${image.x},${image.y}`, image);
  }
  return [...found.values()];
}

/** The lines that a symmetry mirrors in and the turns round the block's middle, in grid units; for ink. */
export interface Axes {
  readonly lines: readonly (readonly [readonly [number, number], readonly [number, number]])[];
  /** 2 for a half turn, 4 for quarter turns, 1 for none. */
  readonly turns: 1 | 2 | 4;
}

/** @returns what a symmetry turns and mirrors about */
export function axesOf({ columns, rows }: Grid, name: SymmetryName): Axes {
  const [x, y] = [columns / 2, rows / 2];
  const lines: Axes['lines'][number][] = [];
  for (const member of MEMBERS[name]) {
    if (member === 1) lines.push([[x, 0], [x, rows]]);
    if (member === 2) lines.push([[0, y], [columns, y]]);
    if (member === 4) lines.push([[0, 0], [columns, rows]]);
    if (member === 7) lines.push([[0, rows], [columns, 0]]);
  }
  const turning = motions(name, 1, 1).filter((motion) => !mirrors(motion)).length;
  return { lines, turns: turning === 4 ? 4 : turning === 2 ? 2 : 1 };
}

import { boundsOf, boundsOverlap, type Bounds, type Outline } from './outline.ts';

/** Finds, among many outlines, those whose boxes share area with a box. */
export type Nearby = (box: Bounds) => readonly number[];

/** Most squares across and down into which outlines are sorted. */
const SQUARES = 64;

/**
 * Sorts outlines by where they lie, so that each is compared with its neighbours only.
 * @param side longest side of what they lie on, in the outlines' steps; what lies beyond it is found too
 * @returns the indices, in order, of the outlines whose boxes share area with a box
 */
export function nearby(outlines: readonly Outline[], side: number): Nearby {
  const boxes = outlines.map(boundsOf);
  const square = Math.max(1, Math.ceil(side / SQUARES));
  const squares = new Map<number, number[]>();
  const each = ({ left, top, right, bottom }: Bounds, visit: (square: number) => void): void => {
    const at = (value: number): number => Math.min(SQUARES, Math.max(-1, Math.floor(value / square))) + 1;
    for (let row = at(top); row <= at(bottom); row++) {
      for (let column = at(left); column <= at(right); column++) visit(row * (SQUARES + 2) + column);
    }
  };
  boxes.forEach((box, i) =>
    each(box, (name) => {
      const inside = squares.get(name);
      if (inside) inside.push(i);
      else squares.set(name, [i]);
    }),
  );
  return (box) => {
    const found = new Set<number>();
    each(box, (name) => {
      for (const i of squares.get(name) ?? []) if (boundsOverlap(boxes[i]!, box)) found.add(i);
    });
    return [...found].sort((a, b) => a - b);
  };
}

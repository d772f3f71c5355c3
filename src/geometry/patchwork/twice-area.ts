import type { Lattice } from './drawing.ts';

/** @returns twice the signed area in square steps; positive when the outline runs clockwise as seen on screen */
export function twiceArea(points: readonly Lattice[]): number {
  let sum = 0;
  points.forEach(([x, y], i) => {
    const [u, v] = points[(i + 1) % points.length]!;
    sum += x * v - u * y;
  });
  return sum;
}

import type { PressedSeam } from '../block/block.ts';
import { pointText, type Measure } from './places.ts';

/** @returns that a seam is to be pressed where none is sewn */
export function unpressedNote({ from, to }: PressedSeam, measure: Measure): string {
  const place = ([x, y]: PressedSeam['from']): string => pointText({ x, y, w: 1 }, measure);
  return `A pressing is chosen for a seam from ${place(from)} to ${place(to)}, but none is sewn there; it does nothing.`;
}

import { ASCENT, DESCENT } from './face.ts';
import type { PathItem, TextItem } from './page.ts';

/** Left, top, right and bottom. */
export type Box = readonly [left: number, top: number, right: number, bottom: number];

/** @returns what some lines, areas and texts cover, without the width of lines; curves as far as their handles reach */
export function boxOf(items: readonly (PathItem | TextItem)[]): Box {
  let [left, top, right, bottom] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const [x, y] of items.flatMap((item) => (item.kind === 'text' ? cornersOf(item) : placesOf(item)))) {
    [left, top, right, bottom] = [Math.min(left, x), Math.min(top, y), Math.max(right, x), Math.max(bottom, y)];
  }
  return [left, top, right, bottom];
}

type Place = readonly [number, number];

const placesOf = ({ steps }: PathItem): readonly Place[] =>
  steps.flatMap(([, ...numbers]) => numbers.flatMap((x, k): Place[] => (k % 2 === 0 ? [[x as number, numbers[k + 1] as number]] : [])));

/** Two opposite corners of a line of text, wherever its quarter turns have brought them. */
function cornersOf({ x, y, width, size, turn }: TextItem): readonly Place[] {
  const corners: readonly Place[] = [
    [0, -ASCENT * size],
    [width, DESCENT * size],
  ];
  return corners.map(([right, down]) => {
    const [dx, dy] = ([[right, down], [-down, right], [-right, -down], [down, -right]] as const)[turn ?? 0];
    return [x + dx, y + dy];
  });
}

import { after, bounds, compose, corners, shifted, spot, spotOf, turnedBy } from './proof-outline.ts';
import type { Bounds, Move, Outline, Spot } from './proof-outline.ts';
import type { SewnStep } from './proof-table.ts';

/** A piece of cloth where it comes to lie in the block. */
export interface Placed {
  readonly fabric: string;
  readonly outline: Outline;
  /** "part 2 of step 1, in part 3 of step 4". */
  readonly where: string;
}

const HERE: Move = { turn: 0, by: spot(0n, 0n) };
/** More pieces than any drawing holds: a plan that multiplies beyond this is not worth laying out. */
const MOST_PIECES = 200_000;

/** @returns for each step how often what it makes lies in one block */
export function perBlock(tables: readonly SewnStep[]): number[] {
  const times = tables.map((table) => (table.step.makes === 'block' ? 1 : 0));
  const placeOf = made(tables);
  for (let i = tables.length - 1; i >= 0; i--) {
    for (const part of tables[i].step.parts) {
      const j = 'unit' in part.from ? placeOf(part.from.unit, i) : -1;
      if (j >= 0) times[j] += times[i];
    }
  }
  return times;
}

/** @returns a search for the step before step i that makes a unit; −1 when there is none */
function made(tables: readonly SewnStep[]): (unit: string, i: number) => number {
  const last = new Map<string, number[]>();
  tables.forEach((table, i) => last.set(table.step.makes, [...(last.get(table.step.makes) ?? []), i]));
  return (unit, i) => last.get(unit)?.findLast((j) => j < i) ?? -1;
}

/** @returns every piece of one block where the steps put it; null when the steps multiply without end */
export function placedPieces(tables: readonly SewnStep[]): Placed[] | null {
  const times = perBlock(tables);
  const pieces = tables.reduce((sum, table, i) => sum + times[i] * table.step.parts.length, 0);
  if (pieces > MOST_PIECES) return null;
  const placeOf = made(tables);
  const held = tables.map((table): Bounds | null => {
    const points = table.result ?? table.parts.flatMap((part) => part ?? []);
    return points.length > 0 ? bounds(points) : null;
  });
  const placed: Placed[] = [];

  const lay = (i: number, move: Move, inside: string): void => {
    const { step, parts } = tables[i];
    step.parts.forEach((part, k) => {
      const outline = parts[k] ?? corners(part.outline.map(spotOf));
      const where = `part ${k + 1} of step ${step.number}${inside}`;
      if ('cut' in part.from) {
        placed.push({ fabric: part.from.fabric, outline: outline.map((p) => after(move, p)), where });
        return;
      }
      const j = placeOf(part.from.unit, i);
      const unit = j >= 0 ? held[j] : null;
      if (unit && outline.length > 0) lay(j, compose(move, onto(unit, part.turn, outline)), `, in ${where}`);
    });
  };
  const block = tables.findIndex((table) => table.step.makes === 'block');
  if (block >= 0) lay(block, HERE, '');
  return placed;
}

/** @returns the move that turns a unit and lays its bounding rectangle onto that of a part's outline */
function onto(unit: Bounds, turn: number, outline: Outline): Move {
  const topLeft = (box: Bounds): Spot => spot(box.left.n * box.top.d, box.top.n * box.left.d, box.left.d * box.top.d);
  const bottomRight = (box: Bounds): Spot => spot(box.right.n * box.bottom.d, box.bottom.n * box.right.d, box.right.d * box.bottom.d);
  const turned = bounds([topLeft(unit), bottomRight(unit)].map((p) => turnedBy(p, turn)));
  const from = topLeft(turned);
  return { turn, by: shifted(topLeft(bounds(outline)), { x: -from.x, y: -from.y, w: from.w }) };
}

/** @returns the pairs of outlines whose bounding rectangles meet in more than an edge, found by a sweep from left to right */
export function neighbours(
  outlines: readonly Outline[],
  boxes: readonly { left: number; right: number; top: number; bottom: number }[],
): [number, number][] {
  const sorted = outlines.map((_, i) => i).sort((i, j) => boxes[i].left - boxes[j].left);
  const pairs: [number, number][] = [];
  let open: number[] = [];
  for (const i of sorted) {
    open = open.filter((j) => boxes[j].right > boxes[i].left);
    for (const j of open) if (boxes[j].top < boxes[i].bottom && boxes[i].top < boxes[j].bottom) pairs.push([j, i]);
    open.push(i);
  }
  return pairs;
}

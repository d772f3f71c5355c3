import type { ClothOrder } from '../../src/cutting/cloth/order.ts';
import { compare, divide, rational, type Rational } from '../../src/measure/rational.ts';

/*
 * The least cloth for a handful of pieces by looking at everything: every set of pieces as a column, every set as columns side by side in
 * a strip, every set as strips. Nothing is shared with the engine but what a layout is.
 */

/** Width and depth of a column, or width used and length of a strip; none is beaten by another both ways. */
type Corner = readonly [number, number];

/** @returns the least length, in steps of 1/8; null where a piece fits nowhere. All sizes must be whole eighths. */
export function leastLength(order: ClothOrder): number | null {
  const pieces = order.wanted.flatMap(({ width, height, count, turn }) => Array.from({ length: count }, () => ({ width: eighths(width), height: eighths(height), turn })));
  const room = eighths(order.bought.width);
  const longest = Math.max(eighths(order.reach), ...pieces.map(({ width, height, turn }) => (turn ? Math.max(width, height) : height)));
  const sets = 1 << pieces.length;
  const columns: Corner[][] = [[[0, 0]]];
  for (let set = 1; set < sets; set++) {
    const first = lowest(set);
    const { width, height, turn } = pieces[first]!;
    const rest = columns[set ^ (1 << first)]!;
    const ways: Corner[] = [[width, height], ...(turn ? [[height, width] as const] : [])];
    columns.push(corners(rest.flatMap(([w, d]) => ways.map(([across, deep]): Corner => [Math.max(w, across), d + deep]))));
  }
  const strips: Corner[][] = [[[0, 0]]];
  for (let set = 1; set < sets; set++) {
    const all: Corner[] = [];
    for (const column of partsWith(set, lowest(set))) {
      for (const [w, d] of columns[column]!) for (const [across, long] of strips[set ^ column]!) all.push([w + across, Math.max(d, long)]);
    }
    strips.push(corners(all.filter(([across, long]) => across <= room && long <= longest)));
  }
  const least = [0];
  for (let set = 1; set < sets; set++) {
    let best = Infinity;
    for (const strip of partsWith(set, lowest(set))) {
      for (const [, long] of strips[strip]!) best = Math.min(best, long + least[set ^ strip]!);
    }
    least.push(best);
  }
  const all = least[sets - 1]!;
  return all === Infinity ? null : all;
}

const eighths = (length: Rational): number => {
  const steps = divide(length, rational(1, 8));
  if (compare(steps, rational(Math.floor(steps.n / steps.d))) !== 0) throw new Error('not in eighths');
  return steps.n;
};

const lowest = (set: number): number => 31 - Math.clz32(set & -set);

/** @returns the parts of a set that hold one of its members */
function partsWith(set: number, member: number): readonly number[] {
  const parts: number[] = [];
  for (let part = set; part > 0; part = (part - 1) & set) if (part & (1 << member)) parts.push(part);
  return parts;
}

function corners(all: readonly Corner[]): Corner[] {
  const kept: Corner[] = [];
  for (const one of [...all].sort((a, b) => a[0] - b[0] || a[1] - b[1])) if (kept.length === 0 || one[1] < kept.at(-1)![1]) kept.push(one);
  return kept;
}

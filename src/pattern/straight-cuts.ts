import type { Cut } from '../cutting/cut.ts';
import type { ClothLayout } from '../cutting/layout.ts';
import { add, compare, multiply, rational } from '../measure/rational.ts';
import type { Pattern } from './pattern.ts';

/** @returns the cuts of a layout: each strip off the cloth, each column off its strip, each piece off its column where it is not the last one to its edge, or is narrower */
export function layoutCuts({ cloths }: ClothLayout): number {
  let cuts = 0;
  for (const cloth of cloths) {
    for (const strip of cloth.strips) {
      let across = 1;
      for (const column of strip.columns) {
        const count = column.pieces.reduce((n, laid) => n + laid.count, 0);
        const full = column.pieces.map((laid) => multiply(laid.length, rational(laid.count))).reduce(add, rational(0));
        const narrow = column.pieces.reduce((n, laid) => n + (compare(laid.width, column.width) < 0 ? laid.count : 0), 0);
        across += column.times * (1 + count - (compare(full, strip.length) === 0 ? 1 : 0) + narrow);
      }
      cuts += across * strip.times * cloth.times;
    }
  }
  return cuts;
}

/** @returns the cuts that make triangles of a line: diagonals; of a strip every slanted and straight cut, and those across the tips */
export function subcuts({ quantity, subcut, nested }: Cut): number {
  if (subcut === 'once') return quantity;
  if (subcut === 'twice') return 2 * quantity;
  if (!nested) return 0;
  const { form, triangles } = nested;
  return quantity * (form === 'half' ? triangles - 1 + (triangles % 2) + triangles : triangles + 1 + 2 * triangles);
}

/** @returns the cuts across strip sets, one to straighten each and one for each segment; all blocks together */
export function setCuts(cuts: readonly Cut[], counts: ReadonlyMap<string, number>): number {
  const sets = new Map(cuts.flatMap(({ set, uses }) => (set ? uses.map(({ unit }) => [unit, set] as const) : [])));
  return [...sets].reduce((sum, [unit, { segments }]) => sum + Math.ceil((counts.get(unit) ?? 0) / segments) * (1 + segments), 0);
}

/** A rectangle out of a scrap, or out of widths that were joined for it, is cut along all its sides. */
const SIDES = 4;

/**
 * @returns straight cuts, all blocks together: off the cloth as it is laid out now, along all four sides of what is not laid out (scraps,
 * pieces wider than the cloth), through squares and strips that become triangles, along each edge of a template; all these before
 * anything is sewn; and across strip sets
 */
export function straightCuts({ cuts, fabrics, scraps, steps }: Pattern): number {
  const sum = (numbers: readonly number[]): number => numbers.reduce((a, b) => a + b, 0);
  const fromScraps = new Set(scraps.map(({ id }) => id));
  const apart = sum(cuts.filter(({ fabric }) => fromScraps.has(fabric)).map(({ quantity }) => quantity));
  const unplaced = sum(fabrics.flatMap(({ layout }) => layout.unplaced.map(({ count }) => count)));
  const outlines = sum(cuts.map(({ template, quantity }) => (template?.length ?? 0) * quantity));
  return sum(fabrics.map(({ layout }) => layoutCuts(layout))) + SIDES * (apart + unplaced) + sum(cuts.map(subcuts)) + outlines + setCuts(cuts, new Map(steps.map(({ makes, count }) => [makes, count])));
}

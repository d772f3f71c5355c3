import { rectangle } from '../convex.ts';
import type { Cells } from './clusters.ts';
import { rectOf } from './field.ts';
import { rectCount, rectId, type Leaves } from './leaves.ts';
import { clothNovelty, handling, sizeNovelty, type Weights } from './price.ts';
import { ringFinder, type Ring } from './rings.ts';
import type { Tree } from './tree.ts';

/** How often things are expected to be used. */
export interface Counts {
  /** By leaf class. */
  readonly leaves: readonly number[];
  /** By number of the picture a rectangle shows. */
  readonly joins: readonly number[];
}

/** The picture each rectangle of cells shows, by rectId; pictures are numbered from 0. */
export type Contents = ArrayLike<number>;

/** The best plan under given prices. */
export interface Plan {
  readonly tree: Tree;
  /** How often each leaf class is used. */
  readonly used: ReadonlyMap<number, number>;
  /** Joins of rows or columns, by what they show, and how often each is made. */
  readonly joined: ReadonlyMap<number, number>;
  readonly rings: number;
}

const [LEAF, UPRIGHT, LEVEL, RING] = [0, 1, 2, 3];

/** Rings are looked for in rectangles of at most this many cells a side. */
const RING_CELLS = 16;

/**
 * Finds the cheapest way to cut a field into leaves by rows and columns, by dynamic programming over all rectangles of
 * cells, smallest first. A row of three is one join, not a join of joins.
 * @param counts how often each class is expected to be used: what its newness costs is shared among so many
 * @param contents which picture each rectangle of cells shows: joins that show the same are worked out once
 * @returns null when every way would divide a whole patch
 */
export function cheapestPlan(leaves: Leaves, weights: Weights, { leaves: counts, joins: joinCounts }: Counts, contents: Contents): Plan | null {
  const { field, classes, classOf } = leaves;
  const [m, n] = [field.xs.length - 1, field.ys.length - 1];
  const size = rectCount(field);
  const bySize = new Map<string, number>();
  classes.forEach((leaf, c) => bySize.set(leaf.size, (bySize.get(leaf.size) ?? 0) + counts[c]!));
  const price = classes.map((leaf, c) => {
    const own = clothNovelty(leaf, weights) / Math.max(1, counts[c]!);
    return handling(leaf, weights) + own + sizeNovelty(leaf, weights) / Math.max(1, bySize.get(leaf.size)!);
  });
  // Cheapest as a row of columns still open for more, as a column of rows, and as neither.
  const upright = new Float64Array(size).fill(Infinity);
  const level = new Float64Array(size).fill(Infinity);
  const single = new Float64Array(size).fill(Infinity);
  // What it costs that the finished row or column is one more thing to make.
  const closing = new Float64Array(joinCounts.length);
  for (let c = 0; c < closing.length; c++) closing[c] = weights.join / Math.max(1, joinCounts[c]!);
  const uprightAt = new Uint16Array(size);
  const levelAt = new Uint16Array(size);
  const rings = new Map<number, Ring>();
  const findRings = ringFinder(field);
  const id = (i0: number, j0: number, i1: number, j1: number): number => rectId(n, i0, j0, i1, j1);
  const close = (at: number): number => closing[contents[at]!]!;
  const best = (at: number): number => Math.min(Math.min(upright[at]!, level[at]!) + close(at), single[at]!);
  /** As a part of a row: not a row itself. */
  const inRow = (at: number): number => Math.min(level[at]! + close(at), single[at]!);
  const inColumn = (at: number): number => Math.min(upright[at]! + close(at), single[at]!);

  for (let w = 1; w <= m; w++) {
    for (let i0 = 0; i0 + w <= m; i0++) {
      const i1 = i0 + w;
      for (let h = 1; h <= n; h++) {
        for (let j0 = 0; j0 + h <= n; j0++) {
          const j1 = j0 + h;
          const at = id(i0, j0, i1, j1);
          const leaf = classOf[at]!;
          if (leaf >= 0) single[at] = price[leaf]!;
          for (let i = i0 + 1; i < i1; i++) {
            if (field.uprightLocked(i, j0, j1)) continue;
            const [first, second] = [id(i0, j0, i, j1), id(i, j0, i1, j1)];
            const cost = Math.min(upright[first]!, inRow(first)) + inRow(second);
            if (cost < upright[at]! - 1e-9) [upright[at], uprightAt[at]] = [cost, i];
          }
          for (let j = j0 + 1; j < j1; j++) {
            if (field.levelLocked(j, i0, i1)) continue;
            const [first, second] = [id(i0, j0, i1, j), id(i0, j, i1, j1)];
            const cost = Math.min(level[first]!, inColumn(first)) + inColumn(second);
            if (cost < level[at]! - 1e-9) [level[at], levelAt[at]] = [cost, j];
          }
          if (leaf < 0 && w > 2 && h > 2 && w <= RING_CELLS && h <= RING_CELLS) {
            for (const ring of findRings({ i0, j0, i1, j1 })) {
              const parts = [ring.centre, ...ring.arms].map((c) => best(id(c.i0, c.j0, c.i1, c.j1)));
              const cost = weights.unit['partial-seam ring'] + parts.reduce((sum, p) => sum + p, 0);
              if (cost < single[at]!) {
                single[at] = cost;
                rings.set(at, ring);
              }
            }
          }
        }
      }
    }
  }

  const used = new Map<number, number>();
  const joined = new Map<number, number>();
  let ringCount = 0;
  const build = (cells: Cells, form: number, continues = false): Tree => {
    const { i0, j0, i1, j1 } = cells;
    const at = id(i0, j0, i1, j1);
    const { x0, y0, x1, y1 } = rectOf(field, i0, j0, i1, j1);
    const region = rectangle(x0, y0, x1, y1);
    if (form === LEAF) {
      used.set(classOf[at]!, (used.get(classOf[at]!) ?? 0) + 1);
      return leaves.treeOf({ i0, j0, i1, j1 });
    }
    if (form === RING) {
      ringCount++;
      const { centre, arms } = rings.get(at)!;
      const part = (c: Cells): Tree => build(c, formOf(c));
      return { form: 'ring', region, centre: part(centre), arms: [part(arms[0]), part(arms[1]), part(arms[2]), part(arms[3])] };
    }
    if (!continues) joined.set(contents[at]!, (joined.get(contents[at]!) ?? 0) + 1);
    const across = form === UPRIGHT;
    const cut = across ? uprightAt[at]! : levelAt[at]!;
    const first: Cells = across ? { i0, j0, i1: cut, j1 } : { i0, j0, i1, j1: cut };
    const second: Cells = across ? { i0: cut, j0, i1, j1 } : { i0, j0: cut, i1, j1 };
    const firstAt = id(first.i0, first.j0, first.i1, first.j1);
    const goesOn = (across ? upright : level)[firstAt]! <= (across ? inRow : inColumn)(firstAt);
    const line = across ? { a: 1, b: 0, c: field.xs[cut]! } : { a: 0, b: 1, c: field.ys[cut]! };
    const back = goesOn ? build(first, form, true) : build(first, formOf(first, form));
    return { form: 'cut', region, line, front: build(second, formOf(second, form)), back };
  };
  /** The cheapest form of a rectangle, another than the one given. */
  const formOf = ({ i0, j0, i1, j1 }: Cells, except = LEAF): number => {
    const at = id(i0, j0, i1, j1);
    const u = except === UPRIGHT ? Infinity : upright[at]!;
    const l = except === LEVEL ? Infinity : level[at]!;
    if (single[at]! <= Math.min(u, l) + close(at)) return rings.has(at) && classOf[at]! < 0 ? RING : LEAF;
    // Rows before columns where both are equally good.
    return l <= u ? LEVEL : UPRIGHT;
  };
  const whole: Cells = { i0: 0, j0: 0, i1: m, j1: n };
  if (best(id(0, 0, m, n)) === Infinity) return null;
  return { tree: build(whole, formOf(whole)), used, joined, rings: ringCount };
}

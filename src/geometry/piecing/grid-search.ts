import { rectangle } from '../convex.ts';
import type { Cells } from './clusters.ts';
import { rectOf } from './field.ts';
import { ACROSS, AROUND, FREE, JOINED, KEPT } from './keep.ts';
import { rectCount, rectId, type Leaves } from './leaves.ts';
import { clothNovelty, handling, sizeNovelty, type Weights } from './price.ts';
import type { Ring, RingsAt } from './rings.ts';
import type { Tree } from './tree.ts';

/** How often things are expected to be used. */
export interface Counts {
  /** By leaf class. */
  readonly leaves: readonly number[];
  /** By number of the picture a rectangle shows. */
  readonly joins: readonly number[];
}

/** What the whole block is to be joined from, where that matters. */
export type Joined = 'rows' | 'columns' | null;

/** The picture each rectangle of cells shows, by rectId; pictures are numbered from 0. */
export type Contents = ArrayLike<number>;

/** The best plan under given prices. */
export interface Plan {
  readonly tree: Tree;
  /** How often each leaf class is used. */
  readonly used: ReadonlyMap<number, number>;
  readonly leaves: readonly Cells[];
  /** Joins of rows or columns, by what they show, and how often each is made. */
  readonly joined: ReadonlyMap<number, number>;
  readonly rings: number;
}

/** A prepared search; null when every way would divide a whole patch, or when the block has no rows or columns to join. */
export type Search = (counts: Counts, kept: Uint8Array | null, last?: Joined) => Plan | null;

/** Costs that differ by less are equal: sums of the same prices in another order. */
const MARGIN = 1e-9;

const [LEAF, UPRIGHT, LEVEL, RING] = [0, 1, 2, 3];

/**
 * Prepares to find the cheapest way to cut a field into leaves by rows and columns, by dynamic programming over all
 * rectangles of cells, smallest first. A row of three is one join, not a join of joins.
 * @param contents which picture each rectangle of cells shows: joins that show the same are worked out once
 * @param ringsAt partial-seam rings that may be used
 * @returns a search: given how often everything is expected to be used (what its newness costs is shared among so many)
 * and how every rectangle lies to the parts that are to be made by themselves (null: there are none), the cheapest plan
 */
export function searcher(leaves: Leaves, weights: Weights, contents: Contents, ringsAt: RingsAt): Search {
  const { field, classes, classOf } = leaves;
  const [m, n] = [field.xs.length - 1, field.ys.length - 1];
  const size = rectCount(field);
  // The cheapest as a row of parts still open for more, as a column of parts, as neither, and the cheapest finished of all.
  const upright = new Float64Array(size);
  const level = new Float64Array(size);
  const single = new Float64Array(size);
  const closed = new Float64Array(size);
  // The cheapest as the beginning of a row, or of a column: one that goes on, or anything finished.
  const inRow = new Float64Array(size);
  const inColumn = new Float64Array(size);
  // Where the last part of the row or column begins.
  const uprightAt = new Uint16Array(size);
  const levelAt = new Uint16Array(size);
  const id = (i0: number, j0: number, i1: number, j1: number): number => rectId(n, i0, j0, i1, j1);
  /** rectId(i0, j0, i1, j1) is the sum of acrossAt for the columns and downAt for the rows. */
  const stride = Math.max(m, n) + 1;
  const acrossAt = new Int32Array(stride * stride);
  const downAt = new Int32Array(stride * stride);
  for (let a = 0; a < stride; a++) {
    for (let b = a + 1; b < stride; b++) {
      if (b <= m) acrossAt[a * stride + b] = id(a, 0, b, 1);
      if (b <= n) downAt[a * stride + b] = id(0, a, 1, b) - id(0, 0, 1, 1);
    }
  }
  const rings = new Map<number, Ring>();
  /** Of parts kept whole: what they cost as a row and as a column. */
  const keptRow = new Map<number, readonly [number, number]>();
  let closing = new Float64Array(0);

  function weigh({ leaves: counts, joins }: Counts, kept: Uint8Array | null): void {
    const price = leafPrices(classes, weights, counts);
    const [apart, roundParts, overEdge, onePart, fromParts] = [FREE, AROUND, ACROSS, KEPT, JOINED];
    // What it costs that a finished row or column is one more thing to make.
    closing = Float64Array.from(joins, (count) => weights.join / Math.max(1, count));
    for (const table of [upright, level, single]) table.fill(Infinity);
    rings.clear();
    keptRow.clear();
    const anyRings = ringsAt.size > 0;
    for (let w = 1; w <= m; w++) {
      for (let i0 = 0; i0 + w <= m; i0++) {
        const i1 = i0 + w;
        const across = acrossAt[i0 * stride + i1]!;
        for (let h = 1; h <= n; h++) {
          for (let j0 = 0; j0 + h <= n; j0++) {
            const j1 = j0 + h;
            const down = downAt[j0 * stride + j1]!;
            const at = across + down;
            const leaf = classOf[at]!;
            const lies = kept === null ? apart : kept[at]!;
            if (lies === overEdge) {
              upright[at] = level[at] = closed[at] = inRow[at] = inColumn[at] = Infinity;
              continue;
            }
            let finished = Infinity;
            if (leaf >= 0 && lies !== roundParts && lies !== fromParts) finished = single[at] = price[leaf]!;
            let least = Infinity;
            let cut = 0;
            for (let i = i0 + 1; i < i1; i++) {
              const cost = inRow[acrossAt[i0 * stride + i]! + down]! + closed[acrossAt[i * stride + i1]! + down]!;
              if (cost < least - MARGIN && !field.uprightLocked(i, j0, j1)) [least, cut] = [cost, i];
            }
            upright[at] = least;
            uprightAt[at] = cut;
            least = Infinity;
            for (let j = j0 + 1; j < j1; j++) {
              const cost = inColumn[across + downAt[j0 * stride + j]!]! + closed[across + downAt[j * stride + j1]!]!;
              if (cost < least - MARGIN && !field.levelLocked(j, i0, i1)) [least, cut] = [cost, j];
            }
            level[at] = least;
            levelAt[at] = cut;
            for (const ring of anyRings ? (ringsAt.get(at) ?? []) : []) {
              const cost = [ring.centre, ...ring.arms].reduce(
                (sum, c) => sum + closed[id(c.i0, c.j0, c.i1, c.j1)]!,
                weights.unit['partial-seam ring'],
              );
              if (cost < finished && lies !== onePart) {
                finished = single[at] = cost;
                rings.set(at, ring);
              }
            }
            const joined = Math.min(upright[at]!, level[at]!) + closing[contents[at]!]!;
            closed[at] = finished < joined ? finished : joined;
            // What is to be made by itself is finished before it becomes part of a row.
            if (lies === onePart || lies === fromParts) {
              keptRow.set(at, [upright[at]!, level[at]!]);
              upright[at] = level[at] = Infinity;
            }
            inRow[at] = Math.min(upright[at]!, closed[at]!);
            inColumn[at] = Math.min(level[at]!, closed[at]!);
          }
        }
      }
    }
  }

  /** Reads the cheapest plan back from the tables. */
  function read(last: Joined): Plan {
    const used = new Map<number, number>();
    const laid: Cells[] = [];
    const joined = new Map<number, number>();
    let ringCount = 0;
    const build = (cells: Cells, form: number, continues = false): Tree => {
      const { i0, j0, i1, j1 } = cells;
      const at = id(i0, j0, i1, j1);
      const { x0, y0, x1, y1 } = rectOf(field, i0, j0, i1, j1);
      const region = rectangle(x0, y0, x1, y1);
      if (form === LEAF) {
        laid.push(cells);
        used.set(classOf[at]!, (used.get(classOf[at]!) ?? 0) + 1);
        return leaves.treeOf(cells);
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
      const goesOn = (across ? upright : level)[firstAt]! <= closed[firstAt]!;
      const line = across ? { a: 1, b: 0, c: field.xs[cut]! } : { a: 0, b: 1, c: field.ys[cut]! };
      const back = build(first, goesOn ? form : formOf(first), goesOn);
      const tree: Tree = { form: 'cut', region, line, front: build(second, formOf(second)), back };
      return continues ? tree : { ...tree, kind: 'joined unit' };
    };
    const formOf = ({ i0, j0, i1, j1 }: Cells): number => {
      const at = id(i0, j0, i1, j1);
      const [asRow, asColumn] = keptRow.get(at) ?? [upright[at]!, level[at]!];
      if (single[at]! <= Math.min(asRow, asColumn) + closing[contents[at]!]!) return rings.has(at) ? RING : LEAF;
      // Rows before columns where both are equally good.
      return asColumn <= asRow ? LEVEL : UPRIGHT;
    };
    const whole: Cells = { i0: 0, j0: 0, i1: m, j1: n };
    const tree = build(whole, last === null ? formOf(whole) : last === 'rows' ? LEVEL : UPRIGHT);
    return { tree, used, leaves: laid, joined, rings: ringCount };
  }

  return (counts, kept, last = null) => {
    weigh(counts, kept);
    const all = id(0, 0, m, n);
    const cost = last === null ? closed[all]! : last === 'rows' ? level[all]! : upright[all]!;
    return cost === Infinity ? null : read(last);
  };
}

/** What each leaf costs when its newness is shared among as many as are expected of its cloths, and of its size. */
function leafPrices(classes: Leaves['classes'], weights: Weights, counts: readonly number[]): Float64Array {
  const bySize = new Map<string, number>();
  classes.forEach((leaf, c) => bySize.set(leaf.size, (bySize.get(leaf.size) ?? 0) + counts[c]!));
  return Float64Array.from(classes, (leaf, c) => {
    const own = clothNovelty(leaf, weights) / Math.max(1, counts[c]!);
    return handling(leaf, weights) + own + sizeNovelty(leaf, weights) / Math.max(1, bySize.get(leaf.size)!);
  });
}

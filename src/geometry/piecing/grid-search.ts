import { rectangle } from '../convex.ts';
import type { Cells } from './clusters.ts';
import { rectOf } from './field.ts';
import { ACROSS, AROUND, FREE, JOINED, KEPT } from './keep.ts';
import type { Leaves } from './leaves.ts';
import { clothNovelty, handling, sizeNovelty, type Weights } from './price.ts';
import { rectCount, rectId } from './rect-id.ts';
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
  /** @returns how the block comes apart */
  readonly tree: () => Tree;
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
/** Added to the form of what goes on with a row or column begun outside it. */
const GOES_ON = 4;

/** A plan as it is read. */
interface Reading {
  readonly kept: Uint8Array | null;
  readonly used: Map<number, number>;
  readonly leaves: Cells[];
  readonly joined: Map<number, number>;
  /** Form of every part, and where it is cut, each before its own parts. */
  readonly order: number[];
  /** Rings, as their turn comes. */
  readonly turning: Ring[];
}

/** What a search knows of every rectangle of cells, by rectId. */
interface Tables {
  /** The cheapest as a row of parts still open for more, as a column of parts, as neither, and the cheapest finished of all. */
  readonly upright: Float64Array;
  readonly level: Float64Array;
  readonly single: Float64Array;
  readonly closed: Float64Array;
  /** The cheapest as the beginning of a row, or of a column: one that goes on, or anything finished. */
  readonly inRow: Float64Array;
  readonly inColumn: Float64Array;
  /** Where the last part of the row or column begins. */
  readonly uprightAt: Uint16Array;
  readonly levelAt: Uint16Array;
}

/**
 * Tables of at most so many rectangles are kept for the next search, which writes them anew before it reads them; so is the plan,
 * should the same prices come again.
 */
const KEPT_TABLES = 100_000;
let tables: Tables | null = null;

function tablesFor(size: number): Tables {
  if (tables !== null && tables.closed.length >= size) return tables;
  const costs = (): Float64Array => new Float64Array(size);
  const made: Tables = {
    upright: costs(),
    level: costs(),
    single: costs(),
    closed: costs(),
    inRow: costs(),
    inColumn: costs(),
    uprightAt: new Uint16Array(size),
    levelAt: new Uint16Array(size),
  };
  if (size <= KEPT_TABLES) tables = made;
  return made;
}

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
  const { upright, level, single, closed, inRow, inColumn, uprightAt, levelAt } = tablesFor(size);
  const id = (i0: number, j0: number, i1: number, j1: number): number => rectId(n, i0, j0, i1, j1);
  /** By how much ids differ from one column of cells to the next; from one row to the next it is 1. */
  const column = id(1, 0, 2, 1) - id(0, 0, 2, 1);
  const rings = new Map<number, Ring>();
  let closing: readonly number[] = [];
  const prices = leafPrices(classes, weights);
  /** Plans found before, and from which prices. */
  const known: { readonly kept: Uint8Array | null; readonly last: Joined; readonly price: readonly number[]; readonly closing: readonly number[]; readonly plan: Plan | null }[] = [];

  function weigh(price: readonly number[], kept: Uint8Array | null): void {
    const [apart, roundParts, overEdge, onePart, fromParts] = [FREE, AROUND, ACROSS, KEPT, JOINED];
    rings.clear();
    const anyRings = ringsAt.size > 0;
    for (let w = 1; w <= m; w++) {
      for (let i0 = 0; i0 + w <= m; i0++) {
        const i1 = i0 + w;
        for (let h = 1; h <= n; h++) {
          for (let j0 = 0; j0 + h <= n; j0++) {
            const j1 = j0 + h;
            const at = id(i0, j0, i1, j1);
            const leaf = classOf[at]!;
            const lies = kept === null ? apart : kept[at]!;
            if (lies === overEdge) {
              upright[at] = level[at] = single[at] = closed[at] = inRow[at] = inColumn[at] = Infinity;
              continue;
            }
            let finished = Infinity;
            if (leaf >= 0 && lies !== roundParts && lies !== fromParts) finished = price[leaf]!;
            single[at] = finished;
            // The two sides of a cut, from cut to cut: what is before it grows a column wider, then a row higher.
            let [asRow, cut] = [Infinity, 0];
            for (let i = i0 + 1, before = id(i0, j0, i, j1), after = at + column; i < i1; before += i * column, i++, after += column) {
              const cost = inRow[before]! + closed[after]!;
              if (cost < asRow - MARGIN && !field.uprightLocked(i, j0, j1)) {
                asRow = cost;
                cut = i;
              }
            }
            uprightAt[at] = cut;
            let asColumn = Infinity;
            for (let j = j0 + 1, before = id(i0, j0, i1, j), after = at + 1; j < j1; before += j, j++, after++) {
              const cost = inColumn[before]! + closed[after]!;
              if (cost < asColumn - MARGIN && !field.levelLocked(j, i0, i1)) {
                asColumn = cost;
                cut = j;
              }
            }
            levelAt[at] = cut;
            if (anyRings && lies !== onePart) {
              for (const ring of ringsAt.get(at) ?? []) {
                const cost = [ring.centre, ...ring.arms].reduce(
                  (sum, c) => sum + closed[id(c.i0, c.j0, c.i1, c.j1)]!,
                  weights.unit['partial-seam ring'],
                );
                if (cost < finished) {
                  finished = single[at] = cost;
                  rings.set(at, ring);
                }
              }
            }
            const joined = Math.min(asRow, asColumn) + closing[contents[at]!]!;
            const whole = finished < joined ? finished : joined;
            closed[at] = whole;
            upright[at] = asRow;
            level[at] = asColumn;
            // What is to be made by itself is finished before it becomes part of a row.
            const byItself = lies === onePart || lies === fromParts;
            inRow[at] = asRow < whole && !byItself ? asRow : whole;
            inColumn[at] = asColumn < whole && !byItself ? asColumn : whole;
          }
        }
      }
    }
  }

  /** Reads the cheapest plan back from the tables. */
  function read(kept: Uint8Array | null, last: Joined): Plan {
    const found: Reading = { kept, used: new Map(), leaves: [], joined: new Map(), order: [], turning: [] };
    visit(found, 0, 0, m, n, last === null ? formOf(id(0, 0, m, n)) : last === 'rows' ? LEVEL : UPRIGHT, false);
    const { used, leaves: laid, joined, order, turning } = found;
    return { tree: () => treeOf(order, turning), used, leaves: laid, joined, rings: turning.length };
  }

  function visit(found: Reading, i0: number, j0: number, i1: number, j1: number, form: number, continues: boolean): void {
    const at = id(i0, j0, i1, j1);
    const { used, joined, order } = found;
    order.push(continues ? form + GOES_ON : form);
    if (form === LEAF) {
      found.leaves.push({ i0, j0, i1, j1 });
      used.set(classOf[at]!, (used.get(classOf[at]!) ?? 0) + 1);
    } else if (form === RING) {
      const ring = rings.get(at)!;
      found.turning.push(ring);
      for (const c of [ring.centre, ...ring.arms]) visit(found, c.i0, c.j0, c.i1, c.j1, formOf(id(c.i0, c.j0, c.i1, c.j1)), false);
    } else {
      const picture = contents[at]!;
      if (!continues) joined.set(picture, (joined.get(picture) ?? 0) + 1);
      const across = form === UPRIGHT;
      const cut = across ? uprightAt[at]! : levelAt[at]!;
      order.push(cut);
      const [i, j] = across ? [cut, j1] : [i1, cut];
      const first = id(i0, j0, i, j);
      const byItself = found.kept !== null && (found.kept[first] === KEPT || found.kept[first] === JOINED);
      const goesOn = !byItself && (across ? upright : level)[first]! <= closed[first]!;
      visit(found, i0, j0, i, j, goesOn ? form : formOf(first), goesOn);
      const [i2, j2] = across ? [cut, j0] : [i0, cut];
      visit(found, i2, j2, i1, j1, formOf(id(i2, j2, i1, j1)), false);
    }
  }

  function formOf(at: number): number {
    const [asRow, asColumn] = [upright[at]!, level[at]!];
    if (single[at]! <= Math.min(asRow, asColumn) + closing[contents[at]!]!) return rings.has(at) ? RING : LEAF;
    // Rows before columns where both are equally good.
    return asColumn <= asRow ? LEVEL : UPRIGHT;
  }

  /** Puts a plan together from what was read. */
  function treeOf(order: readonly number[], turning: readonly Ring[]): Tree {
    let [next, nextRing] = [0, 0];
    const build = (cells: Cells): Tree => {
      const { i0, j0, i1, j1 } = cells;
      const form = order[next++]!;
      if (form === LEAF) return leaves.treeOf(cells);
      const { x0, y0, x1, y1 } = rectOf(field, i0, j0, i1, j1);
      const region = rectangle(x0, y0, x1, y1);
      if (form === RING) {
        const { centre, arms } = turning[nextRing++]!;
        return { form: 'ring', region, centre: build(centre), arms: [build(arms[0]), build(arms[1]), build(arms[2]), build(arms[3])] };
      }
      const across = form % GOES_ON === UPRIGHT;
      const cut = order[next++]!;
      const back = build(across ? { i0, j0, i1: cut, j1 } : { i0, j0, i1, j1: cut });
      const front = build(across ? { i0: cut, j0, i1, j1 } : { i0, j0: cut, i1, j1 });
      const line = across ? { a: 1, b: 0, c: field.xs[cut]! } : { a: 0, b: 1, c: field.ys[cut]! };
      return { form: 'cut', region, line, front, back, ...(form >= GOES_ON ? {} : { kind: 'joined unit' }) };
    };
    return build({ i0: 0, j0: 0, i1: m, j1: n });
  }

  return (counts, kept, last = null) => {
    // What it costs that a finished row or column is one more thing to make.
    closing = counts.joins.map((count) => weights.join / Math.max(1, count));
    for (;;) {
      const price = prices(counts.leaves);
      const before = known.find((k) => k.kept === kept && k.last === last && same(k.price, price) && same(k.closing, closing));
      if (before) return before.plan;
      weigh(price, kept);
      const all = id(0, 0, m, n);
      const cost = last === null ? closed[all]! : last === 'rows' ? level[all]! : upright[all]!;
      const plan = cost === Infinity ? null : read(kept, last);
      // What is cheapest at the least it can cost, and has been looked into, is cheapest.
      if (plan && leaves.settle(plan.used.keys())) continue;
      if (size <= KEPT_TABLES) known.push({ kept, last, price, closing, plan });
      return plan;
    }
  };
}

/** @returns how to work out what each leaf costs when its newness is shared among as many as are expected of its cloths, and of its size */
function leafPrices(classes: Leaves['classes'], weights: Weights): (counts: readonly number[]) => readonly number[] {
  const numbers = new Map<string, number>();
  const sizes = classes.map(({ size }) => {
    if (!numbers.has(size)) numbers.set(size, numbers.size);
    return numbers.get(size)!;
  });
  return (counts) => {
    const bySize = new Array<number>(numbers.size).fill(0);
    for (let c = 0; c < counts.length; c++) bySize[sizes[c]!]! += counts[c]!;
    return classes.map((leaf, c) => {
      const own = clothNovelty(leaf, weights) / Math.max(1, counts[c]!);
      return handling(leaf, weights) + own + sizeNovelty(leaf, weights) / Math.max(1, bySize[sizes[c]!]!);
    });
  };
}

/** @returns whether two lists of one length hold the same numbers */
export function same(a: readonly number[], b: readonly number[]): boolean {
  for (let i = 0; i < a.length; i++) if (a[i] !== b[i]) return false;
  return true;
}

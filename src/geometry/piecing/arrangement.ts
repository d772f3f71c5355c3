import type { Cells } from './clusters.ts';
import { searcher, type Joined, type Plan } from './grid-search.ts';
import { AROUND, keeping } from './keep.ts';
import type { Leaves } from './leaves.ts';
import type { Pictures } from './pictures.ts';
import { together } from './pins.ts';
import { ARRANGED } from './price.ts';
import { rectId } from './rect-id.ts';
import { NO_RINGS, ringsWorthwhile } from './rings.ts';
import type { Tree } from './tree.ts';

/** At most so many different parts are set aside to be made by themselves. */
const MOST_PARTS = 24;

/** Larger than anything that pairs can save. */
const PAIRS_LAST = 1_000_000;

/** A part of the block that comes again, and its places, none overlapping another. */
interface Part {
  readonly picture: number;
  readonly places: readonly Cells[];
}

/**
 * Puts given leaves together as a good teacher would: what comes again is made by itself and turned into place, the
 * part that saves most work first, and rows go right across.
 * @param pictures of the field, other cloth counting as another picture
 * @param parts how rectangles lie to parts that must be made by themselves; null: there are none
 * @param last what the block is to be joined from; null: whatever is best
 * @returns a tree with the same leaves
 */
export function arranged(plan: Plan, leaves: Leaves, pictures: Pictures, parts: Uint8Array | null, last: Joined): Tree {
  const { field } = leaves;
  if (plan.leaves.length < 3 || pictures.counts.length === 1) return plan.tree();
  const search = searcher(leaves, ARRANGED, pictures.contents, plan.rings > 0 ? ringsWorthwhile(leaves) : NO_RINGS);
  const counts = { leaves: leaves.classes.map(() => 1), joins: pictures.counts };
  const apart = keeping(field, plan.leaves);
  let marks = parts === null ? apart : together(apart, parts);
  let best = search(counts, marks, last) ?? plan;
  const unsuitable = new Set<number>();
  // Once a part has been made, only its first place is looked into further.
  const copies = new Uint8Array((field.xs.length - 1) * (field.ys.length - 1));
  for (let made = 0; made < MOST_PARTS; ) {
    const part = mostWorthMaking(plan, leaves, pictures, marks, copies, unsuitable);
    if (!part) break;
    const next = together(marks, keeping(field, part.places));
    const found = search(counts, next, last);
    unsuitable.add(part.picture);
    if (!found) continue;
    [best, marks] = [found, next];
    made++;
    const across = field.xs.length - 1;
    for (const { i0, j0, i1, j1 } of part.places.slice(1)) {
      for (let j = j0; j < j1; j++) copies.fill(1, i0 + j * across, i1 + j * across);
    }
  }
  return best.tree();
}

/** The part whose repeats save the most seams, pairs only when nothing larger comes again; null when nothing does. */
function mostWorthMaking(
  plan: Plan,
  { field }: Leaves,
  pictures: Pictures,
  marks: Uint8Array,
  copies: Uint8Array,
  unsuitable: ReadonlySet<number>,
): Part | null {
  const [m, n] = [field.xs.length - 1, field.ys.length - 1];
  const leavesBefore = new Int32Array((m + 1) * (n + 1));
  const starts = new Uint8Array(m * n);
  for (const { i0, j0 } of plan.leaves) starts[i0 + j0 * m] = 1;
  for (let j = 0; j < n; j++) {
    for (let i = 0; i < m; i++) {
      const at = i + 1 + (j + 1) * (m + 1);
      leavesBefore[at] = starts[i + j * m]! + leavesBefore[at - 1]! + leavesBefore[at - m - 1]! - leavesBefore[at - m - 2]!;
    }
  }
  const leavesIn = (i0: number, j0: number, i1: number, j1: number): number =>
    leavesBefore[i1 + j1 * (m + 1)]! - leavesBefore[i0 + j1 * (m + 1)]! - leavesBefore[i1 + j0 * (m + 1)]! + leavesBefore[i0 + j0 * (m + 1)]!;
  const places = new Map<number, { cells: Cells[]; seams: number }>();
  for (let j0 = 0; j0 < n; j0++) {
    for (let i0 = 0; i0 < m; i0++) {
      if (copies[i0 + j0 * m]) continue;
      for (let j1 = j0 + 1; j1 <= n; j1++) {
        for (let i1 = i0 + 1; i1 <= m; i1++) {
          const id = rectId(n, i0, j0, i1, j1);
          const picture = pictures.contents[id]!;
          if (marks[id] !== AROUND || pictures.counts[picture]! < 2 || unsuitable.has(picture)) continue;
          let found = places.get(picture);
          if (!found) places.set(picture, (found = { cells: [], seams: leavesIn(i0, j0, i1, j1) - 1 }));
          const apart = found.cells.every((c) => i1 <= c.i0 || c.i1 <= i0 || j1 <= c.j0 || c.j1 <= j0);
          if (apart) found.cells.push({ i0, j0, i1, j1 });
        }
      }
    }
  }
  let [best, most] = [null as Part | null, 0];
  for (const [picture, { cells, seams }] of places) {
    const saved = (cells.length - 1) * seams + (seams > 1 && cells.length > 1 ? PAIRS_LAST : 0);
    if (saved > most) [best, most] = [{ picture, places: cells }, saved];
  }
  return best;
}

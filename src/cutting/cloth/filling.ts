import { fitsIn, liesOf, type Column, type Job, type Lie, type Run, type Sheet, type Strip } from './job.ts';

/*
 * A strip filled with what is still wanted and no more. Column by column: the best stack of pieces for every width, then the widths that
 * together are worth most; the widest of these is cut, what it takes is no longer wanted, and the rest of the width is filled in the
 * same way. Good, not the best there is.
 */

/** A strip as it was filled, and what its pieces are worth. */
export interface Filled {
  readonly strip: Strip;
  readonly worth: number;
}

/** @returns how strips of one sheet are filled with pieces of which so many are left; `left` is not changed */
export function fillerOf(job: Job, sheet: Sheet): (height: number, left: readonly number[], worths: readonly number[]) => Filled {
  const tall = Math.min(sheet.length, job.reach);
  const lies = job.kinds
    .flatMap((kind, at) => liesOf(kind, at))
    .filter((lie) => fitsIn(lie, sheet) && lie.height <= tall)
    .sort((a, b) => a.width - b.width || b.height - a.height);
  const span = tall + 1;
  const best = new Float64Array(span);
  const used = new Int32Array(span);
  /** The lies of kinds of which something is left, and their widths. */
  let open: readonly Lie[] = lies;
  let widths: readonly number[] = [];
  const openLies = (left: readonly number[], worths: readonly number[]): void => {
    open = lies.filter(({ kind }) => left[kind]! > 0 && worths[kind]! > 0);
    widths = [...new Set(open.map(({ width }) => width))];
  };
  /** By width and marks: how many of the piece at the lower end, and which, as it was when that width was done. */
  const last = new Int16Array(lies.length * span);
  const values = new Float64Array(lies.length);
  const ends = new Int32Array(lies.length);
  const across = new Float64Array(sheet.width + 1);
  const from = new Int16Array(sheet.width + 1);

  const stacks = (height: number, room: number, left: readonly number[], worths: readonly number[]): number => {
    best.fill(0, 0, height + 1);
    let [next, count] = [0, 0];
    for (; count < widths.length && widths[count]! <= room; count++) {
      for (; next < open.length && open[next]!.width === widths[count]; next++) {
        const { kind, height: deep } = open[next]!;
        const row = next * span;
        last.fill(0, row, row + height + 1);
        const most = left[kind]!;
        const value = worths[kind]!;
        if (deep > height) continue;
        used.fill(0, 0, height + 1);
        for (let h = deep; h <= height; h++) {
          const more = best[h - deep]! + value;
          if (more > best[h]! && used[h - deep]! < most) {
            best[h] = more;
            used[h] = used[h - deep]! + 1;
            last[row + h] = used[h]!;
          }
        }
      }
      values[count] = best[height]!;
      ends[count] = next;
    }
    return count;
  };

  /** Reads back the stack of a width: no more of a kind than is left, though it may lie both ways. */
  const stackOf = (at: number, height: number, left: readonly number[]): { runs: Run[]; worth: (worths: readonly number[]) => number } => {
    const counts = new Map<Lie, number>();
    const taken = new Map<number, number>();
    let h = height;
    for (let lie = ends[at]! - 1; lie >= 0 && h > 0; lie--) {
      const count = last[lie * span + h]!;
      if (count === 0) continue;
      const one = open[lie]!;
      h -= count * one.height;
      const free = Math.min(count, left[one.kind]! - (taken.get(one.kind) ?? 0));
      if (free > 0) {
        counts.set(one, free);
        taken.set(one.kind, (taken.get(one.kind) ?? 0) + free);
      }
    }
    const runs = [...counts].map(([lie, count]): Run => ({ ...lie, count })).sort((a, b) => b.width - a.width || b.height - a.height);
    return { runs, worth: (worths) => runs.reduce((sum, { kind, count }) => sum + worths[kind]! * count, 0) };
  };

  return (height, wanted, worths) => {
    const left = [...wanted];
    const columns: Column[] = [];
    let [room, worth] = [sheet.width, 0];
    openLies(left, worths);
    for (;;) {
      const count = stacks(height, room, left, worths);
      const widest = widestOfBest(values, widths, count, room, across, from);
      if (widest === null) break;
      const stack = stackOf(widest.at, height, left);
      if (stack.runs.length === 0) break;
      const uses = new Map<number, number>();
      for (const run of stack.runs) uses.set(run.kind, (uses.get(run.kind) ?? 0) + run.count);
      let times = widest.times;
      for (const [kind, pieces] of uses) times = Math.min(times, Math.floor(left[kind]! / pieces));
      const width = Math.max(...stack.runs.map((run) => run.width));
      columns.push({ width, runs: stack.runs, times });
      for (const [kind, pieces] of uses) left[kind]! -= pieces * times;
      if ([...uses.keys()].some((kind) => left[kind] === 0)) openLies(left, worths);
      room -= width * times;
      worth += stack.worth(worths) * times;
    }
    const deep = columns.map(({ runs }) => runs.reduce((sum, run) => sum + run.height * run.count, 0));
    return { strip: { height: Math.max(0, ...deep), columns, times: 1 }, worth };
  };
}

/** Of the widths that side by side are worth most, the widest, and how often it is among them. */
function widestOfBest(
  values: Float64Array,
  widths: readonly number[],
  count: number,
  room: number,
  across: Float64Array,
  from: Int16Array,
): { readonly at: number; readonly times: number } | null {
  across.fill(0, 0, room + 1);
  from.fill(-1, 0, room + 1);
  let before = 0;
  for (let at = 0; at < count; at++) {
    const value = values[at]!;
    if (value <= before) continue;
    before = value;
    const width = widths[at]!;
    for (let x = width; x <= room; x++) {
      const more = across[x - width]! + value;
      if (more > across[x]!) {
        across[x] = more;
        from[x] = at;
      }
    }
  }
  let [widest, times] = [-1, 0];
  for (let x = room; x > 0 && from[x]! >= 0; x -= widths[from[x]!]!) {
    if (from[x]! > widest) [widest, times] = [from[x]!, 1];
    else if (from[x] === widest) times++;
  }
  return widest < 0 ? null : { at: widest, times };
}

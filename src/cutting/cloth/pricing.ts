import { fitsIn, liesOf, type Column, type Job, type Lie, type Sheet, type Strip } from './job.ts';

/*
 * What a piece of cloth is worth when every kind of piece has a worth, in whole numbers. Exact dynamic programming, stage by stage:
 * pieces one below another in a column, columns side by side in a strip, strips one after another on the sheet. Each stage asks for
 * the most worth in so many marks, any number of pieces of each kind: a little more than is wanted, so what no sheet is worth is
 * never worth more on a real one.
 */

/** The most a strip of each length can be worth, and how it is cut. */
export interface Prices {
  /** By length of the strip, from 0; for every length where more fits than in a shorter one, else that of the shorter one. */
  readonly worth: Float64Array;
  /** Lengths where more fits than in a shorter strip, ascending. */
  readonly steps: readonly number[];
  /** @returns a strip of that length worth so much */
  readonly strip: (height: number) => Strip;
}

/** @returns how strips of one sheet are priced */
export function pricerOf(job: Job, sheet: Sheet): (worths: readonly number[]) => Prices {
  const tall = Math.min(sheet.length, job.reach);
  const wide = sheet.width;
  const lies = job.kinds
    .flatMap((kind, at) => liesOf(kind, at))
    .filter((lie) => fitsIn(lie, sheet) && lie.height <= tall)
    .sort((a, b) => a.width - b.width || a.height - b.height);
  const widths = [...new Set(lies.map(({ width }) => width))];
  const span = tall + 1;
  /** By width of a column and marks of length: what it is worth, and the piece at its lower end, -1 for a mark left over. */
  const deep = new Float64Array(widths.length * span);
  const last = new Int16Array(widths.length * span);
  const best = new Float64Array(wide + 1);
  const from = new Int16Array(wide + 1);

  return (worths) => {
    fillColumns(lies, widths, worths, deep, last, span);
    const worth = new Float64Array(span);
    const steps: number[] = [];
    const top = (widths.length - 1) * span;
    for (let height = 1; height < span; height++) {
      worth[height] = worth[height - 1]!;
      if (widths.length === 0 || !risesAt(deep, widths.length, span, height, top)) continue;
      const found = fillStrip(deep, widths, span, height, wide, best, null);
      if (found > worth[height]!) {
        worth[height] = found;
        steps.push(height);
      }
    }
    const strip = (height: number): Strip => {
      fillStrip(deep, widths, span, height, wide, best, from);
      const columns = new Map<number, number>();
      for (let x = wide; x > 0; ) {
        const at = from[x]!;
        if (at < 0) x -= 1;
        else {
          columns.set(at, (columns.get(at) ?? 0) + 1);
          x -= widths[at]!;
        }
      }
      const made = [...columns].map(([at, times]): Column => ({ ...columnAt(lies, last, at * span, height), times }));
      return { height: Math.max(0, ...made.map(({ runs }) => runs.reduce((sum, run) => sum + run.height * run.count, 0))), columns: made, times: 1 };
    };
    return { worth, steps, strip };
  };
}

function fillColumns(
  lies: readonly Lie[],
  widths: readonly number[],
  worths: readonly number[],
  deep: Float64Array,
  last: Int16Array,
  span: number,
): void {
  let next = 0;
  for (let at = 0; at < widths.length; at++) {
    const row = at * span;
    if (at === 0) {
      deep.fill(0, 0, span);
      last.fill(-1, 0, span);
    } else {
      deep.copyWithin(row, row - span, row);
      last.copyWithin(row, row - span, row);
    }
    for (; next < lies.length && lies[next]!.width === widths[at]; next++) {
      const { kind, height } = lies[next]!;
      const value = worths[kind]!;
      if (value <= 0) continue;
      for (let h = row + height; h < row + span; h++) {
        const more = deep[h - height]! + value;
        if (more > deep[h]!) {
          deep[h] = more;
          last[h] = next;
        }
      }
    }
  }
}

/** Whether a column of some width is worth more at this length than a mark shorter. */
function risesAt(deep: Float64Array, count: number, span: number, height: number, top: number): boolean {
  if (deep[top + height]! > deep[top + height - 1]!) return true;
  for (let at = 0; at < count - 1; at++) if (deep[at * span + height]! > deep[at * span + height - 1]!) return true;
  return false;
}

function fillStrip(
  deep: Float64Array,
  widths: readonly number[],
  span: number,
  height: number,
  wide: number,
  best: Float64Array,
  from: Int16Array | null,
): number {
  best.fill(0);
  from?.fill(-1);
  let before = 0;
  for (let at = 0; at < widths.length; at++) {
    const value = deep[at * span + height]!;
    if (value <= before) continue;
    before = value;
    const width = widths[at]!;
    if (from === null) {
      for (let x = width; x <= wide; x++) {
        const more = best[x - width]! + value;
        if (more > best[x]!) best[x] = more;
      }
      continue;
    }
    for (let x = width; x <= wide; x++) {
      const more = best[x - width]! + value;
      if (more > best[x]!) {
        best[x] = more;
        from[x] = at;
      }
    }
  }
  return best[wide]!;
}

function columnAt(lies: readonly Lie[], last: Int16Array, row: number, height: number): Omit<Column, 'times'> {
  const counts = new Map<number, number>();
  for (let h = height; h > 0; ) {
    const at = last[row + h]!;
    if (at < 0) h -= 1;
    else {
      counts.set(at, (counts.get(at) ?? 0) + 1);
      h -= lies[at]!.height;
    }
  }
  const runs = [...counts].map(([at, count]) => ({ ...lies[at]!, count })).sort((a, b) => b.width - a.width || b.height - a.height);
  return { width: Math.max(...runs.map(({ width }) => width)), runs };
}

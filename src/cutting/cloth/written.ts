import { rational } from '../../measure/rational.ts';
import type { ClothLayout, LaidCloth, LaidColumn, LaidPieces, LaidStrip } from '../layout.ts';
import { lengthOf, type Column, type CutSheet, type Job, type Run, type Strip } from './job.ts';
import { takenBy } from './quick.ts';

/** What of each kind is still to be laid, line by line of the list. */
interface Supply {
  readonly lines: { readonly cut: string; count: number }[];
}

/** Pieces with the line they are for. */
interface Named extends Run {
  readonly cut: string;
}

/**
 * @returns a layout in whole marks as the pattern holds it: every piece with its line of the list, exactly as many as are wanted (what
 * a strip would hold beyond that is left out), the longest strips and columns first
 * @param least no layout takes less, in marks or in precut pieces
 */
export function writtenLayout(job: Job, cloths: readonly CutSheet[], least: number): ClothLayout {
  const supplies = job.kinds.map((kind): Supply => ({ lines: kind.lines.map((line) => ({ ...line })) }));
  const laid = cloths.flatMap((cloth) => namedSheets(cloth, supplies));
  const byLength = job.sheets.at(-1)!.length === Infinity;
  const measure = (amount: number) => (byLength ? lengthOf(amount, job) : rational(amount));
  const left = supplies.flatMap(({ lines }) => lines.filter(({ count }) => count > 0));
  const takes = takenBy(job, laid);
  return {
    cloths: laid.map((cloth) => written(job, cloth)),
    takes: measure(takes),
    least: measure(Math.min(least, takes)),
    unplaced: [...job.tooLarge, ...left],
  };
}

interface NamedColumn extends Column {
  readonly runs: readonly Named[];
}
interface NamedStrip extends Strip {
  readonly columns: readonly NamedColumn[];
}
interface NamedSheet extends CutSheet {
  readonly strips: readonly NamedStrip[];
}

/** Equal sheets stay one entry as long as the same lines of the list serve them all. */
function namedSheets({ sheet, strips, times }: CutSheet, supplies: readonly Supply[]): NamedSheet[] {
  const all: NamedSheet[] = [];
  let left = times;
  while (left > 0) {
    const whole = alike(strips.flatMap((strip) => runsOf(strip.columns, strip.times)), left, supplies);
    const made: NamedSheet =
      whole > 0
        ? { sheet, strips: strips.map((strip) => headStrip(strip, supplies)), times: whole }
        : { sheet, strips: strips.flatMap((strip) => namedStrips(strip, supplies)), times: 1 };
    if (whole > 0) take(strips.flatMap((strip) => runsOf(strip.columns, strip.times)), whole, supplies);
    if (made.strips.length > 0) all.push({ ...made, strips: [...made.strips].sort((a, b) => b.height - a.height) });
    left -= made.times;
  }
  return all;
}

function namedStrips(strip: Strip, supplies: readonly Supply[]): NamedStrip[] {
  const all: NamedStrip[] = [];
  let left = strip.times;
  while (left > 0) {
    const runs = runsOf(strip.columns, 1);
    const whole = alike(runs, left, supplies);
    if (whole > 0) {
      all.push({ ...headStrip(strip, supplies), times: whole });
      take(runs, whole, supplies);
      left -= whole;
      continue;
    }
    const columns = strip.columns.flatMap((column) => namedColumns(column, supplies)).sort(byDepth);
    if (columns.length > 0) all.push({ height: Math.max(...columns.map(depthOf)), columns, times: 1 });
    left -= 1;
  }
  return all;
}

function namedColumns(column: Column, supplies: readonly Supply[]): NamedColumn[] {
  const all: NamedColumn[] = [];
  let left = column.times;
  while (left > 0) {
    const whole = alike(column.runs, left, supplies);
    if (whole > 0) {
      all.push({ ...headColumn(column, supplies), times: whole });
      take(column.runs, whole, supplies);
      left -= whole;
      continue;
    }
    const runs = column.runs.flatMap((run) => namedRuns(run, supplies[run.kind]!));
    if (runs.length > 0) all.push({ width: Math.max(...runs.map(({ width }) => width)), runs, times: 1 });
    left -= 1;
  }
  return all;
}

/** Pieces line by line, no more than are still wanted. */
function namedRuns(run: Run, { lines }: Supply): Named[] {
  const all: Named[] = [];
  let left = run.count;
  for (const line of lines) {
    const count = Math.min(left, line.count);
    if (count === 0) continue;
    line.count -= count;
    left -= count;
    all.push({ ...run, count, cut: line.cut });
  }
  return all;
}

/** How often over all runs of a thing can be had, at most `times`, from the line of each kind that is being served. */
function alike(runs: readonly Run[], times: number, supplies: readonly Supply[]): number {
  let [most, uses] = [times, new Map<number, number>()];
  for (const { kind, count } of runs) uses.set(kind, (uses.get(kind) ?? 0) + count);
  for (const [kind, count] of uses) most = Math.min(most, Math.floor((headOf(supplies[kind]!)?.count ?? 0) / count));
  return most;
}

function take(runs: readonly Run[], times: number, supplies: readonly Supply[]): void {
  for (const { kind, count } of runs) {
    const head = headOf(supplies[kind]!);
    if (head !== undefined) head.count -= count * times;
  }
}

const headOf = ({ lines }: Supply) => lines.find(({ count }) => count > 0);

const headStrip = (strip: Strip, supplies: readonly Supply[]): NamedStrip => ({
  ...strip,
  columns: strip.columns.map((column) => headColumn(column, supplies)).sort(byDepth),
});

const headColumn = (column: Column, supplies: readonly Supply[]): NamedColumn => ({
  ...column,
  runs: column.runs.map((run) => ({ ...run, cut: headOf(supplies[run.kind]!)?.cut ?? '' })),
});

const runsOf = (columns: readonly Column[], times: number): readonly Run[] =>
  columns.flatMap((column) => column.runs.map((run) => ({ ...run, count: run.count * column.times * times })));

const depthOf = ({ runs }: Column): number => runs.reduce((sum, { height, count }) => sum + height * count, 0);
const byDepth = (a: Column, b: Column): number => depthOf(b) - depthOf(a) || b.width - a.width;

function written(job: Job, { sheet, strips, times }: NamedSheet): LaidCloth {
  const length = (marks: number) => lengthOf(marks, job);
  const pieces = ({ cut, width, height, count }: Named): LaidPieces => ({ cut, width: length(width), length: length(height), count });
  const column = ({ width, runs, times: beside }: NamedColumn): LaidColumn => ({
    width: length(width),
    pieces: runs.map(pieces),
    times: beside,
  });
  const strip = ({ height, columns, times: below }: NamedStrip): LaidStrip => ({
    length: length(height),
    columns: columns.map(column),
    times: below,
  });
  return { source: job.sheets[sheet]!.source, strips: strips.map(strip), times };
}

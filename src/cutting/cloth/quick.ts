import { fitsIn, heightOf, liesOf, type Column, type CutSheet, type Job, type Lie, type Sheet, type Strip } from './job.ts';

/*
 * Layouts that are there at once: pieces in order of their length along the cloth, each in the first strip that has room for it, or in a
 * strip of its own ("first fit by decreasing height"), in several orders and with smaller pieces one below another. It works with
 * counts: equal strips are one strip so many times.
 */

/** Which side of a piece that may be turned lies along the cloth, and whether what is left of a strip takes several one below another. */
interface Rule {
  readonly along: 'shorter' | 'longer' | 'as given';
  readonly stacked: boolean;
  /** Of pieces equally long along the cloth, which come first. */
  readonly ties: 'wider' | 'listed';
}

const RULES: readonly Rule[] = ([true, false] as const).flatMap((stacked) =>
  (['wider', 'listed'] as const).flatMap((ties) =>
    (['shorter', 'longer', 'as given'] as const).map((along): Rule => ({ along, stacked, ties })),
  ),
);

export interface QuickLayout {
  readonly cloths: readonly CutSheet[];
  /** By kind, what found no place. */
  readonly left: readonly number[];
}

/** @returns the best of several first-fit layouts: what is left over least, then what is bought */
export function quickLayout(job: Job): QuickLayout {
  let best: { layout: QuickLayout; left: number; takes: number } | null = null;
  for (const rule of RULES) {
    const layout = layoutBy(job, rule);
    const left = layout.left.reduce((sum, count) => sum + count, 0);
    const takes = takenBy(job, layout.cloths);
    if (best === null || left < best.left || (left === best.left && takes < best.takes)) best = { layout, left, takes };
  }
  return best!.layout;
}

/** @returns what is bought: marks of length, or a number of precut pieces */
export function takenBy(job: Job, cloths: readonly CutSheet[]): number {
  const bought = job.sheets.length - 1;
  const byLength = job.sheets[bought]!.length === Infinity;
  return cloths
    .filter(({ sheet }) => sheet === bought)
    .reduce((sum, { strips, times }) => sum + times * (byLength ? heightOf(strips) : 1), 0);
}

function layoutBy(job: Job, rule: Rule): QuickLayout {
  const left = job.kinds.map(({ count }) => count);
  const cloths: CutSheet[] = [];
  job.sheets.forEach((sheet, at) => {
    let unused = sheet.count;
    while (unused > 0) {
      const before = [...left];
      const strips = fillSheet(job, sheet, left, rule);
      if (strips.length === 0) break;
      const used = before.map((count, kind) => count - left[kind]!);
      let again = unused - 1;
      if (sheet.length === Infinity) again = 0;
      used.forEach((count, kind) => {
        if (count > 0) again = Math.min(again, Math.floor(left[kind]! / count));
      });
      used.forEach((count, kind) => (left[kind]! -= again * count));
      cloths.push({ sheet: at, strips, times: again + 1 });
      unused -= again + 1;
    }
  });
  return { cloths, left };
}

/** A strip that may still have room. */
interface OpenStrip {
  readonly height: number;
  readonly room: number;
  readonly columns: readonly Column[];
  readonly times: number;
}

/** Fills one sheet; takes what it lays off `left`. */
function fillSheet(job: Job, sheet: Sheet, left: number[], rule: Rule): readonly Strip[] {
  let strips: OpenStrip[] = [];
  let length = sheet.length;
  const bought = job.sheets[job.sheets.length - 1]!;
  const lies = job.kinds.flatMap((kind, at) => {
    const ways = liesOf(kind, at);
    const fit = ways.filter((lie) => fitsIn(lie, sheet));
    if (fit.length === 0) return [];
    const sorted = [...ways].sort((a, b) => a.height - b.height);
    const preferred = rule.along === 'as given' ? ways[0]! : rule.along === 'shorter' ? sorted[0]! : sorted.at(-1)!;
    const onlyHere = sheet !== bought && !ways.some((lie) => fitsIn(lie, bought));
    return [{ first: fit.includes(preferred) ? preferred : fit[0]!, ways, onlyHere }];
  });
  const places = new Map(job.kinds.map(({ listed }, kind) => [kind, listed]));
  const tied = (a: Lie, b: Lie): number => (rule.ties === 'wider' ? b.width - a.width : places.get(a.kind)! - places.get(b.kind)!);
  lies.sort((a, b) => Number(b.onlyHere) - Number(a.onlyHere) || b.first.height - a.first.height || tied(a.first, b.first));
  for (const { first, ways } of lies) {
    const { kind } = first;
    if (left[kind] === 0) continue;
    const next: OpenStrip[] = [];
    for (const strip of strips) {
      if (left[kind] === 0) next.push(strip);
      else left[kind]! -= serve(strip, rule.stacked ? ways : [first], rule.stacked, left[kind]!, next);
    }
    strips = next;
    if (left[kind] === 0) continue;
    const holds = Math.floor(sheet.width / first.width);
    const open = Math.min(Math.ceil(left[kind]! / holds), Math.floor(length / first.height));
    if (open === 0) continue;
    length -= open * first.height;
    const bare: OpenStrip = { height: first.height, room: sheet.width, columns: [], times: open };
    left[kind]! -= serve(bare, [first], false, left[kind]!, strips);
  }
  return strips.filter(({ columns }) => columns.length > 0).map(({ height, columns, times }) => ({ height, columns, times }));
}

/**
 * Puts as many pieces as wanted and possible into equal strips, the way round that takes more.
 * @param next gets the strips after that: full ones, one that is partly served, untouched ones
 * @returns how many pieces
 */
function serve(strip: OpenStrip, ways: readonly Lie[], stacked: boolean, wanted: number, next: OpenStrip[]): number {
  let best: { lie: Lie; deep: number; holds: number } | null = null;
  for (const lie of ways) {
    const deep = stacked ? Math.floor(strip.height / lie.height) : lie.height <= strip.height ? 1 : 0;
    const holds = deep * Math.floor(strip.room / lie.width);
    if (holds > 0 && (best === null || holds > best.holds)) best = { lie, deep, holds };
  }
  if (best === null) {
    next.push(strip);
    return 0;
  }
  const { lie, deep, holds } = best;
  const full = Math.min(strip.times, Math.floor(wanted / holds));
  const rest = full < strip.times ? wanted - full * holds : 0;
  if (full > 0) next.push(withColumns(strip, columnsOf(lie, deep, holds), full));
  if (rest > 0) next.push(withColumns(strip, columnsOf(lie, deep, rest), 1));
  const untouched = strip.times - full - (rest > 0 ? 1 : 0);
  if (untouched > 0) next.push({ ...strip, times: untouched });
  return full * holds + rest;
}

function withColumns(strip: OpenStrip, columns: readonly Column[], times: number): OpenStrip {
  const taken = columns.reduce((sum, column) => sum + column.width * column.times, 0);
  return { height: strip.height, room: strip.room - taken, columns: [...strip.columns, ...columns], times };
}

function columnsOf(lie: Lie, deep: number, count: number): readonly Column[] {
  const [full, rest] = [Math.floor(count / deep), count % deep];
  const column = (pieces: number, times: number): Column => ({ width: lie.width, runs: [{ ...lie, count: pieces }], times });
  return [...(full > 0 ? [column(deep, full)] : []), ...(rest > 0 ? [column(rest, 1)] : [])];
}

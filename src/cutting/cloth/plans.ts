import { heightOf, piecesIn, type CutSheet, type Job, type Sheet, type Strip } from './job.ts';
import { pricerOf, type Prices } from './pricing.ts';
import type { Entry } from './solver.ts';

/** One thing that can be cut, any number of times: a strip of what is bought by the length, else a whole sheet. */
export interface Plan {
  readonly sheet: number;
  readonly strips: readonly Strip[];
  /** Marks of length or one precut piece; nothing for what the maker has. */
  readonly cost: number;
  /** How many pieces of each kind it gives, by kind. */
  readonly gives: ReadonlyMap<number, number>;
}

/** @returns a plan of these strips on one sheet */
export function planOf(job: Job, sheet: number, strips: readonly Strip[]): Plan {
  const cost = sheet < job.sheets.length - 1 ? 0 : job.sheets[sheet]!.length === Infinity ? heightOf(strips) : 1;
  return { sheet, strips, cost, gives: piecesIn(strips) };
}

/** @returns text that is the same for plans that give the same at the same cost */
export const planKey = ({ sheet, cost, gives }: Plan): string =>
  `${sheet} ${cost}|${[...gives].sort(([a], [b]) => a - b).join(' ')}`;

/** @returns the plans of a layout, each once: by the length one for each strip */
export function plansOf(job: Job, cloths: readonly CutSheet[]): readonly Plan[] {
  return cloths.flatMap(({ sheet, strips }) =>
    job.sheets[sheet]!.length === Infinity ? strips.map((strip) => planOf(job, sheet, [{ ...strip, times: 1 }])) : [planOf(job, sheet, strips)],
  );
}

/** @returns a layout that follows plans so many times each */
export function followed(job: Job, plans: readonly Plan[], times: readonly number[]): readonly CutSheet[] {
  const cloths: CutSheet[] = [];
  const strips: Strip[] = [];
  plans.forEach((plan, at) => {
    if (times[at]! <= 0) return;
    if (job.sheets[plan.sheet]!.length === Infinity) strips.push({ ...plan.strips[0]!, times: times[at]! });
    else cloths.push({ sheet: plan.sheet, strips: plan.strips, times: times[at]! });
  });
  if (strips.length > 0) cloths.push({ sheet: job.sheets.length - 1, strips, times: 1 });
  return cloths.sort((a, b) => a.sheet - b.sheet);
}

/** @returns a plan as a column: rows for the kinds, then one for each sheet the maker has */
export function entryOf(job: Job, { sheet, cost, gives }: Plan): Entry {
  const rows = [...gives.keys()];
  const adds = [...gives.values()];
  const own = sheet < job.sheets.length - 1;
  return { cost, rows: own ? [...rows, job.kinds.length + sheet] : rows, adds: own ? [...adds, 1] : adds };
}

/** What the plans of one sheet are worth at most. */
export interface SheetPrices {
  /** Of one whole sheet, where it has an end. */
  readonly worth: number;
  readonly prices: Prices;
  /** @returns the strips of a whole sheet that is worth so much */
  readonly strips: () => readonly Strip[];
  /** @returns lengths of the strips that are worth most together in so many marks, the longest first */
  readonly best: (length: number) => { readonly heights: readonly number[] };
}

/** @returns how plans of one sheet are priced: worths are whole numbers, and so is what comes of them */
export function sheetPricerOf(job: Job, sheet: Sheet): (worths: readonly number[]) => SheetPrices {
  const price = pricerOf(job, sheet);
  if (sheet.length === Infinity) return (worths) => ({ worth: 0, prices: price(worths), strips: () => [], best: () => ({ heights: [] }) });
  const best = new Float64Array(sheet.length + 1);
  const from = new Int32Array(sheet.length + 1);
  return (worths) => {
    const prices = price(worths);
    best.fill(0);
    from.fill(0);
    for (const height of prices.steps) {
      const value = prices.worth[height]!;
      for (let y = height; y <= sheet.length; y++) {
        const more = best[y - height]! + value;
        if (more > best[y]!) {
          best[y] = more;
          from[y] = height;
        }
      }
    }
    const strips = (): readonly Strip[] => {
      const counts = new Map<number, number>();
      for (let y = sheet.length; from[y]! > 0; y -= from[y]!) counts.set(from[y]!, (counts.get(from[y]!) ?? 0) + 1);
      return [...counts].map(([height, times]) => ({ ...prices.strip(height), times }));
    };
    const heights = (length: number) => {
      const all: number[] = [];
      for (let y = length; from[y]! > 0; y -= from[y]!) all.push(from[y]!);
      return { heights: all.sort((a, b) => b - a) };
    };
    return { worth: best[sheet.length]!, prices, strips, best: heights };
  };
}

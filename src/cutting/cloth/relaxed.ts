import { fitsIn, liesOf, type Job } from './job.ts';
import { entryOf, planKey, planOf, sheetPricerOf, type Plan } from './plans.ts';
import type { Row, Solver } from './solver.ts';

/*
 * The layout if plans could be followed a fraction of a time: a linear programme whose columns are plans, brought in as they pay
 * (column generation; P. C. Gilmore and R. E. Gomory, A linear programming approach to the cutting stock problem, Operations Research 9,
 * 1961, and Multistage cutting stock problems of two and more dimensions, Operations Research 13, 1965).
 *
 * The bound does not rest on the programme's doubles. Give every kind a worth in whole numbers, whatever they are. Then what is wanted is
 * worth P; what the maker has can be worth Q at most, by exact pricing; and what is bought is worth at most v for each mark of length, or
 * each precut piece. So at least (P − Q) / v is bought (A. A. Farley, A note on bounding a class of linear programming problems,
 * including cutting stock problems, Operations Research 38, 1990). The programme only proposes worths.
 */

/** Worths are whole multiples of 1/2²⁴ of a mark, or of a precut piece. */
export const SCALE = 2 ** 24;
/** Plans that one round brings in for one sheet. */
const NEW_PLANS = 8;
const ROUNDS = 400;
/** What a plan must gain to be brought in, in marks or precut pieces; smaller gains are the solver's own inexactness. */
const GAIN = 1e-6;

export interface Relaxed {
  readonly plans: readonly Plan[];
  /** No layout takes less: marks or precut pieces. */
  readonly bound: number;
  /** How often each plan is followed. */
  readonly uses: readonly number[];
  /** Whole worths of the kinds that gave the bound. */
  readonly worths: readonly number[];
}

/** @returns the rows of a job's programme: so many pieces of each kind at least, so many sheets of each that the maker has at most */
export const rowsOf = (job: Job, wanted: readonly number[]): readonly Row[] => [
  ...wanted.map((count) => ({ least: count, most: Infinity })),
  ...job.sheets.slice(0, -1).map(({ count }) => ({ least: -Infinity, most: count })),
];

/**
 * @param wanted of each kind
 * @param first plans by which all of it can be cut
 */
export function relaxed(job: Job, wanted: readonly number[], first: readonly Plan[], solver: Solver): Relaxed {
  const plans: Plan[] = [];
  const known = new Set<string>();
  const price = job.sheets.map((sheet) => sheetPricerOf(job, sheet));
  const linear = solver.linear(rowsOf(job, wanted));
  const bring = (more: readonly Plan[]): number => {
    const fresh = more.filter((plan) => {
      const key = planKey(plan);
      return !known.has(key) && known.add(key);
    });
    plans.push(...fresh);
    linear.grow(fresh.map((plan) => entryOf(job, plan)));
    return fresh.length;
  };
  bring([...first, ...plainPlans(job)]);
  const bought = job.sheets.length - 1;
  let result: Relaxed = { plans, bound: 0, uses: [], worths: [] };
  for (let round = 0; round < ROUNDS; round++) {
    const solved = linear.solve();
    if (solved === null) break;
    const worths = wanted.map((_, kind) => Math.max(0, Math.floor(solved.worths[kind]! * SCALE)));
    const priced = price.map((ask) => ask(worths));
    const more = priced.flatMap(({ worth, prices, strips }, sheet): readonly Plan[] => {
      if (job.sheets[sheet]!.length === Infinity) {
        return prices.steps
          .map((height) => ({ height, gain: prices.worth[height]! / SCALE - height }))
          .filter(({ gain }) => gain > GAIN)
          .sort((a, b) => b.gain * a.height - a.gain * b.height)
          .slice(0, NEW_PLANS)
          .map(({ height }) => planOf(job, sheet, [prices.strip(height)]));
      }
      const cost = sheet === bought ? 1 : Math.max(0, -solved.worths[wanted.length + sheet]!);
      return worth / SCALE - cost > GAIN ? [planOf(job, sheet, strips())] : [];
    });
    const dear = priced[bought]!;
    const steps = job.sheets[bought]!.length === Infinity ? dear.prices.steps : [];
    const rates = steps.length > 0 ? steps.map((height) => [dear.prices.worth[height]!, height] as const) : [[dear.worth, 1] as const];
    const bound = boundOf(
      wanted.reduce((sum, count, kind) => sum + BigInt(count) * BigInt(worths[kind]!), 0n),
      priced.slice(0, bought).reduce((sum, { worth }, sheet) => sum + BigInt(job.sheets[sheet]!.count) * BigInt(worth), 0n),
      rates,
    );
    if (bound > result.bound || result.worths.length === 0) result = { ...result, bound: Math.max(bound, result.bound), worths };
    result = { ...result, uses: solved.uses };
    if (bring(more) === 0) break;
  }
  linear.close();
  return result;
}

/** @returns ⌈(wanted − had) / v⌉, v the most that bought cloth is worth for what it costs: [worth, cost] of all there is */
function boundOf(wanted: bigint, had: bigint, rates: readonly (readonly [number, number])[]): number {
  const rest = wanted - had;
  if (rest <= 0n) return 0;
  let [worth, cost] = [0n, 1n];
  for (const [w, c] of rates) if (BigInt(w) * cost > worth * BigInt(c)) [worth, cost] = [BigInt(w), BigInt(c)];
  return worth === 0n ? 0 : Number((rest * cost + worth - 1n) / worth);
}

/** One plan for each kind by itself, each way round, on what is bought. */
function plainPlans(job: Job): readonly Plan[] {
  const at = job.sheets.length - 1;
  const sheet = job.sheets[at]!;
  return job.kinds.flatMap((kind, index) =>
    liesOf(kind, index)
      .filter((lie) => fitsIn(lie, sheet))
      .map((lie) => {
        const column = { width: lie.width, runs: [{ ...lie, count: 1 }], times: Math.floor(sheet.width / lie.width) };
        const times = sheet.length === Infinity ? 1 : Math.floor(sheet.length / lie.height);
        return planOf(job, at, [{ height: lie.height, columns: [column], times }]);
      }),
  );
}

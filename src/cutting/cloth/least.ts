import type { ClothLayout } from '../layout.ts';
import { roughBound } from './cloth.ts';
import { layerOf } from './greedy.ts';
import { jobOf, type CutSheet, type Job } from './job.ts';
import type { ClothOrder } from './order.ts';
import { leastCover } from './covering.ts';
import { fittedWorths, stripsWithin } from './enumerating.ts';
import { entryOf, followed, planKey, plansOf, type Plan } from './plans.ts';
import { quickLayout, takenBy } from './quick.ts';
import { relaxed, rowsOf, SCALE, type Relaxed } from './relaxed.ts';
import { searched } from './searching.ts';
import type { Solver } from './solver.ts';
import { writtenLayout } from './written.ts';

/** Whole layouts that are made by worths that learn. */
const LAYOUTS = { least: 40, near: 200, most: 120 };
/** The programme in whole numbers is solved where there are at most so many kinds; with more it finds nothing in good time. */
const FEW_KINDS = 10;
/** Branches of it that are looked into. */
const NODES = 100;
/** All strips that a shorter layout may need are looked at, as long as there are not more. */
const STRIPS = { steps: 1_500_000, plans: 4_000 };
/** Work on choosing among them exactly; beyond that the solver chooses, among so many at most. */
const COVER = 150_000_000;
const SOLVED = 500;
/** First those for an eighth of the gap, then a quarter of what is left, and so on. */
const PARTS = 8;
const TRIES = 10;

/**
 * @returns the least layout that is found, and the bound below which there is none; never more than the quick one, and the quick one
 * itself where nothing takes less
 */
export function leastCloth(order: ClothOrder, solver: Solver): ClothLayout {
  const job = jobOf(order);
  const quick = quickLayout(job);
  const wanted = job.kinds.map(({ count }, kind) => count - quick.left[kind]!);
  let best = { cloths: quick.cloths, takes: takenBy(job, quick.cloths) };
  let bound = roughBound(job, best.cloths);
  const keep = (cloths: readonly CutSheet[] | null): void => {
    if (cloths === null || !lays(job, cloths, wanted)) return;
    const takes = takenBy(job, cloths);
    if (takes < best.takes) best = { cloths, takes };
  };
  const done = (): boolean => bound >= best.takes;
  const result = (): ClothLayout => writtenLayout(job, best.cloths, bound);
  if (done()) return result();

  const loose = relaxed(job, wanted, plansOf(job, best.cloths), solver);
  bound = Math.max(bound, loose.bound);
  if (done()) return result();

  const tried = searched(job, layerOf(job), wanted, loose.worths, bound, LAYOUTS);
  keep(tried.cloths);
  if (done()) return result();

  if (job.kinds.length <= FEW_KINDS) {
    const plans = eachOnce([...plansOf(job, best.cloths), ...loose.plans, ...tried.plans]);
    const { uses } = solver.whole(rowsOf(job, wanted), plans.map((plan) => entryOf(job, plan)), NODES);
    if (uses !== null) keep(followed(job, plans, uses));
  }
  if (job.sheets.length === 1 && job.sheets[0]!.length === Infinity) bound = closed(job, wanted, loose, bound, () => best.takes, keep, solver);
  return result();
}

/**
 * Looks at every strip that a layout of a few marks more than the bound can need, then a few more again, and has the programme in whole
 * numbers choose among them. It ends with the least layout, or with a bound raised as far as there was time for.
 * @returns the bound: below it, there is none
 */
function closed(
  job: Job,
  wanted: readonly number[],
  { worths }: Relaxed,
  bound: number,
  takes: () => number,
  keep: (cloths: readonly CutSheet[]) => void,
  solver: Solver,
): number {
  const fitted = fittedWorths(job, worths);
  const base = wanted.reduce((sum, count, kind) => sum + BigInt(count) * BigInt(fitted[kind]!), 0n);
  let least = bound;
  let part = PARTS;
  for (let tries = 0; tries < TRIES && least < takes(); tries++) {
    const more = Math.floor((takes() - 1 - least) / part);
    const target = least + more;
    const plans = stripsWithin(job, wanted, fitted, Number(BigInt(target) * BigInt(SCALE) - base), STRIPS);
    if (plans === null) {
      if (more === 0) break;
      part *= 4;
      continue;
    }
    part = Math.max(1, part / 2);
    const { uses, ended } = chosen(job, wanted, plans, solver);
    const cloths = uses === null ? null : followed(job, plans, uses);
    if (cloths !== null) keep(cloths);
    if (!ended) break;
    const found = cloths === null ? Infinity : takenBy(job, cloths);
    if (found <= target) return found;
    least = target + 1;
  }
  return least;
}

/** How often each plan is followed at least cost, and whether that is certain; no uses where the plans cannot give it all. */
function chosen(job: Job, wanted: readonly number[], plans: readonly Plan[], solver: Solver): ReturnType<Solver['whole']> {
  if (plans.length === 0) return { uses: null, ended: true };
  const cover = leastCover(plans, wanted, COVER);
  if (cover === 'none') return { uses: null, ended: true };
  if (cover !== 'too much') return { uses: cover.times, ended: true };
  if (plans.length > SOLVED) return { uses: null, ended: false };
  return solver.whole(rowsOf(job, wanted), plans.map((plan) => entryOf(job, plan)), NODES);
}

function eachOnce(plans: readonly Plan[]): readonly Plan[] {
  return [...new Map(plans.map((plan) => [planKey(plan), plan])).values()];
}

/** Whether a layout holds all that is wanted, uses no more cloth than there is, and stays inside it: looked at afresh, in whole numbers. */
function lays(job: Job, cloths: readonly CutSheet[], wanted: readonly number[]): boolean {
  const left = [...wanted];
  const used = job.sheets.map(() => 0);
  for (const { sheet, strips, times } of cloths) {
    const { width, length } = job.sheets[sheet]!;
    used[sheet]! += times;
    if (strips.reduce((sum, strip) => sum + strip.height * strip.times, 0) > length) return false;
    for (const strip of strips) {
      if (strip.columns.reduce((sum, column) => sum + column.width * column.times, 0) > width) return false;
      for (const { runs, times: beside, width: across } of strip.columns) {
        if (runs.reduce((sum, run) => sum + run.height * run.count, 0) > strip.height) return false;
        for (const run of runs) {
          if (run.width > across) return false;
          left[run.kind]! -= run.count * beside * strip.times * times;
        }
      }
    }
  }
  return left.every((count) => count <= 0) && used.every((count, sheet) => count <= job.sheets[sheet]!.count);
}

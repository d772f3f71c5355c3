import type { ClothLayout } from '../layout.ts';
import { roughBound } from './cloth.ts';
import { layerOf } from './greedy.ts';
import { jobOf, type CutSheet, type Job } from './job.ts';
import type { ClothOrder } from './order.ts';
import { entryOf, followed, planKey, plansOf, type Plan } from './plans.ts';
import { quickLayout, takenBy } from './quick.ts';
import { relaxed, rowsOf } from './relaxed.ts';
import { searched } from './searching.ts';
import type { Solver } from './solver.ts';
import { writtenLayout } from './written.ts';

/** Whole layouts that are made by worths that learn. */
const LAYOUTS = 40;
/** The programme in whole numbers is solved where there are at most so many kinds; with more it finds nothing in good time. */
const FEW_KINDS = 10;
const NODES = 300;

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
  if (done() || job.kinds.length > FEW_KINDS) return result();

  const plans = eachOnce([...plansOf(job, best.cloths), ...loose.plans, ...tried.plans]);
  const found = solver.whole(rowsOf(job, wanted), plans.map((plan) => entryOf(job, plan)), NODES, null);
  if (found !== null) keep(followed(job, plans, found.uses));
  return result();
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

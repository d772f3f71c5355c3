import type { Layer } from './greedy.ts';
import { heightOf, piecesIn, type CutSheet, type Job } from './job.ts';
import { planKey, plansOf, type Plan } from './plans.ts';
import { takenBy } from './quick.ts';
import { SCALE } from './relaxed.ts';

/*
 * Whole layouts, one after another, by worths that learn: what was cut with much waste is worth more the next time, so it is cut earlier,
 * beside pieces that go well with it (sequential value correction; G. Belov and G. Scheithauer, Setup and open-stacks minimization in
 * one-dimensional stock cutting, INFORMS Journal on Computing 19, 2007). Effort is counted, so the same order gives the same layout.
 */

/** So many layouts at least, and more until one is within one part in `near` of the goal, so many at most. */
export interface SearchEffort {
  readonly least: number;
  readonly near: number;
  readonly most: number;
}

export interface Searched {
  /** null where none lays everything. */
  readonly cloths: readonly CutSheet[] | null;
  readonly takes: number;
  /** Every plan that came up, each once. */
  readonly plans: readonly Plan[];
}

/**
 * @param wanted of each kind
 * @param worths what the kinds are worth to begin with, in 1/SCALE of a mark or of a precut piece
 * @param goal nothing that takes less is looked for
 * @param effort how many layouts are made
 */
export function searched(
  job: Job,
  lay: Layer,
  wanted: readonly number[],
  worths: readonly number[],
  goal: number,
  effort: SearchEffort,
): Searched {
  const plans = new Map<string, Plan>();
  let best: { cloths: readonly CutSheet[] | null; takes: number } = { cloths: null, takes: Infinity };
  const floor = fairWorths(job).map((worth) => Math.floor(worth / 2));
  let now: readonly number[] = worths.map((worth, kind) => Math.max(worth, floor[kind]!));
  const enough = goal + Math.floor(goal / effort.near);
  for (let i = 0; i < effort.most && best.takes > (i < effort.least ? goal : enough); i++) {
    const cloths = lay(wanted, now);
    const laid = piecesIn(cloths.flatMap(({ strips, times }) => strips.map((strip) => ({ ...strip, times: strip.times * times }))));
    for (const plan of plansOf(job, cloths)) {
      const key = planKey(plan);
      if (!plans.has(key)) plans.set(key, plan);
    }
    if (wanted.every((count, kind) => (laid.get(kind) ?? 0) === count)) {
      const takes = takenBy(job, cloths);
      if (takes < best.takes) best = { cloths, takes };
    }
    now = corrected(job, cloths, now, wanted);
  }
  return { ...best, plans: [...plans.values()] };
}

/** What each kind is worth if nothing is wasted. */
function fairWorths(job: Job): readonly number[] {
  const { width, length } = job.sheets.at(-1)!;
  const whole = length === Infinity ? width : width * length;
  return job.kinds.map((kind) => Math.floor(((kind.width * kind.height) / whole) * SCALE));
}

/** What pieces cost in a layout draws their worths towards it, the more the more of them cost so. */
function corrected(job: Job, cloths: readonly CutSheet[], worths: readonly number[], wanted: readonly number[]): readonly number[] {
  const next = [...worths];
  const fair = fairWorths(job);
  const area = (pieces: ReadonlyMap<number, number>): number =>
    [...pieces].reduce((sum, [kind, count]) => sum + count * job.kinds[kind]!.width * job.kinds[kind]!.height, 0);
  for (const { sheet, strips, times } of cloths) {
    const { width, length } = job.sheets[sheet]!;
    // By the length each strip is paid for, else the whole piece of cloth.
    const paidFor = length === Infinity ? strips.map((strip) => [strip]) : [strips];
    for (const part of paidFor) {
      const pieces = piecesIn(part);
      const taken = length === Infinity ? heightOf(part) : length;
      const waste = (taken * width) / area(pieces);
      pieces.forEach((count, kind) => {
        const share = (count * times) / (2 * wanted[kind]!);
        next[kind] = Math.floor(next[kind]! * (1 - share) + fair[kind]! * waste * share);
      });
    }
  }
  return next;
}

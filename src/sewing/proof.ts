import type { Proof, Step } from './step.ts';
import { checkCloth } from './proof-cloth.ts';
import { compareWithDrawing } from './proof-compare.ts';
import { checkList } from './proof-list.ts';
import { perBlock } from './proof-placing.ts';
import { checkSet } from './proof-sets.ts';
import { sewSteps } from './proof-table.ts';
import type { Plan, SewnStep } from './proof-table.ts';

/**
 * Proves a pattern by virtual sewing. It takes what the maker is given, the cutting list and the steps, and shares no algorithm
 * with the stages that wrote them:
 *
 * 1. sews every step in exact arithmetic: each part comes from a line of the list or from an earlier step, every seam is straight,
 *    runs along the whole of an edge of both things and leaves a convex whole (a part-way seam: see `sewn`), and the result
 *    measures what the step states;
 * 2. counts cloth: every line is as large as its patches with their allowances need and no larger than ruler and trim explain,
 *    and the list cuts exactly the squares that all steps of all blocks use up;
 * 3. lays every piece where the steps bring it and compares with the drawing: no gap, no overlap, the right fabric throughout.
 *
 * @returns whether the pattern holds, the seams of one block (a part-way seam and its finish are one), and a sentence for each fault
 */
export function prove(plan: Plan): Proof {
  const faults: string[] = [];
  const tell = (fault: string): void => void faults.push(fault);
  let seams = 0;
  if ([plan.step, plan.ruler].some((length) => length.n <= 0) || [plan.seam, plan.trim].some((length) => length.n < 0)) {
    return {
      holds: false,
      seams,
      faults: ['The step, the ruler, the seam allowance and the trim must be lengths, so the pattern cannot be proved.'],
    };
  }
  try {
    const tables = sewSteps(plan, tell);
    for (const table of tables) {
      checkCloth(plan, table, tell);
      checkSet(plan, table, tell);
    }
    checkList(plan, tables, tell);
    compareWithDrawing(plan, tables, tell);
    seams = seamsOf(tables);
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    tell('The pattern holds a number that is not an exact fraction, so it cannot be proved.');
  }
  return { holds: faults.length === 0, seams, faults: [...new Set(faults)] };
}

/** @returns the seams of one block */
function seamsOf(tables: readonly SewnStep[]): number {
  const sewnIn = (step: Step): number => step.joins.filter((join) => join.sew !== 'finish').length;
  return perBlock(tables).reduce((sum, times, i) => sum + times * sewnIn(tables[i].step), 0);
}

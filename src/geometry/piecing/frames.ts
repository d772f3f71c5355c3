import { equalParts } from './clusters.ts';
import type { Field } from './field.ts';
import type { Plan } from './grid-search.ts';
import { ACROSS, AROUND, keeping } from './keep.ts';
import type { Pictures } from './pictures.ts';
import type { Weights } from './price.ts';
import { rectId } from './rect-id.ts';

/** The equal modules that a block may be made of, and what a plan that keeps to them is weighed with. */
export interface Frame {
  readonly kept: Uint8Array;
  readonly factor: number;
}

/** How many equal modules a side are tried. */
const MODULES = [2, 3, 4];

/** @returns the frames of equal modules that a field's cells allow */
export function framesOf(field: Field, pictures: Pictures, weights: Weights): readonly Frame[] {
  return MODULES.flatMap((a) => {
    const modules = equalParts(field, a);
    if (modules.length === 0) return [];
    const equal = a <= 3 && new Set(modules.map(({ i0, j0, i1, j1 }) => pictures.upright(i0, j0, i1, j1))).size === 1;
    const factor = equal ? weights.equalModules : a === 3 ? weights.nineModules : weights.modules;
    return [{ kept: keeping(field, modules), factor }];
  });
}

const isKept = (lies: number): boolean => lies !== ACROSS && lies !== AROUND;

/** @returns the least factor of the frames that no leaf of a plan crosses; 1 without any */
export function regularity(plan: Plan, field: Field, frames: readonly Frame[]): number {
  const rows = field.ys.length - 1;
  let least = 1;
  for (const { kept, factor } of frames) {
    if (factor < least && plan.leaves.every(({ i0, j0, i1, j1 }) => isKept(kept[rectId(rows, i0, j0, i1, j1)]!))) least = factor;
  }
  return least;
}

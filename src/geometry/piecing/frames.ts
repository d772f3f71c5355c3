import type { Field } from './field.ts';
import { holds, type Modules, type Plan } from './grid-search.ts';
import type { Pictures } from './pictures.ts';
import type { Weights } from './price.ts';

/** Lines that a block of equal modules is sewn along, and what a plan that keeps to them is weighed with. */
export interface Frame {
  readonly modules: Modules;
  readonly factor: number;
}

/** How many equal modules a side are tried as the frame of a block. */
const MODULES = [2, 3, 4];

/** @returns the frames of equal modules that a field's cells allow */
export function framesOf(field: Field, pictures: Pictures, weights: Weights): readonly Frame[] {
  const [width, height] = [field.xs.at(-1)!, field.ys.at(-1)!];
  return MODULES.flatMap((a) => {
    const ends = (edges: readonly number[], far: number): boolean[] | null => {
      const found = edges.map((e) => (e * a) % far === 0);
      return found.filter(Boolean).length === a + 1 ? found : null;
    };
    const [upright, level] = [ends(field.xs, width), ends(field.ys, height)];
    if (!upright || !level) return [];
    const modules: Modules = { upright, level };
    const equal = a <= 3 && equalModules(modules, pictures);
    return [{ modules, factor: equal ? weights.equalModules : a === 3 ? weights.nineModules : weights.modules }];
  });
}

/** @returns whether all modules of a frame show the same seams the same way up */
function equalModules({ upright, level }: Modules, pictures: Pictures): boolean {
  const ends = (at: readonly boolean[]): readonly number[] => at.flatMap((end, i) => (end ? [i] : []));
  const [columns, rows] = [ends(upright), ends(level)];
  const shown = new Set<number>();
  rows.slice(1).forEach((j1, j) => columns.slice(1).forEach((i1, i) => shown.add(pictures.upright(columns[i]!, rows[j]!, i1, j1))));
  return shown.size === 1;
}

/** @returns the least factor of the frames whose lines no leaf of a plan crosses; 1 without any */
export function regularity(plan: Plan, frames: readonly Frame[]): number {
  const keepsTo = ({ upright, level }: Modules): boolean => plan.leaves.every((c) => !holds(upright, c.i0, c.i1) && !holds(level, c.j0, c.j1));
  return Math.min(1, ...frames.filter(({ modules }) => keepsTo(modules)).map(({ factor }) => factor));
}

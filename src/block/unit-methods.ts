import { good, type Result } from '../measure/problem.ts';
import type { Block, LatticePoint, UnitMethod } from './block.ts';
import { boxName } from './checks.ts';
import { checkUnitMethod } from './file-checks.ts';
import type { Method } from './choices.ts';
import { onLattice } from './lattice.ts';
import { MAX_UNIT_METHODS } from './limits.ts';
import { refused, tooManyUnitMethods } from './problems.ts';

/** The rectangle that a unit is sewn in, between two opposite corners. */
export type UnitBox = Pick<UnitMethod, 'from' | 'to'>;

/**
 * Gives the units sewn in some rectangles a method of their own, in place of what each had; null takes it away again.
 * @param boxes each rectangle once
 * @param denominator steps to a grid unit in which their corners are given
 */
export function chooseUnitMethods(block: Block, boxes: readonly UnitBox[], method: Method | null, denominator: number): Result<Block> {
  const fine = onLattice(block, denominator);
  if (!fine.ok) return fine;
  const times = fine.value.denominator / denominator;
  const placed = ([x, y]: LatticePoint): LatticePoint => [x * times, y * times];
  const set = boxes.map(({ from, to }): UnitBox => ({ from: placed(from), to: placed(to) }));
  const names = new Set(set.map(boxName));
  const { unitMethods: before = [], ...rest } = fine.value;
  const others = before.filter((unit) => !names.has(boxName(unit)));
  const unitMethods = method === null ? others : [...others, ...set.map((box): UnitMethod => ({ ...box, method }))];
  for (const unit of unitMethods.slice(others.length)) {
    const fault = checkUnitMethod('The unit', unit, fine.value);
    if (fault) return refused(fault);
  }
  if (unitMethods.length > MAX_UNIT_METHODS) return refused(tooManyUnitMethods(unitMethods.length));
  return good({ ...rest, ...(unitMethods.length > 0 && { unitMethods }) });
}

import { good, type Result } from '../measure/problem.ts';
import type { Block, LatticePoint, PressedSeam } from './block.ts';
import { checkPressedSeam, seamName } from './file-checks.ts';
import { onLattice } from './lattice.ts';
import { MAX_PRESSED_SEAMS } from './limits.ts';
import { refused, tooManyPressedSeams } from './problems.ts';

/** A seam by its ends, whichever comes first. */
export type SeamEnds = Pick<PressedSeam, 'from' | 'to'>;

/**
 * Has a seam pressed as the maker wants, in place of what was wanted before, and the same seam of all equal units with it; null leaves it
 * to the plan again. Of wishes that contradict each other, since their units are equal, the last holds.
 * @param seams each seam once, by points on its line; it is known by what lies in the middle between them
 * @param denominator steps to a grid unit in which these points are given
 */
export function pressSeams(block: Block, seams: readonly SeamEnds[], lies: PressedSeam['lies'] | null, denominator: number): Result<Block> {
  const fine = onLattice(block, denominator);
  if (!fine.ok) return fine;
  const times = fine.value.denominator / denominator;
  const placed = ([x, y]: LatticePoint): LatticePoint => [x * times, y * times];
  const set = seams.map(({ from, to }): SeamEnds => ({ from: placed(from), to: placed(to) }));
  const names = new Set(set.map(seamName));
  const { pressedSeams: before = [], ...rest } = fine.value;
  const others = before.filter((seam) => !names.has(seamName(seam)));
  const pressedSeams = lies === null ? others : [...others, ...set.map((seam): PressedSeam => ({ ...seam, lies }))];
  for (const seam of pressedSeams.slice(others.length)) {
    const fault = checkPressedSeam('The seam', seam, fine.value);
    if (fault) return refused(fault);
  }
  if (pressedSeams.length > MAX_PRESSED_SEAMS) return refused(tooManyPressedSeams(pressedSeams.length));
  return good({ ...rest, ...(pressedSeams.length > 0 && { pressedSeams }) });
}

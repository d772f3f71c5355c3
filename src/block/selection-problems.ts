import type { Problem } from '../measure/problem.ts';

/*
 * Every sentence about patches that are taken in hand.
 */

export const nothingSelected = (): Problem => ({
  code: 'nothing-selected',
  sentence: 'No patch is selected; click one, or drag a frame round some.',
});

export const tooFineToLift = (number: number): Problem => ({
  code: 'area-too-fine',
  sentence: `Patch ${number} is covered along points finer than can be held exactly, so it cannot be lifted; paint it anew there.`,
});

export const cutTooFine = (): Problem => ({
  code: 'area-too-fine',
  sentence: 'The edge of the block would cut the patches at points finer than can be held exactly; keep them on the block.',
});

export const offTheBlock = (): Problem => ({
  code: 'off-the-grid',
  sentence: 'There the patches would leave the block altogether; keep some of them on it, or press Delete to take them up.',
});

export const laidTooFine = (): Problem => ({
  code: 'too-fine',
  sentence: 'Laid there the patches would have corners finer than can be held exactly; lay them on a line of the grid.',
});

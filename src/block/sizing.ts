import { produce } from 'immer';
import type { UnitKind } from '../geometry/piecing/assembly.ts';
import { good, type Result } from '../measure/problem.ts';
import type { Block } from './block.ts';
import type { Choices, Method } from './choices.ts';
import { checkChoices, checkSide, checkText } from './checks.ts';
import { toDrawing } from './drawing.ts';
import { refused } from './problems.ts';

/**
 * Gives the block another finished size; the drawing stretches with it.
 * In another unit the chosen lengths (seam, ruler, trim, width) fall back to that unit's usual values.
 */
export function resize(block: Block, finished: Block['finished']): Result<Block> {
  const { width, height, unit } = finished;
  const fault = checkSide('width', width, unit) ?? checkSide('height', height, unit);
  if (fault) return refused(fault);
  return drawable(
    produce(block, (draft) => {
      if (unit !== draft.finished.unit) for (const name of LENGTHS) delete draft.choices?.[name];
      draft.finished = finished;
    }),
  );
}

/** The chosen lengths. */
const LENGTHS = ['seam', 'ruler', 'trim', 'width'] as const satisfies readonly (keyof Choices)[];

/** @returns the block under another name */
export function rename(block: Block, name: string): Result<Block> {
  const fault = checkText("The block's name", name);
  return fault ? refused(fault) : good({ ...block, name });
}

/** @returns the block with other choices of how it is cut and sewn; an empty choice takes the trade's usual value */
export function choose(block: Block, choices: Choices): Result<Block> {
  const fault = checkChoices(choices, block.finished.unit);
  return fault ? refused(fault) : good({ ...block, choices });
}

/** @returns the block with another method for all units of a kind */
export const chooseMethod = (block: Block, kind: UnitKind, method: Method): Block =>
  produce(block, (draft) => {
    ((draft.choices ??= {}).methods ??= {})[kind] = method;
  });

/** @returns the block if its lattice in true proportion can be held exactly */
function drawable(block: Block): Result<Block> {
  const drawn = toDrawing(block);
  return drawn.ok ? good(block) : drawn;
}

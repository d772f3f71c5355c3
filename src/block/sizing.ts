import { produce } from 'immer';
import type { UnitKind } from '../geometry/piecing/assembly.ts';
import { good, type Result } from '../measure/problem.ts';
import type { Block } from './block.ts';
import type { Choices, Method } from './choices.ts';
import { checkChoices, checkGrid, checkPoint, checkSide, checkText } from './checks.ts';
import { toDrawing } from './drawing.ts';
import { coarsest, withPoints } from './lattice.ts';
import { withoutPins } from './pins.ts';
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

/** A block on another grid, and what did not fit there. */
export interface Regridded {
  readonly block: Block;
  /** Indices, in the block before, of the patches, drawn seams and pins that are left out. */
  readonly lost: { readonly patches: readonly number[]; readonly seams: readonly number[]; readonly pins: readonly number[] };
}

/**
 * Gives the block another number of columns and rows. What is drawn keeps its place in grid units;
 * the finished size stays, so the cells change theirs.
 */
export function regrid(block: Block, grid: Block['grid']): Result<Regridded> {
  const fault = checkGrid(grid);
  if (fault) return refused(fault);
  const ground = { grid, denominator: block.denominator };
  const fits = (points: Block['patches'][number]['points']): boolean => points.every((point) => checkPoint('', point, ground) === null);
  const { pins = [] } = block;
  const lost = {
    patches: block.patches.flatMap((patch, i) => (fits(patch.points) ? [] : [i])),
    seams: block.seams.flatMap((seam, i) => (fits(seam) ? [] : [i])),
    pins: pins.flatMap(({ from, to }, i) => (fits([from, to]) ? [] : [i])),
  };
  const kept = {
    ...block,
    grid,
    patches: block.patches.filter((_, i) => !lost.patches.includes(i)),
    seams: block.seams.filter((_, i) => !lost.seams.includes(i)),
  };
  const next = drawable(withoutPins(kept, lost.pins));
  return next.ok ? good({ block: next.value, lost }) : next;
}

/** @returns the same picture on a grid with each cell divided into `times` by `times`, times ≥ 1 and whole */
export function subdivide(block: Block, times: number): Result<Block> {
  const grid = { columns: block.grid.columns * times, rows: block.grid.rows * times };
  const fault = checkGrid(grid);
  return fault ? refused(fault) : good(coarsest({ ...block, grid, ...withPoints(block, ([x, y]) => [x * times, y * times]) }));
}

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

import type { Unworded } from './wording.ts';

/** Darkness of a fabric: larger is darker. Only its order means anything. */
export type Darkness = (fabric: string) => number;

/**
 * The trade's usual direction for a step's seams (common practice: toward the darker fabric; away from pieced
 * neighbours; rows in turn so that seams nest).
 * @param rowsOfBlock whether the step makes a row of the block, and which, counted from 0
 */
export function pressing(step: Unworded, darkness: Darkness, fabricName: (id: string) => string, row: number | null): string {
  const pieces = step.parts.filter((part) => 'cut' in part.from);
  const fabrics = [...new Set(pieces.map((part) => ('cut' in part.from ? part.from.fabric : '')))];
  const darkest = fabrics.reduce<string | null>((best, f) => (best === null || darkness(f) > darkness(best) ? f : best), null);
  if (step.joins.length === 0) return 'Press flat.';
  if (step.kind === 'partial-seam ring') return 'Press every seam away from the centre.';
  if (step.kind === 'quarter-square triangle') return 'Press the halves toward the darker fabric and the long seam open.';
  if (step.kind === 'flying geese') return 'Press toward the small triangles.';
  if (step.kind === 'corner-triangle unit' || step.kind === 'square in a square') return 'Press toward the corners.';
  if (row !== null) return `Press the seams to the ${row % 2 === 0 ? 'left' : 'right'}, so that they nest with the next row.`;
  if (step.kind === 'joined unit' || step.kind === 'block') {
    if (pieces.length === 0) return 'Press the seams one way.';
    if (pieces.length < step.parts.length) return 'Press toward the plain pieces.';
  }
  if (fabrics.length > 1 && darkest !== null) return `Press toward ${fabricName(darkest)}.`;
  return 'Press the seams one way.';
}

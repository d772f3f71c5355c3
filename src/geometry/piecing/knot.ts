import type { Drawing } from '../patchwork/drawing.ts';
import { sewing } from './ways.ts';

/**
 * Finds the knot in a drawing that cannot be sewn: whole patches that lock each other, as few as possible.
 * Letting any one of them be divided frees the knot.
 * @param drawing one that has no standard way
 * @returns indices of the drawing's patches
 */
export function knotOf(drawing: Drawing): readonly number[] {
  let kept = drawing.patches.flatMap((patch, index) => (patch.whole ? [index] : []));
  for (const candidate of kept) {
    const without = kept.filter((index) => index !== candidate);
    if (sewing(withWholes(drawing, without)).way('standard units') === null) kept = without;
  }
  return kept;
}

/** @returns the drawing with only these patches marked whole */
function withWholes(drawing: Drawing, wholes: readonly number[]): Drawing {
  return { ...drawing, patches: drawing.patches.map(({ fabric, points }, i) => ({ fabric, points, whole: wholes.includes(i) })) };
}

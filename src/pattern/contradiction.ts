import { boundariesOf } from '../geometry/patchwork/boundaries.ts';
import type { Drawing } from '../geometry/patchwork/drawing.ts';
import { patchworkOf } from '../geometry/patchwork/patchwork.ts';
import { brokenWholes } from '../geometry/patchwork/wholes.ts';

/** @returns whether a patch is marked whole that can never be one piece, whatever the seams */
export function contradictsItself(drawing: Drawing): boolean {
  if (!drawing.patches.some((patch) => patch.whole)) return false;
  const patchwork = patchworkOf(drawing);
  return brokenWholes(patchwork, boundariesOf(patchwork)).length > 0;
}

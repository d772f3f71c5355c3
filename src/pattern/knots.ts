import type { Block } from '../block/block.ts';
import { boundariesOf } from '../geometry/patchwork/boundaries.ts';
import type { Drawing } from '../geometry/patchwork/drawing.ts';
import { patchworkOf } from '../geometry/patchwork/patchwork.ts';
import { brokenWholes } from '../geometry/patchwork/wholes.ts';
import type { Pinned, Refusal } from '../geometry/piecing/pins.ts';
import type { Problem } from '../measure/problem.ts';
import type { RefusedPin } from './pattern.ts';
import { listed } from './places.ts';

/** @returns "patch 3 (Rust)", counted from 1 as in the file */
function named(block: Block, patch: number): string {
  const { fabric } = block.patches[patch]!;
  return `patch ${patch + 1} (${block.fabrics.find((f) => f.id === fabric)?.name ?? fabric})`;
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** @returns what is wrong where a patch marked whole can never be one piece, whatever the seams; null where nothing is */
export function brokenWholeProblem(block: Block, drawing: Drawing): Problem | null {
  if (!drawing.patches.some((patch) => patch.whole)) return null;
  const patchwork = patchworkOf(drawing);
  const [first] = brokenWholes(patchwork, boundariesOf(patchwork));
  if (!first) return null;
  const which = capital(named(block, first.patch));
  const sentence =
    first.why === 'seam'
      ? `${which} must stay whole, but a drawn seam runs through it; take that seam away or let the patch be divided.`
      : `${which} must stay whole, but what shows of it has an inner corner or lies in several parts, so that no straight seams can leave it in one piece; let it be divided, or draw it as several patches.`;
  return { code: 'broken-whole', sentence, patches: [first.patch] };
}

/** @returns the sentence for whole patches that lock each other, and what frees them */
export function knotProblem(block: Block, knot: readonly number[]): Problem {
  const names = listed(knot.map((patch) => named(block, patch)));
  const sentence =
    knot.length === 1
      ? `${capital(names)} must stay whole, and every straight seam through ${block.name} would divide it; let it be divided, or sew it in by hand with set-in seams.`
      : `${capital(names)} must all stay whole and lock each other, so that no straight seam passes between them; ` +
        'let any one of them be divided, or sew one in by hand with set-in seams.';
  return { code: 'knot', sentence, patches: knot };
}

const REFUSED: Readonly<Record<Refusal, string>> = {
  'no place': 'it lies on no seam right across the block and on no rectangle of it; take it away and set it anew.',
  crosses: 'it cuts into the unit of an earlier pin; take one of the two away.',
  locks: 'a whole patch would be divided, or no straight seams are left for the rest; take it away, or let that patch be divided.',
};

/** @returns a pin that is not honoured, with the reason in words */
export const refusedPin = ({ pin, why }: Pinned['refused'][number]): RefusedPin => ({ pin, why, says: REFUSED[why] });

/** @returns the whole sentence about a pin that is not honoured, where the pin is not beside it */
export const refusedPinText = ({ pin, says }: RefusedPin): string => `Pin ${pin + 1} is not honoured: ${says}`;

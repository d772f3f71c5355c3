import { good, type Result } from '../measure/problem.ts';
import type { Block } from './block.ts';
import { lay, type Laid } from './laying.ts';
import { fitted, mirrored, moved, turned, type Lifted, type Shift } from './lifted.ts';
import { lift, takeUp, type Selection } from './selecting.ts';
import type { Exchange } from './turning.ts';

/**
 * Patches in the hand, and what lies on the table without them. As long as the same patches are moved about, what they only pass over
 * is not harmed: each time they are laid, they are laid on this table.
 */
export interface Arrangement {
  readonly under: Block;
  /** Where the patches are, perhaps beyond the block's edge. */
  readonly lifted: Lifted;
  /** Where they are to be laid: turned at the edge, they are moved onto the block. */
  readonly place: Lifted;
  /** The block they were taken from, and which they are there; absent where they came from elsewhere. */
  readonly from?: { readonly block: Block; readonly selection: Selection; readonly lifted: Lifted };
}

/** @returns patches of a block in the hand */
export function taken(block: Block, selection: Selection): Result<Arrangement> {
  const found = lift(block, selection);
  if (!found.ok) return found;
  const lifted = found.value;
  return good({ under: takeUp(block, selection), lifted, place: lifted, from: { block, selection, lifted } });
}

/** @returns patches from elsewhere in the hand over a block, moved onto it as far as they fit there */
export function brought(block: Block, lifted: Lifted): Arrangement {
  const place = fitted(lifted, block.grid);
  return { under: block, lifted: place, place };
}

/** @returns the patches moved by a distance */
export function shifted(arrangement: Arrangement, shift: Shift): Arrangement {
  const place = moved(arrangement.place, shift);
  return { ...arrangement, lifted: place, place };
}

/** @returns the patches turned a quarter turn; near the block's edge moved onto it, as far as they fit */
export function rotated(arrangement: Arrangement, way: 'right' | 'left'): Arrangement {
  const lifted = turned(arrangement.lifted, arrangement.under.grid, way);
  return { ...arrangement, lifted, place: fitted(lifted, arrangement.under.grid) };
}

/** @returns the patches as a mirror shows them, in the box they take */
export function flipped(arrangement: Arrangement, exchange: Exchange): Arrangement {
  const place = mirrored(arrangement.place, exchange);
  return { ...arrangement, lifted: place, place };
}

/** @returns the table with the patches laid on it; the very block they were taken from where they lie as they did */
export function settled({ under, place, from }: Arrangement): Result<Laid> {
  if (from && sameOutlines(place, from.lifted)) {
    return good({ block: from.block, patches: from.selection.map((i) => from.block.patches[i]!), cut: false });
  }
  return lay(under, place);
}

const sameOutlines = (a: Lifted, b: Lifted): boolean =>
  a.denominator === b.denominator && a.patches.every(({ points }, i) => String(points) === String(b.patches[i]!.points));

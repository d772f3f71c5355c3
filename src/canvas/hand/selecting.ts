import type { PhotoPlace } from '../../block/block.ts';
import type { Shift } from '../../block/lifted.ts';
import { patchAt } from '../../block/patches.ts';
import type { Exchange } from '../../block/turning.ts';
import { keyShift, snapShift } from '../carrying.ts';
import { pointNear } from '../cell-fabrics.ts';
import type { SelectionInk } from '../draw-selection.ts';
import type { GridPoint } from '../gesture.ts';
import { AT_ONCE, type Grip, type Use } from './use.ts';

/** What is done with patches that are chosen, or to choose them. `adding`: beside those that are chosen already. */
export type Handling =
  | { readonly do: 'take'; readonly at: GridPoint; readonly adding: boolean }
  | { readonly do: 'frame'; readonly from: GridPoint; readonly to: GridPoint; readonly adding: boolean }
  | { readonly do: 'all' | 'none' | 'copy' | 'cut' | 'twin' | 'delete' }
  | { readonly do: 'all of' | 'only'; readonly fabric: string }
  | { readonly do: 'move'; readonly by: Shift }
  | { readonly do: 'turn'; readonly way: 'right' | 'left' }
  | { readonly do: 'mirror'; readonly exchange: Exchange }
  | { readonly do: 'recolour'; readonly fabric: string }
  /** Which place of its photo lies in the middle of each; null for as chance has it. */
  | { readonly do: 'photo'; readonly at: PhotoPlace | null }
  | { readonly do: 'paste'; readonly text?: string };

/** A pointer that moves less than this while it is down, in pixels, clicks. */
const STILL = 5;

/**
 * Choose: a click takes the patch there, a frame those inside it, each beside the others with Shift; patches that are chosen are dragged.
 * By keys, Space takes or leaves the patch at the cursor; Enter changes whether the arrow keys move the cursor or the patches.
 */
export function selecting({ bench, cells, at, aim, cell, by, shifted, deeds }: Grip): Use {
  let from: GridPoint | null = null;
  let to: GridPoint | null = null;
  let carrying = false;
  let handsOn = false;

  const patchUnder = (place: GridPoint): number => patchAt(bench().block, pointNear(place));
  const some = (): boolean => bench().chosen.indices.size > 0;
  const holds = (): boolean => handsOn && some();
  const way = (): GridPoint => [to![0] - from![0], to![1] - from![1]];
  const carried = (): Shift | null => {
    const { box } = bench().chosen;
    return from && to && carrying && box ? snapShift(cells(), box, way()) : null;
  };
  const end = (): boolean => {
    const begun = from !== null;
    [from, to, carrying] = [null, null, false];
    return begun;
  };
  const ink = (): SelectionInk => {
    const { block, chosen } = bench();
    const shift = carried();
    const colors = new Map(block.fabrics.map(({ id, color }) => [id, color]));
    const choosing = by() === 'keys' ? !holds() : by() !== null && from === null;
    const under = choosing ? patchUnder(aim()) : -1;
    return {
      patches: chosen.patches,
      carried: shift && [shift.dx / shift.denominator, shift.dy / shift.denominator],
      near: under < 0 ? null : chosen.seen(under),
      frame: from && to && !carrying ? [from, to] : null,
      color: (fabric) => colors.get(fabric) ?? '#ffffff',
    };
  };

  return {
    ...AT_ONCE,
    reaches: true,
    marks: () => ({ selection: ink(), cursor: by() === 'keys' && !holds() ? cell() : null }),
    busy: () => from !== null,
    press: () => {
      from = at();
      to = null;
      carrying = !shifted() && bench().chosen.indices.has(patchUnder(from));
    },
    draw: (place) => {
      if (!from) return;
      const { view } = bench();
      const [dx, dy] = [((place[0] - from[0]) * view.width) / view.columns, ((place[1] - from[1]) * view.height) / view.rows];
      if (to || Math.hypot(dx, dy) >= STILL) to = place;
    },
    lift: () => {
      if (!from) return;
      const shift = carried();
      handsOn = true;
      if (!to) deeds.handle({ do: 'take', at: from, adding: shifted() });
      else if (!carrying) deeds.handle({ do: 'frame', from, to, adding: shifted() });
      else if (shift && (shift.dx !== 0 || shift.dy !== 0)) deeds.handle({ do: 'move', by: shift });
      end();
    },
    use: () => {
      handsOn = false;
      deeds.handle({ do: 'take', at: aim(), adding: true });
    },
    close: () => {
      if (!some()) return deeds.say('Nothing is chosen yet; press Space on a patch.');
      handsOn = !handsOn;
      deeds.say(handsOn ? 'The arrow keys move the patches, with Shift by half a cell; T turns them.' : 'The arrow keys move the cursor.');
    },
    back: () => {
      if (some()) deeds.handle({ do: 'delete' });
      else deeds.say('Nothing is chosen.');
      return true;
    },
    walk: (dx, dy, half) => {
      const { box } = bench().chosen;
      if (!holds() || !box) return null;
      const shift = keyShift(cells(), box, dx, dy, half);
      if (shift.dx === 0 && shift.dy === 0) deeds.say('They lie at the edge of the block.');
      else deeds.handle({ do: 'move', by: shift });
      return 'here';
    },
    turn: (quarters) => {
      if (!holds()) return false;
      deeds.handle({ do: 'turn', way: quarters === 1 ? 'right' : 'left' });
      return true;
    },
    drop: end,
    leave: () => {
      if (some()) deeds.handle({ do: 'none' });
    },
  };
}

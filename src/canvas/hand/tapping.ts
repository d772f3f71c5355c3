import type { Stroke } from '../../block/painting.ts';
import { patchAt } from '../../block/patches.ts';
import { fabricAt, pointNear } from '../cell-fabrics.ts';
import { lineAlong, lineNear, outlineOf } from '../gesture.ts';
import { AT_ONCE, type Grip, type Use } from './use.ts';

/** Fill, pick up, keep whole, sewn last: what they do, they do at once where they point. */
export function tapping({ bench, cells, at, aim, cell, turn, fabric, deeds, by }: Grip): Use {
  const line = (): Stroke | null => (by() === 'keys' ? lineAlong(cells(), cell(), turn()) : lineNear(cells(), at()));

  const tap = (): void => {
    const { tool, block } = bench();
    if (tool === 'pick') return deeds.takeUpFabric(fabricAt(block, at()));
    if (tool === 'fill') return deeds.fill(at(), fabric());
    if (tool === 'whole') return deeds.keepWhole(aim());
    const here = line();
    if (here) deeds.pin('sewn last', here);
    else deeds.say('The edge of the block is no seam; point at a grid line inside it.');
  };

  return {
    ...AT_ONCE,
    marks: () => {
      const { tool, block } = bench();
      if (by() === null) return {};
      const cursor = by() === 'keys' || tool === 'pick' || tool === 'fill' ? cell() : null;
      if (tool === 'last') {
        const here = line();
        return { basting: here && [outlineOf(here)], cursor };
      }
      const patch = tool === 'whole' ? block.patches[patchAt(block, pointNear(aim()))] : undefined;
      return { basting: patch ? [outlineOf({ points: patch.points, denominator: block.denominator })] : null, cursor };
    },
    press: tap,
    use: tap,
    close: tap,
  };
}

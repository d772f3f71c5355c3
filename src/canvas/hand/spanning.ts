import { outlineOf, rectangleBetween } from '../gesture.ts';
import type { Stroke } from '../../block/painting.ts';
import type { Cell } from '../stride.ts';
import { AT_ONCE, type Grip, type Use } from './use.ts';

/** Rectangle, one unit: cells from corner to corner. */
export function spanning({ bench, cells, cell, fabric, deeds, by }: Grip): Use {
  let from: Cell | null = null;

  const span = (): Stroke => rectangleBetween(cells(), from ?? cell(), cell());
  const isUnit = (): boolean => bench().tool === 'unit';
  const end = (): void => {
    const stroke = span();
    from = null;
    if (isUnit()) deeds.pin('one unit', { ...stroke, points: [stroke.points[0]!, stroke.points[2]!] });
    else deeds.lay([stroke], fabric());
  };
  const use = (): void => {
    if (from) return end();
    from = cell();
    deeds.say(`First corner of the ${isUnit() ? 'unit' : 'rectangle'}; go to the other one and press Space.`);
  };

  return {
    ...AT_ONCE,
    marks: () => {
      if (by() === null) return {};
      const cursor = by() === 'keys' ? cell() : null;
      const outlines = [outlineOf(span())];
      if (isUnit()) return { basting: outlines, cursor };
      const color = bench().block.fabrics.find(({ id }) => id === fabric())?.color ?? '#ffffff';
      return { ghost: { outlines, color }, cursor };
    },
    busy: () => from !== null,
    press: () => {
      from = cell();
    },
    lift: () => {
      if (from && by() === 'pointer') end();
    },
    use,
    close: use,
    drop: () => {
      const begun = from !== null;
      from = null;
      return begun;
    },
  };
}

import { outlineOf, strokeBetween } from '../gesture.ts';
import type { Stroke } from '../../block/painting.ts';
import type { Cell } from '../stride.ts';
import type { Tool } from '../tool.ts';
import { AT_ONCE, type Grip, type Use } from './use.ts';

/** What is spanned, in words, where it is no rectangle. */
const NAMES: Readonly<Partial<Record<Tool, string>>> = { unit: 'unit', 'half rectangle': 'half-rectangle', peak: 'peak' };

/** Rectangle, half-rectangle, peak, one unit: over cells from corner to corner. */
export function spanning({ bench, cells, cell, turn, fabric, deeds, by }: Grip): Use {
  let from: Cell | null = null;

  const span = (): Stroke => strokeBetween(cells(), bench().tool, from ?? cell(), cell(), turn());
  const isUnit = (): boolean => bench().tool === 'unit';
  const end = (): void => {
    const stroke = span();
    from = null;
    if (isUnit()) deeds.pin('one unit', [stroke]);
    else deeds.lay([stroke], fabric());
  };
  const use = (): void => {
    if (from) return end();
    from = cell();
    deeds.say(`First corner of the ${NAMES[bench().tool] ?? 'rectangle'}; go to the other one and press Space.`);
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

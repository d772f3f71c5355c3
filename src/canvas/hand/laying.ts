import type { Stroke } from '../../block/painting.ts';
import { beginSweep, extendSweep, outlineOf, strokeInCell, type Sweep } from '../gesture.ts';
import { AT_ONCE, type Grip, type Use } from './use.ts';

/** Square, half-square, quarter-square, ground: a patch in every cell a stroke passes. */
export function laying({ bench, cells, at, cell, turn, fabric, deeds, by }: Grip): Use {
  let sweep: Sweep | null = null;

  const here = (): Stroke => strokeInCell(cells(), bench().tool, cell(), turn());
  const grow = (added: readonly Stroke[]): void => {
    deeds.sweep(added, fabric());
    deeds.foresee(added, fabric());
  };
  const use = (): void => deeds.lay([here()], fabric());

  return {
    ...AT_ONCE,
    marks: () => {
      if (by() === null || sweep) return {};
      const color = bench().block.fabrics.find(({ id }) => id === fabric())?.color ?? '#ffffff';
      return { ghost: { outlines: [outlineOf(here())], color }, cursor: by() === 'keys' ? cell() : null };
    },
    busy: () => sweep !== null,
    press: () => {
      sweep = beginSweep(cells(), bench().tool, turn(), at());
      grow(sweep.strokes);
    },
    draw: (to) => {
      if (!sweep) return;
      const grown = extendSweep(cells(), sweep, to);
      sweep = grown.sweep;
      if (grown.added.length > 0) grow(grown.added);
    },
    lift: () => {
      if (!sweep) return;
      const { strokes } = sweep;
      sweep = null;
      deeds.lay(strokes, fabric());
      deeds.sweep(null, fabric());
    },
    use,
    close: use,
    drop: () => {
      if (!sweep) return false;
      sweep = null;
      deeds.sweep(null, fabric());
      deeds.foresee(null, fabric());
      return true;
    },
  };
}

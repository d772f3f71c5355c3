import type { Block } from '../../block/block.ts';
import { box } from '../../geometry/convex.ts';
import { formatLength } from '../../measure/lengths.ts';
import { rational } from '../../measure/rational.ts';
import type { Pattern } from '../pattern.ts';

/**
 * Names units by what they are, for places that outlive changes of the drawing: their letters change with every unit that is added, their
 * sizes with the block's, their fabrics with her taste.
 * @returns for every unit by its letter its kind, its size in grid units and a number among equals: "half-square triangle 1x1 2"
 */
export function unitNames(
  { units, lattice }: Pick<Pattern, 'units' | 'lattice'>,
  { grid }: Pick<Block, 'grid'>,
): ReadonlyMap<string, string> {
  const counts = new Map<string, number>();
  return new Map(
    units.map(({ unit }) => {
      const { left, right, top, bottom } = box(unit.places[0]!.assembly.outline);
      const across = formatLength(rational((right.x - left.x) * grid.columns, lattice.width));
      const down = formatLength(rational((bottom.y - top.y) * grid.rows, lattice.height));
      const what = `${unit.kind} ${across}x${down}`.replaceAll(' ', '-').replaceAll('/', ':');
      const number = (counts.get(what) ?? 0) + 1;
      counts.set(what, number);
      return [unit.id, `${what} ${number}`.replaceAll(' ', '-')];
    }),
  );
}

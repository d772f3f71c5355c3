import type { Grid } from '../block/block.ts';
import type { Places } from '../block/choosing-methods.ts';
import { box } from '../geometry/convex.ts';
import { multiply, rational, type Rational } from '../measure/rational.ts';
import { leastCommonMultiple } from '../block/lattice.ts';
import type { Pattern, UnitLine } from './pattern.ts';

/** @returns the rectangles in which units of a pattern are sewn, on the grid of the block it was made from */
export function unitPlaces({ lattice }: Pick<Pattern, 'lattice'>, units: readonly Pick<UnitLine, 'unit'>[], grid: Pick<Grid, 'columns' | 'rows'>): Places {
  const [perColumn, perRow] = [rational(grid.columns, lattice.width), rational(grid.rows, lattice.height)];
  const corners = units.flatMap(({ unit }) =>
    unit.places.map(({ assembly }) => {
      const { left, right, top, bottom } = box(assembly.outline);
      const across = [left, right].map((p) => multiply(rational(p.x, p.w), perColumn));
      const down = [top, bottom].map((p) => multiply(rational(p.y, p.w), perRow));
      return { from: [across[0]!, down[0]!] as const, to: [across[1]!, down[1]!] as const };
    }),
  );
  const denominator = corners.flatMap(({ from, to }) => [...from, ...to]).reduce((common, { d }) => leastCommonMultiple(common, d), 1);
  const steps = ([x, y]: readonly [Rational, Rational]): readonly [number, number] => [x.n * (denominator / x.d), y.n * (denominator / y.d)];
  return { boxes: corners.map(({ from, to }) => ({ from: steps(from), to: steps(to) })), denominator };
}

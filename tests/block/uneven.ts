import fc from 'fast-check';
import { plainGrid } from '../../src/block/axis.ts';
import type { Block } from '../../src/block/block.ts';
import { toDrawing } from '../../src/block/drawing.ts';
import { multiply, rational, type Rational } from '../../src/measure/rational.ts';
import { block, must } from './drawn.ts';

/** Random lines between the cells of so many grid units: whole ones, halves, thirds, quarters; in order, none twice. */
const lines = (units: number): fc.Arbitrary<readonly Rational[]> =>
  fc.uniqueArray(fc.integer({ min: 1, max: units * 12 - 1 }), { maxLength: 7 }).map((twelfths) =>
    twelfths
      .filter((at) => at % 3 === 0 || at % 4 === 0)
      .sort((a, b) => a - b)
      .map((at) => rational(at, 12)),
  );

/** Random blocks as of `block`, some of whose columns and rows differ. */
export const uneven: fc.Arbitrary<Block> = block.chain((drawn) =>
  fc
    .tuple(fc.option(lines(drawn.grid.columns)), fc.option(lines(drawn.grid.rows)))
    .map(([across, down]) => ({ ...drawn, grid: plainGrid({ ...drawn.grid, ...(across && { across }), ...(down && { down }) }) })),
);

/** A block by the ruler: every line and point in its unit, whatever its lattice and grid units are. */
export function measured(drawn: Block) {
  const { drawing, step } = must(toDrawing(drawn));
  const length = (steps: number): string => {
    const { n, d } = multiply(rational(steps), step);
    return `${n}/${d}`;
  };
  const points = (all: readonly (readonly [number, number])[]): readonly string[] => all.map(([x, y]) => `${length(x)}, ${length(y)}`);
  return {
    columns: drawing.columns.map(length),
    rows: drawing.rows.map(length),
    patches: drawing.patches.map((patch) => ({ ...patch, points: points(patch.points) })),
    seams: drawing.seams.map(points),
    pins: drawing.pins?.map(({ pin, from, to }) => [pin, ...points([from, to])]),
    units: drawn.unitMethods && must(toDrawing(drawn)).unitMethods.map(({ from, to, method }) => [method, ...points([from, to])]),
    rest: { ...drawn, grid: null, denominator: null, patches: null, seams: null, pins: null, unitMethods: null },
  };
}

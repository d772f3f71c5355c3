import fc from 'fast-check';
import { plainGrid } from '../../src/block/axis.ts';
import type { Block } from '../../src/block/block.ts';
import { rational, type Rational } from '../../src/measure/rational.ts';
import { block } from './drawn.ts';

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

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cellSizes } from '../../src/block/axis.ts';
import { eachOnce, marksAround, onMark, rulerFit, ruledSides } from '../../src/cutting/ruler.ts';
import { paint } from '../../src/block/painting.ts';
import { cell, halfCell, quarterCell } from '../../src/block/patch-shapes.ts';
import { resize } from '../../src/block/sizing.ts';
import type { Block } from '../../src/block/block.ts';
import type { Stroke } from '../../src/block/painting.ts';
import { makePattern } from '../../src/pattern/make-pattern.ts';
import { formatLength } from '../../src/measure/lengths.ts';
import { equals, multiply, rational, type Rational } from '../../src/measure/rational.ts';
import { must, paintFabric, SEED, unpainted } from '../block/drawn.ts';

const EIGHTH = rational(1, 8);
const MILLIMETRE = rational(1, 10);

const sized = (cells: number, side: Rational, unit: 'in' | 'cm' = 'in'): Block =>
  unpainted(cells, cells, { finished: { width: side, height: side, unit } });
const painted = (block: Block, ...shapes: readonly Stroke[]): Block => shapes.reduce((now, shape) => must(paint(now, 'teal', shape)), block);

const sidesOf = (block: Block): readonly Rational[] => {
  const { pieces, lattice, units } = must(makePattern(block, {}, 'chosen way'));
  return ruledSides(pieces, lattice.step, units.map(({ finished }) => finished));
};
const fitOf = (block: Block, ruler: Rational) => rulerFit(eachOnce([...cellSizes(block, 'columns'), ...sidesOf(block)]), block.finished, ruler);
const widths = ({ smaller, larger }: ReturnType<typeof rulerFit>) => [smaller, larger].map((size) => size && formatLength(size.width));

describe('sizes that the ruler can cut', () => {
  it('12 cells in 5 in. are 5/12 in. each, between 3/8 and 1/2; 4 1/2 and 6 in. are the nearest sizes with cells on the marks', () => {
    const block = painted(sized(12, rational(5)), cell(3, 3));
    const fit = fitOf(block, EIGHTH);
    expect(fit.off.map(formatLength)).toContain('5/12');
    expect(marksAround(rational(5, 12), EIGHTH)).toEqual([rational(3, 8), rational(1, 2)]);
    // 12 cells of 3/8 in. and of 1/2 in.
    expect(widths(fit)).toEqual(['4 1/2', '6']);
  });

  it('7 cells in 12 in.: 11 3/8 with cells of 1 5/8, 12 1/4 with cells of 1 3/4', () => {
    expect(widths(fitOf(painted(sized(7, rational(12)), cell(3, 3)), EIGHTH))).toEqual(['11 3/8', '12 1/4']);
  });

  it('9 in. in 3 by 3, with diagonals of every kind, is on the marks as it is', () => {
    const block = painted(sized(3, rational(9)), halfCell(0, 0, 'top left'), quarterCell(1, 1, 'top'), quarterCell(1, 1, 'bottom'));
    expect(fitOf(block, EIGHTH)).toEqual({ off: [], smaller: null, larger: null });
  });

  it('a quarter-square triangle asks for its long side, not for the half of it that no ruler cuts', () => {
    // 3/8 in. cells: the tips lie 3/16 in. from the sides.
    const block = painted(sized(8, rational(3)), quarterCell(1, 1, 'top'), quarterCell(1, 1, 'bottom'), quarterCell(1, 1, 'left'));
    expect(fitOf(block, EIGHTH).off).toEqual([]);
  });

  it('half a cell that is cut asks for its own mark', () => {
    // 1 1/8 in. cells, one of them painted by half: 9/16 in.
    const block = painted(sized(8, rational(9)), { denominator: 2, points: [[2, 2], [3, 2], [3, 4], [2, 4]] });
    const fit = fitOf(block, EIGHTH);
    expect(fit.off.map(formatLength)).toContain('9/16');
    // Halves of 1/2 and of 5/8 in.
    expect(widths(fit)).toEqual(['8', '10']);
  });

  it('what lies slantwise asks for nothing', () => {
    const outline = [{ x: 4, y: 0, w: 1 }, { x: 8, y: 4, w: 1 }, { x: 4, y: 8, w: 1 }, { x: 0, y: 4, w: 1 }];
    expect(ruledSides([{ outline }], rational(1), [])).toEqual([]);
    expect(ruledSides([{ outline: [{ x: 0, y: 0, w: 1 }, { x: 5, y: 1, w: 1 }, { x: 3, y: 4, w: 1 }] }], rational(1), [])).toEqual([]);
  });

  it('on a metric ruler they are whole millimetres', () => {
    const fit = fitOf(painted(sized(7, rational(20), 'cm'), cell(3, 3)), MILLIMETRE);
    // 20/7 = 2,857 cm: 2,8 and 2,9 cm.
    expect(widths(fit)).toEqual(['19 3/5', '20 3/10']);
    expect(marksAround(rational(20, 7), MILLIMETRE)).toEqual([rational(14, 5), rational(29, 10)]);
  });

  it('keep the proportion of the block, and none is offered that no block has', () => {
    const wide = { width: rational(10), height: rational(5), unit: 'in' as const };
    const fit = rulerFit([rational(5, 3)], wide, EIGHTH);
    expect([fit.smaller, fit.larger]).toEqual([
      { width: rational(39, 4), height: rational(39, 8), unit: 'in' },
      { width: rational(21, 2), height: rational(21, 4), unit: 'in' },
    ]);
    expect(rulerFit([rational(1, 24)], wide, EIGHTH)).toMatchObject({ smaller: null, larger: { width: { n: 30 } } });
    expect(rulerFit([rational(1, 1000)], wide, EIGHTH)).toMatchObject({ smaller: null, larger: null });
    const odd = [rational(1, 94_906_247), rational(1, 94_906_249)];
    expect(rulerFit(odd, wide, EIGHTH)).toEqual({ off: odd, smaller: null, larger: null });
  });

  it('are such that every plain cut is exact there, and no size between them is', () => {
    const shape = fc.tuple(paintFabric, fc.nat(4), fc.nat(4)).map(([fabric, x, y]) => [fabric, cell(x, y)] as const);
    fc.assert(
      fc.property(fc.array(shape, { minLength: 1, maxLength: 8 }), fc.integer({ min: 9, max: 400 }), (laid, sixteenths) => {
        const block = laid.reduce((now, [fabric, stroke]) => must(paint(now, fabric, stroke)), sized(5, rational(sixteenths, 16)));
        const exact = (drawn: Block): boolean =>
          must(makePattern(drawn, {}, 'chosen way')).cuts.every(({ width, height, exact }) => equals(exact!.width.p, width) && equals(exact!.height.p, height));
        const fit = rulerFit(sidesOf(block), block.finished, EIGHTH);
        expect(exact(block)).toBe(fit.off.length === 0);
        for (const size of [fit.smaller, fit.larger]) if (size) expect(exact(must(resize(block, size)))).toBe(true);
        if (fit.smaller && fit.larger) {
          for (const part of [1, 2, 3]) {
            const side = multiply(rational(part, 4), rational(fit.larger.width.n * fit.smaller.width.d - fit.smaller.width.n * fit.larger.width.d, fit.larger.width.d * fit.smaller.width.d));
            const between = rational(side.n * fit.smaller.width.d + fit.smaller.width.n * side.d, side.d * fit.smaller.width.d);
            expect(exact(must(resize(block, { width: between, height: between, unit: 'in' })))).toBe(false);
          }
        }
      }),
      { ...SEED, numRuns: 30 },
    );
  });

  it('a mark is a whole number of the ruler\'s steps', () => {
    expect([onMark(rational(3, 8), EIGHTH), onMark(rational(3, 16), EIGHTH)]).toEqual([true, false]);
  });
});

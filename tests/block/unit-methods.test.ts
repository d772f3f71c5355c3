import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkBlock } from '../../src/block/whole-check.ts';
import { toDrawing } from '../../src/block/drawing.ts';
import { resizeCell } from '../../src/block/lines.ts';
import { regrid, subdivide } from '../../src/block/regridding.ts';
import { resize } from '../../src/block/sizing.ts';
import { mirror, turn } from '../../src/block/turning.ts';
import { chooseUnitMethods } from '../../src/block/unit-methods.ts';
import { rational } from '../../src/measure/rational.ts';
import { block, must, SEED, unpainted } from './drawn.ts';

const corner = { from: [0, 0], to: [2, 2] } as const;
const edge = { from: [2, 0], to: [4, 2] } as const;

describe('the method of a single unit', () => {
  it('is chosen for its rectangle, in place of the one it had, and taken away, whichever two corners are named', () => {
    const first = must(chooseUnitMethods(unpainted(4, 4), [corner, edge], 'triangles', 1));
    expect(first.unitMethods).toEqual([{ ...corner, method: 'triangles' }, { ...edge, method: 'triangles' }]);
    const other = must(chooseUnitMethods(first, [{ from: [2, 0], to: [0, 2] }], 'one-at-a-time', 1));
    expect(other.unitMethods).toEqual([{ ...edge, method: 'triangles' }, { from: [2, 0], to: [0, 2], method: 'one-at-a-time' }]);
    expect(must(chooseUnitMethods(other, [corner, edge], null, 1))).toEqual(unpainted(4, 4));
  });

  it('may lie between grid lines', () => {
    const fine = must(chooseUnitMethods(unpainted(4, 4), [{ from: [1, 1], to: [3, 3] }], 'template', 2));
    expect(fine).toMatchObject({ denominator: 2, unitMethods: [{ from: [1, 1], to: [3, 3] }] });
  });

  it('is refused off the block, without area, or where there are too many', () => {
    expect(chooseUnitMethods(unpainted(4, 4), [{ from: [0, 0], to: [5, 1] }], 'template', 1)).toMatchObject({ problem: { code: 'off-the-grid' } });
    expect(chooseUnitMethods(unpainted(4, 4), [{ from: [0, 0], to: [3, 0] }], 'template', 1)).toMatchObject({ problem: { code: 'unit-without-area' } });
    const many = Array.from({ length: 501 }, (_, i) => ({ from: [i % 30, Math.floor(i / 30)], to: [(i % 30) + 1, Math.floor(i / 30) + 1] }) as const);
    expect(chooseUnitMethods(unpainted(30, 30), many, 'template', 1)).toMatchObject({ problem: { code: 'too-many-unit-methods' } });
    expect(chooseUnitMethods(unpainted(30, 30), many.slice(1), 'template', 1)).toMatchObject({ ok: true });
  });

  it('goes where the drawing goes: turned, mirrored, on divided cells, with moved lines, in true proportion', () => {
    const drawn = must(chooseUnitMethods(unpainted(4, 4), [corner], 'triangles', 1));
    const at = (from: readonly number[], to: readonly number[]) => [{ from, to, method: 'triangles' }];
    expect(turn(drawn).unitMethods).toEqual(at([4, 0], [2, 2]));
    expect(mirror(drawn, 'top and bottom').unitMethods).toEqual(at([0, 4], [2, 2]));
    expect(must(subdivide(drawn, 2)).unitMethods).toEqual(at([0, 0], [4, 4]));
    expect(must(toDrawing(drawn)).unitMethods).toEqual(at([0, 0], [4, 4]));
    // The second column gives 1 1/2 in. to the third: the unit grows with it.
    const wider = must(resizeCell(drawn, 'columns', 1, rational(9, 2), 'moves along'));
    expect(wider).toMatchObject({ denominator: 2, unitMethods: at([0, 0], [5, 4]) });
    fc.assert(fc.property(block, (each) => void expect(checkBlock(turn(each))).toEqual(checkBlock(each))), SEED);
  });

  it('that does not fit another grid is left out, and told', () => {
    const drawn = must(chooseUnitMethods(unpainted(4, 4), [corner, edge], 'triangles', 1));
    const { block: smaller, lost } = must(regrid(drawn, { columns: 3, rows: 4 }));
    expect(lost.unitMethods).toEqual([1]);
    expect(smaller.unitMethods).toEqual([{ ...corner, method: 'triangles' }]);
  });
});

describe('what is chosen about cloth', () => {
  it('loses its lengths in another unit, and nothing else', () => {
    const inch = rational(1);
    const drawn = unpainted(4, 4, {
      choices: {
        seam: inch, squaringUp: inch, shopStep: inch, blocks: 3, margin: { percent: inch },
        cloths: { oat: { sold: 'fat quarter', size: { width: inch, length: inch } }, teal: { width: inch } },
      },
    });
    const size = { width: rational(30), height: rational(30), unit: 'cm' } as const;
    expect(must(resize(drawn, size)).choices).toEqual({ blocks: 3, margin: { percent: inch }, cloths: { oat: { sold: 'fat quarter' } } });
    expect(must(resize({ ...drawn, choices: { margin: { length: inch } } }, size)).choices).toEqual({});
    expect(must(resize(drawn, { ...size, unit: 'in' })).choices).toEqual(drawn.choices);
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Drawing } from '../../src/geometry/patchwork/drawing.ts';
import { waysToSew } from '../../src/geometry/piecing/ways.ts';
import { apart, drawings, EVERYTHING, rectangles, tiled, tries, unpainted, whirls, type Grid } from './drawings.ts';
import { counts, everything, seenIn, VIEWS } from './same-picture.ts';

describe('turning or mirroring a drawing', () => {
  it.each([
    ['random drawings', drawings({ ...EVERYTHING, cells: 5, strokes: 8 }), 20],
    ['blocks of turned tiles', tiled, 4],
    ['four arms that turn round a centre', whirls, 8],
    ['drawings with whole patches', drawings({ ...EVERYTHING, cells: 5, strokes: 8, seams: 0, whole: true }), 20],
  ] as const)('changes no figure and no unit, kind or count: %s', (_, pictures, runs) => {
    fc.assert(
      fc.property(pictures, (drawing) => {
        const asDrawn = waysToSew(drawing).map(counts);
        for (const view of VIEWS.slice(1)) expect([view.name, waysToSew(seenIn(view, drawing)).map(counts)]).toEqual([view.name, asDrawn]);
      }),
      tries(runs),
    );
  });
});

describe('the same picture painted otherwise is sewn the same', () => {
  it('in another order of patches that lie apart', () => {
    const twoOrders = apart(6).chain((drawing) =>
      fc
        .shuffledSubarray([...drawing.patches], { minLength: drawing.patches.length })
        .map((patches) => [drawing, { ...drawing, patches }] as const),
    );
    fc.assert(
      fc.property(twoOrders, ([one, other]) => {
        expect(waysToSew(other).map(everything)).toEqual(waysToSew(one).map(everything));
      }),
      tries(40),
    );
  });

  it('cell by cell instead of in one stroke', () => {
    const sheet: Grid = { across: 5, down: 5, cell: [4, 4] };
    const strokes = fc.array(fc.tuple(fc.constantFrom('oat', 'fog', 'buoy'), rectangles(sheet)), { minLength: 1, maxLength: 6 });
    fc.assert(
      fc.property(strokes, (painted) => {
        const rects = painted.map(([fabric, points]) => ({ fabric, points }));
        const cells = rects.flatMap(({ fabric, points: [[x0, y0], , [x1, y1]] }) =>
          Array.from({ length: ((x1! - x0!) / 4) * ((y1! - y0!) / 4) }, (_, k) => {
            const [x, y] = [x0! + 4 * (k % ((x1! - x0!) / 4)), y0! + 4 * Math.floor(k / ((x1! - x0!) / 4))];
            return {
              fabric,
              points: [[x, y], [x + 4, y], [x + 4, y + 4], [x, y + 4]] as const,
            };
          }),
        );
        const [one, other]: [Drawing, Drawing] = [
          { ...unpainted(sheet), patches: rects },
          { ...unpainted(sheet), patches: cells },
        ];
        expect(waysToSew(other).map(everything)).toEqual(waysToSew(one).map(everything));
      }),
      tries(40),
    );
  });
});

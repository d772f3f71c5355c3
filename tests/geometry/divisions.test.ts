import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { boundariesOf } from '../../src/geometry/patchwork/boundaries.ts';
import type { Drawing } from '../../src/geometry/patchwork/drawing.ts';
import { patchworkOf } from '../../src/geometry/patchwork/patchwork.ts';
import { divisionsIn, type Division } from '../../src/geometry/piecing/divisions.ts';
import type { Piecing } from '../../src/geometry/piecing/assembly.ts';
import { waysToSew } from '../../src/geometry/piecing/ways.ts';
import { drawings, EVERYTHING, rectangles, tiled, tries, unpainted, whirls, type Grid } from './drawings.ts';
import { commonOf, edgesOn, exactly, spanText, turning, unionOf } from './exact.ts';
import { fewestPieces } from './fewest.ts';
import { clothAreas } from './rectangles.ts';

const wholeCells: fc.Arbitrary<Drawing> = fc.tuple(fc.integer({ min: 2, max: 7 }), fc.integer({ min: 2, max: 7 })).chain(([across, down]) => {
  const sheet: Grid = { across, down, cell: [4, 4] };
  const stroke = fc.tuple(fc.constantFrom('oat', 'fog', 'rope'), rectangles(sheet));
  return fc
    .array(stroke, { maxLength: across * down, size: 'max' })
    .map((strokes) => ({ ...unpainted(sheet), patches: strokes.map(([fabric, points]) => ({ fabric, points })) }));
});

const divided = (drawing: Drawing, way: Piecing): readonly Division[] => divisionsIn(way, boundariesOf(patchworkOf(drawing)));
const costs = (divisions: readonly Division[]): number => divisions.reduce((sum, { more }) => sum + more, 0);

/** @returns how many holes an area of cells has: cells less inner edges plus inner corners is one less for each (Euler) */
function holesIn(area: readonly (readonly [number, number])[]): number {
  const has = new Set(area.map(String));
  const count = (...beside: (readonly [number, number])[]): number =>
    area.filter(([x, y]) => beside.every(([dx, dy]) => has.has(String([x + dx, y + dy])))).length;
  return 1 - (area.length - count([1, 0]) - count([0, 1]) + count([1, 0], [0, 1], [1, 1]));
}

describe('where seams run through one cloth', () => {
  it('there are as many places as pieces beyond the areas drawn, and one for every cloth round another', () => {
    let [places, rings] = [0, 0];
    fc.assert(
      fc.property(wholeCells, (drawing) => {
        const areas = clothAreas(drawing);
        const holes = areas.reduce((sum, area) => sum + holesIn(area), 0);
        for (const way of waysToSew(drawing)) {
          const divisions = divided(drawing, way);
          expect(divisions.length).toBe(way.pieces.length - areas.length + holes);
          expect(costs(divisions)).toBe(way.pieces.length - areas.length);
          places += divisions.length;
          rings += holes;
        }
      }),
      tries(150),
    );
    expect(places).toBeGreaterThan(500);
    expect(rings).toBeGreaterThan(5);
  });

  it.each([['a random drawing', drawings(EVERYTHING)], ['turned tiles', tiled], ['arms round a centre', whirls]] as const)(
    'in %s they cost the pieces beyond the areas drawn, one each at most',
    (_, pictures) => {
      fc.assert(
        fc.property(pictures, (drawing) => {
          const { areas } = fewestPieces(drawing, 0);
          for (const way of waysToSew(drawing)) expect(costs(divided(drawing, way))).toBe(way.pieces.length - areas);
        }),
        tries(40),
      );
    },
  );

  it('each has pieces of its fabric on both sides, as far as it runs', () => {
    fc.assert(
      fc.property(drawings(EVERYTHING), (drawing) => {
        const [way] = waysToSew(drawing);
        for (const division of divided(drawing, way!)) {
          const [from, to] = [exactly(division.from), exactly(division.to)];
          const beside = division.pieces.map((id) => way!.pieces[id]!);
          expect(new Set(beside.map(({ fabric }) => fabric))).toEqual(new Set([division.fabric]));
          for (const side of [1, -1]) {
            const outlines = beside.map(({ outline }) => outline.map(exactly)).filter((outline) => outline.some((p) => turning(from, to, p) === side));
            expect(spanText(commonOf(edgesOn(outlines, from, to), [[from, to]]))).toBe(spanText(unionOf([[from, to]])));
          }
        }
      }),
      tries(40),
    );
  });
});

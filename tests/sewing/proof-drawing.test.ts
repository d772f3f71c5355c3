import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Drawing, Lattice } from '../../src/geometry/patchwork/drawing.ts';
import { areaOf, drawnPatches, shownIn } from '../../src/sewing/proof-drawing.ts';
import { area, hull, spot } from '../../src/sewing/proof-outline.ts';
import type { Outline } from '../../src/sewing/proof-outline.ts';
import { areaOf as areaOfDrawn, difference, intersection, isSimple, polygon } from '../geometry/oracle.ts';

/* The outside opinion is jsts, which works in doubles: areas are compared to nine digits. */

const lattice = fc.tuple(fc.integer({ min: 0, max: 24 }), fc.integer({ min: 0, max: 24 }));
/** Simple outlines of any shape: corners in order round a middle point make a star-shaped, mostly not convex outline. */
const simple = fc
  .array(lattice, { minLength: 3, maxLength: 9 })
  .map((points): Lattice[] => {
    const around = points.filter(([x, y]) => x !== 11 || y !== 13);
    const angle = ([x, y]: Lattice): number => Math.atan2(y - 13, x - 11);
    const sorted = around.sort((p, q) => angle(p) - angle(q));
    return sorted.filter((p, i) => i === 0 || angle(p) !== angle(sorted[i - 1]));
  })
  .filter((points) => points.length >= 3 && isSimple(points));
const drawings = fc.array(simple, { minLength: 1, maxLength: 5 }).map((shapes): Drawing => ({
  width: 24,
  height: 24,
  columns: [0, 24],
  rows: [0, 24],
  ground: 'ground',
  seams: [],
  patches: shapes.map((points, i) => ({ fabric: `f${i}`, points })),
}));
const pieces = fc
  .array(fc.tuple(lattice, fc.integer({ min: 1, max: 4 })), { minLength: 3, maxLength: 7 })
  .map((corners) => hull(corners.map(([[x, y], w]) => spot(BigInt(x), BigInt(y), BigInt(w)))))
  .filter((outline) => outline.length >= 3);

const number = (f: { n: bigint; d: bigint }): number => Number(f.n) / Number(f.d);
const drawnOf = (outline: Outline): ReturnType<typeof polygon> =>
  polygon(outline.map((p) => [Number(p.x) / Number(p.w), Number(p.y) / Number(p.w)]));

describe('what shows in a piece', () => {
  test('each patch shows as much as painting in order leaves of it', () => {
    fc.assert(
      fc.property(drawings, pieces, (drawing, piece) => {
        const shown = shownIn(piece, drawnPatches(drawing));
        const drawn = drawnOf(piece);
        drawing.patches.forEach((patch, i) => {
          const later = drawing.patches.slice(i + 1).map((p) => polygon(p.points));
          let left = intersection(drawn, polygon(patch.points));
          for (const cover of later) left = difference(left, cover);
          const regions = shown.find((s) => s.patch === i)?.regions ?? [];
          expect(number(areaOf(regions))).toBeCloseTo(areaOfDrawn(left), 9);
        });
      }),
      { seed: 20263, numRuns: 400 },
    );
  });

  test('what shows of all patches and the ground is the piece, to the last bit', () => {
    fc.assert(
      fc.property(drawings, pieces, (drawing, piece) => {
        expect(areaOf(shownIn(piece, drawnPatches(drawing)).flatMap((s) => s.regions))).toEqual(area(piece));
      }),
      { seed: 20264, numRuns: 400 },
    );
  });

  test('a patch that winds round itself is divided along its own edges', () => {
    const spiral: Lattice[] = [
      [0, 0],
      [9, 0],
      [9, 9],
      [2, 9],
      [2, 4],
      [5, 4],
      [5, 6],
      [4, 6],
      [4, 7],
      [7, 7],
      [7, 2],
      [1, 2],
      [1, 10],
      [10, 10],
      [10, 12],
      [0, 12],
    ];
    const drawing: Drawing = {
      width: 12,
      height: 12,
      columns: [],
      rows: [],
      ground: 'g',
      seams: [],
      patches: [{ fabric: 'f', points: spiral }],
    };
    const block = hull([spot(0n, 0n), spot(12n, 0n), spot(12n, 12n), spot(0n, 12n)]);
    const inSpiral = shownIn(block, drawnPatches(drawing)).find((s) => s.patch === 0)?.regions ?? [];
    expect(number(areaOf(inSpiral))).toBe(areaOfDrawn(polygon(spiral)));
  });
});

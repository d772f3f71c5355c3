import fc from 'fast-check';
import Coordinate from 'jsts/org/locationtech/jts/geom/Coordinate.js';
import GeometryFactory from 'jsts/org/locationtech/jts/geom/GeometryFactory.js';
import IsValidOp from 'jsts/org/locationtech/jts/operation/valid/IsValidOp.js';
import { describe, expect, it } from 'vitest';
import type { LatticePoint } from '../../src/block/block.ts';
import { doubleArea, outlineFault, tidyOutline, whereIs } from '../../src/block/outline.ts';
import { covers, outline, SEED } from './drawn.ts';

const factory = new GeometryFactory();

/** The outline as the JSTS library, a port of the JTS topology suite, holds it. */
function polygon(points: readonly LatticePoint[]) {
  const ring = [...points, points[0]!].map(([x, y]) => new Coordinate(x, y));
  return factory.createPolygon(factory.createLinearRing(ring), []);
}

const anyPoints = fc.array(fc.tuple(fc.nat(6), fc.nat(6)), { minLength: 3, maxLength: 8 });

describe('an outline', () => {
  it('is simple exactly when JSTS, too, finds it valid', () => {
    let simple = 0;
    fc.assert(
      fc.property(anyPoints, (points) => {
        // Points on a straight and neighbours that are equal are valid there; we ask for tidy outlines.
        const tidy = tidyOutline(points);
        if (tidy.length < 3) return;
        const fault = outlineFault(tidy);
        simple += fault === null ? 1 : 0;
        expect(fault === null).toBe(new IsValidOp(polygon(tidy)).isValid());
      }),
      { ...SEED, numRuns: 3000 },
    );
    expect(simple).toBeGreaterThan(300);
  });

  it('has the area that JSTS measures', () => {
    fc.assert(fc.property(outline(40, 30), (points) => doubleArea(points) === 2 * polygon(points).getArea()), SEED);
  });

  it('holds the points that lie inside it, and its own corners and edges on its edge', () => {
    fc.assert(
      fc.property(outline(9, 7), fc.nat(9 * 97), fc.nat(7 * 97), (points, x, y) => {
        const place = whereIs({ x: 8 * x + 1, y: 8 * y + 3, w: 8 * 97 }, points);
        if (place !== 'edge') expect(place === 'inside').toBe(covers(points, 1, (8 * x + 1) / (8 * 97), (8 * y + 3) / (8 * 97)));
        points.forEach(([ax, ay], i) => {
          const [bx, by] = points[(i + 1) % points.length]!;
          expect(whereIs({ x: ax, y: ay, w: 1 }, points)).toBe('edge');
          expect(whereIs({ x: 2 * ax + bx, y: 2 * ay + by, w: 3 }, points)).toBe('edge');
        });
      }),
      SEED,
    );
  });

  it('is tidied to the same area, without points that say nothing', () => {
    fc.assert(
      fc.property(outline(9, 7), fc.infiniteStream(fc.nat(2)), (points, extra) => {
        // Each edge is given its middle, its first corner twice, or nothing, on a lattice twice as fine.
        const spoken = points.flatMap(([x, y], i): LatticePoint[] => {
          const [u, v] = points[(i + 1) % points.length]!;
          const corner: LatticePoint = [2 * x, 2 * y];
          return [[corner], [corner, corner], [corner, [x + u, y + v]]][extra.next().value!] as LatticePoint[];
        });
        expect([...tidyOutline(spoken)].sort()).toEqual(points.map(([x, y]) => [2 * x, 2 * y]).sort());
      }),
      SEED,
    );
  });

  it('loses a spike, and itself where it is nothing but a line', () => {
    expect(tidyOutline([[0, 0], [4, 0], [2, 0], [2, 3]])).toEqual([[0, 0], [2, 0], [2, 3]]);
    expect(tidyOutline([[0, 0], [1, 1], [2, 2], [1, 1]])).toEqual([]);
  });

  it('may have two thousand points', () => {
    const teeth = Array.from({ length: 998 }, (_, i): LatticePoint => [i, i % 2]);
    const comb: LatticePoint[] = [...teeth, [997, 5], [0, 5]];
    expect(outlineFault(comb)).toBeNull();
    expect(outlineFault([...comb.slice(0, 500), [499, 9], ...comb.slice(501)])).toMatchObject({ kind: 'crossing' });
  });
});

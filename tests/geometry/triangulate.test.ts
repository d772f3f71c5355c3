import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Lattice } from '../../src/geometry/patchwork/drawing.ts';
import { convexParts } from '../../src/geometry/patchwork/triangulate.ts';
import { twiceArea } from '../../src/geometry/patchwork/twice-area.ts';
import { slopes, tries } from './drawings.ts';
import { areaOf as exactArea, exactly, isConvex, printed, q, shared, total } from './exact.ts';
import { areaOf, difference, isSimple, placeOf, polygon } from './oracle.ts';

const SHEET = { across: 6, down: 6, cell: [8, 8] } as const;

/** Simple outlines of many corners: random points joined to a ring, crossings undone one by one. */
const tangled = fc
  .uniqueArray(fc.tuple(fc.nat(12), fc.nat(12)), { minLength: 6, maxLength: 14, selector: String })
  .map((points) => untangled(points))
  .filter((points) => points.length > 2 && isSimple(points));

/** Turns the way round between two crossing edges until none cross (2-opt); lengths shrink, so it ends. */
function untangled(points: readonly Lattice[]): readonly Lattice[] {
  const turn = ([ax, ay]: Lattice, [bx, by]: Lattice, [cx, cy]: Lattice): number =>
    Math.sign((bx - ax) * (cy - ay) - (by - ay) * (cx - ax));
  let ring = [...points];
  for (let round = 0; round < 200; round++) {
    const n = ring.length;
    let crossing: readonly [number, number] | null = null;
    for (let i = 0; i < n && !crossing; i++) {
      for (let j = i + 2; j < n; j++) {
        if (i === 0 && j === n - 1) continue;
        const [a, b, c, d] = [ring[i]!, ring[i + 1]!, ring[j]!, ring[(j + 1) % n]!];
        if (turn(a, b, c) * turn(a, b, d) < 0 && turn(c, d, a) * turn(c, d, b) < 0) {
          crossing = [i, j];
          break;
        }
      }
    }
    if (!crossing) return ring;
    const [i, j] = crossing;
    ring = [...ring.slice(0, i + 1), ...ring.slice(i + 1, j + 1).reverse(), ...ring.slice(j + 1)];
  }
  return [];
}

describe.each([
  ['three to seven corners', slopes(SHEET, 7)],
  ['six to fourteen corners, bays and spikes', tangled],
] as const)('an outline of %s comes apart into convex parts', (_, outlines) => {
  it('that have its area, to the last digit', () => {
    fc.assert(
      fc.property(outlines, (outline) => {
        const sum = total(convexParts(outline).map((part) => exactArea(part.points.map(exactly))));
        expect(printed(sum)).toBe(printed(exactArea(outline.map(exactly))));
        expect(Math.abs(twiceArea(outline))).toBe(2 * areaOf(polygon(outline)));
      }),
      tries(300),
    );
  });

  it('that are convex, apart from each other, and inside it for jsts', () => {
    fc.assert(
      fc.property(outlines, (outline) => {
        const parts = convexParts(outline);
        const corners = parts.map((part) => part.points.map(exactly));
        expect(corners.every(isConvex)).toBe(true);
        corners.forEach((one, i) => corners.slice(0, i).forEach((other) => expect(shared(one, other)).toEqual([])));
        for (const part of parts) expect(areaOf(difference(polygon(part.points.map(placeOf)), polygon(outline)))).toBeLessThan(1e-9);
      }),
      tries(200),
    );
  });

  it('that are the same area whichever way round it is drawn, and from any corner', () => {
    fc.assert(
      fc.property(outlines, fc.nat(13), (outline, k) => {
        const start = k % outline.length;
        const other = [...outline.slice(start), ...outline.slice(0, start)].reverse();
        expect(twiceArea(other)).toBe(-twiceArea(outline));
        const sum = total(convexParts(other).map((part) => exactArea(part.points.map(exactly))));
        expect(printed(sum)).toBe(printed(exactArea(outline.map(exactly))));
      }),
      tries(200),
    );
  });
});

describe('a convex outline', () => {
  it('stays in one part, without its corners on straight edges', () => {
    const parts = convexParts([[0, 0], [2, 0], [4, 0], [4, 4], [2, 6], [0, 4], [0, 2]]);
    expect(parts).toHaveLength(1);
    expect(parts[0]!.points.map(placeOf)).toEqual([[0, 0], [4, 0], [4, 4], [2, 6], [0, 4]]);
    expect(printed(exactArea(parts[0]!.points.map(exactly)))).toBe(printed(q(20)));
  });
});

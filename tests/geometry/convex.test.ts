import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { box, chord, clipAll, convexFrom, rectangle, sameOutline, split, type Convex } from '../../src/geometry/convex.ts';
import { latticePoint, lineThrough, side, type Point } from '../../src/geometry/point.ts';
import { tries } from './drawings.ts';
import { add, areaOf as exactArea, exactly, hullOf, isConvex, order, printed, type P } from './exact.ts';
import { areaOf, difference, intersection, lengthOf, lineString, placeOf, polygon } from './oracle.ts';

/* Cutting convex polygons, against jsts and against exact sums. */

const SIDE = 48;
const lattice = fc.tuple(fc.nat(SIDE), fc.nat(SIDE)).map(([x, y]) => latticePoint(x, y));
const back = (p: P): Point => ({ x: Number(p.x), y: Number(p.y), w: Number(p.w) });

/** Convex polygons on lattice points with any slopes. */
const polygons: fc.Arbitrary<Convex> = fc
  .array(lattice, { minLength: 3, maxLength: 9 })
  .map((points) => hullOf(points.map(exactly)).map(back))
  .filter((hull) => hull.length > 2)
  .map(convexFrom);
/** Cuts through two lattice points, their front to the right of the first → second. */
const cuts = fc.tuple(lattice, lattice).filter(([p, r]) => p.x !== r.x || p.y !== r.y);

/** All that lies to the right of p → r within reach of the block, drawn on lattice points. */
function rightHalf(p: Point, r: Point): ReturnType<typeof polygon> {
  const [dx, dy] = [(r.x - p.x) * 200, (r.y - p.y) * 200];
  return polygon([[p.x - dx, p.y - dy], [p.x + dx, p.y + dy], [p.x + dx - dy, p.y + dy + dx], [p.x - dx - dy, p.y - dy + dx]]);
}

const shape = ({ points }: Convex): ReturnType<typeof polygon> => polygon(points.map(placeOf));
const floatArea = (part: Convex | null): number => (part ? areaOf(shape(part)) : 0);
const outlineOf = (part: Convex): readonly P[] => part.points.map(exactly);

/** Nine digits, as far as doubles can agree after a few operations. */
function agree(ours: number, theirs: number): void {
  expect(Math.abs(ours - theirs)).toBeLessThanOrEqual(1e-9 * SIDE * SIDE);
}

/** @returns whether each line carries the edge from its corner to the next, its front inside */
const linesFit = ({ points, lines }: Convex): boolean =>
  lines.length === points.length &&
  lines.every((l, i) => points.every((p, k) => (k === i || k === (i + 1) % points.length ? side(l, p) === 0 : side(l, p) === 1)));

describe('cutting a convex polygon by a line', () => {
  it('leaves as much in front and behind as jsts finds there', () => {
    fc.assert(
      fc.property(polygons, cuts, (region, [p, r]) => {
        const { front, back: behind } = split(region, lineThrough(p, r));
        const half = rightHalf(p, r);
        agree(floatArea(front), areaOf(intersection(shape(region), half)));
        agree(floatArea(behind), areaOf(difference(shape(region), half)));
      }),
      tries(400),
    );
  });

  it('loses nothing: two convex parts whose areas are the whole to the last digit', () => {
    fc.assert(
      fc.property(polygons, cuts, (region, [p, r]) => {
        const { front, back: behind } = split(region, lineThrough(p, r));
        const parts = [front, behind].filter((part) => part !== null);
        expect(parts.every((part) => isConvex(outlineOf(part)) && linesFit(part))).toBe(true);
        const sum = parts.map((part) => exactArea(outlineOf(part))).reduce(add);
        expect(printed(sum)).toBe(printed(exactArea(outlineOf(region))));
      }),
      tries(400),
    );
  });

  it('gives a chord as long as jsts measures, its ends on line and outline', () => {
    fc.assert(
      fc.property(polygons, cuts, (region, [p, r]) => {
        const cut = lineThrough(p, r);
        const found = chord(region, cut);
        const sides = region.points.map((corner) => side(cut, corner));
        expect(found !== null).toBe(sides.includes(1) && sides.includes(-1));
        if (found === null) return;
        const [dx, dy] = [(r.x - p.x) * 200, (r.y - p.y) * 200];
        const line = lineString([[p.x - dx, p.y - dy], [p.x + dx, p.y + dy]]);
        const [[ax, ay], [bx, by]] = found.map(placeOf) as [readonly [number, number], readonly [number, number]];
        agree(Math.hypot(bx - ax, by - ay), lengthOf(intersection(shape(region), line)));
        for (const end of found) {
          expect(side(cut, end)).toBe(0);
          expect(Math.min(...region.lines.map((l) => side(l, end)))).toBe(0);
        }
        expect(ax < bx || (ax === bx && ay < by)).toBe(true);
      }),
      tries(400),
    );
  });

  it('after many cuts still agrees with jsts, and with itself however the cuts are ordered', () => {
    fc.assert(
      fc.property(polygons, fc.array(cuts, { minLength: 1, maxLength: 5 }), (region, all) => {
        const lines = all.map(([p, r]) => lineThrough(p, r));
        const rest = clipAll(region, lines);
        const theirs = all.reduce((left, [p, r]) => intersection(left, rightHalf(p, r)), shape(region));
        agree(floatArea(rest), areaOf(theirs));
        const reordered = clipAll(region, [...lines].reverse());
        expect(reordered === null).toBe(rest === null);
        if (rest && reordered) {
          expect(isConvex(outlineOf(rest)) && linesFit(rest)).toBe(true);
          expect(sameOutline(rest.points, reordered.points)).toBe(true);
        }
      }),
      tries(300),
    );
  });

  it('keeps numbers small: a corner is always the crossing of two first lines', () => {
    fc.assert(
      fc.property(polygons, fc.array(cuts, { minLength: 4, maxLength: 8 }), (region, all) => {
        const rest = clipAll(
          region,
          all.map(([p, r]) => lineThrough(p, r)),
        );
        // A crossing of two lines through points of a lattice has a weight of at most twice the lattice's area.
        for (const p of rest?.points ?? []) expect(p.w).toBeLessThanOrEqual(2 * SIDE * SIDE);
      }),
      tries(300),
    );
  });
});

describe('outlines', () => {
  it('are boxed by their outermost corners', () => {
    fc.assert(
      fc.property(polygons, ({ points }) => {
        const { left, right, top, bottom } = box(points);
        const [xs, ys] = [points.map((p) => p.x), points.map((p) => p.y)];
        expect([left.x, right.x, top.y, bottom.y]).toEqual([Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)]);
      }),
      tries(200),
    );
  });

  it('are the same from whichever corner they start, and no others are', () => {
    fc.assert(
      fc.property(polygons, fc.nat(8), ({ points }, k) => {
        const start = k % points.length;
        const rolled = [...points.slice(start), ...points.slice(0, start)];
        expect(sameOutline(points, rolled)).toBe(true);
        expect(sameOutline(points, [...points].reverse())).toBe(false);
        expect(sameOutline(points, rolled.with(0, { ...rolled[0]!, x: rolled[0]!.x + 1 }))).toBe(false);
      }),
      tries(200),
    );
  });

  it('of a rectangle run clockwise with their fronts inside', () => {
    const sheet = rectangle(2, 3, 7, 5);
    expect(isConvex(outlineOf(sheet)) && linesFit(sheet)).toBe(true);
    expect(order(exactArea(outlineOf(sheet)), { n: 10n, d: 1n })).toBe(0);
  });
});

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { multiply, rational, toNumber, type Rational } from '../../src/measure/rational.ts';
import type { Point } from '../../src/geometry/point.ts';
import { latticePoint, lineThrough, meet, turned } from '../../src/geometry/point.ts';
import { atOrigin, cutOutline, templateBox, templateKey } from '../../src/cutting/template.ts';
import { inkOf } from '../../src/pattern/pages/ink.ts';
import { extent, offset } from './buffer.ts';

const laws = { seed: 20260714, numRuns: 100 };
const SEAM = rational(1, 4);
const EIGHTH = rational(1, 8);
const points = (...corners: readonly (readonly [number, number])[]): readonly Point[] => corners.map(([x, y]) => ({ x, y, w: 1 }));
const floats = (outline: readonly Point[], step = 1): readonly (readonly [number, number])[] =>
  outline.map(({ x, y, w }) => [(x / w) * step, (y / w) * step]);

const ink = (outline: readonly Point[], step: Rational): readonly (readonly [number, number])[] =>
  cutOutline(outline, step, SEAM).flat().map(inkOf);

/** The convex hull of a few lattice points, clockwise on screen, without three on a line. */
function hull(all: readonly (readonly [number, number])[]): readonly Point[] {
  const sorted = [...all].sort((a, b) => a[0] - b[0] || a[1] - b[1]);
  const chain = (run: readonly (readonly [number, number])[]): (readonly [number, number])[] => {
    const kept: (readonly [number, number])[] = [];
    for (const p of run) {
      for (;;) {
        const [a, b] = [kept[kept.length - 2], kept[kept.length - 1]];
        if (a === undefined || b === undefined || (b[0] - a[0]) * (p[1] - a[1]) - (b[1] - a[1]) * (p[0] - a[0]) > 0) break;
        kept.pop();
      }
      kept.push(p);
    }
    return kept.slice(0, -1);
  };
  return points(...chain(sorted), ...chain([...sorted].reverse()));
}

const outlines = fc
  .array(fc.tuple(fc.integer({ min: 0, max: 12 }), fc.integer({ min: 0, max: 12 })), { minLength: 3, maxLength: 9 })
  .map(hull)
  .filter((outline) => outline.length >= 3);
const steps = fc.constantFrom(rational(1), rational(3, 4), rational(7, 12), rational(2, 3));

/** Whether a point lies inside or on a convex outline that runs clockwise on screen. */
const inside = (outline: readonly (readonly [number, number])[], [x, y]: readonly [number, number]): boolean =>
  outline.every(([ax, ay], i) => {
    const [bx, by] = outline[(i + 1) % outline.length]!;
    return ((bx - ax) * (y - ay) - (by - ay) * (x - ax)) / Math.hypot(bx - ax, by - ay) > -1e-9;
  });

describe('a template', () => {
  test('holds everything within a seam allowance of the finished piece', () => {
    fc.assert(
      fc.property(outlines, steps, (outline, step) => {
        const cut = ink(outline, step);
        const round = offset(floats(outline, toNumber(step)), 0.25, 'round');
        for (const p of round) expect(inside(cut, p)).toBe(true);
      }),
      laws,
    );
  });

  test('stays inside the offset outline with whole tips, and no tip is further than √5 allowances from its corner', () => {
    fc.assert(
      fc.property(outlines, steps, (outline, step) => {
        const finished = floats(outline, toNumber(step));
        const whole = offset(finished, 0.25, 'whole');
        // JTS runs its rings clockwise in a plane with y up, which is the other way round on screen.
        const onScreen = [...whole.slice(0, -1)].reverse();
        const ring = inside(onScreen, finished[0]!) ? onScreen : [...onScreen].reverse();
        for (const p of ink(outline, step)) {
          expect(inside(ring, p)).toBe(true);
          expect(Math.min(...finished.map(([a, b]) => Math.hypot(a - p[0], b - p[1])))).toBeLessThan(0.25 * Math.sqrt(5) + 1e-9);
        }
      }),
      laws,
    );
  });

  test('fits its rectangle, which is at most one ruler step too large', () => {
    fc.assert(
      fc.property(outlines, steps, (outline, step) => {
        const cut = ink(outline, step);
        const { width, height } = templateBox(outline, step, SEAM, EIGHTH);
        const edges = outline.map(({ x, y }, i) => {
          const next = outline[(i + 1) % outline.length]!;
          const [dx, dy] = [next.x - x, next.y - y];
          const size = Math.hypot(dx, dy);
          return { way: [dx / size, dy / size] as const, size, level: dx === 0 || dy === 0 };
        });
        const longest = edges
          .filter(({ level }) => level || edges.every((edge) => !edge.level))
          .reduce((a, b) => (b.size > a.size + 1e-9 ? b : a));
        const spans = [extent(cut, longest.way), extent(cut, [-longest.way[1], longest.way[0]])].sort((a, b) => a - b);
        for (const [side, span] of [
          [toNumber(width), spans[0]!],
          [toNumber(height), spans[1]!],
        ] as const) {
          expect(side).toBeGreaterThan(span - 1e-5);
          expect(side).toBeLessThan(span + 0.125 + 1e-5);
        }
      }),
      laws,
    );
  });

  test('of a rectangle is the rectangle to cut', () => {
    expect(templateBox(points([0, 0], [3, 0], [3, 2], [0, 2]), rational(1), SEAM, EIGHTH)).toEqual({
      width: rational(5, 2),
      height: rational(7, 2),
    });
    // On the slant 3 : 4 the sides are 5 and 10 steps long.
    const slanted = points([4, 0], [12, 6], [9, 10], [1, 4]);
    expect(templateBox(slanted, rational(1), SEAM, EIGHTH)).toEqual({ width: rational(11, 2), height: rational(21, 2) });
  });

  test('of a snowball’s base is its square, on the straight grain though the slanted edges are longer', () => {
    const base = points([2, 0], [4, 0], [6, 2], [6, 4], [4, 6], [2, 6], [0, 4], [0, 2]);
    expect(templateBox(base, rational(1), SEAM, EIGHTH)).toEqual({ width: rational(13, 2), height: rational(13, 2) });
  });

  test('for the middle of a peak is at most the published square: u + 1, exactly u + 0.809', () => {
    // Chris & Barbara Quilts, Rotary cutting part 8, 2015-09-03: a square 1 in. larger than the finished base and height.
    const middle = points([2, 0], [4, 4], [0, 4]);
    expect(templateBox(middle, rational(1), SEAM, rational(1, 1000))).toEqual({ width: rational(481, 100), height: rational(481, 100) });
    expect(templateBox(middle, rational(1), SEAM, EIGHTH)).toEqual({ width: rational(39, 8), height: rational(39, 8) });
  });

  test('for a 60° triangle is its height and 3/4 in.', () => {
    // Chris & Barbara Quilts, Rotary cutting part 6, 2015-08-20: strip = height + 3/4. No lattice holds 60° exactly: 97/56 is near √3.
    const { width } = templateBox(points([56, 0], [112, 97], [0, 97]), rational(3, 97), SEAM, rational(1, 1000));
    expect(toNumber(width)).toBeGreaterThan(3.749);
    expect(toNumber(width)).toBeLessThan(3.752);
  });

  test('goes by the seam allowance and the step, not by where the piece lies', () => {
    fc.assert(
      fc.property(outlines, steps, fc.nat(40), fc.nat(40), (outline, step, dx, dy) => {
        const elsewhere = outline.map((p) => ({ ...p, x: p.x + dx, y: p.y + dy }));
        expect(templateBox(elsewhere, step, SEAM, EIGHTH)).toEqual(templateBox(outline, step, SEAM, EIGHTH));
        expect(templateBox(outline, multiply(step, rational(3)), multiply(SEAM, rational(3)), multiply(EIGHTH, rational(3))).width).toEqual(
          multiply(templateBox(outline, step, SEAM, EIGHTH).width, rational(3)),
        );
      }),
      laws,
    );
  });

  test('is the same for turned pieces and another for mirrored ones, unless the piece is its own mirror image', () => {
    fc.assert(
      fc.property(outlines, (outline) => {
        const key = templateKey(outline);
        expect(templateKey(outline.map(turned).map((p) => ({ ...p, x: p.x + 50 })))).toBe(key);
      }),
      laws,
    );
    const kite = points([0, 0], [3, 1], [4, 4], [1, 3]);
    const scalene = points([0, 0], [5, 1], [2, 3]);
    const mirror = (outline: readonly Point[]): readonly Point[] => outline.map((p) => ({ ...p, x: -p.x })).reverse();
    expect(templateKey(mirror(kite))).toBe(templateKey(kite));
    expect(templateKey(mirror(scalene))).not.toBe(templateKey(scalene));
  });

  test('takes corners off the lattice exactly', () => {
    const thirds: readonly Point[] = [
      { x: 10, y: 1, w: 3 },
      { x: 20, y: 1, w: 3 },
      { x: 16, y: 11, w: 3 },
      { x: 13, y: 11, w: 3 },
    ];
    const whole = points([10, 1], [20, 1], [16, 11], [13, 11]);
    expect(templateBox(thirds, rational(1), SEAM, EIGHTH)).toEqual(templateBox(whole, rational(1, 3), SEAM, EIGHTH));
    expect(atOrigin(thirds)).toEqual([
      { x: 1, y: 1, w: 3 },
      { x: 11, y: 1, w: 3 },
      { x: 7, y: 11, w: 3 },
      { x: 4, y: 11, w: 3 },
    ]);
    expect(atOrigin(whole)).toEqual(points([0, 0], [10, 0], [6, 10], [3, 10]));
  });

  test('between three steep lines across a lattice of 64 steps is decided, though its corners have large denominators', () => {
    const lines = [
      [0, 0, 63, 64],
      [64, 1, 1, 63],
      [0, 17, 64, 14],
    ].map(([a, b, c, d]) => lineThrough(latticePoint(a!, b!), latticePoint(c!, d!)));
    const [p, q, r] = [meet(lines[0]!, lines[1]!), meet(lines[1]!, lines[2]!), meet(lines[0]!, lines[2]!)];
    expect(Math.min(p.w, q.w, r.w)).toBeGreaterThan(1000);
    const outline = [r, q, p];
    const { width, height } = templateBox(outline, rational(12, 64), SEAM, EIGHTH);
    const longest = [q.x / q.w - r.x / r.w, q.y / q.w - r.y / r.w] as const;
    const way = longest.map((x) => x / Math.hypot(...longest)) as [number, number];
    const cut = ink(outline, rational(12, 64));
    const spans = [extent(cut, way), extent(cut, [-way[1], way[0]])].sort((a, b) => a - b);
    expect([toNumber(width), toNumber(height)]).toEqual(spans.map((span) => Math.ceil(span * 8) / 8));
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { boundariesOf, type Boundary } from '../../src/geometry/patchwork/boundaries.ts';
import { covers, merged, within, type Stretch } from '../../src/geometry/patchwork/stretches.ts';
import type { Drawing } from '../../src/geometry/patchwork/drawing.ts';
import { patchworkOf } from '../../src/geometry/patchwork/patchwork.ts';
import { compareAlong, latticePoint, lineKey, lineThrough, side, type Point } from '../../src/geometry/point.ts';
import { drawings, EVERYTHING, tries, unpainted, type Kinds } from './drawings.ts';
import { exactly, isOn, middleOf, order, same, spanText, turning, xOf, yOf, type P, type Span } from './exact.ts';
import { difference, intersection, lengthOf, lineString, nothing, outlinesOf, placeOf, polygon, union } from './oracle.ts';
import { topPatch } from './sewn.ts';

/**
 * What each cloth shows, by jsts: painted patch by patch, so that its outlines stay those of the patches.
 * Whole patches are cloths of their own.
 */
function cloths({ width, height, ground, patches }: Drawing): readonly ReturnType<typeof polygon>[] {
  const shown = new Map([
    [
      ground,
      polygon([[0, 0], [width, 0], [width, height], [0, height]]),
    ],
  ]);
  patches.forEach(({ fabric, points, whole }, i) => {
    const patch = polygon(points);
    const own = whole ? `whole ${i}` : fabric;
    for (const [name, shape] of shown) if (name !== own) shown.set(name, difference(shape, patch));
    shown.set(own, union(shown.get(own) ?? nothing(), patch));
  });
  return [...shown.values()];
}

const perimeter = ({ width, height }: Drawing): number => 2 * (width + height);
const long = ({ from, to }: Stretch): number => {
  const [[ax, ay], [bx, by]] = [placeOf(from), placeOf(to)];
  return Math.hypot(bx - ax, by - ay);
};
const lengths = (stretches: readonly Stretch[]): number => stretches.reduce((sum, s) => sum + long(s), 0);
const boundaries = (drawing: Drawing): readonly Boundary[] => [...boundariesOf(patchworkOf(drawing)).values()];
const drawnLength = (drawing: Drawing): number => boundaries(drawing).reduce((sum, b) => sum + lengths(b.drawn), 0);

/** A step to the side of an edge that is too short to reach any other edge of these drawings. */
const CLOSE = 10n ** 15n;

/** @returns for each line with edges on it, where the cloths to both sides differ: found edge by edge, exactly */
function meetings(drawing: Drawing): readonly string[] {
  const { width, height, patches } = drawing;
  const edges = patches.flatMap(({ points }) => points.map((p, i): Span => [exactly(p), exactly(points[(i + 1) % points.length]!)]));
  const cloth = (at: P): string => {
    const top = topPatch(drawing, at);
    return patches[top]?.whole ? `whole ${top}` : (patches[top]?.fabric ?? drawing.ground);
  };
  const byLine = new Map<string, Span[]>();
  for (const [a, b] of edges) {
    const line = lineThrough(latticePoint(Number(a.x), Number(a.y)), latticePoint(Number(b.x), Number(b.y)));
    if ((line.b === 0 && [0, width].includes(line.c * line.a)) || (line.a === 0 && [0, height].includes(line.c * line.b))) continue;
    const found: Span[] = byLine.get(lineKey(line)) ?? [];
    const [dx, dy] = [b.x - a.x, b.y - a.y];
    const stops = [a, b, ...edges.flatMap((other) => crossing([a, b], other))].sort(
      (p, r) => order(xOf(p), xOf(r)) || order(yOf(p), yOf(r)),
    );
    stops.slice(1).forEach((to, i) => {
      const from = stops[i]!;
      if (same(from, to)) return;
      const middle = middleOf([from, to]);
      const beside = (sign: bigint): P => ({
        x: middle.x * CLOSE - sign * dy * middle.w,
        y: middle.y * CLOSE + sign * dx * middle.w,
        w: middle.w * CLOSE,
      });
      if (cloth(beside(1n)) !== cloth(beside(-1n))) found.push([from, to]);
    });
    byLine.set(lineKey(line), found);
  }
  return [...byLine.values()].map(spanText).filter(Boolean).sort();
}

/** @returns where another edge meets the stretch a – b: its ends on it, or the crossing */
function crossing([a, b]: Span, [c, d]: Span): readonly P[] {
  const ends = [c, d].filter((p) => isOn(p, a, b));
  const [s, t] = [turning(a, b, c), turning(a, b, d)];
  if (s * t >= 0 || turning(c, d, a) * turning(c, d, b) >= 0) return ends;
  const cross = (u: P, v: P, p: P): bigint => (v.x - u.x) * (p.y - u.y) - (v.y - u.y) * (p.x - u.x);
  const [m, n] = [cross(a, b, c), cross(a, b, d)];
  const w = m - n;
  const sign = w < 0n ? -1n : 1n;
  return [{ x: sign * (m * d.x - n * c.x), y: sign * (m * d.y - n * c.y), w: sign * w }];
}

/** Half cells, quarters, rectangles and grid seams only: in doubles every crossing is exact, so that jsts can unite lines. */
const EVEN: Kinds = { cells: 6, strokes: 12, free: 0, seams: 0, whole: true };
const straight = drawings({ ...EVEN, whole: false, seams: 3 }).map(
  (drawing): Drawing => ({
    ...drawing,
    patches: drawing.patches.filter(({ points }) =>
      points.every(([x, y], i) => {
        const [u, v] = points[(i + 1) % points.length]!;
        return x === u || y === v || Math.abs(x - u) === Math.abs(y - v);
      }),
    ),
    seams: drawing.seams.map(([[x, y], [u, v]]) =>
      Math.abs(x - u) === Math.abs(y - v)
        ? [[x, y], [u, v]]
        : x === u
          ? [[x, y], [x, v]]
          : [[x, y], [u, y]],
    ),
  }),
);

/** @returns whether no slanted line carries edges of two patches: there doubles would leave slits between what jsts cuts off */
function linesApart({ patches }: Drawing): boolean {
  const carried = patches.flatMap(({ points }) => {
    const lines = points.map((p, i) => lineThrough(latticePoint(...p), latticePoint(...points[(i + 1) % points.length]!)));
    return [...new Set(lines.filter((l) => l.a !== 0 && l.b !== 0).map(lineKey))];
  });
  return new Set(carried).size === carried.length;
}

describe('where two cloths meet', () => {
  it.each([
    ['parts of cells and rectangles', drawings(EVEN), 60],
    ['slopes of every kind', drawings({ ...EVEN, free: 4, strokes: 2 }).filter(linesApart), 80],
  ] as const)('is as long in all as half of what jsts measures round every cloth, for %s', (_, pictures, runs) => {
    fc.assert(
      fc.property(pictures, (drawing) => {
        const round = cloths(drawing).reduce((sum, cloth) => sum + lengthOf(cloth), 0);
        expect(Math.abs(drawnLength(drawing) - (round - perimeter(drawing)) / 2)).toBeLessThanOrEqual(1e-9 * Math.max(round, 1));
      }),
      tries(runs),
    );
  });

  it('is just where the cloth on one side of an edge is another than on the other', () => {
    fc.assert(
      fc.property(drawings({ cells: 4, strokes: 4, free: 3, seams: 0, whole: true }), (drawing) => {
        const ours = boundaries(drawing)
          .map(({ drawn }) => spanText(drawn.map(({ from, to }) => [exactly(from), exactly(to)])))
          .filter(Boolean);
        expect(ours.sort()).toEqual(meetings(drawing));
      }),
      tries(40),
    );
  });

  it('and where a seam is asked for is as long as the union of both in jsts', () => {
    fc.assert(
      fc.property(straight, (drawing) => {
        const { width, height, seams } = drawing;
        const edge = lineString([[0, 0], [width, 0], [width, height], [0, height], [0, 0]]);
        const block = polygon([[0, 0], [width, 0], [width, height], [0, height]]);
        const rings = cloths(drawing).map(outlinesOf);
        const asked = seams.map(([p, r]) => lineString([p, r]));
        const all = [...rings, ...asked]
          .map((line) => difference(intersection(line, block), edge))
          .reduce(
            union,
            lineString([[0, 0], [width, 0]]),
          );
        expect(Math.abs(drawnLength(drawing) - (lengthOf(all) - width))).toBeLessThanOrEqual(1e-9 * perimeter(drawing));
      }),
      tries(80),
    );
  });
});

describe('the boundaries of a drawing', () => {
  const pictures = drawings({ ...EVERYTHING, free: 3, whole: true });

  it('are disjoint stretches in order, each on its own line, never on the edge of the block', () => {
    fc.assert(
      fc.property(pictures, (drawing) => {
        for (const [key, { line, drawn, between, locked }] of boundariesOf(patchworkOf(drawing))) {
          expect(lineKey(line)).toBe(key);
          expect(line.b === 0 ? [0, drawing.width] : line.a === 0 ? [0, drawing.height] : []).not.toContain(line.c);
          for (const list of [drawn, between, locked]) {
            list.forEach(({ from, to }, i) => {
              expect([side(line, from), side(line, to), compareAlong(from, to)]).toEqual([0, 0, -1]);
              if (i > 0) expect(compareAlong(list[i - 1]!.to, from)).toBeLessThanOrEqual(0);
            });
          }
          for (const stretch of between) expect(covers(drawn, stretch.from, stretch.to)).toBe(true);
          for (const { from, to } of locked) expect(within(between, from, to)).toEqual([]);
        }
      }),
      tries(100),
    );
  });

  it('are the same in whatever order patches that lie apart were painted', () => {
    const reordered = drawings({ ...EVERYTHING, free: 0, strokes: 0 }).chain((drawing) => {
      const cells = drawing.columns.slice(1).flatMap((x1, i) =>
        drawing.rows.slice(1).map((y1, j) => {
          const [x0, y0] = [drawing.columns[i]!, drawing.rows[j]!];
          return {
            fabric: (i * 7 + j * 3) % 4 > 1 ? 'fog' : 'buoy',
            points:
              (i + j) % 2
                ? [[x0, y0], [x1, y0], [x1, y1], [x0, y1]]
                : [[x0, y0], [x1, y0], [x1, y1]],
          };
        }),
      ) as unknown as Drawing['patches'];
      return fc.shuffledSubarray([...cells], { minLength: cells.length }).map(
        (patches) =>
          [
            { ...drawing, patches: cells },
            { ...drawing, patches },
          ] as const,
      );
    });
    fc.assert(
      fc.property(reordered, ([one, other]) => {
        expect(boundaries(other)).toEqual(boundaries(one));
      }),
      tries(50),
    );
  });

  it('name the cloth in front and behind', () => {
    const sheet = unpainted({ across: 2, down: 1, cell: [4, 4] });
    const [upright] = boundaries({
      ...sheet,
      patches: [
        {
          fabric: 'fog',
          points: [[4, 0], [8, 0], [8, 4], [4, 4]],
        },
      ],
    });
    // The front of 1·x + 0·y = 4 is where x is larger.
    expect(upright).toMatchObject({
      line: { a: 1, b: 0, c: 4 },
      drawn: [{ from: { x: 4, y: 0, w: 1 }, to: { x: 4, y: 4, w: 1 } }],
      between: [{ from: { x: 4, y: 0, w: 1 }, to: { x: 4, y: 4, w: 1 }, front: 'fog', back: 'oat' }],
      locked: [],
    });
  });
});

describe('stretches of one line', () => {
  const at = (x: number): Point => ({ x, y: 0, w: 1 });
  const stretch = fc.tuple(fc.nat(30), fc.integer({ min: 1, max: 8 })).map(([x, n]): Stretch => ({ from: at(x), to: at(x + n) }));

  it('merge to what a row of marks shows', () => {
    fc.assert(
      fc.property(fc.array(stretch, { maxLength: 8 }), fc.nat(38), fc.nat(38), (stretches, x, u) => {
        const marked = (k: number): boolean => stretches.some(({ from, to }) => from.x <= k && k < to.x);
        const union = merged(stretches);
        const shown = Array.from({ length: 40 }, (_, k) => union.filter(({ from, to }) => from.x <= k && k < to.x).length);
        expect(shown).toEqual(Array.from({ length: 40 }, (_, k) => (marked(k) ? 1 : 0)));
        const [low, high] = [Math.min(x, u), Math.max(x, u) + 1];
        const part = within(union, at(low), at(high));
        expect(part.reduce((sum, { from, to }) => sum + to.x - from.x, 0)).toBe(shown.slice(low, high).reduce((a, b) => a + b, 0));
        expect(covers(union, at(low), at(high))).toBe(shown.slice(low, high).every((n) => n === 1));
      }),
      tries(300),
    );
  });
});

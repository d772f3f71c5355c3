import { describe, expect, it } from 'vitest';
import type { Lattice } from '../../src/geometry/patchwork/drawing.ts';
import { needsTemplate, sameLength, shapeOf } from '../../src/geometry/shape.ts';
import { latticePoint } from '../../src/geometry/point.ts';
import { VIEWS } from './same-picture.ts';

/* What a ruler and rotary cutter can make: level rectangles, and right triangles cut from them (common practice). */

const TABLE: readonly (readonly [string, readonly Lattice[], string, boolean])[] = [
  [
    'a square',
    [[0, 0], [4, 0], [4, 4], [0, 4]],
    'level rectangle',
    false,
  ],
  [
    'a strip',
    [[0, 0], [9, 0], [9, 1], [0, 1]],
    'level rectangle',
    false,
  ],
  [
    'a square on point',
    [[4, 0], [8, 4], [4, 8], [0, 4]],
    'rectangle',
    false,
  ],
  [
    'a leaning rectangle',
    [[0, 6], [6, 9], [4, 13], [-2, 10]],
    'rectangle',
    false,
  ],
  [
    'half a square',
    [[0, 0], [4, 0], [0, 4]],
    'right triangle, isosceles, level',
    false,
  ],
  [
    'half a rectangle',
    [[0, 0], [9, 0], [0, 4]],
    'right triangle, level',
    false,
  ],
  [
    'a quarter of a square',
    [[0, 0], [8, 0], [4, 4]],
    'right triangle, isosceles, long side level',
    false,
  ],
  [
    'a leaning right triangle of unequal legs',
    [[0, 0], [10, 0], [2, 4]],
    'right triangle, long side level',
    true,
  ],
  [
    'a leaning right triangle of equal legs',
    [[0, 0], [3, 1], [2, 4]],
    'right triangle, isosceles',
    true,
  ],
  [
    'a peak',
    [[0, 8], [4, 0], [8, 8]],
    'other',
    true,
  ],
  [
    'nearly half a square',
    [[0, 0], [60_000, 1], [0, 60_000]],
    'other',
    true,
  ],
  [
    'nearly a rectangle',
    [[0, 0], [9, 0], [9, 5], [0, 4]],
    'other',
    true,
  ],
  [
    'a leaning parallelogram',
    [[0, 0], [4, 0], [6, 4], [2, 4]],
    'other',
    true,
  ],
  [
    'a square with a corner off',
    [[2, 0], [4, 0], [4, 4], [0, 4], [0, 2]],
    'other',
    true,
  ],
];

function said(points: readonly Lattice[]): string {
  const shape = shapeOf(points.map(([x, y]) => latticePoint(x, y)));
  if (shape.shape === 'other') return 'other';
  if (shape.shape === 'rectangle') return shape.level ? 'level rectangle' : 'rectangle';
  const { isosceles, level, longLevel } = shape;
  return ['right triangle', isosceles && 'isosceles', level && 'level', longLevel && 'long side level'].filter(Boolean).join(', ');
}

describe('a piece', () => {
  it.each(TABLE)('%s is cut as such from every corner, turned or mirrored', (_, outline, wanted, template) => {
    for (const { name, take } of VIEWS) {
      const mirrored = name.includes('mirrored') || name.includes('exchanged');
      const points = outline.map((p) => take(p, 16, 16));
      const clockwise = mirrored ? points.reverse() : points;
      clockwise.forEach((_corner, i) => {
        const rolled = [...clockwise.slice(i), ...clockwise.slice(0, i)];
        expect([name, said(rolled)]).toEqual([name, wanted]);
        expect(needsTemplate(rolled.map(([x, y]) => latticePoint(x, y)))).toBe(template);
      });
    }
  });

  it('is told exactly where its corners lie between the points of a fine lattice', () => {
    // 60,000 steps a side. The sides lie on −3809x + 12607y = 124753728 and 222579067, −12607x − 3809y = −358827344 and
    // −556252608: two pairs of parallels at a right angle, for −3809 · −12607 + 12607 · −3809 = 0.
    const leaning = [
      { x: 2024274687928, y: 1469771801096, w: 86722465 },
      { x: 3268744839552, y: 1845768216384, w: 86722465 },
      { x: 6164872962853, y: 4924820481541, w: 173444930 },
      { x: 735186531921, y: 834565530193, w: 34688986 },
    ];
    expect(shapeOf(leaning)).toEqual({ shape: 'rectangle', level: false });
  });

  it('says which corner is square', () => {
    const shape = shapeOf(
      [[0, 0], [8, 0], [4, 4]].map(([x, y]) => latticePoint(x!, y!)),
    );
    expect(shape).toMatchObject({ corner: 2 });
  });
});

describe('equal legs', () => {
  it('are told from legs that differ by less than a double can tell', () => {
    const n = 2 ** 52;
    const from = latticePoint(0, 0);
    expect(Math.hypot(n, 1)).toBe(n);
    expect(sameLength(from, latticePoint(n, 1), latticePoint(0, n))).toBe(false);
    expect(sameLength(from, latticePoint(n, 1), latticePoint(-1, n))).toBe(true);
    // 3, 4 and 5: a leg of five thirds along the edge and one aslant.
    expect(sameLength(from, { x: 5, y: 0, w: 3 }, { x: 3, y: 4, w: 3 })).toBe(true);
  });
});

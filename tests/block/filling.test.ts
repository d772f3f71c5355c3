import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Block } from '../../src/block/block.ts';
import { checkBlock } from '../../src/block/whole-check.ts';
import { areaAt, fill } from '../../src/block/filling.ts';
import { paint, type Stroke } from '../../src/block/painting.ts';
import { cell, cellsBetween, halfCell, quarterCell } from '../../src/block/patch-shapes.ts';
import { block, must, paintFabric, samplePoints, seen, SEED, unpainted } from './drawn.ts';

const SIDES = ['top', 'right', 'bottom', 'left'] as const;
const CORNERS = ['top left', 'top right', 'bottom right', 'bottom left'] as const;

/** Middles of the quarters of a cell, in cells. */
const MIDDLES = { top: [1 / 2, 1 / 6], right: [5 / 6, 1 / 2], bottom: [1 / 2, 5 / 6], left: [1 / 6, 1 / 2] } as const;

/** A block as a mesh of quarter cells: what each shows, and which quarters touch it along an edge. */
function mesh(drawn: Block): { readonly shows: ReadonlyMap<string, string>; readonly beside: (quarter: string) => readonly string[] } {
  const shows = new Map<string, string>();
  for (let x = 0; x < drawn.grid.columns; x++) {
    for (let y = 0; y < drawn.grid.rows; y++) {
      for (const side of SIDES) shows.set(`${x} ${y} ${side}`, seen(drawn, x + MIDDLES[side][0], y + MIDDLES[side][1]));
    }
  }
  const beside = (quarter: string): readonly string[] => {
    const [x, y, side] = quarter.split(' ') as [string, string, (typeof SIDES)[number]];
    const at = SIDES.indexOf(side);
    const [dx, dy] = [[0, -1], [1, 0], [0, 1], [-1, 0]][at] as [number, number];
    const over = `${Number(x) + dx} ${Number(y) + dy} ${SIDES[(at + 2) % 4]}`;
    return [`${x} ${y} ${SIDES[(at + 1) % 4]}`, `${x} ${y} ${SIDES[(at + 3) % 4]}`, over].filter((name) => shows.has(name));
  };
  return { shows, beside };
}

/** The quarters that hang together with one, in its fabric. */
function flood({ shows, beside }: ReturnType<typeof mesh>, from: string): ReadonlySet<string> {
  const reached = new Set([from]);
  for (const quarter of reached) {
    for (const next of beside(quarter)) if (shows.get(next) === shows.get(from)) reached.add(next);
  }
  return reached;
}

const quarterStroke: fc.Arbitrary<Stroke> = fc.tuple(fc.nat(3), fc.nat(3), fc.nat(8), fc.nat(3), fc.nat(3)).map(([x, y, kind, u, v]) =>
  kind < 4 ? quarterCell(x, y, SIDES[kind]!) : kind < 8 ? halfCell(x, y, CORNERS[kind - 4]!) : cellsBetween(x, y, u, v),
);

describe('filling', () => {
  it('paints what hangs together in one fabric, and nothing else', () => {
    const painted = fc.array(fc.tuple(paintFabric, quarterStroke), { maxLength: 25 });
    fc.assert(
      fc.property(painted, paintFabric, fc.nat(3), fc.nat(3), fc.constantFrom(...SIDES), (strokes, fabric, x, y, side) => {
        const before = strokes.reduce((now, [of, shape]) => must(paint(now, of, shape)), unpainted(4, 4));
        const [u, v] = MIDDLES[side];
        const after = must(fill(before, fabric, { x: Math.round(6 * (x + u)), y: Math.round(6 * (y + v)), w: 6 }));
        const pictured = mesh(before);
        const area = flood(pictured, `${x} ${y} ${side}`);
        const expected = new Map([...pictured.shows].map(([quarter, shown]) => [quarter, area.has(quarter) ? fabric : shown]));
        expect(mesh(after).shows).toEqual(expected);
        expect(checkBlock(after)).toBeNull();
      }),
      SEED,
    );
  });

  it('changes one fabric to the other and nothing else, whatever the slant of the outlines', () => {
    let filled = 0;
    fc.assert(
      fc.property(block, paintFabric, fc.nat(22), fc.nat(22), (before, fabric, i, j) => {
        const { columns, rows } = before.grid;
        const result = fill(before, fabric, { x: (101 * i + 13) * columns, y: (101 * j + 29) * rows, w: 2323 });
        if (!result.ok) {
          expect(result.problem.code).toMatch(/too-fine$/);
          return;
        }
        filled++;
        const [u, v] = [((101 * i + 13) * columns) / 2323, ((101 * j + 29) * rows) / 2323];
        const was = seen(before, u, v);
        expect(seen(result.value, u, v)).toBe(fabric);
        for (const [x, y] of samplePoints(before)) {
          const shown = seen(before, x, y);
          expect(shown === was ? [was, fabric] : [shown]).toContain(seen(result.value, x, y));
        }
      }),
      SEED,
    );
    expect(filled).toBeGreaterThan(150);
  });

  it('leaves what the area surrounds, and what that surrounds in turn', () => {
    const rings = [0, 1, 2].reduce(
      (now, i) => must(paint(now, i % 2 === 0 ? 'teal' : 'oat', cellsBetween(i, i, 6 - i, 6 - i))),
      unpainted(7, 7),
    );
    const filled = must(fill(rings, 'rust', { x: 3, y: 3, w: 2 }));
    expect([0.4, 1.4, 2.4, 3.4].map((at) => seen(filled, at, 3.4))).toEqual(['teal', 'rust', 'teal', 'teal']);
    const outer = must(fill(filled, 'oat', { x: 1, y: 1, w: 2 }));
    expect([0.4, 1.4, 2.4, 3.4].map((at) => seen(outer, at, 3.4))).toEqual(['oat', 'rust', 'teal', 'teal']);
  });

  it('keeps a surrounded patch whole', () => {
    const inner = { fabric: 'rust', points: cell(1, 1).points, whole: true };
    const drawn = unpainted(3, 3, { patches: [{ fabric: 'teal', points: cellsBetween(0, 0, 2, 2).points }, inner] });
    expect(must(fill(drawn, 'oat', { x: 1, y: 1, w: 2 })).patches).toContainEqual(inner);
  });

  it('adds nothing where the area has the fabric already', () => {
    const drawn = unpainted(3, 3);
    expect(must(fill(drawn, 'oat', { x: 1, y: 1, w: 2 }))).toBe(drawn);
    expect(fill(drawn, 'plum', { x: 1, y: 1, w: 2 })).toMatchObject({ problem: { code: 'unknown-fabric' } });
  });
});

describe('the area under the pointer', () => {
  it('joins patches of one fabric that share an edge, not those that share a corner', () => {
    const cells = [cell(0, 0), cell(1, 0), cell(2, 1)].reduce((now, shape) => must(paint(now, 'teal', shape)), unpainted(3, 3));
    const { fabric, region } = must(areaAt(cells, { x: 1, y: 1, w: 2 }));
    expect(fabric).toBe('teal');
    expect([...region.outer].sort()).toEqual([[0, 0], [0, 1], [2, 0], [2, 1]]);
    expect(region.holes).toEqual([]);
  });

  it('has the ground around a patch with that patch as its hole', () => {
    const { fabric, region, denominator } = must(areaAt(must(paint(unpainted(3, 3), 'teal', cell(1, 1))), { x: 1, y: 1, w: 5 }));
    expect({ fabric, denominator, holes: region.holes.length, corners: region.outer.length }).toEqual({
      fabric: 'oat', denominator: 1, holes: 1, corners: 4,
    });
  });

  it('refines the lattice where outlines cross between its points', () => {
    const crossing = unpainted(3, 3, {
      patches: [
        { fabric: 'teal', points: [[0, 0], [3, 2], [3, 3], [0, 1]] },
        { fabric: 'rust', points: [[0, 3], [1, 3], [3, 0], [2, 0]] },
      ],
    });
    const { fabric, denominator } = must(areaAt(crossing, { x: 1, y: 1, w: 2 }));
    expect(fabric).toBe('teal');
    expect(denominator).toBe(13);
  });
});

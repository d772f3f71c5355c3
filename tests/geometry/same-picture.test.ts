import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Drawing, Lattice } from '../../src/geometry/patchwork/drawing.ts';
import type { Piecing } from '../../src/geometry/piecing/assembly.ts';
import type { Way } from '../../src/geometry/piecing/way.ts';
import { waysToSew } from '../../src/geometry/piecing/ways.ts';
import { apart, drawings, EVERYTHING, rectangles, tiled, tries, unpainted, whirls, type Grid } from './drawings.ts';
import { counts, everything, seenIn, VIEWS } from './same-picture.ts';

/** The counts of all ways in the order of their names; where the view lays the block on its side, rows are columns. */
function byName(ways: readonly Piecing[], swaps: boolean): readonly unknown[] {
  const turned: Partial<Record<Way, Way>> = swaps ? { rows: 'columns', columns: 'rows' } : {};
  return ways
    .map((piecing) => ({ ...piecing, way: turned[piecing.way] ?? piecing.way }))
    .sort((a, b) => (a.way < b.way ? -1 : 1))
    .map(counts);
}

describe('turning or mirroring a drawing', () => {
  it.each([
    ['random drawings', drawings({ ...EVERYTHING, cells: 5, strokes: 8 }), 20],
    ['blocks of turned tiles', tiled, 4],
    ['four arms that turn round a centre', whirls, 8],
    ['drawings with whole patches', drawings({ ...EVERYTHING, cells: 5, strokes: 8, seams: 0, whole: true }), 20],
  ] as const)('changes no figure and no unit, kind or count: %s', (_, pictures, runs) => {
    fc.assert(
      fc.property(pictures, (drawing) => {
        const asDrawn = waysToSew(drawing);
        for (const view of VIEWS.slice(1)) {
          const seen = waysToSew(seenIn(view, drawing));
          expect([view.name, byName(seen, false)]).toEqual([view.name, byName(asDrawn, view.swaps)]);
        }
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

  it('over strokes that no longer show', () => {
    fc.assert(
      fc.property(drawings(EVERYTHING), drawings(EVERYTHING), (drawing, before) => {
        const { width, height, ground } = drawing;
        const within = before.patches.filter(({ points }) => points.every(([x, y]) => x <= width && y <= height));
        const covered = { fabric: ground, points: [[0, 0], [width, 0], [width, height], [0, height]] as const };
        const over: Drawing = { ...drawing, patches: [...within, covered, ...drawing.patches] };
        expect(waysToSew(over).map(everything)).toEqual(waysToSew(drawing).map(everything));
      }),
      tries(40),
    );
  });

  it('with a stroke in the fabric of the ground on the bare ground', () => {
    const strip: Drawing = {
      ...unpainted({ across: 6, down: 1, cell: [4, 4] }),
      patches: [{ fabric: 'fog', points: [[0, 0], [4, 0], [4, 4], [0, 4]] }],
    };
    // The stroke has a level edge where the peak has its point.
    const peak: Drawing = {
      ...unpainted({ across: 1, down: 3, cell: [12, 8] }),
      patches: [{ fabric: 'fog', points: [[0, 0], [12, 0], [6, 4]] }],
    };
    const strokes = [
      [strip, [[0, 2], [0, 0], [2, 2]]],
      [peak, [[4, 0], [4, 4], [0, 4]]],
    ] as const;
    for (const [drawing, points] of strokes) {
      const over = { ...drawing, patches: [{ fabric: drawing.ground, points }, ...drawing.patches] };
      expect(waysToSew(over).map(everything)).toEqual(waysToSew(drawing).map(everything));
    }
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

/** @returns the same drawing on a lattice k times as fine */
function finer(drawing: Drawing, k: number): Drawing {
  const at = ([x, y]: Lattice): Lattice => [k * x, k * y];
  return {
    ...drawing,
    width: k * drawing.width,
    height: k * drawing.height,
    columns: drawing.columns.map((v) => k * v),
    rows: drawing.rows.map((v) => k * v),
    patches: drawing.patches.map((patch) => ({ ...patch, points: patch.points.map(at) })),
    seams: drawing.seams.map(([p, r]) => [at(p), at(r)] as const),
  };
}

describe('a finer lattice changes no figure and no unit, kind or count', () => {
  it('twice as fine', () => {
    fc.assert(
      fc.property(drawings(EVERYTHING), (drawing) => {
        expect(waysToSew(finer(drawing, 2)).map(counts)).toEqual(waysToSew(drawing).map(counts));
      }),
      tries(40),
    );
  });

  it('two to five times as fine, where seams cross between the lattice points', () => {
    const drawing: Drawing = {
      ...unpainted({ across: 4, down: 6, cell: [4, 4] }),
      patches: [
        { fabric: 'rope', points: [[8, 8], [0, 8], [4, 0]] },
        { fabric: 'oat', points: [[4, 0], [4, 4], [0, 4]] },
        { fabric: 'oat', points: [[8, 4], [8, 0], [0, 2]] },
        { fabric: 'rope', points: [[8, 6], [2, 18], [8, 8]] },
      ],
    };
    const asDrawn = waysToSew(drawing).map(counts);
    for (const k of [2, 3, 4, 5]) expect([k, waysToSew(finer(drawing, k)).map(counts)]).toEqual([k, asDrawn]);
  });
});

/** @returns the same drawing in fabrics of other names */
const renamed = (drawing: Drawing, name: (fabric: string) => string): Drawing => ({
  ...drawing,
  ground: name(drawing.ground),
  patches: drawing.patches.map((patch) => ({ ...patch, fabric: name(patch.fabric) })),
});

describe('what fabrics are called changes no figure and no unit, kind or count', () => {
  const CALLED = ['oat', 'fog', 'rope', 'buoy', 'lamp', 'slate'];

  it('in random drawings, with names exchanged', () => {
    const names = fc.shuffledSubarray(CALLED, { minLength: CALLED.length });
    fc.assert(
      fc.property(drawings(EVERYTHING), names, (drawing, others) => {
        const other = renamed(drawing, (fabric) => others[CALLED.indexOf(fabric)]!);
        expect(waysToSew(other).map(counts)).toEqual(waysToSew(drawing).map(counts));
      }),
      tries(40),
    );
  });

  it('nor where a square on point lies beside a seam that is asked for', () => {
    const drawing: Drawing = {
      ...unpainted({ across: 6, down: 4, cell: [4, 4] }),
      patches: [{ fabric: 'fog', points: [[2, 4], [4, 6], [2, 8], [0, 6]] }],
      seams: [[[8, 8], [16, 4]]],
    };
    const other = renamed(drawing, (fabric) => (fabric === 'fog' ? 'b' : 'zz'));
    expect(waysToSew(other).map(counts)).toEqual(waysToSew(drawing).map(counts));
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { convexFrom } from '../../src/geometry/convex.ts';
import type { Drawing } from '../../src/geometry/patchwork/drawing.ts';
import { labelsIn, patchworkOf, type Atom } from '../../src/geometry/patchwork/patchwork.ts';
import type { Point } from '../../src/geometry/point.ts';
import { drawings, EVERYTHING, tries, unpainted } from './drawings.ts';
import { areaOf as exactArea, exactly, hullOf, isConvex, middleOf, printed, q, shared, total, type P } from './exact.ts';
import { areaOf, difference, polygon, union } from './oracle.ts';
import { patchesIn, topPatch } from './sewn.ts';

const pictures = drawings({ ...EVERYTHING, free: 4 });
const atomsOf = (drawing: Drawing): readonly Atom[] => patchworkOf(drawing).panes.flat();
const outlineOf = ({ shape }: Atom): readonly P[] => shape.points.map(exactly);

/** @returns what jsts finds to show of each patch, the ground first: the patch less the union of all painted after it */
function shownAreas({ width, height, patches }: Drawing): readonly number[] {
  const painted = [
    polygon([[0, 0], [width, 0], [width, height], [0, height]]),
    ...patches.map(({ points }) => polygon(points)),
  ];
  let over = painted.at(-1)!;
  const areas = [areaOf(over)];
  for (const patch of painted.slice(0, -1).reverse()) {
    areas.unshift(areaOf(difference(patch, over)));
    over = union(patch, over);
  }
  return areas;
}

describe('patches laid one over another', () => {
  it('show as much of each patch and of each fabric as jsts finds', () => {
    fc.assert(
      fc.property(pictures, (drawing) => {
        const atoms = atomsOf(drawing);
        const theirs = shownAreas(drawing);
        const block = drawing.width * drawing.height;
        const ours = theirs.map((_, i) => {
          const { n, d } = total(atoms.filter((atom) => atom.label.patch === i - 1).map((atom) => exactArea(outlineOf(atom))));
          return Number(n) / Number(d);
        });
        ours.forEach((area, i) => expect(Math.abs(area - theirs[i]!)).toBeLessThanOrEqual(1e-9 * block));
        const fabrics = ['', ...drawing.patches.map((patch) => patch.fabric)].with(0, drawing.ground);
        for (const fabric of new Set(fabrics)) {
          const of = (areas: readonly number[]): number => areas.reduce((sum, area, i) => (fabrics[i] === fabric ? sum + area : sum), 0);
          expect(Math.abs(of(ours) - of(theirs))).toBeLessThanOrEqual(1e-9 * block);
        }
      }),
      tries(150),
    );
  });

  it('cover the block once: convex atoms, apart from each other, whose areas are its area to the last digit', () => {
    fc.assert(
      fc.property(pictures, (drawing) => {
        const { panes } = patchworkOf(drawing);
        const outlines = panes.map((pane) => pane.map(outlineOf));
        expect(outlines.flat().every(isConvex)).toBe(true);
        expect(printed(total(outlines.flat().map(exactArea)))).toBe(printed(q(drawing.width * drawing.height)));
        for (const pane of outlines) pane.forEach((one, i) => pane.slice(0, i).forEach((other) => expect(shared(one, other)).toEqual([])));
      }),
      tries(100),
    );
  });

  it('show at the middle of every atom the patch that was painted last there', () => {
    fc.assert(
      fc.property(pictures, (drawing) => {
        for (const atom of atomsOf(drawing)) {
          const shows = [...patchesIn(drawing, outlineOf(atom))];
          expect(shows).toEqual([atom.label.patch]);
          const patch = drawing.patches[atom.label.patch];
          expect(atom.label.fabric).toBe(patch?.fabric ?? drawing.ground);
          expect(atom.label.whole).toBe(patch?.whole ? atom.label.patch : -1);
        }
      }),
      tries(100),
    );
  });

  it('show in any convex region just the patches that have area there', () => {
    const corner = fc.tuple(fc.nat(24), fc.nat(24));
    fc.assert(
      fc.property(pictures, fc.array(corner, { minLength: 3, maxLength: 6 }), (drawing, corners) => {
        const inBlock = corners.map(([x, y]) => exactly([Math.min(x, drawing.width), Math.min(y, drawing.height)]));
        const hull = hullOf(inBlock);
        fc.pre(hull.length > 2);
        const region = convexFrom(hull.map((p): Point => ({ x: Number(p.x), y: Number(p.y), w: 1 })));
        const ours = labelsIn(patchworkOf(drawing), region)
          .map((label) => label.patch)
          .sort((a, b) => a - b);
        expect(ours).toEqual([...patchesIn(drawing, hull)].sort((a, b) => a - b));
      }),
      tries(150),
    );
  });
});

describe('a patch', () => {
  const sheet = unpainted({ across: 3, down: 3, cell: [4, 4] });

  it('painted last lies on top, whatever its outline', () => {
    const star = [[0, 0], [6, 4], [12, 0], [8, 6], [12, 12], [6, 8], [0, 12], [4, 6]] as const;
    const drawing: Drawing = {
      ...sheet,
      patches: [
        { fabric: 'fog', points: star },
        {
          fabric: 'buoy',
          points: [[4, 4], [8, 4], [8, 8], [4, 8]],
        },
      ],
    };
    expect(topPatch(drawing, exactly([6, 5]))).toBe(1);
    const areas = total(
      atomsOf(drawing)
        .filter((atom) => atom.label.fabric === 'fog')
        .map((atom) => exactArea(outlineOf(atom))),
    );
    // The star's 48 square steps (by Pick's theorem and by shoelace) less the eight-sided part of it under the square.
    const covered = total(
      atomsOf({ ...sheet, patches: [{ fabric: 'buoy', points: star }] })
        .filter((atom) => atom.label.patch === 0)
        .map((atom) =>
          exactArea(
            shared(
              outlineOf(atom),
              [[4, 4], [8, 4], [8, 8], [4, 8]].map((p) => exactly(p as [number, number])),
            ),
          ),
        ),
    );
    expect(printed(areas)).toBe(printed(q(48n * covered.d - covered.n, covered.d)));
  });

  it('off the lattice points makes corners that are fractions, kept exactly', () => {
    const drawing: Drawing = {
      ...sheet,
      patches: [
        {
          fabric: 'fog',
          points: [[0, 0], [12, 6], [0, 10]],
        },
        {
          fabric: 'rope',
          points: [[0, 12], [2, 0], [10, 12]],
        },
      ],
    };
    const corners = atomsOf(drawing).flatMap((atom) => atom.shape.points);
    expect(corners.some((p) => p.w > 1)).toBe(true);
    expect(printed(total(atomsOf(drawing).map((atom) => exactArea(outlineOf(atom)))))).toBe('144');
    const [middle] = atomsOf(drawing).map((atom) => middleOf(outlineOf(atom)));
    expect(topPatch(drawing, middle!)).toBe(atomsOf(drawing)[0]!.label.patch);
  });
});

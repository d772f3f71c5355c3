import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { brought, flipped, rotated, settled, shifted, taken, type Arrangement } from '../../src/block/arranging.ts';
import type { Block } from '../../src/block/block.ts';
import { checkBlock } from '../../src/block/whole-check.ts';
import { toDrawing } from '../../src/block/drawing.ts';
import { begin, begun, commit, undo } from '../../src/block/history.ts';
import { lay } from '../../src/block/laying.ts';
import { coarsened, fitted, liesOn, mirrored, moved, refined, turned, type Lifted } from '../../src/block/lifted.ts';
import { doubleArea } from '../../src/block/outline.ts';
import { paint } from '../../src/block/painting.ts';
import { cell, cellsBetween, halfCell } from '../../src/block/patch-shapes.ts';
import { patchAt } from '../../src/block/patches.ts';
import { scrapOf, takeOver } from '../../src/block/scraps.ts';
import { all, lift, recolour, takeUp, within, type Selection } from '../../src/block/selecting.ts';
import { formatBlock, parseBlock } from '../../src/files/block-file.ts';
import { patchworkOf } from '../../src/geometry/patchwork/patchwork.ts';
import { areaOf, exactly, order, q, total, type Q } from '../geometry/exact.ts';
import { block, covers, FABRICS, must, paintFabric, samplePoints, seen, SEED, unpainted } from './drawn.ts';

const few = { ...SEED, numRuns: 120 };

/** A random block of which some patches are selected. */
const blockAndSome = block
  .filter(({ patches }) => patches.length > 0)
  .chain((drawn) => fc.tuple(fc.constant(drawn), fc.subarray(drawn.patches.map((_, i) => i), { minLength: 1 })))
  .filter(([drawn, some]) => {
    const held = lift(drawn, some);
    return held.ok && lay(takeUp(drawn, some), held.value).ok;
  });

/** The picture, as an eye of the tests' own sees it at many places. */
const picture = (drawn: Block): readonly string[] => samplePoints(drawn).map(([x, y]) => seen(drawn, x, y));

/** The area of patches in the hand, in halves of square grid units. */
const handArea = ({ patches, denominator }: Lifted): Q =>
  total(patches.map(({ points }) => q(doubleArea(points), denominator * denominator)));

/** What an eye of the tests' own finds in the hand at a place in grid units. */
const inHand = ({ patches, denominator }: Lifted, x: number, y: number): string | undefined =>
  patches.find(({ points }) => covers(points, denominator, x, y))?.fabric;

describe('patches taken in the hand', () => {
  it('are what is seen of them: where they are, the picture shows them, and nowhere else', () => {
    fc.assert(
      fc.property(blockAndSome, ([drawn, some]) => {
        const held = must(lift(drawn, some));
        for (const [x, y] of samplePoints(drawn)) {
          const top = drawn.patches.findLastIndex(({ points }) => covers(points, drawn.denominator, x, y));
          expect(inHand(held, x, y)).toBe(some.includes(top) ? drawn.patches[top]!.fabric : undefined);
        }
      }),
      SEED,
    );
  });

  it('leave what lies under them, and the rest as it was', () => {
    fc.assert(
      fc.property(blockAndSome, ([drawn, some]) => {
        const left = takeUp(drawn, some);
        const rest = drawn.patches.filter((_, i) => !some.includes(i));
        for (const [x, y] of samplePoints(drawn)) {
          expect(seen(left, x, y)).toBe(rest.findLast(({ points }) => covers(points, drawn.denominator, x, y))?.fabric ?? drawn.ground);
        }
      }),
      SEED,
    );
  });

  it('laid where they were taken make the same picture again', () => {
    fc.assert(
      fc.property(blockAndSome, ([drawn, some]) => {
        const again = must(lay(takeUp(drawn, some), must(lift(drawn, some))));
        expect(picture(again.block)).toEqual(picture(drawn));
        expect(again.cut).toBe(false);
        expect(checkBlock(again.block)).toBeNull();
      }),
      SEED,
    );
  });

  it('come in parts that are outlines by themselves where others lie inside them', () => {
    const ring = must(paint(must(paint(unpainted(3, 3), 'teal', cellsBetween(0, 0, 2, 2))), 'rust', cell(1, 1)));
    const held = must(lift(ring, [0]));
    expect(handArea(held)).toEqual(q(16));
    expect(held.patches.length).toBeGreaterThan(1);
    const diamond = { denominator: 2, points: [[3, 1], [5, 3], [3, 5], [1, 3]] } as const;
    const pierced = must(paint(must(paint(unpainted(3, 3), 'teal', cellsBetween(0, 0, 2, 2))), 'rust', diamond));
    expect(handArea(must(lift(pierced, [0])))).toEqual(q(14));
  });
});

describe('patches moved', () => {
  it('over ground and back make the same picture', () => {
    const shift = fc.nat(12);
    fc.assert(
      fc.property(block, shift, shift, fc.constantFrom(2, 3), (small, dx, dy, denominator) => {
        const [columns, rows] = [small.grid.columns + 6, small.grid.rows + 6];
        const drawn = { ...small, grid: { columns, rows }, finished: unpainted(1, 1).finished };
        // Nothing lies hidden, so that nothing but ground is left.
        fc.pre(drawn.patches.length > 0 && all(drawn).length === drawn.patches.length && lift(drawn, all(drawn)).ok);
        const shift = { dx, dy, denominator };
        const laid = settled(shifted(must(taken(drawn, all(drawn))), shift));
        fc.pre(laid.ok);
        const there = must(laid);
        const back = settled(shifted(must(taken(there.block, all(there.block))), { dx: -dx, dy: -dy, denominator }));
        fc.pre(back.ok);
        expect(picture(must(back).block)).toEqual(picture(drawn));
      }),
      { ...few, numRuns: 300 },
    );
  });

  it('show where they were laid, over what is there; elsewhere shows what lay under and beside them', () => {
    const act = fc.tuple(blockAndSome, fc.integer({ min: -8, max: 8 }), fc.integer({ min: -8, max: 8 }), fc.constantFrom(1, 2));
    fc.assert(
      fc.property(act, ([[drawn, some], dx, dy, denominator]) => {
        const held = moved(must(lift(drawn, some)), { dx, dy, denominator });
        const under = takeUp(drawn, some);
        const laid = lay(under, held);
        fc.pre(laid.ok);
        expect(checkBlock(must(laid).block)).toBeNull();
        for (const [x, y] of samplePoints(drawn)) expect(seen(must(laid).block, x, y)).toBe(inHand(held, x, y) ?? seen(under, x, y));
      }),
      few,
    );
  });

  it('past others do them no harm, and are the very same block when they are back', () => {
    const row = must(paint(must(paint(unpainted(4, 1), 'teal', cell(0, 0))), 'rust', cellsBetween(1, 0, 3, 0)));
    const start = must(taken(row, [0]));
    const right = shifted(start, { dx: 1, dy: 0, denominator: 1 });
    const further = shifted(right, { dx: 2, dy: 0, denominator: 1 });
    expect(must(settled(right)).block.patches.map(({ fabric }) => fabric)).toEqual(['rust', 'teal']);
    const picked = [0.5, 1.5, 2.5, 3.5].map((x) => seen(must(settled(further)).block, x, 0.5));
    expect(picked).toEqual(['oat', 'rust', 'rust', 'teal']);
    expect(must(settled(shifted(further, { dx: -3, dy: 0, denominator: 1 }))).block).toBe(row);
  });

  it('are cut off at the edge of the block, exactly', () => {
    const drawn = must(paint(unpainted(3, 3), 'teal', { denominator: 1, points: [[0, 0], [3, 1], [0, 2]] }));
    const cut = must(settled(shifted(must(taken(drawn, [0])), { dx: 1, dy: 0, denominator: 1 })));
    expect(cut.cut).toBe(true);
    expect(checkBlock(cut.block)).toBeNull();
    // A triangle 3 wide and 2 high loses its tip of a third: 2 · (3 − 1/3) halves of square units are left.
    const held = must(lift(cut.block, [0]));
    expect(handArea(held)).toEqual(q(16, 3));
    const gone = shifted(must(taken(drawn, [0])), { dx: 3, dy: 0, denominator: 1 });
    expect(settled(gone)).toMatchObject({ problem: { code: 'off-the-grid' } });
  });
});

describe('patches turned and mirrored', () => {
  const same = (a: Lifted, b: Lifted): void => {
    expect(a.denominator).toBe(b.denominator);
    expect(a.patches).toEqual(b.patches);
    expect(a.seams).toEqual(b.seams);
  };

  it('are the same after four quarter turns, either way round, and after two mirrors', () => {
    fc.assert(
      fc.property(blockAndSome, fc.constantFrom('right' as const, 'left' as const), ([drawn, some], way) => {
        const held = must(lift(drawn, some));
        let now = held;
        for (let i = 0; i < 4; i++) {
          now = turned(now, drawn.grid, way);
          expect(handArea(now)).toEqual(handArea(held));
        }
        same(now, held);
        same(turned(turned(held, drawn.grid, 'right'), drawn.grid, 'left'), held);
        for (const exchange of ['left and right', 'top and bottom'] as const) {
          same(coarsened(mirrored(mirrored(held, exchange), exchange)), held);
          same(coarsened(mirrored(mirrored(turned(held, drawn.grid), exchange), exchange)), turned(held, drawn.grid));
        }
      }),
      SEED,
    );
  });

  it('lie on lines of the grid where they lay on them before', () => {
    const size = fc.tuple(fc.nat(5), fc.nat(5), fc.integer({ min: 1, max: 6 }), fc.integer({ min: 1, max: 6 }), fc.constantFrom(1, 2));
    fc.assert(
      fc.property(size, ([x, y, w, h, denominator]) => {
        const points = [[x, y], [x + w, y], [x + w, y + h], [x, y + h]] as const;
        const held: Lifted = { denominator, patches: [{ fabric: 'teal', points }], seams: [] };
        const after = turned(held, { columns: 12, rows: 12 });
        // A box on lines is on lines, and one on half lines is on half lines at the coarsest.
        const lattice = [x, y, w, h].every((steps) => steps % denominator === 0) ? 1 : 2;
        expect(lattice % after.denominator).toBe(0);
      }),
      SEED,
    );
  });

  it('stay on the block at its edge, and still come back with the fourth turn', () => {
    const drawn = must(paint(unpainted(4, 4), 'teal', cellsBetween(0, 0, 0, 2)));
    let now: Arrangement = must(taken(drawn, [0]));
    for (let i = 0; i < 3; i++) {
      now = rotated(now, 'right');
      expect(liesOn(now.place, drawn.grid)).toBe(true);
      expect(must(settled(now)).cut).toBe(false);
    }
    expect(must(settled(rotated(now, 'right'))).block).toBe(drawn);
    expect(must(settled(flipped(flipped(must(taken(drawn, [0])), 'left and right'), 'left and right'))).block).toBe(drawn);
  });
});

describe('a selection', () => {
  const two = must(paint(must(paint(unpainted(4, 4), 'teal', cellsBetween(0, 0, 1, 1))), 'rust', halfCell(1, 1, 'bottom right')));

  it('by a frame holds the patches of which all that is seen lies inside it', () => {
    expect(within(two, [-1, -1], [2, 2])).toEqual([0, 1]);
    expect(within(two, [2.1, 2.1], [0.9, 0.9])).toEqual([1]);
    expect(within(two, [0.1, 0], [1.9, 2])).toEqual([]);
    const strip = must(paint(unpainted(4, 4), 'teal', cellsBetween(0, 0, 2, 0)));
    const over = must(paint(strip, 'rust', cellsBetween(0, 0, 1, 0)));
    expect(within(over, [1.9, 0], [3, 1])).toEqual([over.patches.findIndex(({ fabric }) => fabric === 'teal')]);
  });

  it('of everything, or of one fabric, leaves out what is wholly covered', () => {
    const hidden = unpainted(2, 2, {
      patches: [{ fabric: 'teal', points: [[0, 0], [1, 0], [0, 1]] }, { fabric: 'rust', points: [[0, 0], [1, 0], [1, 1], [0, 1]] }],
    });
    expect(all(hidden)).toEqual([1]);
    expect(all(hidden, 'teal')).toEqual([]);
    expect(all(two, 'teal')).toEqual([0]);
  });

  it('of everything holds what is seen anywhere on a full grid of 64 by 64', () => {
    const patches = Array.from({ length: 4096 }, (_, i) => {
      const [x, y] = [i % 64, Math.floor(i / 64)];
      return { fabric: i % 3 === 0 ? 'teal' : 'rust', points: [[x, y], [x + 1, y], [x + 1, y + 1], [x, y + 1]] as const };
    });
    const full = unpainted(64, 64, { patches });
    expect(all(full)).toHaveLength(4096);
    const there = must(settled(shifted(must(taken(full, all(full))), { dx: 1, dy: 1, denominator: 2 })));
    expect(there.cut).toBe(true);
    expect(there.patches).toHaveLength(4096);
  });

  it('takes another fabric, and nothing else does', () => {
    fc.assert(
      fc.property(blockAndSome, paintFabric, ([drawn, some], fabric) => {
        const after = must(recolour(drawn, some, fabric));
        for (const [x, y] of samplePoints(drawn)) {
          const top = drawn.patches.findLastIndex(({ points }) => covers(points, drawn.denominator, x, y));
          expect(seen(after, x, y)).toBe(some.includes(top) ? fabric : seen(drawn, x, y));
        }
      }),
      few,
    );
    expect(recolour(two, [0], 'plum')).toMatchObject({ problem: { code: 'unknown-fabric' } });
  });
});

describe('what is asked of the sewing', () => {
  const seamed = unpainted(4, 4, {
    patches: [
      { fabric: 'teal', points: [[0, 0], [2, 0], [2, 2], [0, 2]], whole: true },
      { fabric: 'rust', points: [[2, 0], [4, 0], [4, 2], [2, 2]] },
    ],
    seams: [[[1, 0], [1, 2]], [[0, 0], [0, 2]], [[1, 1], [3, 1]], [[0, 1], [0, 4]]],
  });

  it('goes with the patches where it lies inside them, and only there', () => {
    const held = must(lift(seamed, [0]));
    expect(held.seams).toEqual([[[1, 0], [1, 2]]]);
    expect(held.patches[0]!.whole).toBe(true);
    // With both patches, the seam across the two goes too.
    expect(must(lift(seamed, [0, 1])).seams).toEqual([[[1, 0], [1, 2]], [[1, 1], [3, 1]]]);
    const after = must(settled(shifted(must(taken(seamed, [0])), { dx: 0, dy: 2, denominator: 1 }))).block;
    expect(after.seams).toEqual([...seamed.seams.slice(1), [[1, 2], [1, 4]]]);
    expect(after.patches.find(({ whole }) => whole)?.points).toEqual([[0, 2], [2, 2], [2, 4], [0, 4]]);
    expect(takeUp(seamed, [0]).seams).toEqual(seamed.seams.slice(1));
  });
});

describe('a scrap', () => {
  it('written as a block file and read again is laid as the same picture', () => {
    fc.assert(
      fc.property(blockAndSome, ([drawn, some]) => {
        const scrap = must(parseBlock(formatBlock(scrapOf(must(lift(drawn, some)), drawn))));
        const { block: same, lifted, added } = must(takeOver(takeUp(drawn, some), scrap));
        expect(added).toEqual([]);
        expect(picture(must(lay(same, lifted)).block)).toEqual(picture(drawn));
      }),
      few,
    );
  });

  it('finds its fabrics by id, then by name and colour, and brings along the others', () => {
    const scrap = unpainted(2, 1, {
      fabrics: [...FABRICS, { id: 'f4', name: 'Buoy', color: '#d2691e' }, { id: 'f5', name: 'Kelp', color: '#446644' }],
      patches: [
        { fabric: 'teal', points: [[0, 0], [1, 0], [0, 1]] },
        { fabric: 'f4', points: [[1, 0], [2, 0], [2, 1]] },
        { fabric: 'f5', points: [[1, 0], [2, 1], [1, 1]] },
      ],
    });
    const other = unpainted(3, 3, {
      fabrics: [
        FABRICS[0], { id: 'teal', name: 'Teal', color: '#006666' },
        { id: 'x', name: 'Buoy', color: '#d2691e' }, { id: 'f5', name: 'Sand', color: '#ddccaa' },
      ],
    });
    const taken = must(takeOver(other, scrap));
    expect(taken.lifted.patches.map(({ fabric }) => fabric)).toEqual(['teal', 'x', 'fabric-5']);
    expect(taken.added).toEqual(['Kelp']);
    expect(taken.block.fabrics.at(-1)).toEqual({ id: 'fabric-5', name: 'Kelp', color: '#446644' });
    expect(checkBlock(must(settled(brought(taken.block, taken.lifted))).block)).toBeNull();
  });

  it('from a wider block comes to lie on a narrower one where it fits', () => {
    const wide = must(lift(must(paint(unpainted(8, 8), 'teal', cell(7, 7))), [0]));
    expect(fitted(wide, { columns: 3, rows: 3 }).patches[0]!.points).toEqual([[2, 2], [3, 2], [3, 3], [2, 3]]);
    expect(refined(wide, 2).patches[0]!.points[0]).toEqual([14, 14]);
  });
});

describe('a thousand things done with selections', () => {
  /** Every area of a block, by exact arithmetic of the tests' own on the partition that the piecing starts from. */
  const areas = (drawn: Block): { readonly whole: Q; readonly sum: Q } => {
    const { drawing } = must(toDrawing(drawn));
    const atoms = patchworkOf(drawing).panes.flat();
    return { whole: q(drawing.width * drawing.height), sum: total(atoms.map(({ shape }) => areaOf(shape.points.map(exactly)))) };
  };

  it('lose no area and leave no gap, and each can be undone', () => {
    let state = 20261125;
    const random = (n: number): number => {
      state = (state * 1103515245 + 12345) % 2147483648;
      return Math.floor((state / 2147483648) * n);
    };
    const strips = [cellsBetween(1, 2, 3, 2), cellsBetween(2, 3, 2, 5)];
    const shapes = [cell(0, 0), halfCell(1, 1, 'top left'), ...strips, halfCell(4, 4, 'bottom right')];
    const fresh = (): Block => shapes.reduce((now, shape, i) => must(paint(now, FABRICS[1 + (i % 2)]!.id, shape)), unpainted(6, 6));
    let now = fresh();
    let scrap: Lifted | null = null;
    let done = 0;
    for (let act = 0; act < 1000; act++) {
      const patches = all(now);
      const chosen: Selection = random(3) === 0 ? patches : patches.filter(() => random(3) === 0);
      if (chosen.length === 0 || now.patches.length > 60) {
        now = fresh();
        continue;
      }
      const start = must(taken(now, chosen));
      const shift = { dx: random(7) - 3, dy: random(7) - 3, denominator: 2 };
      const made = [
        () => settled(shifted(start, shift)),
        () => settled(rotated(start, random(2) === 0 ? 'right' : 'left')),
        () => settled(flipped(start, random(2) === 0 ? 'left and right' : 'top and bottom')),
        () => settled(shifted(brought(now, scrap ?? start.lifted), shift)),
        () => ({ ok: true as const, value: { block: takeUp(now, chosen), patches: [], cut: false } }),
        () => recolourLaid(now, chosen, FABRICS[random(3)]!.id),
      ][random(6)]!();
      if (!made.ok) {
        expect(made.problem.code).toBe('off-the-grid');
        continue;
      }
      if (random(4) === 0) scrap = start.lifted;
      const { block: after, patches: laid, cut } = made.value;
      expect(checkBlock(after)).toBeNull();
      const area = areas(after);
      expect(order(area.sum, area.whole)).toBe(0);
      if (!cut && laid.length === start.lifted.patches.length && laid.every((patch) => after.patches.includes(patch))) {
        // What was laid is seen as a whole.
        const again = must(lift(after, laid.map((patch) => after.patches.indexOf(patch))));
        const whole = total(laid.map(({ points }) => q(doubleArea(points), after.denominator ** 2)));
        expect(order(handArea(again), whole)).toBe(0);
      }
      const work = commit(begun(now), begin(now, 'arrange'), after);
      if (work.history.done.length > 0) expect(undo(work).block).toEqual(now);
      now = after;
      done++;
    }
    expect(done).toBeGreaterThan(800);
  });

  const recolourLaid = (drawn: Block, some: Selection, fabric: string) => {
    const after = recolour(drawn, some, fabric);
    return after.ok ? { ok: true as const, value: { block: after.value, patches: [], cut: false } } : after;
  };
});

it('a patch under the hand is the one on top there', () => {
  const two = must(paint(must(paint(unpainted(2, 2), 'teal', cellsBetween(0, 0, 1, 1))), 'rust', cell(0, 0)));
  expect(two.patches[patchAt(two, { x: 1, y: 1, w: 2 })]!.fabric).toBe('rust');
});

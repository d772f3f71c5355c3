import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Block } from '../../src/block/block.ts';
import { applyChange, changeBetween, inverse } from '../../src/block/change.ts';
import { deleteFabric, recolourFabric } from '../../src/block/fabrics.ts';
import { begin, begun, commit, redo, undo, type Work } from '../../src/block/history.ts';
import { resizeCell, splitCell } from '../../src/block/lines.ts';
import { paint } from '../../src/block/painting.ts';
import { cell, halfCell, quarterCell } from '../../src/block/patch-shapes.ts';
import { removePatch, toggleWhole } from '../../src/block/patches.ts';
import { togglePin } from '../../src/block/pins.ts';
import { toggleSeam } from '../../src/block/seams.ts';
import { regrid } from '../../src/block/regridding.ts';
import { choose } from '../../src/block/choosing.ts';
import { resize } from '../../src/block/sizing.ts';
import { chooseUnitMethods } from '../../src/block/unit-methods.ts';
import { mirror, turn } from '../../src/block/turning.ts';
import { block, must, paintFabric, SEED, stroke, unpainted } from './drawn.ts';

type Verb = (block: Block) => Block;

/** What a designer may do, as it comes; what the block refuses changes nothing. */
const verb: fc.Arbitrary<Verb> = fc.oneof(
  fc.tuple(paintFabric, stroke(4, 4)).map(([fabric, shape]): Verb => (now) => {
    const result = paint(now, fabric, shape);
    return result.ok ? result.value : now;
  }),
  fc.nat(3).map((index): Verb => (now) => (index < now.patches.length ? must(removePatch(now, index)) : now)),
  fc.nat(3).map((index): Verb => (now) => (index < now.patches.length ? must(toggleWhole(now, index)) : now)),
  fc.constantFrom<Verb>(
    turn,
    (now) => mirror(now, 'left and right'),
    (now) => must(choose(now, { blocks: 4 })),
    (now) => must(toggleSeam(now, [[0, 1], [1, 1]], 1)),
    (now) => must(togglePin(now, { pin: 'sewn last', from: [0, 1], to: [4, 1] }, 1)),
    (now) => must(togglePin(now, { pin: 'one unit', from: [0, 0], to: [3, 2] }, 2)),
    (now) => must(chooseUnitMethods(now, [{ from: [0, 0], to: [1, 1] }], now.unitMethods ? null : 'triangles', 1)),
    (now) => must(regrid(now, { columns: 4, rows: 4 })).block,
    (now) => {
      const split = splitCell(now, 'columns', 1, { n: 1, d: 2 });
      return split.ok ? split.value : now;
    },
    (now) => {
      const moved = resizeCell(now, 'rows', 0, { n: 5, d: 4 }, 'moves along');
      return moved.ok ? moved.value : now;
    },
    (now) => must(resize(now, { width: { n: 9, d: 1 }, height: { n: 9, d: 1 }, unit: 'cm' })),
    (now) => must(recolourFabric(now, now.ground, '#123456')),
    (now) => {
      const without = deleteFabric(now, 'teal', now.ground);
      return without.ok ? without.value : now;
    },
  ),
);

const gesture = (work: Work, ...verbs: readonly Verb[]): Work =>
  commit(work, begin(work.block, 'Paint'), verbs.reduce((now, each) => each(now), work.block));

const throughJson = <T>(value: T): T => JSON.parse(JSON.stringify(value)) as T;

describe('a change', () => {
  it('makes one block into the other, and its inverse makes the other into the one', () => {
    fc.assert(
      fc.property(block, block, fc.array(fc.nat(5)), (before, other, keep) => {
        const shared = before.patches.filter((_, i) => keep.includes(i));
        const after = { ...other, patches: [...other.patches.slice(0, 2), ...shared, ...other.patches.slice(2)] };
        const change = throughJson(changeBetween(before, after));
        expect(applyChange(before, change)).toEqual(after);
        expect(applyChange(after, inverse(change))).toEqual(before);
        expect(inverse(inverse(change))).toEqual(change);
      }),
      SEED,
    );
  });

  it('may bring patches into another order', () => {
    const [first, second, third] = [0, 1, 2].map((column) => ({ fabric: 'teal', points: cell(column, 0).points }));
    const before = unpainted(4, 4, { patches: [first!, second!, third!] });
    const after = { ...before, patches: [third!, first!, third!, second!] };
    const change = changeBetween(before, after);
    expect(applyChange(before, change)).toEqual(after);
    expect(applyChange(after, inverse(change))).toEqual(before);
  });

  it('is as small as what changed', () => {
    const cells = Array.from({ length: 4096 }, (_, i) => {
      const { points } = cell(i % 64, Math.floor(i / 64));
      return { fabric: i % 2 === 0 ? 'teal' : 'oat', points };
    });
    const full = unpainted(64, 64, { patches: cells });
    const change = changeBetween(full, must(paint(full, 'rust', cell(10, 10))));
    expect(change.properties).toEqual([]);
    expect(change.patches).toEqual([
      { at: 650, out: [cells[650]], into: [] },
      { at: 4096, out: [], into: [{ fabric: 'rust', points: cells[650]!.points }] },
    ]);
  });
});

describe('history', () => {
  it('undoes back to the beginning and does again up to the end, also after it was saved as JSON', () => {
    fc.assert(
      fc.property(fc.array(fc.array(verb, { maxLength: 3 }), { maxLength: 12 }), (gestures) => {
        const start = begun(unpainted(4, 4));
        const states = gestures.reduce((all, verbs) => [...all, gesture(all.at(-1)!, ...verbs)], [start]);
        let work = throughJson(states.at(-1)!);
        const kept = states.filter(({ history }, i) => i === 0 || history.done.length > states[i - 1]!.history.done.length);
        for (const state of kept.toReversed()) {
          expect(work.block).toEqual(state.block);
          work = undo(work);
        }
        expect(work.block).toEqual(start.block);
        expect(undo(work)).toBe(work);
        for (const state of kept) {
          expect(work.block).toEqual(state.block);
          work = redo(work);
        }
        expect(work.history).toEqual(states.at(-1)!.history);
        expect(redo(work)).toBe(work);
      }),
      { ...SEED, numRuns: 150 },
    );
  });

  it('keeps a whole stroke as one entry, and none for a stroke that changed nothing', () => {
    const work = begun(unpainted(4, 4));
    const stroke3: Verb[] = [0, 1, 2].map((column) => (now) => must(paint(now, 'teal', cell(column, 0))));
    const painted = gesture(work, ...stroke3);
    expect(painted.history.done.map((entry) => entry.label)).toEqual(['Paint']);
    expect(gesture(painted, ...stroke3)).toEqual(painted);
    expect(undo(painted).block).toEqual(work.block);
  });

  it('forgets what was undone once something else is done', () => {
    const one = gesture(begun(unpainted(4, 4)), (now) => must(paint(now, 'teal', halfCell(0, 0, 'top left'))));
    const other = gesture(undo(one), (now) => must(paint(now, 'rust', quarterCell(1, 1, 'top'))));
    expect(other.history.undone).toEqual([]);
    expect(redo(other)).toBe(other);
    expect(undo(other).block).toEqual(unpainted(4, 4));
  });
});

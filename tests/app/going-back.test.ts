import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { actsOn, tableWith, type Acts, type Table } from '../../src/app/table.ts';
import { createRest } from '../../src/app/rest.ts';
import { createStore, type Store } from '../../src/app/store.ts';
import { recolourFabric } from '../../src/block/fabrics.ts';
import { begun } from '../../src/block/history.ts';
import { toggleWhole } from '../../src/block/patches.ts';
import { toggleSeam } from '../../src/block/seams.ts';
import { chooseMethod } from '../../src/block/choosing-methods.ts';
import { rename } from '../../src/block/renaming.ts';
import { mirror, turn } from '../../src/block/turning.ts';
import { formatBlock } from '../../src/files/block-file.ts';
import { good } from '../../src/measure/problem.ts';
import { paintFabric, SEED, stroke, unpainted } from '../block/drawn.ts';

/** @returns a table with an empty block of 4 by 4 cells on it */
function laidOut(): { readonly table: Store<Table>; readonly acts: Acts } {
  const table = createStore(tableWith(begun(unpainted(4, 4))));
  return { table, acts: actsOn(table, createRest()) };
}

/** What a hand does at the table, as it comes. */
const deed: fc.Arbitrary<(acts: Acts) => void> = fc.oneof(
  { weight: 5, arbitrary: fc.tuple(fc.array(stroke(4, 4), { minLength: 1, maxLength: 4 }), paintFabric).map(([all, fabric]) => (acts: Acts) => acts.lay(all, fabric)) },
  { weight: 2, arbitrary: fc.nat(8).map((done) => (acts: Acts) => acts.goTo(done)) },
  fc.constantFrom<(acts: Acts) => void>(
    (acts) => acts.undo(),
    (acts) => acts.undo(),
    (acts) => acts.redo(),
    (acts) => acts.choose({ blocks: 3 }),
    (acts) => acts.change('chose a method', (block) => chooseMethod(block, { scope: 'kind', kind: 'half-square triangle', method: 'eight-at-a-time', places: { boxes: [], denominator: 1 } })),
    (acts) => acts.change('chose a method', (block) => chooseMethod(block, { scope: 'unit', method: 'template', places: { boxes: [{ from: [0, 0], to: [1, 1] }], denominator: 1 } })),
    (acts) => acts.change('chose a method', (block) => chooseMethod(block, { scope: 'pattern', method: null })),
    (acts) => acts.change('turned the block', (block) => good(turn(block))),
    (acts) => acts.change('mirrored the block', (block) => good(mirror(block, 'left and right'))),
    (acts) => acts.change('renamed', (block) => rename(block, 'Sail loft')),
    (acts) => acts.change('drew a seam', (block) => toggleSeam(block, [[0, 1], [1, 1]], 1)),
    (acts) => acts.change('kept whole', (block) => (block.patches.length > 0 ? toggleWhole(block, 0) : good(block))),
    (acts) => acts.change('recoloured', (block) => recolourFabric(block, 'teal', '#123456')),
  ),
);

describe('whatever was done', () => {
  it('undone to the beginning and done again to the end gives the same files byte for byte, and so does every place between', () => {
    fc.assert(
      fc.property(fc.array(deed, { maxLength: 14 }), (deeds) => {
        const { table, acts } = laidOut();
        const file = (): string => formatBlock(table.get().work.block);
        const first = file();
        for (const each of deeds) each(acts);
        const { done, undone } = table.get().work.history;
        const all = done.length + undone.length;
        acts.goTo(all);
        const last = file();

        const back = [last];
        for (let i = all; i > 0; i--) {
          acts.undo();
          back.unshift(file());
        }
        expect(back[0]).toBe(first);
        expect(table.get().work.history.done).toEqual([]);
        for (let i = 1; i <= all; i++) {
          acts.redo();
          expect(file()).toBe(back[i]);
        }
        // In one step to any place, from either side, and no further than the history goes.
        for (const place of [0, all, Math.floor(all / 2), all + 5, -3]) {
          acts.goTo(place);
          const reached = Math.min(all, Math.max(0, place));
          expect(table.get().work.history.done.length).toBe(reached);
          expect(file()).toBe(back[reached]);
        }
      }),
      { ...SEED, numRuns: 150 },
    );
  });
});

describe('the history', () => {
  it('calls what was done by its trade name', () => {
    const { table, acts } = laidOut();
    const square = (x: number) => ({ denominator: 1, points: [[x, 0], [x + 1, 0], [x + 1, 1], [x, 1]] as const });
    acts.lay([square(0), square(1)], 'teal');
    acts.takeUpTool('rectangle');
    acts.lay([square(2)], 'rust');
    acts.lay([square(0)], 'oat');
    acts.lay([square(1), square(2)], 'oat');
    acts.choose({ way: 'fewest pieces' });
    acts.choose({ blocks: 2 });
    expect(table.get().work.history.done.map(({ label }) => label)).toEqual([
      'laid 2 squares of Teal',
      'laid a rectangle of Rust',
      'took cloth back to Oat',
      'took 2 places back to Oat',
      'chose the way “fewest pieces”',
      'chose how many blocks',
    ]);
  });
});

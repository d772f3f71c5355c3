import { expect, test } from 'vitest';
import { createClothDesk, type ClothBench } from '../../src/app/cloth-desk.ts';
import type { Cloths } from '../../src/app/cloths.ts';
import { createStore } from '../../src/app/store.ts';
import { leastCloth } from '../../src/cutting/cloth/least.ts';
import type { ClothOrder } from '../../src/cutting/cloth/order.ts';
import { openSolver } from '../../src/cutting/cloth/solver.ts';
import type { ClothLayout } from '../../src/cutting/layout.ts';
import { compare } from '../../src/measure/rational.ts';
import type { Pattern } from '../../src/pattern/pattern.ts';
import { mayTakeLess } from '../../src/pattern/relaid.ts';
import { blockNamed, patternOf } from '../pattern/made.ts';

/** A block of the gallery with fabrics whose first layouts are not the least. */
const block = blockNamed('gallery', 'goose-in-the-pond-15');

interface HeldBench extends ClothBench {
  readonly asked: ClothOrder[];
  stopped: boolean;
  finish: (layout: ClothLayout) => Promise<void>;
}

function desk() {
  const cloths = createStore<Cloths>({ of: null, pattern: null, states: new Map() });
  const benches: HeldBench[] = [];
  const begin = (): ClothBench => {
    let resolve: (layout: ClothLayout) => void = () => undefined;
    const bench: HeldBench = {
      asked: [],
      stopped: false,
      least: (order) => {
        bench.asked.push(order);
        return new Promise((yes) => (resolve = yes));
      },
      stop: () => void (bench.stopped = true),
      finish: async (layout) => {
        resolve(layout);
        await settled();
      },
    };
    benches.push(bench);
    return bench;
  };
  return { cloths, benches, show: createClothDesk(cloths, begin, async () => undefined) };
}

/** Lets everything happen that waits for nothing but its turn. */
const settled = async (): Promise<void> => {
  for (let i = 0; i < 20; i++) await Promise.resolve();
};

const unsure = (pattern: Pattern) => pattern.fabrics.find(mayTakeLess)!;

test('a first layout is shown at once, solved beside the page, and shown better; what was solved is not solved again for another colour', async () => {
  const { cloths, benches, show } = desk();
  const pattern = patternOf(block);
  const { fabric, layout } = unsure(pattern);
  show(pattern);
  expect(cloths.get()).toMatchObject({ of: pattern, pattern });
  await settled();
  expect(cloths.get().states.get(fabric.id)).toBe('solving');
  expect([...cloths.get().states.values()].filter((state) => state === 'proved')).toHaveLength(pattern.fabrics.filter((cloth) => !mayTakeLess(cloth)).length);

  const [bench] = benches as [HeldBench];
  const solver = await openSolver();
  const many = pattern.fabrics.filter(mayTakeLess).length;
  for (let i = 0; i < many; i++) await bench.finish(leastCloth(bench.asked[i]!, solver));
  const better = cloths.get().pattern!.fabrics.find((cloth) => cloth.fabric.id === fabric.id)!;
  expect(cloths.get().states.get(fabric.id)).toBe('proved');
  expect(compare(better.layout.takes, layout.takes)).toBe(-1);
  // Its pieces are called as in the list, not by the names the solver knew them by.
  const lines = new Set(pattern.cuts.filter((cut) => cut.fabric === fabric.id).map(({ id }) => id));
  const laid = better.layout.cloths.flatMap(({ strips }) => strips.flatMap(({ columns }) => columns.flatMap(({ pieces }) => pieces.map(({ cut }) => cut))));
  expect(new Set(laid)).toEqual(lines);

  const recoloured = patternOf({ ...block, fabrics: block.fabrics.map((one) => ({ ...one, color: '#123456' })) });
  show(recoloured);
  await settled();
  expect(bench.asked).toHaveLength(many);
  expect(cloths.get().states.get(fabric.id)).toBe('proved');
  expect(cloths.get().pattern!.fabrics.map(({ fabric: { color } }) => color)).toEqual(recoloured.fabrics.map(() => '#123456'));
});

test('a newer drawing stops the work on an older one', async () => {
  const { cloths, benches, show } = desk();
  show(patternOf(block));
  await settled();
  show(null);
  expect(benches[0]!.stopped).toBe(true);
  const newer = patternOf(block, { blocks: 2 });
  show(newer);
  await settled();
  expect(benches).toHaveLength(2);
  expect(cloths.get().of).toBe(newer);
});

test('a solver that fails leaves the first layout, which is sound', async () => {
  const cloths = createStore<Cloths>({ of: null, pattern: null, states: new Map() });
  const failing = (): ClothBench => ({ least: () => Promise.reject(new Error('no WebAssembly here')), stop: () => undefined });
  const pattern = patternOf(block);
  createClothDesk(cloths, failing, async () => undefined)(pattern);
  await settled();
  expect(cloths.get().pattern).toBe(pattern);
  expect(cloths.get().states.get(unsure(pattern).fabric.id)).toBe('quick');
});

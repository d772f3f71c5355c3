import wasm from 'highs/runtime?url';
import { leastCloth } from '../cutting/cloth/least.ts';
import type { ClothOrder } from '../cutting/cloth/order.ts';
import { openSolver } from '../cutting/cloth/solver.ts';
import type { ClothLayout } from '../cutting/layout.ts';
import { answerCalls } from './across.ts';

const solver = openSolver(() => wasm);

/** What the worker does that cuts cloth: the solver and its WebAssembly are loaded here and nowhere else in the page. */
const maker = {
  least: async (order: ClothOrder): Promise<ClothLayout> => leastCloth(order, await solver),
};

export type ClothMaker = typeof maker;

answerCalls(maker);

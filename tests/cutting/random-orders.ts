import type { ClothOrder } from '../../src/cutting/cloth/order.ts';
import { rational } from '../../src/measure/rational.ts';

/** How large a random order is. */
export interface Bounds {
  readonly kinds: readonly [number, number];
  /** Pieces of one kind at most. */
  readonly count: number;
}

/** The orders on which optimality is judged: 5 to 40 kinds, 1 to 60 of each. */
export const JUDGED: Bounds = { kinds: [5, 40], count: 60 };

/**
 * @returns an order of pieces from 1 to 12 in. by eighths, three in ten of which may not be turned, on cloth 40 to 44 in. wide by eighths;
 * the same for the same seed
 */
export function randomOrder(seed: number, { kinds, count }: Bounds): ClothOrder {
  const next = chance(seed);
  const whole = (from: number, to: number): number => from + Math.floor(next() * (to - from + 1));
  const many = whole(kinds[0], kinds[1]);
  const wanted = Array.from({ length: many }, (_, i) => {
    const [width, height] = [rational(whole(8, 96), 8), rational(whole(8, 96), 8)];
    return { cut: `${i + 1}`, width, height, count: whole(1, count), turn: next() < 0.7 };
  });
  return { wanted, own: [], bought: { form: 'by length', width: rational(whole(320, 352), 8), length: null, count: null }, reach: rational(24) };
}

/** Numbers from 0 up to 1 (the generator mulberry32, public domain). */
function chance(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296;
  };
}

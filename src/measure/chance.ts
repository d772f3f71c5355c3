/** Whole numbers that look drawn at random, the same for the same seed. */
export interface Chance {
  /** @returns a whole number from 0 on, less than 2³² */
  readonly next: () => number;
  /** @returns a whole number from 0 on, less than `count` */
  readonly below: (count: number) => number;
  /** @returns the same things in another order */
  readonly shuffled: <T>(things: readonly T[]) => T[];
}

/** @returns chance from a seed, by the generator mulberry32, in the public domain, from memory */
export function chanceFrom(seed: number): Chance {
  let state = seed >>> 0;
  const next = (): number => {
    state = (state + 0x6d2b79f5) >>> 0;
    let z = state;
    z = Math.imul(z ^ (z >>> 15), z | 1);
    z ^= z + Math.imul(z ^ (z >>> 7), z | 61);
    return (z ^ (z >>> 14)) >>> 0;
  };
  const below = (count: number): number => next() % count;
  return {
    next,
    below,
    shuffled: (things) => {
      const all = [...things];
      for (let i = all.length - 1; i > 0; i--) {
        const j = below(i + 1);
        [all[i], all[j]] = [all[j]!, all[i]!];
      }
      return all;
    },
  };
}

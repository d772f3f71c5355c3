import type { Telling } from './telling.ts';

/** How many of something: the number that decides about singular and plural, and how it stands in a sentence. */
export interface Count {
  readonly n: number;
  readonly said: string;
}

/** @returns a number of things for a sentence */
export const counted = (n: number, { count }: Pick<Telling, 'count'>): Count => ({ n, said: count(n) });

import type { MethodWish } from '../../block/choosing-methods.ts';
import { METHOD_WORDS } from './words.ts';

/**
 * @param unit its letter, where the wish is for one unit
 * @returns "chose “stitch and flip” for unit B", "chose “template” for each peak", "took the method of unit B back"
 */
export function methodWords(wish: MethodWish, unit: string): string {
  const whom = wish.scope === 'unit' ? (unit === 'block' ? 'the block' : `unit ${unit}`) : wish.scope === 'kind' ? `each ${wish.kind}` : 'the whole pattern';
  return wish.method === null ? `took the method of ${whom} back` : `chose “${METHOD_WORDS[wish.method]}” for ${whom}`;
}

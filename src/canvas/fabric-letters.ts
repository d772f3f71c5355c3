import type { Fabric } from '../block/block.ts';

const ALPHABET = 'ABCDEFGHIJKLMNOPQRSTUVWXYZ';

/**
 * @returns one short sign for every fabric, so that colour is never the only one: the first letter of its name that no fabric
 * before it has taken, else the first free letter of the alphabet, else its number
 */
export function fabricLetters(fabrics: readonly Fabric[]): ReadonlyMap<string, string> {
  const letters = new Map<string, string>();
  const taken = new Set<string>();
  fabrics.forEach((fabric, i) => {
    const wanted = [...fabric.name.toLocaleUpperCase('en')].filter((sign) => /\p{L}/u.test(sign));
    const letter = [...wanted, ...ALPHABET].find((sign) => !taken.has(sign)) ?? String(i + 1);
    taken.add(letter);
    letters.set(fabric.id, letter);
  });
  return letters;
}

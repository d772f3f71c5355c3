/*
 * How numbers of things and lists of them are said in German; in English: `words.ts`.
 */

/** @returns "A", "A und B", "A, B und C" */
export function listed(words: readonly string[]): string {
  const last = words.at(-1) ?? '';
  return words.length < 2 ? last : `${words.slice(0, -1).join(', ')} und ${last}`;
}

/** @returns "1 Naht", "2 Nähte" */
export const several = (n: number, one: string, many: string): string => `${n} ${n === 1 ? one : many}`;

/*
 * How numbers of things and lists of them are said, in every room alike.
 */

/** @returns "A", "A and B", "A, B and C" */
export function listed(words: readonly string[]): string {
  const last = words.at(-1) ?? '';
  return words.length < 2 ? last : `${words.slice(0, -1).join(', ')} and ${last}`;
}

/** @returns "1 seam", "2 seams" */
export const several = (n: number, one: string, many = `${one}s`): string => `${n} ${n === 1 ? one : many}`;

/** @returns words that begin a sentence */
export const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);

/** @returns words as a sentence: one full stop at the end, also after "in." */
export const sentence = (words: string): string => (words.endsWith('.') ? words : `${words}.`);

/** @returns the values without repeats, in order */
export const different = <T>(values: readonly T[]): readonly T[] => [...new Set(values)];

/** @returns the values in groups of those that have one key, in the order of the first of each */
export function grouped<T>(values: readonly T[], keyOf: (value: T) => string): readonly (readonly [T, ...T[]])[] {
  const groups = new Map<string, [T, ...T[]]>();
  for (const value of values) {
    const key = keyOf(value);
    const known = groups.get(key);
    if (known) known.push(value);
    else groups.set(key, [value]);
  }
  return [...groups.values()];
}

/** @returns the values in runs of those that follow one another and have one key */
export function runsOf<T>(values: readonly T[], keyOf: (value: T) => string): readonly (readonly [T, ...T[]])[] {
  let run = 0;
  return grouped(
    values.map((value, i) => ({ value, run: i > 0 && keyOf(values[i - 1]!) === keyOf(value) ? run : ++run })),
    (each) => `${each.run}`,
  ).map((each) => each.map(({ value }) => value) as [T, ...T[]]);
}

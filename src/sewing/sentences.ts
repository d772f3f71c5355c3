/** @returns words as a sentence: one full stop at the end, also after "in." */
export const sentence = (words: string): string => (words.endsWith('.') ? words : `${words}.`);

/** @returns things that follow one another with how many there are in a row: "A", "7 × B", "A" */
export function inRuns(names: readonly string[]): readonly string[] {
  const runs: { readonly name: string; count: number }[] = [];
  for (const name of names) {
    const last = runs.at(-1);
    if (last?.name === name) last.count++;
    else runs.push({ name, count: 1 });
  }
  return runs.map(({ name, count }) => (count > 1 ? `${count} × ${name}` : name));
}

/** @returns the values without repeats, in order */
export const different = <T>(values: readonly T[]): readonly T[] => [...new Set(values)];

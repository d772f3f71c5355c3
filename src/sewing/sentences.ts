/** @returns words as a sentence: one full stop at the end, also after "in." */
export const sentence = (words: string): string => (words.endsWith('.') ? words : `${words}.`);

/** @returns the values without repeats, in order */
export const different = <T>(values: readonly T[]): readonly T[] => [...new Set(values)];

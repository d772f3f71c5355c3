import type { Run } from '../phrases/said.ts';

/** @returns numbers in order as those that follow one another, from … to */
export function ranges(numbers: readonly number[]): readonly Run[] {
  const runs: [number, number][] = [];
  for (const n of numbers) {
    const last = runs.at(-1);
    if (last && last[1] === n - 1) last[1] = n;
    else runs.push([n, n]);
  }
  return runs;
}

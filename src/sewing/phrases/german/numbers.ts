import { listed } from '../../../measure/german-words.ts';
import type { Run } from '../said.ts';

/** @returns numbers in order as "1–3 und 5" */
export const numbers = (runs: readonly Run[]): string =>
  listed(runs.flatMap(([from, to]) => (from === to ? [`${from}`] : to === from + 1 ? [`${from}`, `${to}`] : [`${from}–${to}`])));

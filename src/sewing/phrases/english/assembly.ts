import type { AssemblyPhrases } from '../assembly.ts';
import type { Lying } from '../pressing.ts';
import type { Run } from '../said.ts';
import { numbers } from './numbers.ts';
import { thingsName } from './things.ts';

/** @returns "row 2", "rows 1 and 3" */
const rowsName = (rows: readonly Run[]): string => `row${isOne(rows) ? '' : 's'} ${numbers(rows)}`;

const WAYS = { open: 'open', left: 'to the left', right: 'to the right', top: 'to the top', bottom: 'to the bottom' } as const;

const isOne = (runs: readonly Run[]): boolean => runs.length === 1 && runs[0]![0] === runs[0]![1];

/** @returns " to the left"; where they lie both ways ", seams 1 and 2 to the left, seam 3 to the right" */
function lie(lying: readonly Lying<keyof typeof WAYS>[]): string {
  if (lying.length === 1) return ` ${WAYS[lying[0]!.way]}`;
  return lying.map(({ seams, way }) => `, seam${isOne(seams) ? '' : 's'} ${numbers(seams)} ${WAYS[way]}`).join('');
}

export const assembly: AssemblyPhrases = {
  web: (rows, columns) =>
    `Lay out the whole block: ${rows.map((each) => `${rowsName(each.rows)}, left to right, ${thingsName(each.what)}`).join('; ')}. ` +
    `Sew the second column onto the first in one chain: ${columns > 2 ? 'from the top row down ' : ''}lay each unit on its neighbour, right sides together, ` +
    `and feed the pairs through one after another${columns > 2 ? '. Add the next column in the same way, until all are on' : ' from the top row down'}. ` +
    'Do not cut the threads between the rows: they hold the block together like a web, every unit in its place. Then sew the long seams between the rows.',
  pressWeb: (rows, long) =>
    `Press the rows before the long seams: ${rows.map((each) => `${rowsName(each.rows)}${lie(each.what)}`).join('; ')}. ` +
    (long.length > 1
      ? `Press the long seams, counted from the top: ${long.map(({ seams, way }) => `${numbers(seams)} ${WAYS[way]}`).join(', ')}.`
      : `Press the long seam${isOne(long[0]!.seams) ? '' : 's'} ${WAYS[long[0]!.way]}.`),
};

import type { AssemblyPhrases } from '../assembly.ts';
import type { Lying } from '../pressing.ts';
import type { Run } from '../said.ts';
import { numbers } from './numbers.ts';
import { thingsName } from './things.ts';

const rowsName = (rows: readonly Run[]): string => `Reihe ${numbers(rows)}`;

const WAYS = { open: 'auseinander', left: 'nach links', right: 'nach rechts', top: 'nach oben', bottom: 'nach unten' } as const;

function lie(lying: readonly Lying<keyof typeof WAYS>[]): string {
  if (lying.length === 1) return ` ${WAYS[lying[0]!.way]}`;
  return lying.map(({ seams, way }) => `, Naht ${numbers(seams)} ${WAYS[way]}`).join('');
}

export const assembly: AssemblyPhrases = {
  web: (rows, columns) =>
    `Den ganzen Block auslegen: ${rows.map((each) => `${rowsName(each.rows)}, von links nach rechts: ${thingsName(each.what)}`).join('; ')}. ` +
    'Die zweite Spalte in einer Kette an die erste nähen: von der obersten Reihe an jede Einheit rechts auf rechts auf ihre Nachbarin legen und ' +
    `die Paare nacheinander unter der Nadel durchführen${columns > 2 ? '. Die nächste Spalte ebenso annähen, bis alle daran sind' : ''}. ` +
    'Die Fäden zwischen den Reihen nicht durchschneiden: Sie halten den Block wie ein Netz zusammen, und jede Einheit bleibt an ihrem Platz. ' +
    'Dann die langen Nähte zwischen den Reihen nähen.',
  pressWeb: (rows, long) =>
    `Die Nähte der Reihen vor den langen Nähten bügeln: ${rows.map((each) => `${rowsName(each.rows)}${lie(each.what)}`).join('; ')}. ` +
    (long.length > 1
      ? `Die langen Nähte bügeln: ${long.map(({ seams, way }) => `${numbers(seams)} ${WAYS[way]}`).join(', ')}.`
      : `Die langen Nähte ${WAYS[long[0]!.way]}${long[0]!.way === 'open' ? '' : ' '}bügeln.`),
};

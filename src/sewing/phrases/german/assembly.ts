import { listed } from '../../../measure/german-words.ts';
import type { AssemblyPhrases } from '../assembly.ts';
import type { Some } from '../joins.ts';
import type { Lying } from '../pressing.ts';
import type { Run } from '../said.ts';
import { numbers } from './numbers.ts';
import { thingName } from './things.ts';

const things = (some: readonly Some[]): string =>
  listed(some.map(({ thing, count }) => `${count.n > 1 ? `${count.said} × ` : ''}${thingName(thing)}`));

const rowsName = (rows: readonly Run[]): string => `Reihe ${numbers(rows)}`;

const WAYS = { open: 'auseinander', left: 'nach links', right: 'nach rechts', top: 'nach oben', bottom: 'nach unten' } as const;

function lie(lying: readonly Lying<keyof typeof WAYS>[]): string {
  if (lying.length === 1) return ` ${WAYS[lying[0]!.way]}`;
  return lying.map(({ seams, way }) => `, Naht ${numbers(seams)} ${WAYS[way]}`).join('');
}

export const assembly: AssemblyPhrases = {
  web: (rows, columns) =>
    `Den ganzen Block auslegen: ${rows.map((each) => `${rowsName(each.rows)}, von links nach rechts: ${things(each.what)}`).join('; ')}. ` +
    'Die zweite Spalte in einer Kette an die erste nähen: von der obersten Reihe an jede Einheit rechts auf rechts auf ihre Nachbarin legen und ' +
    `die Paare nacheinander unter der Nadel durchführen${columns > 2 ? '. Die nächste Spalte ebenso annähen, bis alle daran sind' : ''}. ` +
    'Die Fäden zwischen den Reihen nicht durchschneiden: Sie halten den Block wie ein Netz zusammen, und jede Einheit bleibt an ihrem Platz. ' +
    'Dann die langen Nähte zwischen den Reihen nähen.',
  pressWeb: (rows, long) =>
    `Die Nähte der Reihen vor den langen Nähten bügeln: ${rows.map((each) => `${rowsName(each.rows)}${lie(each.what)}`).join('; ')}. ` +
    `Die langen Nähte bügeln: ${long.length > 1 ? long.map(({ seams, way }) => `${numbers(seams)} ${WAYS[way]}`).join(', ') : WAYS[long[0]!.way]}.`,
};

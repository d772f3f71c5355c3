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
  foundations(sections) {
    const sewn = sections.filter(({ single }) => !single);
    const single = sections.filter((each) => each.single);
    const parts =
      sections.length === 1
        ? ''
        : ` ${sewn.length === 1 ? 'Es gibt einen Abschnitt' : `Es gibt ${sewn.length} Abschnitte`}: ` +
          `${listed(sewn.map(({ letter, pieces }) => `${letter} mit den Teilen ${numbers(pieces)}`))}` +
          `${single.length === 0 ? '' : `; ${listed(single.map(({ letter, pieces }) => `${letter}${numbers(pieces)}`))} ${single.length === 1 ? 'ist ein Teil' : 'sind Teile'} für sich`}.`;
    return (
      'Auf Vorlagen: in voller Größe drucken; sie sind das Spiegelbild, denn genäht wird von der bedruckten Seite, der Stoff liegt darunter.' +
      `${parts} Das erste Teil unter seine Zahl legen, die rechte Seite von der Vorlage weg. Jedes weitere rechts auf rechts darauflegen, auf der Linie ` +
      'dazwischen nähen, die Naht zurückschneiden, das Teil aufklappen und bügeln.' +
      `${sections.length === 1 ? '' : ' Dann die Abschnitte zuschneiden und zusammennähen.'}`
    );
  },
  chain(count, seams, explained) {
    if (seams === 'both sides') {
      return explained
        ? `Die ${count.said} Paare in einer Kette nähen: erst auf der einen Seite aller Linien, dann auf der anderen.`
        : `In einer Kette nähen: alle ${count.said} Paare nacheinander unter der Nadel durchführen, ohne den Faden zu schneiden, erst auf der einen ` +
            'Seite der Linien, dann auf der anderen; die Fäden dazwischen durchschneiden.';
    }
    if (seams === 'one') {
      return explained
        ? `Alle ${count.said} in einer Kette nähen.`
        : `In einer Kette nähen: alle ${count.said} nacheinander unter der Nadel durchführen, ohne den Faden zu schneiden; dann die Fäden dazwischen ` +
            'durchschneiden und bügeln.';
    }
    return explained
      ? `Alle ${count.said} in einer Kette nähen, von jeder Einheit eine Naht und dann die nächste.`
      : `In einer Kette nähen: die erste Naht aller ${count.said} nacheinander, ohne den Faden zu schneiden, die Fäden dazwischen durchschneiden und ` +
          'bügeln; dann die nächste Naht von allen, und so weiter.';
  },
};

import { listed } from '../../../measure/german-words.ts';
import type { Around, JoinPhrases } from '../joins.ts';
import type { Side } from '../said.ts';
import { pieceName, PLACES, thingName, thingsName, withArticle } from './things.ts';

const EDGES: Readonly<Record<Side, string>> = { top: 'oberen', right: 'rechten', bottom: 'unteren', left: 'linken' };

/** @returns "Rechteck von 5 × 10 cm aus Sea oben", "2 × B links und rechts" */
function around({ thing, count, sides }: Around): string {
  const name =
    count.n === 1 ? thingName(thing) : 'unit' in thing ? `${count.said} × ${thingName(thing)}` : pieceName(thing, 'many');
  return `${name} ${listed(sides.map((side) => PLACES[side]))}`;
}

export const joins: JoinPhrases = {
  row: (lie, things) =>
    `${lie === 'row' ? 'Von links nach rechts zu einer Reihe' : 'Von oben nach unten zu einer Spalte'} zusammennähen: ` +
    `${thingsName(things)}.`,
  rounds(centre, turning, rounds) {
    const way = turning ? ` und ${turning === 'clockwise' ? 'im' : 'gegen den'} Uhrzeigersinn weitergehen` : '';
    const said = rounds.map((round, i) => `${rounds.length > 1 ? `Runde ${i + 1}` : 'Ringsum'}: ${round.map(around).join(', ')}.`);
    return (
      `Mit ${withArticle(centre, 'toThe')} als Mitte beginnen${way}. ` +
      `Jeden Streifen über die ganze Seite des schon Genähten annähen und bügeln, bevor der nächste kommt. ${said.join(' ')}`
    );
  },
  ring: (first, side, centre, even, others) =>
    `${withArticle(first, 'The')} rechts auf rechts ${PLACES[side]} an ${withArticle(centre)} legen, an der ${EDGES[even]} Kante bündig; ` +
    `von dort aus nähen und auf halber Länge von ${'unit' in centre ? centre.unit : centre.cloth} anhalten. Rundherum weiter annähen: ` +
    `${listed(others.map((other) => `${thingName(other.thing)} ${PLACES[other.side]}`))}, jeweils über die ganze Seite. ` +
    'Dann die erste Naht zu Ende nähen.',
};

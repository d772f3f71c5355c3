import { listed } from '../../../measure/german-words.ts';
import type { Diagonal, Place } from '../said.ts';
import type { SlantedPart, SlantedPhrases } from '../slanted.ts';
import { ofThing, piecesName, PLACES, thingName, withArticle } from './things.ts';

/** How a rectangle is cut that lies right side up on a short side. */
const DIAGONALS: Readonly<Record<Diagonal, string>> = {
  falling: 'von oben links nach unten rechts',
  rising: 'von unten links nach oben rechts',
};

const ON_SHORT_SIDE = 'mit der rechten Stoffseite nach oben auf eine kurze Seite stellen';

const SLOPES: Readonly<Partial<Record<Place, string>>> = { left: 'linke', right: 'rechte', top: 'obere', bottom: 'untere' };

const slope = ({ place }: SlantedPart): string => (SLOPES[place] ? `die ${SLOPES[place]} Schräge` : `die Schräge ${PLACES[place]}`);

const pointEnds = (seam: string): string => `Die Spitze liegt ${seam} innerhalb der Schnittkante.`;

export const slanted: SlantedPhrases = {
  halfRectangles: (triangles, seam, cut) =>
    `${piecesName(triangles)} paarweise rechts auf rechts legen, die langen Seiten bündig, sodass an beiden Enden eine Spitze gleich weit ` +
    `übersteht; die langen Seiten zusammennähen. Die Naht endet ${seam} innerhalb von zwei Ecken, nicht in ihnen.` +
    (cut ? ` Beide Rechtecke zum Schneiden ${ON_SHORT_SIDE} und ${DIAGONALS[cut]} durchschneiden; die andere Diagonale ergibt das Spiegelbild.` : ''),
  peak: (middle, one, other, seam) =>
    `${withArticle(one.thing, 'The')} an ${slope(one)} ${ofThing(middle)} nähen und nach außen bügeln; ` +
    `${withArticle(other.thing)} an ${slope(other)} nähen. ${pointEnds(seam)}` +
    (one.cut && other.cut
      ? ` Die Rechtecke zum Schneiden ${ON_SHORT_SIDE}: für ${slope(one)} ${DIAGONALS[one.cut]} durchschneiden, für ${slope(other)} ${DIAGONALS[other.cut]}.`
      : ''),
  pointEnds,
  rounds(centre, rounds) {
    const said = rounds.map((round, i) => {
      const all =
        'shape' in round
          ? `${piecesName([round])} an allen 4 Seiten`
          : listed(round.map(({ thing, place }) => `${thingName(thing)} ${PLACES[place]}`));
      return `${rounds.length > 1 ? `Runde ${i + 1}` : 'Ringsum'}: ${all}.`;
    });
    return (
      `Mit ${withArticle(centre, 'toThe')} als Mitte beginnen und an die Seiten Dreiecke nähen, Mitte auf Mitte, gegenüberliegende zuerst; ` +
      `jedes nach außen bügeln, bevor das nächste kommt. ${said.join(' ')}`
    );
  },
  layOut(parts) {
    const names = parts.map(
      ({ thing, place, cut }, i) => `(${i + 1}) ${thingName(thing)}, ${PLACES[place]}${cut ? `, ${DIAGONALS[cut]} geschnitten` : ''}`,
    );
    const rectangles = parts.some(({ cut }) => cut) ? ` Rechtecke zum Schneiden ${ON_SHORT_SIDE}.` : '';
    return `Die Teile wie im Bild auslegen: ${names.join('; ')}.${rectangles}`;
  },
  sewInOrder: (order) =>
    `In dieser Reihenfolge nähen: ${order
      .map(({ first, second, then }) => `${second} an ${first}${then.length > 0 ? `, dann ${listed(then)}` : ''}`)
      .join('; ')}.`,
  templatesLie: 'Teile nach Schablonen mit der rechten Stoffseite nach oben zuschneiden.',
};

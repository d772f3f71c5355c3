import { listed } from '../../../measure/german-words.ts';
import type { CornerPhrases, CornersOf } from '../corners.ts';
import { onBothSides, yields } from './half-squares.ts';
import { ofThing, pieceName, piecesName, PLACES, sizeName, withArticle } from './things.ts';

const CARE: Readonly<Record<CornersOf, string>> = {
  'square in a square': ', Mitte auf Mitte',
  'flying geese': ', die Spitzen bündig mit den Enden seiner langen Seite',
  'corner-triangle unit': '',
};

export const corners: CornerPhrases = {
  fourGeese: (small, large, seam, single, spare) =>
    `Zu jedem ${pieceName(large)} 4 ${pieceName(small, 'many')} nehmen. ` +
    `2 Quadrate aus ${small.cloth} rechts auf rechts in gegenüberliegende Ecken des Quadrats aus ${large.cloth} legen; ` +
    `die Diagonale anzeichnen, die durch beide läuft, ${onBothSides(seam)}; die Dreiecke aus ${small.cloth} nach außen bügeln. ` +
    `Auf jede Hälfte 1 Quadrat aus ${small.cloth} in die freie Ecke legen, ` +
    `seine Diagonale von dieser Ecke bis dorthin anzeichnen, wo die beiden ersten Dreiecke zusammentreffen, ${onBothSides(seam)}: ` +
    yields(4, `${single ? 'Das' : 'Jedes'} Quadrat aus ${large.cloth}`, spare, single),
  stitchAndFlip: (squares, base, seam) =>
    `${piecesName(squares)} auf der linken Stoffseite mit einer Diagonale markieren. Eines nach dem anderen annähen: ` +
    `ein Quadrat rechts auf rechts auf eine Ecke ${ofThing(base)} legen, die Linie quer über die Ecke; ` +
    `auf der Linie nähen, ${seam} außerhalb davon abschneiden und die Ecke nach außen bügeln.`,
  fromTriangles: (triangles, base, whose) =>
    `${piecesName(triangles)} mit der langen Seite an ${withArticle(base)} nähen${CARE[whose]}; jedes nach außen bügeln, bevor das nächste kommt.`,
  toAllCorners: (cloth) => `${cloth} kommt an alle 4 Ecken, gegenüberliegende zuerst.`,
  toCorners: (where) =>
    `${where
      .map(({ cloth, size, corners: at }, i) => {
        const name = size ? `${cloth} (${sizeName(size)})` : cloth;
        return `${name} ${i === 0 ? 'kommt ' : ''}an die Ecke${at.length > 1 ? 'n' : ''} ${listed(at.map((corner) => PLACES[corner]))}`;
      })
      .join(', ')}.`,
};

import { listed } from '../../../measure/german-words.ts';
import type { Halves, HalvesLie, QuarterSquarePhrases } from '../quarter-squares.ts';
import { eachPair, laidInPairs, onBothSides, onPair, pairsName } from './half-squares.ts';
import { pieceName, piecesName } from './things.ts';

function halvesOf(pairs: string, single: boolean, { kind, over, seam }: Halves): string {
  const size = over === null ? '' : ` mit gut ${over} Seitenlänge`;
  return (
    `${laidInPairs(pairs, single)} ${onPair(single, 'eine Diagonale')}, ${onBothSides(seam)}: ` +
    `${eachPair(single)} ergibt 2 ${kind}${size}.`
  );
}

const crossing = (seam: string): string => `die Diagonale anzeichnen, die die Naht kreuzt, ${onBothSides(seam)}`;

const SEAMS = { nested: 'Nähte ineinandergreifend', matched: 'Naht genau auf Naht' } as const;

const hands = (left: string, right: string): string => `${left} links und ${right} rechts`;

function halvesLie(all: HalvesLie): string {
  switch (all.lie) {
    case 'one cloth':
      return `die eine Hälfte aus ${all.one}, die andere aus ${all.other}`;
    case 'alike':
      return `Liegt die lange Seite unten, hat jede Hälfte ${hands(all.left, all.right)}`;
    default:
      return `Liegt die lange Seite unten, hat die erste Hälfte ${hands(...all.first)}, die zweite ${hands(...all.second)}`;
  }
}

const MIRRORED = ', die Spiegelbilder voneinander sind: ';

export const quarterSquares: QuarterSquarePhrases = {
  hourglasses: (pairs, halves, seams) =>
    `${halvesOf(pairsName(pairs), pairs.single, halves)} Je zwei davon rechts auf rechts aufeinanderlegen, ${SEAMS[seams]} und ` +
    `jeder Stoff auf dem anderen; ${crossing(halves.seam)}: Je zwei ergeben 2 Einheiten.`,
  crossed(first, second, halves, seams, round, mirrored) {
    const [a, b, c, d] = round;
    const which = mirrored ? `${MIRRORED}Die verwenden, in denen ${listed(round)} im Uhrzeigersinn aufeinanderfolgen` : '';
    return (
      `${halvesOf(`${pairsName(first)} und ${pairsName(second)}`, false, halves)} ` +
      `Je zwei davon, eines von jeder Sorte, rechts auf rechts aufeinanderlegen, ${SEAMS[seams]}, ` +
      `${d} auf ${a} und ${c} auf ${b}; ${crossing(halves.seam)}: Je zwei ergeben 2 Einheiten${which}.`
    );
  },
  fromTriangles: (triangles, lie) =>
    `${piecesName(triangles)} an den kurzen Seiten zu Hälften zusammennähen: ${halvesLie(lie)}. ` +
    'Je zwei Hälften an den langen Seiten zusammennähen, in der Mitte Naht auf Naht.',
  split(pairs, halves, large, mirrored) {
    const which = mirrored ? `${MIRRORED}In dieser Einheit liegt ${mirrored.left} links von ${mirrored.right}, wenn ${mirrored.large} unten liegt` : '';
    return (
      `${halvesOf(pairsName(pairs), pairs.single, halves)} ` +
      `Auf jedes ${pieceName(large)} eines davon rechts auf rechts legen; ${crossing(halves.seam)}: Jedes ergibt 2 Einheiten${which}.`
    );
  },
  splitFromTriangles: (small, left, large) =>
    `${piecesName(small)} zu zweit an einer kurzen Seite zusammennähen` +
    `${left === null ? '' : `, ${left} links, wenn die lange Seite der beiden unten liegt`}. ` +
    `${piecesName(large)} an deren lange Seiten nähen.`,
};

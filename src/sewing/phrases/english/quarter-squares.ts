import { listed } from '../../../measure/words.ts';
import type { Halves, HalvesLie, QuarterSquarePhrases } from '../quarter-squares.ts';
import { eachOf, onBothSides, pairsName } from './half-squares.ts';
import { pieceName, piecesName } from './things.ts';

function halvesOf(pairs: string, single: boolean, { kind, over, seam }: Halves): string {
  const each = eachOf(single, 'pair');
  const size = over === null ? '' : `, a little over ${over} square,`;
  return `Pair ${pairs}, right sides together. On ${each} draw a diagonal, ${onBothSides(seam)}: 2 ${kind}${size} from ${each}.`;
}

const crossing = (seam: string): string => `draw the diagonal that crosses the seam, ${onBothSides(seam)}`;

const hands = (left: string, right: string): string => `${left} on the left and ${right} on the right`;

function halvesLie(all: HalvesLie): string {
  switch (all.lie) {
    case 'one cloth':
      return `one half is ${all.one}, the other ${all.other}`;
    case 'alike':
      return `with its long side below, each half has ${hands(all.left, all.right)}`;
    default:
      return `with its long side below, the first half has ${hands(...all.first)}, the second ${hands(...all.second)}`;
  }
}

const MIRRORED = ', mirror images of each other: ';

export const quarterSquares: QuarterSquarePhrases = {
  hourglasses: (pairs, halves, seams) =>
    `${halvesOf(pairsName(pairs), pairs.single, halves)} Lay these on one another in twos, right sides together, seams ${seams} and ` +
    `each fabric on the other; ${crossing(halves.seam)}: 2 units from each two.`,
  crossed(first, second, halves, seams, round, mirrored) {
    const [a, b, c, d] = round;
    const which = mirrored ? `${MIRRORED}use those in which ${listed(round)} follow clockwise` : '';
    return (
      `${halvesOf(`${pairsName(first)}, and ${pairsName(second)}`, false, halves)} ` +
      `Lay these on one another in twos, one of each, right sides together and seams ${seams}, ` +
      `with ${d} on ${a} and ${c} on ${b}; ${crossing(halves.seam)}: 2 units from each two${which}.`
    );
  },
  fromTriangles: (triangles, lie) =>
    `Sew ${piecesName(triangles)} into halves along their short sides: ${halvesLie(lie)}. ` +
    'Sew two halves together along their long sides, seams matched in the middle.',
  split(pairs, halves, large, mirrored) {
    const which = mirrored ? `${MIRRORED}in this one ${mirrored.left} is left of ${mirrored.right} when ${mirrored.large} is below` : '';
    return (
      `${halvesOf(pairsName(pairs), pairs.single, halves)} ` +
      `Lay one on each ${pieceName(large)}, right sides together; ${crossing(halves.seam)}: 2 units from each${which}.`
    );
  },
  splitFromTriangles: (small, left, large) =>
    `Sew ${piecesName(small)} together in twos along a short side` +
    `${left === null ? '' : `, ${left} on the left when the long side of the two is below`}. ` +
    `Sew ${piecesName(large)} to the long sides of these.`,
};

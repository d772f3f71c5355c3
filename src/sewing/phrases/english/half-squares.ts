import type { Count } from '../../../block/counting.ts';
import type { Piece } from '../said.ts';
import type { HalfSquarePhrases, Pairs } from '../half-squares.ts';
import { pieceName, piecesName } from './things.ts';

const squares = (piece: Piece, count: Count | null): string => `${count ? `${count.said} ` : ''}${pieceName(piece, count?.n !== 1)}`;

/** @returns "2 Fog 5 in. squares with 2 Sea 5 in. squares" */
export const pairsName = ({ one, other, count }: Pairs): string =>
  `${squares(one, count)}${other ? ` with ${squares(other, count)}` : ''}`;

export const eachOf = (single: boolean, thing: string): string => `${single ? 'the' : 'each'} ${thing}`;

/** @returns what to do along a diagonal that is drawn */
export const onBothSides = (seam: string): string => `sew ${seam} from it on both sides and cut on it`;

/** @returns "4 units from each pair, 1 more than needed." */
export const yields = (units: number, from: string, spare: Count | null): string =>
  `${units} units from ${from}${spare ? `, ${spare.said} more than needed` : ''}.`;

export const halfSquares: HalfSquarePhrases = {
  twoAtATime(pairs, seam, spare) {
    const each = eachOf(pairs.single, 'pair');
    return `Pair ${pairsName(pairs)}, right sides together. On ${each} draw a diagonal, ${onBothSides(seam)}: ${yields(2, each, spare)}`;
  },
  eightAtATime(pairs, seam, spare) {
    const each = eachOf(pairs.single, 'pair');
    return (
      `Pair ${pairsName(pairs)}, right sides together. On ${each} draw both diagonals and sew ${seam} from each of them on both sides; ` +
      `cut through the middle both ways, along the sides, and then on both diagonals: ${yields(8, each, spare)}`
    );
  },
  fromTriangles: (triangles) => `Lay ${piecesName(triangles)} right sides together in pairs and sew the long sides.`,
};

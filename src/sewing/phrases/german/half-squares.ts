import type { Count } from '../../../block/counting.ts';
import type { Piece } from '../said.ts';
import type { HalfSquarePhrases, Pairs } from '../half-squares.ts';
import { pieceName, piecesName } from './things.ts';

const squares = (piece: Piece, count: Count | null, form: 'many' | 'toMany'): string =>
  `${count ? `${count.said} ` : ''}${pieceName(piece, count?.n === 1 ? 'one' : form)}`;

/** @returns "2 Quadrate von 12,4 cm aus Fog mit 2 Quadraten von 12,4 cm aus Sea" */
export const pairsName = ({ one, other, count }: Pairs): string =>
  `${squares(one, count, 'many')}${other ? ` mit ${squares(other, count, 'toMany')}` : ''}`;

/** @returns "Quadrate … paarweise rechts auf rechts legen." */
export const laidInPairs = (pairs: string, single: boolean): string => `${pairs} ${single ? '' : 'paarweise '}rechts auf rechts legen.`;

/** @returns what to do along a diagonal that is drawn, after which the cut is told */
export const onBothSides = (seam: string): string => `auf beiden Seiten im Abstand von ${seam} dazu nähen und auf der Linie durchschneiden`;

/** @returns "Jedes Paar ergibt 4 Einheiten, insgesamt 1 mehr als nötig." */
export const yields = (units: number, from: string, spare: Count | null, single: boolean): string =>
  `${from} ergibt ${units} Einheiten${spare ? `, ${single ? '' : 'insgesamt '}${spare.said} mehr als nötig` : ''}.`;

export const eachPair = (single: boolean): string => (single ? 'Das Paar' : 'Jedes Paar');

export const onPair = (single: boolean, what: string): string => `${single ? 'Auf dem Paar' : 'Auf jedem Paar'} ${what} anzeichnen`;

export const halfSquares: HalfSquarePhrases = {
  twoAtATime: (pairs, seam, spare) =>
    `${laidInPairs(pairsName(pairs), pairs.single)} ${onPair(pairs.single, 'eine Diagonale')}, ${onBothSides(seam)}: ` +
    yields(2, eachPair(pairs.single), spare, pairs.single),
  eightAtATime: (pairs, seam, spare) =>
    `${laidInPairs(pairsName(pairs), pairs.single)} ${onPair(pairs.single, 'beide Diagonalen')} und auf beiden Seiten jeder Linie ` +
    `im Abstand von ${seam} dazu nähen; in der Mitte längs und quer parallel zu den Seiten durchschneiden, dann auf beiden Diagonalen: ` +
    yields(8, eachPair(pairs.single), spare, pairs.single),
  fromTriangles: (triangles) => `${piecesName(triangles)} paarweise rechts auf rechts legen und die langen Seiten zusammennähen.`,
};

import { box } from '../../geometry/convex.ts';
import type { Piece } from '../../geometry/piecing/assembly.ts';
import { compare, equals, rational, subtract } from '../../measure/rational.ts';
import type { Cut } from '../cut.ts';
import type { Wanted } from './order.ts';

/**
 * @returns what lines of the list ask of the cloth. Where the print has a direction, each piece lies on the cloth as in the block, its
 * down along the cloth: a unit that is turned has its pieces the other way round. Squares are free: turned, they are cut alike; so are strips
 * of triangles, every second of which lies upside down however they are cut. Strips of a set lie as their unit is described.
 * @param pieces all pieces of the block, by id
 */
export function wantsOf(cuts: readonly Cut[], pieces: readonly Piece[], directional: boolean): readonly Wanted[] {
  const outlines = new Map(pieces.map(({ id, outline }) => [id, outline]));
  return cuts.flatMap((cut): Wanted[] => {
    const { id, quantity, width, height } = cut;
    if (!directional || cut.nested || equals(width, height)) return [{ cut: id, width, height, count: quantity, turn: true }];
    if (cut.set) return stripsOf(cut, cut.set);
    const lying = cut.pieces.filter((piece) => {
      const { left, right, top, bottom } = box(outlines.get(piece)!);
      const wide = subtract(rational(right.x, right.w), rational(left.x, left.w));
      return compare(wide, subtract(rational(bottom.y, bottom.w), rational(top.y, top.w))) > 0;
    }).length;
    // Cuts that give several pieces share them; which way the odd one lies does not matter.
    const flat = cut.pieces.length === 0 ? 0 : Math.round((quantity * lying) / cut.pieces.length);
    return [
      { cut: id, width, height, count: quantity - flat, turn: false },
      { cut: id, width: height, height: width, count: flat, turn: false },
    ].filter(({ count }) => count > 0);
  });
}

/** Strips that run down the block are cut along the cloth, the others across it. */
const stripsOf = ({ id, quantity }: Cut, { across, length, down }: NonNullable<Cut['set']>): Wanted[] =>
  [
    { cut: id, width: across, height: length, count: down, turn: false },
    { cut: id, width: length, height: across, count: quantity - down, turn: false },
  ].filter(({ count }) => count > 0);

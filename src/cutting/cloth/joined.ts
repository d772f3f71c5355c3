import { compare, divide, multiply, rational, upToStep, type Rational } from '../../measure/rational.ts';
import type { ClothLayout } from '../layout.ts';
import type { ClothOrder, Wanted } from './order.ts';

/** Pieces wider than the cloth whichever way they may lie: each is cut from widths of cloth that are sewn together first. */
export interface Joined {
  readonly cut: string;
  readonly count: number;
  /** Widths of cloth for one piece, and how long each is. */
  readonly widths: number;
  readonly length: Rational;
}

/** @returns what of a layout's unplaced pieces is cut from joined widths, of cloth that is bought by the length */
export function joinedFor({ wanted, bought }: ClothOrder, { unplaced }: ClothLayout): readonly Joined[] {
  if (bought.length !== null) return [];
  return unplaced.flatMap(({ cut, count }) => {
    const of = wanted.find((each) => each.cut === cut)!;
    const ways = [of, ...(of.turn ? [{ ...of, width: of.height, height: of.width }] : [])].map((way) => joinedAs(way, count, bought.width));
    return [ways.reduce((best, way) => (compare(takenByJoined(way), takenByJoined(best)) < 0 ? way : best))];
  });
}

const joinedAs = ({ cut, width, height }: Wanted, count: number, cloth: Rational): Joined => ({
  cut,
  count,
  widths: upToStep(divide(width, cloth), rational(1)).n,
  length: height,
});

/** @returns what joined widths take along the cloth */
export const takenByJoined = ({ count, widths, length }: Joined): Rational => multiply(length, rational(count * widths));

import type { ClothOrder } from '../../src/cutting/cloth/order.ts';
import { divide, rational, type Rational } from '../../src/measure/rational.ts';

/**
 * First fit by decreasing height, piece by piece (E. G. Coffman, M. R. Garey, D. S. Johnson and R. E. Tarjan, Performance bounds for
 * level-oriented two-dimensional packing algorithms, SIAM Journal on Computing 9, 1980).
 * @returns the length in eighths, with pieces that may be turned lying with the shorter side along the cloth, the longer one, or as given
 */
export function firstFit({ wanted, bought }: ClothOrder, along: 'shorter' | 'longer' | 'as given'): number {
  const eighths = (length: Rational): number => Math.floor(divide(length, rational(1, 8)).n / divide(length, rational(1, 8)).d);
  const room = eighths(bought.width);
  const pieces = wanted.flatMap(({ width, height, count, turn }) => {
    const [w, h] = [eighths(width), eighths(height)];
    const turned = turn && ((along === 'shorter' && h > w) || (along === 'longer' && h < w));
    const [across, deep] = turned ? [h, w] : [w, h];
    return Array.from({ length: count }, () => (across > room ? { across: deep, deep: across } : { across, deep }));
  });
  const levels: { deep: number; room: number }[] = [];
  for (const { across, deep } of pieces.sort((a, b) => b.deep - a.deep)) {
    const level = levels.find((one) => one.room >= across);
    if (level === undefined) levels.push({ deep, room: room - across });
    else level.room -= across;
  }
  return levels.reduce((sum, { deep }) => sum + deep, 0);
}

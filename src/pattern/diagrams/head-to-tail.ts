import type { NestedTriangles } from '../../cutting/cut.ts';
import type { Spot } from '../polygons.ts';

/**
 * @param measure what is measured for each triangle, along one edge of the strip and the other by turns
 * @param high how high the strip is
 * @returns the cuts between triangles that lie head to tail along a strip, in order, each from its upper to its lower edge; x along the
 * strip from its end, y across it: see `cutting/from-strips.ts`
 */
export function headToTail(
  form: NestedTriangles['form'],
  triangles: number,
  measure: number,
  high: number,
): readonly (readonly [Spot, Spot])[] {
  const cut = (upper: number, lower: number): readonly [Spot, Spot] => [
    [upper, 0],
    [lower, high],
  ];
  return Array.from({ length: triangles + (form === 'quarter' ? 1 : 0) }, (_, i) => {
    if (form === 'half') {
      const pair = Math.floor(i / 2) * (2 * measure - high);
      return i % 2 === 0 ? cut(pair + measure - high, pair + measure) : cut(pair + 2 * measure - high, pair + 2 * measure - high);
    }
    if (i === 0) return cut(high, 0);
    const end = i * measure - (i - 1) * high;
    return i % 2 === 1 ? cut(end - high, end) : cut(end, end - high);
  });
}

import type { Place } from '../../cutting/template.ts';
import { toNumber } from '../../measure/rational.ts';
import type { Spot } from '../polygons.ts';

/** @returns an exact place as ink, in the unit of its lengths; every number in it is rounded once, at the end */
export function inkOf(place: Place): Spot {
  let [x, y] = [0, 0];
  for (const { k, m, v } of place) {
    const length = toNumber(k) * Math.sqrt(toNumber(m));
    x += length * Number(v[0]);
    y += length * Number(v[1]);
  }
  return [x, y];
}

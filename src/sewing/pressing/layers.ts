import type { Pressed } from '../step.ts';
import type { End, Gathering, SewnJoin } from './meetings.ts';

/**
 * How many layers of cloth lie beside a point of a join once it is pressed: on its first and its second thing, each on the side of the
 * point that the join comes from and on the side it goes to.
 */
export interface Layers {
  readonly first: readonly [number, number];
  readonly second: readonly [number, number];
}

/**
 * Counted as the cloth is folded. A thing is one layer, and two more wherever the allowances of an earlier seam lie; one more on either
 * side of a seam that is open. Sewing takes both things' layers into the allowances, which then lie on the thing they are pressed toward.
 * In the angle between two seams this is 3 where both are pressed away, 5 where both go round the same way, 7 where both are pressed
 * into it (nachograndmasquilts.com); so four patches that nest are at most 7 thick, and 9 where they do not.
 */
export function layersAt({ ends }: Gathering, join: Pick<SewnJoin, 'dx' | 'dy'>, pressed: Pressed, wayOf: (seam: number) => Pressed): Layers {
  const [first, second] = ends.map((side) => thickness(side, join, wayOf)) as [[number, number], [number, number]];
  const folded = (on: readonly [number, number], other: readonly [number, number], share: 'both' | 'own' | 'none'): [number, number] => {
    const at = (i: 0 | 1): number => on[i] + (share === 'none' ? 0 : on[i] + (share === 'both' ? other[i] : 0));
    return [at(0), at(1)];
  };
  const share = (toward: Pressed): 'both' | 'own' | 'none' => (pressed === 'open' ? 'own' : pressed === toward ? 'both' : 'none');
  return { first: folded(first, second, share('first')), second: folded(second, first, share('second')) };
}

/** @returns the layers of one thing along a join, before and after a point of it */
function thickness(ends: readonly End[], { dx, dy }: Pick<SewnJoin, 'dx' | 'dy'>, wayOf: (seam: number) => Pressed): [number, number] {
  const layers: [number, number] = [1, 1];
  for (const { seam, spin, dx: x, dy: y } of ends) {
    const way = wayOf(seam);
    if (way === 'open') {
      layers[0]++;
      layers[1]++;
      continue;
    }
    const clockwise = (way === 'second') === (spin === 1);
    // Clockwise of an end is onward along the join where the join's direction is clockwise of the end's.
    const onward = clockwise === x * dy - y * dx > 0;
    layers[onward ? 1 : 0] += 2;
  }
  return layers;
}

/** @returns the layers where a join is thickest: three of a plain seam pressed to a side, two of one pressed open */
export function thickest(join: SewnJoin, pressed: Pressed, wayOf: (seam: number) => Pressed): number {
  let most = pressed === 'open' ? 2 : 3;
  for (const gathering of join.gatherings) {
    const { first, second } = layersAt(gathering, join, pressed, wayOf);
    most = Math.max(most, ...first, ...second);
  }
  return most;
}

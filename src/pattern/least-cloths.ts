import { leastCloth } from '../cutting/cloth/least.ts';
import type { Solver } from '../cutting/cloth/solver.ts';
import type { Pattern } from './pattern.ts';
import { mayTakeLess, relaid } from './relaid.ts';

/**
 * @param open loads the solver: called once, and only where a fabric's first layout is not known to be the least
 * @returns the pattern with every fabric cut from the least cloth that is found
 */
export async function withLeastCloths(pattern: Pattern, open: () => Promise<Solver>): Promise<Pattern> {
  const unsure = pattern.fabrics.filter(mayTakeLess);
  if (unsure.length === 0) return pattern;
  const solver = await open();
  return relaid(pattern, new Map(unsure.map(({ fabric, order }) => [fabric.id, leastCloth(order, solver)])));
}

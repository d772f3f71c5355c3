import type { Plan } from './plans.ts';

/**
 * Which plans, and how often each, give all that is wanted at the least cost: dynamic programming over everything that may still be
 * wanted, in whole numbers, so that what it finds is least among these plans for certain.
 * @param most a bound on the work: what may be wanted, times the plans
 * @returns null where it would be too much work, or where the plans cannot give it all
 */
export function leastCover(plans: readonly Plan[], wanted: readonly number[], most: number): { readonly times: readonly number[]; readonly cost: number } | 'too much' | 'none' {
  const radix: number[] = [];
  let states = 1;
  for (const count of wanted) {
    radix.push(states);
    states *= count + 1;
    if (states * Math.max(1, plans.length) > most) return 'too much';
  }
  const gives = plans.map((plan) => wanted.map((count, kind) => Math.min(count, plan.gives.get(kind) ?? 0)));
  const holding = wanted.map((_, kind) => plans.flatMap((_, at) => (gives[at]![kind]! > 0 ? [at] : [])));
  const cost = new Float64Array(states).fill(Infinity);
  const choice = new Int32Array(states).fill(-1);
  const left = wanted.map(() => 0);
  cost[0] = 0;
  for (let state = 1; state < states; state++) {
    for (let kind = 0; ; kind++) {
      left[kind]!++;
      if (left[kind]! <= wanted[kind]!) break;
      left[kind] = 0;
    }
    // Some plan must give what is wanted of the first kind that is.
    const first = left.findIndex((count) => count > 0);
    for (const at of holding[first]!) {
      const given = gives[at]!;
      let after = state;
      for (let kind = first; kind < left.length; kind++) after -= radix[kind]! * Math.min(left[kind]!, given[kind]!);
      const sum = plans[at]!.cost + cost[after]!;
      if (sum < cost[state]!) {
        cost[state] = sum;
        choice[state] = at;
      }
    }
  }
  const total = cost[states - 1]!;
  if (total === Infinity) return 'none';
  const times = plans.map(() => 0);
  const rest = [...wanted];
  for (let state = states - 1; state > 0; ) {
    const at = choice[state]!;
    times[at]!++;
    for (let kind = 0; kind < rest.length; kind++) {
      const taken = Math.min(rest[kind]!, gives[at]![kind]!);
      rest[kind]! -= taken;
      state -= radix[kind]! * taken;
    }
  }
  return { times, cost: total };
}

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { prove } from '../../src/sewing/proof.ts';
import { mutants } from './proof-mutants.ts';
import { ALL } from './proof-plans.ts';

describe.each(Object.entries(ALL))('%s', (_, plan) => {
  const changed = mutants(plan);

  test('no single change of a count, a size, a shape, a place, a fabric or an order is accepted', () => {
    expect(changed.length).toBeGreaterThan(20);
    expect(changed.filter((mutant) => prove(mutant.plan).holds).map((mutant) => mutant.what)).toEqual([]);
  });

  test('every fault is one sentence', () => {
    const faults = changed.flatMap((mutant) => prove(mutant.plan).faults);
    expect(faults.filter((fault) => !/^[A-Z][^\n]*\.$/.test(fault) || /undefined|NaN|\[object/.test(fault))).toEqual([]);
  });
});

test('no two changes together cancel one another', () => {
  const plans = Object.entries(ALL);
  fc.assert(
    fc.property(fc.nat(), fc.nat(), fc.nat(), (p, a, b) => {
      const [, plan] = plans[p % plans.length];
      const once = mutants(plan)[a % mutants(plan).length];
      const twice = mutants(once.plan);
      const { what, plan: changed } = twice[b % twice.length];
      // The same place changed back is no change.
      fc.pre(JSON.stringify(changed) !== JSON.stringify(plan));
      const { holds } = prove(changed);
      if (holds) throw new Error(`${once.what}, then ${what}`);
    }),
    { seed: 20261, numRuns: 3000 },
  );
});

import { describe, expect, test } from 'vitest';
import { prove } from '../../src/sewing/proof.ts';
import { areTheSame, laidPieces, showTheSame } from './laid-pieces.ts';
import { HARMLESS } from './sabotage-harmless.ts';
import { plansToSpoil } from './sabotage-plans.ts';
import { SABOTAGE, type Choose } from './sabotage.ts';

/*
 * `PLANS=1000 npx vitest run --project engine tests/sewing/sabotage.test.ts` spoils that many plans in every way, and tells how many of
 * each kind there were; `FIRST=2` takes other plans. A usual run takes a few.
 */
const MANY = Number(process.env['PLANS'] ?? 60);
const FIRST = Number(process.env['FIRST'] ?? 20261107);

const plans = plansToSpoil(FIRST, MANY);

/** The same choice for the same plan and kind, whatever else is run. */
function chance(seed: number): Choose {
  let state = seed;
  // The minimal standard generator of Park and Miller, CACM 31 (1988): 16807 modulo 2^31 - 1. Its first numbers follow the seed.
  const next = (): number => (state = (state * 16807) % 2147483647);
  for (let i = 0; i < 8; i += 1) next();
  return (from) => from[next() % from.length];
}

test(`${MANY} plans of random drawings, of the gallery, the published blocks and the sampler are sound, and accepted`, () => {
  expect(plans.length).toBe(MANY);
  expect(plans.flatMap(({ name, plan }) => prove(plan).faults.map((fault) => `${name}: ${fault}`))).toEqual([]);
}, 600_000);

test.each(HARMLESS)('$says: still sound, and accepted', ({ says, change }) => {
  let changed = 0;
  const raised = plans.flatMap(({ name, plan }, p) => {
    const other = change(plan, chance(1 + p));
    if (!other) return [];
    changed += 1;
    return prove(other).faults.map((fault) => `${name}: ${fault}`);
  });
  if (process.env['PLANS']) console.log(`${says}: ${changed} changed, ${raised.length} faults raised`);
  expect(raised).toEqual([]);
  expect(changed).toBeGreaterThan(0);
}, 600_000);

test('at least twenty kinds of sabotage, each with a name of its own', () => {
  expect(new Set(SABOTAGE.map(({ says }) => says)).size).toBe(SABOTAGE.length);
  expect(SABOTAGE.length).toBeGreaterThanOrEqual(20);
});

describe('is found, for what it is, in every plan that can be spoilt so', () => {
  test.each(SABOTAGE.map((kind, i) => ({ ...kind, i })))(
    '$says',
    ({ says, found, mayShowTheSame, spoil, i }) => {
      const [missed, raised, other]: [string[], string[], string[]] = [[], [], []];
      let [spoilt, still] = [0, 0];
      plans.forEach(({ name, plan }, p) => {
        const wrong = spoil(plan, chance(1 + p * SABOTAGE.length + i));
        if (!wrong) return;
        const { holds, faults } = prove(wrong);
        const [before, after] = mayShowTheSame ? [laidPieces(plan.steps), laidPieces(wrong.steps)] : [[], []];
        if (mayShowTheSame && showTheSame(before, after)) {
          still += 1;
          // Its seams may lie elsewhere in the same cloth, which is a fault or none; the very same pieces are none.
          if (areTheSame(before, after) && !holds) raised.push(`${name}: ${faults.join(' ')}`);
          return;
        }
        spoilt += 1;
        if (holds) missed.push(name);
        else if (!faults.some((fault) => found.test(fault))) other.push(`${name}: ${faults.join(' ')}`);
      });
      const same = mayShowTheSame ? `, ${still} still the same` : '';
      if (process.env['PLANS']) console.log(`${says}: ${spoilt} spoilt${same}, ${missed.length} missed`);
      expect(missed, 'accepted').toEqual([]);
      expect(raised, 'sound, but not accepted').toEqual([]);
      expect(other, 'found for something else only').toEqual([]);
      expect(spoilt).toBeGreaterThan(0);
    },
    600_000,
  );
});

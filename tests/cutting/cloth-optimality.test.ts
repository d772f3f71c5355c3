import { beforeAll, describe, expect, test } from 'vitest';
import { quickCloth } from '../../src/cutting/cloth/cloth.ts';
import { leastCloth } from '../../src/cutting/cloth/least.ts';
import { openSolver, type Solver } from '../../src/cutting/cloth/solver.ts';
import { compare, rational, toNumber } from '../../src/measure/rational.ts';
import { faultsOf } from './cloth-checker.ts';
import { leastLength } from './cloth-optimum.ts';
import { firstFit } from './first-fit.ts';
import { JUDGED, randomOrder } from './random-orders.ts';

/*
 * `LISTS=200 npx vitest run --project engine tests/cutting/cloth-optimality.test.ts` tries so many lists; a usual run tries a few.
 * `FIRST_LIST=1000` begins elsewhere.
 */
const LISTS = Number(process.env['LISTS'] ?? 2);
const FIRST_LIST = Number(process.env['FIRST_LIST'] ?? 7);

let solver: Solver;
beforeAll(async () => {
  solver = await openSolver();
});

describe('the layouts of a random cut list of 5 to 40 kinds', () => {
  test(
    `are right, never longer than first fit by decreasing height, and within 1 % of the bound or proved least in 95 % (${LISTS} lists)`,
    () => {
      let [near, proved] = [0, 0];
      for (let seed = FIRST_LIST; seed < FIRST_LIST + LISTS; seed++) {
        const order = randomOrder(seed, JUDGED);
        const quick = quickCloth(order);
        const least = leastCloth(order, solver);
        expect(faultsOf(order, quick), `list ${seed}`).toEqual([]);
        expect(faultsOf(order, least), `list ${seed}`).toEqual([]);
        for (const along of ['shorter', 'longer', 'as given'] as const) {
          expect(compare(quick.takes, rational(firstFit(order, along), 8)), `list ${seed}`).toBeLessThanOrEqual(0);
        }
        expect(compare(least.takes, quick.takes)).toBeLessThanOrEqual(0);
        const [takes, bound] = [toNumber(least.takes), toNumber(least.least)];
        if (takes <= bound * 1.01) near++;
        if (takes === bound) proved++;
      }
      if (LISTS > 10) console.log(`${near} of ${LISTS} within 1 % of the bound, ${proved} proved least`);
      expect(near).toBeGreaterThanOrEqual(Math.ceil(LISTS * 0.95));
    },
    Math.max(60_000, LISTS * 60_000),
  );
});

test('the layout that is there at once is never longer than first fit by decreasing height, whichever way the pieces lie', () => {
  for (let seed = 1; seed <= 400; seed++) {
    const order = randomOrder(seed, { kinds: [1, 40], count: [3, 10, 60][seed % 3]! });
    const { takes } = quickCloth(order);
    for (const along of ['shorter', 'longer', 'as given'] as const) {
      expect(compare(takes, rational(firstFit(order, along), 8)), `list ${seed}, ${along}`).toBeLessThanOrEqual(0);
    }
  }
});

describe('of a handful of pieces', () => {
  test('the least layout is the least of all there are, and is proved so', () => {
    for (let seed = 1; seed <= 40; seed++) {
      const order = randomOrder(seed, { kinds: [2, 4], count: 2 });
      const optimum = leastLength(order);
      const found = leastCloth(order, solver);
      expect(faultsOf(order, found), `list ${seed}`).toEqual([]);
      expect([toNumber(found.takes) * 8, toNumber(found.least) * 8], `list ${seed}`).toEqual([optimum, optimum]);
    }
  });

  test('on a narrow cloth, where the bound of area says little, too', () => {
    for (let seed = 101; seed <= 125; seed++) {
      const order = { ...randomOrder(seed, { kinds: [2, 4], count: 2 }), bought: { form: 'by length', width: rational(18), length: null, count: null } } as const;
      const optimum = leastLength(order);
      const found = leastCloth(order, solver);
      expect([toNumber(found.takes) * 8, toNumber(found.least) * 8], `list ${seed}`).toEqual([optimum, optimum]);
    }
  });

  test('two lengths of one strip may be a column: 6 by 3 twice beside 4 by 2 three times take 6 of a cloth 10 wide', () => {
    const [size, bought] = [rational, { form: 'by length', width: rational(10), length: null, count: null } as const];
    const wanted = [
      { cut: '1', width: size(6), height: size(3), count: 2, turn: false },
      { cut: '2', width: size(4), height: size(2), count: 3, turn: false },
    ];
    const found = leastCloth({ wanted, own: [], bought, reach: size(24) }, solver);
    expect([found.takes, found.least]).toEqual([size(6), size(6)]);
  });
});

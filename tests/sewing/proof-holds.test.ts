import { expect, test } from 'vitest';
import { prove } from '../../src/sewing/proof.ts';
import { ALL, shooFly, whirl } from './proof-plans.ts';
import { hourglasses } from './proof-unit-plans.ts';

test.each(Object.entries(ALL))('the plan of %s holds', (_, plan) => {
  expect(prove(plan).faults).toEqual([]);
  expect(prove(plan).holds).toBe(true);
});

test('thirteen pieces of a shoo fly are joined by twelve seams', () => {
  expect(prove(shooFly).seams).toBe(12);
});

test('a part-way seam and its finish are one seam', () => {
  expect(prove(whirl).seams).toBe(4);
});

test('hourglasses in three fabrics take two squares of the fabric that lies twice', () => {
  // Two squares rust–oat and two rust–kelp make two halves each, and these four units; identity by area: 4 squares, 4 units.
  expect(prove(hourglasses(['rust', 'oat', 'rust', 'kelp'], 4, { rust: 2, oat: 1, kelp: 1 })).faults).toEqual([]);
  expect(prove(hourglasses(['rust', 'oat', 'rust', 'kelp'], 4, { rust: 1, oat: 1, kelp: 1 })).faults.join()).toContain(
    'gives unit A 1 square, but 4 of it take 2',
  );
});

test('hourglasses in four fabrics come out as pairs of mirror images, so half of them are of no use', () => {
  expect(prove(hourglasses(['rust', 'oat', 'moss', 'kelp'], 2, { rust: 1, oat: 1, moss: 1, kelp: 1 }, 2)).faults).toEqual([]);
  expect(prove(hourglasses(['rust', 'oat', 'moss', 'kelp'], 4, { rust: 1, oat: 1, moss: 1, kelp: 1 })).holds).toBe(false);
});

import { describe, expect, it } from 'vitest';
import { byChance, type Chance } from '../../src/pattern/by-chance.ts';
import { box, patternDrawn, patternOf } from '../sewing/told.ts';

const usual: Chance = { allowance: 1 / 64, cutting: 1 / 32, blocks: 4000, seed: 7 };

/** A row of so many squares of an inch. */
const row = (count: number): ReturnType<typeof patternDrawn>['steps'] =>
  patternDrawn({
    finished: `${count} by 1`,
    grid: [count, 1],
    ground: 'oat',
    patches: Array.from({ length: Math.floor(count / 2) }, (_, i) => box('ink', 2 * i + 1, 0, 1, 1)),
  }).steps;

/** Nineteen of twenty lie above the fifth of a hundred, and below the ninety-fifth: 1.645 standard deviations of a normal distribution. */
const DEVIATIONS = 1.645;

describe('blocks sewn with errors by chance', () => {
  it.each([
    // Errors that have nothing to do with each other add up by their squares: each seam takes twice its error, each piece adds its own.
    ['of seams alone', { allowance: 1 / 64, cutting: 0 }, 9, Math.sqrt(8 * 4) / 64],
    ['of cutting alone', { allowance: 0, cutting: 1 / 32 }, 9, Math.sqrt(9) / 32],
    ['of both', { allowance: 1 / 64, cutting: 1 / 32 }, 5, Math.sqrt((4 * 4) / 64 ** 2 + 5 / 32 ** 2)],
  ] as const)('%s vary in width as the squares of their errors add up', (_, off, count, deviation) => {
    const { low, middle, high } = byChance(row(count), { ...usual, ...off }).wider;
    expect(Math.abs(middle)).toBeLessThan(deviation / 15);
    for (const far of [-low, high]) expect(far / (DEVIATIONS * deviation)).toBeGreaterThan(0.94);
    for (const far of [-low, high]) expect(far / (DEVIATIONS * deviation)).toBeLessThan(1.06);
  });

  it('grow with the root of the number of seams, where one error everywhere grows with their number', () => {
    const high = (count: number): number => byChance(row(count), { ...usual, cutting: 0 }).wider.high;
    expect(high(17) / high(5)).toBeGreaterThan(1.85);
    expect(high(17) / high(5)).toBeLessThan(2.15);
  });

  it('miss most where most seams lie before the point', () => {
    // The seams are laid with their left ends even: what is farthest to the right has the most behind it.
    const { steps } = patternOf('tests/gallery/checkerboard-8');
    const { misses } = byChance(steps, { ...usual, blocks: 400 });
    const block = misses.filter(({ step, join }) => step === steps.length - 1 && join === 0).sort((a, b) => a.at.x / a.at.w - b.at.x / b.at.w);
    expect(block.length).toBeGreaterThan(3);
    expect(block.at(-1)!.apart.high).toBeGreaterThan(1.5 * block[0]!.apart.high);
  });

  it('without errors are all as they should be; the same seed sews the same blocks', () => {
    const { steps } = patternOf('tests/cases/ohio-star-12-triangles');
    const exact = byChance(steps, { allowance: 0, cutting: 0, blocks: 3, seed: 1 });
    expect([exact.wider, exact.higher, ...exact.misses.map(({ apart }) => apart)].every(({ low, high }) => Math.abs(low) < 1e-12 && high < 1e-12)).toBe(true);
    const few = { ...usual, blocks: 50 };
    expect(byChance(steps, few)).toEqual(byChance(steps, few));
    expect(byChance(steps, { ...few, seed: 8 })).not.toEqual(byChance(steps, few));
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { leastTrouble, type Puzzle } from '../../src/sewing/pressing/least.ts';

const MOST = 9;

/** Things up to nine, any pairs of them, troubles up to twelve: many ties, many odd rings. */
const puzzles: fc.Arbitrary<Puzzle> = fc.integer({ min: 1, max: MOST }).chain((count) =>
  fc.record({
    single: fc.array(fc.tuple(fc.nat(12), fc.nat(12)), { minLength: count, maxLength: count }),
    pairs: fc
      .array(fc.record({ one: fc.nat(count - 1), other: fc.nat(count - 1), alike: fc.nat(12), unlike: fc.nat(12) }), { maxLength: 3 * count })
      .map((pairs) => pairs.filter(({ one, other }) => one !== other)),
  }),
);

const troubleOf = ({ single, pairs }: Puzzle, way: (thing: number) => number): number =>
  single.reduce((sum, against, thing) => sum + against[way(thing)]!, 0) +
  pairs.reduce((sum, { one, other, alike, unlike }) => sum + (way(one) === way(other) ? alike : unlike), 0);

const tried = (puzzle: Puzzle): number =>
  Math.min(...Array.from({ length: 1 << puzzle.single.length }, (_, bits) => troubleOf(puzzle, (thing) => (bits >> thing) & 1)));

describe('the least trouble', () => {
  it('is that of all choices tried, where all can be held at once', () => {
    fc.assert(
      fc.property(puzzles, (puzzle) => {
        const { ways, trouble, atLeast } = leastTrouble(puzzle, MOST);
        expect(troubleOf(puzzle, (thing) => ways[thing]!)).toBe(trouble);
        expect([trouble, atLeast]).toEqual([tried(puzzle), tried(puzzle)]);
      }),
      { seed: 1, numRuns: 300 },
    );
  });

  it('is found and proved by branch and bound too, where only few are held at once', () => {
    fc.assert(
      fc.property(puzzles, fc.integer({ min: 1, max: 3 }), (puzzle, width) => {
        const { ways, trouble, atLeast } = leastTrouble(puzzle, width, 10_000);
        expect(troubleOf(puzzle, (thing) => ways[thing]!)).toBe(trouble);
        expect([trouble, atLeast]).toEqual([tried(puzzle), tried(puzzle)]);
      }),
      { seed: 2, numRuns: 300 },
    );
  });

  it('lies between the bound and what is found, where the effort runs out', () => {
    let open = 0;
    fc.assert(
      fc.property(puzzles, (puzzle) => {
        const { ways, trouble, atLeast } = leastTrouble(puzzle, 1, 1);
        expect(troubleOf(puzzle, (thing) => ways[thing]!)).toBe(trouble);
        expect(atLeast).toBeLessThanOrEqual(tried(puzzle));
        expect(trouble).toBeGreaterThanOrEqual(tried(puzzle));
        if (atLeast < trouble) open++;
      }),
      { seed: 3, numRuns: 300 },
    );
    expect(open).toBeGreaterThan(10);
  });
});

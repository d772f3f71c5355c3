import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { halvesFromStrip, quartersFromStrip, stripLength, stripsFor, trianglesIn, type StripTriangle } from '../../src/cutting/from-strips.ts';
import { formatLength } from '../../src/measure/lengths.ts';
import { compare, rational, toNumber, ZERO, type Rational } from '../../src/measure/rational.ts';
import { areaBetween, offset } from './buffer.ts';
import { block, cutFor, goose, halves, lines, plain, row, squareInSquare } from './sewn.ts';

const QUARTER_INCH = rational(1, 4);
const EIGHTHS = rational(1, 8);
const text = ({ height, measure }: StripTriangle): string => `${formatLength(height)} high, ${formatLength(measure)} along`;

describe('half-square triangles from strips', () => {
  // Lou Quilts, Half square triangles with a triangle ruler (louquilts.blogspot.com): 4 in. units from strips 4 1/2 wide, cut triangles
  // at the 4 1/2 line once both tips are off. atbquilting.wordpress.com, 2011-08-16: strips 1/2 wider than the finished size.
  // Along the strip the square's own + 7/8: the triangle is the same but for its tips.
  test.each([['4', rational(4), '4 1/2 high, 4 7/8 along'], ['2', rational(2), '2 1/2 high, 2 7/8 along'], ['3 1/2', rational(7, 2), '4 high, 4 3/8 along']])(
    'of %s in. finished',
    (_, leg, said) => expect(text(halvesFromStrip(leg, QUARTER_INCH, EIGHTHS, ZERO))).toBe(said),
  );

  test('take 1 1/4 more than the finished size, two and two: a quarter-square’s allowance [derived]', () => {
    const two = stripLength(halvesFromStrip(rational(4), QUARTER_INCH, EIGHTHS, ZERO), 2);
    expect(formatLength(two)).toBe('5 1/4');
  });
});

test('quarter-square triangles of 4 in. come from strips of half that and 1/2, the square’s 5 1/4 along [derived]', () => {
  expect(text(quartersFromStrip(rational(4), QUARTER_INCH, EIGHTHS, ZERO))).toBe('2 1/2 high, 5 1/4 along');
});

type XY = readonly [number, number];

/** The triangles of one strip as somebody cuts them who measures along one edge and the other by turns; corners clockwise, y down. */
function cutApart({ form, height, measure }: StripTriangle, count: number): readonly (readonly XY[])[] {
  const [h, m] = [toNumber(height), toNumber(measure)];
  const triangles: (readonly XY[])[] = [];
  let [lower, upper] = [0, form === 'half' ? 0 : h];
  for (let i = 0; i < count; i += 1) {
    const begin: readonly XY[] = [[lower, h], [upper, 0]];
    if (i % 2 === 0) [lower, upper] = [lower + m, lower + m - h];
    else [lower, upper] = [form === 'half' ? upper + m : upper + m - h, upper + m];
    triangles.push([...begin, [upper, 0], [lower, h]]);
  }
  return triangles;
}

/** The finished triangle that lies in the first place of a strip, or in the second, its allowance from the edges. */
function finishedIn({ form, height, measure }: StripTriangle, size: number, s: number, second: boolean): readonly XY[] {
  const [h, m] = [toNumber(height), toNumber(measure)];
  const first: readonly XY[] =
    form === 'half'
      ? [[s, h - s], [s, h - s - size], [s + size, h - s]]
      : [[(m - size) / 2, h - s], [m / 2, h - s - size / 2], [(m + size) / 2, h - s]];
  // The second is the first turned half round, so that the two share their slanted side.
  return second ? first.map(([x, y]): XY => [2 * m - h - x, h - y]) : first;
}

const area = (outline: readonly XY[]): number =>
  Math.abs(outline.reduce((sum, [x, y], i) => sum + x * outline[(i + 1) % outline.length]![1] - outline[(i + 1) % outline.length]![0] * y, 0)) / 2;

const triangle = fc
  .record({
    form: fc.constantFrom('half', 'quarter'),
    size: fc.integer({ min: 4, max: 64 }).map((n) => rational(n, 8)),
    seam: fc.constantFrom(rational(1, 4), rational(3, 16), rational(3, 8)),
    ruler: fc.constantFrom(rational(1, 8), rational(1, 16), rational(1, 4)),
  })
  .map(({ form, size, seam, ruler }) => ({
    size,
    seam,
    strip: form === 'half' ? halvesFromStrip(size, seam, ruler, ZERO) : quartersFromStrip(size, seam, ruler, ZERO),
  }));

const LAWS = { seed: 20261125, numRuns: 40 };

describe('triangles head to tail', () => {
  test('each hold the finished triangle with everything within its seam allowance, by JTS', () => {
    fc.assert(
      fc.property(triangle, fc.boolean(), ({ strip, size, seam }, second) => {
        const piece = cutApart(strip, 2)[second ? 1 : 0]!;
        const wanted = offset(finishedIn(strip, toNumber(size), toNumber(seam), second), toNumber(seam), 'round');
        expect(areaBetween(piece, wanted, 'missing')).toBeLessThan(1e-9);
      }),
      LAWS,
    );
  });

  test('lie side by side in their strip, as long as it is and no longer', () => {
    fc.assert(
      fc.property(triangle, fc.integer({ min: 1, max: 9 }), ({ strip }, count) => {
        const pieces = cutApart(strip, count);
        const reach = Math.max(...pieces.flat().map(([x]) => x));
        expect(reach).toBeCloseTo(toNumber(stripLength(strip, count)), 9);
        // Each begins where the one before it ends, so the areas are those of trapezoids that do not overlap.
        const [first] = pieces;
        for (const piece of pieces) expect(area(piece)).toBeCloseTo(area(first!), 9);
        const [h, end] = [toNumber(strip.height), toNumber(stripLength(strip, count))];
        expect(pieces.reduce((sum, piece) => sum + area(piece), 0)).toBeLessThanOrEqual(h * end + 1e-9);
      }),
      LAWS,
    );
  });

  test('a wing’s long side is as long as the goose’s short one, once the tips are cut across: edges meet at both ends', () => {
    // On a ruler so fine that what is measured is as good as exact; a goose 6 × 3.
    const [s, fine] = [0.25, rational(1, 65536)];
    const [wing, bird] = [halvesFromStrip(rational(3), QUARTER_INCH, fine, ZERO), quartersFromStrip(rational(6), QUARTER_INCH, fine, ZERO)];
    const [h, m, high, along] = [wing.height, wing.measure, bird.height, bird.measure].map(toNumber) as [number, number, number, number];
    // Both tips cut where the legs are as long as the strip is high: the long side runs over 2h − m of either leg.
    const ofWing = 2 * h - m;
    // From the apex, cut off with the strip's edge, to the tip cut across the long side, which then measures the finished 6 and 2s.
    const ofBird = (6 + 2 * s - (along - 2 * high)) / 2;
    expect(ofBird).toBeCloseTo(ofWing, 3);
  });

  test('are as many to a length of cloth as fit, and one at least', () => {
    fc.assert(
      fc.property(triangle, fc.integer({ min: 8, max: 400 }).map((n) => rational(n, 8)), ({ strip }, length) => {
        let most = 1;
        while (compare(stripLength(strip, most + 1), length) <= 0) most += 1;
        expect(trianglesIn(strip, length)).toBe(most);
      }),
      LAWS,
    );
  });

  test('come from strips that are all alike, as few as the cloth allows, and none longer than it must be', () => {
    fc.assert(
      fc.property(triangle, fc.integer({ min: 1, max: 300 }), ({ strip }, wanted) => {
        const room: Rational = rational(42);
        const { strips, nested, size } = stripsFor(strip, wanted, room);
        const most = trianglesIn(strip, room);
        expect(strips).toBe(Math.ceil(wanted / most));
        expect(strips * nested.triangles).toBeGreaterThanOrEqual(wanted);
        expect(strips * (nested.triangles - 1)).toBeLessThan(wanted);
        expect(size).toMatchObject({ width: strip.height, height: stripLength(strip, nested.triangles) });
      }),
      LAWS,
    );
  });
});

describe('on the cutting list', () => {
  const room = (): Rational => rational(42);

  test('geese and their wings share a strip’s height, and with the squares beside them', () => {
    const list = cutFor(block([goose('oat', 'teal', 'teal', 2), plain('oat', 2)]), { methods: { 'flying geese': 'triangles-from-strips' }, blocks: 12, room });
    // 12 geese 4 × 2: 5 1/4 + 11 (5 1/4 − 2 1/2) = 35 1/2; 24 wings: 12 (2 · 2 7/8 − 2 1/2) = 39.
    expect(lines(list)).toEqual(['oat 1 @ 2 1/2 × 35 1/2 head to tail', 'oat 12 @ 2 1/2', 'teal 1 @ 2 1/2 × 39 head to tail']);
    expect(list.cuts.map(({ nested }) => nested?.triangles)).toEqual([12, undefined, 24]);
  });

  test('triangles of one size share strips whatever units they are for, and an odd count leaves one over', () => {
    const part = block([row(halves('oat', 'teal', 2), plain('oat', 2))], [row(plain('oat', 2), squareInSquare('rust', 'oat', 2))]);
    const chosen = { 'half-square triangle': 'triangles-from-strips', 'square in a square': 'triangles-from-strips' } as const;
    const oat = cutFor(part, { methods: chosen, room, blocks: 13 }).cuts.filter(({ fabric, subcut }) => fabric === 'oat' && subcut === 'head to tail');
    // 13 of 2 in.: in one strip; 52 of 1 in., 1 7/8 along 1 1/2 high: 37 to 42 in., so 26 to each of two.
    expect(oat.map(({ quantity, nested, spare }) => [quantity, nested?.triangles, spare])).toEqual([
      [1, 13, 0],
      [2, 26, 0],
    ]);
    // 21 in. hold twelve of the 2 in. triangles, 6 (2 · 2 7/8 − 2 1/2) = 19 1/2: so two strips of seven, one triangle over.
    const narrow = cutFor(part, { methods: chosen, room: () => rational(21), blocks: 13 }).cuts.find(({ fabric, nested, spare }) => fabric === 'oat' && nested && spare > 0);
    expect([narrow?.quantity, narrow?.nested?.triangles, narrow?.spare]).toEqual([2, 7, 1]);
  });
});

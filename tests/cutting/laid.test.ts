import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { clothTiles, leftovers, type ClothTiles, type Tiles } from '../../src/cutting/laid.ts';
import type { LaidStrip } from '../../src/cutting/layout.ts';
import { formatLength } from '../../src/measure/lengths.ts';
import { add, multiply, rational, ZERO, type Rational } from '../../src/measure/rational.ts';
import { anyCloth, bolt, cloth, column, fatQuarter, line, pieces, strip } from './any-cloth.ts';

const laws = { seed: 20261125, numRuns: 300 };

/** Lays a tile's rectangles on the cloth, cell by cell of one step. */
function lay(cells: Uint8Array, wide: number, tile: Tiles, top: number): void {
  for (let y = 0; y < tile.height * tile.down; y++) {
    for (let x = 0; x < tile.width * tile.across; x++) cells[(top + tile.top + y) * wide + tile.left + x]! += 1;
  }
}

function covered(tiles: ClothTiles): Uint8Array {
  const cells = new Uint8Array(tiles.width * tiles.height);
  for (const each of tiles.strips) {
    for (let i = 0; i < each.times; i++) for (const tile of [...each.pieces, ...each.left]) lay(cells, tiles.width, tile, each.top + i * each.height);
  }
  if (tiles.end) lay(cells, tiles.width, tiles.end, 0);
  return cells;
}

const areaOf = (width: Rational, length: Rational, count: number): Rational => multiply(multiply(width, length), rational(count));

describe('what lies on a cloth', () => {
  test('covers it exactly once, pieces and leftovers together', () => {
    fc.assert(
      fc.property(fc.gen(), (gen) => {
        const any = anyCloth(gen);
        const [tiles] = clothTiles([any], []);
        expect(covered(tiles!).every((times) => times === 1)).toBe(true);
      }),
      laws,
    );
  });

  test('is every piece of the layout, and no other', () => {
    fc.assert(
      fc.property(fc.gen(), (gen) => {
        const any = anyCloth(gen);
        const wanted = new Map<string, number>();
        const want = (cut: string, width: Rational, length: Rational, count: number): void => {
          const key = `${cut}: ${formatLength(width)} × ${formatLength(length)}`;
          wanted.set(key, (wanted.get(key) ?? 0) + count);
        };
        for (const { columns, times } of any.strips) {
          for (const each of columns) for (const p of each.pieces) want(p.cut, p.width, p.length, p.count * each.times * times);
        }
        const [{ strips, step }] = clothTiles([any], []) as [ClothTiles];
        for (const { pieces: laid, times } of strips) {
          const size = (steps: number): Rational => multiply(step, rational(steps));
          for (const tile of laid) want(tile.cut, size(tile.width), size(tile.height), -tile.across * tile.down * times);
        }
        expect([...wanted.values()].every((count) => count === 0)).toBe(true);
      }),
      laws,
    );
  });

  test('leaves over what the pieces do not take, to the last square step', () => {
    fc.assert(
      fc.property(fc.gen(), (gen) => {
        const any = anyCloth(gen);
        const tiles = clothTiles([any, any], []);
        const taken = any.strips.flatMap(({ columns, times }) =>
          columns.flatMap((each) => each.pieces.map((p) => areaOf(p.width, p.length, p.count * each.times * times))),
        );
        const length = any.source.length ?? any.strips.reduce((sum, each) => add(sum, multiply(each.length, rational(each.times))), ZERO);
        const all = [...taken.map((area) => multiply(area, rational(2 * any.times))), ...leftovers(tiles).map((each) => areaOf(each.width, each.length, each.count))];
        expect(all.reduce(add, ZERO)).toEqual(areaOf(any.source.width, length, 2 * any.times));
      }),
      laws,
    );
  });
});

describe('a fat quarter with nine squares', () => {
  // Three strips of 5 1/2 across 22 in.: four squares fit, three are cut; what is left is counted by hand.
  const squares = cloth(fatQuarter, strip(rational(11, 2), 3, column(rational(11, 2), 3, pieces('1', rational(11, 2), rational(11, 2)))));

  test('leaves a band below and three ends of strips, the largest first', () => {
    const told = leftovers(clothTiles([squares], [line('1')])).map(({ width, length, count }) => `${count} of ${formatLength(width)} × ${formatLength(length)}`);
    expect(told).toEqual(['1 of 22 × 1 1/2', '3 of 5 1/2 × 5 1/2']);
  });

  test('numbers its strips once, however often they come', () => {
    const [{ strips, step, end }] = clothTiles([squares], [line('1')]) as [ClothTiles];
    expect(strips.map(({ number, times }) => [number, times])).toEqual([[1, 3]]);
    expect(step).toEqual(rational(1, 2));
    expect(end).toEqual({ left: 0, top: 33, width: 44, height: 3, across: 1, down: 1 });
  });
});

describe('rectangles that are cut on the diagonal', () => {
  const both = line('1', { subcut: 'once', quantity: 5, diagonals: { falling: 3, rising: 2 } });
  const standing = column(rational(2), 5, pieces('1', rational(2), rational(3)));
  const lying = column(rational(3), 5, pieces('1', rational(3), rational(2)));
  const fallingOn = (...strips: readonly LaidStrip[]): (number | null)[] =>
    clothTiles([cloth(bolt(42), ...strips)], [both]).flatMap((tiles) => tiles.strips.flatMap((each) => each.pieces.map(({ falling }) => falling)));

  test('fall and rise as often as the list says, where they stand as on the list', () => expect(fallingOn(strip(rational(3), 1, standing))).toEqual([3]));
  test('and the other way round where they lie on their long side', () => expect(fallingOn(strip(rational(2), 1, lying))).toEqual([2]));
  test('are told strip by strip', () => {
    const two = column(rational(2), 2, pieces('1', rational(2), rational(3)));
    const one = column(rational(2), 1, pieces('1', rational(2), rational(3)));
    expect(fallingOn(strip(rational(3), 1, two), strip(rational(3), 1, two), strip(rational(3), 1, one))).toEqual([2, 1, 0]);
    // Equal strips come apart where their diagonals change.
    expect(fallingOn(strip(rational(3), 2, two), strip(rational(3), 1, one))).toEqual([2, 1, 0]);
    const five = { ...both, quantity: 10, diagonals: { falling: 4, rising: 6 } };
    const [tiles] = clothTiles([cloth(bolt(42), strip(rational(3), 5, two))], [five]);
    expect(tiles!.strips.map(({ number, top, times, pieces: [laid] }) => [number, top, times, laid!.falling])).toEqual([[1, 0, 2, 2], [2, 6, 3, 0]]);
  });
  test('are not told where they change from one of equal cloths to the next', () => {
    const quarters = { ...cloth(fatQuarter, strip(rational(3), 1, column(rational(2), 2, pieces('1', rational(2), rational(3))))), times: 2 };
    const [tiles] = clothTiles([quarters], [{ ...both, quantity: 4, diagonals: { falling: 3, rising: 1 } }]);
    expect(tiles!.strips[0]!.pieces[0]!.falling).toBeNull();
  });
  test('a square may be cut along either', () => {
    const square = line('2', { shape: 'square', subcut: 'once' });
    const [tiles] = clothTiles([cloth(bolt(42), strip(rational(2), 1, column(rational(2), 3, pieces('2', rational(2), rational(2)))))], [square]);
    expect(tiles!.strips[0]!.pieces[0]).toMatchObject({ subcut: 'once', falling: 3 });
  });
});

describe('a strip that is cut across into sections', () => {
  const long = cloth(bolt(42), strip(rational(9), 1, column(rational(4), 3, pieces('1', rational(4), rational(9, 2), 2)), column(rational(2), 1, pieces('2', rational(2), rational(9)))));
  test('says how many there are of which width, and what all of them hold', () => {
    const [{ strips, step }] = clothTiles([long], [line('1'), line('2')]) as [ClothTiles];
    const told = strips[0]!.sections.map(({ width, times, pieces: held }) => [times, formatLength(multiply(step, rational(width))), ...held.map(({ cut, across, down }) => `${across * down} of ${cut}`)]);
    expect(told).toEqual([[3, '4', '6 of 1'], [1, '2', '1 of 2']]);
    expect(strips[0]!.crosscuts.map((at) => formatLength(multiply(step, rational(at))))).toEqual(['4', '8', '12', '14']);
  });
});

describe('cloth by the length', () => {
  const squares = cloth(bolt(42), strip(rational(4), 1, column(rational(4), 10, pieces('1', rational(4), rational(4)))));

  test('ends where the strips end, as long as no more is bought', () => {
    const [{ height, end }] = clothTiles([squares], [line('1')]) as [ClothTiles];
    expect([height, end]).toEqual([4, null]);
  });

  test('leaves over what is bought beyond', () => {
    const told = leftovers(clothTiles([squares], [line('1')], rational(1, 2))).map(({ width, length }) => `${formatLength(width)} × ${formatLength(length)}`);
    expect(told).toEqual(['42 × 1/2', '2 × 4']);
  });
});

describe('triangles from strips', () => {
  test('keep what is measured for each of them, on the steps of the cloth', () => {
    const nested = { form: 'half', triangles: 4, measure: rational(27, 8) } as const;
    const strips = cloth(bolt(42), strip(rational(5, 2), 1, column(rational(17, 2), 1, pieces('1', rational(17, 2), rational(5, 2)))));
    const [{ step, strips: laid }] = clothTiles([strips], [line('1', { subcut: 'head to tail', nested })]) as [ClothTiles];
    expect(step).toEqual(rational(1, 8));
    expect(laid[0]!.pieces[0]!.nested).toEqual({ form: 'half', triangles: 4, measure: 27 });
  });
});

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { UnitKind } from '../../src/geometry/piecing/assembly.ts';
import type { Method } from '../../src/block/choices.ts';
import type { Cut } from '../../src/cutting/cut.ts';
import type { CutList } from '../../src/cutting/cutting.ts';
import { methodsFor } from '../../src/cutting/methods.ts';
import { add, compare, multiply, rational, subtract, toNumber } from '../../src/measure/rational.ts';
import { compareWith } from '../../src/measure/surd.ts';
import {
  block,
  column,
  cornered,
  cutFor,
  goose,
  halves,
  hourglass,
  lines,
  mirroredPart,
  peak,
  pieced,
  plain,
  row,
  splitHourglass,
  squareInSquare,
  turnedPart,
  type Part,
} from './sewn.ts';

const laws = { seed: 20260715, numRuns: 60 };
const cloth = fc.constantFrom('oat', 'teal', 'rust');

/** A part of 4 by 4 steps. */
const parts: fc.Arbitrary<Part> = fc.oneof(
  cloth.map((a) => plain(a, 4)),
  fc.tuple(cloth, cloth).map(([a, b]) => halves(a, b, 4)),
  fc.tuple(cloth, cloth, cloth, cloth).map((four) => hourglass(four, 4)),
  fc.tuple(cloth, cloth, cloth).map(([a, b, c]) => splitHourglass(a, b, c, 4)),
  fc.tuple(cloth, cloth, cloth).map(([a, b, c]) => column(goose(a, b, c, 2), goose(a, c, b, 2))),
  fc.tuple(cloth, cloth).map(([a, b]) =>
    cornered(a, 4, 4, [
      [0, b, 1],
      [2, b, 1],
    ]),
  ),
  fc.tuple(cloth, cloth).map(([a, b]) => squareInSquare(a, b, 4)),
  fc.tuple(cloth, cloth).map(([a, b]) => row(halves(a, b, 2, 4), halves(b, a, 2, 4, 'rising'))),
  fc.tuple(cloth, cloth, cloth).map(([a, b, c]) => peak(a, b, c, 4)),
);
const turnedParts = fc.tuple(parts, fc.nat(3), fc.boolean()).map(([part, turns, mirrored]) => {
  let lying = mirrored ? mirroredPart(part) : part;
  for (let i = 0; i < turns; i += 1) lying = turnedPart(lying);
  return lying;
});
const blocks = fc
  .tuple(fc.integer({ min: 1, max: 3 }), fc.array(turnedParts, { minLength: 9, maxLength: 9 }))
  .map(([n, all]) => block(...Array.from({ length: n }, (_, i) => all.slice(i * n, i * n + n))));

const KINDS: readonly UnitKind[] = [
  'half-square triangle',
  'quarter-square triangle',
  'split quarter-square triangle',
  'flying geese',
  'corner-triangle unit',
  'square in a square',
  'peak',
];
const methods: fc.Arbitrary<Partial<Record<UnitKind, Method>>> = fc
  .tuple(...KINDS.map((kind) => fc.constantFrom(...methodsFor(kind))))
  .map((chosen) => Object.fromEntries(chosen.map((method, i) => [KINDS[i]!, method])));

/** Twice the area of an outline in steps. */
const doubleArea = (outline: readonly { x: number; y: number; w: number }[]): number =>
  outline.reduce((sum, p, i) => {
    const q = outline[(i + 1) % outline.length]!;
    return sum + (p.x / p.w) * (q.y / q.w) - (q.x / q.w) * (p.y / p.w);
  }, 0);

/** A line without where its pieces lie. */
const bare = ({ fabric, quantity, width, height, subcut, shape, spare }: Cut) => ({
  fabric,
  quantity,
  width,
  height,
  subcut,
  shape,
  spare,
});

const yields = ({ quantity, subcut, nested }: Cut): number => quantity * (nested?.triangles ?? (subcut === 'twice' ? 4 : subcut === 'once' ? 2 : 1));

describe('any block cut by any methods', () => {
  test('every piece comes from one line, of its own fabric', () => {
    fc.assert(
      fc.property(blocks, methods, (part, chosen) => {
        const list = cutFor(part, { methods: chosen });
        const { pieces } = pieced(part);
        expect(list.pieces.map(({ piece }) => piece)).toEqual(pieces.map(({ id }) => id));
        const byLine = list.cuts.flatMap(({ id, fabric, pieces: of }) => of.map((piece) => `${piece} ${id} ${fabric}`));
        expect(byLine.sort()).toEqual(list.pieces.map(({ piece, cut }) => `${piece} ${cut} ${pieces[piece]!.fabric}`).sort());
      }),
      laws,
    );
  });

  test('the cloth cut is more than the finished block shows of it', () => {
    fc.assert(
      fc.property(blocks, methods, fc.integer({ min: 1, max: 5 }), (part, chosen, count) => {
        const list = cutFor(part, { methods: chosen, blocks: count });
        const finished = new Map<string, number>();
        for (const { fabric, outline } of pieced(part).pieces) finished.set(fabric, (finished.get(fabric) ?? 0) + doubleArea(outline) / 2);
        for (const [fabric, area] of finished) {
          const cut = list.cuts
            .filter((line) => line.fabric === fabric)
            .reduce((sum, line) => sum + line.quantity * toNumber(multiply(line.width, line.height)), 0);
          expect(cut).toBeGreaterThan(area * count);
        }
      }),
      laws,
    );
  });

  test('squares cut into triangles yield what is needed and what is spare, no less and no more', () => {
    fc.assert(
      fc.property(blocks, fc.integer({ min: 1, max: 4 }), (part, count) => {
        const one = {
          'half-square triangle': 'one-at-a-time',
          'quarter-square triangle': 'triangles',
          'flying geese': 'triangles',
          'square in a square': 'triangles',
        } as const;
        for (const line of cutFor(part, { methods: one, blocks: count }).cuts) {
          if (line.subcut !== 'none') expect(yields(line)).toBe(line.pieces.length * count + line.spare);
        }
      }),
      laws,
    );
  });

  test('sizes are ruler steps, at least the exact size and less than a step above it', () => {
    fc.assert(
      fc.property(blocks, methods, fc.constantFrom(rational(1, 8), rational(1, 16), rational(1, 10)), (part, chosen, ruler) => {
        for (const { exact, width, height } of cutFor(part, { methods: chosen, ruler, step: rational(5, 6) }).cuts) {
          expect(compare(width, height)).toBeLessThanOrEqual(0);
          if (exact === null) continue;
          for (const [size, rounded] of [
            [exact.width, width],
            [exact.height, height],
          ] as const) {
            expect(compareWith(size, rounded)).toBeLessThanOrEqual(0);
            expect(compareWith(size, subtract(rounded, ruler))).toBe(1);
          }
        }
      }),
      laws,
    );
  });

  test('the same block turned is cut the same', () => {
    fc.assert(
      fc.property(blocks, methods, (part, chosen) => {
        const [here, turned] = [cutFor(part, { methods: chosen }), cutFor(turnedPart(part), { methods: chosen })];
        expect(lines(turned)).toEqual(lines(here));
        expect(turned.cuts.map(bare)).toEqual(here.cuts.map(bare));
      }),
      laws,
    );
  });

  test('its mirror image is cut the same, with rectangles cut along the other diagonal', () => {
    fc.assert(
      fc.property(blocks, methods, (part, chosen) => {
        const [here, mirrored] = [cutFor(part, { methods: chosen }), cutFor(mirroredPart(part), { methods: chosen })];
        const halved = (list: CutList): readonly string[] =>
          list.cuts.flatMap(({ diagonals: d }) => (d === undefined ? [] : [`${d.falling} ${d.rising}`]));
        const others = (list: CutList): readonly string[] =>
          list.cuts.flatMap(({ diagonals: d }) => (d === undefined ? [] : [`${d.rising} ${d.falling}`]));
        expect(lines(mirrored).filter((line) => !line.includes('template'))).toEqual(
          lines(here).filter((line) => !line.includes('template')),
        );
        expect(halved(mirrored)).toEqual(others(here));
      }),
      laws,
    );
  });

  test('cutting for more blocks at once never takes more squares than block by block, and never fewer than for one less', () => {
    fc.assert(
      fc.property(blocks, methods, fc.integer({ min: 2, max: 6 }), (part, chosen, count) => {
        const quantity = (n: number): ReadonlyMap<string, number> =>
          new Map(
            // Of a strip the triangles count: it is as long as they are many.
            cutFor(part, { methods: chosen, blocks: n }).cuts.map(({ fabric, shape, width, height, template, subcut, nested, quantity }) => [
              `${fabric} ${nested ? 'strip' : shape} ${JSON.stringify([width, nested?.measure ?? height, template])} ${subcut}`,
              quantity * (nested?.triangles ?? 1),
            ]),
          );
        const [one, fewer, many] = [quantity(1), quantity(count - 1), quantity(count)];
        expect([...many.keys()].sort()).toEqual([...one.keys()].sort());
        for (const [line, n] of many) {
          expect(n).toBeLessThanOrEqual(one.get(line)! * count);
          expect(n).toBeGreaterThanOrEqual(fewer.get(line)!);
        }
      }),
      laws,
    );
  });

  test('a wider seam or more trim never makes a piece smaller', () => {
    fc.assert(
      fc.property(blocks, methods, (part, chosen) => {
        const total = (list: CutList) =>
          list.cuts.reduce((sum, line) => add(sum, multiply(rational(line.quantity), add(line.width, line.height))), rational(0));
        const usual = total(cutFor(part, { methods: chosen }));
        expect(compare(total(cutFor(part, { methods: chosen, seam: rational(3, 8) })), usual)).toBe(1);
        expect(compare(total(cutFor(part, { methods: chosen, trim: rational(1, 8) })), usual)).toBeGreaterThanOrEqual(0);
      }),
      laws,
    );
  });
});

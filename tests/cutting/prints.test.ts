import { readdirSync, readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Block } from '../../src/block/block.ts';
import type { Choices } from '../../src/block/choices.ts';
import { mirror, turn } from '../../src/block/turning.ts';
import { chanceFrom } from '../../src/measure/chance.ts';
import { printsOf, type Prints } from '../../src/cutting/prints/prints.ts';
import { spreadOf, type Spreading } from '../../src/cutting/prints/spread.ts';
import { parseBlock } from '../../src/files/block-file.ts';
import type { Pattern } from '../../src/pattern/pattern.ts';
import { makePattern } from '../../src/pattern/make-pattern.ts';
import { must, unpainted } from '../block/drawn.ts';

const gallery = new URL('../gallery/', import.meta.url);
const blockOf = (name: string): Block => must(parseBlock(readFileSync(new URL(`${name}.block.json`, gallery), 'utf8')));

const patternOf = (block: Block, choices: Choices = {}): Pattern => must(makePattern(block, choices, 'chosen way'));

/** Spreads so many prints over the pieces of a fabric of a pattern. */
function prints(pattern: Pattern, fabric: string, many: number, seed = 1): Prints {
  const { piecing, cuts, lattice, choices } = pattern;
  return printsOf([{ fabric, prints: many, seed }], piecing, cuts, { ...choices, step: lattice.step })[0]!;
}

/** Every way to give things one of so many prints. */
function* everyWay(things: number, many: number): Generator<number[]> {
  for (let n = 0; n < many ** things; n++) yield Array.from({ length: things }, (_, i) => Math.floor(n / many ** i) % many);
}

const equalIn = (pairs: readonly (readonly [number, number])[], given: readonly number[]): number =>
  pairs.filter(([a, b]) => given[a] === given[b]).length;

const unevennessOf = (given: readonly number[], many: number): number => {
  const used = Array.from({ length: many }, (_, print) => given.filter((each) => each === print).length);
  return Math.max(...used) - Math.min(...used);
};

/** Random things, which of them touch along a seam and which at a corner. */
const touching = fc.integer({ min: 1, max: 8 }).chain((count) => {
  const pairs = Array.from({ length: count }, (_, a) => Array.from({ length: a }, (__, b) => [b, a] as const)).flat();
  return fc.tuple(fc.constant(count), fc.array(fc.constantFrom('seam', 'corner', 'apart', 'apart'), { minLength: pairs.length, maxLength: pairs.length }))
    .map(([, how]) => ({ count, seams: pairs.filter((_, i) => how[i] === 'seam'), corners: pairs.filter((_, i) => how[i] === 'corner') }));
});

function spreading(count: number, seams: readonly (readonly [number, number])[], corners: readonly (readonly [number, number])[]): Spreading {
  const around = (pairs: typeof seams) => Array.from({ length: count }, (_, i) => new Set(pairs.flatMap(([a, b]) => (a === i ? [b] : b === i ? [a] : []))));
  return { along: around(seams), atCorner: around(corners), line: Array.from({ length: count }, (_, i) => `${i % 2}`) };
}

describe('prints are spread', () => {
  it('so that equal ones do not touch along a seam whenever that can be, and as evenly as it can be: against every way there is', () => {
    let kept = 0;
    fc.assert(
      fc.property(touching, fc.constantFrom(2, 3), fc.nat(99), ({ count, seams, corners }, many, seed) => {
        const ways = [...everyWay(count, many)].filter((way) => equalIn(seams, way) === 0);
        const spread = spreadOf(spreading(count, seams, corners), many, chanceFrom(seed));
        expect(spread.seams).toBe(equalIn(seams, spread.prints));
        expect(spread.corners).toBe(equalIn(corners, spread.prints));
        if (ways.length === 0) {
          expect([spread.seams > 0, spread.impossible]).toEqual([true, true]);
          return;
        }
        kept++;
        expect(spread.seams).toBe(0);
        const least = Math.min(...ways.map((way) => unevennessOf(way, many)));
        expect([spread.uneven, unevennessOf(spread.prints, many)]).toEqual([least, least]);
        // At corners too, where that costs no evenness.
        const best = ways.some((way) => unevennessOf(way, many) === least && equalIn(corners, way) === 0);
        if (best) expect(spread.corners).toBe(0);
      }),
      { seed: 20261125, numRuns: 150 },
    );
    expect(kept).toBeGreaterThan(60);
  });

  it('over a thousand squares side by side: none equal touches, not at a corner either, and all are used alike', () => {
    const side = 32;
    const pairs = (dx: number, dy: number) =>
      Array.from({ length: side * side }, (_, i) => [i % side, Math.floor(i / side)] as const)
        .filter(([x, y]) => x + dx >= 0 && x + dx < side && y + dy < side)
        .map(([x, y]) => [y * side + x, (y + dy) * side + x + dx] as const);
    const squares = spreading(side * side, [...pairs(1, 0), ...pairs(0, 1)], [...pairs(1, 1), ...pairs(-1, 1)]);
    expect(spreadOf(squares, 8, chanceFrom(3))).toMatchObject({ seams: 0, corners: 0, uneven: 0 });
  });

  it('the same for the same seed, and otherwise for another', () => {
    const pattern = patternOf(blockOf('rolling-stone-9'));
    const fabric = pattern.fabrics[0]!.fabric.id;
    expect(prints(pattern, fabric, 4, 7)).toEqual(prints(pattern, fabric, 4, 7));
    const spreads = [1, 2, 3, 4].map((seed) => JSON.stringify([...prints(pattern, fabric, 4, seed).of]));
    expect(new Set(spreads).size).toBe(4);
  });
});

const methods: readonly Choices[] = [
  {},
  { method: 'triangles' },
  { methods: { 'half-square triangle': 'eight-at-a-time', 'flying geese': 'four-at-a-time', 'split quarter-square triangle': 'two-at-a-time' } },
  { method: 'triangles-from-strips', blocks: 3 },
  { methods: { 'quarter-square triangle': 'two-at-a-time', 'split quarter-square triangle': 'two-at-a-time' }, blocks: 2 },
];
const blocks = readdirSync(gallery).filter((name) => name.endsWith('.block.json')).map((name) => name.replace('.block.json', ''));

describe('scraps in a block', () => {
  it.each(methods)('are as many of every print together as the list says, each square of one print: %j', (choices) => {
    for (const name of blocks.filter((_, i) => i % 12 === methods.indexOf(choices))) {
      const pattern = patternOf(blockOf(name), choices);
      for (const { fabric } of pattern.fabrics) {
        const { of, cuts } = prints(pattern, fabric.id, 3);
        const own = pattern.pieces.filter((piece) => piece.fabric === fabric.id).map(({ id }) => id);
        expect([...of.keys()].sort((a, b) => a - b), name).toEqual(own);
        for (const { cut, each } of cuts) {
          const what = `${name}, cut ${cut.id} of ${fabric.id}: ${cut.uses.map(({ role }) => role).join()}`;
          expect(each.reduce((a, b) => a + b, 0), what).toBe(cut.quantity);
          // A square gives at most so many pieces.
          const most = { plain: 1, base: 1, corner: 1, template: 1, half: 2, quarter: 4, pair: 4, eight: 8, large: 4, small: 2 };
          const many = Math.max(...cut.uses.map(({ role }) => cut.nested?.triangles ?? most[role as keyof typeof most]));
          each.forEach((squares, i) => {
            const pieces = cut.pieces.filter((piece) => of.get(piece) === i + 1).length * pattern.choices.blocks;
            expect(pieces, what).toBeLessThanOrEqual(squares * many);
          });
        }
      }
    }
  });

  it('of two families in one unit sewn two at a time come in pairs of units, for each pair of prints as many as their squares give', () => {
    for (const name of ['broken-dishes-12', 'rolling-stone-9', 'pinwheel-8-on-2', 'old-maids-puzzle-12', 'kings-crown-8']) {
      for (const blocks of [1, 3]) {
        const pattern = patternOf(blockOf(name), { methods: { 'half-square triangle': 'two-at-a-time' }, blocks });
        const fabrics = [...new Set(pattern.pieces.map(({ fabric }) => fabric))];
        const families = fabrics.map((fabric, i) => ({ fabric, prints: 3, seed: i }));
        const all = printsOf(families, pattern.piecing, pattern.cuts, { ...pattern.choices, step: pattern.lattice.step });
        const printOf = (piece: number) => all.map(({ of }) => of.get(piece)).find((print) => print !== undefined)!;
        for (const { unit } of pattern.units.filter(({ unit: { kind } }) => kind === 'half-square triangle')) {
          const [first, second] = unit.places[0]!.assembly.parts.map(({ piece }) => pattern.cuts.find(({ pieces }) => pieces.includes(piece!.id))!);
          if (first!.uses.length + second!.uses.length > 2) continue;
          const pairs = unit.places.map(({ assembly }) => {
            const [a, b] = assembly.parts.map(({ piece }) => piece!);
            return a!.fabric < b!.fabric ? `${printOf(a!.id)} ${printOf(b!.id)}` : `${printOf(b!.id)} ${printOf(a!.id)}`;
          });
          const squares = [...new Set(pairs)].map((pair) => Math.ceil((pairs.filter((each) => each === pair).length * blocks) / 2));
          expect(squares.reduce((a, b) => a + b, 0), `${name}, unit ${unit.id}`).toBe(first!.quantity);
        }
      }
    }
  });

  it('are used alike however the block is turned, and where nothing else is symmetric they turn with it', () => {
    for (const name of ['rolling-stone-9', 'bears-paw-10-1-2', 'cake-stand-8', 'maple-leaf-9-on-18', 'road-to-california-9']) {
      const block = blockOf(name);
      const counts = (turned: Block): string => {
        const pattern = patternOf(turned);
        return JSON.stringify(pattern.fabrics.map(({ fabric }) => prints(pattern, fabric.id, 3, 5).cuts.map(({ cut, each }) => [cut.quantity, each])));
      };
      expect(counts(turn(block)), name).toBe(counts(block));
      expect(counts(turn(turn(block))), name).toBe(counts(block));
      expect(counts(mirror(block, 'left and right')), name).toBe(counts(block));
    }
  });

  it('that all touch each other need as many prints as they are, which is known', () => {
    const pattern = patternOf(unpainted(4, 4, { ground: 'teal', seams: [[[0, 2], [4, 2]], [[1, 2], [1, 4]]] }));
    // Two pieces side by side under a long one: three that all touch.
    expect(prints(pattern, 'teal', 2)).toMatchObject({ seams: 1, enough: { prints: 3, proved: true, allTouch: true }, shared: false });
    expect(prints(pattern, 'teal', 3)).toMatchObject({ seams: 0, corners: 0, enough: null });
  });

  it('that come from one square may have to touch, where each cut by itself would not', () => {
    // Four triangles round a point, divided by seams: cut four from one square they are all of one print.
    const cross = unpainted(2, 2, { ground: 'teal', seams: [[[0, 0], [2, 2]], [[0, 2], [2, 0]]] });
    const together = prints(patternOf(cross, { methods: { 'quarter-square triangle': 'triangles' } }), 'teal', 2);
    expect(together).toMatchObject({ seams: 4, shared: true });
    const each = prints(patternOf(cross, { methods: { 'quarter-square triangle': 'template' } }), 'teal', 2);
    expect(each).toMatchObject({ seams: 0, corners: 2, enough: null });
  });
});

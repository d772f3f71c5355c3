import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Block } from '../../src/block/block.ts';
import { checkBlock } from '../../src/block/whole-check.ts';
import type { Choices } from '../../src/block/choices.ts';
import { remedied } from '../../src/block/remedy.ts';
import { parseBlock } from '../../src/files/block-file.ts';
import type { Problem, Remedy } from '../../src/measure/problem.ts';
import { makePattern } from '../../src/pattern/make-pattern.ts';
import type { Pattern } from '../../src/pattern/pattern.ts';
import { tries } from '../geometry/drawings.ts';
import { mirror, turn } from '../../src/block/turning.ts';

type Corners = readonly (readonly [number, number])[];

const CLOTHS = ['marram', 'chalk', 'lamp', 'deep', 'rust', 'rope', 'slate', 'buoy'];

/** A block of square cells of one inch, the ground fog; the patches in their order, each of the next cloth, some of them whole. */
function block(cells: number, outlines: readonly Corners[], whole: (i: number) => boolean, more: object = {}): Block {
  const read = parseBlock(
    JSON.stringify({
      format: 'piecewright/block',
      version: 1,
      name: 'Tide Knot',
      finished: { width: cells, height: cells, unit: 'in' },
      grid: { columns: cells, rows: cells },
      fabrics: ['fog', ...CLOTHS].map((id) => ({ id, name: `${id.charAt(0).toUpperCase()}${id.slice(1)}`, color: '#445566' })),
      ground: 'fog',
      patches: outlines.map((points, i) => ({ fabric: CLOTHS[i % CLOTHS.length], points, ...(whole(i) && { whole: true }) })),
      ...more,
    }),
  );
  if (!read.ok) throw new Error(read.problem.sentence);
  return read.value;
}

const rectangle = ([left, top, right, bottom]: readonly number[]): Corners => [[left!, top!], [right!, top!], [right!, bottom!], [left!, bottom!]];
const all = (): boolean => true;

/** Two whirls that share arms: no seam runs right across, and no four arms have the rest between them. */
const DOUBLE = [[0, 0, 1, 2], [1, 0, 4, 1], [4, 0, 5, 3], [1, 1, 2, 2], [2, 1, 3, 5], [3, 1, 4, 3], [0, 2, 2, 5], [3, 3, 5, 5]].map(rectangle);
const WHIRL = [[0, 0, 3, 1], [3, 0, 4, 3], [1, 3, 4, 4], [0, 1, 1, 4], [1, 1, 3, 3]].map(rectangle);
/** Three arms round a triangle. */
const SLANTED: readonly Corners[] = [
  [[1, 0], [6, 0], [6, 2], [2, 2]],
  [[6, 2], [6, 6], [2, 6], [4, 2]],
  [[0, 0], [1, 0], [3, 4], [2, 6], [0, 6]],
];

function problemOf(drawn: Block, choices: Choices = {}): Problem & { readonly remedies: readonly Remedy[] } {
  const made = makePattern(drawn, choices);
  if (made.ok) throw new Error(`${drawn.name} can be sewn`);
  return { remedies: [], ...made.problem };
}

function taken(drawn: Block, remedy: Remedy, choices: Choices = {}): Pattern {
  const changed = remedied(drawn, remedy);
  if (!changed.ok) throw new Error(changed.problem.sentence);
  expect(checkBlock(changed.value)).toBeNull();
  const made = makePattern(changed.value, choices);
  if (!made.ok) throw new Error(made.problem.sentence);
  return made.value;
}

/** Takes every remedy: the pattern must be proved, and cost what was said. */
function takeAll(drawn: Block, remedies: readonly Remedy[], choices: Choices = {}): number {
  const offered = remedies.filter(({ price }) => price !== null);
  for (const remedy of offered) {
    const { proof, figures } = taken(drawn, remedy, choices);
    expect(proof.faults).toEqual([]);
    const { pieces, seams, partialSeams } = figures;
    expect({ pieces, seams, partialSeams }).toEqual(remedy.price);
    expect(remedy.sentence).toContain(`: ${pieces} pieces, ${seams} seams`);
  }
  const prices = offered.map(({ price }) => price!.pieces);
  expect(prices).toEqual(prices.toSorted((a, b) => a - b));
  return offered.length;
}

describe('whole patches that lock each other', () => {
  const drawn = block(5, DOUBLE, all);

  it('are named, as few as lock, and freed by one division and a partial seam', () => {
    const { code, sentence, patches, remedies } = problemOf(drawn);
    expect(code).toBe('knot');
    expect(patches).toEqual([1, 2, 6, 7]);
    expect(sentence).toMatch(/^Patch 2 \(Chalk\), patch 3 \(Lamp\), patch 7 \(Slate\) and patch 8 \(Buoy\) must all stay whole and lock each other, /);
    expect(takeAll(drawn, remedies)).toBeGreaterThan(2);
    // Eight patches, one of them in two: not to be had for less.
    expect(remedies[0]!.price).toEqual({ pieces: 9, seams: 8, partialSeams: 1 });
    expect(remedies[0]!.sentence).toMatch(/^Divide patch 2 \(Chalk\) in two at 2 in\. across, from 0 to 1 in\. down, each part whole: 9 pieces, 8 seams, with 1 partial seam \(at .+\)\.$/);
    expect(sentence).toContain('d' + remedies[0]!.sentence.slice(1));
  });

  it('can be set in by hand as the last resort, which is said with its corners and has no steps', () => {
    const last = problemOf(drawn).remedies.at(-1)!;
    expect(last.price).toBeNull();
    expect(last.sentence).toMatch(/^As a last resort, by hand: .* set patch \d \(\w+\) in at the end, its seam turning at \d in\. across, \d in\. down; stop a seam allowance before each corner/);
    expect(last.sentence).toContain('8 pieces. This program writes no steps for set-in seams.');
    expect(last.places).toHaveLength(1);
    expect(remedied(drawn, last)).toEqual({ ok: true, value: drawn });
  });

  it('are not named where a partial seam does it: four arms round a centre, all whole, are sewn', () => {
    const made = makePattern(block(4, WHIRL, all));
    expect(made.ok && made.value.figures).toMatchObject({ pieces: 5, seams: 4, partialSeams: 1, setInSeams: 0 });
    expect(made.ok && made.value.proof.holds).toBe(true);
  });

  it('round a triangle are freed by slanted seams', () => {
    const slanted = block(6, SLANTED, all);
    const { patches, remedies } = problemOf(slanted);
    expect(patches).toEqual([0, 1, 2]);
    expect(takeAll(slanted, remedies)).toBeGreaterThan(2);
    // Three arms and the centre, one arm in two.
    expect(remedies[0]!.price).toEqual({ pieces: 5, seams: 4, partialSeams: 0 });
  });

  it('in two places give up one patch each', () => {
    const two = block(10, [...DOUBLE, ...DOUBLE.map((corners) => corners.map(([x, y]) => [x + 5, y + 5] as const))], all);
    const { patches, remedies } = problemOf(two);
    expect(patches).toHaveLength(4);
    expect(takeAll(two, remedies)).toBeGreaterThan(1);
    for (const { free } of remedies.filter(({ price }) => price)) expect(free.map((patch) => patch < 8)).toEqual([true, false]);
  });

  it('are freed at the price of the way that is chosen', () => {
    takeAll(drawn, problemOf(drawn, { way: 'fewest pieces' }).remedies, { way: 'fewest pieces' });
  });

  it('are freed alike however the block is turned', () => {
    const prices = ({ remedies }: { readonly remedies: readonly Remedy[] }) => remedies.map(({ price }) => price);
    for (const turned of [turn(drawn), turn(turn(drawn)), mirror(drawn, 'left and right')]) {
      expect(prices(problemOf(turned))[0]).toEqual(prices(problemOf(drawn))[0]);
    }
  });
});

describe('a patch that must stay whole and cannot', () => {
  it('because of an inner corner is divided at either edge of it, or set in at the corner', () => {
    const drawn = block(4, [[[0, 0], [4, 0], [4, 2], [2, 2], [2, 4], [0, 4]]], all);
    const { code, remedies } = problemOf(drawn);
    expect(code).toBe('broken-whole');
    expect(takeAll(drawn, remedies)).toBe(2);
    expect(remedies.map(({ price }) => price?.pieces)).toEqual([3, 3, undefined]);
    expect(remedies.map(({ places }) => places)).toEqual([[[[0, 2], [2, 2]]], [[[2, 0], [2, 2]]], [[[2, 2]]]]);
  });

  it('because it lies in two parts is let go of', () => {
    const drawn = block(5, [rectangle([0, 1, 5, 2]), rectangle([2, 0, 3, 5])], (i) => i === 0);
    const { remedies } = problemOf(drawn);
    expect(remedies.map(({ free }) => free)).toEqual([[0]]);
    takeAll(drawn, remedies);
  });

  it('because a seam is drawn through it is divided there', () => {
    const drawn = block(5, [rectangle([1, 1, 4, 4])], all, { seams: [[[1, 1], [4, 4]]] });
    const { remedies } = problemOf(drawn);
    expect(takeAll(drawn, remedies)).toBe(remedies.length);
    expect(remedies[0]!.places).toEqual([[[1, 1], [4, 4]]]);
  });
});

/** The double whirl with rows and columns of one or two cells, beside what is left of the ground; most patches whole, some of one cloth. */
const whirls: fc.Arbitrary<Block> = fc
  .record({
    across: fc.array(fc.integer({ min: 1, max: 2 }), { minLength: 5, maxLength: 5 }),
    down: fc.array(fc.integer({ min: 1, max: 2 }), { minLength: 5, maxLength: 5 }),
    whole: fc.array(fc.nat(9), { minLength: 8, maxLength: 8 }),
    alike: fc.nat(7),
    mirrored: fc.boolean(),
  })
  .map(({ across, down, whole, alike, mirrored }) => {
    const at = (sizes: readonly number[], i: number): number => sizes.slice(0, i).reduce((sum, size) => sum + size, 0);
    const cells = Math.max(at(across, 5), at(down, 5));
    const outlines = DOUBLE.map((corners) => corners.map(([x, y]) => [at(across, x), at(down, y)] as const));
    const drawn = block(cells, outlines, (i) => whole[i]! > 0);
    const patches = drawn.patches.map((patch, i) => (i === alike ? { ...patch, fabric: CLOTHS[0]! } : patch));
    return mirrored ? mirror({ ...drawn, patches }, 'left and right') : { ...drawn, patches };
  });

/** Polygons laid over one another, half of them whole. */
const laidOver: fc.Arbitrary<Block> = fc
  .array(fc.tuple(fc.nat(4), fc.nat(4), fc.integer({ min: 1, max: 3 }), fc.integer({ min: 1, max: 3 }), fc.nat(5), fc.boolean()), { minLength: 3, maxLength: 8 })
  .map((patches) =>
    block(
      5,
      patches.map(([x, y, w, h, without]) => rectangle([x, y, Math.min(5, x + w), Math.min(5, y + h)]).filter((_, i) => i !== without)),
      (i) => patches[i]![5],
    ),
  );

describe.each([['of two whirls that share arms', whirls, 30, 10], ['of patches over one another', laidOver, 100, 20]] as const)('in a random block %s', (_, blocks, runs, least) => {
  it('every remedy that is offered gives a pattern that is proved, at the price it was offered at', () => {
    let [knots, offers] = [0, 0];
    fc.assert(
      fc.property(blocks, (drawn) => {
        const made = makePattern(drawn, {}, 'chosen way');
        if (made.ok) return;
        knots++;
        const found = takeAll(drawn, made.problem.remedies ?? []);
        // Letting everything be divided always does it.
        expect(found).toBeGreaterThan(0);
        offers += found;
      }),
      tries(runs),
    );
    expect(knots).toBeGreaterThan(least);
    expect(offers).toBeGreaterThan(knots);
  });
});

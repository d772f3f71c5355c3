import { describe, expect, it } from 'vitest';
import type { Block } from '../../src/block/block.ts';
import type { Choices, Method } from '../../src/block/choices.ts';
import { resize } from '../../src/block/sizing.ts';
import { cutList } from '../../src/cutting/cutting.ts';
import type { Role } from '../../src/cutting/cut.ts';
import { divide, equals, multiply, rational, toNumber, type Rational } from '../../src/measure/rational.ts';
import { cuttingChoices } from '../../src/pattern/cutting-choices.ts';
import { makePattern } from '../../src/pattern/make-pattern.ts';
import type { Pattern } from '../../src/pattern/pattern.ts';
import { namesIn as namesOf, plainSpeech } from '../../src/pattern/plain-speech.ts';
import { warningsOf, type Warned, type Warning, type WarningCode } from '../../src/pattern/warnings.ts';
import { must, unpainted } from '../block/drawn.ts';
import { paint } from '../../src/block/painting.ts';
import { cell } from '../../src/block/patch-shapes.ts';
import { blockNamed, namesIn } from './made.ts';

const of = rational;
const patternOf = (block: Block, choices: Choices = {}): Pattern => must(makePattern(block, choices, 'chosen way'));
const sized = (block: Block, width: Rational): Block => {
  const { finished } = block;
  return must(resize(block, { ...finished, width, height: multiply(finished.height, divide(width, finished.width)) }));
};
const about = (pattern: Pick<Pattern, 'warnings'>, code: WarningCode): Warning | undefined => pattern.warnings.find((each) => each.code === code);

/** A grid of squares in two fabrics by turns. */
function checks(cells: number, side: Rational, unit: 'in' | 'cm' = 'in'): Block {
  let block: Block = unpainted(cells, cells, { finished: { width: side, height: side, unit } });
  for (let y = 0; y < cells; y++) for (let x = y % 2; x < cells; x += 2) block = must(paint(block, 'teal', cell(x, y)));
  return block;
}

type Place = readonly [number, number];

/** Corners of a piece in the block's unit, as doubles: what the tests know of a piece. */
const cornersOf = ({ outline }: Pattern['pieces'][number], { step }: Pattern['lattice']): readonly Place[] =>
  outline.map(({ x, y, w }) => [(x / w) * toNumber(step), (y / w) * toNumber(step)] as const);

const length = ([a, b]: Place, [c, d]: Place): number => Math.hypot(c - a, d - b);
const isLevel = ([a, b]: Place, [c, d]: Place): boolean => Math.abs(a - c) < 1e-9 || Math.abs(b - d) < 1e-9;

/** How small a piece finishes, from its corners: the narrowest strip it fits in, but by its legs where they lie along the block. */
function smallness(corners: readonly Place[]): number {
  const edges = corners.map((from, i) => [from, corners[(i + 1) % corners.length]!] as const);
  const legs = edges.filter(([from, to]) => isLevel(from, to)).map(([from, to]) => length(from, to));
  if (corners.length === 3 && legs.length === 2) return Math.min(...legs);
  const heights = edges.map(([[a, b], [c, d]]) => Math.max(...corners.map(([x, y]) => Math.abs((c - a) * (y - b) - (d - b) * (x - a)))) / length([a, b], [c, d]));
  return Math.min(...heights);
}

describe('pieces that finish under half an inch', () => {
  it('are named where corners and doubles find them too, at every size of gallery blocks', () => {
    namesIn('gallery').filter((_, i) => i % 4 === 1).forEach((name, i) => {
      const block = blockNamed('gallery', name);
      const pattern = patternOf(sized(block, multiply(block.finished.width, of(2 + (i % 7), 9))));
      const found = pattern.pieces.filter((piece) => smallness(cornersOf(piece, pattern.lattice)) < 0.5 - 1e-9).map(({ id }) => id);
      expect([name, about(pattern, 'small pieces')?.pieces ?? []]).toEqual([name, found]);
    });
  });

  it('are counted once, with the narrowest, their cuts, and a size without any', () => {
    const pattern = patternOf(checks(8, of(3)));
    const { says, cuts, pieces } = about(pattern, 'small pieces')!;
    expect(says).toBe('64 pieces (cuts 1 and 2) finish under 1/2 in., the narrowest at 3/8 in., and are hard to sew true; from 4 by 4 in. on none does.');
    expect([cuts, pieces.length]).toEqual([['1', '2'], 64]);
    expect(about(patternOf(checks(8, of(4))), 'small pieces')).toBeUndefined();
    expect(about(patternOf(checks(8, of(15, 4))), 'small pieces')).toBeDefined();
  });

  it('are those under 1,2 cm in metric', () => {
    expect(about(patternOf(checks(5, of(6), 'cm')), 'small pieces')).toBeUndefined();
    expect(about(patternOf(checks(5, of(11, 2), 'cm')), 'small pieces')?.says).toContain('finish under 1,2 cm, the narrowest at 1,1 cm');
  });
});

/** A pattern's warnings, told that its pieces were cut in other roles. */
function warnedAs(pattern: Pattern, changed: (role: Role) => Role): readonly Warning[] {
  const { piecing, block, lattice, choices, fabrics, units } = pattern;
  const list = cutList(piecing, cuttingChoices(choices, { step: lattice.step, unit: block.unit, fabrics: fabrics.map(({ fabric }) => fabric.id), units: {} }));
  const pieces = list.pieces.map((piece) => ({ ...piece, role: changed(piece.role) }));
  const speech = plainSpeech(namesOf(pattern));
  const warned: Warned = { piecing, list: { ...list, pieces }, block, lattice, choices, fabrics, units: units.map(({ finished }) => finished), speech };
  return warningsOf(warned);
}

describe('bias on the outer edge of a block', () => {
  const METHODS: readonly (Method | 'usual')[] = ['usual', 'one-at-a-time', 'eight-at-a-time', 'triangles', 'triangles-from-strips', 'four-at-a-time', 'template', 'two-at-a-time'];

  it('comes of no method: each cuts a piece so that the straight grain lies along the block', () => {
    namesIn('gallery').filter((_, i) => i % 4 === 0).forEach((name, i) => {
      expect([name, about(patternOf(blockNamed('gallery', name), { method: METHODS[i % METHODS.length]! }), 'bias on the edge')]).toEqual([name, undefined]);
    });
  });

  it('is told of triangles cut as halves whose long side lies there, and of quarters whose legs do: of these and of no others', () => {
    // Straight grain lies on the long edge of a quarter, on the short ones of a half: Bonnie Hunter, Cutting quarter square triangles, 2005.
    let told = 0;
    for (const name of ['ohio-star-9-three-fabrics', 'churn-dash-12', 'flock-of-geese-8', 'squares-on-point-8', 'rising-star-12', 'four-hourglasses-8']) {
      const pattern = patternOf(blockNamed('gallery', name), { method: 'triangles' });
      const { width, height } = pattern.block.finished;
      const swapped = (role: Role): Role => (role === 'half' ? 'quarter' : role === 'quarter' ? 'half' : role);
      const onEdge = pattern.pieces.filter((piece) => {
        const corners = cornersOf(piece, pattern.lattice);
        const edges = corners.map((from, i) => [from, corners[(i + 1) % corners.length]!] as const);
        const touches = edges.some(([[a, b], [c, d]]) => [a, c].every((x) => x < 1e-9 || x > toNumber(width) - 1e-9) && a === c || [b, d].every((y) => y < 1e-9 || y > toNumber(height) - 1e-9) && b === d);
        // A triangle of two equal sides: only these are cut as halves or quarters of squares.
        return corners.length === 3 && touches && new Set(edges.map(([from, to]) => length(from, to).toFixed(6))).size === 2;
      });
      const warning = warnedAs(pattern, swapped).find(({ code }) => code === 'bias on the edge');
      expect([name, warning?.pieces ?? []]).toEqual([name, onEdge.map(({ id }) => id)]);
      expect(warnedAs(pattern, (role) => role).some(({ code }) => code === 'bias on the edge')).toBe(false);
      told += warning === undefined ? 0 : 1;
    }
    expect(told).toBeGreaterThan(3);
  });

  it('names the cuts and the method that avoids it', () => {
    const star = patternOf(blockNamed('gallery', 'ohio-star-9-three-fabrics'), { method: 'triangles' });
    const says = warnedAs(star, (role) => (role === 'quarter' ? 'half' : role)).find(({ code }) => code === 'bias on the edge')?.says;
    expect(says).toMatch(/^4 pieces \(cuts? [\d and]+\) have bias on the outer edge of the block, which stretches: cut them from squares cut twice on the diagonals, so that the straight grain lies there\.$/);
  });
});

describe('a piece longer than the cloth is wide', () => {
  const bars = (side: number): Block => sized(must(paint(unpainted(1, 4), 'teal', cell(0, 1))), of(side));

  it('is cut along the cloth, or joined of strips: each seam takes two allowances', () => {
    const says = about(patternOf(bars(60)), 'longer than the cloth')!.says;
    // 60 1/2 in. of cloth 42 in. wide: two strips make 83 1/2.
    expect(says).toBe(
      'Cuts 1, 2 and 3 (30 1/2 × 60 1/2 in. and 15 1/2 × 60 1/2 in.) are longer than the cloth is wide (42 in.): ' +
        'cut them along the length of the cloth, or first join 2 strips end to end with a 1/4 in. seam.',
    );
  });

  it.each([
    // n strips of 42 in. reach 42 n − (n − 1)/2: 83 1/2, 125.
    [of(83), 2],
    [of(167, 2), 3],
    [of(249, 2), 3],
    [of(125), 4],
  ])('is so long that it takes so many strips', (side, strips) => {
    const block = must(resize(unpainted(1, 1), { width: of(2), height: side, unit: 'in' }));
    expect(about(patternOf(block), 'longer than the cloth')?.says).toContain(`first join ${strips} strips end to end`);
  });

  it('is told of exactly the cuts that are longer than their own cloth', () => {
    const block = blockNamed('cases', 'log-cabin-11');
    for (const width of [of(11, 2), of(9), of(12)]) {
      const pattern = patternOf(block, { width, cloths: { [block.fabrics[0]!.id]: { width: of(5) } } });
      const found = pattern.cuts.filter((cut) => toNumber(cut.height) > (cut.fabric === block.fabrics[0]!.id ? 5 : toNumber(width)));
      const told = pattern.warnings.filter(({ code }) => code === 'longer than the cloth');
      expect(told.flatMap(({ cuts }) => cuts).sort()).toEqual(found.map(({ id }) => id).sort());
    }
  });

  it('both ways is cut of widths sewn together', () => {
    const pattern = patternOf(must(resize(unpainted(1, 1), { width: of(50), height: of(60), unit: 'in' })));
    expect(pattern.warnings.map(({ says }) => says)).toContain('Cut 1 (50 1/2 × 60 1/2 in.) is wider than the cloth (42 in.): sew widths of cloth together before you cut it.');
    expect(pattern.notes).toEqual([]);
  });
});

describe('a plan that leaves no margin', () => {
  const one = (side: Rational, choices: Choices = {}): Warning | undefined =>
    about(patternOf(must(resize(unpainted(1, 1), { width: side, height: side, unit: 'in' })), choices), 'no margin');

  it('takes all but half an inch of what is bought', () => {
    // 4 in. finished is a 4 1/2 in. strip, which is 1/8 yd to the thread.
    expect(one(of(4))?.says).toMatch(/^Of .+ \(1\/8 yd\) less than 1\/2 in\. is left over to straighten the edge: buy 1\/8 yd more, or choose a margin\.$/);
    expect(one(of(29, 8))).toBeDefined();
    expect(one(of(7, 2))).toBeUndefined();
    expect(one(of(33, 8))).toBeUndefined();
  });

  it('has one where it is chosen, or the edge is squared up', () => {
    expect(one(of(4), { margin: { length: of(1, 2) } })).toBeUndefined();
    expect(one(of(4), { margin: { percent: of(10) } })).toBeUndefined();
    expect(one(of(4), { squaringUp: of(1) })).toBeUndefined();
  });
});

describe('a block that outgrows its size', () => {
  it('by a sum over its row: nine pieces of 1 1/3 in. cut to the next eighth are 3/8 in. too long', () => {
    // 1 1/3 + 1/2 is 1 20/24, cut 1 21/24: nine times 1/24. (Lisa's Quilting Passion, 2020: such units must be trimmed.)
    const pattern = patternOf(checks(9, of(12)));
    expect(about(pattern, 'outgrows its size')?.says).toBe(
      'Cut up to the next 1/8 in. of the ruler, cuts 1 and 2 are too large: untrimmed, the block comes out 3/8 in. too wide and 3/8 in. too high; ' +
        'at 11 1/4 by 11 1/4 in. or 12 3/8 by 12 3/8 in. every plain cut is on a mark.',
    );
  });

  it('not where every plain cut and every unit is on a mark; else by what its rows add up to, drawn by drawn', () => {
    namesIn('gallery').filter((_, i) => i % 5 === 2).forEach((name, i) => {
      const block = blockNamed('gallery', name);
      const pattern = patternOf(sized(block, multiply(block.finished.width, of(5 + (i % 5), 7))));
      const warning = about(pattern, 'outgrows its size');
      // Plain pieces whose cut is more than finished + two allowances; corners and doubles only.
      const large = pattern.cuts.filter(({ uses, shape }) => shape !== 'template' && uses.every(({ role }) => role === 'plain')).flatMap((cut) => cut.pieces.filter((id) => {
        const corners = cornersOf(pattern.pieces[id]!, pattern.lattice);
        if (!corners.every((from, at) => isLevel(from, corners[(at + 1) % corners.length]!))) return false;
        const sides = [length(corners[0]!, corners[1]!), length(corners[1]!, corners[2]!)].sort((a, b) => a - b);
        return sides[0]! + 0.5 < toNumber(cut.width) - 1e-9 || sides[1]! + 0.5 < toNumber(cut.height) - 1e-9;
      }));
      const level = large.filter((id) => inNoTrimmedUnit(pattern, id));
      expect([name, level.every((id) => warning?.pieces.includes(id))]).toEqual([name, true]);
      if (level.length === 0) expect([name, pattern.units.every(({ unfinished }) => [unfinished.width, unfinished.height].every((side) => equals(side, multiply(of(Math.round(toNumber(side) * 8)), of(1, 8)))))]).toEqual([name, warning === undefined]);
    });
  });
});

/** Whether no unit with a diagonal seam holds the piece. */
const inNoTrimmedUnit = ({ steps }: Pattern, id: number): boolean =>
  steps.every(({ pieces, joins }) => !pieces.includes(id) || joins.every(({ from, to }) => isLevel([from.x / from.w, from.y / from.w], [to.x / to.w, to.y / to.w])));

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { waysToSew } from '../../src/geometry/piecing/ways.ts';
import { rational } from '../../src/measure/rational.ts';
import type { Step } from '../../src/sewing/step.ts';
import { drawings, EVERYTHING, tiled, tries } from '../geometry/drawings.ts';
import { untrueOf } from './pressing-told.ts';
import { crossingsIn, seamsInBlock, type LaidSeam } from './seams-in-block.ts';
import { FILES, lastStep, patternOf, sewnBy, stepOf } from './told.ts';

describe('seams that meet', () => {
  it.each([
    ['random drawings', drawings({ ...EVERYTHING, cells: 5, free: 0 }), 30],
    ['turned tiles', tiled, 10],
  ] as const)('of %s nest where the steps say so, and only there', (_, pictures, runs) => {
    fc.assert(
      fc.property(pictures, (drawing) => {
        for (const piecing of waysToSew(drawing)) expect(untrueOf(sewnBy(drawing, rational(1), piecing).steps)).toEqual([]);
      }),
      tries(runs),
    );
  });

  it.each([
    'tests/cases/shoo-fly-12',
    'tests/cases/ohio-star-12-triangles',
    'tests/cases/sawtooth-star-12',
    'tests/cases/friendship-star-6',
    'tests/cases/bears-paw-14',
    'tests/cases/double-nine-patch-9',
    'tests/gallery/nine-patch-9',
    'tests/gallery/checkerboard-8',
    'tests/gallery/churn-dash-12',
  ])('of rows and columns all nest in %s (rows pressed to alternate sides: common practice)', (file) => {
    const straight = ({ from, to }: LaidSeam): boolean => from[0] * to[2] === to[0] * from[2] || from[1] * to[2] === to[1] * from[2];
    const crossings = crossingsIn(seamsInBlock(patternOf(file).steps)).filter(({ one, other }) => straight(one) && straight(other));
    expect(crossings.length).toBeGreaterThan(0);
    expect(crossings.filter(({ lie }) => lie === 'the same way')).toEqual([]);
  });

  it('of equal rows under one another cannot nest, since equal units are pressed alike, and the step says so', () => {
    const { steps } = patternOf('tests/gallery/four-bright-hopes-12');
    expect(steps.at(-1)!.how).toBe(
      'Sew in a column, top to bottom: 2 × B. Match the seams where they meet; there they lie the same way, so pin them.',
    );
    expect(untrueOf(steps)).toEqual([]);
  });

  it('are found wrong when a pressing is turned about', () => {
    const { steps } = patternOf('tests/cases/shoo-fly-12');
    const turned = steps.map((step) =>
      step.makes === 'B' ? { ...step, pressed: step.pressed.map((way) => (way === 'first' ? 'second' : 'first') as 'first') } : step,
    );
    expect(untrueOf(turned)).not.toEqual([]);
  });
});

describe('pressing of published blocks', () => {
  it('of an Ohio star: rows toward the squares, the hourglass’s last seam open', () => {
    // American Patchwork & Quilting (allpeoplequilt.com), Ohio Star quilt block, 2017-06-14.
    const { steps } = patternOf('tests/cases/ohio-star-10-1-2');
    expect(steps[0]!.press).toBe('Press the first seam toward Orange, the last one open.');
    expect(
      steps
        .slice(1, 3)
        .map(({ press }) => press)
        .sort(),
    ).toEqual(['Press toward Blue.', 'Press toward Orange.']);
  });

  it('of a double nine-patch: to green, then to the white squares', () => {
    // American Patchwork & Quilting, Double Nine-Patch quilt block, 2013-12-12.
    const { steps } = patternOf('tests/cases/double-nine-patch-9');
    const small = crossingsAndSeams(steps).filter(({ cloths }) => cloths.join() === 'green,white');
    expect(small.length).toBe(5 * 6);
    expect(small.every(({ toward }) => toward === 'green')).toBe(true);
    const large = steps.filter(
      ({ parts }) => parts.some(({ from }) => 'cut' in from && from.fabric === 'white') && parts.some(({ from }) => 'unit' in from),
    );
    expect(large.at(-1)!.press).toBe('Press toward White.');
  });

  it('of flying geese: toward the small triangles', () => {
    // American Patchwork & Quilting, Pinwheel Star quilt block, 2019-10-01.
    expect(stepOf(patternOf('tests/cases/sawtooth-star-12'), 'flying geese').press).toBe('Press toward the small triangles.');
  });
});

/** The seams between two plain pieces in a row of one step, or between a piece and a unit of a row of two: which cloth they lie toward. */
function crossingsAndSeams(steps: readonly Step[]): readonly { readonly cloths: readonly string[]; readonly toward: string }[] {
  const made = new Map(steps.map((step) => [step.makes, step]));
  /** The cloth at the end of a part that lies toward the seam. */
  const clothAt = (step: Step, part: number, end: 'first' | 'last'): string => {
    const { from, turn } = step.parts[part]!;
    if ('cut' in from) return from.fabric;
    const unit = made.get(from.unit)!;
    const backwards = turn === 2 || turn === 3;
    return clothAt(
      unit,
      (end === 'first') !== backwards ? 0 : unit.parts.length - 1,
      backwards ? (end === 'first' ? 'last' : 'first') : end,
    );
  };
  return steps.flatMap((step) => {
    // Rows one square high only.
    if (step.kind !== 'joined unit' || step.finished.height.n !== step.finished.height.d) return [];
    return step.joins.flatMap((_, j) => {
      const [a, b] = [clothAt(step, j, 'last'), clothAt(step, j + 1, 'first')];
      const one = { cloths: [a, b].sort(), toward: step.pressed[j] === 'first' ? a : b };
      return Array.from({ length: step.count }, () => one);
    });
  });
}

describe('the words for pressing', () => {
  it('of a half-square triangle name the darker fabric', () => {
    // The default of American Patchwork & Quilting where no arrow is drawn.
    expect(stepOf(patternOf('tests/cases/friendship-star-6'), 'half-square triangle').press).toBe('Press toward Red.');
  });

  it('of rounds and rings are outward', () => {
    for (const file of ['tests/cases/log-cabin-11', 'tests/gallery/courthouse-steps-7', 'tests/cases/whirl-9']) {
      expect(lastStep(patternOf(file)).press).toBe('Press every seam outward, away from the centre.');
    }
    const { parts, joins, pressed } = lastStep(patternOf('tests/cases/log-cabin-11'));
    expect(joins.every(({ second }, i) => pressed[i] === 'second' && second < parts.length)).toBe(true);
  });

  it('of corners, square in a square and peak are outward', () => {
    const press = (file: string, kind: Step['kind']): string => stepOf(patternOf(file), kind).press;
    expect(press('tests/gallery/bow-tie-6', 'corner-triangle unit')).toBe('Press toward the corner.');
    expect(press('tests/gallery/star-and-diamond-8', 'square in a square')).toBe('Press toward the corners.');
    expect(press('tests/gallery/peaked-star-12', 'peak')).toBe('Press toward the side triangles.');
  });

  it.each([
    ['flying geese', 'tests/cases/sawtooth-star-12'],
    ['square in a square', 'tests/gallery/star-and-diamond-8'],
    ['peak', 'tests/gallery/peaked-star-12'],
    ['partial-seam ring', 'tests/cases/whirl-9'],
  ] as const)('of %s are what is done: no seam lies toward the middle', (kind, file) => {
    const { parts, joins, pressed } = stepOf(patternOf(file), kind);
    const extents = ({ outline }: Step['parts'][number]): readonly number[] =>
      [outline.map((p) => p.x / p.w), outline.map((p) => p.y / p.w)].map((values) => Math.max(...values) - Math.min(...values));
    const size = (part: number): number => extents(parts[part]!).reduce((a, b) => a * b);
    const middle = kind === 'partial-seam ring' ? 0 : parts.map((_, i) => i).sort((a, b) => size(b) - size(a))[0]!;
    const members = (thing: number): readonly number[] => {
      if (thing < parts.length) return [thing];
      const { first, second } = joins[thing - parts.length]!;
      return [...members(first), ...members(second)];
    };
    joins.forEach(({ sew, first, second }, j) => {
      if (sew !== 'finish') expect(members(pressed[j] === 'first' ? first : second)).not.toContain(middle);
    });
  });

  it('of a split quarter-square triangle keep the bulk off the large triangle’s side seam', () => {
    expect(stepOf(patternOf('demo-blocks/05-eddy'), 'split quarter-square triangle').press).toMatch(
      /^Press the short seam toward (Shallows|Fog), the long one toward the large triangle\.$/,
    );
  });

  it('of a row say one cloth, one side, or each seam, and say what is done', () => {
    const steps = FILES.flatMap((file) =>
      patternOf(file).steps.filter(({ kind, joins }) => (kind === 'joined unit' || kind === 'block') && joins.length > 0),
    );
    const sides = (step: Step): readonly string[] => {
      const [a, b] = [step.parts[0]!.outline, step.parts[1]!.outline];
      const row = Math.max(...a.map((p) => p.x / p.w)) <= Math.min(...b.map((p) => p.x / p.w));
      return step.pressed.map(
        (way) => (row ? { first: 'left', second: 'right', open: 'open' } : { first: 'top', second: 'bottom', open: 'open' })[way],
      );
    };
    const counted = { one: 0, each: 0 };
    for (const step of steps) {
      const all = /^Press the seams? to the (\w+)\.$/.exec(step.press);
      if (all) {
        counted.one++;
        expect(new Set(sides(step)), step.press).toEqual(new Set([all[1]]));
        continue;
      }
      const each = /^Press the seams, counted from the (?:left|top): ([\d–, and]+) to the (\w+), ([\d–, and]+) to the (\w+)\.$/.exec(
        step.press,
      );
      if (each) {
        counted.each++;
        const numbers = (words: string): readonly number[] =>
          words.split(/, | and /).flatMap((run) => {
            const [from, to] = run.split('–').map(Number);
            return Array.from({ length: (to ?? from!) - from! + 1 }, (_, i) => from! + i);
          });
        const wanted: string[] = [];
        for (const n of numbers(each[1]!)) wanted[n - 1] = each[2]!;
        for (const n of numbers(each[3]!)) wanted[n - 1] = each[4]!;
        expect(wanted, step.press).toEqual(sides(step));
        continue;
      }
      expect(step.press).toMatch(/^Press (every seam outward|toward|away from|the seams? open\.$)/);
    }
    expect(Math.min(counted.one, counted.each)).toBeGreaterThan(3);
  });
});

import { describe, expect, it } from 'vitest';
import { layersAt } from '../../src/sewing/pressing/layers.ts';
import type { End } from '../../src/sewing/pressing/meetings.ts';
import type { Pressed, Step } from '../../src/sewing/step.ts';
import { box, lastStep, patternDrawn, patternOf, stepOf } from './told.ts';

describe('published pressing', () => {
  it('of a four-patch: its halves lie opposite ways', () => {
    // Jinny Beyer, jinnybeyer.com, Joining four points; American Patchwork & Quilting, Country Pinwheel.
    const four = patternDrawn({ finished: '4 by 4', grid: [2, 2], ground: 'oat', patches: [box('ink', 0, 0, 1, 1), box('ink', 1, 1, 1, 1)] });
    expect(four.steps.map(({ press }) => press)).toEqual(['Press toward Ink.', expect.stringMatching(/^Press the seam to the (top|bottom)\.$/)]);
    expect(lastStep(four).parts.map(({ turn }) => turn).sort()).toEqual([0, 2]);
    expect(lastStep(four).points.map(({ lie }) => lie)).toEqual(['opposite ways']);
  });

  it('of the halves of a pinwheel: opposite ways, and all its seams round one way', () => {
    // American Patchwork & Quilting, Country Pinwheel and Pinwheel Star, 2019-10-01.
    const { pressing, steps } = patternOf('tests/gallery/pinwheel-8-on-2');
    expect(pressing).toMatchObject({ points: 1, sameWay: 0, open: 0, proved: true });
    // Eight pieces come together in the middle: common practice is to press that seam open.
    expect(steps.at(-1)!.press).toBe('Press the seam open.');
  });

  it('of rows under one another: to alternate sides', () => {
    // quilterscache.com, Chain and Square; quiltSocial issue 5, p. 18.
    for (const file of ['tests/gallery/nine-patch-9', 'tests/gallery/checkerboard-8', 'tests/gallery/single-irish-chain-12']) {
      const { points, sameWay, open } = patternOf(file).pressing;
      expect([file, points > 3, sameWay, open]).toEqual([file, true, 0, 0]);
    }
  });

  it('of a churn dash: toward the triangle-squares, or toward the centre', () => {
    // American Patchwork & Quilting, Churn Dash: toward the triangle-squares or the centre.
    const { steps } = patternOf('tests/gallery/churn-dash-12');
    const triangles = steps.find(({ kind }) => kind === 'half-square triangle')!.makes;
    const withTriangles = steps.find(({ kind, parts }) => kind === 'joined unit' && parts.some(({ from }) => 'unit' in from && from.unit === triangles))!;
    expect(withTriangles.press).toBe(`Press toward ${triangles}.`);
    const middle = steps.find(({ kind, parts }) => kind === 'joined unit' && parts.length === 3 && 'cut' in parts[1]!.from)!;
    expect(middle.press).toBe('Press toward Oat.');
  });

  it('of an hourglass: its last seam open, its first two so that they nest', () => {
    // American Patchwork & Quilting, Ohio Star, 2017-06-14.
    const glass = stepOf(patternOf('tests/cases/ohio-star-10-1-2'), 'quarter-square triangle');
    expect(glass.pressed[2]).toBe('open');
    expect(glass.points.map(({ lie }) => lie)).toEqual(['opposite ways']);
  });

  it('of geese that would not nest side by side: the first toward the large triangle, the second toward the small one', () => {
    // patchworkplayground.com, 2012, against the Pinwheel Star's both toward the small ones: sources differ, so what nests decides.
    const geese = patternOf('tests/gallery/martha-washington-star-12');
    expect(stepOf(geese, 'flying geese').press).toBe(
      'Press the seams, in the order in which they are sewn: 1 toward the large triangle, 2 toward the small triangle.',
    );
    expect(geese.pressing.sameWay).toBe(0);
  });
});

describe('layers of cloth', () => {
  /** A seam that ends from above on a join that runs to the right. */
  const above = (seam: number): End => ({ at: { x: 0, y: 0, w: 1 }, seam, dx: 0, dy: -1, spin: 1 });
  const below = (seam: number): End => ({ at: { x: 0, y: 0, w: 1 }, seam, dx: 0, dy: 1, spin: 1 });
  const join = { dx: 1, dy: 0 };
  const at = { x: 0, y: 0, w: 1 };

  it('in the angle between two seams are 3 where both are pressed away, 5 where both go one way round, 7 where both are pressed into it', () => {
    // nachograndmasquilts.com. The angle to the right of the upright seam and above the join, and what lies under the join beside it.
    const inAngle = (upright: Pressed, across: Pressed): number => {
      const { first, second } = layersAt({ at, ends: [[above(0)], []] }, join, across, () => upright);
      return Math.max(first[1], second[1]);
    };
    // An end's spin is 1: pressed toward its second thing it lies clockwise of it, which above is to the right.
    expect(inAngle('first', 'second')).toBe(3);
    expect(inAngle('second', 'second')).toBe(5);
    expect(inAngle('second', 'first')).toBe(7);
  });

  it('are at most 7 where four patches nest, 9 where they do not, 4 where all is pressed open', () => {
    const most = (top: Pressed, bottom: Pressed, across: Pressed): number => {
      const { first, second } = layersAt({ at, ends: [[above(0)], [below(1)]] }, join, across, (seam) => (seam === 0 ? top : bottom));
      return Math.max(...first, ...second);
    };
    expect(most('second', 'second', 'second')).toBe(7);
    expect(most('second', 'first', 'second')).toBe(9);
    expect(most('open', 'open', 'open')).toBe(4);
  });

  it('of a plain seam are three, and of one that leaves an earlier one behind five', () => {
    const strips = { finished: '3 by 1', grid: [3, 1], ground: 'oat', patches: [box('ink', 1, 0, 1, 1)] } as const;
    expect(patternDrawn(strips).pressing.layers).toBe(3);
    const step = (pattern: ReturnType<typeof patternOf>, kind: Step['kind']): number => stepOf(pattern, kind).layers;
    expect(step(patternOf('tests/cases/friendship-star-6'), 'half-square triangle')).toBe(3);
    // A log cabin, pressed outward, never folds a seam back on itself.
    expect(patternOf('tests/cases/log-cabin-11').pressing.layers).toBe(5);
  });
});

import { describe, expect, it } from 'vitest';
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

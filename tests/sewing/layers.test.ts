import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { waysToSew } from '../../src/geometry/piecing/ways.ts';
import { rational, toNumber } from '../../src/measure/rational.ts';
import { layersAround, layersOf } from '../../src/sewing/pressing/layers.ts';
import type { End } from '../../src/sewing/pressing/meetings.ts';
import type { Pressed, Step } from '../../src/sewing/step.ts';
import { drawings, EVERYTHING, tries } from '../geometry/drawings.ts';
import { clothOver, type Tips } from './cloth-by-hand.ts';
import { laidPieces } from './laid-pieces.ts';
import { box, patternDrawn, patternOf, sewnBy } from './told.ts';

/** The most layers that lie over places round every corner of a piece, as far from it as a share of the allowance, which is in steps. */
function mostByHand(steps: readonly Step[], seam: number, tips: Tips, share: number): number {
  const over = clothOver(steps, seam, tips);
  const corners = new Map(laidPieces(steps).flatMap(({ outline }) => outline.map((p) => [p.join(), p] as const)));
  const angles = Array.from({ length: 48 }, (_, i) => (i * Math.PI) / 24 + 0.0123);
  const far = share * seam;
  return Math.max(...[...corners.values()].flatMap(([x, y]) => angles.map((a) => over([x + far * Math.cos(a), y + far * Math.sin(a)]))));
}

const isSewnThrough = (steps: readonly Step[]): boolean => steps.every(({ joins }) => joins.length > 0 && joins.every(({ sew }) => sew === 'through'));

describe('layers of cloth', () => {
  const above: End = { at: { x: 0, y: 0, w: 1 }, seam: 0, dx: 0, dy: -1, spin: 1 };
  const below: End = { at: { x: 0, y: 0, w: 1 }, seam: 1, dx: 0, dy: 1, spin: 1 };
  /** Runs to the right; its second thing lies below. */
  const join = { seam: 2, dx: 1, dy: 0, spin: 1 } as const;

  it('in the angle between two seams are 3 where both are pressed away, 5 where both go one way round, 7 where both are pressed into it', () => {
    // nachograndmasquilts.com. The angle to the right of the upright seam and above the join, and what lies under the join beside it.
    const inAngle = (upright: Pressed, across: Pressed): number => {
      const round = layersAround({ ends: [[above], []] }, join, (seam) => (seam === 2 ? across : upright));
      return Math.max(...round.filter(({ way: [x, y] }) => x > 0n || (x === 0n && y < 0n)).map(({ layers }) => layers));
    };
    // An end's spin is 1: pressed toward its second thing it lies clockwise of it, which above is to the right.
    expect(inAngle('first', 'second')).toBe(3);
    expect(inAngle('second', 'second')).toBe(5);
    expect(inAngle('second', 'first')).toBe(7);
  });

  it('are at most 7 where four patches nest, 9 where they do not, 4 where all is pressed open', () => {
    const ends = [[above], [below]] as const;
    const most = (...ways: readonly Pressed[]): number => Math.max(...layersAround({ ends }, join, (seam) => ways[seam]!).map(({ layers }) => layers));
    expect(most('second', 'second', 'second')).toBe(7);
    expect(most('second', 'first', 'second')).toBe(9);
    expect(most('open', 'open', 'open')).toBe(4);
  });

  it('of a plain seam are three, and of one that leaves an earlier one behind five', () => {
    const strips = { finished: '3 by 1', grid: [3, 1], ground: 'oat', patches: [box('ink', 1, 0, 1, 1)] } as const;
    expect(layersOf(patternDrawn(strips).steps)).toEqual([3]);
    // A log cabin, pressed outward, never folds a seam back on itself.
    expect(Math.max(...layersOf(patternOf('tests/cases/log-cabin-11').steps))).toBe(5);
  });

  it.each([
    'tests/cases/friendship-star-6',
    'tests/gallery/courthouse-steps-10-wide-centre',
    'tests/gallery/double-pinwheel-8',
    'tests/gallery/dutchmans-puzzle-12',
    'tests/gallery/four-patch-star-12',
    'tests/gallery/kings-crown-8',
    'tests/gallery/pinwheel-8-on-2',
    'tests/gallery/pinwheel-star-8',
  ])('of %s are as many as are found by unfolding its cloth, however its tips are trimmed', (file) => {
    const { steps, choices, lattice } = patternOf(file);
    const seam = toNumber(choices.seam) / toNumber(lattice.step);
    const most = Math.max(...layersOf(steps));
    expect(isSewnThrough(steps)).toBe(true);
    const ways = [['round', 0.9], ['round', 0.01], ['long', 0.01]] as const;
    expect(ways.map(([tips, share]) => mostByHand(steps, seam, tips, share))).toEqual([most, most, most]);
  });

  it('of random drawings, by every way to sew them, are as many as are found by unfolding their cloth', () => {
    let tried = 0;
    fc.assert(
      fc.property(drawings({ ...EVERYTHING, cells: 3, free: 0 }), (drawing) => {
        for (const piecing of waysToSew(drawing)) {
          const { steps } = sewnBy(drawing, rational(1), piecing);
          if (!isSewnThrough(steps)) continue;
          tried++;
          // So narrow an allowance touches nothing but what ends at the point.
          expect(Math.max(...layersOf(steps))).toBe(mostByHand(steps, 1e-4, 'round', 0.5));
        }
      }),
      tries(15),
    );
    expect(tried).toBeGreaterThan(10);
  });
});

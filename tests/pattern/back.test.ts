import { describe, expect, it } from 'vitest';
import { wished, wishesFor } from '../../src/app/sheet/pressing/wishes.ts';
import { makePattern } from '../../src/pattern/make-pattern.ts';
import { backOf, type SeamPlace } from '../../src/pattern/diagrams/back.ts';
import { toNumber } from '../../src/measure/rational.ts';
import type { Block } from '../../src/block/block.ts';
import type { Pattern } from '../../src/pattern/pattern.ts';
import { must } from '../block/drawn.ts';
import { blockNamed, namesIn } from './made.ts';

const patternOf = (block: Block): Pattern => must(makePattern(block, {}, 'chosen way'));
const NAMES = namesIn('gallery').filter((_, i) => i % 5 === 3);

/** The fabric a little beside a seam, not in its middle where others may end, on the side to which it is pressed; '' where nothing lies. */
function beside(pattern: Pattern, { from, to, toward }: SeamPlace): string {
  const scale = toNumber(pattern.lattice.step);
  const little = Math.hypot(to[0] - from[0], to[1] - from[1]) / 1000;
  const [x, y] = [from[0] * 0.63 + to[0] * 0.37 + toward![0] * little, from[1] * 0.63 + to[1] * 0.37 + toward![1] * little];
  const under = pattern.pieces.find(({ outline }) =>
    outline.every((p, i) => {
      const q = outline[(i + 1) % outline.length]!;
      const [[ax, ay], [bx, by]] = [p, q].map((each) => [(each.x / each.w) * scale, (each.y / each.w) * scale] as const) as [readonly [number, number], readonly [number, number]];
      return (bx - ax) * (y - ay) - (by - ay) * (x - ax) >= 0;
    }),
  );
  return under?.fabric ?? '';
}

describe('the back of a block', () => {
  it('shows every seam once, and each of equal units lies on the same cloth', () => {
    for (const name of NAMES) {
      const pattern = patternOf(blockNamed('gallery', name));
      const { seams } = backOf(pattern);
      expect(seams.reduce((sum, { places }) => sum + places.length, 0), name).toBe(pattern.figures.seams);
      for (const { places } of seams) {
        const fabrics = places.filter(({ toward }) => toward).map((place) => beside(pattern, place));
        expect(new Set(fabrics).size, name).toBeLessThanOrEqual(1);
        expect(fabrics).not.toContain('');
      }
    }
  });

  it('rings as many points as the figures say do not nest', () => {
    for (const name of NAMES) {
      const pattern = patternOf(blockNamed('gallery', name));
      expect(backOf(pattern).loose.length, name).toBe(pattern.pressing.sameWay + pattern.pressing.open);
    }
  });
});

describe('a seam that the maker wants pressed otherwise', () => {
  it('is, in all equal units; and lies as before when it is left to the plan again', () => {
    for (const name of NAMES) {
      const block = blockNamed('gallery', name);
      const pattern = patternOf(block);
      const seams = backOf(pattern).seams.map((seam, i) => ({ seam, i })).filter(({ seam }) => seam.places[0]!.toward !== null);
      for (const { seam, i } of [seams[0]!, seams.at(-1)!]) {
        const other = must(wished(block, pattern, seam, 'the other way'));
        expect(wishesFor(other, pattern, seam)).toHaveLength(1);
        const then = patternOf(other);
        const now = backOf(then).seams[i]!;
        now.places.forEach(({ toward }, k) => {
          const before = seam.places[k]!.toward!;
          expect(toward![0] * before[0] + toward![1] * before[1], name).toBeCloseTo(-1, 9);
        });
        expect(then.proof.holds).toBe(true);
        const open = must(wished(other, then, now, 'open'));
        expect(wishesFor(open, then, now).map(({ lies }) => lies)).toEqual(['open']);
        expect(must(wished(open, then, now, 'as solved')).pressedSeams ?? []).toEqual([]);
      }
    }
  });
});

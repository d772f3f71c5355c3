import { describe, expect, it } from 'vitest';
import { makePattern } from '../../src/pattern/make-pattern.ts';
import type { Pattern } from '../../src/pattern/pattern.ts';
import { playThrough, type MovedPiece } from '../../src/pattern/diagrams/play-through.ts';
import { toNumber } from '../../src/measure/rational.ts';
import type { Spot } from '../../src/pattern/polygons.ts';
import { must } from '../block/drawn.ts';
import { blockNamed, namesIn } from './made.ts';

const NAMES = namesIn('gallery').filter((_, i) => i % 4 === 1);
const patterns: readonly Pattern[] = [
  ...NAMES.map((name) => must(makePattern(blockNamed('gallery', name), {}, 'chosen way'))),
  ...['whirl-9', 'log-cabin-11', 'bears-paw-14'].map((name) => must(makePattern(blockNamed('cases', name), {}, 'chosen way'))),
];

/** How deep one convex outline lies in another: by the best straight line between them (separating axis theorem). */
function overlap(a: readonly Spot[], b: readonly Spot[]): number {
  const sides = [a, b].flatMap((outline) => outline.map((p, i) => {
    const q = outline[(i + 1) % outline.length]!;
    const length = Math.hypot(q[0] - p[0], q[1] - p[1]);
    return [-(q[1] - p[1]) / length, (q[0] - p[0]) / length] as const;
  }));
  return Math.min(...sides.map(([dx, dy]) => {
    const [one, other] = [a, b].map((outline) => outline.map(([x, y]) => x * dx + y * dy));
    return Math.min(Math.max(...one!) - Math.min(...other!), Math.max(...other!) - Math.min(...one!));
  }));
}

const deepest = (pieces: readonly MovedPiece[]): number =>
  Math.max(...pieces.flatMap(({ outline }, i) => pieces.slice(0, i).map((other) => overlap(outline, other.outline))));

describe('a block sewn before one’s eyes', () => {
  it('ends as the drawing: every piece in its place', () => {
    for (const pattern of patterns) {
      const { moments, at } = playThrough(pattern);
      const scale = toNumber(pattern.lattice.step);
      const name = ({ outline }: { readonly outline: readonly Spot[] }): string => outline.map(([x, y]) => `${x.toFixed(6)},${y.toFixed(6)}`).sort().join(' ').replaceAll('-0.000000', '0.000000');
      const drawn = pattern.pieces.map(({ fabric, outline }) => `${fabric} ${name({ outline: outline.map(({ x, y, w }) => [(x / w) * scale, (y / w) * scale] as const) })}`);
      expect(at(moments.length).map((piece) => `${piece.fabric} ${name(piece)}`).sort(), pattern.block.name).toEqual(drawn.sort());
    }
  });

  it('never lays cloth on cloth, at any moment and between', () => {
    for (const pattern of patterns.filter(({ pieces }) => pieces.length <= 60)) {
      const { moments, at } = playThrough(pattern);
      for (let done = 0; done <= moments.length; done += moments.length / 7) expect(deepest(at(done)), `${pattern.block.name} at ${done}`).toBeLessThan(1e-9);
    }
  });

  it('sews every seam once, in the order of the steps, and begins with every piece by itself', () => {
    for (const pattern of patterns) {
      const { moments, at } = playThrough(pattern);
      expect(moments.at(-1)!.sewn).toBe(pattern.proof.seams);
      expect(moments.map(({ step }) => step.number)).toEqual(moments.map(({ step }) => step.number).toSorted((a, b) => a - b));
      expect(new Set(moments.map(({ step }) => step.number)).size).toBe(pattern.steps.length);
      if (pattern.pieces.length <= 40) expect(deepest(at(0))).toBeLessThan(0);
    }
  });
});

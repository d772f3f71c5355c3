import { describe, expect, it } from 'vitest';
import { mirrorTwins } from '../../src/sewing/mirrored.ts';
import type { Unit } from '../../src/geometry/piecing/assembly.ts';
import { makePattern } from '../../src/pattern/make-pattern.ts';
import type { Pattern } from '../../src/pattern/pattern.ts';
import { must } from '../block/drawn.ts';
import { blockNamed, namesIn } from '../pattern/made.ts';

const patternOf = (name: string): Pattern => must(makePattern(blockNamed('gallery', name), {}, 'chosen way'));

/** Those that have mirror images, and some that have none. */
const NAMES = ['capital-t-12', 'four-log-cabins-10', 'four-small-stars-12', ...namesIn('gallery').filter((_, i) => i % 4 === 0)];

/** What a unit shows: each corner of each piece from the middle of the unit, in all four turns, the least of them. */
function shown({ places }: Unit, mirrored: boolean): string {
  const corners = places[0]!.assembly.outline.map(({ x, y, w }) => [x / w, y / w] as const);
  const [cx, cy] = [0, 1].map((axis) => (Math.min(...corners.map((p) => p[axis]!)) + Math.max(...corners.map((p) => p[axis]!))) / 2) as [number, number];
  const turns: string[] = [];
  for (let turn = 0; turn < 4; turn++) {
    const pieces: string[] = [];
    const walk = (node: Unit['places'][number]['assembly']): void => {
      node.parts.forEach(walk);
      if (!node.piece) return;
      const spots = node.piece.outline.map(({ x, y, w }) => {
        let [px, py] = [x / w - cx, y / w - cy];
        if (mirrored) px = -px;
        for (let i = 0; i < turn; i++) [px, py] = [-py, px];
        return `${px.toFixed(4)},${py.toFixed(4)}`.replaceAll('-0.0000', '0.0000');
      });
      pieces.push(`${node.piece.fabric} ${spots.sort().join(' ')}`);
    };
    walk(places[0]!.assembly);
    turns.push(pieces.sort().join('|'));
  }
  return turns.sort()[0]!;
}

describe('units that look alike but are mirrored', () => {
  it('are told of one another, and no others: in blocks of the gallery', () => {
    let found = 0;
    for (const name of NAMES) {
      const { piecing } = patternOf(name);
      const expected = piecing.units.flatMap((unit) =>
        piecing.units.filter((other) => other !== unit && other.kind === unit.kind && shown(other, false) === shown(unit, true)).map((other) => `${unit.id} ${other.id}`),
      );
      expect([...mirrorTwins(piecing.units)].map(([a, b]) => `${a} ${b}`).sort(), name).toEqual(expected.sort());
      found += expected.length;
    }
    expect(found).toBeGreaterThan(3);
  });

  it('are named in the steps of both', () => {
    const { steps } = patternOf('capital-t-12');
    expect(steps[0]!.how).toMatch(/ B is its mirror image: keep the two apart\.$/);
    expect(steps[1]!.how).toMatch(/ A is its mirror image: keep the two apart\.$/);
    // Of other fabrics: nobody takes one for the other.
    for (const { how } of patternOf('half-rectangle-darts-12x9').steps) expect(how).not.toMatch(/mirror image: keep/);
  });
});

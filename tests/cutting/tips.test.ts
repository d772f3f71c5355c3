import { describe, expect, test } from 'vitest';
import type { Assembly } from '../../src/geometry/piecing/assembly.ts';
import type { Point } from '../../src/geometry/point.ts';
import { samePoint } from '../../src/geometry/point.ts';
import { cutOutline } from '../../src/cutting/template.ts';
import { templatesOf } from '../../src/cutting/template-list.ts';
import { tipsIn } from '../../src/cutting/tips.ts';
import { toNumber } from '../../src/measure/rational.ts';
import { inkOf } from '../../src/pattern/pages/ink.ts';
import type { Spot } from '../../src/pattern/polygons.ts';
import type { Pattern } from '../../src/pattern/pattern.ts';
import { blockNamed, namesIn } from '../pattern/made.ts';
import { byTemplate } from '../pattern/pages/laid.ts';
import { areaBetween, kept, offset } from './buffer.ts';

/** Blocks of every kind of unit, each piece of a unit cut round a template. */
const blocks = namesIn('gallery').filter((name, i) => (i % 5 === 0 || i < 8) && name !== 'treble-nine-patch-27');
const patterns = new Map<string, Pattern>();
const patternIn = (name: string): Pattern => {
  const known = patterns.get(name) ?? byTemplate(blockNamed('gallery', name));
  patterns.set(name, known);
  return known;
};

const floats = (outline: readonly Point[], step: number): readonly Spot[] => outline.map(({ x, y, w }) => [(x / w) * step, (y / w) * step]);
const away = ([ax, ay]: Spot, [bx, by]: Spot, [x, y]: Spot): number => ((bx - ax) * (y - ay) - (by - ay) * (x - ax)) / Math.hypot(bx - ax, by - ay);

describe('a printed template', () => {
  test.each(blocks)('of %s is the offset outline of another library, but for tips cut off a seam allowance from their corner', (name) => {
    const pattern = patternIn(name);
    const [step, seam] = [toNumber(pattern.lattice.step), toNumber(pattern.choices.seam)];
    for (const { finished, outline } of templatesOf(pattern)) {
      const corners = floats(finished, step);
      const cut = outline.flat().map(inkOf);
      const trims = outline.flatMap((places, i) => places.slice(1).map((place, j) => ({ corner: corners[i]!, line: [inkOf(places[j]!), inkOf(place)] as const })));
      for (const { corner, line } of trims) expect(away(...line, corner)).toBeGreaterThan(seam - 1e-9);
      // The other library offsets the finished outline and cuts the tips off along the same lines.
      const other = trims.reduce((shape, { line }) => kept(shape, line), offset(corners, seam, 'whole'));
      for (const place of cut) expect(Math.min(...other.map((p) => Math.hypot(p[0] - place[0], p[1] - place[1])))).toBeLessThan(1e-6);
      expect(areaBetween(cut, other)).toBeLessThan(1e-6);
      // Everything within the allowance is still there.
      expect(areaBetween(cut, offset(corners, seam, 'round'), 'missing')).toBeLessThan(1e-9);
    }
  });
});

describe('trimmed tips', () => {
  test('let the raw edges of two pieces end together where they are first sewn', () => {
    let [ends, trimmed] = [0, 0];
    for (const name of blocks) {
      const { piecing, lattice, choices } = patternIn(name);
      const [step, tips] = [toNumber(lattice.step), tipsIn(piecing)];
      const seams = seamsInOrder(piecing.root);
      /** Whether of the two edges that meet at a corner this one, from the corner before or to the one after, is sewn first. */
      const sewnFirst = (outline: readonly Point[], i: number, which: 'before' | 'after'): boolean => {
        const [before, corner, after] = [-1, 0, 1].map((k) => floats([outline[(i + k + outline.length) % outline.length]!], 1)[0]!) as [Spot, Spot, Spot];
        const when = (other: Spot): number => {
          const at = seams.findIndex(([from, to]) => covers(from, to, corner) && covers(from, to, other));
          return at < 0 ? Infinity : at;
        };
        return which === 'before' ? when(before) < when(after) : when(after) < when(before);
      };
      const sewn = piecing.pieces.map((piece) => {
        const trims = tips(piece);
        return { outline: piece.outline, trims, places: cutOutline(piece.outline, lattice.step, choices.seam, trims).map((at) => at.map(inkOf)) };
      });
      for (const one of sewn) {
        for (const [i, p] of one.outline.entries()) {
          const q = one.outline[(i + 1) % one.outline.length]!;
          for (const other of sewn) {
            const j = other.outline.findIndex((r, k) => samePoint(r, q) && samePoint(other.outline[(k + 1) % other.outline.length]!, p));
            // Only edges that two pieces have wholly in common, and of these the first that are sewn at their corner.
            if (j < 0 || !sewnFirst(one.outline, (i + 1) % one.outline.length, 'before') || !sewnFirst(other.outline, j, 'after')) continue;
            const n = one.outline.length;
            const [a, b] = floats([p, q], step) as [Spot, Spot];
            const long = Math.hypot(b[0] - a[0], b[1] - a[1]);
            const along = ([x, y]: Spot): number => ((x - a[0]) * (b[0] - a[0]) + (y - a[1]) * (b[1] - a[1])) / long;
            const mine = { end: along(one.places[(i + 1) % n]![0]!), angle: angleAt(one.outline, (i + 1) % n), trims: one.trims[(i + 1) % n]! };
            const theirs = { end: along(other.places[j]!.at(-1)!), angle: angleAt(other.outline, j), trims: other.trims[j]! };
            if (mine.trims.length === 0 && theirs.trims.length === 0) continue;
            if (mine.angle < 89.9 && theirs.angle < 89.9 && (mine.trims.length === 0 || theirs.trims.length === 0)) continue;
            trimmed += 1;
            if (Math.abs(mine.end - theirs.end) < 1e-9) ends += 1;
          }
        }
      }
    }
    expect(trimmed).toBeGreaterThan(200);
    expect(ends).toBe(trimmed);
  });
});

/** All seams of a block in sewing order, those of its parts first. */
const seamsInOrder = ({ parts, seams }: Assembly): readonly (readonly [Spot, Spot])[] => [
  ...parts.flatMap(seamsInOrder),
  ...seams.map(({ from, to }) => floats([from, to], 1) as [Spot, Spot]),
];

/** Whether a place lies on a seam. */
const covers = (from: Spot, to: Spot, at: Spot): boolean =>
  Math.abs(Math.hypot(at[0] - from[0], at[1] - from[1]) + Math.hypot(at[0] - to[0], at[1] - to[1]) - Math.hypot(to[0] - from[0], to[1] - from[1])) < 1e-9;

/** Of an outline at a corner, in degrees. */
function angleAt(outline: readonly Point[], i: number): number {
  const [before, here, after] = [-1, 0, 1].map((k) => floats([outline[(i + k + outline.length) % outline.length]!], 1)[0]!) as [Spot, Spot, Spot];
  const [u, v] = [Math.atan2(before[1] - here[1], before[0] - here[0]), Math.atan2(after[1] - here[1], after[0] - here[0])];
  const turn = Math.abs(((u - v) * 180) / Math.PI);
  return Math.min(turn, 360 - turn);
}

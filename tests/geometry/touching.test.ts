import { readdirSync, readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { toDrawing } from '../../src/block/drawing.ts';
import { parseBlock } from '../../src/files/block-file.ts';
import { touching } from '../../src/geometry/piecing/touching.ts';
import { sewing } from '../../src/geometry/piecing/ways.ts';
import type { Point } from '../../src/geometry/point.ts';
import { must } from '../block/drawn.ts';
import { intersection, isEmpty, lengthOf, polygon } from './oracle.ts';

const gallery = new URL('../gallery/', import.meta.url);
const names = readdirSync(gallery).filter((name) => name.endsWith('.block.json')).filter((_, i) => i % 9 === 0);

/** Whole numbers in place of exact points, which jsts takes as they are. */
function scaled(outlines: readonly (readonly Point[])[]): readonly (readonly (readonly [number, number])[])[] {
  const common = outlines.flat().reduce((all, { w }) => (all * w) / divisor(all, w), 1);
  return outlines.map((outline) => outline.map(({ x, y, w }) => [x * (common / w), y * (common / w)] as const));
}

const divisor = (a: number, b: number): number => (b === 0 ? a : divisor(b, a % b));

it.each(names)('pieces of %s touch along a seam, or at a corner, as jsts finds it', (name) => {
  const { drawing } = must(toDrawing(must(parseBlock(readFileSync(new URL(name, gallery), 'utf8')))));
  const outlines = sewing(drawing).way('standard units')!.pieces.map(({ outline }) => outline).slice(0, 40);
  const { along, atCorner } = touching(outlines);
  const shapes = scaled(outlines).map((outline) => polygon(outline));
  shapes.forEach((shape, i) => {
    shapes.slice(0, i).forEach((other, j) => {
      const shared = intersection(shape, other);
      const how = lengthOf(shared) > 0 ? 'along' : isEmpty(shared) ? 'apart' : 'corner';
      expect(along[i]!.has(j) ? 'along' : atCorner[i]!.has(j) ? 'corner' : 'apart', `pieces ${j} and ${i}`).toBe(how);
      expect([along[j]!.has(i), atCorner[j]!.has(i)]).toEqual([along[i]!.has(j), atCorner[i]!.has(j)]);
    });
  });
});

import fc from 'fast-check';
import type { Block, LatticePoint, Patch } from '../../src/block/block.ts';
import { outlineFault } from '../../src/block/outline.ts';
import type { Stroke } from '../../src/block/painting.ts';
import type { Result } from '../../src/measure/problem.ts';

/** Same random drawings on every machine and every run. */
export const SEED = { seed: 20261101, numRuns: 300 } as const;

/** @returns the value, or fails the test with the sentence */
export function must<T>(result: Result<T>): T {
  if (!result.ok) throw new Error(result.problem.sentence);
  return result.value;
}

export const FABRICS = [
  { id: 'oat', name: 'Oat', color: '#f3ede0' },
  { id: 'teal', name: 'Teal', color: '#2f5d62' },
  { id: 'rust', name: 'Rust', color: '#8c2f39' },
] as const;

/** A block of unpainted oat, 12 in. square unless told otherwise. */
export function unpainted(columns: number, rows: number, change: Partial<Block> = {}): Block {
  return {
    name: 'Harbour light',
    finished: { width: { n: 12, d: 1 }, height: { n: 12, d: 1 }, unit: 'in' },
    grid: { columns, rows },
    denominator: 1,
    fabrics: FABRICS,
    ground: 'oat',
    patches: [],
    seams: [],
    ...change,
  };
}

const fabricId = fc.constantFrom(...FABRICS.map((fabric) => fabric.id));

/** Random simple outlines inside right × bottom steps, three to seven corners, slanted at any angle. */
export const outline = (right: number, bottom: number): fc.Arbitrary<readonly LatticePoint[]> =>
  fc
    .array(fc.tuple(fc.integer({ min: 0, max: right }), fc.integer({ min: 0, max: bottom })), { minLength: 3, maxLength: 7 })
    .filter((points) => outlineFault(points) === null);

/** Random strokes: pieces of cells, rectangles and slanted outlines. */
export const stroke = (columns: number, rows: number): fc.Arbitrary<Stroke> => {
  const box = fc
    .tuple(fc.nat(columns - 1), fc.nat(rows - 1), fc.integer({ min: 1, max: 3 }), fc.integer({ min: 1, max: 3 }))
    .map(([x, y, w, h]): Stroke => {
      const [right, bottom] = [Math.min(columns, x + w), Math.min(rows, y + h)];
      return { denominator: 1, points: [[x, y], [right, y], [right, bottom], [x, bottom]] };
    });
  const triangle = fc.tuple(fc.nat(columns - 1), fc.nat(rows - 1), fc.nat(3)).map(([x, y, without]): Stroke => {
    const corners: LatticePoint[] = [[x, y], [x + 1, y], [x + 1, y + 1], [x, y + 1]];
    return { denominator: 1, points: corners.filter((_, i) => i !== without) };
  });
  const slanted = fc
    .constantFrom(1, 2, 3)
    .chain((denominator) => outline(columns * denominator, rows * denominator).map((points): Stroke => ({ denominator, points })));
  return fc.oneof(box, triangle, slanted);
};

const patch = (right: number, bottom: number): fc.Arbitrary<Patch> =>
  fc
    .tuple(fabricId, outline(right, bottom), fc.boolean())
    .map(([fabric, points, whole]) => ({ fabric, points, ...(whole && { whole: true as const }) }));

/** Random blocks, patches lying over each other as they please. */
export const block: fc.Arbitrary<Block> = fc
  .record({ columns: fc.integer({ min: 1, max: 6 }), rows: fc.integer({ min: 1, max: 6 }), denominator: fc.constantFrom(1, 2, 3, 4) })
  .chain(({ columns, rows, denominator }) => {
    const [right, bottom] = [columns * denominator, rows * denominator];
    const at = fc.tuple(fc.nat(right), fc.nat(bottom));
    return fc.record({
      patches: fc.array(patch(right, bottom), { maxLength: 6 }),
      seams: fc.array(fc.tuple(at, at).filter(([[a, b], [c, d]]) => a !== c || b !== d), { maxLength: 2 }),
      pins: fc.array(fc.tuple(fc.constantFrom('sewn last' as const, 'one unit' as const), at, at), { maxLength: 2 }),
      unit: fc.constantFrom('in' as const, 'cm' as const),
      boxes: fc.array(fc.tuple(at, at).filter(([[a, b], [c, d]]) => a !== c && b !== d), { maxLength: 1 }),
      width: fc.integer({ min: 1, max: 60 }),
      height: fc.integer({ min: 1, max: 60 }),
      ground: fabricId,
    }).map(({ patches, seams, pins, boxes, width, height, unit, ground }): Block => {
      const spanning = pins.filter(([, [a, b], [c, d]]) => a !== c && b !== d).map(([pin, from, to]) => ({ pin, from, to }));
      return unpainted(columns, rows, {
        denominator, ground, patches, seams,
        ...(spanning.length > 0 && { pins: spanning }),
        ...(boxes.length > 0 && { unitMethods: boxes.map(([from, to]) => ({ from, to, method: 'template' as const })) }),
        finished: { width: { n: width, d: 1 }, height: { n: height, d: 1 }, unit },
      });
    });
  });

/** A random fabric of these blocks. */
export const paintFabric = fabricId;

/**
 * An eye of its own on the picture: what shows at a point, by counting how often a line to the left meets each outline.
 * @param x in grid units, chosen so that no corner or edge of a drawing lies there
 */
export function seen({ patches, ground, denominator }: Block, x: number, y: number): string {
  return patches.findLast(({ points }) => covers(points, denominator, x, y))?.fabric ?? ground;
}

/** @returns whether a point lies inside an outline whose corners are in steps of 1/denominator */
export function covers(points: readonly LatticePoint[], denominator: number, x: number, y: number): boolean {
  let crossings = 0;
  points.forEach(([ax, ay], i) => {
    const [bx, by] = points[(i + 1) % points.length]!;
    const [px, py] = [x * denominator, y * denominator];
    if (py < Math.min(ay, by) || py >= Math.max(ay, by)) return;
    if (ax + ((py - ay) / (by - ay)) * (bx - ax) < px) crossings++;
  });
  return crossings % 2 === 1;
}

/** Points of a block where nothing is drawn: fractions with prime denominators beyond any lattice here. */
export function samplePoints({ grid }: Block): readonly (readonly [number, number])[] {
  const points: [number, number][] = [];
  for (let i = 0; i < 23; i++) {
    for (let j = 0; j < 23; j++) points.push([((i + 13 / 101) / 23) * grid.columns, ((j + 29 / 103) / 23) * grid.rows]);
  }
  return points;
}

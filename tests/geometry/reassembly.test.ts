import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { toDrawing } from '../../src/block/drawing.ts';
import type { Drawing, Pin } from '../../src/geometry/patchwork/drawing.ts';
import type { Assembly, Piecing } from '../../src/geometry/piecing/assembly.ts';
import { inOrder, ordersOf } from '../../src/geometry/piecing/reassembly.ts';
import { isWeb } from '../../src/geometry/piecing/web.ts';
import type { AssemblyOrder } from '../../src/geometry/piecing/order.ts';
import { sewing } from '../../src/geometry/piecing/ways.ts';
import type { Way } from '../../src/geometry/piecing/way.ts';
import { must } from '../block/drawn.ts';
import { blockNamed, namesIn, type Folder } from '../pattern/made.ts';
import { drawings, EVERYTHING, tiled, tries } from './drawings.ts';
import { figureFaults, nodeFaults, placeFaults, seamFaults } from './sewn.ts';

const drawingOf = (name: string, folder: Folder = 'gallery'): Drawing => must(toDrawing(blockNamed(folder, name))).drawing;
const known = new Map<string, Piecing>();

/** @returns a way to sew a block; each is looked for once */
function found(name: string, way: Way = 'standard units', folder: Folder = 'gallery'): Piecing {
  const key = `${folder} ${name} ${way}`;
  const piecing = known.get(key) ?? sewing(drawingOf(name, folder)).way(way)!;
  known.set(key, piecing);
  return piecing;
}

/** Every third block of the gallery, as it comes. */
const GALLERY = namesIn('gallery').filter((_, i) => i % 3 === 0);

const ordersIn = (piecing: Piecing): readonly AssemblyOrder[] => ordersOf(piecing).map(({ order }) => order);

/** Where cloth lies next to cloth along a seam: the same however the seams follow one another. */
function seamLength({ root }: Piecing): number {
  let sum = 0;
  const walk = (node: Assembly): void => {
    for (const { from, to } of node.seams) sum += Math.hypot(to.x / to.w - from.x / from.w, to.y / to.w - from.y / from.w);
    node.parts.forEach(walk);
  };
  walk(root);
  return sum;
}

/** What is wrong with putting the units of a piecing together in another order. */
function faultsOf(piecing: Piecing): readonly string[] {
  return ordersOf(piecing).flatMap(({ order, piecing: put }) => [
    ...nodeFaults(put.root),
    ...seamFaults(put.root),
    ...placeFaults(put),
    ...figureFaults(put),
    ...(put.pieces === piecing.pieces ? [] : ['other pieces']),
    ...(put.figures.seams === piecing.figures.seams ? [] : ['another number of seams']),
    ...(Math.abs(seamLength(put) - seamLength(piecing)) < 1e-6 ? [] : ['other seams']),
    ...(inOrder(put, 'as found')!.root === piecing.root ? [] : ['no way back']),
  ].map((fault) => `${piecing.way}, ${order}: ${fault}`));
}

describe('units put together in another order', () => {
  it('are the same pieces with the same seams, soundly sewn, and may be put back as they were', () => {
    for (const name of GALLERY) expect(faultsOf(found(name)), name).toEqual([]);
  });

  it('are so in every way of random blocks too', () => {
    fc.assert(
      fc.property(fc.oneof(drawings(EVERYTHING), tiled), (drawing) => {
        const sew = sewing(drawing);
        const ways = (['standard units', 'quarters'] as const).flatMap((way) => sew.way(way) ?? []);
        expect(ways.flatMap((piecing) => faultsOf(piecing))).toEqual([]);
      }),
      tries(12),
    );
  });

  it('lie in rows that are as wide as the block, in columns as high, in quarters of its size', () => {
    for (const name of GALLERY) {
      const { width, height } = drawingOf(name);
      for (const { order, piecing } of ordersOf(found(name))) {
        const sizes = piecing.root.parts.map(({ outline }) => {
          const [xs, ys] = [outline.map(({ x, w }) => x / w), outline.map(({ y, w }) => y / w)];
          return [Math.max(...xs) - Math.min(...xs), Math.max(...ys) - Math.min(...ys)] as const;
        });
        if (order === 'rows' || order === 'web') expect(sizes.every(([across]) => across === width), name).toBe(true);
        if (order === 'columns') expect(sizes.every(([, down]) => down === height), name).toBe(true);
        if (order === 'quarters') expect(sizes.every(([across, down]) => across * down * 2 === width * height), name).toBe(true);
      }
    }
  });

  it('are offered once where two orders are the same', () => {
    const [shooFly, ...others] = ordersOf(found('shoo-fly-9-on-9'));
    expect([shooFly!.order, shooFly!.same]).toEqual(['as found', 'rows']);
    expect(others.map(({ order }) => order)).toEqual(['columns', 'web']);
  });

  it('are units still where a cell of the block is sewn of many', () => {
    for (const order of ['rows', 'columns', 'web'] as const) {
      const { root, units } = inOrder(found('double-nine-patch-9', 'standard units', 'cases'), order)!;
      expect(root.parts.map(({ parts }) => parts.length), order).toEqual([3, 3, 3]);
      expect(units.find(({ places }) => places.length === 5)?.kind, order).toBe('joined unit');
    }
  });

  it('have no other order where they go round a centre, or turn about one, or are one unit', () => {
    for (const name of ['quarter-log-cabin-12', 'bright-hopes-6', 'wide-whirl-11', 'economy-patch-8']) expect(ordersIn(found(name)), name).toEqual(['as found']);
    expect(ordersIn(found('flock-of-geese-8', 'foundation'))).toEqual(['as found']);
  });

  it('are put together in quarters where the block has four; a block of three by three has none', () => {
    expect(ordersIn(found('star-quartet-24'))).toContain('quarters');
    expect(inOrder(found('shoo-fly-9-on-9'), 'quarters')).toBeNull();
  });

  it('keep what the designer pinned: the seam that is to be last, the rectangle that is to be a unit', () => {
    const drawing = drawingOf('shoo-fly-9-on-9');
    const third = drawing.height / 3;
    const last: Pin = { pin: 'sewn last', from: [0, third], to: [drawing.width, third] };
    const level = sewing({ ...drawing, pins: [last] }).way('standard units')!;
    expect([inOrder(level, 'rows', [last]) !== null, inOrder(level, 'columns', [last])]).toEqual([true, null]);
    const unit: Pin = { pin: 'one unit', from: [0, 0], to: [2 * third, third] };
    const pinned = sewing({ ...drawing, pins: [unit] }).way('standard units')!;
    for (const { piecing, order } of ordersOf(pinned, [unit])) {
      const made = (node: Assembly): boolean =>
        (node.kind !== undefined && node.outline.every(({ x, y }) => (x === 0 || x === 2 * third) && (y === 0 || y === third))) || node.parts.some(made);
      expect(made(piecing.root), order).toBe(true);
    }
  });
});

describe('a web', () => {
  it('has the seams of the rows, and where a row is no unit of its own', () => {
    for (const name of GALLERY) {
      const piecing = found(name);
      const web = inOrder(piecing, 'web');
      if (!web) continue;
      const rows = inOrder(piecing, 'rows')!;
      expect(isWeb(web.root) && !isWeb(rows.root), name).toBe(true);
      const lines = ({ root }: Piecing): readonly string[] => {
        const told: string[] = [];
        const walk = (node: Assembly): void => {
          for (const { from, to } of node.seams) told.push([from, to].map(({ x, y, w }) => `${x}/${w} ${y}/${w}`).sort().join());
          node.parts.forEach(walk);
        };
        walk(root);
        return told.sort();
      };
      expect(lines(web), name).toEqual(lines(rows));
      expect(web.figures.matchedPoints, name).toBe(rows.figures.matchedPoints);
      expect(web.figures.differentUnits, name).toBeLessThanOrEqual(rows.figures.differentUnits);
    }
  });
});

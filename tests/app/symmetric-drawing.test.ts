import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Block } from '../../src/block/block.ts';
import { toDrawing } from '../../src/block/drawing.ts';
import { pointImages, SYMMETRIES, type SymmetryName } from '../../src/block/symmetry.ts';
import { TOOLS, type Tool } from '../../src/canvas/tool.ts';
import { boundariesOf } from '../../src/geometry/patchwork/boundaries.ts';
import { merged, type Stretch } from '../../src/geometry/patchwork/stretches.ts';
import type { Drawing } from '../../src/geometry/patchwork/drawing.ts';
import { patchworkOf } from '../../src/geometry/patchwork/patchwork.ts';
import { symmetriesOf, takenDrawing } from '../../src/geometry/patchwork/symmetry.ts';
import { must, samplePoints, seen, unpainted } from '../block/drawn.ts';
import { atTheTable, type AtTheTable } from './at-the-table.ts';

/** @returns the picture of a drawing, however its patches were laid: on every line where which cloths meet, and where a seam is asked for */
function picture(drawing: Drawing): readonly string[] {
  const ends = ({ from, to }: Stretch): string => [from, to].map(({ x, y, w }) => `${x}/${w},${y}/${w}`).join(' ');
  return [...boundariesOf(patchworkOf(drawing)).values()].flatMap(({ line, drawn, between }) => {
    const name = `${line.a} ${line.b} ${line.c}`;
    const pairs = new Map<string, Stretch[]>();
    for (const stretch of between) {
      const pair = `${stretch.front} ${stretch.back}`;
      pairs.set(pair, [...(pairs.get(pair) ?? []), stretch]);
    }
    return [
      ...merged(drawn).map((stretch) => `${name}: ${ends(stretch)}`),
      ...[...pairs].sort().flatMap(([pair, stretches]) => merged(stretches).map((stretch) => `${name}: ${ends(stretch)} ${pair}`)),
    ];
  }).sort();
}

/** Which of the eight a drawing must be equal under, as this file understands the names: x and y counted from the block's middle. */
const MEANT: Readonly<Record<SymmetryName, readonly ((x: number, y: number) => readonly [number, number])[]>> = {
  none: [],
  'left and right': [(x, y) => [-x, y]],
  'top and bottom': [(x, y) => [x, -y]],
  'both ways': [(x, y) => [-x, y], (x, y) => [x, -y]],
  'half turn': [(x, y) => [-x, -y]],
  'quarter turns': [(x, y) => [-y, x]],
  'falling diagonal': [(x, y) => [y, x]],
  'rising diagonal': [(x, y) => [-y, -x]],
  'both diagonals': [(x, y) => [y, x], (x, y) => [-y, -x]],
  'every way': [(x, y) => [-x, y], (x, y) => [y, x]],
};

function expectSymmetric(block: Block, symmetry: SymmetryName, words: string): void {
  const { drawing } = must(toDrawing(block));
  const own = picture(drawing);
  for (const meant of MEANT[symmetry]) {
    const [a, c] = meant(1, 0);
    const [b, d] = meant(0, 1);
    const motion = symmetriesOf(drawing.width, drawing.height).find((each) => each.a === a && each.b === b && each.c === c && each.d === d)!;
    expect(picture(takenDrawing(motion, drawing)), words).toEqual(own);
  }
  const { columns, rows } = block.grid;
  for (const [x, y] of samplePoints(block)) {
    for (const meant of MEANT[symmetry]) {
      const [u, v] = meant(x - columns / 2, y - rows / 2);
      if (seen(block, u + columns / 2, v + rows / 2) !== seen(block, x, y)) throw new Error(`${words}: ${x}, ${y} differs from its image`);
    }
  }
}

const at = fc.tuple(fc.integer({ min: 0, max: 600 }), fc.integer({ min: 0, max: 600 })).map(([x, y]) => [x / 100, y / 100] as const);
const drawn: readonly Tool[] = TOOLS.map(({ tool }) => tool).filter((tool) => !['pick', 'choose'].includes(tool));
const gesture = fc.record({
  // Which of two patches on top of each other is kept whole is not for a picture to say.
  tool: fc.constantFrom(...drawn.filter((tool) => tool !== 'whole')),
  fabric: fc.constantFrom('teal', 'rust', 'oat'),
  places: fc.array(at, { minLength: 1, maxLength: 3 }),
  erase: fc.nat(9).map((n) => n === 0),
});

const THIRDS = [{ n: 1, d: 2 }, { n: 2, d: 1 }, { n: 13, d: 3 }];

describe.each(SYMMETRIES.filter((name) => name !== 'none'))('drawing with the symmetry “%s”', (symmetry) => {
  const gestures = (table: AtTheTable, seed: number, many: number): void => {
    table.acts.takeUpSymmetry(symmetry);
    for (const [i, { tool, fabric, places, erase }] of fc.sample(gesture, { seed, numRuns: many }).entries()) {
      const before = table.block();
      const { done } = table.table.get().work.history;
      table.hand.drop();
      table.acts.takeUpTool(tool);
      table.acts.takeUpFabric(fabric);
      table.draw(...places);
      if (tool === 'outline') {
        table.draw(places.at(-1)!.map((along) => 6 - along) as [number, number]);
        table.hand.key({ verb: 'close' });
      }
      if (erase) table.hand.key({ verb: 'erase' });
      if (table.block() === before) continue;
      expect(table.table.get().work.history.done.length - done.length).toBeLessThanOrEqual(erase ? 2 : 1);
      expectSymmetric(table.block(), symmetry, `gesture ${i + 1}, ${tool} ${JSON.stringify(places)}`);
    }
    expect(table.table.get().work.history.done.length).toBeGreaterThan(many / 4);
  };

  test('makes any drawing its own image, whatever tool is used', { timeout: 300_000 }, () => gestures(atTheTable(unpainted(6, 6)), 1, 60));

  test('does so where its images lie on no line of the grid', { timeout: 300_000 }, () => {
    const lines = ['falling diagonal', 'rising diagonal', 'both diagonals', 'quarter turns', 'every way'].includes(symmetry)
      ? { across: THIRDS, down: THIRDS }
      : { across: THIRDS, down: [{ n: 5, d: 4 }, { n: 3, d: 1 }] };
    gestures(atTheTable(unpainted(6, 6, { grid: { columns: 6, rows: 6, ...lines } })), 2, 40);
  });
});

describe('one gesture in several places', () => {
  const pictured = ({ block }: AtTheTable): number => block().patches.length;

  test('is one entry of the history, and all its places are taken back together', () => {
    const table = atTheTable(unpainted(6, 6));
    table.acts.takeUpSymmetry('every way');
    table.acts.takeUpTool('half');
    table.draw([0.2, 1.2], [2.2, 1.2]);
    // Eight of each, but four in the cell that a diagonal halves.
    expect(pictured(table)).toBe(20);
    expect(table.table.get().work.history.done).toHaveLength(1);
    table.acts.undo();
    expect(pictured(table)).toBe(0);
  });

  test('lays what comes to the same place once', () => {
    const table = atTheTable(unpainted(6, 6));
    table.acts.takeUpSymmetry('every way');
    table.acts.takeUpTool('rectangle');
    table.draw([2.5, 2.5], [3.5, 3.5]);
    expect(table.heard.laid![0]).toHaveLength(1);
    table.acts.takeUpTool('last');
    table.draw([3.02, 1.4]);
    expect(table.block().pins).toHaveLength(2);
    table.acts.takeUpTool('unit');
    table.draw([2.5, 2.5], [3.5, 3.5]);
    expect(table.block().pins).toHaveLength(3);
  });

  test('keeps patches whole together, and lets them all be divided again', () => {
    const table = atTheTable(unpainted(6, 6));
    table.acts.takeUpSymmetry('quarter turns');
    table.draw([0.5, 0.5]);
    table.acts.takeUpTool('whole');
    table.draw([0.5, 0.5]);
    expect(table.block().patches.map(({ whole }) => whole)).toEqual([true, true, true, true]);
    expect(table.heard.said).toMatch(/^Patches 1, .* and \d are kept whole\.$/);
    table.draw([5.5, 0.5]);
    expect(table.block().patches.some(({ whole }) => whole)).toBe(false);
  });

  test('draws seams together and takes them away together', () => {
    const table = atTheTable(unpainted(6, 6));
    table.acts.takeUpSymmetry('left and right');
    table.acts.takeUpTool('seam');
    table.draw([0, 0], [2, 6]);
    expect(table.heard.said).toBe('2 seams drawn.');
    table.draw([4, 6], [6, 0]);
    expect(table.heard.said).toBe('2 seams taken away.');
    expect(table.block().seams).toEqual([]);
  });

  test('is refused as a whole where one of its places is', () => {
    const table = atTheTable(unpainted(6, 6, { pins: [] }));
    const pins = Array.from({ length: 49 }, (_, i) => ({ pin: 'one unit' as const, from: [0, 0] as const, to: [1 + (i % 6), 1 + Math.floor(i / 6) % 6] as const }));
    table.acts.change('pins', (block) => ({ ok: true, value: { ...block, pins } }));
    const before = table.block();
    table.acts.takeUpSymmetry('left and right');
    table.acts.takeUpTool('unit');
    table.draw([0.5, 5.5], [1.5, 5.5]);
    expect(table.block()).toBe(before);
    expect(table.table.get().alert).toMatch(/^The block has 51 pins; .*\.$/);
  });

  test('shows in all its places before it is done, with what it is mirrored in', () => {
    const table = atTheTable(unpainted(6, 6));
    table.acts.takeUpSymmetry('both ways');
    expect(table.hand.marks().axes).toEqual({ lines: [[[3, 0], [3, 6]], [[0, 3], [6, 3]]], turns: 2 });
    const hover = (x: number, y: number): void => table.hand.pointerMove(...([x, y].map((v, i) => v * 100 + [50, 30][i]!) as [number, number]));
    hover(0.5, 0.5);
    expect(table.hand.marks().ghost!.outlines).toHaveLength(4);
    table.acts.takeUpTool('seam');
    hover(0.5, 0.5);
    expect(table.hand.marks().echoes).toHaveLength(3);
    table.acts.takeUpTool('last');
    hover(1.05, 0.5);
    expect(table.hand.marks().basting).toHaveLength(2);
  });

  test('shows while it is swept, each patch once', () => {
    const table = atTheTable(unpainted(6, 6));
    table.acts.takeUpSymmetry('left and right');
    table.draw([0.5, 0.5], [5.5, 0.5]);
    expect(table.heard.swept).toBe(6);
    expect(pictured(table)).toBe(6);
  });

  test('is done in one place only where the block does not allow the symmetry', () => {
    const table = atTheTable(unpainted(6, 4));
    table.acts.takeUpSymmetry('quarter turns');
    table.draw([0.5, 0.5]);
    expect(pictured(table)).toBe(1);
    table.hand.key({ verb: 'symmetry', by: 1 });
    expect(table.heard.said).toBe('Symmetry: left and right.');
    table.hand.key({ verb: 'symmetry', by: -1 });
    table.hand.key({ verb: 'symmetry', by: -1 });
    expect(table.heard.said).toBe('Symmetry: half turn.');
  });
});

test('every symmetry brings a place where its name says', () => {
  for (const name of SYMMETRIES) {
    const places = pointImages({ columns: 6, rows: 6 }, name, { x: 4, y: 5, w: 1 }).map(({ x, y }) => `${x - 3} ${y - 3}`);
    for (const meant of MEANT[name]) expect(places).toContain(meant(1, 2).map((v) => v + 0).join(' '));
  }
});

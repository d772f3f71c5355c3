import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Block } from '../../src/block/block.ts';
import { checkBlock } from '../../src/block/whole-check.ts';
import { toDrawing } from '../../src/block/drawing.ts';
import { exchangeFabrics, replaceFabric } from '../../src/block/fabrics.ts';
import { SYMMETRIES } from '../../src/block/symmetry.ts';
import type { TableVerb } from '../../src/canvas/table-keys.ts';
import { TOOLS, type Tool } from '../../src/canvas/tool.ts';
import { pixelOf } from '../../src/canvas/view.ts';
import { formatBlock, parseBlock } from '../../src/files/block-file.ts';
import { patchworkOf } from '../../src/geometry/patchwork/patchwork.ts';
import { covers, FABRICS, must, samplePoints, seen, unpainted } from '../block/drawn.ts';
import { add, exactly, minus, printed, q, times, total, xOf, yOf, type Q } from '../geometry/exact.ts';
import { atTheTable } from './at-the-table.ts';

/** What a person might do next, wisely or not. */
type Act =
  | { readonly act: 'tool'; readonly tool: Tool }
  | { readonly act: 'symmetry'; readonly symmetry: (typeof SYMMETRIES)[number] }
  | { readonly act: 'fabric'; readonly fabric: string }
  | { readonly act: 'stroke'; readonly places: readonly (readonly [number, number])[]; readonly picking: boolean; readonly shift: boolean; readonly dropped: boolean }
  | { readonly act: 'keys'; readonly verbs: readonly TableVerb[] }
  | { readonly act: 'swap'; readonly pair: readonly [string, string]; readonly both: boolean }
  | { readonly act: 'chosen'; readonly handling: Parameters<ReturnType<typeof atTheTable>['handle']>[0] }
  | { readonly act: 'undo' | 'redo' };

const place = fc.tuple(fc.integer({ min: -30, max: 630 }), fc.integer({ min: -30, max: 630 })).map(([x, y]) => [x / 100, y / 100] as const);
const fabric = fc.constantFrom(...FABRICS.map(({ id }) => id));
const step = fc.constantFrom(-1, 0, 1);
const verb: fc.Arbitrary<TableVerb> = fc.oneof(
  { weight: 4, arbitrary: fc.record({ verb: fc.constant('move' as const), dx: step, dy: step, half: fc.boolean() }) },
  { weight: 4, arbitrary: fc.constant({ verb: 'use' as const }) },
  { weight: 2, arbitrary: fc.constant({ verb: 'close' as const }) },
  { weight: 1, arbitrary: fc.constant({ verb: 'erase' as const }) },
  { weight: 1, arbitrary: fc.constant({ verb: 'cancel' as const }) },
  { weight: 1, arbitrary: fc.record({ verb: fc.constant('edge' as const), dx: step, dy: step }) },
  { weight: 1, arbitrary: fc.record({ verb: fc.constant('turn' as const), by: fc.constantFrom(1 as const, 3 as const) }) },
  { weight: 1, arbitrary: fc.record({ verb: fc.constant('symmetry' as const), by: fc.constantFrom(1 as const, -1 as const) }) },
  { weight: 1, arbitrary: fc.record({ verb: fc.constant('fabric' as const), index: fc.nat(4) }) },
);
const act: fc.Arbitrary<Act> = fc.oneof(
  { weight: 4, arbitrary: fc.record({ act: fc.constant('tool' as const), tool: fc.constantFrom(...TOOLS.map(({ tool }) => tool)) }) },
  { weight: 1, arbitrary: fc.record({ act: fc.constant('symmetry' as const), symmetry: fc.constantFrom(...SYMMETRIES) }) },
  { weight: 2, arbitrary: fc.record({ act: fc.constant('fabric' as const), fabric }) },
  {
    weight: 10,
    arbitrary: fc.record({
      act: fc.constant('stroke' as const),
      places: fc.array(place, { minLength: 1, maxLength: 4 }),
      picking: fc.nat(19).map((n) => n === 0),
      shift: fc.nat(4).map((n) => n === 0),
      dropped: fc.nat(19).map((n) => n === 0),
    }),
  },
  { weight: 4, arbitrary: fc.record({ act: fc.constant('keys' as const), verbs: fc.array(verb, { minLength: 1, maxLength: 6 }) }) },
  { weight: 1, arbitrary: fc.record({ act: fc.constant('swap' as const), pair: fc.tuple(fabric, fabric), both: fc.boolean() }) },
  {
    weight: 2,
    arbitrary: fc.record({
      act: fc.constant('chosen' as const),
      handling: fc.constantFrom(
        { do: 'turn', way: 'right' } as const, { do: 'mirror', exchange: 'left and right' } as const,
        { do: 'twin' } as const, { do: 'copy' } as const, { do: 'paste' } as const, { do: 'delete' } as const,
      ),
    }),
  },
  { weight: 2, arbitrary: fc.constant({ act: 'undo' as const }) },
  { weight: 1, arbitrary: fc.constant({ act: 'redo' as const }) },
);

/** @returns how much of the block each fabric covers as it is seen, in square steps, by the outlines of the patchwork alone */
function areas(block: Block): { readonly each: ReadonlyMap<string, Q>; readonly block: Q } {
  const { drawing } = must(toDrawing(block));
  const found = new Map<string, Q>();
  for (const { shape, label } of patchworkOf(drawing).panes.flat()) {
    const corners = shape.points.map(exactly);
    const twice = total(
      corners.map((p, i) => {
        const r = corners[(i + 1) % corners.length]!;
        return minus(times(xOf(p), yOf(r)), times(xOf(r), yOf(p)));
      }),
    );
    expect(twice.n > 0n, 'an atom with its outline the wrong way round').toBe(true);
    found.set(label.fabric, add(found.get(label.fabric) ?? q(0), times(twice, q(1, 2))));
  }
  return { each: found, block: q(drawing.width * drawing.height) };
}

const GRIDS = {
  'an even grid': { columns: 6, rows: 6 },
  'uneven rows and columns': { columns: 6, rows: 6, across: [{ n: 1, d: 2 }, { n: 2, d: 1 }, { n: 9, d: 2 }], down: [{ n: 1, d: 2 }, { n: 3, d: 1 }, { n: 11, d: 2 }] },
} as const;

describe.each(Object.entries(GRIDS))('a thousand random acts on %s', (_, grid) => {
  test('leave no gap and no overlap, never throw, show what was laid, and can all be undone and done again', { timeout: 600_000 }, () => {
    const start = unpainted(6, 6, { grid });
    const { table, acts, hand, handle, heard, view, block } = atTheTable(start);
    const points = samplePoints(start);
    const picture = (): readonly string[] => points.map(([x, y]) => seen(block(), x, y));
    let shown = picture();
    let changes = 0;
    let most = 0;

    const carryOut = (next: Act): void => {
      switch (next.act) {
        case 'tool':
          hand.drop();
          return acts.takeUpTool(next.tool);
        case 'symmetry':
          return acts.takeUpSymmetry(next.symmetry);
        case 'fabric':
          return acts.takeUpFabric(next.fabric);
        case 'chosen':
          return table.get().tool === 'choose' ? handle(next.handling) : undefined;
        case 'undo':
          return acts.undo();
        case 'redo':
          return acts.redo();
        case 'swap':
          return acts.change('swap', (now) => (next.both ? exchangeFabrics : replaceFabric)(now, ...next.pair));
        case 'keys':
          for (const asked of next.verbs) hand.key(asked);
          return hand.blur();
        case 'stroke': {
          const [first, ...others] = next.places.map(([x, y]) => pixelOf(view(), x, y));
          hand.pointerMove(...first!);
          hand.pointerDown(...first!, next.picking, next.shift);
          for (const pixel of others) hand.pointerMove(...pixel);
          return next.dropped ? hand.drop() : hand.pointerUp();
        }
      }
    };

    const all = fc.sample(act, { seed: 20261125, numRuns: 1000 });
    for (const [i, next] of all.entries()) {
      const before = block();
      Object.assign(heard, { laid: null, filled: null, sewn: false });
      carryOut(next);
      const words = `act ${i + 1}: ${JSON.stringify(next)}`;
      if (block() === before) {
        expect(picture(), words).toEqual(shown);
        continue;
      }
      changes++;
      most = Math.max(most, block().patches.length);
      expect(checkBlock(block()), words).toBeNull();

      const covered = areas(block());
      expect(printed(total([...covered.each.values()])), words).toBe(printed(covered.block));

      const now = picture();
      const { laid, filled } = heard;
      if (next.act === 'stroke' && laid) {
        // What an eye sees that counts crossings: the fabric in each outline laid, and elsewhere what was there.
        const [strokes, id] = laid;
        const expected = points.map(([x, y], at) => (strokes.some((each) => covers(each.points, each.denominator, x, y)) ? id : shown[at]));
        expect(now, words).toEqual(expected);
      } else if (next.act === 'stroke' && filled) {
        now.forEach((here, at) => expect([shown[at], filled[2]], words).toContain(here));
        expect(now.join() !== shown.join() || before.patches !== block().patches, words).toBe(true);
      } else if (next.act === 'stroke' && table.get().tool !== 'choose') {
        expect(now, words).toEqual(shown);
      }
      shown = now;
    }
    expect(changes).toBeGreaterThan(250);
    expect(most).toBeGreaterThan(30);

    const full = formatBlock(block());
    expect(formatBlock(must(parseBlock(full)))).toBe(full);
    const gestures = table.get().work.history.done.length;
    for (let i = 0; i < gestures; i++) acts.undo();
    expect(table.get().work.history.done).toEqual([]);
    expect(formatBlock(block())).toBe(formatBlock(start));
    for (let i = 0; i < gestures; i++) acts.redo();
    expect(formatBlock(block())).toBe(full);
  });
});

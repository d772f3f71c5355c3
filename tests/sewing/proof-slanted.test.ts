import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { templateBox } from '../../src/cutting/template.ts';
import type { Lattice } from '../../src/geometry/patchwork/drawing.ts';
import type { Point } from '../../src/geometry/point.ts';
import { rational } from '../../src/measure/rational.ts';
import { prove } from '../../src/sewing/proof.ts';
import { shownIn, drawnPatches } from '../../src/sewing/proof-drawing.ts';
import { corners, same, side, split, spot } from '../../src/sewing/proof-outline.ts';
import type { Outline, Spot } from '../../src/sewing/proof-outline.ts';
import type { Plan } from '../../src/sewing/proof-table.ts';
import type { Join, StepPart } from '../../src/sewing/step.ts';
import { mutants } from './proof-mutants.ts';
import { COMMON, drawing, steps } from './proof-writing.ts';

/**
 * Blocks of 8 in. crossed by slanted lines, each painted over the ones before: the last patch is one piece, the one before it what
 * is left of it, and so on to the ground. Their corners lie anywhere, not on the lattice. Sewn in the order they were painted.
 */
const SIZE = 8;
const border = fc
  .tuple(fc.integer({ min: 0, max: 3 }), fc.integer({ min: 1, max: SIZE - 1 }))
  .map(([edge, t]): { edge: number; at: Lattice } => ({
    edge,
    at: (
      [
        [t, 0],
        [SIZE, t],
        [SIZE - t, SIZE],
        [0, SIZE - t],
      ] as const
    )[edge],
  }));
/** What lies to the right of a line from border to border: an outline of lattice points. */
function halfBlock(from: { edge: number; at: Lattice }, to: { edge: number; at: Lattice }): Lattice[] {
  const corner: Lattice[] = [
    [SIZE, 0],
    [SIZE, SIZE],
    [0, SIZE],
    [0, 0],
  ];
  const around: Lattice[] = [from.at, to.at];
  for (let edge = to.edge; edge !== from.edge; edge = (edge + 1) % 4) around.push(corner[edge]);
  return around;
}
const lines = fc.array(
  fc.tuple(border, border).filter(([p, q]) => p.edge !== q.edge),
  { minLength: 1, maxLength: 5 },
);

const point = (p: Spot): Point => ({ x: Number(p.x), y: Number(p.y), w: Number(p.w) });
const spotAt = ([x, y]: Lattice): Spot => spot(BigInt(x), BigInt(y));

function crossed(all: readonly (readonly [{ edge: number; at: Lattice }, { edge: number; at: Lattice }])[]): Plan {
  const cells: Outline[] = [];
  const ends: [Spot, Spot][] = [];
  let rest: Outline = [
    [0, 0],
    [SIZE, 0],
    [SIZE, SIZE],
    [0, SIZE],
  ].map(([x, y]) => spotAt([x, y]));
  for (const [from, to] of all.toReversed()) {
    const [p, q] = [spotAt(from.at), spotAt(to.at)];
    const { right, left } = split(rest, p, q);
    if (!right || !left) continue;
    cells.unshift(right);
    const [a, b] = left.filter((r) => side(p, q, r) === 0);
    ends.unshift([a, b]);
    rest = left;
  }
  const outlines = [rest, ...cells];
  const patches = all.map(([from, to], i) => [`f${i}`, halfBlock(from, to)] as const);
  const drawn = drawing(SIZE, SIZE, 'ground', ...patches);
  const fabricOf = (outline: Outline): string => {
    const [{ patch }] = shownIn(outline, drawnPatches(drawn));
    return patch < 0 ? 'ground' : `f${patch}`;
  };
  const parts = outlines.map((outline, i): StepPart => ({
    from: { cut: `${i}`, role: 'template', fabric: fabricOf(outline) },
    turn: 0,
    outline: outline.map(point),
  }));
  const joins = ends.map(([a, b], i): Join => ({
    sew: 'through',
    first: i === 0 ? 0 : parts.length + i - 1,
    second: i + 1,
    from: point(a),
    to: point(b),
  }));
  return {
    ...COMMON,
    step: rational(1),
    drawing: drawn,
    cuts: parts.map((part, i) => ({
      id: `${i}`,
      fabric: 'fabric' in part.from ? part.from.fabric : '',
      quantity: 1,
      shape: 'template',
      ...templateBox(part.outline, rational(1), COMMON.seam, COMMON.ruler),
      exact: null,
      subcut: 'none',
      uses: [{ unit: 'block', role: 'template', quantity: 1 }],
      spare: 0,
      template: part.outline,
      pieces: [],
    })),
    steps: steps({
      makes: 'block',
      kind: 'free unit',
      count: 1,
      method: 'template',
      finished: ['8', '8'],
      unfinished: ['8 1/2', '8 1/2'],
      parts,
      joins,
    }),
  };
}

describe('slanted work whose corners lie between lattice points', () => {
  test('holds when it is sewn as it was divided', () => {
    fc.assert(
      fc.property(lines, (all) => {
        expect(prove(crossed(all)).faults).toEqual([]);
      }),
      { seed: 20265, numRuns: 400 },
    );
  });

  test('has as many seams as pieces less one', () => {
    fc.assert(
      fc.property(lines, (all) => {
        const plan = crossed(all);
        expect(prove(plan).seams).toBe(plan.steps[0].parts.length - 1);
      }),
      { seed: 20266, numRuns: 50 },
    );
  });

  test('a change is found', () => {
    // A line cut round a template may lie otherwise on its cloth, and a patch may lie wholly under others: such changes change nothing.
    const harmless = /too (narrow|small)|^patch|ground on top/;
    fc.assert(
      fc.property(lines, fc.nat(), (all, n) => {
        const changed = mutants(crossed(all)).filter(({ what }) => !harmless.test(what));
        const { what, plan } = changed[n % changed.length];
        if (prove(plan).holds) throw new Error(what);
      }),
      { seed: 20267, numRuns: 1500 },
    );
  });

  test('seams that end at the wrong place along the right line are found', () => {
    fc.assert(
      fc.property(lines, (all) => {
        const plan = crossed(all);
        fc.pre(plan.steps[0].joins.length > 0);
        const [join] = plan.steps[0].joins;
        const half: Point = {
          x: join.from.x * join.to.w + join.to.x * join.from.w,
          y: join.from.y * join.to.w + join.to.y * join.from.w,
          w: 2 * join.from.w * join.to.w,
        };
        const shorter = { ...plan, steps: [{ ...plan.steps[0], joins: [{ ...join, to: half }, ...plan.steps[0].joins.slice(1)] }] };
        expect(prove(shorter).faults.join()).toContain('seam 1 is not the whole of the edge it is sewn along');
      }),
      { seed: 20268, numRuns: 100 },
    );
  });
});

test('an outline keeps its corners, whatever points lie on its edges', () => {
  const square = [
    [0, 0],
    [4, 0],
    [4, 4],
    [0, 4],
  ].map(([x, y]) => spotAt([x, y]));
  const more = [
    [0, 0],
    [2, 0],
    [4, 0],
    [4, 0],
    [4, 3],
    [4, 4],
    [0, 4],
    [0, 1],
  ].map(([x, y]) => spotAt([x, y]));
  expect(corners(more).every((p, i) => same(p, square[i]))).toBe(true);
  expect(corners(more)).toHaveLength(4);
});

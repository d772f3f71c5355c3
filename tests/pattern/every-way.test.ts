import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { plainTelling } from '../../src/block/plain-telling.ts';
import { cutList } from '../../src/cutting/cutting.ts';
import type { Drawing } from '../../src/geometry/patchwork/drawing.ts';
import type { Piecing } from '../../src/geometry/piecing/assembly.ts';
import { sewing, waysToSew } from '../../src/geometry/piecing/ways.ts';
import { rational, ZERO } from '../../src/measure/rational.ts';
import { SEWING_IN_ENGLISH } from '../../src/sewing/phrases/english.ts';
import { prove } from '../../src/sewing/proof.ts';
import { stepsOf } from '../../src/sewing/steps.ts';
import { drawings, SEED, tiled } from '../geometry/drawings.ts';
import { counts, seenIn, VIEWS } from '../geometry/same-picture.ts';

/*
 * `DRAWINGS=10000 FIRST=1 npx vitest run --project engine tests/pattern/every-way.test.ts` tries that many, from that seed on;
 * a usual run tries a few.
 */
const MANY = Number(process.env['DRAWINGS'] ?? 30);
const FIRST = Number(process.env['FIRST'] ?? SEED);

/** A quarter of an inch to a lattice step; seams and ruler as usual. */
const [step, seam, ruler] = [rational(1, 4), rational(1, 4), rational(1, 8)];

/** @returns what is wrong with a way to sew a drawing, once it is cut and sewn again; nothing where it is right */
function faultsOf(drawing: Drawing, piecing: Piecing): readonly string[] {
  const fabrics = [...new Set([drawing.ground, ...drawing.patches.map(({ fabric }) => fabric)])];
  const list = cutList(piecing, { step, seam, ruler, trim: ZERO, blocks: 1, methods: {}, fabrics });
  const words = { telling: plainTelling((id) => id), phrases: SEWING_IN_ENGLISH, unit: 'in', seam } as const;
  const steps = stepsOf(piecing, list, { step, seam, trim: ZERO, blocks: 1, words, darkness: (id) => id.length });
  const proof = prove({ drawing, step, seam, ruler, trim: ZERO, blocks: 1, cuts: list.cuts, steps });
  return proof.holds ? [] : proof.faults;
}

/** Grids to 12 by 12 cells, two to five fabrics: cells, halves, quarters, wedges and rectangles, free slopes, seams asked for; and tiles. */
const drawn: fc.Arbitrary<Drawing> = fc.oneof(
  { weight: 3, arbitrary: drawings({ cells: 12, strokes: 30, free: 0, seams: 1, whole: false }) },
  { weight: 3, arbitrary: drawings({ cells: 8, strokes: 16, free: 2, seams: 1, whole: false }) },
  { weight: 1, arbitrary: drawings({ cells: 4, strokes: 3, free: 4, seams: 1, whole: false }) },
  { weight: 2, arbitrary: tiled },
);

describe('a random drawing', () => {
  test(
    `has a proof for every way to sew it, none of them with a set-in seam, and the same ways turned or mirrored (${MANY} drawings)`,
    () => {
      fc.assert(
        fc.property(drawn, fc.integer({ min: 1, max: 7 }), (drawing, view) => {
          const ways = waysToSew(drawing);
          expect(ways.length).toBeGreaterThanOrEqual(1);
          for (const piecing of ways) {
            expect(faultsOf(drawing, piecing), piecing.way).toEqual([]);
            expect(piecing.figures.setInSeams).toBe(0);
          }
          const turned = sewing(seenIn(VIEWS[view]!, drawing)).way('standard units');
          expect(turned && counts(turned), VIEWS[view]!.name).toEqual(counts(ways[0]!));
        }),
        { seed: FIRST, numRuns: MANY, endOnFailure: true },
      );
    },
    Math.max(120_000, MANY * 10_000),
  );
});

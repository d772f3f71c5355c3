import fc from 'fast-check';
import type { Choices, Method } from '../../src/block/choices.ts';
import { toDrawing } from '../../src/block/drawing.ts';
import { plainTelling } from '../../src/block/plain-telling.ts';
import { cutList } from '../../src/cutting/cutting.ts';
import type { Drawing } from '../../src/geometry/patchwork/drawing.ts';
import { sewnInRows } from '../../src/geometry/piecing/strip-rows.ts';
import { WAYS } from '../../src/geometry/piecing/way.ts';
import { sewing } from '../../src/geometry/piecing/ways.ts';
import { rational, ZERO, type Rational } from '../../src/measure/rational.ts';
import { contradictsItself } from '../../src/pattern/contradiction.ts';
import { SEWING_IN_ENGLISH } from '../../src/sewing/phrases/english.ts';
import type { Plan } from '../../src/sewing/proof-table.ts';
import { stepsOf } from '../../src/sewing/steps.ts';
import { must } from '../block/drawn.ts';
import { apart, drawings, tiled, whirls } from '../geometry/drawings.ts';
import { blockOf, darkness, FILES } from './told.ts';

/** A plan to spoil, and what it is a plan of. */
export interface Sound {
  readonly name: string;
  readonly plan: Plan;
}

/** Every method as the whole pattern's own, and the usual ones three times. */
const METHODS: readonly (Method | 'usual')[] = [
  'usual',
  'usual',
  'usual',
  'one-at-a-time',
  'two-at-a-time',
  'four-at-a-time',
  'eight-at-a-time',
  'stitch-and-flip',
  'triangles',
  'triangles-from-strips',
  'triangles-from-strips',
  'template',
  'strip-sets',
  'strip-sets',
];

/** Where a plan comes from: drawn at random, or from a file of the gallery, the published cases and the sampler. */
const drawn: fc.Arbitrary<{ readonly file: string } | { readonly drawing: Drawing; readonly step: Rational }> = fc.oneof(
  { weight: 3, arbitrary: fc.constantFrom(...FILES).map((file) => ({ file })) },
  {
    weight: 7,
    arbitrary: fc.record({
      drawing: fc.oneof(
        { weight: 3, arbitrary: drawings({ cells: 6, strokes: 14, free: 0, seams: 1, whole: false }) },
        { weight: 2, arbitrary: drawings({ cells: 4, strokes: 5, free: 2, seams: 1, whole: true }) },
        { weight: 2, arbitrary: tiled },
        { weight: 1, arbitrary: apart(5) },
        { weight: 2, arbitrary: whirls },
      ),
      // The last is on no ruler.
      step: fc.constantFrom(rational(1, 4), rational(1, 2), rational(1, 3)),
    }),
  },
);

const ordered = fc.record({
  what: drawn,
  way: fc.constantFrom('standard units' as const, ...WAYS),
  method: fc.constantFrom(...METHODS),
  trim: fc.constantFrom(ZERO, ZERO, rational(1, 8), rational(1, 4)),
  blocks: fc.integer({ min: 1, max: 4 }),
});

/** @returns this many plans, the same for the same seed; every way, method and trim, one block or several */
export function plansToSpoil(seed: number, many: number): readonly Sound[] {
  const plans: Sound[] = [];
  // Whole patches may lock one another, or be none: of such a drawing there is no plan, and the next one is taken.
  for (const { what, ...choices } of fc.sample(ordered, { seed, numRuns: 2 * many })) {
    if (plans.length === many) break;
    const from = 'file' in what ? { name: what.file, ...must(toDrawing(blockOf(what.file))) } : { name: 'drawn at random', ...what };
    const plan = planOf(from.drawing, from.step, choices);
    if (plan) plans.push({ name: `${plans.length}: ${from.name}, ${plan.says}`, plan: plan.plan });
  }
  return plans;
}

type Ordered = Required<Pick<Choices, 'way' | 'method' | 'trim' | 'blocks'>>;

function planOf(drawing: Drawing, step: Rational, ordered: Ordered): { readonly says: string; readonly plan: Plan } | null {
  if (contradictsItself(drawing)) return null;
  const { way, method, trim, blocks } = ordered;
  const all = sewing(drawing);
  const piecing = all.way(way) ?? all.way('standard units');
  if (!piecing) return null;
  const rules = { step, seam: rational(1, 4), ruler: rational(1, 8), trim, straighten: rational(1), blocks };
  const fabrics = [...new Set([drawing.ground, ...drawing.patches.map(({ fabric }) => fabric)])];
  const list = cutList(piecing, { ...rules, method, methods: {}, fabrics });
  const sets = new Set(Object.keys(list.methods).filter((id) => list.methods[id] === 'strip-sets'));
  const steps = stepsOf(sewnInRows(piecing, sets), list, { ...rules, words: { telling: plainTelling((id) => id), phrases: SEWING_IN_ENGLISH, unit: 'in', seam: rules.seam }, darkness });
  return {
    says: `${piecing.way}, ${method}, trim ${trim.n}/${trim.d}, for ${blocks}`,
    plan: { drawing, ...rules, cuts: list.cuts, steps },
  };
}

import type { Cut } from '../../src/cutting/cut.ts';
import type { Drawing } from '../../src/geometry/patchwork/drawing.ts';
import { add, rational } from '../../src/measure/rational.ts';
import type { Rational } from '../../src/measure/rational.ts';
import type { Plan } from '../../src/sewing/proof-table.ts';
import type { Join, Step, StepPart } from '../../src/sewing/step.ts';

/** Small changes of a plan, each of which leaves everything else as it was. */

const replaced = <T>(all: readonly T[], i: number, change: (one: T) => T): T[] => all.map((one, j) => (i === j ? change(one) : one));
export const without = <T>(all: readonly T[], i: number): T[] => all.filter((_, j) => j !== i);

export const cutOf = (plan: Plan, i: number, change: (cut: Cut) => Partial<Cut>): Plan => ({
  ...plan,
  cuts: replaced(plan.cuts, i, (cut) => ({ ...cut, ...change(cut) })),
});
export const stepOf = (plan: Plan, i: number, change: (step: Step) => Partial<Step>): Plan => ({
  ...plan,
  steps: replaced(plan.steps, i, (step) => ({ ...step, ...change(step) })),
});
export const partOf = (plan: Plan, i: number, k: number, change: (part: StepPart) => Partial<StepPart>): Plan =>
  stepOf(plan, i, (step) => ({ parts: replaced(step.parts, k, (part) => ({ ...part, ...change(part) })) }));
export const joinOf = (plan: Plan, i: number, k: number, change: (join: Join) => Partial<Join>): Plan =>
  stepOf(plan, i, (step) => ({ joins: replaced(step.joins, k, (join) => ({ ...join, ...change(join) })) }));
export const patchOf = (
  plan: Plan,
  i: number,
  change: (patch: Drawing['patches'][number]) => Partial<Drawing['patches'][number]>,
): Plan => ({
  ...plan,
  drawing: { ...plan.drawing, patches: replaced(plan.drawing.patches, i, (patch) => ({ ...patch, ...change(patch) })) },
});

export const EIGHTH = rational(1, 8);
export const larger = (a: Rational, by = EIGHTH): Rational => add(a, by);
export const smaller = (a: Rational): Rational => add(a, rational(-1, 8));

export interface Mutant {
  readonly what: string;
  readonly plan: Plan;
}

/** Fabrics get a name that is nowhere else, so that no change can cancel itself. */
const OTHER = 'ochre';

/** @returns every single change of a count, a size, a shape, a place, a fabric or an order that the plan has room for */
export function mutants(plan: Plan): Mutant[] {
  const all: Mutant[] = [];
  const add = (what: string, changed: Plan): void => void all.push({ what, plan: changed });

  plan.cuts.forEach((cut, i) => {
    for (const by of [-1, 1]) {
      add(
        `line ${i}: ${by} to its quantity`,
        cutOf(plan, i, () => ({ quantity: cut.quantity + by })),
      );
      cut.uses.forEach((use, u) =>
        add(
          `line ${i}: ${by} to use ${u}`,
          cutOf(plan, i, () => ({ uses: replaced(cut.uses, u, () => ({ ...use, quantity: use.quantity + by })) })),
        ),
      );
    }
    add(`line ${i} left out`, { ...plan, cuts: without(plan.cuts, i) });
    add(
      `line ${i} of another fabric`,
      cutOf(plan, i, () => ({ fabric: OTHER })),
    );
    add(
      `line ${i} cut 1/8 too narrow`,
      cutOf(plan, i, () => ({ shape: cut.shape === 'template' ? 'template' : 'rectangle', width: smaller(cut.width) })),
    );
    add(
      `line ${i} cut 1/8 too small`,
      cutOf(plan, i, () => ({ width: smaller(cut.width), height: smaller(cut.height) })),
    );
    add(
      `line ${i} cut with another diagonal`,
      cutOf(plan, i, () => ({ subcut: cut.subcut === 'once' ? 'twice' : 'once' })),
    );
    const { nested } = cut;
    if (nested) {
      const strips: readonly Partial<typeof nested>[] = [
        { triangles: nested.triangles + 1 },
        { triangles: nested.triangles - 1 },
        { measure: larger(nested.measure) },
        { measure: smaller(nested.measure) },
        { form: nested.form === 'half' ? 'quarter' : 'half' },
      ];
      for (const change of strips)
        add(
          `line ${i}, its strips with other ${Object.keys(change).join()}`,
          cutOf(plan, i, () => ({ nested: { ...nested, ...change } })),
        );
      add(
        `line ${i}, its strips longer`,
        cutOf(plan, i, () => ({ height: larger(cut.height) })),
      );
      add(
        `line ${i}, its strips higher`,
        cutOf(plan, i, () => ({ width: larger(cut.width) })),
      );
      add(
        `line ${i}, its strips without triangles`,
        cutOf(plan, i, () => ({ nested: undefined })),
      );
    }
    cut.uses.forEach((_, u) =>
      add(
        `line ${i} without use ${u}`,
        cutOf(plan, i, () => ({ uses: without(cut.uses, u) })),
      ),
    );
    if (cut.shape !== 'template')
      add(
        `line ${i} cut 1/8 too large`,
        cutOf(plan, i, () => ({ width: larger(cut.width), height: larger(cut.height) })),
      );
    else
      add(
        `line ${i} with a stretched template`,
        cutOf(plan, i, () => ({ template: cut.template?.map((p) => ({ ...p, x: 2 * p.x })) ?? null })),
      );
  });

  plan.steps.forEach((step, i) => {
    for (const by of [-1, 1])
      add(
        `step ${i}: ${by} to its count`,
        stepOf(plan, i, () => ({ count: step.count + by })),
      );
    add(`step ${i} left out`, { ...plan, steps: without(plan.steps, i).map((s, n) => ({ ...s, number: n + 1 })) });
    add(`step ${i} told twice`, {
      ...plan,
      steps: [...plan.steps.slice(0, i), step, ...plan.steps.slice(i)].map((s, n) => ({ ...s, number: n + 1 })),
    });
    add(
      `step ${i} finished size`,
      stepOf(plan, i, () => ({ finished: { ...step.finished, width: larger(step.finished.width) } })),
    );
    add(
      `step ${i} unfinished size`,
      stepOf(plan, i, () => ({ unfinished: { ...step.unfinished, height: smaller(step.unfinished.height) } })),
    );
    step.parts.forEach((part, k) => {
      add(
        `step ${i} without part ${k}`,
        stepOf(plan, i, () => ({ parts: without(step.parts, k) })),
      );
      add(
        `step ${i} with part ${k} twice`,
        stepOf(plan, i, () => ({ parts: [...step.parts, part] })),
      );
      if ('cut' in part.from) {
        const from = part.from;
        add(
          `step ${i}, part ${k} of another fabric`,
          partOf(plan, i, k, () => ({ from: { ...from, fabric: OTHER } })),
        );
        add(
          `step ${i}, part ${k} from no line`,
          partOf(plan, i, k, () => ({ from: { ...from, cut: 'none' } })),
        );
      } else {
        add(
          `step ${i}, part ${k} turned`,
          partOf(plan, i, k, () => ({ turn: ((part.turn + 1) % 4) as StepPart['turn'] })),
        );
        add(
          `step ${i}, part ${k} from no unit`,
          partOf(plan, i, k, () => ({ from: { unit: 'none' } })),
        );
      }
      part.outline.forEach((p, c) => {
        for (const [dx, dy] of [
          [1, 0],
          [0, -1],
          [-2, 1],
        ]) {
          add(
            `step ${i}, part ${k}, corner ${c} by ${dx}, ${dy}`,
            partOf(plan, i, k, () => ({
              outline: replaced(part.outline, c, () => ({ x: 7 * p.x + dx, y: 7 * p.y + dy, w: 7 })),
            })),
          );
        }
      });
      add(
        `step ${i}, part ${k} shifted`,
        partOf(plan, i, k, () => ({ outline: part.outline.map((p) => ({ ...p, x: p.x + 1 })) })),
      );
      add(
        `step ${i}, part ${k} anticlockwise`,
        partOf(plan, i, k, () => ({ outline: part.outline.toReversed() })),
      );
    });
    step.joins.forEach((join, k) => {
      add(
        `step ${i} without seam ${k}`,
        stepOf(plan, i, () => ({ joins: without(step.joins, k) })),
      );
      // A finish names a seam first, not a thing.
      if (join.sew !== 'finish')
        add(
          `step ${i}, seam ${k} of a thing with itself`,
          joinOf(plan, i, k, () => ({ second: join.first })),
        );
      add(
        `step ${i}, seam ${k} too early`,
        joinOf(plan, i, k, () => ({ second: step.parts.length + k })),
      );
      if (join.sew === 'through') {
        for (const end of ['from', 'to'] as const) {
          add(
            `step ${i}, seam ${k}, ${end} moved`,
            joinOf(plan, i, k, () => ({ [end]: { ...join[end], x: join[end].x + 1 } })),
          );
        }
        add(
          `step ${i}, seam ${k} part of the way`,
          joinOf(plan, i, k, () => ({ sew: 'part-way' })),
        );
      } else {
        add(
          `step ${i}, seam ${k} sewn through`,
          joinOf(plan, i, k, () => ({ sew: 'through' })),
        );
      }
    });
  });

  plan.drawing.patches.forEach((patch, i) => {
    // A patch of the ground's fabric that lies on the ground may be left out of the drawing.
    if (patch.fabric !== plan.drawing.ground)
      add(`patch ${i} not drawn`, { ...plan, drawing: { ...plan.drawing, patches: without(plan.drawing.patches, i) } });
    add(
      `patch ${i} of another fabric`,
      patchOf(plan, i, () => ({ fabric: OTHER })),
    );
  });
  add('a larger drawing', { ...plan, drawing: { ...plan.drawing, width: plan.drawing.width + 1 } });
  add('another ground on top', {
    ...plan,
    drawing: {
      ...plan.drawing,
      patches: [
        ...plan.drawing.patches,
        {
          fabric: OTHER,
          points: [
            [0, 0],
            [1, 0],
            [0, 1],
          ],
        },
      ],
    },
  });
  add('a wider seam allowance', { ...plan, seam: rational(3, 8) });
  add('one more block', { ...plan, blocks: plan.blocks + 1 });
  add('a longer step', { ...plan, step: larger(plan.step) });
  return all;
}

import { compare, equals, subtract } from '../../src/measure/rational.ts';
import type { Cut } from '../../src/cutting/cut.ts';
import type { Plan } from '../../src/sewing/proof-table.ts';
import type { Step, StepPart } from '../../src/sewing/step.ts';
import { without } from './proof-mutants.ts';
import { mirrored } from './sabotage-cloth.ts';
import {
  across, carried, down, extentOf, extentOfStep, heightOf, partsOf, pointAt, renumbered, restated, restepped, samePlace, widthOf, withSteps,
} from './sabotage-steps.ts';
import type { At } from './sabotage-steps.ts';
import type { Sabotage } from './sabotage.ts';

/** What can be wrong with what is laid down, how it lies, how often it is made and in which order. */

const WRONG_CLOTH = /where the drawing shows/;

const isSquare = ({ outline }: StepPart): boolean => equals(widthOf(extentOf(outline)), heightOf(extentOf(outline)));
const isUpright = ({ outline }: StepPart): boolean => {
  const { left, top, right, bottom } = extentOf(outline);
  const corners = [pointAt(left, top), pointAt(right, top), pointAt(right, bottom), pointAt(left, bottom)];
  return outline.length === 4 && corners.every((corner) => outline.some((p) => samePlace(p, corner)));
};
const sameSize = (a: StepPart, b: StepPart): boolean => {
  const [one, other] = [extentOf(a.outline), extentOf(b.outline)];
  return equals(widthOf(one), widthOf(other)) && equals(heightOf(one), heightOf(other));
};
const sameFinished = ({ finished: a }: Step, { finished: b }: Step): boolean => equals(a.width, b.width) && equals(a.height, b.height);
const unitIn = ({ from }: StepPart): string | null => ('unit' in from ? from.unit : null);

/** @returns the plan with other parts in place of some */
const relaid = (plan: Plan, { step }: At, parts: ReadonlyMap<number, Partial<StepPart>>): Plan =>
  restepped(plan, step, { parts: step.parts.map((part, k) => ({ ...part, ...parts.get(k) })) });

/** @returns the line cut for one piece less of a unit, so that its count gives nothing away */
const lessCloth = (plan: Plan, { step, part }: At): readonly Cut[] => {
  const { from } = part;
  if (!('cut' in from) || !['plain', 'template', 'base', 'corner'].includes(from.role)) return plan.cuts;
  return plan.cuts.flatMap((cut): Cut[] => {
    if (cut.id !== from.cut) return [cut];
    const uses = cut.uses
      .map((use) => (use.unit === step.makes && use.role === from.role ? { ...use, quantity: use.quantity - step.count } : use))
      .filter(({ quantity }) => quantity > 0);
    return cut.quantity > step.count ? [{ ...cut, quantity: cut.quantity - step.count, uses }] : [];
  });
};

/** Whatever is cut for this unit alone is cut for its mirror image. */
const mirrorCloth = (cuts: readonly Cut[], unit: string): readonly Cut[] =>
  cuts.map((cut) => {
    if (cut.uses.some((use) => use.unit !== unit)) return cut;
    return {
      ...cut,
      ...(cut.diagonals && { diagonals: { falling: cut.diagonals.rising, rising: cut.diagonals.falling } }),
      ...(cut.template && { template: mirrored(cut.template) }),
    };
  });

export const LAYOUT: readonly Sabotage[] = [
  {
    says: 'a piece is missing, and the step measures what is left',
    found: /its outline there is a different one|does not come out as large as the drawing|do not fill the block/,
    spoil: (plan, choose) => {
      // The piece that is sewn on last, so that the seams before it stay as they are.
      const last = partsOf(plan).filter(({ step, k, part }) => {
        const join = step.joins.at(-1);
        return 'cut' in part.from && step.parts.length > 2 && join?.sew === 'through' && (join.first === k || join.second === k);
      });
      const at = choose(last);
      if (!at) return null;
      const { step, k } = at;
      const joins = renumbered(step.joins.slice(0, -1), (r) => (r > k ? r - 1 : r));
      const left = { ...step, parts: without(step.parts, k), joins };
      return { ...restepped(plan, step, restated(left, plan)), cuts: lessCloth(plan, at) };
    },
  },
  {
    says: 'a piece is sewn on twice',
    found: /lie on the same side of it|does not lie along an edge|do not match in length/,
    spoil: (plan, choose) => {
      const at = choose(partsOf(plan).filter(({ step, k }) => step.joins.some((join) => join.sew === 'through' && join.second === k)));
      if (!at) return null;
      const { step, k, part } = at;
      const parts = [...step.parts, part];
      const joins = renumbered(step.joins, (r) => (r < step.parts.length ? r : r + 1));
      const again = joins.find((join) => join.second === k)!;
      const more = { ...again, first: parts.length + joins.length - 1, second: step.parts.length };
      return restepped(plan, step, { parts, joins: [...joins, more] });
    },
  },
  {
    says: 'a unit is mirrored, and its pieces are cut to fit',
    found: WRONG_CLOTH,
    mayShowTheSame: true,
    spoil: (plan, choose) => {
      const step = choose(plan.steps.filter(({ parts }) => parts.length > 1 && parts.every(({ from }) => 'cut' in from)));
      if (!step) return null;
      const { right } = extentOfStep(step);
      const over = carried(step, (p) => pointAt(subtract(right, across(p)), down(p)));
      const parts = over.parts.map((part) => ({ ...part, outline: [...part.outline].reverse() }));
      return { ...restepped(plan, step, { ...over, parts }), cuts: mirrorCloth(plan.cuts, step.makes) };
    },
  },
  {
    says: 'a unit lies turned in its row',
    found: WRONG_CLOTH,
    mayShowTheSame: true,
    spoil: (plan, choose) => {
      const at = choose(partsOf(plan).filter(({ part }) => unitIn(part) !== null && isUpright(part)));
      const by = at && choose(isSquare(at.part) ? [1, 2, 3] : [2]);
      return at && by ? relaid(plan, at, new Map([[at.k, { turn: ((at.part.turn + by) % 4) as StepPart['turn'] }]])) : null;
    },
  },
  {
    says: 'two units or patches of a row have changed places',
    found: WRONG_CLOTH,
    mayShowTheSame: true,
    spoil: (plan, choose) => {
      const upright = partsOf(plan).filter(({ part }) => isUpright(part));
      const pairs = upright.flatMap((at) =>
        upright
          .filter(({ step, k, part }) => step === at.step && k > at.k && sameSize(at.part, part))
          .map(({ k, part }) => ({ at, l: k, other: part })),
      );
      const pair = choose(pairs);
      if (!pair) return null;
      const { at, l, other } = pair;
      const [there, here] = [other, at.part].map(({ from, turn }) => ({ from, turn }));
      return relaid(plan, at, new Map([[at.k, there!], [l, here!]]));
    },
  },
  {
    says: 'a row is laid from its other end',
    found: WRONG_CLOTH,
    mayShowTheSame: true,
    spoil: (plan, choose) => {
      const step = choose(plan.steps.filter(({ parts }) => parts.length > 1 && parts.every(isUpright)));
      if (!step) return null;
      const { right, bottom } = extentOfStep(step);
      // Turned half way round, and everything in it turned back.
      const turned = carried(step, (p) => pointAt(subtract(right, across(p)), subtract(bottom, down(p))));
      return restepped(plan, step, turned);
    },
  },
  {
    says: 'another unit of the same size is taken, and made as often as that takes',
    found: WRONG_CLOTH,
    mayShowTheSame: true,
    spoil: (plan, choose) => {
      const madeBefore = (step: Step, unit: string): readonly Step[] => {
        const own = plan.steps.find(({ makes }) => makes === unit)!;
        return plan.steps
          .slice(0, plan.steps.indexOf(step))
          .filter((other) => other !== own && sameFinished(other, own));
      };
      const at = choose(partsOf(plan).filter(({ step, part }) => unitIn(part) !== null && madeBefore(step, unitIn(part)!).length > 0));
      const own = at && unitIn(at.part)!;
      const other = at && choose(madeBefore(at.step, own!))?.makes;
      if (!at || other === undefined) return null;
      const spoilt = relaid(plan, at, new Map([[at.k, { from: { unit: other } }]]));
      const counts = new Map([[own!, -at.step.count], [other, at.step.count]]);
      return { ...spoilt, steps: spoilt.steps.map((step) => ({ ...step, count: step.count + (counts.get(step.makes) ?? 0) })) };
    },
  },
  {
    says: 'a step stands before the one that makes its unit',
    found: /which no earlier step makes/,
    spoil: (plan, choose) => {
      const at = choose(partsOf(plan).filter(({ part }) => unitIn(part) !== null));
      if (!at) return null;
      const [i, j] = [plan.steps.findIndex(({ makes }) => makes === unitIn(at.part)), plan.steps.indexOf(at.step)];
      return withSteps(plan, plan.steps.with(i, plan.steps[j]!).with(j, plan.steps[i]!));
    },
  },
  {
    says: 'a step is left out',
    found: /which no earlier step makes|No step sews the block/,
    spoil: (plan, choose) => {
      const step = choose(plan.steps);
      return step ? withSteps(plan, plan.steps.filter((one) => one !== step)) : null;
    },
  },
  {
    says: 'a step is told twice',
    found: /a second time/,
    spoil: (plan, choose) => {
      const step = choose(plan.steps);
      return step ? withSteps(plan, plan.steps.flatMap((one) => (one === step ? [one, one] : [one]))) : null;
    },
  },
  {
    says: "two steps bear each other's numbers",
    found: /of the sewing order/,
    spoil: (plan, choose) => {
      const one = choose(plan.steps);
      const other = choose(plan.steps.filter((step) => step !== one));
      if (!one || !other) return null;
      return restepped(restepped(plan, one, { number: other.number }), other, { number: one.number });
    },
  },
  {
    says: 'a unit is made once too seldom',
    found: /is made \d+ times, but later steps take|blocks? (is|are) wanted/,
    spoil: (plan, choose) => {
      const step = choose(plan.steps);
      return step ? restepped(plan, step, { count: step.count - 1 }) : null;
    },
  },
  {
    says: 'a unit is made once too often',
    found: /is made \d+ times, but later steps take|blocks? (is|are) wanted/,
    spoil: (plan, choose) => {
      const step = choose(plan.steps);
      return step ? restepped(plan, step, { count: step.count + 1 }) : null;
    },
  },
  {
    says: 'a step tells a method for which nothing was cut',
    found: /does not use\./,
    spoil: (plan, choose) => {
      const needsIts = (role: string): boolean => !['plain', 'half', 'quarter', 'template'].includes(role);
      const step = choose(plan.steps.filter(({ parts }) => parts.some(({ from }) => 'cut' in from && needsIts(from.role))));
      return step ? restepped(plan, step, { method: choose(['triangles', 'template'] as const)! }) : null;
    },
  },
  {
    says: 'a unit is cut large and nobody says that it is trimmed',
    found: /to be trimmed, but the step does not say/,
    spoil: (plan, choose) => {
      if (compare(plan.trim, plan.ruler) < 0) return null;
      const trimmedRoles = ['pair', 'eight', 'half', 'quarter', 'large', 'small'];
      const isTrimmed = ({ from }: StepPart): boolean => 'cut' in from && trimmedRoles.includes(from.role);
      const step = choose(plan.steps.filter(({ trimmed, parts }) => trimmed && parts.some(isTrimmed)));
      return step ? restepped(plan, step, { trimmed: false }) : null;
    },
  },
];

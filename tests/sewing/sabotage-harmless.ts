import { subtract } from '../../src/measure/rational.ts';
import type { Plan } from '../../src/sewing/proof-table.ts';
import type { Join, StepPart } from '../../src/sewing/step.ts';
import { withUnitsWithin } from './sabotage-seams.ts';
import { across, carried, down, extentOfStep, pointAt, quarterTurns, restated, restepped, withSteps } from './sabotage-steps.ts';
import type { Choose } from './sabotage.ts';

/** A change after which a plan is another one, and as good: whoever raises an alarm then is no judge of the others. */
interface Harmless {
  readonly says: string;
  readonly change: (plan: Plan, choose: Choose) => Plan | null;
}

const turnedRound = ({ sew, first, second, from, to }: Join): Join => ({ sew, first: second, second: first, from: to, to: from });
const units = ({ parts }: Plan['steps'][number]): readonly string[] => parts.flatMap(({ from }) => ('unit' in from ? [from.unit] : []));

export const HARMLESS: readonly Harmless[] = [
  {
    says: 'two steps that do not need each other are told the other way round',
    change: (plan, choose) => {
      const { steps } = plan;
      const i = choose([...steps.keys()].filter((at) => at > 0 && !units(steps[at]!).includes(steps[at - 1]!.makes)));
      return i === undefined ? null : withSteps(plan, steps.with(i, steps[i - 1]!).with(i - 1, steps[i]!));
    },
  },
  {
    says: 'a unit is sewn in the step that takes it',
    change: (plan, choose) => {
      // Triangles of one square are counted unit by unit, so what two units leave over would come together.
      const isCounted = ({ from }: StepPart): boolean => 'cut' in from && from.role !== 'plain';
      return choose(withUnitsWithin(plan).filter(({ step }) => !step.parts.some(isCounted)))?.plan ?? null;
    },
  },
  {
    says: 'a unit is told turned, and turned back where it is taken',
    change: (plan, choose) => {
      const step = choose(plan.steps.filter(({ makes }) => makes !== 'block'));
      const turn = choose([1, 2, 3]);
      if (!step || !turn) return null;
      const by = (part: StepPart, more: number): StepPart['turn'] => ((part.turn + more) % 4) as StepPart['turn'];
      const turned = carried(step, (p) => quarterTurns(p, turn));
      const parts = turned.parts.map((part) => ('unit' in part.from ? { ...part, turn: by(part, turn) } : part));
      const told = restepped(plan, step, restated({ ...turned, parts }, plan));
      const back = (part: StepPart): StepPart =>
        'unit' in part.from && part.from.unit === step.makes ? { ...part, turn: by(part, 4 - turn) } : part;
      return { ...told, steps: told.steps.map((other) => ({ ...other, parts: other.parts.map(back) })) };
    },
  },
  {
    says: 'the block and its drawing are turned half way round',
    change: (plan) => {
      const block = plan.steps.at(-1)!;
      const { right, bottom } = extentOfStep(block);
      const turned = carried(block, (p) => pointAt(subtract(right, across(p)), subtract(bottom, down(p))));
      const parts = turned.parts.map((part) => ('unit' in part.from ? { ...part, turn: ((part.turn + 2) % 4) as StepPart['turn'] } : part));
      const { width, height } = plan.drawing;
      const around = ([x, y]: readonly [number, number]): readonly [number, number] => [width - x, height - y];
      return {
        ...restepped(plan, block, { ...turned, parts }),
        drawing: {
          ...plan.drawing,
          patches: plan.drawing.patches.map((patch) => ({ ...patch, points: patch.points.map(around) })),
          seams: plan.drawing.seams.map(([from, to]) => [around(from), around(to)] as const),
        },
      };
    },
  },
  {
    says: 'outlines begin with another corner, and seams are sewn from their other end',
    change: (plan) => ({
      ...plan,
      steps: plan.steps.map((step) => ({
        ...step,
        parts: step.parts.map((part) => ({ ...part, outline: [...part.outline.slice(1), part.outline[0]!] })),
        joins: step.joins.map((join) => (join.sew === 'through' ? turnedRound(join) : join)),
      })),
    }),
  },
  {
    says: 'lines are called by other numbers and stand in another order',
    change: (plan) => ({
      ...plan,
      cuts: plan.cuts.map((cut) => ({ ...cut, id: `${cut.id}a` })).reverse(),
      steps: plan.steps.map((step) => ({
        ...step,
        parts: step.parts.map((part) => ('cut' in part.from ? { ...part, from: { ...part.from, cut: `${part.from.cut}a` } } : part)),
      })),
    }),
  },
];

import type { Cut, StripSet } from '../../src/cutting/cut.ts';
import { add, compare, multiply, rational, subtract, ZERO, type Rational } from '../../src/measure/rational.ts';
import type { Plan } from '../../src/sewing/proof-table.ts';
import type { Choose, Sabotage } from './sabotage.ts';

/** What can be wrong with strip sets. */

const inSets = ({ cuts }: Plan): readonly Cut[] => cuts.filter(({ set }) => set !== undefined);

/** @returns a line whose strips are cut otherwise; what the list prints is changed with them */
function recut(cut: Cut, change: (set: StripSet) => Partial<StripSet>): Cut {
  const set = { ...cut.set!, ...change(cut.set!) };
  const [width, height] = compare(set.across, set.length) <= 0 ? [set.across, set.length] : [set.length, set.across];
  return { ...cut, set, width, height, shape: compare(width, height) === 0 ? 'square' : 'rectangle', exact: null };
}

/** @returns the plan with all strips of one unit cut otherwise */
function allOfUnit(plan: Plan, choose: Choose, change: (set: StripSet) => Partial<StripSet> | null): Plan | null {
  const unit = choose([...new Set(inSets(plan).flatMap(({ uses }) => uses.map((use) => use.unit)))]);
  const own = inSets(plan).filter(({ uses }) => uses.some((use) => use.unit === unit));
  if (unit === undefined || own.some(({ set }) => change(set!) === null)) return null;
  return { ...plan, cuts: plan.cuts.map((cut) => (own.includes(cut) ? recut(cut, (set) => change(set)!) : cut)) };
}

const straighten = ({ straighten: off = ZERO }: Plan): Rational => off;
const lengthOf = (plan: Plan, segment: Rational, segments: number): Rational => add(multiply(segment, rational(segments)), straighten(plan));

export const SETS: readonly Sabotage[] = [
  {
    says: 'a strip set is to give one segment more than it is long enough for',
    found: /long, which give \d+ segments/,
    spoil: (plan, choose) => allOfUnit(plan, choose, ({ segments }) => ({ segments: segments + 1 })),
  },
  {
    says: 'the strips of a set are one mark of the ruler too short',
    found: /long, which give \d+ segments/,
    spoil: (plan, choose) => allOfUnit(plan, choose, ({ length }) => ({ length: subtract(length, plan.ruler) })),
  },
  {
    says: 'the strips of a set leave nothing to straighten their ends',
    found: /long, which give \d+ segments/,
    spoil: (plan, choose) => (straighten(plan).n === 0 ? null : allOfUnit(plan, choose, ({ length }) => ({ length: subtract(length, straighten(plan)) }))),
  },
  {
    says: 'the strips of a set are one mark of the ruler longer than they need be',
    found: /longer than their segments and straightening ask for|long, which give \d+ segments/,
    spoil: (plan, choose) => allOfUnit(plan, choose, ({ length }) => ({ length: add(length, plan.ruler) })),
  },
  {
    says: 'segments are cut to their finished width, the allowances forgotten',
    found: /segments \S+( \S+)? wide, (too narrow|which the ruler does not show)/,
    spoil: (plan, choose) =>
      allOfUnit(plan, choose, ({ segment, segments }) => {
        const bare = subtract(segment, multiply(plan.seam, rational(2)));
        return bare.n > 0 ? { segment: bare, length: lengthOf(plan, bare, segments) } : null;
      }),
  },
  {
    says: 'segments are cut one mark of the ruler too wide, of strips that are long enough for them',
    found: /segments \S+( \S+)? wide, wider than the ruler/,
    spoil: (plan, choose) =>
      allOfUnit(plan, choose, ({ segment, segments }) => {
        const wide = add(segment, plan.ruler);
        return { segment: wide, length: lengthOf(plan, wide, segments) };
      }),
  },
  {
    says: 'a strip of a set is one mark of the ruler too narrow',
    found: /strips \S+( \S+)? wide, too narrow/,
    spoil: (plan, choose) => {
      const cut = choose(inSets(plan));
      return cut ? { ...plan, cuts: plan.cuts.map((line) => (line === cut ? recut(cut, ({ across }) => ({ across: subtract(across, plan.ruler) })) : line)) } : null;
    },
  },
  {
    says: 'one fabric of a set is cut in shorter strips, as many as make up for it',
    found: /cut otherwise than those of line/,
    spoil: (plan, choose) => {
      const servesToo = (cut: Cut): boolean => inSets(plan).some((other) => other !== cut && other.uses[0]!.unit === cut.uses[0]!.unit);
      const cut = choose(inSets(plan).filter((one) => one.set!.segments > 1 && servesToo(one)));
      if (!cut?.set) return null;
      const short = recut(cut, ({ segment, segments }) => ({ segments: segments - 1, length: lengthOf(plan, segment, segments - 1) }));
      return { ...plan, cuts: plan.cuts.map((line) => (line === cut ? { ...short, quantity: cut.quantity + 1 } : line)) };
    },
  },
  {
    says: 'what is cut from strip sets is told as sewn from pieces',
    found: /is cut as "strip", which pieces does not use/,
    spoil: (plan, choose) => {
      const step = choose(plan.steps.filter(({ method }) => method === 'strip-sets'));
      return step ? { ...plan, steps: plan.steps.map((one) => (one === step ? { ...one, method: 'pieces' } : one)) } : null;
    },
  },
  {
    says: 'strips for a set are listed as plain rectangles',
    found: /must tell of strip sets exactly when/,
    spoil: (plan, choose) => {
      const cut = choose(inSets(plan));
      if (!cut) return null;
      const { set: _, ...plain } = cut;
      return { ...plan, cuts: plan.cuts.map((line) => (line === cut ? plain : line)) };
    },
  },
];

import type { Cut, CutUse, NestedTriangles } from '../../src/cutting/cut.ts';
import type { Point } from '../../src/geometry/point.ts';
import { add, compare, divide, multiply, rational, subtract, type Rational } from '../../src/measure/rational.ts';
import type { Plan } from '../../src/sewing/proof-table.ts';
import type { StepPart } from '../../src/sewing/step.ts';
import { without } from './proof-mutants.ts';
import type { Choose, Sabotage } from './sabotage.ts';

/** What can be wrong with a cutting list. */

const TWO = rational(2);

/** @returns the plan with this line cut otherwise */
const recut = (plan: Plan, cut: Cut, change: Partial<Cut>): Plan => ({
  ...plan,
  cuts: plan.cuts.map((line) => (line === cut ? { ...line, ...change } : line)),
});

/** @returns the plan with parts of its steps taken from elsewhere */
const taken = (plan: Plan, change: (from: Extract<StepPart['from'], { cut: string }>, makes: string) => StepPart['from']): Plan => ({
  ...plan,
  steps: plan.steps.map((step) => ({
    ...step,
    parts: step.parts.map((part) => ('cut' in part.from ? { ...part, from: change(part.from, step.makes) } : part)),
  })),
});

/** Squares and rectangles that are cut by the ruler and not in strips of triangles or for strip sets. */
export const ruled = ({ cuts }: Plan): readonly Cut[] => cuts.filter((cut) => cut.shape !== 'template' && cut.nested === undefined && cut.set === undefined);
const templates = ({ cuts }: Plan): readonly Cut[] => cuts.filter((cut) => cut.template !== null);
const strips = ({ cuts }: Plan): readonly Cut[] => cuts.filter((cut) => cut.nested !== undefined);

/** What the ruler and the trim together may add to a side: a square sewn on both diagonals is trimmed twice. */
const generous = ({ ruler, trim }: Plan): Rational => add(ruler, multiply(trim, TWO));

/** @returns a line with other sides, the exact ones left out, since they would tell; null where nothing is left of it */
function sized(plan: Plan, cut: Cut | undefined, by: Rational, both: boolean): Plan | null {
  if (!cut) return null;
  const shorter = both || cut.shape === 'square' || by.n < 0;
  const width = shorter ? add(cut.width, by) : cut.width;
  const height = both || cut.shape === 'square' || by.n > 0 ? add(cut.height, by) : cut.height;
  return width.n <= 0 ? null : recut(plan, cut, { width, height, exact: null });
}

const nested = (plan: Plan, choose: Choose, change: (of: NestedTriangles) => Partial<NestedTriangles>): Plan | null => {
  const cut = choose(strips(plan));
  return cut?.nested ? recut(plan, cut, { nested: { ...cut.nested, ...change(cut.nested) } }) : null;
};

/** How an outline bends as one walks round it: each edge's length with the turn after it. */
const walk = (outline: readonly Point[]): readonly string[] =>
  outline.map((p, i) => {
    const [q, r] = [outline[(i + 1) % outline.length]!, outline[(i + 2) % outline.length]!];
    const [a, b] = [q.x / q.w - p.x / p.w, q.y / q.w - p.y / p.w];
    const [c, d] = [r.x / r.w - q.x / q.w, r.y / r.w - q.y / q.w];
    return `${(a * a + b * b).toFixed(5)} ${(a * c + b * d).toFixed(5)}`;
  });

/** @returns whether a template is the same turned over */
function isItsOwnMirror(outline: readonly Point[]): boolean {
  const [here, there] = [walk(outline), walk(mirrored(outline))];
  return here.some((_, i) => [...here.slice(i), ...here.slice(0, i)].join() === there.join());
}

/** @returns an outline turned over, clockwise again */
export const mirrored = (outline: readonly Point[], x = 0): readonly Point[] => outline.map((p) => ({ ...p, x: x * p.w - p.x })).reverse();

export const CLOTH: readonly Sabotage[] = [
  {
    says: 'a line is cut one mark of the ruler too small',
    found: /too small for what is sewn from it/,
    spoil: (plan, choose) => {
      const { n, d } = generous(plan);
      return sized(plan, choose(ruled(plan)), { n: -n, d }, false);
    },
  },
  {
    says: 'a line is cut one mark of the ruler too large',
    found: /larger than the ruler and the trim ask for/,
    spoil: (plan, choose) => sized(plan, choose(ruled(plan)), generous(plan), false),
  },
  {
    says: 'a line is cut to its finished size, the allowances forgotten',
    found: /too small for what is sewn from it/,
    spoil: (plan, choose) => {
      const both = multiply(plan.seam, TWO);
      return compare(both, generous(plan)) < 0 ? null : sized(plan, choose(ruled(plan)), { n: -both.n, d: both.d }, true);
    },
  },
  {
    says: 'rectangles are cut as squares of their shorter side',
    found: /too small for what is sewn from it/,
    spoil: (plan, choose) => {
      const cut = choose(ruled(plan).filter(({ width, height }) => compare(add(width, generous(plan)), height) <= 0));
      return cut ? recut(plan, cut, { shape: 'square', height: cut.width, exact: null }) : null;
    },
  },
  {
    says: 'a line cuts one too few, and sets one less aside',
    found: /(is|are) used up by the steps|of it take/,
    spoil: (plan, choose) => {
      const cut = choose(plan.cuts);
      const use = cut && choose(cut.uses);
      if (!cut || !use) return null;
      return recut(plan, cut, {
        quantity: cut.quantity - 1,
        uses: cut.uses.map((one) => (one === use ? { ...one, quantity: one.quantity - 1 } : one)),
      });
    },
  },
  {
    says: 'a line cuts one too many and calls it spare',
    found: /(is|are) used up by the steps/,
    spoil: (plan, choose) => {
      const cut = choose(plan.cuts);
      return cut ? recut(plan, cut, { quantity: cut.quantity + 1, spare: cut.spare + 1 }) : null;
    },
  },
  {
    says: 'a piece for one unit is set aside for another',
    found: /of it take/,
    spoil: (plan, choose) => {
      const cut = choose(plan.cuts.filter(({ uses }) => uses.length > 1));
      const [more, less] = [cut && choose(cut.uses.slice(1)), cut?.uses[0]];
      if (!cut || !more || !less) return null;
      const by = (use: CutUse): number => (use === more ? 1 : use === less ? -1 : 0);
      return recut(plan, cut, { uses: cut.uses.map((use) => ({ ...use, quantity: use.quantity + by(use) })) });
    },
  },
  {
    says: 'more is said to be left over than there is',
    found: /to spare, but/,
    // What is left over of a pair may be counted in triangles too, of which there are twice as many.
    spoil: (plan, choose) => {
      const cut = choose(plan.cuts);
      return cut ? recut(plan, cut, { spare: 2 * cut.spare + 3 }) : null;
    },
  },
  {
    says: 'a line is left out of the list',
    found: /is not in the cutting list/,
    spoil: (plan, choose) => {
      const i = choose([...plan.cuts.keys()]);
      return i === undefined ? null : { ...plan, cuts: without(plan.cuts, i) };
    },
  },
  {
    says: 'a line stands in the list twice',
    found: /has two lines/,
    spoil: (plan, choose) => {
      const cut = choose(plan.cuts);
      return cut ? { ...plan, cuts: [...plan.cuts, cut] } : null;
    },
  },
  {
    says: 'a line is cut from another fabric of the block, and so the steps say',
    found: /where the drawing shows/,
    spoil: (plan, choose) => {
      const cut = choose(plan.cuts);
      const fabric = cut && choose([...new Set(plan.cuts.map((line) => line.fabric))].filter((one) => one !== cut.fabric));
      return cut && fabric !== undefined
        ? taken(recut(plan, cut, { fabric }), (from) => (from.cut === cut.id ? { ...from, fabric } : from))
        : null;
    },
  },
  {
    says: 'two fabrics are taken for one another throughout',
    found: /where the drawing shows/,
    spoil: (plan, choose) => {
      const fabrics = [...new Set(plan.cuts.map((line) => line.fabric))];
      const one = choose(fabrics);
      const other = choose(fabrics.filter((fabric) => fabric !== one));
      if (one === undefined || other === undefined) return null;
      const swapped = (fabric: string): string => (fabric === one ? other : fabric === other ? one : fabric);
      return taken({ ...plan, cuts: plan.cuts.map((cut) => ({ ...cut, fabric: swapped(cut.fabric) })) }, (from) => ({
        ...from,
        fabric: swapped(from.fabric),
      }));
    },
  },
  {
    says: 'a step names another fabric than its line is cut from',
    found: /but line \S+ is cut from/,
    spoil: (plan, choose) => {
      const cut = choose(plan.cuts);
      const fabric = cut && choose([...new Set(plan.cuts.map((line) => line.fabric))].filter((one) => one !== cut.fabric));
      return cut && fabric !== undefined ? taken(plan, (from) => (from.cut === cut.id ? { ...from, fabric } : from)) : null;
    },
  },
  {
    says: 'a piece is taken from a line of another size, which cuts as many more',
    found: /too small for what is sewn|larger than the ruler|must be cut|to be trimmed, but/,
    spoil: (plan, choose) => {
      const cut = choose(ruled(plan));
      // What differs by less may be within the trim.
      const isLess = (a: Rational, b: Rational): boolean => compare(add(a, generous(plan)), b) <= 0;
      const differ = (a: Rational, b: Rational): boolean => isLess(a, b) || isLess(b, a);
      const isOther = (one: Cut): boolean => differ(one.width, cut!.width) || differ(one.height, cut!.height);
      const other = cut && choose(ruled(plan).filter((one) => one.fabric === cut.fabric && isOther(one)));
      const use = cut && choose(cut.uses);
      if (!cut || !other || !use) return null;
      const cuts = plan.cuts.flatMap((line): Cut[] => {
        if (line === other) return [{ ...line, quantity: line.quantity + use.quantity, uses: [...line.uses, use] }];
        if (line !== cut) return [line];
        return cut.uses.length > 1 ? [{ ...cut, quantity: cut.quantity - use.quantity, uses: cut.uses.filter((one) => one !== use) }] : [];
      });
      return taken({ ...plan, cuts }, (from, makes) =>
        from.cut === cut.id && from.role === use.role && makes === use.unit ? { ...from, cut: other.id } : from,
      );
    },
  },
  {
    says: 'squares are cut along other diagonals',
    found: /must be cut/,
    spoil: (plan, choose) => {
      const cut = choose(plan.cuts.filter(({ nested }) => nested === undefined));
      const subcut = cut && choose((['none', 'once', 'twice'] as const).filter((one) => one !== cut.subcut));
      return cut && subcut ? recut(plan, cut, { subcut }) : null;
    },
  },
  {
    says: 'rectangles are cut along the other diagonal',
    found: /along the falling and/,
    spoil: (plan, choose) => {
      const cut = choose(plan.cuts.filter(({ diagonals }) => diagonals && diagonals.falling !== diagonals.rising));
      return cut?.diagonals ? recut(plan, cut, { diagonals: { falling: cut.diagonals.rising, rising: cut.diagonals.falling } }) : null;
    },
  },
  {
    says: 'a template is printed face down',
    found: /does not have the outline of its template/,
    spoil: (plan, choose) => {
      const cut = choose(templates(plan).filter(({ template }) => template && !isItsOwnMirror(template)));
      return cut?.template ? recut(plan, cut, { template: mirrored(cut.template) }) : null;
    },
  },
  {
    says: 'a template is printed an eighth too large',
    found: /does not have the outline of its template/,
    spoil: (plan, choose) => {
      const cut = choose(templates(plan));
      const [nine, eight] = [rational(9), rational(8)];
      const more = (side: Rational): Rational => divide(multiply(side, nine), eight);
      return cut?.template
        ? recut(plan, cut, {
            template: cut.template.map(({ x, y, w }) => ({ x: 9 * x, y: 9 * y, w: 8 * w })),
            width: more(cut.width),
            height: more(cut.height),
          })
        : null;
    },
  },
  {
    says: 'a template is cut from a strip without its allowances',
    found: /too small for the template with its allowance/,
    // No shape at all fits between two allowances that touch.
    spoil: (plan, choose) => {
      const cut = choose(templates(plan));
      return cut ? recut(plan, cut, { width: multiply(plan.seam, TWO) }) : null;
    },
  },
  {
    says: 'the cloth for a template is far too large',
    found: /too large for the ruler and the template with its tips/,
    // However the template is turned, it is no longer than the rectangle that held it is wide and high together.
    spoil: (plan, choose) => {
      const cut = choose(templates(plan));
      const side = cut && add(add(cut.width, cut.height), plan.ruler);
      return cut && side ? recut(plan, cut, { width: side, height: side }) : null;
    },
  },
  {
    says: 'a strip is to give one triangle more than it is long enough for',
    found: /triangles take/,
    spoil: (plan, choose) => nested(plan, choose, ({ triangles }) => ({ triangles: triangles + 1 })),
  },
  {
    says: 'a strip is cut one mark of the ruler too short',
    found: /triangles take/,
    spoil: (plan, choose) => {
      const cut = choose(strips(plan));
      return cut ? recut(plan, cut, { height: subtract(cut.height, plan.ruler), exact: null }) : null;
    },
  },
  {
    says: 'along a strip too little is measured',
    found: /measured along its edges, too small/,
    spoil: (plan, choose) => nested(plan, choose, ({ measure }) => ({ measure: subtract(measure, generous(plan)) })),
  },
];

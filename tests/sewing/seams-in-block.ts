import type { Point } from '../../src/geometry/point.ts';
import type { Pressed, Step, StepPart } from '../../src/sewing/step.ts';

/*
 * Every seam of a block where it lies in the finished block, with the way its allowances are pressed: told from the steps alone by
 * carrying each unit to its place, without the seam-by-seam book-keeping of src/sewing.
 */

/** A coordinate as n/d. */
type Q = readonly [number, number];
const same = ([a, b]: Q, [c, d]: Q): boolean => a * d === c * b;
const before = ([a, b]: Q, [c, d]: Q): boolean => a * d < c * b;

/** A seam along x = at or y = at. */
export interface LaidSeam {
  readonly upright: boolean;
  readonly at: Q;
  readonly from: Q;
  readonly to: Q;
  /** 1: to the right or down; −1: to the left or up; 0: open. */
  readonly lies: -1 | 0 | 1;
  /** Number of the step that sews it, and which of the unit's places. */
  readonly step: number;
  readonly place: string;
}

type Carry = (p: readonly [number, number, number]) => readonly [number, number, number];

/** @returns the level and upright seams of the block */
export function seamsInBlock(steps: readonly Step[]): readonly LaidSeam[] {
  const made = new Map(steps.map((step) => [step.makes, step]));
  const found: LaidSeam[] = [];
  const visit = (step: Step, carry: Carry, place: string): void => {
    step.joins.forEach((join, j) => {
      if (join.sew === 'part-way') return;
      const begun = join.sew === 'finish' ? step.joins[join.first - step.parts.length]! : join;
      const [from, to] = [carried(begun.from, carry), carried(join.to, carry)];
      const toward = step.pressed[j]!;
      const thing = partsOf(step, toward === 'first' ? begun.first : begun.second);
      const into = thing.flatMap(({ outline }) => outline.map((p) => carried(p, carry)));
      const seam = laid(from, to, toward, into);
      if (seam) found.push({ ...seam, step: step.number, place });
    });
    step.parts.forEach((part, i) => {
      if (!('unit' in part.from)) return;
      const unit = made.get(part.from.unit)!;
      visit(unit, (p) => carry(intoPart(p, part, unit)), `${place}/${i}`);
    });
  };
  visit(steps.at(-1)!, (p) => p, '');
  return found;
}

const carried = ({ x, y, w }: Point, carry: Carry): readonly [Q, Q] => {
  const [u, v, d] = carry([x, y, w]);
  return [
    [u, d],
    [v, d],
  ];
};

/** Quarter turns clockwise within the unit's rectangle, then to where the part lies. */
function intoPart(
  [x, y, w]: readonly [number, number, number],
  { turn, outline }: StepPart,
  unit: Step,
): readonly [number, number, number] {
  const all = unit.parts.flatMap((part) => part.outline);
  const [width, height] = [Math.max(...all.map((p) => p.x / p.w)), Math.max(...all.map((p) => p.y / p.w))];
  const [left, top] = [Math.min(...outline.map((p) => p.x / p.w)), Math.min(...outline.map((p) => p.y / p.w))];
  const [u, v] = (
    [
      [x, y],
      [height * w - y, x],
      [width * w - x, height * w - y],
      [y, width * w - x],
    ] as const
  )[turn];
  return [u + left * w, v + top * w, w];
}

/** The parts a thing is made of, but the loose arm of a ring that lies on both sides. */
function partsOf({ parts, joins }: Step, thing: number): readonly StepPart[] {
  if (thing < parts.length) return [parts[thing]!];
  const { first, second } = joins[thing - parts.length]!;
  return [...partsOf({ parts, joins } as Step, first), ...partsOf({ parts, joins } as Step, second)];
}

function laid(
  [x1, y1]: readonly [Q, Q],
  [x2, y2]: readonly [Q, Q],
  toward: Pressed,
  into: readonly (readonly [Q, Q])[],
): Omit<LaidSeam, 'step' | 'place'> | null {
  const upright = same(x1, x2);
  if (!upright && !same(y1, y2)) return null;
  const [at, a, b] = upright ? [x1, y1, y2] : [y1, x1, x2];
  const off = into.map(([x, y]) => (upright ? x : y)).filter((value) => !same(value, at));
  const lies = toward === 'open' ? 0 : off.every((value) => before(at, value)) ? 1 : -1;
  return { upright, at, from: before(a, b) ? a : b, to: before(a, b) ? b : a, lies };
}

export interface Crossing {
  readonly step: number;
  readonly place: string;
  readonly nested: boolean;
}

/** @returns where two seams that end on opposite sides of a third one meet, by the step that sews the third */
export function crossingsIn(seams: readonly LaidSeam[]): readonly Crossing[] {
  const found: Crossing[] = [];
  const key = (upright: boolean, [n, d]: Q, [m, e]: Q): string => {
    const [x, y] = upright ? [n / d, m / e] : [m / e, n / d];
    return `${upright} ${x} ${y}`;
  };
  const ending = new Map<string, LaidSeam[]>();
  const add = (name: string, seam: LaidSeam): void => void ending.set(name, [...(ending.get(name) ?? []), seam]);
  for (const seam of seams) {
    add(`ends ${key(seam.upright, seam.at, seam.to)}`, seam);
    add(`begins ${key(seam.upright, seam.at, seam.from)}`, seam);
  }
  for (const across of seams) {
    for (const [name, ends] of ending) {
      if (!name.startsWith(`ends ${!across.upright} `)) continue;
      const begins = ending.get(name.replace('ends', 'begins')) ?? [];
      for (const one of ends) {
        for (const other of begins) {
          const on = same(one.to, across.at) && before(across.from, one.at) && before(one.at, across.to);
          if (on) found.push({ step: across.step, place: across.place, nested: one.lies * other.lies === -1 });
        }
      }
    }
  }
  return found;
}

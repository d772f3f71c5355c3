import highsLoader, { type Highs } from 'highs';
import type { Pressed, Step, StepPart } from '../../src/sewing/step.ts';
import { crossingsIn, endsAlong, placeName, seamsInBlock, type LaidSeam } from './seams-in-block.ts';

/*
 * The best pressing of a block by itself: from the steps' parts and joins alone, every seam of every copy laid where it lies in the block,
 * all choices tried where they are few, else as an integer programme (HiGHS), first for the points that do not nest, then for the rest.
 */

type Laid = Pick<Step, 'makes' | 'number' | 'kind' | 'parts' | 'joins'>;
type Darkness = (fabric: string) => number;

/** One seam of one step, whose copies are all pressed alike. */
export const nameOf = ({ step, join }: Pick<LaidSeam, 'step' | 'join'>): string => `${step} ${join}`;

interface Term {
  readonly one: string;
  readonly other: string;
  /** Whether it costs something that both lie toward their second (or both toward their first) things, or that they do not. */
  readonly when: 'alike' | 'unlike';
  readonly cost: number;
}

export interface Model {
  /** Seams to choose for, and what is against their first and their second things. */
  readonly free: ReadonlyMap<string, readonly [number, number]>;
  readonly open: ReadonlySet<string>;
  /** Points that do not nest. */
  readonly apart: readonly Term[];
  readonly uneven: readonly Term[];
}

const area = ({ outline }: StepPart): number =>
  Math.abs(
    outline.reduce((sum, p, i) => {
      const q = outline[(i + 1) % outline.length]!;
      return sum + (p.x / p.w) * (q.y / q.w) - (q.x / q.w) * (p.y / p.w);
    }, 0),
  );

const membersOf = (step: Laid, thing: number): readonly number[] => {
  if (thing < step.parts.length) return [thing];
  const { first, second } = step.joins[thing - step.parts.length]!;
  return [...membersOf(step, first), ...membersOf(step, second)];
};

/** How a join runs, to tell whether two are parallel. */
const slope = ({ from, to }: Step['joins'][number]): string => {
  const [dx, dy] = [to.x / to.w - from.x / from.w, to.y / to.w - from.y / from.w];
  return dx === 0 ? 'upright' : `${dy / dx}`;
};

const isRow = (step: Laid): boolean =>
  (step.kind === 'joined unit' || step.kind === 'block') && new Set(step.joins.map(slope)).size === 1;

/** By custom: which of its things a seam is pressed toward. */
function custom(step: Laid, join: number): 'first' | 'second' | null {
  const { parts, joins, kind } = step;
  const { first, second } = joins[join]!;
  const holds = (thing: number, part: number): boolean => membersOf(step, thing).includes(part);
  const awayFrom = (part: number): 'first' | 'second' => (holds(first, part) ? 'second' : 'first');
  // Of corner triangles and what they are sewn to, that is no triangle; of geese and peaks it is the largest triangle.
  const corners = kind === 'corner-triangle unit' || kind === 'square in a square';
  const size = (part: StepPart): number => (corners && part.outline.length === 3 ? 0 : area(part));
  const largest = parts.reduce((best, part, i) => (size(part) > size(parts[best]!) ? i : best), 0);
  if (kind === 'partial-seam ring' || ((kind === 'joined unit' || kind === 'block') && !isRow(step))) return awayFrom(0);
  if (['flying geese', 'corner-triangle unit', 'square in a square', 'peak'].includes(kind)) return awayFrom(largest);
  if (kind === 'split quarter-square triangle' && join === 1) return first < parts.length ? 'first' : 'second';
  if (kind === 'free unit') return second >= parts.length && first < parts.length ? 'first' : 'second';
  return null;
}

/** @param given how the maker wants some seams pressed, by name */
export function modelOf(steps: readonly Laid[], darkness: Darkness, given: ReadonlyMap<string, Pressed> = new Map()): Model {
  const byNumber = new Map(steps.map((step) => [step.number, step]));
  const seams = seamsInBlock(steps.map((step) => ({ ...step, pressed: step.joins.map(() => 'second') })));
  const crossings = crossingsIn(seams);
  const meeting = new Set(crossings.flatMap(({ one, other }) => [nameOf(one), nameOf(other)]));
  const [free, open] = [new Map<string, [number, number]>(), new Set<string>()];
  const isWithin = (seam: LaidSeam, { place, join }: LaidSeam): boolean => {
    const step = byNumber.get(seam.step)!;
    const { first, second } = step.joins[seam.join]!;
    const things = [first, second].flatMap((thing) => below(step, thing));
    if (place === seam.place) return things.includes(step.parts.length + join);
    return place.startsWith(`${seam.place}/`) && things.includes(Number(place.slice(seam.place.length + 1).split('/')[0]));
  };
  for (const [seam, ...sides] of endsAlong(seams, 'with its ends')) {
    const name = nameOf(seam);
    const step = byNumber.get(seam.step)!;
    const ends = sides.map((side) => side.filter((end) => isWithin(seam, end.seam)));
    const points = new Map<string, number>();
    for (const { at } of ends.flat()) points.set(placeName(at), (points.get(placeName(at)) ?? 0) + 1);
    const wish = given.get(name);
    const last = step.kind === 'quarter-square triangle' && seam.join === step.joins.length - 1;
    const crowded = !meeting.has(name) && [...points.values()].some((many) => many >= 6);
    if (wish === 'open' || (!wish && (last || crowded))) {
      open.add(name);
      continue;
    }
    const against = free.get(name) ?? [0, 0];
    free.set(name, against);
    // Pressed toward the second thing, as all are laid here, the allowances lie to the right of from → to or to the left.
    const second = rightOf(seam) ? 1 : 0;
    const [onFirst, onSecond] = [ends[1 - second]!.length, ends[second]!.length];
    const costs = sidesOf(step, seam.join, onFirst, onSecond, darkness);
    against[0] += costs[0];
    against[1] += costs[1];
    if (wish) against[wish === 'first' ? 1 : 0] += 1e6;
  }
  const apart = crossings.flatMap(({ one, other, lie }): Term[] => {
    const [a, b] = [nameOf(one), nameOf(other)];
    return open.has(a) || open.has(b) ? [] : [{ one: a, other: b, when: lie === 'opposite ways' ? 'unlike' : 'alike', cost: 1 }];
  });
  const copies = new Map<string, Set<string>>();
  for (const seam of seams) copies.set(nameOf(seam), (copies.get(nameOf(seam)) ?? new Set()).add(seam.place));
  const uneven = steps.flatMap((step) =>
    step.joins.slice(1).flatMap((_, i): Term[] => {
      const [a, b] = [nameOf({ step: step.number, join: i }), nameOf({ step: step.number, join: i + 1 })];
      if (!free.has(a) || !free.has(b)) return [];
      const many = copies.get(a)!.size;
      if (isRow(step)) return [{ one: a, other: b, when: 'unlike', cost: 2 * many }];
      if (!['flying geese', 'corner-triangle unit', 'square in a square', 'peak'].includes(step.kind)) return [];
      return [{ one: a, other: b, when: custom(step, i) === custom(step, i + 1) ? 'unlike' : 'alike', cost: many }];
    }),
  );
  return { free, open, apart, uneven };
}

/** Everything that went into a thing: parts, and what joins made. */
function below(step: Laid, thing: number): readonly number[] {
  if (thing < step.parts.length) return [thing];
  const { first, second } = step.joins[thing - step.parts.length]!;
  return [thing, ...below(step, first), ...below(step, second)];
}

const rightOf = ({ from, to, toward }: LaidSeam): boolean => {
  const [[x, y, d], [u, v, e], [p, q, f]] = [from, to, toward!];
  return (u * d - x * e) * (q * d - y * f) - (v * d - y * e) * (p * d - x * f) > 0n;
};

/** What is against pressing a seam toward its first and its second thing; the weights of the trade as DEVELOPERS.md tells them. */
function sidesOf(step: Laid, join: number, onFirst: number, onSecond: number, darkness: Darkness): readonly [number, number] {
  const outward = custom(step, join);
  if (outward) return outward === 'first' ? [0, 40] : [40, 0];
  const { first, second } = step.joins[join]!;
  const [a, b] = isRow(step) ? [step.parts[join], step.parts[join + 1]] : [step.parts[first], step.parts[second]];
  const cloth = (part: StepPart | undefined): string | null => (part && 'cut' in part.from ? part.from.fabric : null);
  const [one, other] = [cloth(a), cloth(b)];
  if (one !== null && other !== null) {
    const darker = darkness(one) - darkness(other);
    return darker > 0 ? [0, 3] : darker < 0 ? [3, 0] : [0, 0];
  }
  return [2 * onFirst + (one === null && other !== null ? 4 : 0), 2 * onSecond + (one !== null && other === null ? 4 : 0)];
}

export interface Cost {
  readonly apart: number;
  readonly trouble: number;
}

/** @returns what a pressing costs; every free seam must be pressed to a side, every open one open */
export function costOf({ free, open, apart, uneven }: Model, way: (name: string) => Pressed): Cost {
  for (const name of open) if (way(name) !== 'open') throw new Error(`${name} is not open`);
  const pays = ({ one, other, when, cost }: Term): number => ((way(one) === way(other)) === (when === 'alike') ? cost : 0);
  const sum = (terms: readonly Term[]): number => terms.reduce((total, term) => total + pays(term), 0);
  const single = [...free].reduce((total, [name, against]) => {
    if (way(name) === 'open') throw new Error(`${name} is open`);
    return total + against[way(name) === 'first' ? 0 : 1];
  }, 0);
  return { apart: sum(apart), trouble: sum(uneven) + single };
}

/** Seams that concern each other, directly or by others. */
function parts({ free, apart, uneven }: Model): readonly Model[] {
  const group = new Map([...free.keys()].map((name) => [name, name]));
  const root = (name: string): string => (group.get(name) === name ? name : root(group.get(name)!));
  for (const { one, other } of [...apart, ...uneven]) group.set(root(one), root(other));
  const roots = [...new Set([...free.keys()].map(root))];
  const of = (terms: readonly Term[], at: string): readonly Term[] => terms.filter(({ one }) => root(one) === at);
  return roots.map((at) => ({
    free: new Map([...free].filter(([name]) => root(name) === at)),
    open: new Set(),
    apart: of(apart, at),
    uneven: of(uneven, at),
  }));
}

/** How many seams that concern each other are tried in all ways. */
const FEW = 10;

let solver: Promise<Highs> | undefined;

/** @returns the least that a pressing can cost: as few points as can be do not nest, and then as little is against it as can be */
export async function leastOf(model: Model): Promise<Cost> {
  let [apart, trouble] = [0, 0];
  for (const part of parts(model)) {
    const least = part.free.size <= FEW ? tried(part) : programmed(part, await (solver ??= highsLoader()));
    apart += least.apart;
    trouble += least.trouble;
  }
  return { apart, trouble };
}

const before = (a: Cost, b: Cost): boolean => a.apart < b.apart || (a.apart === b.apart && a.trouble < b.trouble);

function tried(model: Model): Cost {
  const names = [...model.free.keys()];
  let best: Cost = { apart: Infinity, trouble: Infinity };
  for (let bits = 0; bits < 1 << names.length; bits++) {
    const ways = new Map(names.map((name, i): [string, Pressed] => [name, (bits >> i) & 1 ? 'second' : 'first']));
    const cost = costOf(model, (name) => ways.get(name)!);
    if (before(cost, best)) best = cost;
  }
  return best;
}

function programmed({ free, apart, uneven }: Model, highs: Highs): Cost {
  const names = new Map([...free.keys()].map((name, i) => [name, `x${i}`]));
  const rows: string[] = [];
  const pays = (terms: readonly Term[], letter: string): readonly (readonly [number, string])[] =>
    terms.map(({ one, other, when, cost }, i) => {
      const [x, y, z] = [names.get(one)!, names.get(other)!, `${letter}${i}`];
      if (x === y) rows.push(`${z} >= ${when === 'alike' ? 1 : 0}`);
      else if (when === 'unlike') rows.push(`${z} - ${x} + ${y} >= 0`, `${z} + ${x} - ${y} >= 0`);
      else rows.push(`${z} - ${x} - ${y} >= -1`, `${z} + ${x} + ${y} >= 1`);
      return [cost, z];
    });
  const [points, lesser] = [pays(apart, 'p'), pays(uneven, 'u')];
  // Toward the first costs a, toward the second b: a + (b − a)·x.
  const single = [...free].map(([name, [a, b]]): [number, string] => [b - a, names.get(name)!]);
  const constant = [...free.values()].reduce((sum, [a]) => sum + a, 0);
  const sum = (terms: readonly (readonly [number, string])[]): string =>
    terms.map(([cost, name]) => `${cost < 0 ? '-' : '+'} ${Math.abs(cost)} ${name}`).join('\n ') || '0 x0';
  const least = (what: readonly (readonly [number, string])[], more: readonly string[]): number => {
    const rules = [...rows, ...more].map((row, i) => ` r${i}: ${row}`).join('\n');
    const lp = `Minimize\n obj: ${sum(what)}\nSubject To\n${rules || ' r: x0 >= 0'}\nBinary\n ${[...names.values()].join('\n ')}\nEnd`;
    const { Status, ObjectiveValue } = highs.solve(lp, { mip_rel_gap: 0, mip_abs_gap: 0 });
    if (Status !== 'Optimal') throw new Error(Status);
    return Math.round(ObjectiveValue);
  };
  const fewest = least(points, []);
  const kept = points.length > 0 ? [`${sum(points)} <= ${fewest}`] : [];
  return { apart: fewest, trouble: least([...lesser, ...single], kept) + constant };
}

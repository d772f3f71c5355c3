import { fitsIn, liesOf, type Column, type Job, type Lie, type Run } from './job.ts';
import { planOf, type Plan } from './plans.ts';
import { pricerOf } from './pricing.ts';
import { SCALE } from './relaxed.ts';

/*
 * Every strip that a layout of at most so many marks can need. Worths are such that no strip is worth more than its length; what all
 * pieces are worth then bounds the length of a layout, and the strips of a layout T marks long together lack no more of their worth than
 * what T is above that bound. So a strip that lacks more by itself is in none of them. A strip that gives no less than another and is
 * no longer stands for it, so of stacks of pieces only those count to which none can be added.
 */

/** More than this is not looked at: steps of the search, and strips that are found. */
export interface Reach {
  readonly steps: number;
  readonly plans: number;
}

/**
 * @param worths of the kinds, in 1/SCALE of a mark
 * @returns the largest worths in the same proportion with which no strip of bought cloth is worth more than its length
 */
export function fittedWorths(job: Job, worths: readonly number[]): readonly number[] {
  const price = pricerOf(job, job.sheets.at(-1)!);
  const prices = price(worths);
  const rates = prices.steps.map((height) => [prices.worth[height]!, height] as const);
  const [worth, height] = rates.reduce((most, rate) => (rate[0] * most[1] > most[0] * rate[1] ? rate : most), [0, 1] as readonly [number, number]);
  if (worth <= height * SCALE) return worths;
  return worths.map((each) => Number((BigInt(each) * BigInt(height * SCALE)) / BigInt(worth)));
}

/**
 * @param slack how much of its length a strip may lack in worth, in 1/SCALE of a mark
 * @returns strips that stand for all that lack no more than that; null where there are more than can be looked at
 */
export function stripsWithin(job: Job, wanted: readonly number[], worths: readonly number[], slack: number, most: Reach): readonly Plan[] | null {
  const at = job.sheets.length - 1;
  const sheet = job.sheets[at]!;
  const prices = pricerOf(job, sheet)(worths);
  const lies = job.kinds
    .flatMap((kind, index) => liesOf(kind, index))
    .filter((lie) => fitsIn(lie, sheet) && wanted[lie.kind]! > 0)
    .sort((a, b) => b.height - a.height || b.width - a.width);
  const all = wanted.reduce((sum, count, kind) => sum + count * worths[kind]!, 0);
  const found = new Map<string, Plan>();
  const effort: Effort = { left: most.steps };
  const places = placesOf(wanted, sheet.width);
  for (const height of heightsOf(lies, wanted, Math.min(job.reach, sheet.length))) {
    const needed = height * SCALE - slack;
    if (prices.worth[height]! < needed || all < needed) continue;
    const stacks = stacksOf(lies, wanted, height, effort);
    if (stacks === null) return null;
    const table = stackTable(stacks, sheet.width, worths);
    const counts = new Array<number>(wanted.length).fill(0);
    const chosen: number[] = [];
    const been = new Set<number>();
    const walk = (from: number, room: number, worth: number): boolean => {
      if (--effort.left < 0) return false;
      if (places !== null) {
        const state = counts.reduce((sum, count, kind) => sum + Math.min(count, wanted[kind]!) * places[kind]!, 0);
        const key = (state * stacks.length + from) * (sheet.width + 1) + room;
        if (been.has(key)) return true;
        been.add(key);
      }
      let open = false;
      for (let next = from; next < stacks.length; next++) {
        const stack = stacks[next]!;
        if (stack.width > room) continue;
        open = true;
        let gained = 0;
        for (const { kind, count } of stack.runs) gained += worths[kind]! * Math.max(0, Math.min(count, wanted[kind]! - counts[kind]!));
        // Stacks are in order, so that each strip comes up once; what is right of this one is worth what the rest can be at most.
        const rest = Math.min(table[next]![room - stack.width]!, all - worth - gained);
        if (worth + gained + rest < needed) continue;
        for (const { kind, count } of stack.runs) counts[kind]! += count;
        chosen.push(next);
        const going = walk(next, room - stack.width, worth + gained);
        chosen.pop();
        for (const { kind, count } of stack.runs) counts[kind]! -= count;
        if (!going) return false;
      }
      if (open && stacks.slice(from).some(({ width }) => width <= room)) return true;
      if (worth < needed || chosen.length === 0) return true;
      const key = counts.map((count, kind) => Math.min(count, wanted[kind]!)).join();
      const known = found.get(key);
      if (known === undefined || known.cost > height) {
        if (found.size >= most.plans) return false;
        found.set(key, planOf(job, at, [{ height, columns: columnsOf(chosen.map((index) => stacks[index]!)), times: 1 }]));
      }
      return true;
    };
    if (!walk(0, sheet.width, 0)) return null;
  }
  return undominated([...found.values()], wanted);
}

/** Steps of the search that are still allowed. */
interface Effort {
  left: number;
}

/** Different stacks within one length. */
const MOST_STACKS = 4_000;

interface Stack {
  readonly width: number;
  readonly runs: readonly Run[];
}

/** What one piece of each kind adds to a number that names what a strip gives; null where such numbers would be too large. */
function placesOf(wanted: readonly number[], wide: number): readonly number[] | null {
  const places: number[] = [];
  let next = 1;
  for (const count of wanted) {
    places.push(next);
    next *= count + 1;
  }
  return next * (MOST_STACKS + 1) * (wide + 1) <= Number.MAX_SAFE_INTEGER ? places : null;
}

/** Every length that pieces one below another can come to. */
function heightsOf(lies: readonly Lie[], wanted: readonly number[], tall: number): readonly number[] {
  const can = new Uint8Array(tall + 1);
  can[0] = 1;
  for (const { kind, height } of lies) {
    for (let copy = 0; copy < Math.min(wanted[kind]!, Math.floor(tall / height)); copy++) {
      for (let h = tall; h >= height; h--) if (can[h - height]) can[h] = 1;
    }
  }
  return [...can.keys()].filter((height) => height > 0 && can[height] === 1);
}

/** Stacks of pieces within a length to which none can be added that is not wider, the widest first; null where there are too many. */
function stacksOf(lies: readonly Lie[], wanted: readonly number[], tall: number, effort: Effort): readonly Stack[] | null {
  const stacks = new Map<string, Stack>();
  const counts = new Array<number>(wanted.length).fill(0);
  const runs: Run[] = [];
  const walk = (from: number, room: number, width: number): boolean => {
    if (--effort.left < 0) return false;
    for (let next = from; next < lies.length; next++) {
      const lie = lies[next]!;
      const free = Math.min(wanted[lie.kind]! - counts[lie.kind]!, Math.floor(room / lie.height));
      for (let count = free; count >= 1; count--) {
        counts[lie.kind]! += count;
        runs.push({ ...lie, count });
        const going = walk(next + 1, room - count * lie.height, Math.max(width, lie.width));
        runs.pop();
        counts[lie.kind]! -= count;
        if (!going) return false;
      }
    }
    const full = runs.length > 0 && !lies.some((lie) => lie.width <= width && lie.height <= room && counts[lie.kind]! < wanted[lie.kind]!);
    if (!full) return true;
    const key = counts.join();
    const known = stacks.get(key);
    if (known === undefined || known.width > width) stacks.set(key, { width, runs: [...runs].sort((a, b) => b.width - a.width || b.height - a.height) });
    return stacks.size <= MOST_STACKS;
  };
  if (!walk(0, tall, 0)) return null;
  return [...stacks.values()].sort((a, b) => b.width - a.width);
}

/** By the first stack that may be used and the room: what stacks from there on are worth at most, however often each is used. */
function stackTable(stacks: readonly Stack[], wide: number, worths: readonly number[]): readonly Float64Array[] {
  const table: Float64Array[] = new Array(stacks.length);
  let row = new Float64Array(wide + 1);
  for (let at = stacks.length - 1; at >= 0; at--) {
    const { width, runs } = stacks[at]!;
    const worth = runs.reduce((sum, { kind, count }) => sum + worths[kind]! * count, 0);
    row = row.slice();
    for (let x = width; x <= wide; x++) row[x] = Math.max(row[x]!, row[x - width]! + worth);
    table[at] = row;
  }
  return table;
}

function columnsOf(stacks: readonly Stack[]): readonly Column[] {
  const times = new Map<Stack, number>();
  for (const stack of stacks) times.set(stack, (times.get(stack) ?? 0) + 1);
  return [...times].map(([stack, count]) => ({ ...stack, times: count }));
}

/** Leaves out what another strip that is no longer gives too. */
function undominated(plans: readonly Plan[], wanted: readonly number[]): readonly Plan[] {
  const given = (plan: Plan): readonly number[] => wanted.map((count, kind) => Math.min(count, plan.gives.get(kind) ?? 0));
  const all = plans
    .map((plan) => ({ plan, gives: given(plan) }))
    .map((one) => ({ ...one, sum: one.gives.reduce((sum, count) => sum + count, 0) }))
    .sort((a, b) => a.plan.cost - b.plan.cost || b.sum - a.sum);
  const kept: typeof all = [];
  for (const one of all) {
    if (!kept.some(({ gives, sum }) => sum >= one.sum && one.gives.every((count, kind) => count <= gives[kind]!))) kept.push(one);
  }
  return kept.map(({ plan }) => plan);
}

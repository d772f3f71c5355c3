import { toNumber } from '../measure/rational.ts';
import type { Join, Step, StepPart } from '../sewing/step.ts';
import type { Pattern } from './pattern.ts';
import { straightCuts } from './straight-cuts.ts';

/*
 * How long a pattern may take. Estimates in doubles: nothing is decided by them.
 */

/** What a maker does again and again. */
export type Act = 'cut' | 'line' | 'start' | 'inch' | 'match' | 'press' | 'apart' | 'trim';

export type Stage = 'cutting' | 'sewing' | 'pressing' | 'trimming';

/** Seconds for each of them. */
export type Assumptions = Readonly<Record<Act, number>>;

/**
 * What a practised maker may take, from memory: no source that we know of gives such times, so these are assumptions and no more, and
 * every maker has others.
 */
export const USUAL_TIMES: Assumptions = { cut: 15, line: 10, start: 15, inch: 2, match: 20, press: 15, apart: 10, trim: 30 };

/** In the order of the work. */
export const ACTS: readonly { readonly act: Act; readonly stage: Stage }[] = [
  { act: 'cut', stage: 'cutting' },
  { act: 'line', stage: 'cutting' },
  { act: 'start', stage: 'sewing' },
  { act: 'inch', stage: 'sewing' },
  { act: 'match', stage: 'sewing' },
  { act: 'press', stage: 'pressing' },
  { act: 'apart', stage: 'trimming' },
  { act: 'trim', stage: 'trimming' },
];

export const STAGES: readonly Stage[] = ['cutting', 'sewing', 'pressing', 'trimming'];

/**
 * How often each of them is done for one unit: lines drawn to sew along or beside, seams begun, seams pressed, cuts between or beyond
 * seams that are sewn.
 */
type Doing = Readonly<Record<'line' | 'start' | 'press' | 'apart', number>>;

/*
 * Squares that are sewn before they are cut, shared out among the units they become (counted from the methods as our own steps tell
 * them). A pair: one line, two seams and one cut for two halves. Hourglasses: pairs, then their halves in pairs once more. Split ones:
 * half as many halves, each with a square. Eight: two lines, four seams, four cuts for eight. Four geese: four lines, two long seams
 * and four short ones, three cuts; the large square's two parts are pressed once, the geese once more.
 */
const HALVES_IN_PAIRS: Doing = { line: 1 / 2, start: 1, press: 1, apart: 1 / 2 };
const HOURGLASSES: Doing = { line: 1, start: 2, press: 2, apart: 1 };
const SPLIT: Doing = { line: 3 / 4, start: 3 / 2, press: 3 / 2, apart: 3 / 4 };
const HALVES_BY_EIGHT: Doing = { line: 1 / 4, start: 1 / 2, press: 1, apart: 1 / 2 };
const GEESE_BY_FOUR: Doing = { line: 1, start: 3 / 2, press: 3 / 2, apart: 3 / 4 };

const roleOf = ({ from }: StepPart): string => ('role' in from ? from.role : '');

function doingOf({ parts, joins }: Step): Doing {
  const roles = parts.map(roleOf);
  if (roles.includes('eight')) return HALVES_BY_EIGHT;
  if (roles.includes('large')) return GEESE_BY_FOUR;
  if (roles.includes('pair')) return parts.length === 2 ? HALVES_IN_PAIRS : parts.length === 3 ? SPLIT : HOURGLASSES;
  // A corner is sewn along a line, and what lies beyond it is cut off.
  const corners = roles.filter((role) => role === 'corner').length;
  return { line: corners, start: joins.length, press: joins.filter(({ sew }) => sew !== 'part-way').length, apart: corners };
}

/** An inch in centimetres. */
export const CM = 2.54;

/** @returns the length of a finished seam with an allowance at either end, in inches; of a seam in two goes each go has one of them */
function inches({ sew, from, to }: Join, { lattice, choices, block }: Pattern): number {
  const finished = Math.hypot(to.x / to.w - from.x / from.w, to.y / to.w - from.y / from.w) * toNumber(lattice.step);
  return (finished + (sew === 'through' ? 2 : 1) * toNumber(choices.seam)) / (block.unit === 'in' ? 1 : CM);
}

/** How many sets a unit takes, and how long their seams are, in inches; the cuts across them are straight cuts like others. */
function setOf({ parts, count }: Step, { cuts, block }: Pattern): { readonly share: number; readonly inches: number } {
  const ids = parts.map(({ from }) => ('cut' in from ? from.cut : ''));
  const { segments, length } = cuts.find(({ id, set }) => set && ids.includes(id))!.set!;
  return { share: Math.ceil(count / segments) / count, inches: toNumber(length) / (block.unit === 'in' ? 1 : CM) };
}

/** @returns how often each thing is done for all blocks together; what is made to spare is cut, but not sewn */
export function actsOf(pattern: Pattern): Readonly<Record<Act, number>> {
  const { steps, figures, choices } = pattern;
  const acts = { cut: straightCuts(pattern), line: 0, start: 0, inch: 0, match: figures.matchedPoints * choices.blocks, press: 0, apart: 0, trim: 0 };
  for (const step of steps) {
    const { count, joins, trimmed } = step;
    const set = step.method === 'strip-sets' ? setOf(step, pattern) : null;
    const doing = set ? { line: 0, start: set.share * joins.length, press: set.share * joins.length, apart: 0 } : doingOf(step);
    for (const act of ['line', 'start', 'press', 'apart'] as const) acts[act] += doing[act] * count;
    for (const join of joins) acts.inch += (set ? set.share * set.inches : inches(join, pattern)) * count;
    if (trimmed) acts.trim += count;
  }
  return acts;
}

/** An estimate for all blocks together, in seconds. */
export interface WorkTime {
  /** In the order of the work. */
  readonly acts: readonly { readonly act: Act; readonly stage: Stage; readonly times: number; readonly takes: number }[];
  readonly stages: Readonly<Record<Stage, number>>;
  readonly total: number;
  /** The same shared out among the blocks. */
  readonly perBlock: number;
}

/** @returns about how long a pattern takes to cut, sew, press and trim, if each thing takes what is assumed */
export function workTime(pattern: Pattern, assumed: Assumptions = USUAL_TIMES): WorkTime {
  const times = actsOf(pattern);
  const acts = ACTS.map(({ act, stage }) => ({ act, stage, times: times[act], takes: times[act] * assumed[act] }));
  const stages = { cutting: 0, sewing: 0, pressing: 0, trimming: 0 };
  for (const { stage, takes } of acts) stages[stage] += takes;
  const total = STAGES.reduce((sum, stage) => sum + stages[stage], 0);
  return { acts, stages, total, perBlock: total / pattern.choices.blocks };
}

import { listed } from '../../measure/words.ts';
import type { Unworded } from '../wording.ts';
import { isInRounds, isRow } from '../join-words.ts';
import { clothName, clothOf, shortName, type Vocabulary } from '../naming.ts';
import { different, sentence } from '../sentences.ts';
import type { Pressed, StepPart } from '../step.ts';
import { outwardOf } from './trouble.ts';

/** @returns the pressing as a sentence */
export function pressingWords(step: Unworded, pressed: readonly Pressed[], words: Vocabulary): string {
  const { parts, joins, kind } = step;
  if (joins.length === 0) return 'Press flat.';
  const cloth = (part: StepPart): string => clothName(clothOf(part), words);
  const single = (join: number): string => {
    const way = pressed[join]!;
    if (way === 'open') return 'open';
    const [a, b] = [parts[joins[join]!.first], parts[joins[join]!.second]];
    const to = way === 'first' ? a : b;
    return !to || clothOf(to) === '' || (a && b && clothOf(a) === clothOf(b)) ? 'to one side' : `toward ${cloth(to)}`;
  };
  if (isInRounds(step)) return outwardWords(step, pressed, 'outward, away from the centre', 'outward', 'toward the centre');
  switch (kind) {
    case 'partial-seam ring':
      return outwardWords(step, pressed, 'outward, away from the centre', 'outward', 'toward the centre');
    case 'half-square triangle':
    case 'half-rectangle triangle':
      return sentence(`Press ${single(0)}`);
    case 'quarter-square triangle': {
      const halves = different([single(0), single(1)]);
      const last = pressed[2] === 'open' ? 'open' : 'to one side';
      return `Press the first seam${halves.length > 1 ? 's' : ''} ${listed(halves)}, the last one ${last}.`;
    }
    case 'split quarter-square triangle': {
      const large = outwardOf(step, 1);
      const long = pressed[1] === 'open' ? 'open' : `${pressed[1] === large ? 'toward' : 'away from'} the large triangle`;
      return sentence(`Press the short seam ${single(0)}, the long one ${long}`);
    }
    case 'flying geese':
      return outwardWords(step, pressed, 'toward the small triangles', 'toward the small triangle', 'toward the large triangle');
    case 'corner-triangle unit':
    case 'square in a square':
      return outwardWords(step, pressed, joins.length === 1 ? 'toward the corner' : 'toward the corners', 'toward the corner', 'toward the middle');
    case 'peak':
      return outwardWords(step, pressed, 'toward the side triangles', 'toward the side triangle', 'toward the middle triangle');
    case 'free unit': {
      const all = joins.every(({ second }) => second < parts.length)
        ? 'toward the piece just sewn on'
        : 'to one side before another crosses it';
      return outwardWords(step, pressed, all, 'toward what was just sewn on', 'toward what was there before', 'each seam');
    }
    default:
      return rowPressing(step, pressed, words);
  }
}

/** Seams that custom presses outward: all of them told in a word, or each as it lies, in the order in which they are sewn. */
function outwardWords(step: Unworded, pressed: readonly Pressed[], all: string, outward: string, inward: string, every?: string): string {
  const sewn = step.joins.flatMap(({ sew }, join) => (sew === 'finish' ? [] : [join]));
  const lies = sewn.map((join) => (pressed[join] === 'open' ? 'open' : pressed[join] === outwardOf(step, join) ? outward : inward));
  const which = all.startsWith('outward') ? 'every seam ' : every ? `${every} ` : '';
  if (lies.every((way) => way === outward)) return `Press ${which}${all}.`;
  if (different(lies).length === 1) return `Press ${lies.length > 1 ? 'every seam' : 'the seam'} ${lies[0]!}.`;
  return `Press the seams, in the order in which they are sewn: ${byWay(lies)}.`;
}

/** @returns "1–3 to the left, 4 to the right and 5 open" */
const byWay = (lies: readonly string[]): string => {
  const told = different(lies).map((way) => `${ranges(lies.flatMap((each, i) => (each === way ? [i + 1] : [])))} ${way}`);
  return told.length > 2 ? listed(told) : told.join(', ');
};

/** The seams of a row or column, told by what they lie toward where that is one thing, else by their sides. */
function rowPressing(step: Unworded, pressed: readonly Pressed[], words: Vocabulary): string {
  const { parts } = step;
  const [before, after] = isRow(step) ? ['left', 'right'] : ['top', 'bottom'];
  const sides = pressed.map((way) => (way === 'open' ? 'open' : `to the ${way === 'first' ? before : after}`));
  const counted = `Press the seams, counted from the ${before!}: ${byWay(sides)}.`;
  if (different(sides).length > 1 && sides.includes('open')) return counted;
  if (sides[0] !== 'open') {
    const names = parts.map((part) => shortName(part, words));
    const pairs = pressed.map((way, i) => (way === 'first' ? ([i, i + 1] as const) : ([i + 1, i] as const)));
    const common = different(pairs.map(([to]) => names[to]!));
    if (common.length === 1 && pairs.every(([, from]) => names[from] !== common[0])) return sentence(`Press toward ${common[0]!}`);
    const plain = (part: number): boolean => 'cut' in parts[part]!.from;
    if (different(sides).length > 1 && pairs.every(([to, from]) => plain(to) && !plain(from))) return 'Press toward the plain pieces.';
  }
  if (different(sides).length === 1) return `Press the seam${sides.length > 1 ? 's' : ''} ${sides[0]!}.`;
  if (sides.length === 2) return pressed[0] === 'second' ? 'Press toward the middle.' : 'Press away from the middle.';
  return counted;
}

/** @returns numbers in order as "1–3 and 5" */
export function ranges(numbers: readonly number[]): string {
  const runs: [number, number][] = [];
  for (const n of numbers) {
    const last = runs.at(-1);
    if (last && last[1] === n - 1) last[1] = n;
    else runs.push([n, n]);
  }
  return listed(runs.flatMap(([from, to]) => (from === to ? [`${from}`] : to === from + 1 ? [`${from}`, `${to}`] : [`${from}–${to}`])));
}

import { listed } from '../measure/words.ts';
import type { Unworded } from './wording.ts';
import { isInRounds, isRow } from './join-words.ts';
import { clothName, clothOf, placeOf, roleOf, shortName, type Vocabulary } from './naming.ts';
import type { Wish } from './nesting.ts';
import { different, sentence } from './sentences.ts';
import type { Pressed, StepPart } from './step.ts';

/** Darkness of a fabric: larger is darker. Only its order means anything. */
export type Darkness = (fabric: string) => number;

const HARD = (toward: Pressed): Wish => ({ toward, weight: 'hard' });

/*
 * Where seams are pressed. Common practice where no source is named: diagonal seams toward the darker fabric (the default of American
 * Patchwork & Quilting where no arrow is drawn); geese toward the small triangles (its Pinwheel Star, 2019-10-01); the last seam of an
 * hourglass open (its Ohio Star, 2017-06-14); in rows toward the unpieced neighbour (quiltville.com, Double Delight, 2008), and so
 * that seams nest where they meet; rounds, rings and corners outward.
 */

/**
 * @param ends how many seams end along the join on its first and its second thing: each is bulk to fold back
 * @returns how a join is pressed if no other seam met it
 */
export function pressingWish(step: Unworded, join: number, ends: readonly [number, number], darkness: Darkness): Wish {
  const { parts, joins, kind } = step;
  const { sew, first, second } = joins[join]!;
  const darker = (): Pressed => (darkness(clothOf(parts[first]!)) > darkness(clothOf(parts[second]!)) ? 'first' : 'second');
  const isLast = join === joins.length - 1;
  if (isInRounds(step)) return HARD('second');
  switch (kind) {
    case 'partial-seam ring':
      return HARD(sew === 'part-way' ? 'first' : 'second');
    case 'half-square triangle':
    case 'half-rectangle triangle':
      return HARD(darker());
    case 'quarter-square triangle':
      return HARD(isLast ? 'open' : darker());
    case 'split quarter-square triangle':
      // The large triangle is unpieced.
      return HARD(!isLast ? darker() : first < parts.length ? 'first' : 'second');
    case 'flying geese':
    case 'corner-triangle unit':
    case 'square in a square':
    case 'peak': {
      const middle = middleOf(step);
      return HARD(first < parts.length && first !== middle ? 'first' : 'second');
    }
    case 'free unit':
      return HARD(second >= parts.length && first < parts.length ? 'first' : 'second');
    default:
      return inRow(parts[join]!, parts[join + 1]!, ends, darkness);
  }
}

/** @returns the number of the part that the others are sewn round */
const middleOf = ({ parts, kind }: Unworded): number =>
  parts.findIndex((part) =>
    kind === 'peak' ? placeOf(part, parts) === 'middle' : !['corner', 'half', 'small'].includes(roleOf(part) ?? ''),
  );

/** Toward the plain piece; of two plain ones toward the darker; of two units toward the one with less bulk. */
function inRow(before: StepPart, after: StepPart, [endsBefore, endsAfter]: readonly [number, number], darkness: Darkness): Wish {
  const [one, other] = [clothOf(before), clothOf(after)];
  if ((one === '') !== (other === '')) return { toward: one === '' ? 'second' : 'first', weight: 4 };
  if (one !== '') {
    const [a, b] = [darkness(one), darkness(other)];
    return { toward: a > b ? 'first' : 'second', weight: a === b ? 0 : 2 };
  }
  return { toward: endsBefore < endsAfter ? 'first' : 'second', weight: endsBefore === endsAfter ? 0 : 1 };
}

/** @returns the pressing as a sentence */
export function pressingWords(step: Unworded, pressed: readonly Pressed[], words: Vocabulary): string {
  const { parts, joins, kind } = step;
  if (joins.length === 0) return 'Press flat.';
  const towardOf = (join: number): StepPart | undefined => parts[pressed[join] === 'first' ? joins[join]!.first : joins[join]!.second];
  const cloth = (part: StepPart): string => clothName(clothOf(part), words);
  const single = (join: number): string => {
    const [a, b] = [parts[joins[join]!.first]!, parts[joins[join]!.second]!];
    return clothOf(a) === clothOf(b) ? 'to one side' : `toward ${cloth(towardOf(join)!)}`;
  };
  if (isInRounds(step)) return 'Press every seam outward, away from the centre.';
  switch (kind) {
    case 'partial-seam ring':
      return 'Press every seam outward, away from the centre.';
    case 'half-square triangle':
    case 'half-rectangle triangle':
      return sentence(`Press ${single(0)}`);
    case 'quarter-square triangle': {
      const halves = different([single(0), single(1)]);
      return `Press the first seam${halves.length > 1 ? 's' : ''} ${listed(halves)}, the last one open.`;
    }
    case 'split quarter-square triangle':
      return sentence(`Press the short seam ${single(0)}, the long one toward the large triangle`);
    case 'flying geese':
      return 'Press toward the small triangles.';
    case 'corner-triangle unit':
    case 'square in a square':
      return joins.length === 1 ? 'Press toward the corner.' : 'Press toward the corners.';
    case 'peak':
      return 'Press toward the side triangles.';
    case 'free unit':
      return joins.every(({ second }) => second < parts.length)
        ? 'Press each seam toward the piece just sewn on.'
        : 'Press each seam to one side before another crosses it.';
    default:
      return rowPressing(step, pressed, words);
  }
}

/** The seams of a row or column, told by what they lie toward where that is one thing, else by their sides. */
function rowPressing(step: Unworded, pressed: readonly Pressed[], words: Vocabulary): string {
  const { parts } = step;
  const names = parts.map((part) => shortName(part, words));
  const pairs = pressed.map((way, i) => (way === 'first' ? ([i, i + 1] as const) : ([i + 1, i] as const)));
  const common = different(pairs.map(([to]) => names[to]!));
  if (common.length === 1 && pairs.every(([, from]) => names[from] !== common[0])) return sentence(`Press toward ${common[0]!}`);
  const plain = (part: number): boolean => 'cut' in parts[part]!.from;
  const [before, after] = isRow(step) ? ['left', 'right'] : ['top', 'bottom'];
  const sides = pressed.map((way) => (way === 'first' ? before : after));
  if (different(sides).length === 1) return `Press the seam${sides.length > 1 ? 's' : ''} to the ${sides[0]!}.`;
  if (pairs.every(([to, from]) => plain(to) && !plain(from))) return 'Press toward the plain pieces.';
  if (sides.length === 2) return sides[0] === after ? 'Press toward the middle.' : 'Press away from the middle.';
  const to = (side: string): string => `${ranges(sides.flatMap((each, i) => (each === side ? [i + 1] : [])))} to the ${side}`;
  return `Press the seams, counted from the ${before!}: ${to(sides[0]!)}, ${to(sides[0] === before ? after! : before!)}.`;
}

/** @returns numbers in order as "1–3 and 5" */
function ranges(numbers: readonly number[]): string {
  const runs: [number, number][] = [];
  for (const n of numbers) {
    const last = runs.at(-1);
    if (last && last[1] === n - 1) last[1] = n;
    else runs.push([n, n]);
  }
  return listed(runs.flatMap(([from, to]) => (from === to ? [`${from}`] : to === from + 1 ? [`${from}`, `${to}`] : [`${from}–${to}`])));
}

import type { Unworded } from '../wording.ts';
import { isInRounds, isRow } from '../join-words.ts';
import { clothOf, type Vocabulary } from '../naming.ts';
import type { Lying, Outward, Toward } from '../phrases/pressing.ts';
import type { Side } from '../phrases/said.ts';
import { different } from '../sentences.ts';
import type { Pressed, StepPart } from '../step.ts';
import { isWebStep } from '../web.ts';
import { webPressing } from '../web-words.ts';
import { ranges } from './ranges.ts';
import { outwardOf } from './trouble.ts';

/** @returns the pressing as a sentence */
export function pressingWords(step: Unworded, pressed: readonly Pressed[], words: Vocabulary): string {
  const { parts, joins, kind } = step;
  const say = words.phrases.pressing;
  if (joins.length === 0) return say.flat;
  // A fabric's id, or null where the seam lies to one side: both are of one cloth, or several.
  const single = (join: number): { readonly fabric: string | null } | 'open' => {
    const way = pressed[join]!;
    if (way === 'open') return 'open';
    const [a, b] = [parts[joins[join]!.first], parts[joins[join]!.second]];
    const to = way === 'first' ? a : b;
    return { fabric: !to || clothOf(to) === '' || (a && b && clothOf(a) === clothOf(b)) ? null : clothOf(to) };
  };
  const toward = (way: ReturnType<typeof single>): Toward =>
    way === 'open' ? way : way.fabric === null ? 'to one side' : { cloth: words.telling.cloth(way.fabric) };
  if (isInRounds(step)) return outwardWords(step, pressed, 'round', words);
  switch (kind) {
    case 'partial-seam ring':
      return outwardWords(step, pressed, 'round', words);
    case 'half-square triangle':
    case 'half-rectangle triangle':
      return say.seam(toward(single(0)));
    case 'quarter-square triangle': {
      const [one, other] = [single(0), single(1)];
      const alike = one === 'open' || other === 'open' ? one === other : one.fabric === other.fabric;
      return say.hourglass((alike ? [one] : [one, other]).map(toward), pressed[2] === 'open' ? 'open' : 'to one side');
    }
    case 'split quarter-square triangle':
      return say.split(toward(single(0)), pressed[1] === 'open' ? 'open' : pressed[1] === outwardOf(step, 1) ? 'toward' : 'away');
    case 'flying geese':
      return outwardWords(step, pressed, 'small triangles', words);
    case 'corner-triangle unit':
    case 'square in a square':
      return outwardWords(step, pressed, 'corners', words);
    case 'peak':
      return outwardWords(step, pressed, 'side triangles', words);
    case 'free unit':
      return outwardWords(step, pressed, joins.every(({ second }) => second < parts.length) ? 'sewn on' : 'crossing', words);
    default:
      return isWebStep(step) ? webPressing(step, pressed, words) : rowPressing(step, pressed, words);
  }
}

/** Seams that custom presses outward: all of them told in a word, or each as it lies, in the order in which they are sewn. */
function outwardWords(step: Unworded, pressed: readonly Pressed[], what: Outward, { phrases }: Vocabulary): string {
  const sewn = step.joins.flatMap(({ sew }, join) => (sew === 'finish' ? [] : [join]));
  const ways = sewn.map((join) => (pressed[join] === 'open' ? 'open' : pressed[join] === outwardOf(step, join) ? 'outward' : 'inward'));
  const [way, ...others] = different(ways);
  if (others.length > 0) return phrases.pressing.each(what, lying(ways));
  return way === 'outward' ? phrases.pressing.outward(what, ways.length) : phrases.pressing.otherwise(what, way!, ways.length);
}

/** @returns seams by the ways they lie, each way once */
const lying = <Way>(ways: readonly Way[]): readonly Lying<Way>[] =>
  different(ways).map((way) => ({ way, seams: ranges(ways.flatMap((each, i) => (each === way ? [i + 1] : []))) }));

/** The seams of a row or column, told by what they lie toward where that is one thing, else by their sides. */
function rowPressing(step: Unworded, pressed: readonly Pressed[], words: Vocabulary): string {
  const { parts } = step;
  const say = words.phrases.pressing;
  const [before, after]: readonly ['left' | 'top', Side] = isRow(step) ? ['left', 'right'] : ['top', 'bottom'];
  const sides = pressed.map((way) => (way === 'open' ? 'open' : way === 'first' ? before : after));
  const ways = different(sides).length;
  const counted = (): string => say.counted(before, lying(sides));
  if (ways > 1 && sides.includes('open')) return counted();
  if (sides[0] !== 'open') {
    const names = parts.map(shortKey);
    const pairs = pressed.map((way, i) => (way === 'first' ? ([i, i + 1] as const) : ([i + 1, i] as const)));
    const [[first]] = pairs as [(typeof pairs)[number]];
    if (pairs.every(([to, from]) => names[to] === names[first] && names[from] !== names[first])) return say.toward(shortName(parts[first]!, words), pairs.length);
    const plain = (part: number): boolean => 'cut' in parts[part]!.from;
    if (ways > 1 && pairs.every(([to, from]) => plain(to) && !plain(from))) return say.towardPlain;
  }
  if (ways === 1) return say.oneWay(sides[0]!, sides.length);
  if (sides.length === 2) return say.middle(pressed[0] === 'second' ? 'toward' : 'away');
  return counted();
}

/** @returns a text that two parts share if they are called alike in a few letters */
const shortKey = ({ from }: StepPart): string => ('unit' in from ? `unit ${from.unit}` : `cloth ${from.fabric}`);

/** @returns what a part is called in a few letters: a unit by its letter, a piece by its fabric */
const shortName = ({ from }: StepPart, { telling }: Vocabulary): string => ('unit' in from ? telling.unit(from.unit) : telling.cloth(from.fabric));

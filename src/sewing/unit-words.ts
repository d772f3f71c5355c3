import { rational } from '../measure/rational.ts';
import { ceilToStep, surd } from '../measure/surd.ts';
import { layOutWords } from './free-words.ts';
import { clothName, clothOf, counted, cutOf, diagonalOf, pieceOf, placeOf, roleOf, sideAlong, SIDES, thing, together, type Vocabulary } from './naming.ts';
import type { Pairs } from './phrases/half-squares.ts';
import type { Halves, HalvesLie } from './phrases/quarter-squares.ts';
import type { SlantedPart } from './phrases/slanted.ts';
import { allowance, roundsFor, slantedPart, spareOf, templatesLie, type Told } from './recipes.ts';
import type { StepPart } from './step.ts';

/*
 * How the units of the catalogue are sewn. The way follows from what the cutting list gives (pairs of squares, a base with corner
 * squares, triangles), so that the words cannot speak of another way than the one that is cut.
 */

const cloth = (part: StepPart, words: Vocabulary): string => clothName(clothOf(part), words);

/** @returns two squares of each pair, and how many there are of each; of one cloth, how many of both */
function pairsOf(one: StepPart, other: StepPart, rounds: number | null, words: Vocabulary): Pairs {
  const alike = clothOf(one) === clothOf(other);
  return {
    count: rounds === null ? null : counted(alike ? 2 * rounds : rounds, words),
    one: pieceOf(one, words),
    other: alike ? null : pieceOf(other, words),
    single: rounds === 1,
  };
}

/** Half-square triangles from two squares at a time, from two large ones eight at a time, or from triangles. */
export function halfSquareWords(step: Told, words: Vocabulary): readonly string[] {
  const [one, other] = step.parts as [StepPart, StepPart];
  const { twoAtATime, eightAtATime, fromTriangles } = words.phrases.halfSquares;
  const role = roleOf(one);
  if (role !== 'pair' && role !== 'eight') return [fromTriangles(together([one, other], words)), ...templatesLie(step, words)];
  const [units, say] = role === 'pair' ? [2, twoAtATime] : [8, eightAtATime];
  const rounds = roundsFor(step, one, units, words);
  return [say(pairsOf(one, other, rounds, words), allowance(words), spareOf(units, rounds, step, words))];
}

/** The four pieces of a quarter-square triangle, clockwise, two and two as they are joined first. */
function quartersOf({ parts, joins }: Told): readonly [StepPart, StepPart, StepPart, StepPart] | null {
  const halves = joins.flatMap(({ first, second }) =>
    first < parts.length && second < parts.length ? [[parts[first]!, parts[second]!] as const] : [],
  );
  if (halves.length !== 2) return null;
  const [[a, b], [c, d]] = halves.map((half) => clockwise(half, parts)) as [readonly [StepPart, StepPart], readonly [StepPart, StepPart]];
  return [a, b, c, d];
}

/** @returns two triangles that share a short side in the order in which they follow one another clockwise round the unit */
function clockwise([p, q]: readonly [StepPart, StepPart], parts: readonly StepPart[]): readonly [StepPart, StepPart] {
  const [i, j] = [SIDES.indexOf(sideAlong(p, parts)), SIDES.indexOf(sideAlong(q, parts))];
  return j === (i + 1) % 4 ? [p, q] : [q, p];
}

/** The ruler's steps to which what is only checked is told. */
const STEP = { in: rational(1, 8), cm: rational(1, 10) };

/**
 * Half-square triangles on the way to something else, with what they measure: from squares of side c they come out c − √2·s square,
 * which is never on the ruler; told down to its next step (published: 4 3/8 from 4 3/4, All People Quilt, Ohio Star, 2017-06-14).
 */
function halvesOf(part: StepPart, words: Vocabulary): Halves {
  const { width } = cutOf(part, words);
  const { n, d } = ceilToStep(surd(rational(-width.n, width.d), words.seam, 2), STEP[words.unit]);
  return {
    kind: words.telling.kind('half-square triangle', 'many'),
    over: n < 0 ? words.telling.length(rational(-n, d), words.unit) : null,
    seam: allowance(words),
  };
}

/** @returns whether the words for an hourglass themselves say that its seams nest, or match, where they cross */
export const tellsOfCrossing = ({ kind, parts }: Pick<Told, 'kind' | 'parts'>): boolean =>
  kind === 'quarter-square triangle' && parts.some((part) => roleOf(part) === 'pair');

/**
 * Quarter-square triangles: two half-square triangles crossed, or four triangles.
 * @param seams what is done with the seams that cross
 */
export function quarterSquareWords(step: Told, words: Vocabulary, seams: 'nested' | 'matched'): readonly string[] {
  const quarters = quartersOf(step)!;
  const [a, b, c, d] = quarters;
  const names = quarters.map((part) => cloth(part, words)) as [string, string, string, string];
  const round = quarters.map(clothOf);
  const hourglass = round[0] === round[2] && round[1] === round[3];
  const say = words.phrases.quarterSquares;
  if (!tellsOfCrossing(step)) {
    const [one, two, three, four] = names;
    const lie: HalvesLie =
      round[0] === round[1] && round[2] === round[3]
        ? { lie: 'one cloth', one, other: three }
        : hourglass
          ? { lie: 'alike', left: one, right: two }
          : { lie: 'two', first: [one, two], second: [three, four] };
    return [say.fromTriangles(together(quarters, words), lie), ...templatesLie(step, words)];
  }
  const halves = halvesOf(a, words);
  if (hourglass) return [say.hourglasses(pairsOf(a, b, roundsFor(step, a, 2, words), words), halves, seams)];
  const mirrored = !turnsInto(round, round.toReversed());
  return [say.crossed(pairsOf(a, b, null, words), pairsOf(c, d, null, words), halves, seams, names, mirrored)];
}

/** @returns whether two rounds of four are the same, begun at some place */
const turnsInto = (one: readonly string[], other: readonly string[]): boolean =>
  other.some((_, i) => one.join('\n') === [...other.slice(i), ...other.slice(0, i)].join('\n'));

/** Split quarter-square triangles: one large triangle, two small ones. */
export function splitQuarterWords(step: Told, words: Vocabulary): readonly string[] {
  const { parts, joins } = step;
  const first = joins[0]!;
  const smalls = clockwise([parts[first.first]!, parts[first.second]!], parts);
  const [left, right] = smalls;
  const large = parts.find((part) => !smalls.includes(part))!;
  const handed = clothOf(left) !== clothOf(right);
  const { split, splitFromTriangles } = words.phrases.quarterSquares;
  if (roleOf(left) !== 'pair') {
    const say = splitFromTriangles(together(smalls, words), handed ? cloth(left, words) : null, together([large], words));
    return [say, ...templatesLie(step, words)];
  }
  const rounds = roundsFor(step, large, handed ? 1 : 2, words);
  const mirrored = handed ? { left: cloth(left, words), right: cloth(right, words), large: cloth(large, words) } : null;
  const pairs = pairsOf(left, right, rounds === null ? null : Math.ceil(rounds / 2), words);
  return [split(pairs, halvesOf(left, words), pieceOf(large, words), mirrored)];
}

/** Half-rectangle triangles: both triangles are of one hand. */
export function halfRectangleWords(step: Told, words: Vocabulary): readonly string[] {
  const [one, other] = step.parts as [StepPart, StepPart];
  const { halfRectangles } = words.phrases.slanted;
  return [halfRectangles(together([one, other], words), allowance(words), diagonalOf(one)), ...templatesLie(step, words)];
}

/** A peak: a middle triangle as wide as the unit, a mirrored pair at its slopes. */
export function peakWords(step: Told, words: Vocabulary): readonly string[] {
  const middle = step.parts.find((part) => placeOf(part, step.parts) === 'middle');
  const [one, other] = step.parts.filter((part) => part !== middle);
  if (!middle || !one || !other) return layOutWords(step, words);
  const slope = (part: StepPart): SlantedPart => slantedPart(part, step, words);
  return [words.phrases.slanted.peak(thing(middle, words), slope(one), slope(other), allowance(words)), ...templatesLie(step, words)];
}


import { box } from '../geometry/convex.ts';
import { compareX, compareY, lineThrough, parallel } from '../geometry/point.ts';
import { counted, inRuns, likeness, sideOf, thing, type Vocabulary } from './naming.ts';
import type { Around } from './phrases/joins.ts';
import type { Side } from './phrases/said.ts';
import type { Told } from './recipes.ts';
import { runsOf } from './sentences.ts';
import type { Join, StepPart } from './step.ts';

/** How things are joined that are finished in themselves: rows and columns, rounds, rings. */

/** @returns whether a join of many is told from its centre outward: its seams turn */
export function isInRounds({ kind, parts, joins }: Pick<Told, 'kind' | 'parts' | 'joins'>): boolean {
  const [first] = joins;
  const line = ({ from, to }: Join): ReturnType<typeof lineThrough> => lineThrough(from, to);
  if ((kind !== 'joined unit' && kind !== 'block') || first === undefined) return false;
  return joins.every(({ second }) => second < parts.length) && joins.some((join) => !parallel(line(join), line(first)));
}

/** @returns whether a row's parts lie side by side; a column's lie under one another */
export function isRow({ parts }: Pick<Told, 'parts'>): boolean {
  const [a, b] = [box(parts[0]!.outline), box(parts[1]!.outline)];
  return compareX(a.right, b.left) <= 0 && compareY(a.bottom, b.top) > 0;
}

/** Parts in a row from left to right, or in a column from top to bottom. */
export const rowWords = (step: Pick<Told, 'parts'>, words: Vocabulary): string =>
  words.phrases.joins.row(isRow(step) ? 'row' : 'column', inRuns(step.parts, words));

/** One strip of a round, and the side it is sewn to. */
interface Laid {
  readonly part: StepPart;
  readonly side: Side;
}

const CLOCKWISE: Readonly<Record<Side, Side>> = { top: 'right', right: 'bottom', bottom: 'left', left: 'top' };

/** A centre and the strips sewn round it; a round ends where it would come to the same side again. */
export function roundWords({ parts }: Pick<Told, 'parts'>, words: Vocabulary): string {
  const [centre, ...strips] = parts as [StepPart, ...StepPart[]];
  const laid = strips.map((part, i): Laid => ({ part, side: sideOf(part, parts.slice(0, i + 1)) }));
  const rounds: Laid[][] = [];
  for (const strip of laid) {
    const round = rounds.at(-1);
    if (round && round.every(({ side }) => side !== strip.side)) round.push(strip);
    else rounds.push([strip]);
  }
  return words.phrases.joins.rounds(
    thing(centre, words),
    turning(laid),
    rounds.map((round) => around(round, words)),
  );
}

/** @returns which way round the strips go, where they keep to one way */
function turning(strips: readonly Laid[]): 'clockwise' | 'counter-clockwise' | null {
  const pairs = strips.slice(1).map(({ side }, i) => [strips[i]!.side, side] as const);
  if (pairs.length > 1 && pairs.every(([a, b]) => CLOCKWISE[a] === b)) return 'clockwise';
  if (pairs.length > 1 && pairs.every(([a, b]) => CLOCKWISE[b] === a)) return 'counter-clockwise';
  return null;
}

/** @returns strips of a round, those that follow one another and are alike told together */
const around = (round: readonly Laid[], words: Vocabulary): readonly Around[] =>
  runsOf(round, ({ part }) => likeness(part, words)).map((alike) => ({
    thing: thing(alike[0].part, words),
    count: counted(alike.length, words),
    sides: alike.map(({ side }) => side),
  }));

/** A ring: the first seam is sewn in two goes, so that every seam is straight. */
export function ringWords({ parts, joins }: Pick<Told, 'parts' | 'joins'>, words: Vocabulary): string {
  const [centre, first, ...others] = parts as [StepPart, StepPart, ...StepPart[]];
  const side = sideOf(first, [centre]);
  const [begin] = joins as [Join, ...Join[]];
  const middle = box(centre.outline);
  const even =
    side === 'top' || side === 'bottom'
      ? compareX(begin.from, middle.left) === 0
        ? 'left'
        : 'right'
      : compareY(begin.from, middle.top) === 0
        ? 'top'
        : 'bottom';
  const next = others.map((part) => ({ thing: thing(part, words), side: sideOf(part, [centre]) }));
  return words.phrases.joins.ring(thing(first, words), side, thing(centre, words), even, next);
}

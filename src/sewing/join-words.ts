import { box } from '../geometry/convex.ts';
import { compareX, compareY, lineThrough, parallel } from '../geometry/point.ts';
import { listed } from '../measure/words.ts';
import { partName, shortName, sideOf, type Side, type Vocabulary } from './naming.ts';
import type { Told } from './unit-words.ts';
import { inRuns } from './sentences.ts';
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
export function rowWords(step: Told, words: Vocabulary): string {
  const names = inRuns(step.parts.map((part) => partName(part, words)));
  return `Sew ${isRow(step) ? 'in a row, left to right' : 'in a column, top to bottom'}: ${listed(names)}.`;
}

/** One strip of a round, and the side it is sewn to. */
interface Laid {
  readonly part: StepPart;
  readonly name: string;
  readonly side: Side;
}

const CLOCKWISE: Readonly<Record<Side, Side>> = { top: 'right', right: 'bottom', bottom: 'left', left: 'top' };

/** A centre and the strips sewn round it; a round ends where it would come to the same side again. */
export function roundWords({ parts }: Told, words: Vocabulary): string {
  const [centre, ...strips] = parts as [StepPart, ...StepPart[]];
  const laid = strips.map((part, i): Laid => ({ part, name: partName(part, words), side: sideOf(part, parts.slice(0, i + 1)) }));
  const rounds: Laid[][] = [];
  for (const strip of laid) {
    const round = rounds.at(-1);
    if (round && round.every(({ side }) => side !== strip.side)) round.push(strip);
    else rounds.push([strip]);
  }
  const said = rounds.map((round, i) => `${rounds.length > 1 ? `Round ${i + 1}` : 'Round it'}: ${roundOf(round, words)}.`);
  return (
    `Begin with ${partName(centre, words)} as the centre${turning(laid)}. Sew each strip along the whole side of what is there, ` +
    `and press it before the next. ${said.join(' ')}`
  );
}

/** @returns which way round the strips go, where they keep to one way */
function turning(strips: readonly Laid[]): string {
  const pairs = strips.slice(1).map(({ side }, i) => [strips[i]!.side, side] as const);
  if (pairs.length > 1 && pairs.every(([a, b]) => CLOCKWISE[a] === b)) return ' and go round it clockwise';
  if (pairs.length > 1 && pairs.every(([a, b]) => CLOCKWISE[b] === a)) return ' and go round it counter-clockwise';
  return '';
}

/** @returns "Sea 2 by 4 in. rectangle to the top, 2 × B to the left and the right" */
function roundOf(round: readonly Laid[], words: Vocabulary): string {
  const groups: { readonly first: Laid; readonly sides: string[] }[] = [];
  for (const strip of round) {
    const last = groups.at(-1);
    if (last?.first.name === strip.name) last.sides.push(`the ${strip.side}`);
    else groups.push({ first: strip, sides: [`the ${strip.side}`] });
  }
  const several = ({ part, name }: Laid, many: number): string =>
    many === 1 ? name : 'unit' in part.from ? `${many} × ${name}` : partName(part, words, true);
  return groups.map(({ first, sides }) => `${several(first, sides.length)} to ${listed(sides)}`).join(', ');
}

/** A ring: the first seam is sewn in two goes, so that every seam is straight. */
export function ringWords({ parts, joins }: Told, words: Vocabulary): string {
  const [centre, first, ...others] = parts as [StepPart, StepPart, ...StepPart[]];
  const side = sideOf(first, [centre]);
  const [begin] = joins as [Join, ...Join[]];
  const middle = box(centre.outline);
  const atStart =
    side === 'top' || side === 'bottom'
      ? compareX(begin.from, middle.left) === 0
        ? 'left'
        : 'right'
      : compareY(begin.from, middle.top) === 0
        ? 'top'
        : 'bottom';
  const name = shortName(centre, words);
  const next = others.map((part) => `${partName(part, words)} to the ${sideOf(part, [centre])}`);
  return (
    `Lay ${partName(first, words)} along the ${side} of ${partName(centre, words)}, right sides together and ${atStart} edges even; ` +
    `sew from there and stop half way along ${name}. Going round, sew ${listed(next)}, each along its whole side. ` +
    'Then sew the first seam to its end.'
  );
}

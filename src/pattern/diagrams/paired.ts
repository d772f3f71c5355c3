import type { Cut } from '../../cutting/cut.ts';
import { type Spot } from '../polygons.ts';
import { captionOf, chord, clipped, ink, inkAt, panel, plus, rectangle, times, direction, type Drawn, type Mark, type Panel } from './diagram.ts';
import { madeBy, type Made, type PlacedPiece } from './laid-out.ts';

/*
 * Squares laid on one another, sewn on both sides of a line and cut on it: half-square triangles two and eight at a time, and what is
 * crossed from them. The line is drawn as the seam lies in the unit.
 */

/** How far the lower square shows beyond the upper one, as a share of its side. */
const SHOWS = 0.1;

/** @returns the line of a cutting list that a part comes from */
export const cutOf = ({ step, pattern }: Drawn, part: number): Cut => {
  const { from } = step.parts[part]!;
  const cut = 'cut' in from ? pattern.cuts.find(({ id }) => id === from.cut) : undefined;
  if (!cut) throw new Error(`part ${part + 1} of step ${step.number} is no piece`);
  return cut;
};

/** @returns the stitches on both sides of a line through a square's or another outline's cloth, and the line itself */
export function sewnAlong(outline: readonly Spot[], through: Spot, along: Spot, seam: number, line: 'drawn' | 'cut'): readonly Mark[] {
  const normal: Spot = [-along[1], along[0]];
  const at = (by: number, what: 'drawn' | 'cut' | 'stitched'): readonly Mark[] => {
    const ends = chord(outline, plus(through, times(normal, by)), along);
    return ends ? [{ mark: 'line', line: what, from: ends[0], to: ends[1] }] : [];
  };
  return [...at(-seam, 'stitched'), ...at(seam, 'stitched'), ...at(0, line)];
}

/** Two squares of cloth, right sides together, before they are sewn: the upper one with the line on its back. */
function laidTogether(lower: readonly Mark[], upper: readonly Mark[], side: number, diagonals: readonly Spot[], says: string): Panel {
  const square = rectangle(0, 0, side, side);
  const under = lower.map((mark): Mark => ('outline' in mark ? { ...mark, outline: mark.outline.map((spot) => plus(spot, times([side, -side], SHOWS))) } : mark));
  const lines = diagonals.flatMap((along): readonly Mark[] => {
    const ends = chord(square, [side / 2, side / 2], along)!;
    return [{ mark: 'line', line: 'drawn', from: ends[0], to: ends[1] }];
  });
  return panel([...under, ...upper, ...lines], says);
}

const cloth = (fabric: string, outline: readonly Spot[], side: 'right' | 'wrong'): Mark => ({ mark: 'cloth', fabric, side, outline });

/** @returns the direction of a step's seam */
const seamDirection = ({ step, pattern }: Drawn, join: number): Spot => {
  const scale = ink(pattern.lattice.step);
  const { from, to } = step.joins[join]!;
  return direction(inkAt(from, scale), inkAt(to, scale));
};

/** @returns two squares sewn on both sides of one diagonal and cut on it, or of both and cut four times */
export function pairPanels(drawn: Drawn, parts: readonly [number, number], along: Spot, eight: boolean): readonly Panel[] {
  const { step, pattern } = drawn;
  const seam = ink(pattern.choices.seam);
  const side = ink(cutOf(drawn, parts[0]).width);
  const [under, over] = parts.map((part) => (step.parts[part]!.from as { fabric: string }).fabric) as [string, string];
  const square = rectangle(0, 0, side, side);
  const diagonals: readonly Spot[] = eight ? [along, [along[1], -along[0]]] : [along];
  const lay = laidTogether([cloth(under, square, 'right')], [cloth(over, square, 'wrong')], side, diagonals, captionOf(drawn, 'right sides together'));
  const middle: Spot = [side / 2, side / 2];
  const straight: readonly Spot[] = eight ? [[1, 0], [0, 1]] : [];
  const sewn = [
    cloth(over, square, 'wrong'),
    ...diagonals.flatMap((each) => sewnAlong(square, middle, each, seam, 'cut')),
    ...straight.map((each): Mark => {
      const [from, to] = chord(square, middle, each)!;
      return { mark: 'line', line: 'cut', from, to };
    }),
  ];
  return [lay, panel(sewn, captionOf(drawn, eight ? 'in four' : 'both sides'))];
}

/** @returns how a half-square triangle is sewn from two squares */
export const halfSquarePanels = (drawn: Drawn, eight: boolean): readonly Panel[] => pairPanels(drawn, [0, 1], seamDirection(drawn, 0), eight);

/**
 * Quarter-square triangles crossed: two half-square triangles, or one and a square, laid together so that their seams cross the line.
 * The half-square triangle lies as the unit will; what comes on it is seen through its back, so each fabric lies on that which it
 * faces across the line.
 */
export function crossedPanels(drawn: Drawn): readonly Panel[] {
  const { step, pattern } = drawn;
  const seam = ink(pattern.choices.seam);
  const last = step.joins.at(-1)!;
  const along = seamDirection(drawn, step.joins.length - 1);
  const sewnFirst = step.joins.slice(0, -1).map(({ first, second }) => [first, second] as const);
  const side = ink(cutOf(drawn, sewnFirst[0]![0]).width) - Math.SQRT2 * seam;
  const made = madeBy(drawn);
  const halves = sewnFirst.map((pair) => halvesOf(made, pair, side));
  const square = rectangle(0, 0, side, side);
  const single = [last.first, last.second].find((thing) => thing < step.parts.length);
  const upper = single === undefined ? mirrored(halves[1]!, side, along) : [cloth((step.parts[single]!.from as { fabric: string }).fabric, square, 'wrong')];
  const lower = halves[0]!.map(({ fabric, outline }) => cloth(fabric, outline, 'right'));
  const begin = sewnFirst.flatMap((pair, i) => (i > 0 && sameCloths(step.parts, sewnFirst[0]!, pair) ? [] : [pairPanels(drawn, pair, seamDirection(drawn, i), false)[1]!]));
  const middle: Spot = [side / 2, side / 2];
  const says = single !== undefined ? 'right sides together' : step.points.every(({ lie }) => lie === 'opposite ways') ? 'seams nested' : 'seams matched';
  const lay = laidTogether(lower, upper, side, [along], captionOf(drawn, says));
  return [...begin, lay, panel([...upper, ...sewnAlong(square, middle, along, seam, 'cut')], captionOf(drawn, 'both sides'))];
}

const sameCloths = (parts: Drawn['step']['parts'], one: readonly [number, number], other: readonly [number, number]): boolean => {
  const cloths = (pair: readonly [number, number]): string => pair.map((part) => (parts[part]!.from as { fabric: string }).fabric).sort().join();
  return cloths(one) === cloths(other);
};

/** @returns the two halves of a square that are the two fabrics of a half-square triangle, lying as they do in the unit */
function halvesOf(made: Made, [a, b]: readonly [number, number], side: number): readonly PlacedPiece[] {
  const square = rectangle(0, 0, side, side);
  const [ma, mb] = [a, b].map((part) => centre(made, part)) as [Spot, Spot];
  const toward = direction(ma, mb);
  const offset = (toward[0] * side) / 2 + (toward[1] * side) / 2;
  const fabricOf = (part: number): string => made.pieces.find((piece) => piece.part === part)!.fabric;
  return [
    { fabric: fabricOf(a), outline: clipped(square, toward, offset), part: a },
    { fabric: fabricOf(b), outline: clipped(square, times(toward, -1), -offset), part: b },
  ];
}

function centre({ pieces }: Made, part: number): Spot {
  const spots = pieces.filter((piece) => piece.part === part).flatMap(({ outline }) => outline);
  return times(spots.reduce(plus), 1 / spots.length);
}

/** @returns what lies face down on the other half: mirrored across the line on which both will be cut */
function mirrored(halves: readonly PlacedPiece[], side: number, along: Spot): readonly Mark[] {
  const middle: Spot = [side / 2, side / 2];
  const reflect = ([x, y]: Spot): Spot => {
    const [px, py] = [x - middle[0], y - middle[1]];
    const k = 2 * (px * along[0] + py * along[1]);
    return [middle[0] + k * along[0] - px, middle[1] + k * along[1] - py];
  };
  return halves.map(({ fabric, outline }) => cloth(fabric, outline.map(reflect).reverse(), 'wrong'));
}
